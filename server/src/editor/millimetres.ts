/** Lengths in millimetres as shown to a reader. */
import { mmText, oneMm } from '../sizes/index.ts';
import type { Interval } from '../sizes/model.ts';

/** "4.67 mm", "0.3–0.349 mm". An interval that is only the rounding of one value shows that value. */
export function millimetres(interval: Interval): string {
  const { min, max, nominal } = interval;
  const rounded = nominal !== undefined && max - min <= nominal * ROUNDING;
  return rounded ? oneMm(nominal) : mmText(interval);
}

const ROUNDING = 0.02;

/** One short number for a hint: the nominal value, else both ends. */
export function shortMillimetres(interval: Interval): string {
  if (interval.nominal !== undefined) return `${Number(interval.nominal.toFixed(2))} mm`;
  const [min, max] = [interval.min, interval.max].map((end) => Number(end.toFixed(2)));
  return min === max ? `${min} mm` : `${min}–${max} mm`;
}
