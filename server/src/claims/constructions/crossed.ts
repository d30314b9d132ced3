/**
 * Two measures joined by a cross, "0.8 × 40 mm", as a packet names a needle: how thick it is and how long. For a reader that
 * sets a size equal to a measure they are one measure, the one across.
 */
import type { Item } from '../text/items.ts';
import type { Group, Scene } from '../text/scene.ts';

const CROSS = /^[x×*]$/;
/** What is longer than this is no needle's width, mm; and how many times its width a needle is long at least. */
const [WIDEST, SLENDER] = [3.5, 5];

/** The groups with each cross as one group, which spans both figures and means the one across. */
export function withCrosses(items: readonly Item[], all: readonly Group[]): readonly Group[] {
  if (!items.some(({ word }) => CROSS.test(word))) return all;
  const found: Group[] = [];
  for (const group of all) {
    const last = found.at(-1);
    const cross = last ? last.to + (items[last.to + 1]?.word === 'mm' ? 2 : 1) : -1;
    const made = last && CROSS.test(items[cross]?.word ?? '') && cross + 1 === group.from;
    const one = made ? acrossOf(last, group) : undefined;
    if (one) found.pop();
    found.push(one ?? group);
  }
  return found;
}

/** The figure across of two joined: of two lengths the smaller by far, of a gauge and a length the gauge. */
function acrossOf(first: Group, second: Group): Group | undefined {
  const [a, b] = [lengthOf(first), lengthOf(second)];
  const span = { from: first.from, to: second.to };
  if (b !== undefined && first.sizes.length === 1 && first.sizes[0]!.system === 'needle-gauge')
    return { ...first, ...span };
  if (a === undefined || b === undefined) return undefined;
  const thin = a < b ? first : second;
  return Math.min(a, b) <= WIDEST && Math.max(a, b) >= SLENDER * Math.min(a, b)
    ? { ...thin, ...span }
    : undefined;
}

function lengthOf({ sizes, mentions }: Group): number | undefined {
  const [size] = sizes;
  if (!size || sizes.length > 1 || mentions.length > 1) return undefined;
  return size.system === 'millimetre' ? size.value : size.system === 'inch' ? size.value * 25.4 : undefined;
}

/** Does the group stand for two figures joined by a cross? */
export const isCrossed = (items: readonly Item[], { from, to }: Group): boolean =>
  items.slice(from, to).some(({ word }) => CROSS.test(word));

/** A gauge and the two figures of a needle's packet. */
export const asPacked = (scene: Scene, left: Group, right: Group): boolean =>
  [left, right].some((g) => g.sizes[0]!.system === 'needle-gauge') &&
  [left, right].some((g) => lengthOf(g) !== undefined && isCrossed(scene.items, g)) &&
  ofNeedle(scene);

/** Is it a needle, and none of the cannulas that have widths of their own, that is spoken of? */
export function ofNeedle({ items, before, context, headings }: Scene): boolean {
  const near = [...context.slice(-1), ...before.slice(-2)].flatMap((sentence) => sentence.items);
  const words = [...near, ...items].map(({ word }) => word);
  return (
    (words.some((word) => NEEDLE.test(word)) || headings.some((heading) => /\bneedles?\b/.test(heading))) &&
    !words.some((word) => OTHERS.test(word)) &&
    !headings.some((heading) => /\b(?:cannul\w+|catheters?|ivs?|fistula|acupuncture|suture)\b/.test(heading))
  );
}
const NEEDLE = /^(?:needles?|hypodermics?|needle's)$/;
const OTHERS =
  /^(?:cannul\w+|catheters?|ivs?|fistula|acupuncture|suture|sutures|thread|wires?|over-the-needle|biopsy|trocars?|tuohy)$/;
