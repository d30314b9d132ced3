/** Lengths in millimetres as shown to a reader. */
import type { Interval } from '../sizes/model.ts';

/** At most three decimals, no trailing zeros. */
export const decimal = (value: number): string => String(Number(value.toFixed(3)));

/** "4.67 mm", "0.3 to 0.349 mm". An interval that is only the rounding of one value shows that value. */
export function millimetres(interval: Interval): string {
  const { min, max, nominal } = interval;
  if (nominal !== undefined && max - min <= nominal * ROUNDING)
    return `${Number(nominal.toFixed(nominal < 1 ? 3 : 2))} mm`;
  return decimal(min) === decimal(max) ? `${decimal(min)} mm` : `${decimal(min)} to ${decimal(max)} mm`;
}

const ROUNDING = 0.02;

/** One short number for a hint: the nominal value, else both ends. */
export function shortMillimetres(interval: Interval): string {
  if (interval.nominal !== undefined) return `${Number(interval.nominal.toFixed(2))} mm`;
  const [min, max] = [interval.min, interval.max].map((end) => Number(end.toFixed(2)));
  return min === max ? `${min} mm` : `${min}–${max} mm`;
}
