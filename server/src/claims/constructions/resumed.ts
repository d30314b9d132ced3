/** A size told in one sentence and told again in the next: both are read as one sentence. */
import type { Item } from '../text/items.ts';
import { changed } from '../text/place.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { equate } from './equate.ts';
import type { Reading } from './model.ts';

/** The only size of the sentence before, set equal to one of this sentence; nothing when that one asks or has several. */
export function resumed(scene: Scene, right: Group, fits: (left: Group) => boolean): Reading[] {
  const previous = scene.before.at(-1);
  if (!previous || previous.close === '?') return [];
  const [left, ...more] = groups(previous.items);
  if (!left || more.length > 0 || left.sizes.length > 1 || !fits(left)) return [];
  return asOne(scene, previous.items, left, right);
}

/** Sizes of two sentences set equal, unless something about the one sentence that they make forbids it. */
export function asOne(
  scene: Scene,
  before: readonly Item[],
  left: Group,
  right: Group,
  forbids: (both: Scene, left: Group, right: Group) => boolean = () => false,
): Reading[] {
  const shift = before.length;
  const both = changed(scene, { items: [...before, ...scene.items] });
  const moved = { ...right, from: right.from + shift, to: right.to + shift };
  // "EP 1 is 5-0. EP 0.7 is 6-0": it has a partner of its own, though nobody could read it.
  if (
    forbids(both, left, moved) ||
    scene.items.some(({ word, kind }) => kind === 'word' && DASHED.test(word))
  )
    return [];
  return equate(both, left, moved).map((reading) => ({
    ...reading,
    at: right.from,
    from: right.from,
    to: right.to,
  }));
}

const DASHED = /^\d{1,2}[-/]0$/;
