/** European Pharmacopoeia metric numbers: "metric 3", "EP 3", "1.5 metric". */
import { DIGITS } from '../../server/src/mentions/words/numbers.ts';
import type { Notation } from './model.ts';
import { AFTER, AFTER_NUMBER, BEFORE, readSeries, series } from './series.ts';

const NUMBER = '[0-9]{1,2}(?:[.,][0-9]{1,2})?';
const plausible = (value: number): boolean => value > 0 && value <= 12;

export const metricBefore: Notation = {
  id: 'metric-before',
  title: 'Metric number after its name',
  about: 'The metric (decimetric) number of a thread, tenths of a millimetre: metric 3, EP 3.',
  system: 'ep-metric',
  pattern: `${BEFORE}(?:metric[\\s](?:(?:size|number|no\\.)[\\s])?|ep[\\s]?|m\\.?[\\s](?=[0-9.]{1,3}[\\s]suture))(?:${series(NUMBER)})${AFTER_NUMBER}(?![\\s]?(?:mm|cm|tons?|units?))`,
  anyCase: true,
  read: (text) => readSeries(text, DIGITS, plausible, 'before'),
  examples: ['metric 3', 'EP 3', 'metric 1.5', 'metric size 2'],
  counterExamples: ['metric units'],
};

export const metricAfter: Notation = {
  id: 'metric-after',
  title: 'Metric number before its name',
  about: 'The metric number of a thread with its name after it: 1.5 metric.',
  system: 'ep-metric',
  pattern: `${BEFORE}(?:${series(NUMBER)})[\\s](?:metric|decimetric)${AFTER}(?![\\s](?:tons?|tonnes?|units?))`,
  anyCase: true,
  read: (text) => readSeries(text, DIGITS, plausible),
  examples: ['1.5 metric', '3 metric'],
  counterExamples: ['3 metric tons'],
};
