/**
 * Comparing words that no closer reader takes up: "a 22 is a size wider", "when he asks for something heavier than his 5-0
 * you pass the 6-0", "a wider tube, that is to say a 10 Fr". Whatever means nothing to us may stand between; in return the
 * subject must be the only one possible, and the other side is every other size of its scale that is spoken of here: who
 * of them is meant is left open, and judged only where all of them give one answer.
 */

import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { subjectOf } from './loose-subject.ts';
import type { Construction, Reading } from './model.ts';
import { both } from './of-two.ts';
import { comparison } from './than.ts';

const AXES = new Set(['outer', 'bore', 'flow', 'hole', 'strength']);

export const loosely: Construction = {
  id: 'loosely',
  needs: () => [{ sizes: 1, holds: ['compared'] }],
  read(scene) {
    if (scene.sentence.close === '?') return [];
    const words = measuredWords(scene.items).filter(
      (m) => m.degree === 'comparative' && AXES.has(m.axis) && !m.idiom && !m.excess,
    );
    if (words.some((m, i) => words.findIndex((other) => other.axis === m.axis && other.sign === m.sign) < i))
      return [];
    return words.flatMap((word) => readWord(scene, word));
  },
};

function readWord(scene: Scene, word: Measured): Reading[] {
  const { items } = scene;
  const all = groups(items)
    .flatMap(single)
    .filter((g) => g.sizes.length === 1 && !g.mentions.some((m) => m.bound));
  if (stopped(items, word)) return [];
  const standard = standardOf(items, word, all);
  if (standard === 'other') return [];
  const free = standard ? all.filter((g) => !sameSizes(g, standard)) : all;
  const subject = subjectOf(scene, word, free);
  if (!subject) return [];
  const others = standard ? [standard] : spokenOf(scene, subject.group, all);
  if (
    others.length === 0 ||
    !others.every((g) => sameSystem(g, subject.group) && !sameSizes(g, subject.group))
  )
    return [];
  const reading = comparison(scene, 'loosely', subject.group, both(others), word);
  return [subject.wished ? { ...reading, unconditional: true } : reading];
}

/** Words that turn, weaken or share out what the comparing word says. */
const TURNS =
  /^(?:if|unless|whether|rather|instead|unlike|except|neither|nor|either|would|wouldn't|seems?|seemed|looks?|supposed|though|although|how|why|what)$/;

/** A negation or a turn near the word. */
const stopped = (items: readonly Item[], { at, to }: Measured): boolean =>
  items
    .slice(Math.max(0, at - 6), to + 3)
    .some((item) => NEGATIONS.has(item.word) || TURNS.test(item.word)) ||
  items
    .slice(Math.max(0, at - 2), at)
    .some((item) => /^(?:the|any|no|nothing|as|how)$/.test(item.word) && items[at - 1]!.word !== 'the');

/** The size after "than"; 'other' when something else stands there; undefined without "than". */
function standardOf(
  items: readonly Item[],
  word: Measured,
  all: readonly Group[],
): Group | 'other' | undefined {
  const than = items.findIndex((item, i) => i > word.to && i <= word.to + 8 && item.word === 'than');
  if (than < 0) return undefined;
  const next = all.find((g) => g.from > than);
  if (
    next &&
    next.from - than <= 5 &&
    !items.slice(than + 1, next.from).some((item) => item.kind === 'punctuation')
  )
    return next;
  return ANAPHOR.test(items[than + 1]?.word ?? '') &&
    (items[than + 2]?.kind ?? 'punctuation') === 'punctuation'
    ? undefined
    : 'other';
}
const ANAPHOR = /^(?:that|it|this|those|these|them)$/;

/** Every other size of the scale in this sentence and the two before it. */
function spokenOf(scene: Scene, subject: Group, own: readonly Group[]): Group[] {
  const before = scene.before.slice(-2).flatMap(({ items }) => groups(items).flatMap(single));
  const near =
    scene.before.length > 0
      ? before
      : (scene.context.at(-1)?.items ?? []).length > 0
        ? groups(scene.context.at(-1)!.items).flatMap(single)
        : [];
  return distinct([...own, ...near]).filter(
    (g) => g.sizes.every((size) => size.system === subject.sizes[0]!.system) && !sameSizes(g, subject),
  );
}
