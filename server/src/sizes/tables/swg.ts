/**
 * (British) standard wire gauge, inches. Piecewise linear, as tabulated by the GNU Units definitions
 * (brwiregauge); the rows used for steel wire also in the reference pages on wire.
 */
import type { WireRow } from './rows.ts';

export const SWG_SOURCES = ['GNU', 'BWG2', 'BWG3'] as const;

const INCHES: readonly number[] = [
  0.324, 0.3, 0.276, 0.252, 0.232, 0.212, 0.192, 0.176, 0.16, 0.144, 0.128, 0.116, 0.104, 0.092, 0.08, 0.072,
  0.064, 0.056, 0.048, 0.04, 0.036, 0.032, 0.028, 0.024, 0.022, 0.02, 0.018, 0.0164, 0.0148, 0.0136, 0.0124,
  0.0116, 0.0108, 0.01, 0.0092, 0.0084, 0.0076, 0.0068, 0.006, 0.0052, 0.0048, 0.0044, 0.004, 0.0036, 0.0032,
  0.0028, 0.0024, 0.002, 0.0016, 0.0012, 0.001,
];

/** Gauges 0 to 50. */
export const SWG: readonly WireRow[] = INCHES.map((inch, gauge) => ({ gauge, inch }));
