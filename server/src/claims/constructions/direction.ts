/**
 * Which way a system runs: "the higher the gauge, the thinner the needle", "as the French climbs the tube shrinks",
 * "bigger number, smaller bore", "every extra zero makes it finer", "gauge and bore are inversely related".
 */
import type { Axis } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { groups, type Scene } from '../text/scene.ts';
import { AXIS_CHANGE, DOWN, UP } from '../words/changes.ts';
import { CHANGES, GROWING, SHRINKING } from '../words/ways.ts';
import { actedOn } from './acting.ts';
import { clauses } from './clauses.ts';
import { INVERSE, inverseIn, STRAIGHT } from './inverse.ts';
import type { Construction, Reading } from './model.ts';
import {
  amount,
  biggerIs,
  counting,
  fromNumber,
  inNumber,
  inSize,
  moreFrench,
  oneMore,
  rowOfZeros,
  runsOn,
  zeroTaken,
} from './number-idioms.ts';
import { systemNear } from './scale-near.ts';
import { directionClaim, type NumberSide, type SizeSide } from './sides.ts';
import { waysOf } from './ways.ts';
import { wholeNumbers } from './whole.ts';

export const direction: Construction = {
  id: 'direction',
  needs: () => [
    { holds: ['numbered', 'measured'] },
    { holds: ['numbered'], words: [...INVERSE, ...STRAIGHT, 'hand', 'together'] },
    { holds: ['numbered'], words: CHANGES },
    { sizes: 2, words: CHANGES },
  ],
  leaning: true,
  read(scene) {
    if (ofMoney(scene.items)) return [];
    const parts = clauses(scene.items);
    const turned = parts.some(([from, to]) => turnedRound(scene.items.slice(from, to)));
    return parts.flatMap(([from, to]) => {
      if (turned && !scene.items.slice(from, to).some((item) => item.system)) return [];
      const close = readClause(scene, from, to);
      return close.length > 0 ? close : waysOf(scene, from, to);
    });
  },
};

/** "…; with French it is the other way round": the system named belongs to this part, not to the one before. */
const turnedRound = (items: readonly Item[]): boolean =>
  items.some((item) => item.system) && TURNED.test(items.map((item) => item.word).join(' '));
const TURNED = /\b(?:other way|opposite|reverse|reversed|vice versa|contrary)\b/;

function readClause(scene: Scene, from: number, to: number): Reading[] {
  const items = from === 0 && to === scene.items.length ? scene.items : scene.items.slice(from, to);
  const words = measuredWords(items);
  const numbers = numberSides(scene, items, words);
  const sizes = sizeSides(items, words, numbers);
  const inverse = inverseIn(scene, items, from);
  const colon = items.findIndex((item) => item.word === ':');
  if (inverse.length > 0 && colon > 0 && from + colon + 1 < to) {
    const rest = readClause(scene, from + colon + 1, to);
    return rest.length > 0 ? rest : inverse;
  }
  if (wholeNumbers(items) >= 0 || withoutZeros(items)) return [];
  if (inverse.length > 0) return inverse;
  const number = numbers[0];
  const size = sizes[0];
  if (!number || !size || !alike(numbers) || !agree(sizes)) return [];
  if (!linked(items, number, size)) return [];
  const both = bothScales(items, number);
  if (both === undefined) return [];
  return [directionClaim(scene, from, { ...number, system: both }, size)];
}

/** "numbers without a nought rise with the thickness": said of the sizes that have none. */
const withoutZeros = (items: readonly Item[]): boolean =>
  items.some(
    (item, i) =>
      item.system === 'usp-zeros' &&
      items.slice(Math.max(0, i - 2), i).some((near) => /^(?:without|lacking)$/.test(near.word)),
  );

/** "a zero on the invoice": of money. */
const ofMoney = (items: readonly Item[]): boolean =>
  items.some((item) => item.system === 'usp-zeros') && items.some(({ word }) => MONEY.test(word));
const MONEY =
  /^(?:invoices?|bills?|che(?:que|ck)s?|prices?|price-tag|cost|costs|salary|salaries|bank|budget|account|receipts?|wallet|money|pay|fee|fees|odometer|mileage)$/;

/** "Gauge and French both rise with the width": said of each, so of the one that goes the other way. */
function bothScales(items: readonly Item[], number: NumberSide): NumberSide['system'] | undefined {
  const joined = items.some(
    (item, i) =>
      item.system &&
      items[i + 1]?.word === 'and' &&
      items[i + 2]?.system &&
      item.system !== items[i + 2]!.system,
  );
  if (!joined) return number.system;
  const systems = new Set(items.flatMap((item) => item.system ?? []));
  const both = items.some((item) => /^(?:both|alike|each)$/.test(item.word));
  if (!both || systems.size !== 2 || !systems.has('needle-gauge') || !systems.has('french')) return undefined;
  return number.sign === 1 ? 'needle-gauge' : 'french';
}

/** Several number words are fine when they are of one system and go one way. */
const alike = (numbers: readonly NumberSide[]) =>
  numbers.every((side) => side.sign === numbers[0]!.sign && side.system === numbers[0]!.system);

/** Several size words are fine when they say the same thing. */
const agree = (sizes: readonly SizeSide[]) => sizes.every((side) => side.sign === sizes[0]!.sign);

function numberSides(scene: Scene, items: readonly Item[], words: readonly Measured[]): NumberSide[] {
  const found: NumberSide[] = [];
  for (const word of words) {
    if (word.axis !== 'number' || word.degree === 'superlative') continue;
    const system =
      word.system ?? (countsZeros(items, word.to) ? 'usp-zeros' : systemNear(scene, items, word.to));
    if (!system || system === 'usp') continue;
    const theForm = items[word.at - 1]?.word === 'the' || items[word.at + 1]?.word === 'the';
    if (word.idiom) continue;
    if (word.degree === 'plain' && !theForm && !PLAIN_NUMBER.has(items[word.at]!.word)) continue;
    found.push({ at: word.at, to: word.to, system, sign: word.sign });
  }
  const moved = fromNumber(items, found);
  if (moved) return [moved];
  const idiom = found.length === 0 ? idioms(scene, items) : undefined;
  if (idiom) return [idiom];
  if (found.length === 0) found.push(...growing(scene, items));
  if (found.length === 0) found.push(...changing(scene, items, words));
  if (found.length === 0) found.push(...superlatives(scene, items, words));
  return found;
}
/** "the number before the dash", "the first number", of a thread: it tells how many noughts there are. */
function countsZeros(items: readonly Item[], to: number): boolean {
  const after = joined(items.slice(to + 1, to + 6));
  const thread = items.some((item) => /^(?:sutures?|threads?|stitch(?:es)?|strands?)$/.test(item.word));
  const zeros = groups(items).some((group) =>
    group.sizes.every(({ system, value }) => system === 'usp' && value < 1),
  );
  return (
    /^(?:before|in front of|left of) the (?:0|zero|nought|oh|o|dash|hyphen|slash)\b/.test(after) ||
    (items.slice(Math.max(0, to - 1), to + 1).some((item) => item.word === 'first') && (thread || zeros))
  );
}

/** Number sides said in passing. */
function idioms(scene: Scene, items: readonly Item[]): NumberSide | undefined {
  const systemAt = (i: number) => systemNear(scene, items, i);
  return (
    runsOn(items) ??
    rowOfZeros(items) ??
    zeroTaken(items) ??
    inNumber(items, systemAt) ??
    counting(items, systemAt) ??
    moreFrench(items) ??
    biggerIs(items, systemAt) ??
    oneMore(items, systemAt)
  );
}

const PLAIN_NUMBER = new Set(['big', 'large', 'small', 'high', 'low', 'little']);

/** "the gauge climbs", "as the French number goes up", "each extra zero". */
function changing(scene: Scene, items: readonly Item[], words: readonly Measured[]): NumberSide[] {
  for (let i = 0; i < items.length; i++) {
    const item = items[i]!;
    // "A larger gauge needle increases …": the word belongs to the idiom before it.
    if (words.some((word) => word.idiom && word.at < i && i <= word.to)) continue;
    const noun = item.system ?? (item.axisNoun?.axis === 'number' ? systemNear(scene, items, i) : undefined);
    if (!noun || noun === 'usp') continue;
    const zero = noun === 'usp-zeros';
    const before = items.slice(Math.max(0, i - 3), i).findLast((near) => ADDED.has(near.word));
    if (zero && before)
      return [{ at: i, to: i, system: noun, sign: takesAway(before, items[i + 1]) ? -1 : 1 }];
    const after =
      i + 1 + items.slice(i + 1, i + 5).findIndex((near) => UP.has(near.word) || DOWN.has(near.word));
    if (after <= i) continue;
    const named = SIZE_WORD.has(items[i + 1]?.word ?? '') ? i + 2 : i + 1;
    if (items.slice(named, after).some((near) => near.axisNoun && near.axisNoun.axis !== 'number')) continue;
    if (
      items
        .slice(i + 1, after)
        .some(
          (near) =>
            near.kind === 'punctuation' ||
            near.kind === 'size' ||
            near.word === 'means' ||
            near.word === 'is',
        )
    )
      continue;
    return [{ at: i, to: after, system: noun, sign: UP.has(items[after]!.word) ? 1 : -1 }];
  }
  return [];
}
/** "drop a zero", "every zero fewer". */
const takesAway = (before: Item, next: Item | undefined): boolean =>
  before.word === 'fewer' || before.word === 'drop' || /^(?:fewer|less)$/.test(next?.word ?? '');

/** "As the French size goes up": the word belongs to the name of the scale. */
const SIZE_WORD = new Set(['size', 'sizes', 'scale']);
const ADDED = new Set([
  'extra',
  'more',
  'another',
  'additional',
  'added',
  'add',
  'adding',
  'every',
  'each',
  'fewer',
  'drop',
]);

/** "Rising gauge numbers mean …": a participle before the number. */
function growing(scene: Scene, items: readonly Item[]): NumberSide[] {
  for (let i = 0; i + 1 < items.length; i++) {
    const { word } = items[i]!;
    const sign = GROWING.has(word) ? 1 : SHRINKING.has(word) ? -1 : step(items, i) || climbs(items, i);
    const k = SKIPPED.has(items[i + 1]!.word) ? i + 2 : i + 1;
    const next = items[k];
    const system =
      next?.system ?? (next?.axisNoun?.axis === 'number' ? systemNear(scene, items, k) : undefined);
    if (sign === 0 || !system || system === 'usp') continue;
    return [{ at: i, to: k, system, sign }];
  }
  return [];
}

const SKIPPED = new Set(['the', 'a', 'in', 'your']);

/** "as you climb the French scale". */
const climbs = (items: readonly Item[], i: number): 1 | -1 | 0 => {
  const scale = /^(?:scale|numbers?|sizes?|ladder|range|figures?|list|chart)$/;
  const named =
    items[i + 1]?.word === 'the' &&
    (items[i + 2]?.system ? scale.test(items[i + 3]?.word ?? '') : items[i + 2]?.axisNoun?.axis === 'number');
  return !named
    ? 0
    : /^(?:climb|ascend|mount)$/.test(items[i]!.word)
      ? 1
      : /^descend$/.test(items[i]!.word)
        ? -1
        : 0;
};

const STEPS =
  /^(?:steps?|jumps?|moves?|sizes?|going|go|moving|stepping|climbing|climb|working|come|coming|get|walk|run|read|reading|count|travel|head|work)$/;

/** "each step up in French", "one size down the gauge". */
function step(items: readonly Item[], i: number): 1 | -1 | 0 {
  const before = items.slice(Math.max(0, i - 2), i).some((item) => STEPS.test(item.word));
  const scale =
    items[i + 1]?.word === 'in' ||
    items[i + 3]?.axisNoun?.axis === 'number' ||
    /^(?:scale|range|ladder|chart)$/.test(items[i + 3]?.word ?? '') ||
    items[i + 2]?.system === 'french';
  if (!before || !scale) return 0;
  return items[i]!.word === 'up' ? 1 : items[i]!.word === 'down' ? -1 : 0;
}

/** "the finest thread carries the largest figure": both ends in the highest degree. */
function superlatives(scene: Scene, items: readonly Item[], words: readonly Measured[]): NumberSide[] {
  const number = words.find((word) => word.axis === 'number' && word.degree === 'superlative' && !word.idiom);
  const size = words.find((word) => SIZE_AXES.has(word.axis) && word.degree === 'superlative');
  const system = number && (number.system ?? systemNear(scene, items, number.to));
  if (!number || !size || !system || system === 'usp' || size === number) return [];
  return [{ at: number.at, to: number.to, system, sign: number.sign }];
}

const SIZE_AXES = new Set<Axis>(['outer', 'bore', 'flow', 'hole', 'strength']);

function sizeSides(
  items: readonly Item[],
  words: readonly Measured[],
  numbers: readonly NumberSide[],
): SizeSide[] {
  const taken = (at: number) => numbers.some((side) => at >= side.at && at <= side.to);
  const found: SizeSide[] = words
    .filter(
      (m) =>
        SIZE_AXES.has(m.axis) &&
        !taken(m.at) &&
        !m.idiom &&
        (m.degree === 'comparative' ||
          theForm(items, m) ||
          plainTwin(items, m, words, numbers) ||
          numbers.some((side) => words.some((w) => w.at === side.at && w.degree === 'superlative'))),
    )
    .map((m) => ({ at: m.at, to: m.to, axis: m.axis, sign: m.sign }));
  for (let i = 0; i < items.length; i++) {
    const change = AXIS_CHANGE.get(items[i]!.word);
    if (change && !taken(i) && !items[i]!.magnitude) found.push({ at: i, to: i, ...change });
  }
  if (found.length === 0) found.push(...axisMoves(items, taken));
  if (found.length === 0)
    found.push(...[inSize(items) ?? amount(items, taken)].filter((side) => side !== undefined));
  return found;
}

/** "low gauge number, narrow cannula", "small numbers are thin needles": both sides plain, close together, in that order. */
function plainTwin(
  items: readonly Item[],
  m: Measured,
  words: readonly Measured[],
  numbers: readonly NumberSide[],
): boolean {
  if (m.degree !== 'plain' || m.excess || !items[m.at]!.magnitude?.row) return false;
  const number = numbers.find((side) => words.some((w) => w.at === side.at && w.degree === 'plain'));
  if (number && m.to < number.at) return turnedTwin(items, m, number);
  if (!number || m.at < number.to || m.at - number.to > 7) return false;
  const between = items.slice(number.to + 1, m.at);
  const rest = items.slice(m.to + 1, m.to + 3);
  return (
    between.some((item) => TWINS.has(item.word)) &&
    between.every((item) => TWINS.has(item.word) || TOLD.test(item.word) || item.deviceNoun) &&
    (m.attributive
      ? rest.some((item) => item.deviceNoun || item.axisNoun) || m.to > m.at
      : rest.length === 0 || !rest[0]!.word.match(/^[a-z]/))
  );
}
/** "Thick needles have low numbers", "thin: high number". */
function turnedTwin(items: readonly Item[], m: Measured, number: NumberSide): boolean {
  const between = items.slice(m.to + 1, number.at);
  return (
    between.length <= 4 &&
    (m.attributive || between[0]?.kind === 'punctuation') &&
    between.some((item) => TWINS.has(item.word)) &&
    between.every((item) => TWINS.has(item.word) || /^(?:an?|the)$/.test(item.word) || item.deviceNoun)
  );
}

/** "tells you that the needle is fat": what may stand between the two. */
const TOLD = /^(?:an?|the|you|us|me|that|your|of)$/;

const TWINS = new Set([
  'tells',
  'tell',
  'shows',
  'says',
  'signals',
  'indicates',
  'denotes',
  'promises',
  'carry',
  'carries',
  'leave',
  'leaves',
  'make',
  'makes',
  'punch',
  'wear',
  'bear',
  'has',
  'have',
  ',',
  '=',
  '→',
  ':',
  '–',
  '—',
  'is',
  'are',
  'means',
  'mean',
  'gives',
  'give',
  'equals',
]);

const theForm = (items: readonly Item[], m: Measured) =>
  items[m.at - 1]?.word === 'the' && m.degree !== 'plain';

/** "the bore falls", "diameter goes up". */
function axisMoves(items: readonly Item[], taken: (at: number) => boolean): SizeSide[] {
  for (let i = 0; i < items.length; i++) {
    const noun =
      items[i]!.axisNoun ?? (items[i]!.deviceNoun ? { axis: 'outer' as const, sign: 1 as const } : undefined);
    if (!noun || !SIZE_AXES.has(noun.axis) || taken(i)) continue;
    const grows =
      GROWING.has(items[i - 1]?.word ?? '') || GROWING.has(items[i - 2]?.word ?? '')
        ? 1
        : SHRINKING.has(items[i - 1]?.word ?? '') || SHRINKING.has(items[i - 2]?.word ?? '')
          ? -1
          : 0;
    const acted = grows === 0 ? actedOn(items, i) : undefined;
    if (acted && !taken(acted.at))
      return [{ at: acted.at, to: i, axis: noun.axis, sign: (acted.sign * noun.sign) as 1 | -1 }];
    const cue =
      grows === 0 ? -1 : GROWING.has(items[i - 1]!.word) || SHRINKING.has(items[i - 1]!.word) ? i - 1 : i - 2;
    if (cue >= 0 && !taken(cue))
      return [{ at: cue, to: i, axis: noun.axis, sign: (grows * noun.sign) as 1 | -1 }];
    const near = items.slice(i + 1, i + 4);
    const offset = near.findIndex(
      (item) => (UP.has(item.word) || DOWN.has(item.word)) && !QUANTITY.test(item.word),
    );
    if (
      offset < 0 ||
      taken(i + 1 + offset) ||
      near.slice(0, offset).some((item) => item.kind === 'punctuation')
    )
      continue;
    const up = UP.has(near[offset]!.word) ? 1 : -1;
    return [{ at: i + 1 + offset, to: i + 1 + offset, axis: noun.axis, sign: (up * noun.sign) as 1 | -1 }];
  }
  return [];
}

/** "a suture with more zeros": how many, not which way. */
const QUANTITY = /^(?:more|extra|additional|added|another|greater|less|fewer)$/;

/** The two sides must stand close and nothing concrete may come between. */
function linked(items: readonly Item[], number: NumberSide, size: SizeSide): boolean {
  const [from, to] = number.at < size.at ? [number.to, size.at] : [size.to, number.at];
  return to - from <= 14 && !items.slice(from + 1, to).some((item) => item.kind === 'size');
}
