/**
 * A superlative over a set that the text named before: "On the trolley lie 14 to 22 G. The fastest on the trolley is
 * the 14.", "Feeding tubes come in 6, 8 and 10 Fr, and the 10 Fr is the widest.", "Sizes: 18 G, 20 G, 22 G. Widest: 18 G."
 * Every other word of its clause must be idle or taken from the set's own sentence: "the widest we put in a hand" is
 * about another set.
 */
import type { Size } from '../../sizes/model.ts';
import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSystem, spanOf } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction, Reading } from './model.ts';
import { comparison, wordless } from './than.ts';

export const extreme: Construction = {
  id: 'extreme',
  needs: () => [
    { sizes: 1, holds: ['superlative'] },
    { sizes: 1, holds: ['answers'] },
    { sizes: 1, words: ['that', "that's", 'it', "it's"] },
  ],
  read(scene) {
    const words = measuredWords(scene.items).filter(
      (m) => m.degree === 'superlative' && decidable(m.axis) && !m.idiom,
    );
    if (words.length === 0) return answered(scene);
    const singles = groups(scene.items).flatMap(single);
    return words.flatMap((word) => readWord(scene, word, words, singles));
  },
};

function readWord(
  scene: Scene,
  word: Measured,
  words: readonly Measured[],
  all: readonly Group[],
): Reading[] {
  const [from, to] = clauseAround(scene.items, word, words);
  const chosen = chosenIn(scene.items, word, all, from, to);
  if (chosen?.sizes.length !== 1) return [];
  const here = all.filter((g) => g !== chosen && sameSystem(g, chosen));
  const ended = (g: Group) => g.from >= from && g.to <= to;
  if (all.some((g) => g !== chosen && ended(g))) return [];
  const set = setOf(scene, chosen, POINTS_BACK.test(joined(scene.items, 0, from)) ? [] : here);
  if (!set || !plain(scene.items, from, to, word, chosen, set.words)) return [];
  const rest = set.sizes.filter((size) => size.value !== chosen.sizes[0]!.value);
  return rest.length === 0 ? [] : [against(scene, word, chosen, set.groups, rest)];
}

/** "Between the three, the 30 G has …": the set named before, whatever else the sentence goes on to. */
const POINTS_BACK =
  /\b(?:between|among|amongst|of|out of) (?:the|these|those|all|all of (?:the|these|those)) (?:two|three|four|five|lot|bunch|set|sizes)\b/;

const EDGES = new Set([
  ',',
  ';',
  '.',
  '!',
  '?',
  'and',
  'but',
  'while',
  'whereas',
  'since',
  'because',
  '—',
  '–',
  '(',
  ')',
]);

/** The clause of the superlative: to the marks around it, and not over another superlative. */
function clauseAround(items: readonly Item[], word: Measured, words: readonly Measured[]): [number, number] {
  let from = word.at;
  while (from > 0 && !EDGES.has(items[from - 1]!.word)) from--;
  let to = word.to;
  const named = items.slice(from, word.at).some((item) => item.kind === 'size');
  while (to + 1 < items.length && !EDGES.has(items[to + 1]!.word) && !(named && items[to + 1]!.word === ':'))
    to++;
  const colon = items.findIndex((item, i) => item.word === ':' && i >= from && i < word.at);
  const other = words.find((m) => m.at > word.at && m.at <= to);
  return [colon >= 0 ? colon + 1 : from, other ? Math.min(to, other.at - 1) : to];
}

const BE = new Set(['is', 'are', '=', ':', 'being']);

/** "the fastest on the trolley is the 22", "Widest: 18 G", "the 10 Fr is the widest", "the 22 G gives the best flow". */
function chosenIn(
  items: readonly Item[],
  word: Measured,
  all: readonly Group[],
  from: number,
  to: number,
): Group | undefined {
  const inside = all.filter((g) => g.from >= from && g.to <= to);
  if (inside.length === 0) return setBeside(items, word, all, to) ?? meant(items, word, all, from);
  if (inside.length !== 1) return undefined;
  const chosen = inside[0]!;
  if (chosen.from > word.to) {
    const between = items.slice(word.to + 1, chosen.from);
    const picked =
      between.length > 0 && between.length <= 4 && between.every((item) => CHOOSES.test(item.word));
    return picked || between.some((item) => BE.has(item.word)) ? chosen : undefined;
  }
  const between = items.slice(chosen.to + 1, word.at);
  return between.some((item) => BE.has(item.word) || GIVES.has(item.word)) ? chosen : undefined;
}
/** "The narrowest, the 32 Fr, goes in": set beside the phrase between commas. */
function setBeside(
  items: readonly Item[],
  word: Measured,
  all: readonly Group[],
  to: number,
): Group | undefined {
  if (items[word.at - 1]?.word !== 'the' || items[to + 1]?.word !== ',') return undefined;
  const next = all.find((g) => g.from > to + 1 && g.from <= to + 5);
  const closed = next && /^[,.)]$/.test(items[next.to + 1]?.word ?? '');
  return closed && items.slice(to + 2, next.from).every((item) => CHOOSES.test(item.word)) ? next : undefined;
}

const CHOOSES =
  /^(?:the|an?|our|take|use|choose|pick|open|grab|want|reach|for|go|it|is|you|need|ask|have|with|we|that's|that)$/;

/** "reach for the 20 G, it is the widest there": the size named last before the pronoun. */
function meant(
  items: readonly Item[],
  word: Measured,
  all: readonly Group[],
  from: number,
): Group | undefined {
  const subject = items
    .slice(from, word.at)
    .map((item) => item.word)
    .join(' ');
  return /^(?:it|that|this) (?:is|has|gives|offers|being|having) the$/.test(subject)
    ? all.filter((g) => g.to < from).at(-1)
    : undefined;
}

const GIVES = new Set(
  'gives has makes leaves offers runs flows delivers drips empties drains punches provides will be carries'.split(
    ' ',
  ),
);

interface NamedSet {
  readonly groups: readonly Group[];
  readonly sizes: readonly Size[];
  /** Words of the sentence that names it. */
  readonly words: ReadonlySet<string>;
}

const BACK = 3;

/** Other sizes of this sentence, or the last set named shortly before that holds the chosen one. */
function setOf(scene: Scene, chosen: Group, here: readonly Group[]): NamedSet | undefined {
  const own = toSet(scene.items, here);
  if (enough(own, chosen)) return own;
  if (here.length > 0) return undefined;
  const earlier = scene.before.length > 0 ? scene.before : scene.context.slice(-1);
  for (const sentence of earlier.slice(-BACK).reverse()) {
    const set = namedIn(sentence, chosen);
    if (set) return set;
    if (!idleStep(sentence)) return undefined;
  }
  return undefined;
}

function namedIn(sentence: Sentence, chosen: Group): NamedSet | undefined {
  const all = groups(sentence.items);
  const set = toSet(
    sentence.items,
    all.filter((g) => sameSystem(g, chosen)),
  );
  return all.every((g) => sameSystem(g, chosen)) && holds(set, chosen) && set.sizes.length >= 2
    ? set
    : undefined;
}

/** "Smallest: 8 Fr." on the way to the set it is about. */
const idleStep = (sentence: Sentence): boolean =>
  sentence.items.length <= 9 && measuredWords(sentence.items).some((m) => m.degree === 'superlative');

const toSet = (items: readonly Item[], all: readonly Group[]): NamedSet => ({
  groups: all,
  sizes: all.flatMap((g) => g.sizes),
  words: new Set(items.map((item) => item.word)),
});

/** The chosen size is one of the set, or lies in its range. */
function holds({ sizes }: NamedSet, chosen: Group): boolean {
  const value = chosen.sizes[0]!.value;
  const values = sizes.map((size) => size.value);
  return values.length >= 2 && value >= Math.min(...values) && value <= Math.max(...values);
}

/** In one sentence: the chosen size is named in the set too, or one group of several is set before it. */
function enough(set: NamedSet, chosen: Group): boolean {
  const again = set.sizes.some((size) => size.value === chosen.sizes[0]!.value);
  return set.sizes.length >= 2 && (again || holds(set, chosen) || set.sizes.length >= 3);
}

const IDLE = new Set(
  `of the these this those them all three four five lot set bunch list row range family by far and a an our is are = : being
  one ones which it its that way or size sizes here you will would be also then thus so clearly obviously always
  among amongst through with from out take use choose pick open grab want reach go need ask if when for . `
    .split(/\s+/)
    .filter(Boolean),
);

/** Nothing in the clause narrows the set. */
function plain(
  items: readonly Item[],
  from: number,
  to: number,
  word: Measured,
  chosen: Group,
  known: ReadonlySet<string>,
): boolean {
  return items
    .slice(from, to + 1)
    .every(
      (item, i) =>
        (from + i >= word.at && from + i <= word.to) ||
        (from + i >= chosen.from && from + i <= chosen.to) ||
        IDLE.has(item.word) ||
        GIVES.has(item.word) ||
        item.axisNoun !== undefined ||
        item.deviceNoun === true ||
        item.system !== undefined ||
        (known.has(item.word) && !NARROWS.has(item.word)),
    );
}
/** Said of a set as a whole these still narrow it: "in adults the widest is". */
const NARROWS = new Set(['for', 'in', 'if', 'when', 'use', 'we', 'not', 'no', 'to', 'first', 'last']);

function against(
  scene: Scene,
  word: Measured,
  chosen: Group,
  set: readonly Group[],
  rest: readonly Size[],
): Reading {
  const others: Group = {
    from: chosen.from,
    to: chosen.to,
    mentions: set.flatMap((g) => g.mentions),
    sizes: rest,
  };
  const reading = wordless(
    comparison(scene, 'extreme', chosen, others, word, word.sign === 1 ? 'more' : 'less'),
  );
  if (reading.claim.kind !== 'comparison') return reading;
  const focus = spanOf(scene, scene.items[chosen.from]!);
  return {
    claim: { ...reading.claim, focus, each: true },
    at: Math.max(word.at, chosen.from),
    from: Math.min(word.at, chosen.from),
    to: Math.max(word.to, chosen.to),
  };
}

/** "Which of 2-0, 3-0 and 4-0 is the strongest? The 2-0.": the answer stands alone. */
function answered(scene: Scene): Reading[] {
  const question = scene.before.at(-1);
  const [chosen, ...more] = groups(scene.items);
  const pointed = /^(?:that|that's|it|it's)$/.test(scene.items[0]?.word ?? '');
  if (!question || (question.close !== '?' && !pointed)) return [];
  if (!chosen || more.length > 0 || chosen.sizes.length !== 1) return [];
  if (scene.items.some((item) => item.kind === 'word' && !ANSWERS.has(item.word) && !item.deviceNoun))
    return [];
  const words = measuredWords(question.items).filter((m) => m.degree !== 'plain');
  const word = words[0];
  if (words.length !== 1 || !word || !decidable(word.axis) || word.idiom) return [];
  // "Which of these isn't finer than 4-0?"
  if (question.items.some((item) => NEGATIONS.has(item.word))) return [];
  const set = namedIn(question, chosen);
  if (!set?.sizes.some((size) => size.value === chosen.sizes[0]!.value)) return [];
  const asks = question.items[0]?.word === 'which' || question.items[0]?.word === 'of';
  // "Ask for the widest on the shelf: we hold 12, 18 and 24 Fr. That is the 24 Fr."
  const wished =
    word.degree === 'superlative' &&
    question.items[word.at - 1]?.word === 'the' &&
    word.at < set.groups[0]!.from;
  if (question.close === '?' ? !asks : !wished || !question.items.some((item) => item.word === ':'))
    return [];
  const rest = set.sizes.filter((size) => size.value !== chosen.sizes[0]!.value);
  const at = { ...word, at: chosen.from, to: chosen.to };
  return rest.length === 0 ? [] : [{ ...against(scene, at, chosen, set.groups, rest), answered: true }];
}
const ANSWERS = new Set(['the', 'a', 'an', 'it', 'is', 'that', "it's", "that's", 'answer', 'of', 'course']);
