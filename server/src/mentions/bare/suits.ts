/** Values that a bare number of each system can have in everyday writing. */
import type { System } from '../../sizes/model.ts';
import type { Place } from '../sense/place.ts';
import type { Bare } from './tokens.ts';

type Value = Pick<Bare, 'value' | 'decimals' | 'spoken'>;

const WHOLE: Readonly<Partial<Record<System, readonly [number, number]>>> = {
  'needle-gauge': [14, 34],
  'wire-gauge': [14, 34],
  usp: [0, 5],
  french: [3, 42],
  'ep-metric': [0.1, 8],
  'tube-id': [2.5, 11],
  hegar: [3, 26],
};

/** A decimal is a tube's inner diameter or a metric number; French decimals need the same value nearby. */
export function suits(system: System, bare: Value): boolean {
  // A wire for bone is called by its millimetres: "a 1.6".
  if (system === 'millimetre') return bare.decimals > 0 && bare.value >= 0.6 && bare.value <= 5;
  const bounds = WHOLE[system];
  if (!bounds || bare.value < bounds[0] || bare.value > bounds[1]) return false;
  if (bare.decimals === 0 && Number.isInteger(bare.value)) return true;
  if (system === 'tube-id') return (bare.value * 2) % 1 === 0;
  return system === 'ep-metric' && METRIC_DECIMALS.has(bare.value);
}

/** Metric numbers with a decimal, of the European Pharmacopoeia series. */
const METRIC_DECIMALS: ReadonlySet<number> = new Set([0.1, 0.2, 0.3, 0.4, 0.5, 0.7, 1.5, 3.5]);

/** "Is a 7-0 the same as a 7?": the same figure with and without its zero. */
export const besideZeros = ({ before, after }: Place, { value, spoken, decimals }: Bare): boolean =>
  !spoken &&
  decimals === 0 &&
  value > 5 &&
  value <= 10 &&
  new RegExp(`(?<![0-9-])${value}-0(?![0-9])`).test(`${before.slice(-60)}#${after.slice(0, 60)}`);
