/** Every value that ships is traced: a source that exists and a confidence, or "from memory" said openly. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  AWG_SOURCES,
  COLOURS,
  type Confidence,
  FLOW_SOURCES,
  GUIDEWIRES,
  MATERIALS,
  POINTS,
  SOURCES,
  type SourceKey,
  sourceByKey,
} from '../../server/src/sizes/index.ts';
import { BWG_SOURCES } from '../../server/src/sizes/tables/bwg.ts';
import { EP_METRIC } from '../../server/src/sizes/tables/ep-metric.ts';
import { IV_CANNULA } from '../../server/src/sizes/tables/iv-cannula.ts';
import {
  NEEDLE_GAUGE,
  NEEDLE_METRIC_SOURCES,
  NEEDLE_NOMINAL_SOURCES,
} from '../../server/src/sizes/tables/needle-gauge.ts';
import {
  OVERSIZE_MONOFILAMENT,
  OVERSIZE_SOURCES,
} from '../../server/src/sizes/tables/oversize-monofilament.ts';
import { SWG_SOURCES } from '../../server/src/sizes/tables/swg.ts';
import { USP_COLLAGEN } from '../../server/src/sizes/tables/usp-collagen.ts';
import { USP_SYNTHETIC } from '../../server/src/sizes/tables/usp-synthetic.ts';
import { VALUES_PAGE, valuesPage } from '../../server/tools/values-page.ts';

interface Traced {
  readonly confidence: Confidence;
  readonly sources: readonly SourceKey[];
}

const ROWS: Readonly<Record<string, readonly Traced[]>> = {
  'USP synthetic': USP_SYNTHETIC,
  'USP gut': USP_COLLAGEN,
  metric: EP_METRIC,
  guidewires: GUIDEWIRES,
  materials: MATERIALS,
  points: POINTS,
  ...COLOURS,
};

describe.each(Object.entries(ROWS))('%s', (_name, rows) => {
  it('has a source for every row that is not from memory', () => {
    for (const row of rows) {
      if (row.confidence !== 'memory') expect(row.sources.length).toBeGreaterThan(0);
      if (row.confidence === 'confirmed') expect(new Set(row.sources).size).toBe(row.sources.length);
    }
  });
  it('names only sources that exist', () => {
    for (const key of rows.flatMap((row) => row.sources)) expect(sourceByKey(key), key).toBeDefined();
  });
});

it('names only sources that exist for whole tables', () => {
  const whole = [AWG_SOURCES, SWG_SOURCES, BWG_SOURCES, FLOW_SOURCES, OVERSIZE_SOURCES];
  for (const key of [...whole.flat(), ...NEEDLE_METRIC_SOURCES, ...NEEDLE_NOMINAL_SOURCES])
    expect(sourceByKey(key), key).toBeDefined();
});

it('looks up no source by a name of the language', () => {
  expect(sourceByKey('constructor')).toBeUndefined();
});

it('says of every source what it is, without an address', () => {
  for (const { short, cite } of Object.values(SOURCES)) {
    expect(short).toMatch(/\S/);
    expect(short.length).toBeLessThanOrEqual(48);
    expect(cite).not.toMatch(/https?:|www\./);
  }
});

describe('tables are sound', () => {
  it('have rows in order, each interval right way round, none overlapping the next', () => {
    for (const rows of [USP_SYNTHETIC, USP_COLLAGEN, OVERSIZE_MONOFILAMENT, EP_METRIC]) {
      rows.forEach((row, i) => {
        expect(row.max).toBeGreaterThan(row.min);
        const next = rows[i + 1];
        if (next && next.min !== row.min) expect(next.min).toBeGreaterThan(row.max);
      });
    }
  });
  it('agree with their own metric number: the least diameter in tenths of a millimetre', () => {
    for (const row of [...USP_SYNTHETIC, ...USP_COLLAGEN]) {
      const exception = row.metric === 0.01; // 12-0 of the Japanese standard: 0.001 mm at least
      expect(row.min).toBeCloseTo(row.metric / 10, 9);
      expect(exception ? row.rank : 0).toBe(exception ? -11 : 0);
    }
  });
  it('keep needle limits around both other readings, save where the designated size is rounded below them', () => {
    const outside = NEEDLE_GAUGE.filter(({ metric, limits }) => {
      if (!metric || !limits) return false;
      return metric.value < limits.min || metric.value > limits.max;
    });
    expect(outside.map((row) => row.gauge)).toEqual([31, 33]);
    for (const { limits, nominal } of NEEDLE_GAUGE) {
      if (!limits || !nominal) continue;
      const mm = nominal.outerInch * 25.4;
      expect(mm >= limits.min && mm <= limits.max).toBe(true);
      expect(limits.innerThin).toBeGreaterThan(limits.innerNormal);
      expect(limits.min).toBeGreaterThan(limits.innerWidest ?? limits.innerThin);
    }
  });
  it('keep every listed IV catheter inside its range', () => {
    for (const { listed, min, max } of IV_CANNULA)
      for (const mm of listed) expect(mm >= min && mm <= max).toBe(true);
  });
});

it('has a page of values that is up to date (run: tsx server/tools/values-page.ts)', () => {
  expect(readFileSync(VALUES_PAGE, 'utf8')).toBe(valuesPage());
});

/** Trade names of sutures and devices, kept as digests so that the names themselves stand nowhere. */
const TRADE_NAMES: readonly string[] = [
  'db4d4902eb69',
  'a578b00a1901',
  '44df2b768f9b',
  '1f98617f6595',
  '8bd28046a78b',
  '3df2aad9d637',
  '7c9a30ef831e',
  'd7b30cd38561',
  'b0ca070c5bf3',
  'b78ef079ef81',
  'f7c5972c0acf',
  'd5b08fa65145',
  '75d27436a1fc',
  'cd56c40aa476',
  '73996bb6a6e7',
  '1288fba0124b',
  'd7dd9a0e2193',
  'cc72201733e1',
  'ecd56cb08672',
  'b475efdb4950',
  '5202897485cd',
  'a15c810c48cd',
  '4ee707119c2d',
  '333a0a15b4e8',
  '902fbc7bbb47',
  '0de86fbfb6c3',
  '355d48ebae42',
  'c46f8a5becbf',
  'ee0ca20290ec',
  '95b048a8eca0',
  'b461ed25d849',
  '296952255f7f',
  'e76dea218e1e',
  '70968008c1e5',
  'e91b7ee99879',
  'd0e7684653de',
  '8292713bf28f',
  'f7687d73b3b3',
  'db7d3da73e2b',
  '6db752082fc3',
];

it('names no brand', () => {
  const folder = join(import.meta.dirname, '../../server/src/sizes');
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((f) =>
    /\.(?:ts|md)$/.test(f),
  );
  const words = new Set(
    files.flatMap(
      (file) =>
        readFileSync(join(folder, file), 'utf8')
          .toLowerCase()
          .match(/\p{L}{3,}/gu) ?? [],
    ),
  );
  const digest = (word: string) => createHash('sha256').update(word).digest('hex').slice(0, 12);
  expect([...words].filter((word) => TRADE_NAMES.includes(digest(word)))).toEqual([]);
  expect(digest('trade')).toBe('276446ba01e3');
});
