/** A limit in words: "18 G or bigger", "nothing narrower than a 16 G", "at least 12 Fr", "anything finer than 6-0". */
import { direction } from '../../sizes/index.ts';
import { LOWER, NUMBER_ABOVE, NUMBER_BELOW, OPENS, SHUTS_OUT, UPPER } from '../words/limits.ts';
import type { Item } from './items.ts';
import { type Measured, measuredWords } from './magnitudes.ts';
import { remembered } from './remember.ts';
import { type Group, groups } from './scene.ts';

export interface Limit {
  readonly bound: Group;
  /** Which side is allowed, in thickness. */
  readonly side: 'at-least' | 'at-most';
  /** The bound itself is not allowed. */
  readonly strict: boolean;
  /** Called a limit by its noun: "a maximum of 12 Fr". */
  readonly noun?: true;
  /** First and last item of the phrase. */
  readonly from: number;
  readonly to: number;
}

/** One of these stands in every limit, or a comparing word does. */
export const LIMIT_WORDS: readonly string[] = [
  ...[...NUMBER_ABOVE, ...NUMBER_BELOW, ...UPPER, ...LOWER],
  ...['least', 'most', 'up', 'upward', 'upwards', 'down', 'downward', 'downwards'],
  ...['cap', 'caps', 'capped', 'limit', 'limits', 'limited'],
];

/** Limits of a sentence, in its order. Only single sizes bound. */
export const limitsIn = remembered((items: readonly Item[]): readonly Limit[] => {
  const words = measuredWords(items);
  return groups(items).flatMap((bound) =>
    bound.sizes.length === 1 ? (after(items, words, bound) ?? before(items, words, bound) ?? []) : [],
  );
});

type Sign = 1 | -1;

const side = (sign: Sign): Limit['side'] => (sign === 1 ? 'at-least' : 'at-most');

/** Higher numbers are thicker: only there a number bounds a size. */
const rises = (bound: Group) => direction(bound.sizes[0]!.system) === 'up';

const thickness = (m: Measured | undefined): Sign | undefined =>
  m && m.degree === 'comparative' && !m.idiom && (m.axis === 'outer' || m.axis === 'bore')
    ? m.sign
    : undefined;

const byNumber = (word: string | undefined, bound: Group): Sign | undefined =>
  word === undefined || !rises(bound)
    ? undefined
    : NUMBER_ABOVE.has(word)
      ? 1
      : NUMBER_BELOW.has(word)
        ? -1
        : undefined;

/** "below 22 G in bore": the noun says that the size is meant and not the number. */
function inAxis(items: readonly Item[], word: string | undefined, bound: Group): Sign | undefined {
  const noun = items[bound.to + 1]?.word === 'in' ? items[bound.to + 2]?.axisNoun : undefined;
  if (noun?.axis !== 'outer' && noun?.axis !== 'bore') return undefined;
  return NUMBER_ABOVE.has(word ?? '') ? 1 : NUMBER_BELOW.has(word ?? '') ? -1 : undefined;
}

/** "18 G or bigger", "20 Fr and above", "18 G upwards". */
function after(items: readonly Item[], words: readonly Measured[], bound: Group): Limit | undefined {
  const link = items[bound.to + 1]?.word;
  const at = bound.to + 2;
  const plain = rises(bound) ? plainAfter(items, bound) : undefined;
  if (plain) return { bound, side: side(plain.sign), strict: false, from: bound.from, to: plain.to };
  if (link !== 'or' && link !== 'and') return undefined;
  const sign = thickness(words.find((m) => m.at === at)) ?? byNumber(items[at]?.word, bound);
  // "a 14 Fr and smaller than …" compares; "20 G or finer needles" bounds.
  if (sign === undefined || items[at + 1]?.word === 'than') return undefined;
  return { bound, side: side(sign), strict: false, from: bound.from, to: at };
}

/** "nothing narrower than 16 G", "no drain under 20 Fr", "at least 12 Fr", "anything finer than 6-0". */
function before(items: readonly Item[], words: readonly Measured[], bound: Group): Limit | undefined {
  let i = bound.from - 1;
  if (/^(?:an?|the)$/.test(items[i]?.word ?? '')) i--;
  const [last, previous] = [items[i]?.word, items[i - 1]?.word];
  const measured = nounBound(items, i);
  if (measured && items[measured.at + 1]?.axisNoun && items[measured.at + 1]!.axisNoun!.axis !== 'number')
    return { bound, side: side(measured.sign), strict: false, noun: true, from: measured.at, to: bound.to };
  if (rises(bound)) {
    const plain = plainBound(previous, last);
    if (plain) return { bound, side: side(plain), strict: false, from: i - 1, to: bound.to };
    const named = nounBound(items, i);
    if (named)
      return { bound, side: side(named.sign), strict: false, noun: true, from: named.at, to: bound.to };
  }
  const compares = last === 'than';
  const sign = compares
    ? (thickness(words.find((m) => m.at === i - 1)) ?? byNumber(previous, bound))
    : (byNumber(last, bound) ?? inAxis(items, last, bound));
  if (sign === undefined) return undefined;
  const at = openerAt(items, compares ? i - 1 : i);
  if (at === undefined) return undefined;
  const shut = SHUTS_OUT.has(items[at]!.word);
  return { bound, side: side(shut ? (-sign as Sign) : sign), strict: !shut, from: at, to: bound.to };
}

/** "no drain under", "nothing narrower than", "anything that is finer than", "threads finer than". */
function openerAt(items: readonly Item[], word: number): number | undefined {
  const start = Math.max(0, word - 4);
  const opener = items
    .slice(start, word)
    .findLastIndex((item) => SHUTS_OUT.has(item.word) || OPENS.has(item.word) || things(item));
  if (opener < 0) return undefined;
  const between = items.slice(start + opener + 1, word);
  const filled = between.every((item) => item.kind === 'word' && (item.deviceNoun || FILL.test(item.word)));
  if (!filled) return undefined;
  // "no drains under": the noun is part of the phrase.
  const shut = SHUTS_OUT.has(items[start + opener - 1]?.word ?? '') && things(items[start + opener]!);
  return shut ? start + opener - 1 : start + opener;
}
const things = (item: Item) => item.deviceNoun === true && /s$/.test(item.word);

const FILL =
  /^(?:that|which|is|are|go|goes|going|any|ever|size|sizes|of|be|to|use|uses|place|much|in|with|starting|measuring|staying|lying|all|still)$/;

/** "20 Fr at least", "14 Fr maximum", "from 16 Fr upwards". */
function plainAfter(items: readonly Item[], bound: Group): { sign: Sign; to: number } | undefined {
  const [first, second] = [items[bound.to + 1]?.word ?? '', items[bound.to + 2]?.word ?? ''];
  if (first === 'at' && /^(?:least|most)$/.test(second))
    return { sign: second === 'least' ? 1 : -1, to: bound.to + 2 };
  if (/^(?:minimum|maximum)$/.test(first)) return { sign: first === 'minimum' ? 1 : -1, to: bound.to + 1 };
  const from = items[bound.from - 1]?.word === 'from';
  const way = /^up(?:wards?)?$/.test(first) ? 1 : /^down(?:wards?)?$/.test(first) ? -1 : undefined;
  return from && way ? { sign: way, to: bound.to + 1 } : undefined;
}

/** "the minimum for blood is 24 Fr", "a limit of 12 Fr". */
function nounBound(items: readonly Item[], i: number): { sign: Sign; at: number } | undefined {
  const link = items[i]?.word ?? '';
  // "we cap drains at 16 Fr"
  if (/^(?:at|to)$/.test(link)) {
    const at = items
      .slice(Math.max(0, i - 3), i)
      .findIndex((item) => /^(?:cap|caps|capped|limit|limits|limited)$/.test(item.word));
    return at < 0 ? undefined : { sign: -1, at: Math.max(0, i - 3) + at };
  }
  if (!/^(?:is|of|:|=)$/.test(link)) return undefined;
  for (let at = i - 1; at >= 0 && at >= i - 5; at--) {
    const word = items[at]!.word;
    if (items[at]!.kind !== 'word') return undefined;
    if (LOWER.has(word) || UPPER.has(word)) {
      // "the lower limit" is the other one.
      const lower = /^(?:lower|least|smallest)$/.test(items[at - 1]?.word ?? '');
      return { sign: LOWER.has(word) || lower ? 1 : -1, at };
    }
  }
  return undefined;
}

/** "at least", "up to", "at most", "minimum of". */
function plainBound(first: string | undefined, second: string | undefined): Sign | undefined {
  const two = `${first} ${second}`;
  if (two === 'at least' || two === 'minimum of') return 1;
  return two === 'up to' || two === 'at most' || two === 'maximum of' ? -1 : undefined;
}
