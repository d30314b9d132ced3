/** Whether a sentence itself names anything of the trade. Most sentences of most notes do not. */
import type { Item } from './items.ts';
import { materialsIn } from './materials.ts';
import { remembered } from './remember.ts';

const POINTS = new Set(
  'cutting cutter cutters reverse-cutting reverse-cutter spatula spatulated blunt-tipped taper taper-point taperpoint tapered round round-bodied roundbodied blunt'.split(
    ' ',
  ),
);

/** A size, a system, a colour, a needle point or a material. */
export const speaksOfTrade = remembered(
  (items: readonly Item[]): boolean =>
    items.some((item) => item.kind === 'size' || item.system || item.colour || POINTS.has(item.word)) ||
    materialsIn(items).length > 0,
);
