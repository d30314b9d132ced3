/** Wire gauges: the same number is a different thickness in each scale. */
import { exact } from './interval.ts';
import type { Designated } from './model.ts';
import { BWG, BWG_SOURCES } from './tables/bwg.ts';
import type { WireRow } from './tables/rows.ts';
import { SWG, SWG_SOURCES } from './tables/swg.ts';

export const MM_PER_INCH = 25.4;
export const AWG_SOURCES = ['GNU', 'BWG2', 'BWG3'] as const;

/** American (Brown & Sharpe) wire gauge n, mm: 0.005 in × 92^((36 − n) / 39), a geometric series. */
export function awg(n: number): Designated | undefined {
  if (!Number.isInteger(n) || n < 0 || n > 56) return undefined;
  return exact(0.005 * 92 ** ((36 - n) / 39) * MM_PER_INCH, 'AWG', AWG_SOURCES);
}

const tabulated =
  (rows: readonly WireRow[], standard: string, sources: readonly string[]) =>
  (n: number): Designated | undefined => {
    const row = rows.find((r) => r.gauge === n);
    return row && exact(row.inch * MM_PER_INCH, standard, sources);
  };

/** Standard (Imperial) wire gauge n, mm. */
export const swg = tabulated(SWG, 'SWG', SWG_SOURCES);
/** Birmingham (Stubs iron) wire gauge n, mm. A needle is never computed from it. */
export const bwg = tabulated(BWG, 'BWG', BWG_SOURCES);
