/** The same size wherever it stands, in whatever notation. */
import type { Analysis } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';
import type { Size } from '../sizes/model.ts';
import { mentionAt } from './places.ts';

/** The one size at an offset; a range or an unclear size names none. */
export function sizeAt(analysis: Analysis, offset: number): Size | undefined {
  const mention = mentionAt(analysis, offset);
  return mention?.kind === 'size' ? mention.sizes[0] : undefined;
}

export const sameSize = (a: Size, b: Size): boolean =>
  a.system === b.system && Math.abs(a.value - b.value) < 1e-9;

/** Mentions that name the size, alone or as an end of a range. */
export const mentionsOf = (analysis: Analysis, size: Size): Mention[] =>
  analysis.mentions.filter((mention) => mention.sizes.some((each) => sameSize(each, size)));
