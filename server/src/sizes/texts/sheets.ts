/** Why a wanted table or chart cannot be made, and what each subject is called. */
import type { Texts } from '../../texts/index.ts';

export const REQUEST = {
  noSubject: {
    en: '“{word}” names no table or chart; choose one of {subjects}.',
    de: '„{word}“ ist keine Tabelle oder Größentafel; wählen Sie eines von {subjects}.',
  },
  tooMany: { en: 'A sheet holds {most} sizes at most.', de: 'Es passen höchstens {most} Größen hinein.' },
  noSize: { en: '“{value}” is no size of this kind.', de: '„{value}“ ist keine Größe dieser Art.' },
} as const satisfies Texts;
