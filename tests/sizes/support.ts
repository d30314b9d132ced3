/** What the tests of sizes share. */
import fc from 'fast-check';
import {
  DEVICES,
  type Interval,
  type Lens,
  MATERIALS,
  outerDiameter,
  parseValue,
  type Size,
  type System,
} from '../../server/src/sizes/index.ts';
import { EP_METRIC } from '../../server/src/sizes/tables/ep-metric.ts';

export const SYSTEMS: readonly System[] = [
  'usp',
  'ep-metric',
  'needle-gauge',
  'wire-gauge',
  'french',
  'millimetre',
  'inch',
  'wire-inch',
  'tube-id',
  'hegar',
];

/** A size from its written value; fails the test when it is none. */
export function size(system: System, text: string | number): Size {
  const read = parseValue(system, String(text));
  if (!read) throw new Error(`no ${system} size: ${text}`);
  return read;
}

/** Outer diameter that must exist. */
export function outer(system: System, text: string | number, lens: Lens = {}): Interval {
  const interval = outerDiameter(size(system, text), lens);
  if (!interval) throw new Error(`no diameter: ${system} ${text}`);
  return interval;
}

const halves = (min: number, max: number) => fc.integer({ min: min * 2, max: max * 2 }).map((n) => n / 2);
const thousandths = (min: number, max: number) =>
  fc.integer({ min: min * 1000, max: max * 1000 }).map((n) => n / 1000);

/** Values that occur in each system. */
const VALUES: Readonly<Record<System, fc.Arbitrary<number>>> = {
  usp: fc.integer({ min: -11, max: 10 }),
  'ep-metric': fc.constantFrom(...EP_METRIC.map((row) => row.metric)),
  'needle-gauge': fc.integer({ min: 7, max: 34 }),
  'wire-gauge': fc.integer({ min: 0, max: 50 }),
  french: halves(1, 50),
  millimetre: thousandths(0.01, 20),
  inch: thousandths(0.004, 2),
  'wire-inch': thousandths(0.01, 0.06),
  'tube-id': halves(2, 10),
  hegar: halves(1, 26),
};

export const sizeOf = (system: System): fc.Arbitrary<Size> =>
  VALUES[system].map((value) => ({ system, value }));
export const anySize: fc.Arbitrary<Size> = fc.constantFrom(...SYSTEMS).chain(sizeOf);

export const anyLens: fc.Arbitrary<Lens> = fc.record(
  { device: fc.constantFrom(...DEVICES), material: fc.constantFrom(...MATERIALS.map((m) => m.id)) },
  { requiredKeys: [] },
);
