/** Sizes that no system has. */
import type { Texts } from '../../texts/index.ts';

export const MISSING = {
  says: { en: 'Names a size {size}.', de: 'Nennt eine Größe {size}.' },
  holds: { en: '{size} does not exist: {because}.', de: '{size} gibt es nicht: {because}.' },
  /** Of a writing that is no size of any system. */
  saysWritten: { en: 'Names a size {written}.', de: 'Nennt eine Größe „{written}“.' },
  holdsWritten: { en: '{written} does not exist: {because}.', de: '„{written}“ gibt es nicht: {because}.' },
} as const satisfies Texts;
