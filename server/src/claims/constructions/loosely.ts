/**
 * Comparing words that no closer reader takes up: "a 22 is a size wider", "when he asks for something heavier than his 5-0
 * you pass the 6-0", "a wider tube, that is to say a 10 Fr". Whatever means nothing to us may stand between; in return the
 * subject must be the only one possible, and the other side is every other size of its scale that is spoken of here: who
 * of them is meant is left open, and judged only where all of them give one answer.
 */

import { finds } from '../../notes/patterns.ts';
import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { subjectOf, takenAt, wishedFor } from './loose-subject.ts';
import type { Construction, Reading } from './model.ts';
import { both } from './of-two.ts';
import { comparison, wordless } from './than.ts';
import { excepted } from './than-otherwise.ts';

/** Flow hangs on much else than the size, and has readers of its own. */
const AXES = new Set(['outer', 'bore', 'hole', 'strength']);
const LENGTHS = new Set(['millimetre']);

export const loosely: Construction = {
  id: 'loosely',
  needs: () => [
    { sizes: 1, holds: ['compared'] },
    { sizes: 1, words: THEREFORE },
  ],
  read(scene) {
    if (
      scene.sentence.close === '?' ||
      !scene.items.some(({ mention }) => mention && mention.kind !== 'ambiguous')
    )
      return [];
    const taken = takenThen(scene);
    if (taken.length > 0) return taken;
    const compared = measuredWords(scene.items).filter((m) => m.degree === 'comparative');
    const words = compared.filter((m) => AXES.has(m.axis) && !m.idiom && !m.excess);
    // "… is smaller, and the 24 G smaller still", "larger as a number, but thinner": each has a side of its own.
    if (compared.filter((m) => AXES.has(m.axis) || m.axis === 'number').length > 1) return [];
    return words.flatMap((word) => readWord(scene, word));
  },
};

const THEREFORE = new Set(['that', 'this', 'so', 'hence', 'therefore', 'then', 'which', 'thus']);

/** "Put in something bigger than the 14 G. That means going up to the 18 G.": what was wished for, then what is taken. */
function takenThen(scene: Scene): Reading[] {
  const { items, before } = scene;
  const previous = before.at(-1);
  if (!previous || previous.close === '?' || !THEREFORE.has(items[0]?.word ?? '')) return [];
  const [chosen, ...more] = sizesIn(items);
  if (!chosen || more.length > 0 || chosen.from > 12 || !takenAt(items, chosen)) return [];
  const words = measuredWords(previous.items).filter((m) => m.degree === 'comparative');
  const [word] = words;
  if (!word || words.length > 1 || !AXES.has(word.axis) || word.idiom || stopped(previous.items, word))
    return [];
  const named = sizesIn(previous.items);
  const [given] = named;
  if (!given || named.length > 1 || !wishedFor(previous.items, word)) return [];
  if (items.slice(0, chosen.from).some((item) => NEGATIONS.has(item.word) || finds(TURNS, item.word)))
    return [];
  if (!sameSystem(given, chosen) || sameSizes(given, chosen)) return [];
  const here = { ...word, at: chosen.from, to: chosen.to };
  return [{ ...wordless(comparison(scene, 'loosely', chosen, given, here)), unconditional: true }];
}

/** The sizes of a sentence, one by one; no bounds, no bare lengths. */
export const sizesIn = (items: readonly Item[]): Group[] =>
  groups(items)
    .flatMap(single)
    .filter(
      (g) => g.sizes.length === 1 && !LENGTHS.has(g.sizes[0]!.system) && !g.mentions.some((m) => m.bound),
    );

function readWord(scene: Scene, word: Measured): Reading[] {
  const { items } = scene;
  const all = sizesIn(items);
  if (stopped(items, word)) return [];
  const standard = standardOf(items, word, all);
  if (standard === 'other') return [];
  const free = standard ? all.filter((g) => !sameSizes(g, standard)) : all;
  const subject = subjectOf(scene, word, free);
  if (!subject || excepted(items, subject.group)) return [];
  const others = standard ? [standard] : spokenOf(scene, subject.group, all, word);
  if (
    others.length === 0 ||
    !others.every((g) => sameSystem(g, subject.group) && !sameSizes(g, subject.group))
  )
    return [];
  const reading = comparison(scene, 'loosely', subject.group, both(others), word);
  return [subject.unconditional ? { ...reading, unconditional: true, own: true } : reading];
}

/** Words that turn, weaken or share out what the comparing word says. */
const TURNS =
  /^(?:if|unless|whether|rather|instead|unlike|except|neither|nor|either|wouldn't|seems?|seemed|looks?|supposed|though|although|how|why|what|number|numbers|figure|figures)$/;

/** A negation or a turn near the word. */
const stopped = (items: readonly Item[], { at, to }: Measured): boolean =>
  items
    .slice(Math.max(0, at - 6), to + 3)
    .some((item) => NEGATIONS.has(item.word) || finds(TURNS, item.word)) ||
  items.slice(Math.max(0, at - 2), at).some((item) => /^(?:any|no|nothing|as|how)$/.test(item.word)) ||
  finds(GROWING, joined(items, at - 6, at));
/** "deflection falls as the needle gets stouter: 30 worst": what happens along a row. */
const GROWING = /\bas (?:\S+ ){1,3}(?:gets?|grows?|becomes?|goes|go)$/;

/** The size after "than"; 'other' when something else stands there; undefined without "than". */
function standardOf(
  items: readonly Item[],
  word: Measured,
  all: readonly Group[],
): Group | 'other' | undefined {
  const beside = all.find((g) => finds(SET_BESIDE, joined(items, g.from - 4, g.from)));
  if (beside) return beside;
  const than = items.findIndex((item, i) => i > word.to && i <= word.to + 8 && item.word === 'than');
  if (than < 0) return undefined;
  const next = all.find((g) => g.from > than);
  if (next && next.from - than <= 5 && !items.slice(than + 1, next.from).some(shares)) return next;
  return ANAPHOR.test(items[than + 1]?.word ?? '') &&
    (items[than + 2]?.kind ?? 'punctuation') === 'punctuation'
    ? undefined
    : 'other';
}
/** "set against a 22 G", "beside the 0.035". */
const SET_BESIDE =
  /(?:^| )(?:against|beside|alongside|next to|compared (?:with|to)|comparison (?:with|to)|versus|vs|relative to|over)(?: (?:an?|the|our|your|its))?$/;

/** "than each lumen of the 5 Fr". */
const shares = ({ kind, word }: Item): boolean =>
  kind === 'punctuation' ||
  /^(?:of|each|every|any|some|two|three|both|either|all|with|in|through)$/.test(word);
const ANAPHOR = /^(?:that|it|this|those|these|them)$/;

const OF_SET = /^of the (?:two|pair)\b/;

/** Every other size of the scale in this sentence and the two before it; none when all come only later. */
function spokenOf(scene: Scene, subject: Group, own: readonly Group[], { at, to }: Measured): Group[] {
  // What another speaker named is another matter.
  const turn = scene.items[1]?.word === ':' && scene.items[0]?.capital === true;
  const spoken = turn ? [] : scene.before.slice(-2);
  const before = spoken.flatMap(({ items }) => groups(items).flatMap(single));
  const other = (g: Group) =>
    g.sizes.every(({ system }) => system === subject.sizes[0]!.system) && !sameSizes(g, subject);
  const ofSet = OF_SET.test(joined(scene.items, to + 1, to + 4));
  const known = before.some(other) || own.some((g) => other(g) && (ofSet || g.to < at));
  return known ? distinct([...own, ...before]).filter(other) : [];
}
