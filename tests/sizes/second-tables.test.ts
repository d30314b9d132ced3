/** Every value that ships against a second source, where one was read; differences are listed, never silent. */
import { describe, expect, it } from 'vitest';
import { fullLabel, outerDiameter, SOURCES } from '../../server/src/sizes/index.ts';
import { SECOND_TABLES } from '../../server/tools/second-tables.ts';
import { size } from './support.ts';

/** Half of the last printed digit: tables print hundredths or thousandths. */
const ROUNDING = 0.005;

describe.each(SECOND_TABLES.map((table) => [table.title, table] as const))('%s', (_title, table) => {
  it('names its source', () => {
    expect(SOURCES[table.source]).toBeDefined();
  });

  it.each(
    table.readings.map((r) => [`${fullLabel(size(r.system, r.written))} ${r.min}–${r.max}`, r] as const),
  )('%s', (_label, reading) => {
    const ours = outerDiameter(size(reading.system, reading.written), reading.lens)!;
    const range = reading.min !== reading.max;
    const agrees = range
      ? Math.abs(ours.min - reading.min) < 5e-4 && Math.abs(ours.max - reading.max) < 5e-4
      : reading.min >= ours.min - ROUNDING && reading.max <= ours.max + ROUNDING;
    expect(agrees).toBe(reading.differs === undefined);
  });
});
