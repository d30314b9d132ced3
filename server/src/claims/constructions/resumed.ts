/** A size told in one sentence and told again in the next: both are read as one sentence. */
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
  const shift = previous.items.length;
  const both = changed(scene, { items: [...previous.items, ...scene.items] });
  const moved = { ...right, from: right.from + shift, to: right.to + shift };
  return equate(both, left, moved).map((reading) => ({
    ...reading,
    at: right.from,
    from: right.from,
    to: right.to,
  }));
}
