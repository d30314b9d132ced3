/** Titles of the edits that make a statement true. */
import type { Texts } from '../../texts/index.ts';

export const REPAIR = {
  colour: { en: 'Write “{text}”', de: '„{text}“ schreiben' },
  word: { en: 'Write “{text}” instead of “{word}”', de: '„{text}“ statt „{word}“ schreiben' },
  value: { en: 'Write {text} instead of {word}', de: '„{text}“ statt „{word}“ schreiben' },
  order: {
    en: 'Put these sizes in the order the text announces',
    de: 'Diese Größen in die angekündigte Reihenfolge bringen',
  },
} as const satisfies Texts;
