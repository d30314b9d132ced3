/** "Fr 14", "Fr. 22–32", "Ch 14", "CH14". */
import { DIGITS } from '../../server/src/mentions/words/numbers.ts';
import type { Notation } from './model.ts';
import { AFTER_NUMBER, BEFORE, readSeries, series } from './series.ts';

const NUMBER = '[0-9]{1,2}(?:[.,][0-9])?';

export const frenchBefore: Notation = {
  id: 'french-before',
  title: 'French before the number',
  about: 'The unit first: Fr 14, Ch 14, French 14, size 14 French.',
  system: 'french',
  pattern: `${BEFORE}(?:french[\\s](?:size[\\s])?|charri[eè]re[\\s]|(?:fr|ch|fg)\\.?[\\s]?)(?:${series(NUMBER)})${AFTER_NUMBER}`,
  anyCase: true,
  read: (text) => readSeries(text, DIGITS, (value) => value >= 1 && value <= 99, 'before'),
  examples: ['Fr 14', 'Fr. 22–32', 'Ch 14', 'CH14', 'Charrière 18', 'French 14'],
  counterExamples: ['chapter 14'],
};
