/** Sizes and measures that stand beside each other and yet are not set equal: lengths along, and what lies beyond a size. */
import type { Item } from '../text/items.ts';
import type { Group } from '../text/scene.ts';
import { LENGTHS } from './equate.ts';

/** "Anything thicker than a 20 G is over 1 mm": the verb belongs to what is compared with the size. */
export const beyond = (items: readonly Item[], left: Group, between: readonly Item[]) =>
  between.some((item) => VERBS.test(item.word)) &&
  between[0]!.word !== '(' &&
  items.slice(Math.max(0, left.from - 2), left.from).some((item) => item.word === 'than');
const VERBS = /^(?:is|are|was|were|measures?|comes?|has|have)$/;

/** "0.45 mm × 12 mm (26 G)": the second figure of a pair is the length. */
export const second = (items: readonly Item[], left: Group) =>
  /^[x×*]$/.test(items[left.from - 1]?.word ?? '') && items[left.from - 2]?.kind === 'size';

/** "0.45 mm × 12 mm (26 G)": the second of two measures joined by a cross is a length along. */
export const crossedLength = (items: readonly Item[], g: Group) =>
  LENGTHS.has(g.sizes[0]!.system) &&
  CROSS.has(items[g.from - 1]?.word ?? '') &&
  items[g.from - 2]?.kind === 'size';
const CROSS = new Set(['×', '*', 'x', 'by']);

/** "goes over a 0.035 wire, so the line is 2.7 mm across": of another thing than the wire. */
export const ofAnother = (left: Group, between: readonly Item[]): boolean =>
  left.sizes[0]!.system === 'wire-inch' &&
  between.some(
    ({ word, deviceNoun }, i) =>
      deviceNoun === true &&
      !/wires?$/.test(word) &&
      /^(?:the|this|that|our|your)$/.test(between[i - 1]?.word ?? ''),
  );
