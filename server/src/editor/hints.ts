/** Millimetres after a size, short enough for a line of prose. */

import type { Analysis } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';
import type { Span } from '../notes/model.ts';
import { innerDiameter, outerDiameter } from '../sizes/index.ts';
import type { Lens, Size } from '../sizes/model.ts';
import { type Locale, type Part, phrase, tell } from '../texts/index.ts';
import { lensOf } from './lens.ts';
import { shortMillimetres } from './millimetres.ts';
import { meets } from './places.ts';
import { TOOLTIP } from './texts/hover.ts';

export interface Hint {
  /** Where it stands, right behind the size. */
  readonly offset: number;
  readonly text: string;
  /** The standard behind the value. */
  readonly because: string;
}

/** Hints for the sizes of a stretch. Ranges, lengths and sizes already in millimetres get none. */
export const hintsIn = (analysis: Analysis, span: Span, locale?: Locale): Hint[] =>
  analysis.mentions
    .filter((mention) => meets(mention.source, span))
    .flatMap((mention) => hintOf(mention, locale));

function hintOf(mention: Mention, locale?: Locale): Hint[] {
  const size = mention.sizes[0];
  if (mention.kind !== 'size' || mention.length === true || size === undefined) return [];
  if (size.system === 'millimetre' || size.system === 'tube-id' || size.system === 'hegar') return [];
  const measured = diameter(size, lensOf(mention));
  if (measured === undefined) return [];
  return [
    {
      offset: mention.source.end,
      text: tell(measured.text, locale),
      because: tell(measured.because, locale),
    },
  ];
}

function diameter(size: Size, lens: Lens): { text: Part; because: Part } | undefined {
  const outer = outerDiameter(size, lens);
  if (outer !== undefined)
    return { text: shortMillimetres(outer), because: phrase(TOOLTIP.outer, { standard: outer.standard }) };
  const inner = innerDiameter(size, lens);
  return (
    inner && {
      text: phrase(TOOLTIP.innerShort, { measure: shortMillimetres(inner) }),
      because: phrase(TOOLTIP.inner, { standard: inner.standard }),
    }
  );
}
