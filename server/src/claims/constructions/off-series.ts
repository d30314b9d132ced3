/**
 * Sizes between those that a series has: "tracheal tubes of 6.0, 6.5 and 6.8", "metric 1, 1.5, 2, 2.2", "a 15.2 Ch Foley",
 * "steel wire USP 5.5", "after 20 G the ISO list of cannulas goes on with 21 G".
 */
import { label } from '../../sizes/index.ts';
import { EP_METRIC } from '../../sizes/tables/ep-metric.ts';
import { IV_CANNULA } from '../../sizes/tables/iv-cannula.ts';
import type { ExistenceClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';

export const offSeries: Construction = {
  id: 'off-series',
  leaning: true,
  needs: () => [
    { like: /^(?:size )?\d{1,2}[.,]\d(?!\d)/ },
    { sizes: 2, words: ['iso', '10555', '10555-5'] },
    { sizes: 1, words: ['iso', '10555', '10555-5'], like: /^\d{2}$/ },
  ],
  read(scene) {
    const { items, sentence } = scene;
    if (sentence.close === '?') return [];
    const text = joined(items);
    return items.flatMap((_, i) => {
      const off = offAt(items, i, text);
      return off ? [reading(scene, i, off)] : [];
    });
  },
};

interface Off {
  readonly because: string;
  readonly sources: readonly string[];
}

const TUBES: Off = { because: 'tracheal tubes come by half millimetres', sources: [] };
const FOLEYS: Off = { because: 'urinary catheters go by whole French numbers', sources: [] };
const METRIC: Off = {
  because: 'metric numbers are 0.1–0.5, 0.7, 1, 1.5, 2, 2.5, 3, 3.5 and whole from 4',
  sources: ['PhEur-table', 'chu'],
};
const USP: Off = {
  because: 'USP sizes go by whole numbers and whole counts of zeros',
  sources: ['PhEur-table', 'JP2015', 'dewiki'],
};
const CANNULAS: Off = {
  because: 'the cannulas of ISO 10555-5 are 10, 12, 13, 14, 16, 17, 18, 20, 22, 24 and 26 G',
  sources: ['ISO10555-5', 'JPneedle'],
};

function offAt(items: readonly Item[], i: number, text: string): Off | undefined {
  const item = items[i]!;
  const number = DECIMAL.exec(item.word)?.[1];
  if (number === undefined) return ofIsoList(items, i, text) ? CANNULAS : undefined;
  const value = Number(number.replace(',', '.'));
  const system = item.mention?.sizes[0]?.system;
  if (system === 'french') return foley(item, value, text) ? FOLEYS : undefined;
  if (system === 'ep-metric' || system === 'usp') return undefined;
  if (items[i - 1]?.word === 'usp') return whole(items, i, value, text) ? USP : undefined;
  // "USP / metric: 3-0 / 2, 4-0 / 1.5": the other number of the thread.
  if (/\bmetric\b/.test(text) && EP_METRIC.some(({ metric }) => metric === value)) return undefined;
  if (between(items, i, 'usp')) return Number.isInteger(value) || value > 10 ? undefined : USP;
  if (between(items, i, 'ep-metric') && !EP_METRIC.some(({ metric }) => metric === value)) return METRIC;
  return tube(items, i, value, text) ? TUBES : undefined;
}
const DECIMAL = /^(\d{1,2}[.,]\d)(?: ?(?:mm|ch|fr|french|charri[eè]re|fg))?(?: id)?$/;

/** Measured or worked out, it need not be a size of the series. */
const MEASURED =
  /=|≈|\b(?:mm|inch(?:es)?|measures?d?|outer|outside|od|works? out|worked out|comes? (?:out )?(?:at|to)|equals?|calculat\w+|formula|rule|gives?|age|round(?:ed|ing|s)?|exact(?:ly)?|true|actual(?:ly)?|average|mean|median|between|about|roughly|times|multipl\w+|divid\w+|third|convert\w*|translat\w+)\b/;

/** "a 15.2 Ch Foley": a number that ISO 20696 could not print. */
const foley = ({ mention }: Item, value: number, text: string): boolean =>
  (mention?.device === 'urinary-catheter' ||
    (/^(?:catheter)?$/.test(mention?.device ?? '') && URINARY.test(text))) &&
  !Number.isInteger(value * 2) &&
  value >= 5 &&
  !MEASURED.test(text);

const URINARY = /\b(?:foleys?|urinary|urethral)\b/;

/** "USP 5.5", and not "USP 3.0" for 3-0. */
const whole = (items: readonly Item[], i: number, value: number, text: string): boolean =>
  !Number.isInteger(value) &&
  value < 11 &&
  THREAD.test(text) &&
  !/^(?:[-/]|metric|ep|ph|to|mm|%|kg|n)$/.test(items[i + 1]?.word ?? '');

const THREAD =
  /\b(?:sutur\w+|threads?|stitch\w*|wires?|ties?|tied|ligat\w+|clos\w+|sew\w*|silk|nylon|poly\w+|steel|catgut|gut|knots?|packets?)\b/;

/** In a row of sizes of a system: the nearest on either side are such, or both before it. */
function between(items: readonly Item[], i: number, system: string): boolean {
  const of = (k: number) => items[k]?.mention?.sizes[0]?.system === system;
  const before = JOINS.test(items[i - 1]?.word ?? '') && of(i - 2);
  const comma = /^(?:and|or)$/.test(items[i + 2]?.word ?? '') && items[i + 1]?.word === ',';
  const after = JOINS.test(items[i + 1]?.word ?? '') && of(i + (comma ? 3 : 2));
  return (
    before && (after || (of(i - 4) && (items[i + 1]?.kind !== 'word' || JOINS.test(items[i + 1]!.word))))
  );
}
const JOINS = /^(?:,|and|or|\/|–|-)$/;

/** "6.0, 6.5, 6.8 and 7.5", "a 7.2 tracheal tube". */
function tube(items: readonly Item[], i: number, value: number, text: string): boolean {
  if (Number.isInteger(value * 2) || value < 2 || value > 11 || !TRACHEAL.test(text)) return false;
  if (NOT_INNER.test(text)) return false;
  if (between(items, i, 'tube-id')) return true;
  const [lead, next] = [joined(items, Math.max(0, i - 2), i), joined(items, i + 1, i + 5)];
  return TAKEN.test(lead) && THE_TUBE.test(next) && !MEASURED.test(text);
}
const TRACHEAL = /\b(?:endo)?tracheal\b|\bett?s?\b/;
const NOT_INNER = /\b(?:outer|outside|od|external|tracheostom\w+|laser|formula|age|years?|rule|between)\b/;
const TAKEN = /(?:^| )(?:with|take|use|stock|order|an?|the|size|our|of)$/;
const THE_TUBE =
  /^(?:(?:mm|id|oral|nasal|cuffed|uncuffed|armoured|reinforced) )*(?:(?:endo)?tracheal tubes?|ett?s?)\b/;

/** "In the ISO list of IV cannulas the next finer after the 20 G is the 21 G". */
function ofIsoList(items: readonly Item[], i: number, text: string): boolean {
  const [size, ...more] = items[i]!.mention?.sizes ?? [];
  if (size?.system !== 'needle-gauge' || more.length > 0 || !ISO_LIST.test(text) || LACKS.test(text))
    return false;
  const listed = IV_CANNULA.some(({ gauge }) => gauge === size.value);
  return !listed && Number.isInteger(size.value) && TOLD.test(joined(items, Math.max(0, i - 5), i));
}
const ISO_LIST =
  /^(?=.*\b(?:iso|10555(?:-5)?)\b)(?=.*\b(?:list|series|row|table|sizes|standard|scale|next|by iso)\b)(?=.*\bcannula)(?!.*\bneedles?\b)/;
const LACKS =
  /\b(?:not|no|none|never|skips?|skipped|missing|without|lacks?|jumps?|leaves? out|omits?|than|needles?|hypodermic|6009|if|unless|exist\w*|nothing|\w+n't)\b/;
const TOLD =
  /(?:\b(?:is|comes?|follows?|with|includes?|has|are|runs?|then|lists?|holds?|contains?)(?: an?| the)?|[:,])(?: \d{2}(?: ?g)? ,)*$/;

/** "19", in a row that ends on "G", is 19 G. */
const written = ({ mention, start, end }: Item, text: string): string => {
  const [size] = mention?.sizes ?? [];
  return size?.system === 'needle-gauge' ? label(size) : text.slice(start, end);
};

function reading(scene: Scene, at: number, { because, sources }: Off): Reading {
  const item = scene.items[at]!;
  const span = spanOf(scene, item);
  const claim: ExistenceClaim = {
    kind: 'existence',
    construction: 'off-series',
    span: sentenceSpan(scene),
    focus: span,
    size: { sizes: [], mentions: [], span },
    odd: { written: written(item, scene.passage.text), because, sources },
  };
  return { claim, at, from: at, to: at };
}
