/**
 * Lengths as people say them: "half a millimetre", "a centimetre and a bit", and what the words around a length leave
 * open: "just under a millimetre", "a shade over 1 mm".
 */
import type { Mention } from '../../mentions/model.ts';
import { readNumber } from '../../mentions/words/numbers.ts';
import type { Item } from './items.ts';
import { joined, textOf } from './joined.ts';
import { remembered } from './remember.ts';

/** Both ends in mm. */
export interface Said {
  readonly min: number;
  readonly max: number;
}

/** A sentence whose lengths in words stand as sizes, with the place of each item in the sentence as it was. */
export interface Measured {
  readonly items: readonly Item[];
  readonly at: readonly number[];
}

const PARTS: ReadonlyMap<string, number> = new Map([
  ['half', 1 / 2],
  ['third', 1 / 3],
  ['thirds', 1 / 3],
  ['quarter', 1 / 4],
  ['quarters', 1 / 4],
  ['fifth', 1 / 5],
  ['fifths', 1 / 5],
  ['tenth', 1 / 10],
  ['tenths', 1 / 10],
  ['two-thirds', 2 / 3],
  ['three-quarters', 3 / 4],
]);
const UNITS: ReadonlyMap<string, number> = new Map([
  ...['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'].map((word) => [word, 1] as const),
  ...['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'].map((word) => [word, 10] as const),
]);
/** Every length in words ends in one of these. */
export const LENGTH_UNITS: ReadonlySet<string> = new Set(UNITS.keys());
const ARTICLE = /^(?:an?|one)$/;
const STRESS = /^(?:full|whole|good|clear|single|mere|bare|clean|fat|thin|solid)$/;

/** What a round figure in words leaves open on either side, as a share of it. */
const ROUND = 0.2;
/** How far "just under" and "a shade over" reach. */
const NEAR = 0.25;

interface Amount {
  readonly to: number;
  readonly mm: number;
}

/** The length said from item `i` on, in words; digits are left to the notations. */
function amountAt(items: readonly Item[], i: number): Amount | undefined {
  const word = (k: number) => (items[k]?.kind === 'word' ? items[k]!.word : '');
  let k = i;
  let value: number | undefined;
  if (ARTICLE.test(word(k))) {
    k++;
    if (STRESS.test(word(k))) k++;
    value = 1;
  } else if (/^[a-z]/.test(word(k)) && !PARTS.has(word(k))) {
    value = readNumber(word(k))?.value;
    if (value === undefined) return undefined;
    k++;
  }
  const part = PARTS.get(word(k));
  if (part !== undefined) {
    // "In tenths of a millimetre" names a unit, not a length.
    if (value === undefined && word(k).endsWith('s')) return undefined;
    value = (value ?? 1) * part;
    k++;
    if (word(k) === 'of') k++;
    if (ARTICLE.test(word(k))) k++;
  } else if (value === undefined) return undefined;
  if (word(k) === 'and' && ARTICLE.test(word(k + 1)) && PARTS.has(word(k + 2)) && UNITS.has(word(k + 3))) {
    value += PARTS.get(word(k + 2))!;
    k += 3;
  }
  const unit = UNITS.get(word(k));
  return unit === undefined ? undefined : tailed(items, { to: k, mm: value * unit }, unit);
}

/** "a millimetre and a half". */
function tailed(items: readonly Item[], { to, mm }: Amount, unit: number): Amount {
  const part = PARTS.get(items[to + 3]?.word ?? '');
  const joined = items[to + 1]?.word === 'and' && ARTICLE.test(items[to + 2]?.word ?? '');
  return joined && part !== undefined ? { to: to + 3, mm: mm + part * unit } : { to, mm };
}

/** Words before a length of another kind: a step, a change, a distance. */
const NO_WIDTH =
  /^(?:by|within|nearest|every|each|per|another|extra|further|of|to|add|adds|gains?|loses?|than|no|not)$/;
const LEAST = '(?:just|only just|slightly|marginally|a (?:shade|hair|touch|bit|little|fraction|whisker))';
const JUST_UNDER = new RegExp(
  `(?:${LEAST} (?:under|below|short of|shy of|less than)|nearly|almost|not quite|barely|close on|practically|just about)(?: an?| one| the)?$`,
);
const JUST_OVER = new RegExp(
  `(?:${LEAST} (?:over|above|more than|past)|a good|a full|a generous)(?: an?| one)?$`,
);
const UNDER =
  /\b(?:(?:well |far |much )?(?:under|below|less than)|at most|no more than|up to)(?: an?| one)?$/;
const OVER = /\b(?:(?:well |far |much )?(?:over|above|more than)|at least|no less than)(?: an?| one)?$/;
const MORE_AFTER =
  /^(?:and (?:a )?(?:bit|little|touch|fraction|shade)\b|or (?:a (?:bit|little|touch|shade) )(?:over|more)\b|odd\b|plus\b)/;
/** One of these stands in whatever is said beside a length in figures. */
export const LENGTH_HEDGES =
  /\b(?:under|below|short|shy|than|nearly|almost|quite|barely|close|practically|about|over|above|past|good|full|generous|most|up|least|bit|little|touch|fraction|shade|odd|plus)\b/;
const REACH = 5;

/** What the words beside a length leave open; undefined when they leave it as it stands. */
function hedged(items: readonly Item[], from: number, to: number, mm: number): Said | undefined {
  const before = items.slice(Math.max(0, from - REACH), from);
  const cut = before.findLastIndex((item) => item.kind !== 'word') + 1;
  const inside =
    items[from]!.kind === 'size'
      ? []
      : items.slice(from, to).filter((item) => /^(?:an?|good|full)$/.test(item.word));
  const front = textOf([...before.slice(cut), ...inside]);
  const back = joined(items, to + 1, to + 5);
  if (JUST_UNDER.test(front)) return { min: mm * (1 - NEAR), max: mm };
  if (JUST_OVER.test(front) || MORE_AFTER.test(back)) return { min: mm * 0.97, max: mm * (1 + NEAR + 0.1) };
  if (UNDER.test(front)) return { min: 0, max: mm };
  return OVER.test(front) ? { min: mm, max: Number.POSITIVE_INFINITY } : undefined;
}

/** The sentence with its lengths in words as sizes; undefined when it says none that way. */
export const withLengths = remembered((items: readonly Item[]): Measured | undefined => {
  if (!items.some((item) => UNITS.has(item.word) || item.mention?.sizes[0]?.system === 'millimetre'))
    return undefined;
  const rows: Item[] = [];
  const at: number[] = [];
  let changed = false;
  for (let i = 0; i < items.length; i++) {
    const item = items[i]!;
    at.push(i);
    const [own] = item.mention?.sizes ?? [];
    if (own?.system === 'millimetre' && item.mention?.sizes.length === 1 && !item.mention.bound) {
      const said = hedged(items, i, i, own.value);
      changed ||= said !== undefined;
      rows.push(said ? { ...item, said } : item);
      continue;
    }
    const amount =
      item.kind === 'word' && !NO_WIDTH.test(items[i - 1]?.word ?? '') ? amountAt(items, i) : undefined;
    if (!amount) {
      rows.push(item);
      continue;
    }
    changed = true;
    const said = hedged(items, i, amount.to, amount.mm) ?? {
      min: amount.mm * (1 - ROUND),
      max: amount.mm * (1 + ROUND),
    };
    const tail = MORE_AFTER.exec(joined(items, amount.to + 1, amount.to + 5))?.[0];
    const to = amount.to + (tail ? tail.split(' ').length : 0);
    rows.push(asSize(items, i, { ...amount, to }, said));
    i = to;
  }
  return changed ? { items: rows, at } : undefined;
});

/** "0.81 mm" that no notation took for a size, and lengths in words: all of them as sizes. */
export const withFigures = remembered((items: readonly Item[]): Measured => {
  const { items: words, at } = withLengths(items) ?? { items, at: undefined };
  const rows: Item[] = [];
  const places: number[] = [];
  for (let i = 0; i < words.length; i++) {
    const item = words[i]!;
    const figure = figureAt(words, i);
    places.push(at ? at[i]! : i);
    rows.push(figure ?? item);
    if (figure && figure.end > item.end) i++;
  }
  return { items: rows, at: places };
});

const FIGURE = /^(\d{1,3}(?:[.,]\d{1,3})?)(mm)?$/;

function figureAt(items: readonly Item[], i: number): Item | undefined {
  const item = items[i]!;
  if (item.kind !== 'word') return undefined;
  const match = FIGURE.exec(item.word);
  const apart = match !== null && !match[2] && UNITS.get(items[i + 1]?.word ?? '') === 1;
  const read = match && (match[2] || apart) ? readNumber(match[1]!) : undefined;
  if (!read || STEP.test(items[i - 1]?.word ?? '')) return undefined;
  const made = asSize(items, i, { to: apart ? i + 1 : i, mm: read.value });
  return { ...made, mention: { ...made.mention!, decimals: read.decimals, notation: 'figure' } };
}
const STEP = /^(?:[x×*/–-]|by|every|each|per)$/;

function asSize(items: readonly Item[], from: number, { to, mm }: Amount, said?: Said): Item {
  const first = items[from]!;
  const text = joined(items, from, to + 1);
  const span = { start: first.start, end: items[to]!.end };
  const mention: Mention = {
    passage: -1,
    span,
    source: { start: 0, end: 0 },
    text,
    kind: 'size',
    sizes: [{ system: 'millimetre', value: Number(mm.toPrecision(4)) }],
    readings: [],
    notation: 'said',
    decimals: 1,
    spoken: true,
    evidence: [],
  };
  return { ...span, word: text, kind: 'size', capital: false, mention, ...(said ? { said } : {}) };
}
