/** The size between its neighbours, to scale, as an SVG picture with words for those who cannot see it. */
import { drawSizes, neighbours, type Picture } from '../sizes/index.ts';
import type { Lens, Size } from '../sizes/model.ts';

/** Undefined when there is nothing to set beside it, or no diameter to draw. */
export function sizePicture(sizes: readonly Size[], lens: Lens): Picture | undefined {
  const first = sizes[0];
  if (first === undefined) return undefined;
  const { thinner, thicker } = neighbours(first, lens);
  const shown = [thinner, ...sizes, thicker].filter((size) => size !== undefined);
  if (shown.length < 2) return undefined;
  return drawSizes(shown.map((size) => ({ size, lens, stressed: sizes.includes(size) })));
}
