/** Does a system have a size? "No" only where the series is closed; otherwise unknown. */
import { fullLabel } from './format.ts';
import { isCollagen } from './materials.ts';
import type { Lens, Size, SourceKey, System } from './model.ts';
import { EP_METRIC } from './tables/ep-metric.ts';
import { GUIDEWIRES } from './tables/guidewires.ts';
import { IV_CANNULA } from './tables/iv-cannula.ts';
import { NEEDLE_NOMINAL_SOURCES } from './tables/needle-gauge.ts';
import { HEGAR_SERIES, TUBE_SERIES } from './tables/series.ts';
import { USP_COLLAGEN } from './tables/usp-collagen.ts';

export interface Existence {
  readonly exists: 'yes' | 'no' | 'unknown';
  /** One plain clause. */
  readonly because: string;
  readonly sources: readonly SourceKey[];
}

const answer =
  (exists: Existence['exists']) =>
  (because: string, ...sources: SourceKey[]): Existence => ({ exists, because, sources });
const yes = answer('yes');
const no = answer('no');
const unknown = answer('unknown');

/** Is there such a size? Never throws; a length exists whenever it is above zero. */
export function existence(size: Size, lens: Lens = {}): Existence {
  return RULES[size.system](size.value, lens, size);
}

const USP_SOURCES = ['PhEur-table', 'JP2015', 'dewiki'] as const;
const THINNEST = -11;
const THICKEST = 10;

function usp(rank: number, { material }: Lens, size: Size): Existence {
  if (material === 'eptfe') return unknown('ePTFE has its own CV numbers', 'chu');
  if (!Number.isInteger(rank))
    return no('USP sizes go by whole numbers and whole counts of zeros', ...USP_SOURCES);
  if (rank < THINNEST) return no('USP sizes end at 12-0, the finest', ...USP_SOURCES);
  if (rank > THICKEST) return no('USP sizes end at 10, the thickest', ...USP_SOURCES);
  if (isCollagen(material) && !USP_COLLAGEN.some((row) => row.rank === rank))
    return unknown(`the gut table read has no ${fullLabel(size)}`, 'thieme', 'catgutrange');
  return yes('USP runs from 12-0 to 10', ...USP_SOURCES);
}

function metric(value: number): Existence {
  const sources = ['PhEur-table', 'chu'] as const;
  if (EP_METRIC.some((row) => row.metric === value)) return yes('a metric number of the table', ...sources);
  const first = EP_METRIC[0]!.metric;
  const last = EP_METRIC.at(-1)!.metric;
  if (value > first && value < last)
    return no('metric numbers are 0.1–0.5, 0.7, 1, 1.5, 2, 2.5, 3, 3.5 and whole from 4', ...sources);
  return unknown('outside the numbers of the table read', ...sources);
}

const FINEST_NEEDLE = 34;
const WIDEST_NEEDLE = 6;

function gauge(value: number, { device }: Lens): Existence {
  if (device === 'steel-wire' || device === 'k-wire') return wire(value);
  if (!Number.isInteger(value)) return no('needle gauges are whole numbers', ...NEEDLE_NOMINAL_SOURCES);
  if (value > FINEST_NEEDLE)
    return no('needle gauges end at 34 G, the finest (ISO 9626)', 'ISO9626-scope', 'tpro');
  if (value < WIDEST_NEEDLE) return unknown('wider than the needle charts read', 'nomchart');
  if (device === 'cannula' && !IV_CANNULA.some((row) => row.gauge === value))
    return unknown('not in the list of ISO 10555-5 that was read', 'ISO10555-5', 'JPneedle');
  return yes('needle gauges run from 6 to 34 G', 'ISO9626-scope', 'nomchart');
}

const wire = (value: number): Existence =>
  Number.isInteger(value) && value <= 50
    ? yes('wire gauges run by whole numbers', 'GNU')
    : unknown('not in the wire tables read', 'GNU');

const FRENCH_TOP = 50;
const french = (value: number): Existence =>
  value > 0 && value <= FRENCH_TOP && Number.isInteger(value * 2)
    ? yes('French runs by whole and half numbers', 'UCUM', 'JPneedle')
    : unknown('not a usual French number', 'UCUM');

const listed =
  (series: readonly number[], what: string, ...sources: SourceKey[]) =>
  (value: number): Existence =>
    series.includes(value)
      ? yes(`a usual ${what}`, ...sources)
      : unknown(`not among the usual sizes: ${what}`, ...sources);

const length = (value: number): Existence =>
  value > 0 ? yes('a length, not a series') : unknown('no length');

const usualWire = listed(
  GUIDEWIRES.map((row) => row.inch),
  'guidewire diameter',
  'northcutt',
);
const NARROWEST_SLIP = 0.1;

/** Guidewires are hundredths of an inch thick: tenths have lost a zero. */
const guidewire = (value: number): Existence =>
  value >= NARROWEST_SLIP && value < 1
    ? no('guidewires are 0.010 to 0.052 in thick; a zero is missing after the point', 'northcutt')
    : usualWire(value);

const RULES: Readonly<Record<System, (value: number, lens: Lens, size: Size) => Existence>> = {
  usp,
  'ep-metric': metric,
  'needle-gauge': gauge,
  'wire-gauge': wire,
  french,
  millimetre: length,
  inch: (value, lens) => (lens.device === 'guidewire' && value < 1 ? guidewire(value) : length(value)),
  'wire-inch': guidewire,
  'tube-id': listed(TUBE_SERIES, 'tracheal tube size', 'ett'),
  hegar: listed(HEGAR_SERIES, 'Hegar number', 'hegar'),
};
