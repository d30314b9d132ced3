/** "G18", "gauge 18", "calibre 20". */
import { DIGITS } from '../../server/src/mentions/words/numbers.ts';
import type { Notation } from './model.ts';
import { AFTER_NUMBER, BEFORE, readSeries, series } from './series.ts';

const NUMBER = '[0-9]{1,2}';
const plausible = (value: number): boolean => value >= 7 && value <= 60;

export const gaugeBefore: Notation = {
  id: 'gauge-before',
  title: 'Gauge before the number',
  about: 'The unit first: G18, gauge 18; Spanish and French calibre 18, German Größe follows the number.',
  system: 'needle-gauge',
  pattern: `${BEFORE}(?:g|(?:gauge|gage|calibre|jauge)s?[\\s](?:sizes?[\\s])?)(?:${series(NUMBER)})${AFTER_NUMBER}`,
  anyCase: true,
  read: (text) => readSeries(text, DIGITS, plausible, 'before'),
  examples: ['G18', 'gauge 18', 'calibre 20', 'gauge 18 or 20'],
  counterExamples: ['G6PD', 'a gauge block'],
};
