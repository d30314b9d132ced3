/** Classes of sizes, and sizes as taught for a kind of patient. */
import type { Texts } from '../../texts/index.ts';

export const CLASS = {
  says: { en: 'Says {size} is {label}.', de: 'Hier steht: {size} ist {label}.' },
  saysNot: { en: 'Says {size} is not {label}.', de: 'Hier steht: {size} ist nicht {label}.' },
  holds: { en: '{rule}.', de: '{rule}.' },
  saysUsual: { en: 'Says {size} for this patient.', de: 'Hier steht: {size} für diesen Patienten.' },
  holdsUsual: { en: '{rule}. Local practice decides.', de: '{rule}. Es entscheidet die örtliche Praxis.' },
} as const satisfies Texts;
