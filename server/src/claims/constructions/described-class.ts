/**
 * A size put in a class by an adjective before its thing: "the 24 is our widest routine cannula", "being a 16, that cannula
 * is among the narrow ones"; `class-told.ts` reads the names of classes. One class, sizes of one scale and a tie between them must
 * be all there is; and every size named must lie far outside the class, so that it matters little which of them was meant.
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { CATEGORIES, type CategoryRow } from '../words/categories.ts';
import { NEGATIONS } from '../words/changes.ts';
import { classClaim } from './class-claim.ts';
import type { Reading } from './model.ts';

/** A class word of the sentence. */
interface Class {
  readonly at: number;
  readonly to: number;
  readonly row: CategoryRow;
}

/** What compares, denies, doubts or brings in another thing. */
const TURNS =
  /^(?:than|if|unless|unlike|instead|rather|whether|but|though|although|while|whereas|too|so|could|might|may|would|wish|wanted|except|until|before|after|then|failed|despite|old|used|some|sometimes|myth|wrong|wrongly|mistake|mistaken|never|swap|swapped|replace|replaced|versus|vs|no|opposite|second|next|substitute|alternative|why|relatively|comparatively|compared|run|runs|ran|out|short|lack|lacking|lacks|best|else|otherwise|failing)$/;

/** The class that a sentence puts its sizes in by an adjective and a noun, where no closer reader found one. */
export function describedClass(scene: Scene): Reading[] {
  const { items } = scene;
  const all = groups(items);
  const [first] = all;
  if (!first || scene.sentence.close === '?' || items.length > 40) return [];
  if (
    items.some(
      ({ word, magnitude }) => NEGATIONS.has(word) || TURNS.test(word) || magnitude?.degree === 'comparative',
    )
  )
    return [];
  const system = first.sizes[0]!.system;
  if (
    all.some(({ sizes, mentions }) => sizes.some((s) => s.system !== system) || mentions.some((m) => m.bound))
  )
    return [];
  const found = described(items, system);
  const listed = inBrackets(items, found, all);
  if (listed) return [reading(scene, listed.group, listed.one, true)];
  const [one] = found;
  if (!one || found.some(({ row }) => row.id !== one.row.id)) return [];
  const near = all.find((group) => tied(items, group, one));
  const [min, max] = one.row.outside;
  const strays = all.every(({ sizes }) => sizes.every(({ value }) => value >= min && value <= max));
  return near && strays ? [reading(scene, near, one, false)] : [];
}

const NOUNS: Readonly<Record<string, RegExp>> = {
  'needle-gauge': /^(?:cannula(?:e|s)?|needles?|ivs?|ones?|lines?|bores?)$/,
  usp: /^(?:sutures?|threads?|stitch(?:es)?|strands?|ties?|ones?)$/,
};

/** "widest routine cannula", "the narrow ones": an adjective before its thing. */
function described(items: readonly Item[], system: string): Class[] {
  return items.flatMap((item, at): Class[] => {
    const { magnitude } = item;
    if (magnitude?.axis !== 'outer' || magnitude.degree === 'comparative') return [];
    const k = [at + 1, at + 2, at + 3].find((i) => NOUNS[system]?.test(items[i]?.word ?? ''));
    if (
      k === undefined ||
      items.slice(at + 1, k).some(({ kind, magnitude: more }) => kind !== 'word' || more)
    )
      return [];
    // "a fine choice of cannula", "a fine tie": praise.
    if (items.slice(at + 1, k).some(({ word }) => /^(?:of|for|with|to|in|on|as)$/.test(word))) return [];
    if (/^(?:fine|great)$/.test(item.word) && /^(?:an?|this|that)$/.test(items[at - 1]?.word ?? ''))
      return [];
    const row = rowOf(system, magnitude.sign, items[k]!.word);
    return row ? [{ at, to: k, row }] : [];
  });
}

function rowOf(system: string, sign: 1 | -1, noun: string): CategoryRow | undefined {
  const vein = /^(?:cannula|iv|line)/.test(noun);
  const id =
    system === 'usp'
      ? sign === 1
        ? 'heavy-threads-listed'
        : 'fine-threads-listed'
      : sign === -1
        ? 'small-cannulae-listed'
        : vein
          ? 'big-cannulae-listed'
          : 'thick-needles';
  return CATEGORIES.find((row) => row.id === id);
}

/** "the heavy ones (8-0, 2)": a list right behind the class is said of each by itself. */
function inBrackets(items: readonly Item[], found: readonly Class[], all: readonly Group[]) {
  for (const one of found) {
    const group = all.find(({ from }) => from === one.to + 2 && items[one.to + 1]!.word === '(');
    const [min, max] = one.row.outside;
    if (group?.sizes.some(({ value }) => value >= min && value <= max) && items[group.to + 1]?.word === ')')
      return { group, one };
  }
  return undefined;
}

const TIES =
  /^(?:is|are|was|were|being|as|counts?|counted|among|amongst|one|both|each|think|which|called|call|named|termed|namely|e\.g|i\.e|meaning|means|say|like|\(|:|–|—|=)$/;
const PARTS =
  /^(?:and|or|with|over|through|beside|near|from|to|into|where|needs?|wants?|takes?|has|have|behind|via|under|by|against|plus|held|went|goes|go|;|\.)$/;

/** A word that ties them stands between, and nothing that sets another thing beside. */
function tied(items: readonly Item[], group: Group, one: Class): boolean {
  const ahead = group.to < one.at;
  const gap = ahead ? items.slice(group.to + 1, one.at) : items.slice(one.to + 1, group.from);
  const leads = /\b(?:being|as)(?: an?)?$/.test(joined(items, group.from - 2, group.from));
  return (
    gap.length <= 9 &&
    (leads || gap.some(({ word }) => TIES.test(word))) &&
    !gap.some(
      ({ word }, i) =>
        PARTS.test(word) || (word === 'for' && !/^(?:example|instance|us|me)$/.test(gap[i + 1]?.word ?? '')),
    )
  );
}

function reading(scene: Scene, group: Group, { at, to, row }: Class, each: boolean): Reading {
  return {
    claim: classClaim(scene, 'described-class', group, row.id, each),
    at: Math.max(at, group.from),
    from: Math.min(at, group.from),
    to: Math.max(to, group.to),
  };
}
