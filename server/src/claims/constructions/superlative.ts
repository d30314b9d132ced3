/**
 * One size picked out of several: "the thickest of 0, 2-0 and 4-0 is the 0", "of 16, 18 and 20 G, the 16 G runs fastest",
 * "the smallest of these three is the 10 Fr; the 12 Fr and 14 Fr are larger".
 */
import type { Relation } from '../model.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSystem, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

export const superlative: Construction = {
  id: 'superlative',
  needs: () => [
    { sizes: 3, holds: ['superlative'] },
    { sizes: 2, holds: ['superlative'], words: ['before', 'ahead', 'followed', 'then', 'next'] },
  ],
  read(scene) {
    const word = measuredWords(scene.items).find(
      (m) => m.degree === 'superlative' && m.axis !== 'other' && m.axis !== 'number' && !m.idiom,
    );
    const all = groups(scene.items).flatMap(singles);
    if (!word || all.length < 2) return [];
    const one = all.every((g) => sameSystem(g, all[0]!));
    // Across systems only widths can be told.
    const leader = one || word.axis === 'outer' ? leading(scene, word, all) : undefined;
    if (leader)
      return [
        against(
          scene,
          word,
          leader,
          all.filter((g) => g.from > word.to),
        ),
      ];
    if (all.length < 3 || !one) return [];
    const chosen = chosenAfter(scene, word, all) ?? chosenBefore(scene, word, all) ?? apart(scene, word, all);
    if (!chosen) return [];
    const others = all.filter((g) => g.sizes[0]!.value !== chosen.sizes[0]!.value);
    return others.length < 2 ? [] : [against(scene, word, chosen, others)];
  },
};

const singles = (group: Group): Group[] =>
  group.mentions.map((mention) => ({ ...group, mentions: [mention], sizes: mention.sizes }));

const BE = new Set(['is', 'are', '=', ':', 'was', 'being', 'would']);
const SET = new Set(['of', 'among', 'amongst', 'out', 'between']);
const ARTICLES = new Set(['the', 'a', 'an', 'our']);

/** "the thickest of … is the 0": the one size right after the verb that follows the set. */
function chosenAfter(scene: Scene, word: Measured, all: readonly Group[]): Group | undefined {
  const { items } = scene;
  if (!items.slice(word.to + 1, word.to + 8).some((item) => SET.has(item.word))) return undefined;
  const verb = items.findIndex((item, i) => i > word.to && BE.has(item.word));
  const chosen = verb < 0 ? undefined : all.find((g) => g.from > verb);
  if (!chosen || chosen.from - verb > 3) return undefined;
  const between = items.slice(verb + 1, chosen.from);
  return chosen.to === chosen.from && between.every((item) => ARTICLES.has(item.word)) ? chosen : undefined;
}

/** "Of the 16 G, 18 G and 20 G, the 16 G is the widest": the set first, then the one. */
function chosenBefore(scene: Scene, word: Measured, all: readonly Group[]): Group | undefined {
  const { items } = scene;
  if (!items.slice(0, 2).some((item) => SET.has(item.word))) return undefined;
  const chosen = all.filter((g) => g.to < word.at).at(-1);
  if (chosen?.from !== chosen?.to || !chosen || word.at - chosen.to > 5) return undefined;
  if (items[chosen.from - 1]?.word === ',' || items[chosen.from - 2]?.word === ',') return chosen;
  return namedAgain(items, all, chosen, word) ? chosen : undefined;
}

/** "Of the 16 G, 18 G and 20 G on the tray the 18 G was the widest": one of the set again, with no comma before it. */
function namedAgain(items: readonly Item[], all: readonly Group[], chosen: Group, word: Measured): boolean {
  const earlier = all.filter((g) => g.to < chosen.from);
  return (
    earlier.length >= 3 &&
    earlier.some((g) => g.sizes[0]!.value === chosen.sizes[0]!.value) &&
    items[chosen.from - 1]?.word === 'the' &&
    /^(?:is|was|are|has|had|gives|gave)(?: (?:the|by|far|clearly|always|still|,))* the$/.test(
      textOf(items.slice(chosen.to + 1, word.at)),
    )
  );
}

const REST = new Set(['others', 'rest', 'other', 'remaining']);

/** "the thickest is the 0" after its set, or "our smallest is the 22 G; the others are 25 and 24 G". */
function apart({ items }: Scene, word: Measured, all: readonly Group[]): Group | undefined {
  const chosen = all.find((g) => g.from > word.to && g.from - word.to <= 7);
  if (!chosen) return undefined;
  const between = items.slice(word.to + 1, chosen.from);
  const is = between.findIndex((item) => BE.has(item.word));
  if (is < 0 || !between.slice(is + 1).every((item) => ARTICLES.has(item.word))) return undefined;
  const before =
    all.filter((g) => g.to < word.at).length >= 2 &&
    items.slice(0, word.at).some((item) => SET.has(item.word));
  const after = items.slice(chosen.to + 1).findIndex((item) => REST.has(item.word));
  const others = all.filter((g) => g.from > chosen.to);
  return before || (after >= 0 && others.length >= 2 && others[0]!.from > chosen.to + after)
    ? chosen
    : undefined;
}

/** "the 24 G is the widest we keep, before the 22 and the 20": the first of a row, and what comes after it. */
function leading({ items }: Scene, word: Measured, all: readonly Group[]): Group | undefined {
  const [chosen, next] = all;
  if (!chosen || !next || chosen.to > word.at || next.from < word.to || word.at - chosen.to > 5)
    return undefined;
  const owns = word.to > word.at ? /^(?:has|have|gives|with)$/ : /^$/;
  if (!items.slice(chosen.to + 1, word.at).some((item) => BE.has(item.word) || owns.test(item.word)))
    return undefined;
  const after = all.at(-1)!.to + 1;
  const last = items[after + (items[after]?.deviceNoun ? 1 : 0)];
  return AHEAD.test(textOf(items.slice(word.to + 1, next.from))) && (!last || /^[.;,!)]$/.test(last.word))
    ? chosen
    : undefined;
}
const AHEAD = /^(?:[^\s,;.:]+ ){0,7}?, (?:before|ahead of|followed by|then|next)(?: comes?| the| an?)*$/;

function against(scene: Scene, word: Measured, chosen: Group, others: readonly Group[]): Reading {
  const rest: Group = {
    from: others[0]!.from,
    to: others.at(-1)!.to,
    mentions: others.flatMap((g) => g.mentions),
    sizes: others.flatMap((g) => g.sizes),
  };
  const relation: Relation = word.sign === 1 ? 'more' : 'less';
  const reading = comparison(scene, 'superlative', chosen, rest, word, relation);
  if (reading.claim.kind !== 'comparison') return reading;
  const { word: _, ...claim } = reading.claim;
  const focus = spanOf(scene, scene.items[chosen.from]!);
  return {
    ...reading,
    claim: { ...claim, focus, each: true },
    from: Math.min(word.at, chosen.from),
    to: Math.max(word.to, chosen.to),
  };
}
