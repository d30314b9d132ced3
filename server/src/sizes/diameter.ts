/** How thick and how wide a size is: the table that holds depends on the thing it is written on. */
import { tidy } from './format.ts';
import { exact, union } from './interval.ts';
import { kept } from './kept.ts';
import { isCollagen, mayBeOversize } from './materials.ts';
import type { Designated, Device, Interval, Lens, Size } from './model.ts';
import { EP_METRIC } from './tables/ep-metric.ts';
import { IV_CANNULA } from './tables/iv-cannula.ts';
import { NEEDLE_GAUGE, NEEDLE_METRIC_SOURCES, NEEDLE_NOMINAL_SOURCES } from './tables/needle-gauge.ts';
import { OVERSIZE_MONOFILAMENT, OVERSIZE_SOURCES } from './tables/oversize-monofilament.ts';
import type { NeedleRow, UspRow } from './tables/rows.ts';
import { USP_COLLAGEN } from './tables/usp-collagen.ts';
import { USP_SYNTHETIC } from './tables/usp-synthetic.ts';
import { awg, MM_PER_INCH, swg } from './wire.ts';

const FRENCH_SOURCES = ['UCUM', 'GNU', 'ISO20696', 'DICOM3510'] as const;
const INCH = '1 in = 25.4 mm';

/** The row of USP <861> for a rank; `collagen` is the table of gut. */
export const uspRow = (rank: number, collagen: boolean): UspRow | undefined =>
  (collagen ? USP_COLLAGEN : USP_SYNTHETIC).find((row) => row.rank === rank);

function uspDiameter(rank: number, lens: Lens): Interval | undefined {
  if (lens.material === 'eptfe') return undefined;
  const row = uspRow(rank, isCollagen(lens.material));
  if (!row) return undefined;
  const gutToo = lens.material === undefined ? 'gut of the same size is one step thicker' : undefined;
  const caution = [row.note, gutToo].filter((c) => c !== undefined).join('; ');
  const { min, max, confidence, sources } = row;
  const table = { min, max, nominal: tidy(row.metric / 10), standard: 'USP <861>', confidence, sources };
  const normal = caution ? { ...table, caution } : table;
  return mayBeOversize(lens.material) ? withOversize(rank, normal) : normal;
}

function withOversize(rank: number, normal: Interval): Interval {
  const row = OVERSIZE_MONOFILAMENT.find((r) => r.rank === rank);
  if (!row) return normal;
  const wider: Interval = {
    min: row.min,
    max: row.max,
    standard: normal.standard,
    sources: OVERSIZE_SOURCES,
    confidence: 'single-source',
    caution: 'some absorbable monofilaments are thicker than their row',
  };
  return union([normal, wider]);
}

function metricDiameter(metric: number): Interval | undefined {
  const row = EP_METRIC.find((r) => r.metric === metric);
  if (!row) return undefined;
  const { min, max, confidence, sources } = row;
  return { min, max, nominal: tidy(metric / 10), standard: 'European Pharmacopoeia', confidence, sources };
}

const needleRow = (gauge: number): NeedleRow | undefined => NEEDLE_GAUGE.find((r) => r.gauge === gauge);

/** Outer diameter of the nominal chart alone: the inches that texts quote. */
export function nominalNeedle(gauge: number): Designated | undefined {
  const row = needleRow(gauge);
  return row && chartOf(row);
}

function chartOf({ nominal }: NeedleRow): Designated {
  const mm = exact(nominal.outerInch * MM_PER_INCH, 'nominal needle chart', NEEDLE_NOMINAL_SOURCES);
  return { ...mm, confidence: nominal.outerConfidence };
}

/** Designated size, limits and nominal chart together: texts quote any of the three. */
function needleDiameter(gauge: number): Interval | undefined {
  const row = needleRow(gauge);
  return row && union([...isoParts(row), chartOf(row)]);
}

/** Is this, mm, the designated size of another needle than of this gauge? Only sizes that are confirmed count. */
export function designatesAnother(gauge: number, mm: number): boolean {
  const confirmed = NEEDLE_GAUGE.filter(({ metric }) => metric?.confidence === 'confirmed');
  const own = confirmed.find((row) => row.gauge === gauge)?.metric;
  return own !== undefined && own.value !== mm && confirmed.some(({ metric }) => metric!.value === mm);
}

function isoParts({ metric, limits }: NeedleRow): Interval[] {
  const parts: Interval[] = [];
  if (metric)
    parts.push({
      ...exact(metric.value, 'ISO 9626', NEEDLE_METRIC_SOURCES),
      confidence: metric.confidence,
    });
  if (limits)
    parts.push({
      min: limits.min,
      max: limits.max,
      standard: 'ISO 9626',
      sources: [],
      confidence: limits.confidence,
    });
  return parts;
}

function cannulaDiameter(gauge: number): Interval | undefined {
  const row = IV_CANNULA.find((r) => r.gauge === gauge);
  if (!row) return undefined;
  return {
    min: row.min,
    max: row.max,
    nominal: row.listed[Math.floor(row.listed.length / 2)]!,
    standard: 'ISO 10555-5',
    sources: ['ISO10555-5', 'JPneedle'],
    confidence: 'memory',
  };
}

function gaugeDiameter(gauge: number, device: Device | undefined): Interval | undefined {
  if (device === 'steel-wire' || device === 'k-wire') return wireDiameter(gauge);
  if (device === 'needle' || device === 'winged-set') return needleDiameter(gauge);
  if (device === 'cannula') return cannulaDiameter(gauge);
  const parts = [needleDiameter(gauge), cannulaDiameter(gauge)].filter((p) => p !== undefined);
  const caution = parts.length > 1 ? 'a needle and an IV catheter of the same gauge differ' : undefined;
  return union(parts, undefined, caution);
}

function wireDiameter(gauge: number): Interval | undefined {
  const parts = [awg(gauge), swg(gauge)].filter((p) => p !== undefined);
  const all = union(parts, 'AWG or SWG', 'the scales differ: give the diameter in mm');
  if (!all) return undefined;
  const { nominal: _, ...spanning } = all;
  return { ...spanning, sources: [...spanning.sources, 'pfisterer'] };
}

/** A third of a millimetre each; the ends take in the usual roundings (ISO 20696 rounds up to 0.1 mm). */
function frenchLength(french: number): Designated {
  const mm = french / 3;
  const tenths = Number((mm * 10).toPrecision(12));
  return {
    min: Math.min(mm, Math.floor(mm * 100 + 1e-9) / 100, Math.round(tenths) / 10),
    max: Math.max(mm, Math.ceil(tenths) / 10),
    nominal: mm,
    standard: '1 Fr = 1/3 mm',
    sources: FRENCH_SOURCES,
    confidence: 'confirmed',
  };
}

/** The French of a sheath is what it accepts; on a guiding catheter texts differ. */
const outsideUnknown = (device: Device | undefined): boolean =>
  device === 'sheath' || device === 'guiding-catheter';

/** Beyond any length, so that arithmetic on a nonsense number stays finite. */
const BEYOND = 1e6;
/** Only USP ranks and wire numbers may be zero or less. */
const sensible = ({ system, value }: Size): boolean =>
  Math.abs(value) < BEYOND && (value > 0 || system === 'usp' || system === 'wire-gauge');

/**
 * Outer diameter in mm, or undefined where no table gives it (a tube sized by its bore, a sheath sized by what it
 * accepts, a size the table does not have).
 */
export const outerDiameter = kept((size: Size, lens: Lens): Interval | undefined =>
  sensible(size) ? OUTER[size.system](size.value, lens) : undefined,
);

const OUTER: Readonly<Record<Size['system'], (value: number, lens: Lens) => Interval | undefined>> = {
  usp: uspDiameter,
  'ep-metric': metricDiameter,
  'needle-gauge': (value, lens) => gaugeDiameter(value, lens.device),
  'wire-gauge': wireDiameter,
  french: (value, lens) => (outsideUnknown(lens.device) ? undefined : frenchLength(value)),
  millimetre: (value) => exact(value, 'millimetre', []),
  inch: (value) => exact(value * MM_PER_INCH, INCH, ['UCUM', 'GNU']),
  'wire-inch': (value) => exact(value * MM_PER_INCH, INCH, ['UCUM', 'GNU']),
  'tube-id': () => undefined,
  hegar: (value) => exact(value, 'Hegar number = mm', ['hegar']),
};

/** Inner diameter in mm, where the size gives it: tubes by definition, sheaths by what they accept, needles by wall. */
export function innerDiameter(size: Size, lens: Lens = {}): Designated | undefined {
  if (!sensible(size)) return undefined;
  if (size.system === 'tube-id')
    return exact(size.value, 'tube size = inner diameter in mm', ['ett', 'gupta']);
  if (size.system === 'french' && lens.device === 'sheath')
    return {
      ...frenchLength(size.value),
      standard: 'sheath French = what it accepts',
      sources: ['thoracic', 'learnir', 'irblog', ...FRENCH_SOURCES],
    };
  const needle = lens.device === 'needle' || lens.device === 'winged-set';
  return size.system === 'needle-gauge' && needle ? boreOfNeedle(size.value) : undefined;
}

/** From the least regular-wall bore to the widest listed one: the wall decides. */
function boreOfNeedle(gauge: number): Designated | undefined {
  const row = needleRow(gauge);
  if (!row) return undefined;
  const { nominal } = row;
  const bore = nominal.innerInch * MM_PER_INCH;
  const { innerNormal = bore, innerThin = bore, innerWidest = bore } = row.limits ?? {};
  const all = [bore, innerNormal, innerThin, innerWidest];
  return {
    min: Math.min(...all),
    max: Math.max(...all),
    nominal: bore,
    standard: row.limits ? 'ISO 9626, nominal needle chart' : 'nominal needle chart',
    sources: NEEDLE_NOMINAL_SOURCES,
    confidence: row.limits ? 'memory' : nominal.innerConfidence,
    caution: 'the bore depends on the wall',
  };
}
