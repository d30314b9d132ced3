/** Sizes that surely are made, or surely are not: to be told by a table is not enough where good texts end a scale elsewhere. */
import { existence } from './existence.ts';
import type { Lens, Size, SourceKey } from './model.ts';
import { GUIDEWIRES } from './tables/guidewires.ts';
import { IV_CANNULA } from './tables/iv-cannula.ts';
import { NEEDLE_GAUGE } from './tables/needle-gauge.ts';

export interface Made {
  readonly made: 'yes' | 'no' | 'unknown';
  /** One plain clause; empty where nothing is known. */
  readonly because: string;
  /** Designated size of a hypodermic needle, mm. */
  readonly mm?: number;
  readonly sources: readonly SourceKey[];
}

const UNKNOWN: Made = { made: 'unknown', because: '', sources: [] };

/** The ranks that every table read has, of threads in general: 11-0 to 5. Beyond them texts end the scale in several places. */
const [FINEST_AGREED, THICKEST_AGREED] = [-10, 5];

/** Is such a size made at all? Threads of no particular material, hypodermic needles, cannulas for veins, guidewires; all else is unknown. Never throws. */
export function surelyMade(size: Size, lens: Lens = {}): Made {
  const { exists, because, sources } = existence(size, lens);
  if (exists === 'no') return { made: 'no', because, sources };
  if (exists !== 'yes') return UNKNOWN;
  if (size.system === 'usp')
    return lens.material === undefined && size.value >= FINEST_AGREED && size.value <= THICKEST_AGREED
      ? { made: 'yes', because, sources }
      : UNKNOWN;
  if (size.system === 'wire-inch') return sure(size.value) ? { made: 'yes', because, sources } : UNKNOWN;
  if (size.system !== 'needle-gauge') return UNKNOWN;
  return lens.device === 'cannula' ? venous(size.value) : hypodermic(size.value, lens);
}

/** Guidewires that more than one text names. */
const sure = (inch: number): boolean =>
  GUIDEWIRES.some((row) => row.inch === inch && row.confidence === 'confirmed');

const venous = (value: number): Made =>
  IV_CANNULA.some(({ gauge }) => gauge === value)
    ? { made: 'yes', because: 'it is a cannula of ISO 10555-5', sources: ['ISO10555-5', 'JPneedle'] }
    : UNKNOWN;

/** By the rows that ISO 9626 designates; charts go on with wider ones. */
function hypodermic(value: number, { device = 'needle' }: Lens): Made {
  const row = NEEDLE_GAUGE.find(({ gauge }) => gauge === value);
  if (device !== 'needle' || row?.metric === undefined) return UNKNOWN;
  return { made: 'yes', because: '', mm: row.metric.value, sources: ['ISO9626-scope', 'JPneedle'] };
}
