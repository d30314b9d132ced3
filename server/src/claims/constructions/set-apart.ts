/** Sizes and measures that stand beside each other and yet are not set equal: lengths along, and what lies beyond a size. */
import type { Item } from '../text/items.ts';
import type { Group, Scene } from '../text/scene.ts';
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

/** "One Fr is a third of a millimetre, so a 12 Ch is 4 mm": each has a verb of its own. */
export const concluded = (
  items: readonly Item[],
  left: Group,
  right: Group,
  between: readonly Item[],
): boolean =>
  /^(?:,|;|and)$/.test(between[0]?.word ?? '') &&
  between.some((item) => /^(?:so|hence|therefore|thus)$/.test(item.word)) &&
  IS.test(items[left.from - 1]?.word ?? '') &&
  IS.test(items[right.to + 1]?.word ?? '');

/** "A green funnel is a 14 Ch, a green cannula is 18 G": each is the predicate of a thing of its own. */
export function saidOfAnother(items: readonly Item[], left: Group, between: readonly Item[]): boolean {
  const verb = items[left.from - (/^an?$/.test(items[left.from - 1]?.word ?? '') ? 2 : 1)]?.word ?? '';
  const [comma, ...clause] = between;
  return (
    IS.test(verb) &&
    comma?.word === ',' &&
    clause.some((item) => item.deviceNoun) &&
    clause.some((item) => IS.test(item.word))
  );
}
const IS = /^(?:is|are|was|means|=)$/;

/** "2 mm against 0.3", "4 mm is enough, 32 G", "the 22 G, 1 1/2 in, is 0.7 by 38": the measure is not the left one's. */
export const heldAgainst = (
  items: readonly Item[],
  left: Group,
  right: Group,
  between: readonly Item[],
): boolean =>
  /^(?:against|versus|vs)$/.test(items[right.to + 1]?.word ?? '') ||
  between.some(({ word }) => word === 'enough') ||
  (items[left.from - 1]?.word === ',' &&
    items[left.from - 2]?.kind === 'size' &&
    between[0]?.word === ',' &&
    [left, right].every((g) => /^(?:millimetre|inch)$/.test(g.sizes[0]!.system)));

/** A term at the head of a line, its definition on the next: what stands before it belongs to another term. */
export function opensTerm({ passage, items }: Scene, right: Group): boolean {
  const { start } = items[right.from]!;
  const before = passage.text.slice(Math.max(0, start - 4), start);
  return /\n\s*$/.test(before) && /^[^\n]{0,60}\n\s{0,4}:\s/.test(passage.text.slice(start, start + 80));
}

/** "14 G is wide, 14 Fr is wider still": each is told something of its own. */
const besideIts = (items: readonly Item[], { to }: Group, right: Group): boolean =>
  right.from > to + 3 &&
  items[right.from - 1]!.word === ',' &&
  items.slice(to + 1, right.from).some(({ word }) => TOLD.test(word)) &&
  TOLD.test(items[right.to + 1]?.word ?? '');
const TOLD = /^(?:is|are|was|were)$/;

/** "25 G < 23 G (0.5 mm < 0.6 mm)": the first in brackets is that of the first before them. */
const inTurn = (items: readonly Item[], left: Group, right: Group): boolean =>
  right.from === left.to + 2 &&
  items[left.to + 1]!.word === '(' &&
  /^(?:[<>≤≥=]|vs\.?|versus)$/.test(items[right.to + 1]?.word ?? '') &&
  items[right.to + 1]!.word === items[left.from - 1]?.word;

/** "One inch. For others 1 1/4 in, that is 32 mm": a length that was not taken for a size stands nearer. */
const nearerInch = (items: readonly Item[], left: Group, right: Group): boolean =>
  LENGTHS.has(right.sizes[0]!.system) &&
  items
    .slice(left.to + 1, right.from)
    .some(
      ({ word, kind }, i, all) =>
        kind === 'word' &&
        /^(?:[0-9]+\/[0-9]+|[0-9.]*[¼½¾⅛⅜⅝⅞]|[0-9.]+)$/.test(word) &&
        /^(?:in|inch|inches)$/.test(all[i + 1]?.word ?? ''),
    );

/** Each of the two has a fellow of its own. */
export const paired = (items: readonly Item[], left: Group, right: Group): boolean =>
  besideIts(items, left, right) || inTurn(items, left, right) || nearerInch(items, left, right);

/** "A 7 Fr line: one 16 G lumen and two 18 G": what runs inside it. */
export const lumenOfIt = (items: readonly Item[], left: Group, right: Group): boolean =>
  left.sizes[0]!.system === 'french' &&
  right.sizes[0]!.system === 'needle-gauge' &&
  /^(?:lumens?|lumina|channels?|ports?)$/.test(items[right.to + 1]?.word ?? '');
