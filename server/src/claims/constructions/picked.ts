/**
 * Which of the sizes spoken of before a phrase stands for: "14 and 18 Fr. The second …", "the latter", "the thinner one",
 * "0.018, 0.025 and 0.035 inch. The last one …".
 */
import { compareThickness } from '../../sizes/index.ts';
import type { System } from '../../sizes/model.ts';
import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Measured } from '../text/magnitudes.ts';
import { distinct, type Group } from '../text/scene.ts';

/** The phrase that picks, from one item up to another (exclusive), and the size it picks. */
export interface Picked {
  readonly from: number;
  readonly to: number;
  readonly size: Group;
}

const PLACES: Readonly<Record<string, number>> = {
  first: 0,
  former: 0,
  second: 1,
  third: 2,
  last: -1,
  latter: -1,
};
const PLACED =
  /^the (first|former|second|third|last|latter|other|(?:the )?[a-z]+)(?: (?:one|of (?:the two|the three|the pair|them|these|those)|of which))?/;

/** Most sizes that are told apart by their place. */
const MOST = 4;

/** The size that the words at item `at` pick out of those told in a row; nothing when it could be another. */
export function pickedAt(
  items: readonly Item[],
  at: number,
  told: readonly Item[],
  groups: readonly Group[],
): Picked | undefined {
  const all = distinct(groups.flatMap(single));
  if (all.length < 2 || all.length > MOST || !rowOf(told, groups)) return undefined;
  const { system } = all[0]!.sizes[0]!;
  if (all.some((g) => g.sizes.length !== 1 || g.sizes[0]!.system !== system)) return undefined;
  const name = PLACED.exec(joined(items, at, at + 5));
  const to = at + (name?.[0].split(' ').length ?? 0);
  if (!name) return undefined;
  const size = byPlace(name[1]!, all) ?? byWidth(items.slice(at + 1, at + 3), all, system);
  return size && { from: at, to: items[to]?.deviceNoun === true ? to + 1 : to, size };
}

function byPlace(name: string, all: readonly Group[]): Group | undefined {
  const place = PLACES[name];
  const pair = name === 'former' || name === 'latter';
  return place === undefined || (pair && all.length !== 2) ? undefined : all.at(place);
}

/** Scales on which one of several is told by its width. */
const SCALES: ReadonlySet<System> = new Set<System>([
  'french',
  'usp',
  'ep-metric',
  'needle-gauge',
  'wire-inch',
  'inch',
]);

/** Above nought when the first is the thicker, below when the second is. */
function thicker({ sizes: [a] }: Group, { sizes: [b] }: Group): number {
  const { result } = compareThickness(a!, b!, {}, {});
  return result === 'thicker' ? 1 : result === 'thinner' ? -1 : 0;
}

/** "the thinner one" of two, "the thinnest" of several. */
function byWidth([item, next]: readonly Item[], all: readonly Group[], system: System): Group | undefined {
  const word = item?.magnitude;
  if (!word || !SCALES.has(system) || word.axis !== 'outer' || word.excess) return undefined;
  if (word.degree !== 'superlative' && all.length !== 2) return undefined;
  if (word.degree === 'plain' && next?.word !== 'one') return undefined;
  return all.toSorted((a, b) => word.sign * thicker(b, a))[0];
}

/** A list, not a range, with nothing said of one of them alone. */
const rowOf = (told: readonly Item[], groups: readonly Group[]): boolean =>
  !groups.some(({ from, to, sizes, mentions }) =>
    mentions.length === 1
      ? sizes.length > 1
      : told.slice(from, to).some(({ word }) => /^(?:to|-|–|or)$/.test(word)),
  );

/** Do these words say which of two the picked one is, and rightly: "is the fatter and"? */
export function agreesWith(word: Measured, size: Group, groups: readonly Group[]): boolean {
  const all = distinct(groups.flatMap(single));
  const { system, value } = size.sizes[0]!;
  if (!SCALES.has(system) || word.axis !== 'outer') return false;
  return all.every((g) => g.sizes[0]!.value === value || word.sign * thicker(size, g) > 0);
}
