/** The size between its neighbours, to scale, as an SVG picture with words for those who cannot see it. */

import { direction, drawSizes, neighbours, type Picture } from '../sizes/index.ts';
import type { Lens, Size } from '../sizes/model.ts';
import type { Locale } from '../texts/index.ts';

/** Undefined when there is nothing to set beside it, or no diameter to draw. From thin to thick. */
export function sizePicture(sizes: readonly Size[], lens: Lens, locale?: Locale): Picture | undefined {
  const first = sizes[0];
  if (first === undefined) return undefined;
  const rising = [...sizes].sort((a, b) => order(a) - order(b));
  const { thinner } = neighbours(rising[0]!, lens);
  const { thicker } = neighbours(rising.at(-1)!, lens);
  const shown = [thinner, ...rising, thicker].filter((size) => size !== undefined);
  if (shown.length < 2) return undefined;
  return drawSizes(
    shown.map((size) => ({ size, lens, stressed: sizes.includes(size) })),
    locale,
  );
}

/** Grows with thickness inside one system. */
const order = ({ system, value }: Size): number => (direction(system) === 'down' ? -value : value);
