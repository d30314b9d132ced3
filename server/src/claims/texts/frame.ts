/** What stands around every sentence on what a text says. */
import type { Texts } from '../../texts/index.ts';

export const FRAME = {
  /** How such a sentence opens, also when a quiz key says it. */
  opening: { en: 'Says ', de: 'Hier steht: ' },
  key: { en: 'The key says ', de: 'Die Lösung sagt: ' },
  denied: { en: 'Denied here: says {said}', de: 'Hier verneint: {said}' },
  deniedWhole: { en: 'Denied here: {said}', de: 'Hier verneint: {said}' },
  read: {
    en: '{says} (read by "{construction}", {stance})',
    de: '{says} (gelesen von "{construction}", {stance})',
  },
  keyMarks: { en: 'The key marks this answer', de: 'Die Lösung markiert diese Antwort' },
  /** A size that the text names by its hub alone. */
  coloured: { en: '{colour} ({sizes})', de: '{colour} ({sizes})' },
  or: { en: ' or ', de: ' oder ' },
  to: { en: ' to ', de: ' bis ' },
  and: { en: ', and ', de: ' und ' },
  comma: { en: ', ', de: ', ' },
  orForGut: { en: ', or for gut ', de: ', oder für Catgut ' },
} as const satisfies Texts;
