/** "18 G", "18-gauge", "27- to 30-gauge", "14, 16 and 18 G", "eighteen gauge". */
import { DIGITS, WORD_NUMBER } from '../../server/src/mentions/words/numbers.ts';
import { alternation, GAUGE_WORDS } from '../../server/src/mentions/words/units.ts';
import type { Notation } from './model.ts';
import { AFTER, BEFORE, readSeries, series } from './series.ts';

/** "Q-26G", "(P)-25 G": a kind of needle, a hyphen, its gauge. */
const LETTERED = '(?<=[A-Za-z)]-)';
const NUMBER = '[0-9]{1,2}(?:\\.5)?';
/** A small g after a number above the needles is a gram. */
const plausible =
  (text: string) =>
  (value: number): boolean =>
    value >= 7 && value <= (/[0-9]\s?g$/.test(text) ? 40 : 60);
const UNIT = `(?:[\\s]?-?[\\s]?|[‐‑–])(?:g[\\s]gauge|${alternation(GAUGE_WORDS)})s?`;

export const gaugeAfter: Notation = {
  id: 'gauge-after',
  title: 'Gauge after the number',
  about:
    'Needles, over-needle cannulas: the number, then G, ga or gauge; lists and ranges may share one unit.',
  system: 'needle-gauge',
  pattern: `(?:${BEFORE}|${LETTERED})#?(?:${series(NUMBER)})${UNIT}\\+?${AFTER}(?![\\s]?fr(?:ench)?(?![a-z]))`,
  anyCase: true,
  read: (text) => readSeries(text, DIGITS, plausible(text)),
  examples: [
    '18 G',
    '18G',
    '18-gauge',
    '18 ga',
    '22g gauge',
    '27- to 30-gauge',
    '14–16 G',
    '14, 16 and 18 G',
    '18G+',
  ],
  counterExamples: ['5G', '18 Gy', '250 g', '18 grams'],
};

const SPOKEN_UNIT = '[\\s-](?:gauges?|gages?)';

export const gaugeSpoken: Notation = {
  id: 'gauge-spoken',
  title: 'Gauge in words',
  about: 'Spoken gauge: the number in words, then gauge.',
  system: 'needle-gauge',
  pattern: `${BEFORE}(?:${series(WORD_NUMBER)})${SPOKEN_UNIT}${AFTER}`,
  anyCase: true,
  read: (text) => readSeries(text, WORD_NUMBER, plausible(text)),
  examples: ['eighteen gauge', 'twenty-two-gauge', 'fourteen or sixteen gauge'],
  counterExamples: ['a pressure gauge', 'eighteen grams'],
};
