/** The next common size of a series, thinner and thicker. */
import { direction } from './format.ts';
import { isCollagen } from './materials.ts';
import type { Lens, Size, System } from './model.ts';
import { EP_METRIC } from './tables/ep-metric.ts';
import { GUIDEWIRES } from './tables/guidewires.ts';
import { IV_CANNULA } from './tables/iv-cannula.ts';
import { NEEDLE_GAUGE } from './tables/needle-gauge.ts';
import { FRENCH_SERIES, HEGAR_SERIES, TUBE_SERIES } from './tables/series.ts';
import { SWG } from './tables/swg.ts';
import { USP_COLLAGEN } from './tables/usp-collagen.ts';
import { USP_SYNTHETIC } from './tables/usp-synthetic.ts';

export interface Neighbours {
  readonly thinner?: Size;
  readonly thicker?: Size;
}

/** The values of a system that are commonly made, rising; empty for plain lengths. */
function seriesOf(system: System, lens: Lens): readonly number[] {
  if (system === 'usp') return (isCollagen(lens.material) ? USP_COLLAGEN : USP_SYNTHETIC).map((r) => r.rank);
  if (system === 'needle-gauge')
    return (lens.device === 'cannula' ? IV_CANNULA : NEEDLE_GAUGE).map((r) => r.gauge);
  return SERIES[system] ?? [];
}

const SERIES: Partial<Readonly<Record<System, readonly number[]>>> = {
  'ep-metric': EP_METRIC.map((r) => r.metric),
  'wire-gauge': SWG.map((r) => r.gauge),
  french: FRENCH_SERIES,
  'wire-inch': GUIDEWIRES.map((r) => r.inch),
  'tube-id': TUBE_SERIES,
  hegar: HEGAR_SERIES,
};

/** Ranks that share the row with this one are passed over: USP 3 and 4 are neither thinner nor thicker. */
function shared({ system, value }: Size, lens: Lens): readonly number[] {
  if (system !== 'usp' || isCollagen(lens.material)) return [];
  const metric = USP_SYNTHETIC.find((r) => r.rank === value)?.metric;
  return USP_SYNTHETIC.filter((r) => r.metric === metric).map((r) => r.rank);
}

/** The next common sizes on either side; a side is absent at the end of the series and for plain lengths. */
export function neighbours(size: Size, lens: Lens = {}): Neighbours {
  const same = shared(size, lens);
  const series = seriesOf(size.system, lens).filter((value) => !same.includes(value));
  const below = series.filter((value) => value < size.value).at(-1);
  const above = series.find((value) => value > size.value);
  const down = direction(size.system) === 'down';
  const [thinner, thicker] = down ? [above, below] : [below, above];
  return {
    ...(thinner === undefined ? {} : { thinner: { system: size.system, value: thinner } }),
    ...(thicker === undefined ? {} : { thicker: { system: size.system, value: thicker } }),
  };
}
