/**
 * Which way a system runs: "the higher the gauge, the thinner the needle", "as the French climbs the tube shrinks",
 * "bigger number, smaller bore", "every extra zero makes it finer", "gauge and bore are inversely related".
 */
import type { Axis } from '../model.ts';
import { flowSaid } from '../text/flowing.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { changed } from '../text/place.ts';
import type { Scene } from '../text/scene.ts';
import { AXIS_CHANGE, DOWN, UP } from '../words/changes.ts';
import { CHANGES, GROWING, SHRINKING } from '../words/ways.ts';
import { actedOn } from './acting.ts';
import { clauses } from './clauses.ts';
import { INVERSE, inverseIn, RISES, RUNS, STRAIGHT } from './inverse.ts';
import type { Construction, Reading } from './model.ts';
import {
  amount,
  biggerIs,
  counting,
  eachAfterLast,
  eachOfThem,
  fromNumber,
  inNumber,
  inSize,
  moreFrench,
  oneMore,
  rowOfZeros,
  runsOn,
  zeroTaken,
} from './number-idioms.ts';
import { changing, countsZeros, growing } from './number-moves.ts';
import { withoutParticles } from './particles.ts';
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
    { holds: ['numbered'], words: ['with', 'against'], also: RUNS },
    { holds: ['numbered'], words: ['with'], also: RISES },
    { holds: ['numbered'], words: ['better', 'worse', 'more', 'less'] },
    { sizes: 2, words: CHANGES },
  ],
  leaning: true,
  read(scene) {
    if (ofMoney(scene.items) || drawn(scene)) return [];
    const told = asRule(withoutParticles(scene));
    if (told !== scene) return direction.read(told);
    const parts = clauses(scene.items);
    const turned = parts.some(([from, to]) => turnedRound(scene.items.slice(from, to)));
    return parts.flatMap(([from, to]) => {
      if (turned && !scene.items.slice(from, to).some((item) => item.system)) return [];
      if (onlySetApart(scene.items.slice(from, to))) return [];
      const close = readClause(scene, from, to);
      return close.length > 0 ? close : waysOf(scene, from, to);
    });
  },
};

/** "unlike the noughts it climbs as the thread gets thicker": said of another scale than the one that is named. */
function onlySetApart(items: readonly Item[]): boolean {
  const at = items.findIndex(({ word }) => word === 'unlike');
  return at >= 0 && items.every(({ system }, i) => !system || (i > at && i <= at + 2));
}

/**
 * The rule without what says nothing of it: "each higher number is narrower than the last one", "a finer needle than the
 * 21 G"; and with what is wanted when that was asked just before it: "Wider catheter wanted? The figure must rise."
 */
function asRule(scene: Scene): Scene {
  const { items } = scene;
  const at = items.findIndex(
    (item, i) => item.word === 'than' && (THAN_LAST.test(joined(items, i, i + 6)) || thanSize(items, i)),
  );
  if (at >= 0) {
    const sized = thanSize(items, at);
    const end = sized
      ? items.findIndex((item, i) => i > at && item.kind === 'size') + 1
      : at + (THAN_LAST.exec(joined(items, at, at + 6))?.[0].split(' ').length ?? 1);
    return changed(scene, { items: [...items.slice(0, at), ...items.slice(end)] });
  }
  const question = scene.before.at(-1);
  if (question?.close !== '?' || !WANTED.test(joined(question.items)) || question.items.length > 9)
    return scene;
  if (items[0] === question.items[0] || items.length > 14 || !ADVISED.test(joined(items))) return scene;
  if (!items.some((item) => item.system || item.axisNoun?.axis === 'number')) return scene;
  if (measuredWords(items).some((m) => m.degree === 'comparative' && m.axis !== 'number')) return scene;
  const wish = question.items.map((item) => (item.word === '?' ? { ...item, word: ',' } : item));
  return changed(scene, { items: [...wish, ...items] });
}
const THAN_LAST =
  /^than (?:its predecessor|the (?:last|previous|preceding|one|number|size|figure)(?: (?:one|number|size|figure))?(?: (?:before|below|preceding)(?: it)?)?)(?= |$)/;
/** What is to be done about it: "pick a lower French", "the figure has to rise". */
const ADVISED =
  /^(?:(?:then|so|just|simply|please) )?(?:pick|choose|take|use|open|ask for|go|step|move|come|drop|raise|lower|increase|reduce|try|get|reach for|opt for|count)\b|^the (?:french|gauge|charrière|number|figure|digit)(?: (?:number|figure|size))? (?:has to|must|needs to|should|goes|comes|ought to|will have to)\b/;
const WANTED =
  /^(?:(?:need|want|after|looking for) (?:an? |something )?[a-z]+er\b|(?:[a-z]+ ){0,2}?[a-z]+er (?:[a-z]+ )?(?:wanted|needed|required)\b|(?:(?:the|your|a|this) )?(?:[a-z]+ ){1,2}?(?:is |looks |proves )?too [a-z]+\b)/;

/** "If you want a finer needle than the 21 G, the gauge has to …": what one starts from. */
const thanSize = (items: readonly Item[], at: number): boolean =>
  /^(?:if|for|to|when|should|someone|somebody)$/.test(items[0]?.word ?? '') &&
  /^than (?:an?|the|your|my|our)$/.test(joined(items, at, at + 2)) &&
  items[at + 2]?.kind === 'size' &&
  items.filter(({ kind }) => kind === 'size').length === 1;

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
  // "Zeros count downwards in thickness": one word of change cannot move both.
  if (size.at >= number.at && size.at <= number.to) return [];
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

/** "French ↑", and on the next line "gauge ↓": an arrow a line, drawn as the answer to what was asked. */
const drawn = ({ items, passage, sentence }: Scene): boolean =>
  items.filter(({ word }) => /^[↑↓⬆⬇▲▼]$/u.test(word)).length > 1 &&
  passage.text
    .slice(sentence.start, sentence.end)
    .split('\n')
    .filter((line) => ARROWS.test(line)).length > 1;
const ARROWS = /^[^↑↓⬆⬇▲▼\n]{2,30}[↑↓⬆⬇▲▼]\W*$/u;

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
    oneMore(items, systemAt) ??
    eachAfterLast(items, scene.sentence.items, systemAt) ??
    eachOfThem(items)
  );
}

const PLAIN_NUMBER = new Set(['big', 'large', 'small', 'high', 'low', 'little']);

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
  // "the smaller the French, the less it drains".
  if (found.length === 0 && joined(items).startsWith('the '))
    found.push(...flowSaid(items).filter(({ at }) => !taken(at) && items[at - 1]?.word === 'the'));
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
    const near = items.slice(i + 1, i + (items[i + 1]?.word === 'of' ? 6 : 4));
    const offset = near.findIndex(
      (item, k) =>
        (UP.has(item.word) || DOWN.has(item.word)) &&
        !QUANTITY.test(item.word) &&
        // "too thin" is no movement.
        near[k - 1]?.word !== 'too',
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
  return (
    to - from <= 14 + bracketed(items.slice(from + 1, to)) &&
    !items.slice(from + 1, to).some((item, i, all) => item.kind === 'size' && !inBrackets(all, i))
  );
}

/** "go up in number (12, 14, 16 Fr) and …": examples between brackets. */
const inBrackets = (items: readonly Item[], i: number): boolean =>
  items.slice(0, i).findLastIndex(({ word }) => word === '(') >
    items.slice(0, i).findLastIndex(({ word }) => word === ')') &&
  items.slice(i).some(({ word }) => word === ')');
const bracketed = (items: readonly Item[]): number => items.filter((_, i) => inBrackets(items, i)).length;
