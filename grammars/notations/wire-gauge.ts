/** "18 SWG", "26 AWG": steel wire by its own gauge. */
import { DIGITS } from '../../server/src/mentions/words/numbers.ts';
import type { Notation } from './model.ts';
import { AFTER, BEFORE, readSeries, series } from './series.ts';

export const wireGauge: Notation = {
  id: 'wire-gauge',
  title: 'Wire gauge',
  about: 'Steel wire by its own gauge, which is not the needle gauge: 18 SWG, 26 AWG, 20 BWG.',
  system: 'wire-gauge',
  pattern: `${BEFORE}#?(?:${series('[0-9]{1,2}')})[\\s]?-?(?:swg|awg|bwg|b&s)${AFTER}`,
  anyCase: true,
  read: (text) => readSeries(text, DIGITS, (value) => value >= 1 && value <= 40),
  examples: ['18 SWG', '26 AWG', '18 or 20 SWG'],
  counterExamples: ['18 swings'],
};
