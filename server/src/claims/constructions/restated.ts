/**
 * The one size of the sentence before in another unit: "A fine 0.018 wire is in the top tray. In millimetres it comes to
 * 0.46." The unit that opens the sentence says that a size is told again.
 */
import { joined } from '../text/joined.ts';
import { changed } from '../text/place.ts';
import { groups, type Scene } from '../text/scene.ts';
import { equate } from './equate.ts';
import type { Construction, Reading } from './model.ts';

const UNITS = new Set(['millimetres', 'millimeters', 'mm', 'inches', 'french', 'charrière']);

export const restated: Construction = {
  id: 'restated',
  leaning: true,
  needs: () => [{ sizes: 1, words: UNITS, also: /^(?:it|that|this|that's|it's)$/ }],
  read(scene) {
    const [right, ...more] = groups(scene.items);
    if (!right || more.length > 0 || right.sizes.length > 1 || scene.sentence.close === '?') return [];
    return TOLD.test(joined(scene.items, 0, right.from)) ? resumed(scene, right) : [];
  },
};

const TOLD =
  /^(?:and |so )?in (?:millimetres|millimeters|mm|inches|french|charrière) ?,? ?(?:(?:it|that|this) (?:is|comes to|comes out at|makes|works out (?:at|as|to)|would be|will be)|that's|it's)(?: (?:about|roughly|around|some|nearly|almost|just|only|over|under))*$/;

function resumed(scene: Scene, right: ReturnType<typeof groups>[number]): Reading[] {
  const previous = scene.before.at(-1);
  if (!previous || previous.close === '?') return [];
  const [left, ...more] = groups(previous.items);
  if (!left || more.length > 0 || left.sizes.length > 1) return [];
  if (left.sizes[0]!.system === right.sizes[0]!.system) return [];
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
