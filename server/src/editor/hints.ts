/** Millimetres after a size, short enough for a line of prose. */
import type { Analysis } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';
import type { Span } from '../notes/model.ts';
import { innerDiameter, outerDiameter } from '../sizes/index.ts';
import type { Lens, Size } from '../sizes/model.ts';
import { lensOf } from './lens.ts';
import { shortMillimetres } from './millimetres.ts';
import { meets } from './places.ts';

export interface Hint {
  /** Where it stands, right behind the size. */
  readonly offset: number;
  readonly text: string;
  /** The standard behind the value. */
  readonly because: string;
}

/** Hints for the sizes of a stretch. Ranges, lengths and sizes already in millimetres get none. */
export const hintsIn = (analysis: Analysis, span: Span): Hint[] =>
  analysis.mentions.filter((mention) => meets(mention.source, span)).flatMap(hintOf);

function hintOf(mention: Mention): Hint[] {
  const size = mention.sizes[0];
  if (mention.kind !== 'size' || mention.length === true || size === undefined) return [];
  if (size.system === 'millimetre' || size.system === 'tube-id' || size.system === 'hegar') return [];
  const measured = diameter(size, lensOf(mention));
  if (measured === undefined) return [];
  return [{ offset: mention.source.end, text: measured.text, because: measured.because }];
}

function diameter(size: Size, lens: Lens): { text: string; because: string } | undefined {
  const outer = outerDiameter(size, lens);
  if (outer !== undefined)
    return { text: shortMillimetres(outer), because: `Outer diameter by ${outer.standard}` };
  const inner = innerDiameter(size, lens);
  return inner && { text: `${shortMillimetres(inner)} ID`, because: `Inner diameter by ${inner.standard}` };
}
