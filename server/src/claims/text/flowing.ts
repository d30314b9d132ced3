/**
 * Where a sentence says that more or less runs: "lets more fluid through", "the bag is in sooner", "you press harder on the
 * plunger", "takes twice as long to empty", "halves the flow". Words of everyday life between are passed over.
 */
import {
  AMOUNTS,
  EASE,
  FELT,
  FLOWING,
  FLUID,
  HARD,
  HINDERING,
  PUTTING_IN,
  RAISE,
  RAISES,
  RUNS,
  SHARES,
  TIMES,
  UNEASE,
} from '../words/flowing.ts';
import type { Item } from './items.ts';
import { joined } from './joined.ts';
import { compares, type Measured, measuredWords } from './magnitudes.ts';
import { remembered } from './remember.ts';

/** How far the noun of an amount may stand behind it. */
const NOUN_REACH = 4;
const ENDS_NOUN =
  /^(?:[.,;:!?()—–-]|than|and|but|or|because|since|while|whereas|so|which|that|if|when|with|is|are|was|were)$/;
const HARD_ENDS = /^(?:[.;:!?()—–]|but|because|since|while|whereas|although|though)$/;

export interface Clause {
  readonly from: number;
  readonly to: number;
}

/** The clause of an item: from the mark or joining word before it to the one behind. */
export function clauseOf(items: readonly Item[], at: number, ends: RegExp = HARD_ENDS): Clause {
  let [from, to] = [at, at];
  while (from > 0 && !ends.test(items[from - 1]!.word)) from--;
  while (to + 1 < items.length && !ends.test(items[to + 1]!.word)) to++;
  return { from, to };
}

/** The sentence as one clause. */
export const whole = (items: readonly Item[]): Clause => ({ from: 0, to: items.length - 1 });

export const someIn = (items: readonly Item[], { from, to }: Clause, what: RegExp): boolean => {
  for (let i = from; i <= to; i++)
    if (items[i]!.kind === 'word' && what.test(items[i]!.word) && !workedIn(items, i)) return true;
  return false;
};

/** "in our unit": where people work, not a unit of blood. */
const workedIn = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === 'unit' &&
  /^(?:our|my|your|their|this|the|that|every|each)$/.test(items[i - 1]?.word ?? '') &&
  /^(?:in|on|at|from|across)$/.test(items[i - 2]?.word ?? '');

/** Everything a sentence says of flow in a higher degree, in its order. */
export const flowSaid = remembered((items: readonly Item[]): readonly Measured[] => {
  const known = measuredWords(items);
  return items.flatMap((item, i) => {
    if (item.kind !== 'word') return [];
    const measured = known.find((m) => m.at === i);
    if (measured?.axis === 'flow' && measured.degree === 'comparative') return [measured];
    if (measured && measured.degree !== 'comparative' && !SHARES.has(item.word)) return [];
    // "more slowly": the next word says it.
    if (known.some((m) => m.at === i + 1 && m.axis === 'flow' && m.degree === 'comparative')) return [];
    const way = ASKED.find((ask) => ask.words(item.word))?.sign;
    const clause = way && clauseOf(items, i);
    const sign = clause && !puttingIn(items, clause) ? way(items, i, clause) : undefined;
    return sign ? [compares(i, 'flow', sign)] : [];
  });
});

/** A thing is put in: the force and the time are of another kind. */
function puttingIn(items: readonly Item[], clause: Clause): boolean {
  if (someIn(items, clause, PUTTING_IN)) return true;
  for (let i = clause.from; i < clause.to; i++)
    if (items[i]!.word === 'to' && items[i + 1]!.word === 'place') return true;
  return false;
}

type Way = (items: readonly Item[], i: number, clause: Clause) => 1 | -1 | undefined;
const flip = (sign: 1 | -1): 1 | -1 => (sign === 1 ? -1 : 1);
/** Less of what hinders is more. */
const turnedBy = (way: 1 | -1, sign: 1 | -1): 1 | -1 => (sign === 1 ? way : flip(way));
const runs = (items: readonly Item[], clause: Clause): boolean =>
  someIn(items, clause, RUNS) || someIn(items, clause, FLUID);

/** The sign a noun gives to more of it: of flow, of what runs, or of what hinders it. */
function nounSign(items: readonly Item[], at: number, clause: Clause): 1 | -1 | undefined {
  const { word } = items[at]!;
  if (FLOWING.test(word)) return ofElse(items, at) ? undefined : 1;
  if (FLUID.test(word)) return someIn(items, clause, RUNS) ? 1 : undefined;
  if (!HINDERING.test(word)) return undefined;
  const felt = word === 'resistance' || someIn(items, clause, FELT);
  return felt || (LASTING.test(word) && runs(items, clause)) ? -1 : undefined;
}
/** "the flow of questions". */
const ofElse = (items: readonly Item[], at: number): boolean =>
  items[at + 1]?.word === 'of' &&
  !items.slice(at + 2, at + 6).some((item) => item.kind === 'size' || FLUID.test(item.word));
const LASTING = /^(?:time|minutes?|seconds?|patience)$/;

/** "more fluid through", "less push on the plunger", "a better flow", "drains better", "more readily", "the flow is greater". */
const amount: Way = (items, i, clause) => {
  const way = AMOUNTS.get(items[i]!.word)!;
  const next = items[i + 1]?.word ?? '';
  if (EASE.test(next)) return someIn(items, clause, FLOWS) || someIn(items, clause, FLUID) ? way : undefined;
  if (UNEASE.test(next)) return runs(items, clause) ? flip(way) : undefined;
  if (HARDLY.test(next)) return someIn(items, clause, FELT) ? flip(way) : undefined;
  // "Lower the bag": a verb.
  if (/^(?:the|a|an)$/.test(next)) return undefined;
  for (let k = i + 1; k <= i + NOUN_REACH && k < items.length; k++) {
    const item = items[k]!;
    if (ENDS_NOUN.test(item.word) || item.kind === 'size') break;
    const sign = nounSign(items, k, clause);
    if (sign) return turnedBy(way, sign);
    if (item.axisNoun || item.deviceNoun || item.system) return undefined;
  }
  const subject = subjectSign(items, i, clause);
  if (subject) return turnedBy(way, subject);
  return bare(items, i, clause) ? way : undefined;
};

const HARDLY = /^(?:hard|firmly|forcefully|strongly)$/;

/** "the resistance to gas is greater", "published rates for a 14 G are lower": what the clause is about. */
function subjectSign(items: readonly Item[], i: number, clause: Clause): 1 | -1 | undefined {
  const verb = [i - 1, i - 2].some((k) => IS.test(items[k]?.word ?? ''));
  for (let k = i - 1; k >= clause.from; k--) {
    const { word, axisNoun } = items[k]!;
    const made = verb || items.slice(clause.from, k).some((item) => MAKES.test(item.word));
    if (FLOWING.test(word)) return made ? 1 : undefined;
    if (/^(?:resistance|drag|effort|push|work|back-pressure)$/.test(word)) return made ? -1 : undefined;
    if (axisNoun) return undefined;
  }
  return undefined;
}
const IS = /^(?:is|are|was|were|be|gets?|becomes?|runs?|comes?)$/;
const MAKES = /^(?:makes?|made|keeps?|kept|leaves?|left|renders?)$/;

/** "lets more through", "gets more in", "gives you less per minute", "drains thick pus better", "carries less than". */
function bare(items: readonly Item[], i: number, clause: Clause): boolean {
  const { word } = items[i]!;
  const before = items.slice(Math.max(clause.from, i - 6), i);
  const next = items[i + 1]?.word ?? '.';
  if (/^(?:through|down|in|out|into|per|a|of)$/.test(next) && /^(?:more|less)$/.test(word)) {
    const moved = before.slice(-4).some((item) => MOVES.test(item.word));
    return moved && (next === 'through' || next === 'per' || items.slice(i + 1, clause.to + 1).some(runsOut));
  }
  const degree = /^(?:better|worse|more|less)$/.test(word);
  // "the smaller the bore, the less it drains".
  if (degree && items[i - 1]?.word === 'the' && /^(?:it|they|the|a|an)$/.test(next))
    return items.slice(i + 2, i + 4).some((item) => FLOWS.test(item.word));
  const ends = /^(?:[.,;:!?)—–-]|than|with|through|and|on|if|when)$/.test(next);
  return degree && ends && before.some((item) => FLOWS.test(item.word));
}
const runsOut = (item: Item): boolean =>
  FLUID.test(item.word) || /^(?:minute|hour|second|time)$/.test(item.word);
const MOVES =
  /^(?:lets?|letting|gets?|getting|gives?|giving|pass(?:es)?|passing|push(?:es)?|puts?|takes?|carr(?:y|ies)|deliver(?:s|ing)?|runs?|pours?|draws?|sucks?|moves?|you|comes?|goes|allows?)$/;
const FLOWS =
  /^(?:flow(?:s|ed|ing)?|drain(?:s|ed|ing)?|drip(?:s|ping)?|aspirat(?:e|es|ing)|infus(?:e|es|ing)|empties|sucks?|irrigates?|bleeds?|breathes?|clears?|runs?)$/;

/** "the bag is in sooner", "takes longer to empty". */
const time: Way = (items, i, clause) => {
  const way = TIMES.get(items[i]!.word)!;
  if (OF_THING.test(items[i + 1]?.word ?? '')) return undefined;
  // "has the bag empty first": not "first we flush".
  if (items[i]!.word === 'first' && !FIRST_ENDS.test(items[i + 1]?.word ?? '.')) return undefined;
  return fills(items, clause) ? way : undefined;
};
const FIRST_ENDS = /^(?:[.,;:!?)—–]|and|while|whereas)$/;
const OF_THING = /^(?:catheters?|cannulas?|cannulae|needles?|tubes?|lines?|lumen|one|ones|length|bevel)$/;
const fills = (items: readonly Item[], clause: Clause): boolean =>
  someIn(items, clause, FILLING) || (someIn(items, clause, FLUID) && someIn(items, clause, TAKING));
const FILLING =
  /^(?:empt(?:y|ies|ied|ying)|drain(?:s|ed|ing)?|infus(?:e|es|ed|ing|ions?)|transfus(?:e|es|ed|ing|ions?)|fill(?:s|ed|ing)?|aspirat(?:e|es|ed|ing)|flush(?:es|ed|ing)?|inject(?:s|ed|ing|ions?)?|drip(?:s|ped)?|pours?)$/;
const TAKING =
  /^(?:takes?|took|taking|needs?|lasts?|wait|waits|waiting|runs?|running|in|through|finish(?:es|ed)?|draw(?:s|n|ing)?|gone|done|goes|over)$/;

/** "press harder", "a stiffer plunger", "easier to inject through": felt in the hand or in breathing. */
const hard: Way = (items, i, clause) => {
  if (!someIn(items, clause, FELT)) return undefined;
  const near = items.slice(Math.max(clause.from, i - 5), Math.min(clause.to, i + 5) + 1);
  return near.some((item) => FELT.test(item.word) || PRESSED.test(item.word))
    ? HARD.get(items[i]!.word)
    : undefined;
};
const PRESSED = /^(?:force|effort|push|pressure|work|feels?)$/;

/** "in half the time", "twice the push", "half as much a minute", "twice as long to draw up". */
const share: Way = (items, i, clause) => {
  const way = SHARES.get(items[i]!.word)!;
  const next = items[i + 1]?.word;
  if (next === 'as') {
    // What runs may have been named before: "passes 20 ml a minute; an 18 G manages half as much".
    const how = items[i + 2]?.word ?? '';
    if (/^(?:much|fast|quickly|quick|rapidly|briskly|many)$/.test(how))
      return runs(items, whole(items)) ? way : undefined;
    if (/^(?:long|slowly|slow)$/.test(how)) return fills(items, whole(items)) ? flip(way) : undefined;
    return undefined;
  }
  if (next !== 'the' && next !== 'of') return undefined;
  if (next === 'of' && items[i + 2]?.word === 'that')
    return subjectSign(items, i, clause) === -1
      ? flip(way)
      : runs(items, whole(items)) && items[i - 1]?.word !== 'one'
        ? way
        : undefined;
  for (let k = i + 2; k <= i + 4 && k <= clause.to; k++) {
    const sign = nounSign(items, k, clause);
    if (sign) return turnedBy(way, sign);
  }
  return undefined;
};

/** "halves the flow", "the drip slows", "speeds the transfusion up". */
const turned: Way = (items, i, clause) => {
  const way = RAISES.get(items[i]!.word)!;
  const near = [...items.slice(i + 1, i + 5), ...items.slice(Math.max(clause.from, i - 6), i).reverse()];
  if (
    /^(?:how (?:much|fast|quickly)|the (?:amount|volume)|what (?:an?|the|you|we))\b/.test(
      joined(items, i + 1, i + 3),
    )
  )
    return way;
  if (/^(?:short|length|prolong)/.test(items[i]!.word))
    return near.some((item) => /^(?:times?|wait|minutes)$/.test(item.word)) && runs(items, clause)
      ? way
      : undefined;
  const slowing = /^(?:slow|speed|sped|quicken|hasten)/.test(items[i]!.word);
  for (const item of near) {
    if (slowing && (FLUID.test(item.word) || FLOWING.test(item.word))) return way;
    if (FLOWING.test(item.word)) return ofElse(items, items.indexOf(item)) ? undefined : way;
    if (/^(?:resistance|drag|effort|push|back-pressure)$/.test(item.word)) return flip(way);
  }
  return undefined;
};

/** "will speed it up", "to halve the flow". */
const willTurn: Way = (items, i, clause) => {
  if (!/^(?:will|to|would|can|should|'ll|does)$/.test(items[i - 1]?.word ?? '')) return undefined;
  const way = RAISE.get(items[i]!.word)!;
  const near = items.slice(i + 1, i + 4);
  if (near[0]?.word === 'it' || near[0]?.word === 'things')
    return runs(items, whole(items)) ? way : undefined;
  const sign = near.map((_, k) => nounSign(items, i + 1 + k, clause)).find((one) => one !== undefined);
  return sign && turnedBy(way, sign);
};

/** "rates for a 14 G lie below those for an 18 G". */
const placed: Way = (items, i, clause) => {
  if (!/^(?:those|that|the|what)$/.test(items[i + 1]?.word ?? '')) return undefined;
  for (let k = clause.from; k < i; k++)
    if (FLOWING.test(items[k]!.word) || (items[i + 1]!.word === 'what' && GIVES.test(items[k]!.word)))
      return /^(?:below|under|beneath|behind)$/.test(items[i]!.word) ? -1 : 1;
  return undefined;
};
const GIVES = /^(?:delivers?|gives?|runs?|passes|carries|takes|flows?)$/;
export const PLACES = /^(?:below|under|beneath|behind|above|beyond|exceeds?|over)$/;

const ASKED: readonly { readonly words: (word: string) => boolean; readonly sign: Way }[] = [
  { words: (word) => AMOUNTS.has(word), sign: amount },
  { words: (word) => TIMES.has(word), sign: time },
  { words: (word) => HARD.has(word), sign: hard },
  { words: (word) => SHARES.has(word), sign: share },
  { words: (word) => RAISES.has(word), sign: turned },
  { words: (word) => RAISE.has(word), sign: willTurn },
  { words: (word) => PLACES.test(word), sign: placed },
];
