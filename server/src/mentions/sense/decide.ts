/** Hands each candidate to the rule of its notation. */
import type { Candidate } from '../scan.ts';
import { frenchSense } from './french.ts';
import { gaugeSense } from './gauge.ts';
import { afterGauge, besideGauge, type LengthSystem, ofNeedle, sizedBeside } from './length.ts';
import { numberedSense } from './numbered.ts';
import type { Place } from './place.ts';
import { hyphenSense, metricSense, slipSense, threadSense } from './suture.ts';
import { systemOf } from './systems.ts';
import { ofOtherTrade } from './trade.ts';
import { NOTHING, size, type Verdict } from './verdict.ts';
import { wireSense } from './wire.ts';

export type Rule = (place: Place, match: string, candidate: Candidate) => Verdict;

const gauge: Rule = (place, match, { item }) => gaugeSense(place, match, item.values[0]!);
const french: Rule = (place, match, candidate) =>
  isFigure(place, candidate) ? NOTHING : frenchSense(place, match, candidate.item.values[0]!);
/** "15 Fr is 5 and 18 Fr is 6": the first of the list is what the size before it comes to. */
const isFigure = ({ before }: Place, { span, match }: Candidate): boolean =>
  span.start === match.start &&
  span.end < match.end &&
  /[0-9]\s?(?:Fr|French|Ch)\s(?:is|=|gives|makes|→|:)\s(?:about\s)?$/.test(before.slice(-24));
/** "2 is metric 5 and 1 is metric 4": the last of the list begins the next equation. */
const opensNext = ({ after }: Place, { span, match }: Candidate): boolean =>
  span.start > match.start && /^\s(?:is|=|equals)\s(?:the\s)?metric\b/i.test(after);
const thread: Rule = (place, match, { item }) => threadSense(place, match, item.values);
const numberedRule: Rule = (place, match, { item }) => numberedSense(place, match, item.values);

/** Rule of each notation that does not depend on other sizes of the sentence. */
export const RULES: Readonly<Record<string, Rule>> = {
  'gauge-after': gauge,
  'gauge-spoken': gauge,
  'gauge-before': gauge,
  'french-after': french,
  'french-spoken': french,
  'french-before': french,
  'usp-dashed': thread,
  'usp-zeros': thread,
  'usp-named': (_, match) => size('usp', 'unit-word', match),
  'wire-gauge': (place, match) => (ofOtherTrade(place) ? NOTHING : size('wire-gauge', 'unit-word', match)),
  'usp-spoken': thread,
  'usp-hyphened': (place, match, { item }) => hyphenSense(place, match, item.values[0]!),
  'usp-decimal-slip': (place, match, { item }) => slipSense(place, match, item.values),
  'metric-before': (place, match, candidate) =>
    opensNext(place, candidate) ? NOTHING : metricSense(place, match),
  'metric-after': (place, match) => metricSense(place, match),
  numbered: numberedRule,
  'numbered-spoken': numberedRule,
  'wire-inches': (place, match) => wireSense(place, match, false),
  'wire-digits': (place, match) => wireSense(place, match, true),
  'wire-short': (place, match) => wireSense(place, match, true),
  'needle-slash': (place, match) =>
    besideGauge(place) ? size('millimetre', 'gauge-by-length', match) : NOTHING,
  'millimetres-measured': (place, match) =>
    sizedBeside(place) || (/millimet/.test(match) && place.scene.devices.length > 0)
      ? size('millimetre', 'diameter-word', match)
      : NOTHING,
  'needle-product-bare': (place, match) =>
    ofNeedle(place) ? size('millimetre', 'gauge-by-length', match) : NOTHING,
  'inch-fraction': (place, match) => (afterGauge(place) ? size('inch', 'gauge-by-length', match) : NOTHING),
  'wire-spoken': (place, match) => wireSense(place, match, true),
  hegar: (_, match) => size('hegar', 'unit-word', match),
  'tube-inner': (place, match) =>
    place.devices.some((hit) => systemOf(hit.means) === 'tube-id' || /^tub/.test(hit.word)) ||
    /mm/i.test(match)
      ? size('tube-id', 'inner-diameter', match)
      : NOTHING,
};

/** Notations of lengths: judged after the rest, since a size beside them decides. */
export const LENGTHS: Readonly<Record<string, LengthSystem>> = {
  'needle-product': 'millimetre',
  millimetres: 'millimetre',
  centimetres: 'millimetre',
  micrometres: 'millimetre',
  'millimetres-spoken': 'millimetre',
  inches: 'inch',
  'inches-spoken': 'inch',
};
