/** "twice the diameter of a 3 Fr", "half as wide as a 12 Fr": only the order is judged, not the ratio. */
import type { Axis } from '../model.ts';
import type { Item } from '../text/items.ts';
import { compares } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { powers } from './powers.ts';
import { comparison, wordless } from './than.ts';

const RATIOS: ReadonlyMap<string, 1 | -1> = new Map([
  ['twice', 1],
  ['double', 1],
  ['triple', 1],
  ['times', 1],
  ['half', -1],
  ['quarter', -1],
  ['third', -1],
]);

export const ratio: Construction = {
  id: 'ratio',
  needs: () => [{ sizes: 1, words: RATIOS.keys() }],
  read(scene) {
    const worked = powers(scene);
    if (worked.length > 0) return worked;
    const all = groups(scene.items);
    return scene.items.flatMap((item, at) => {
      const part = counted(scene.items, at) ? undefined : RATIOS.get(item.word);
      const sign = part === -1 && grown(scene.items, at) ? 1 : part;
      const time = sign && timeAfter(scene.items, at);
      const measured = time
        ? { axis: 'flow' as const, sign: 1 as const }
        : sign && measuredAfter(scene.items, at);
      if (!sign || !measured) return [];
      const { axis } = measured;
      const left = all.filter((g) => g.to < at && at - g.to <= 6).at(-1);
      const right = all.find((g) => g.from > at && g.from - at <= 8);
      const both = time && !left ? throughAs(scene.items, all, at) : undefined;
      if (both) return [reading(scene, at, axis, flip(sign), ...both)];
      if (!left || !right || !sameSystem(left, right) || sameSizes(left, right)) return [];
      // Half the resistance is more flow.
      const turned = time || measured.sign === -1;
      return [reading(scene, at, axis, turned ? flip(sign) : sign, left, right)];
    });
  },
};

/** "takes twice the time through a 20 G as through a 16 G": both stand behind. */
function throughAs(items: readonly Item[], all: readonly Group[], at: number): [Group, Group] | undefined {
  const [a, b] = all.filter((g) => g.from > at);
  if (!a || !b || !sameSystem(a, b) || sameSizes(a, b) || a.from - at > 12) return undefined;
  const link = items
    .slice(a.to + 1, b.from)
    .map((item) => item.word)
    .join(' ');
  return /^(?:\w+ )?(?:as|than) (?:through|with|down|via|by)(?: (?:an?|the))?$/.test(link)
    ? [a, b]
    : undefined;
}

const flip = (sign: 1 | -1): 1 | -1 => (sign === 1 ? -1 : 1);

/** "half as wide again as": by half more. */
const grown = (items: readonly Item[], at: number): boolean =>
  items.slice(at + 1, at + 6).some((item, i, near) => item.word === 'again' && near[i + 1]?.word === 'as');

/** "in half the time", "twice as long to run a litre": time taken is slowness where fluid runs. */
const timeAfter = (items: readonly Item[], at: number): boolean =>
  /^(?:the|as) (?:time|long)\b/.test(`${items[at + 1]?.word} ${items[at + 2]?.word}`) &&
  items.some((item) => FLUID.test(item.word)) &&
  !items.some((item) => OTHER_TIME.test(item.word));
const FLUID =
  /^(?:litres?|liters?|bags?|units?|fluids?|blood|infusions?|transfusions?|saline|bolus|drips?|drains?|empt(?:y|ies)|flows?|runs?)$/;
const OTHER_TIME = /^(?:clots?|blocks?|lasts?|stays?|hours|days|longer|shorter|pressure|two|lines?)$/;

/** "two and a half times": the half belongs to a number, and the double of "double lumen" to a name. */
const counted = (items: readonly Item[], at: number): boolean =>
  /^(?:lumens?|bore)$/.test(items[at + 1]?.word ?? '') ||
  (/^(?:half|quarter|third)$/.test(items[at]!.word) &&
    items.slice(at + 1, at + 2).some((item) => item.word === 'times'));

/** "the diameter of", "as thick as": what is doubled or halved. */
function measuredAfter(
  items: readonly Item[],
  at: number,
): { readonly axis: Axis; readonly sign: 1 | -1 } | undefined {
  for (const item of items.slice(at + 1, at + 5)) {
    if (item.kind === 'size' || item.kind === 'punctuation') return undefined;
    if (item.word === 'size' || item.word === 'sizes') return undefined;
    const axis =
      item.axisNoun?.axis ??
      (item.magnitude?.degree === 'plain' && item.magnitude.sign === 1 ? item.magnitude.axis : undefined);
    if (axis === 'outer' || axis === 'bore' || axis === 'flow')
      return { axis, sign: item.axisNoun?.sign ?? 1 };
  }
  return undefined;
}

function reading(
  scene: Scene,
  at: number,
  axis: Axis,
  sign: 1 | -1,
  left: Parameters<typeof comparison>[2],
  right: Parameters<typeof comparison>[3],
): Reading {
  const word = compares(at, axis, sign);
  return wordless(comparison(scene, 'ratio', left, right, word));
}
