/** What is said where notes give one device different sizes. */
import type { Texts } from '../../texts/index.ts';

export const DIFFERING = {
  says: {
    en: 'Gives “{name}” as {size}; elsewhere it is {elsewhere}.',
    de: 'Hier hat „{name}“ die Größe {size}; anderswo {elsewhere}.',
  },
  place: { en: '{size} in {note}', de: '{size} in {note}' },
  and: { en: ', ', de: ', ' },
  holds: {
    en: 'Neither is called wrong: see which one the course means.',
    de: 'Keine wird falsch genannt: Prüfen Sie, welche der Kurs meint.',
  },
  here: { en: 'here {name} has another size', de: 'hier hat „{name}“ eine andere Größe' },
} as const satisfies Texts;
