/**
 * The one size of the sentence before in another unit: "A fine 0.018 wire is in the top tray. In millimetres it comes to
 * 0.46." The unit that opens the sentence says that a size is told again.
 */
import { joined } from '../text/joined.ts';
import { groups } from '../text/scene.ts';
import type { Construction } from './model.ts';
import { resumed } from './resumed.ts';

const UNITS = new Set(['millimetres', 'millimeters', 'mm', 'inches', 'french', 'charrière']);

export const restated: Construction = {
  id: 'restated',
  leaning: true,
  needs: () => [{ sizes: 1, words: UNITS, also: /^(?:it|that|this|that's|it's)$/ }],
  read(scene) {
    const [right, ...more] = groups(scene.items);
    if (!right || more.length > 0 || right.sizes.length > 1 || scene.sentence.close === '?') return [];
    const system = right.sizes[0]!.system;
    return TOLD.test(joined(scene.items, 0, right.from))
      ? resumed(scene, right, (left) => left.sizes[0]!.system !== system)
      : [];
  },
};

const TOLD =
  /^(?:and |so )?in (?:millimetres|millimeters|mm|inches|french|charrière) ?,? ?(?:(?:it|that|this) (?:is|comes to|comes out at|makes|works out (?:at|as|to)|would be|will be)|that's|it's)(?: (?:about|roughly|around|some|nearly|almost|just|only|over|under))*$/;
