/** Lengths in millimetres as shown to a reader. */
import type { Interval } from '../sizes/model.ts';

/** At most three decimals, no trailing zeros. */
export const decimal = (value: number): string => String(Number(value.toFixed(3)));

/** "4.667 mm", "0.3 to 0.349 mm". */
export const millimetres = (interval: Interval): string =>
  decimal(interval.min) === decimal(interval.max)
    ? `${decimal(interval.min)} mm`
    : `${decimal(interval.min)} to ${decimal(interval.max)} mm`;

/** One short number for a hint: the nominal value, else both ends. */
export function shortMillimetres(interval: Interval): string {
  if (interval.nominal !== undefined) return `${Number(interval.nominal.toFixed(2))} mm`;
  const [min, max] = [interval.min, interval.max].map((end) => Number(end.toFixed(2)));
  return min === max ? `${min} mm` : `${min}–${max} mm`;
}
