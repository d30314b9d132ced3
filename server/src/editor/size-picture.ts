/** The size between its neighbours, to scale, as an SVG picture with words for those who cannot see it. */
import { fullLabel, neighbours } from '../sizes/index.ts';
import type { Lens, Size } from '../sizes/model.ts';

export interface SizePicture {
  readonly svg: string;
  readonly alternative: string;
}

export function sizePicture(sizes: readonly Size[], _lens: Lens): SizePicture | undefined {
  const first = sizes[0];
  if (first === undefined) return undefined;
  const { thinner, thicker } = neighbours(first);
  const shown = [thinner, ...sizes, thicker].filter((size) => size !== undefined);
  return shown.length < 2 ? undefined : { svg: '', alternative: shown.map(fullLabel).join(', ') };
}
