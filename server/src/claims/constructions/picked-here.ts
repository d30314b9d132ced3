/**
 * Measures of sizes that are picked out of a row in one sentence: "a 10 and a 12 Fr; the former measures 3.3 mm, the latter
 * 4 mm", "of the two dilators, 6 Fr and 8 Fr, the larger has a diameter of 2.7 mm".
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { ACROSS, OWNERS, SETS } from '../words/gist.ts';
import { equate } from './equate.ts';
import { apart, CONTRAST, kindOf, plausible, stops, tells } from './gist-pair.ts';
import { closes, tail } from './measure-owner.ts';
import type { Reading } from './model.ts';
import { agreesWith, type Picked, pickedAt } from './picked.ts';
import { slip } from './slips.ts';

export const MOST_PICKED = 3;

/** The measures of a sentence, each with the one that is picked before it. */
export function pickedHere(scene: Scene): Reading[] {
  const { items } = scene;
  const all = groups(items);
  const cut = all.findIndex((g) => kindOf(g) === 'length');
  const [told, lengths] = [all.slice(0, cut), all.slice(cut)];
  if (cut < 1 || lengths.length > MOST_PICKED || !lengths.every((g) => isOne(g) && kindOf(g) === 'length'))
    return [];
  if (items.some(({ word }) => CONTRAST.test(word))) return [];
  const picked = picksOf(items, told, lengths);
  return lengths.flatMap((g, i) => {
    const one = picked[i];
    // "the latter 4 mm": the verb was said before.
    const says = one && ((i > 0 && one.to === g.from) || saysWidth(items, one.size, g, one.to));
    const fits = one && says && (items[g.to + 1] === undefined || closes(items, g));
    return fits && plausible(one.size, g, items) && !apart(scene, one.size, g)
      ? equate(scene, one.size, g)
      : [];
  });
}

/** The size picked before each length; none when one is missing or picked twice. */
function picksOf(
  items: readonly Item[],
  told: readonly Group[],
  lengths: readonly Group[],
): readonly Picked[] {
  const end = told.at(-1)!.to;
  const [only] = lengths;
  const first = lengths.length === 1 ? pickedAt(items, 0, items, told) : undefined;
  // "The thicker of our two needles, 14 and 18 G, is": picked before they are told.
  if (first && first.to < told[0]!.from && OF_SET.test(joined(items, first.to, told[0]!.from)))
    return [{ ...first, to: Math.min(end + 1, only!.from) }];
  const picked = lengths.flatMap(
    (g, i) => pickOf(items.slice(0, g.to + 1), g, items, told, (lengths[i - 1]?.to ?? end) + 1) ?? [],
  );
  return new Set(picked.map(({ size }) => size.from)).size === lengths.length ? picked : [];
}
const OF_SET =
  /^of (?:the|our|my|these|those) (?:two |three )?(?:[a-z-]+ ){0,3}(?:[,:(]|is|are)(?: an?| the)?$/;

/** A word of width, a verb that sets the two equal, or the usual slip. */
const saysWidth = (items: readonly Item[], left: Group, right: Group, from: number): boolean =>
  [...items.slice(from, right.from), ...tail(items, right)].some(({ word }) => ACROSS.test(word)) ||
  SETS.test(joined(items, from, right.from)) ||
  slip(left, right);

export const isOne = ({ mentions, sizes }: Group): boolean => mentions.length === 1 && sizes.length === 1;

/** Where a clause begins before the measure. */
export const clausesOf = (items: readonly Item[], right: Group): readonly number[] =>
  items.flatMap((_, i) => (i < right.from && opensClause(items, i) ? [i] : []));

const opensClause = (items: readonly Item[], i: number): boolean =>
  i === 0 || /^(?:[,;:—–(]|and|so|but|since|because|as|that|why|how|means)$/.test(items[i - 1]!.word);

/** "The second is the fatter and comes to": one of several, and nothing that turns what is said of it. */
export function pickOf(
  items: readonly Item[],
  right: Group,
  held: readonly Item[],
  fits: readonly Group[],
  start = 0,
): Picked | undefined {
  for (const at of clausesOf(items, right)) {
    if (items[at]!.word !== 'the' || at < start) continue;
    const picked = pickedAt(items, at, held, fits);
    if (!picked || picked.to > right.from || !tells(picked.size, right)) continue;
    const words = items.slice(picked.to, right.from);
    const said = measuredWords(words).filter(({ degree }) => degree !== 'plain');
    const rest = words.filter((_, i) => !said.some((word) => i >= word.at && i <= word.to));
    if (
      items.slice(start, at).some(({ word, kind }) => kind === 'size' || CONTRAST.test(word)) ||
      said.length > 1 ||
      !said.every((word) => agreesWith(word, picked.size, fits)) ||
      rest.length > LONGEST ||
      rest.some((item, i) => stops(rest, i, item) || OWNERS.test(item.word))
    )
      return undefined;
    return picked;
  }
  return undefined;
}
export const LONGEST = 12;
