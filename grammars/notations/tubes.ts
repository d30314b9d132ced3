/** Tracheal tubes by inner diameter: "7.5 ID", "ID 7.5", "Hegar 8". */
import { DIGITS } from '../../server/src/mentions/words/numbers.ts';
import type { Notation } from './model.ts';
import { AFTER, AFTER_NUMBER, BEFORE, readSeries, series } from './series.ts';

const NUMBER = '[0-9]{1,2}(?:[.,][0-9])?';

export const tubeInner: Notation = {
  id: 'tube-inner',
  title: 'Tube by inner diameter',
  about: 'Tracheal tubes carry their inner diameter in millimetres: 7.5 mm ID, ID 7.5.',
  system: 'tube-id',
  pattern: `${BEFORE}(?:${series(NUMBER)}[\\s]?(?:mm[\\s])?(?:id|i\\.d\\.)|id[\\s]${series(NUMBER)}(?:[\\s]?mm)?)${AFTER}`,
  anyCase: true,
  read: (text) => {
    const first = /^id/i.test(text);
    const items = readSeries(text, DIGITS, (value) => value >= 2 && value <= 12, first ? 'before' : 'after');
    // A trailing "mm" belongs to the last number, whichever side ID stands on.
    return items.map((item, i) => (i === items.length - 1 ? { ...item, end: text.length } : item));
  },
  examples: ['7.5 mm ID', 'ID 7.5', '7.0 ID', 'ID 7.0-8.5 mm', '3.0 or 3.5 mm ID'],
  counterExamples: ['ID badge'],
};

export const hegar: Notation = {
  id: 'hegar',
  title: 'Hegar number',
  about: 'Dilators by Hegar number, which is the diameter in millimetres.',
  system: 'hegar',
  pattern: `${BEFORE}hegar[\\s](?:(?:no\\.|number|size|dilators?)[\\s])?${NUMBER}${AFTER_NUMBER}`,
  anyCase: true,
  read: (text) => readSeries(text, DIGITS, (value) => value >= 1 && value <= 30, 'before'),
  examples: ['Hegar 8', 'Hegar no. 10'],
  counterExamples: ['Hegar dilators'],
};
