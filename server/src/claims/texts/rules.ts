/** Rules of conversion. */
import type { Texts } from '../../texts/index.ts';

export const RULE = {
  says: { en: 'Says {rule}.', de: 'Hier steht: {^rule}.' },
  holds: { en: '{rule}.', de: '{rule}.' },
  worked: { en: '{rule}: {sum}', de: '{rule}: {sum}' },
  apart: { en: 'here that makes {steps}', de: 'hier sind das {steps}' },
} as const satisfies Texts;
