/** The usual slips with numbers of two scales: French taken for millimetres, gauge for tenths, the zeros of a thread for its metric number. */
import type { Group } from '../text/scene.ts';

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 0.021 * Math.max(a, b);

/** What each scale is taken for, of the number as it is written. */
const SLIPS: ReadonlyMap<string, (value: number) => readonly number[]> = new Map([
  ['french', (value) => [value, value / 2, value * 3, value * 2, value / 10, value / 4, value / 6]],
  ['needle-gauge', (value) => [value / 10, value, 1 / value, value / 20]],
  ['usp', (value) => (value < 0 ? [(1 - value) / 10, 1 - value, (1 - value) / 100] : [value / 10, value])],
  ['ep-metric', (value) => [value, value / 100]],
  ['wire-inch', (value) => [value, value * 10, value * 100, value * 2.54]],
  ['inch', (value) => [value * 10, value * 2.54, value * 20]],
]);

/** Is the length of the pair what a slip makes of its size? */
export function slip(left: Group, right: Group): boolean {
  const length = [right, left].find((g) => g.sizes[0]!.system === 'millimetre');
  const named = length === right ? left : right;
  const made = length && SLIPS.get(named.sizes[0]!.system)?.(named.sizes[0]!.value);
  return made?.some((value) => near(value, length!.sizes[0]!.value)) === true;
}
