/**
 * A superlative over a set of known number, named before: "it is the thinnest of the three", "the smaller of our two is the
 * 8 Fr", "of our three wires the 0.018 inch is the finest". The sizes named nearby must be just so many.
 */

import { lastSpoken, setOfSize, single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes, sameSystem, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison, wordless } from './than.ts';

export const countedSet: Construction = {
  id: 'counted-set',
  needs: () => [
    { holds: ['superlative'], words: COUNTS.keys() },
    { holds: ['compared'], words: COUNTS.keys() },
  ],
  leaning: true,
  read(scene) {
    const word = measuredWords(scene.items).find(
      (m) => m.degree !== 'plain' && decidable(m.axis) && !m.idiom && scene.items[m.at - 1]?.word === 'the',
    );
    const count = word && countIn(scene.items, word);
    if (!word || !count || (word.degree === 'comparative' && count !== 2)) return [];
    const chosen = sizeOf(scene, word) ?? pronounOf(scene, word);
    if (!chosen) return [];
    const own = groups(scene.items).flatMap(single);
    if (own.some((g) => !sameSystem(g, chosen))) return [];
    const set = setOfSize(scene, chosen.sizes[0]!.system, count, [chosen, ...own]);
    const others = set?.filter((g) => !sameSizes(g, chosen)) ?? [];
    return others.length === count - 1 ? [reading(scene, word, chosen, others)] : [];
  },
};

const COUNTS: ReadonlyMap<string, number> = new Map([
  ['two', 2],
  ['pair', 2],
  ['three', 3],
  ['trio', 3],
  ['four', 4],
  ['five', 5],
]);
const ITS = /^(?:the|our|these|those|my|your|all|them)$/;

/** "of the three" behind the word, or "of our three wires" at the start. */
function countIn(items: readonly Item[], word: Measured): number | undefined {
  const after = countAfter(items, word.to + 1, word.to + 4);
  return after ?? (items[0]?.word === 'of' ? countAfter(items, 0, 0) : undefined);
}

function countAfter(items: readonly Item[], from: number, to: number): number | undefined {
  const of = items.findIndex((item, i) => i >= from && i <= to && item.word === 'of');
  if (of < 0) return undefined;
  const at = ITS.test(items[of + 1]?.word ?? '') ? of + 2 : of + 1;
  return COUNTS.get(items[at]?.word ?? '') ?? COUNTS.get(items[at + 1]?.word ?? '');
}

const BE = /^(?:is|are|was|being|=|:)$/;

/** The one size of the sentence, tied to the word by a verb of being. */
function sizeOf({ items }: Scene, word: Measured): Group | undefined {
  const all = groups(items);
  const [chosen] = all;
  if (all.length !== 1 || chosen?.sizes.length !== 1) return undefined;
  const between =
    chosen.from > word.at ? items.slice(word.to, chosen.from) : items.slice(chosen.to + 1, word.at);
  return between.length <= 8 && between.some((item) => BE.test(item.word)) ? chosen : undefined;
}

/** "It is the thinnest": the one size of the sentence before, or named before it here. */
function pronounOf(scene: Scene, word: Measured): Group | undefined {
  const text = scene.items
    .slice(Math.max(0, word.at - 5), word.at)
    .map((item) => item.word)
    .join(' ');
  if (!/\b(?:it|that|this|that one|which) (?:is|was) (?:also |clearly )?the$|\bit's the$/.test(text))
    return undefined;
  const before = groups(scene.items.slice(0, word.at));
  if (before.length === 0) return lastSpoken(scene);
  // With two sizes before it, the pronoun may stand for either.
  return before.length === 1 && before[0]!.sizes.length === 1 ? before[0] : undefined;
}

function reading(scene: Scene, word: Measured, chosen: Group, others: readonly Group[]): Reading {
  const rest: Group = {
    from: word.at,
    to: word.to,
    mentions: others.flatMap((g) => g.mentions),
    sizes: others.flatMap((g) => g.sizes),
  };
  const made = wordless(
    comparison(scene, 'counted-set', chosen, rest, word, word.sign === 1 ? 'more' : 'less'),
  );
  if (made.claim.kind !== 'comparison') return made;
  const focus = spanOf(scene, scene.items[word.at]!);
  return { claim: { ...made.claim, focus, each: true }, at: word.at, from: word.at, to: word.to };
}
