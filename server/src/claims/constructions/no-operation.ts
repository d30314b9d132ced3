/** Words of reckoning that reckon nothing. */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';

/** "Double lumen: outside, in French": a kind of tube; "three edges, the third on the outside": one after the second. */
export const inName = (items: readonly Item[], i: number): boolean =>
  /^lumens?$/.test(items[i + 1]?.word ?? '') ||
  /^(?!(?:an?|one|1|by|is|=) )\S+ third(?! of)/.test(joined(items, i - 1, i + 2));
