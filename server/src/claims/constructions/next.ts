/** "If 21 G is too narrow, the next one up is the 22": what is too small is given up for something bigger. */

import type { ComparisonClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

export const next: Construction = {
  id: 'next',
  needs: () => [{ sizes: 2, holds: ['measured'] }],
  read(scene) {
    const all = groups(scene.items);
    const words = measuredWords(scene.items).filter(
      (m) => m.axis !== 'other' && m.axis !== 'number' && !m.idiom,
    );
    const excess = words.find((m) => m.excess);
    return excess ? tooMuch(scene, excess, all) : stepped(scene, words, all);
  },
};

/** "too narrow a 21 G" or "21 G is too narrow", then the size to take instead. */
function tooMuch(scene: Scene, excess: Measured, all: readonly Group[]): Reading[] {
  const through = all.find((g) => g.from > excess.to && g.from - excess.to <= 4);
  const before = all.filter((g) => g.to < excess.at && excess.at - g.to <= 6).at(-1);
  const within =
    through && /^(?:through|down|via|with|in)$/.test(scene.items[excess.to + 1]?.word ?? '')
      ? through
      : undefined;
  const given = before ?? within;
  const after = all.find((g) => g.from > Math.max(excess.to, given?.to ?? 0));
  if (given && !after) return instead(scene, excess, given, all);
  const chosen = after;
  if (!given || !chosen || !sameSystem(given, chosen) || sameSizes(given, chosen)) return [];
  // "Too tight" is said of the way as much as of the tube; "anything above 20 G" is no size to give up.
  if (/^(?:tight|snug)$/.test(scene.items[excess.at]!.word) || bounded(scene.items, given)) return [];
  const between = scene.items.slice(Math.max(excess.to, given.to) + 1, chosen.from);
  if (
    between.length > 16 ||
    !(between.some((item) => CHOOSES.has(item.word)) || answers(scene.items, chosen)) ||
    between.some((item) => STOPS.has(item.word))
  )
    return [];
  const reading = comparison(scene, 'too-much', chosen, given, excess, excess.sign === 1 ? 'less' : 'more');
  // What is asserted is the choice, not the condition that leads to it.
  const focus = spanOf(scene, scene.items[chosen.from]!, scene.items[chosen.to]!);
  const { word: _, ...claim } = reading.claim as ComparisonClaim;
  return [{ claim: { ...claim, focus }, at: chosen.from, from: chosen.from, to: chosen.to }];
}

/** "Take a 24 G: the 20 G is too thick": the choice first, then the ground. */
function instead(scene: Scene, excess: Measured, given: Group, all: readonly Group[]): Reading[] {
  const chosen = all.filter((g) => g.to < given.from).at(-1);
  if (!chosen || !sameSystem(given, chosen) || sameSizes(given, chosen) || bounded(scene.items, given))
    return [];
  if (/^(?:tight|snug)$/.test(scene.items[excess.at]!.word)) return [];
  const verb = scene.items
    .slice(Math.max(0, chosen.from - 4), chosen.from)
    .some((item) => TAKES.test(item.word));
  const link = scene.items.slice(chosen.to + 1, given.from).some((item) => GROUND.test(item.word));
  if (!verb || !link || given.from - chosen.to > 6) return [];
  const reading = comparison(scene, 'too-much', chosen, given, excess, excess.sign === 1 ? 'less' : 'more');
  const focus = spanOf(scene, scene.items[chosen.from]!, scene.items[chosen.to]!);
  const { word: _, ...claim } = reading.claim as ComparisonClaim;
  return [{ claim: { ...claim, focus }, at: chosen.from, from: chosen.from, to: chosen.to }];
}
const TAKES = /^(?:take|use|choose|pick|open|try|prefer|want|get)$/;
const GROUND = /^(?:[:;—]|because|since|as)$/;

const bounded = (items: readonly Item[], given: Group) =>
  given.mentions.some((m) => m.bound) ||
  /^(?:above|below|beyond|over|under|past)$/.test(items[given.from - 1]?.word ?? '');

/** "…, a 5-0 is the answer", "a 14 Fr will do". */
const answers = (items: readonly Item[], chosen: Group): boolean =>
  /^(?:is (?:the|your|our) (?:answer|one|choice|size|cure|remedy|way)|is (?:what|better|next|right)|(?:will|would|should) (?:do|serve|pass|go|work|fit)|does|works|goes)\b/.test(
    items
      .slice(chosen.to + 1, chosen.to + 6)
      .filter((item) => !item.deviceNoun)
      .map((item) => item.word)
      .join(' '),
  );

const CHOOSES = new Set(
  'next go use take try pick choose reach grab switch change move drop step swap is upsize downsize open fetch get replace replaced replaces changed swapped moved went opened used took chose'.split(
    ' ',
  ),
);
const STOPS = new Set(['not', 'never', "don't", 'no', '.', ';', 'from']);

const STEP = new Set(['next', 'up', 'down']);

/** "the next thicker size after 2-0 is 0", "one size thinner than": an ordinal step with both ends named. */
function stepped(scene: Scene, words: readonly Measured[], all: readonly Group[]): Reading[] {
  const pairs = distinct(all);
  if (pairs.length !== 2 || !sameSystem(pairs[0]!, pairs[1]!)) return [];
  const word = words.find((m) => m.degree === 'comparative' && nearStep(scene.items, m));
  const [a, b] = pairs as [Group, Group];
  if (!word || scene.items.some((item) => item.word === 'than')) return [];
  const anchored = scene.items.slice(word.to + 1, a.from).some((item) => ANCHOR.has(item.word));
  if (word.at < a.from && anchored && a.from - word.to <= 6) return [comparison(scene, 'step', b, a, word)];
  const before = scene.items.slice(Math.max(0, a.from - 3), a.from).some((item) => ANCHOR.has(item.word));
  // "Number 1 is the next thicker size after 0": the anchor stands last.
  const last = scene.items.slice(word.to + 1, b.from).some((item) => ANCHOR.has(item.word));
  if (last && word.at > a.to && b.from - word.to <= 6) return [comparison(scene, 'step', a, b, word)];
  return before && word.at > a.to && word.at < b.from ? [comparison(scene, 'step', b, a, word)] : [];
}

const nearStep = (items: readonly Item[], m: Measured) =>
  items.slice(Math.max(0, m.at - 3), m.at).some((item) => STEP.has(item.word));
const ANCHOR = new Set(['after', 'from', 'above', 'below', 'beyond', 'past']);
