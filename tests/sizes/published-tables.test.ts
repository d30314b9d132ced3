/** Published tables, written out here as they are printed, each with its source. */
import { describe, expect, it } from 'vitest';
import { bwg, convert, innerDiameter, type Lens, outerDiameter } from '../../server/src/sizes/index.ts';
import { outer, size } from './support.ts';

const needle: Lens = { device: 'needle' };

describe('European Pharmacopoeia comparison table (as reproduced): metric number and USP size of synthetic thread', () => {
  it.each([
    ['0.2', '10-0'],
    ['0.3', '9-0'],
    ['0.4', '8-0'],
    ['0.5', '7-0'],
    ['0.7', '6-0'],
    ['1', '5-0'],
    ['1.5', '4-0'],
    ['2', '3-0'],
    ['3', '2-0'],
    ['3.5', '0'],
    ['4', '1'],
    ['5', '2'],
    ['6', '3'],
    ['6', '4'],
    ['7', '5'],
    ['8', '6'],
  ])('metric %s is USP %s', (metric, usp) => {
    const said = convert(size('usp', usp), { material: 'silk' });
    expect(said.find((c) => c.to === 'ep-metric')?.value).toBe(Number(metric));
    expect(outer('usp', usp, { material: 'silk' }).min).toBeCloseTo(Number(metric) / 10, 9);
    expect(outer('ep-metric', metric).max).toBe(outer('usp', usp, { material: 'silk' }).max);
  });

  it('has metric 2.5, to which no USP size of synthetic thread belongs', () => {
    expect(outer('ep-metric', '2.5')).toMatchObject({ min: 0.25, max: 0.299 });
    expect(convert(size('ep-metric', '2.5')).some((c) => c.to === 'usp')).toBe(false);
  });
});

describe('gut: USP suture size chart, collagen column (as excerpted)', () => {
  it.each([
    ['4-0', 0.2, 0.249],
    ['3-0', 0.3, 0.339],
    ['2-0', 0.35, 0.399],
    ['0', 0.4, 0.499],
  ])('%s is %f–%f mm', (usp, min, max) => {
    for (const material of ['plain-gut', 'chromic-gut', 'fast-gut', 'gut'])
      expect(outer('usp', usp, { material })).toMatchObject({ min, max });
  });
});

describe('nominal needle chart, mm to four places', () => {
  const OUTSIDE =
    '4.5720 4.1910 3.7592 3.4036 3.0480 2.7686 2.4130 2.1082 1.8288 1.6510 1.4732 1.2700 1.0668 0.9081 0.8192 0.7176 0.6414 0.5652 0.5144 0.4636 0.4128 0.3620 0.3366 0.3112 0.2604 0.2350 0.2096 0.1842';
  const INSIDE =
    '3.8100 3.4290 2.9972 2.6924 2.3876 2.1590 1.8034 1.6002 1.3716 1.1938 1.0668 0.8382 0.6858 0.6033 0.5144 0.4128 0.3366 0.3112 0.2604 0.2604 0.2096 0.1842 0.1842 0.1588 0.1334 0.1080 0.1080 0.0826';
  const rows = OUTSIDE.split(' ').map((mm, i) => [7 + i, Number(mm), Number(INSIDE.split(' ')[i])] as const);

  it.each(rows)('%i G is %f mm outside, %f mm inside', (gauge, outside, inside) => {
    const interval = outer('needle-gauge', gauge, needle);
    expect(outside).toBeGreaterThanOrEqual(interval.min - 5e-5);
    expect(outside).toBeLessThanOrEqual(interval.max + 5e-5);
    expect(innerDiameter(size('needle-gauge', gauge), needle)?.nominal).toBeCloseTo(inside, 3);
    const inch = convert(size('needle-gauge', gauge), needle).find((c) => c.to === 'inch');
    expect((inch?.value ?? 0) * 25.4).toBeCloseTo(outside, 3);
  });
});

/** ISO 9626 scope, GB/T 18457-2015 and the Japanese notice of October 2006: designated metric sizes. */
describe('designated metric size of needles', () => {
  it.each([
    [10, 3.4],
    [14, 2.1],
    [16, 1.6],
    [18, 1.2],
    [19, 1.1],
    [20, 0.9],
    [21, 0.8],
    [22, 0.7],
    [23, 0.6],
    [25, 0.5],
    [27, 0.4],
    [30, 0.3],
    [31, 0.25],
    [32, 0.23],
    [33, 0.2],
    [34, 0.18],
  ])('%i G is designated %f mm', (gauge, mm) => {
    expect(outer('needle-gauge', gauge, needle).nominal).toBe(mm);
    const gauges = convert(size('millimetre', mm), needle).find((c) => c.to === 'needle-gauge');
    expect(gauges?.text.match(/\d+/g)).toContain(String(gauge));
  });
});

/** Japan, notice of October 2006: outer diameters listed for each gauge of IV catheter, and no others. */
describe('IV catheters by listed diameter', () => {
  const LISTED: Readonly<Record<number, string>> = {
    10: '3.3 3.4',
    12: '2.6 2.7 2.8',
    13: '2.3 2.4 2.5',
    14: '1.9 2.0 2.1 2.2',
    16: '1.6 1.7 1.8',
    17: '1.4 1.5',
    18: '1.2 1.3',
    20: '1.0 1.1',
    22: '0.8 0.9',
    24: '0.7',
    26: '0.6',
  };
  it.each(Object.entries(LISTED))('%s G', (gauge, listed) => {
    for (const mm of listed.split(' ')) {
      const said = convert(size('millimetre', mm), { device: 'cannula' }).find(
        (c) => c.to === 'needle-gauge',
      );
      expect(said?.value).toBe(Number(gauge));
    }
  });
  it('has no 19 G, 21 G or 23 G', () => {
    for (const gauge of [11, 15, 19, 21, 23, 25, 27])
      expect(outerDiameter(size('needle-gauge', gauge), { device: 'cannula' })).toBeUndefined();
  });
});

/** How Many? A Dictionary of Units of Measurement; engineering reference page: Birmingham wire gauge, mm. */
describe('Birmingham wire gauge, mm to three places', () => {
  const MM =
    '8.636 7.620 7.214 6.579 6.045 5.588 5.156 4.572 4.191 3.759 3.404 3.048 2.769 2.413 2.108 1.829 1.651 1.473 1.245 1.067 0.889 0.813 0.711 0.635 0.559 0.508 0.457 0.406 0.356 0.330 0.305 0.254 0.229 0.203 0.178 0.127 0.102';
  it.each(MM.split(' ').map((mm, n) => [n, Number(mm)] as const))('number %i is %f mm', (n, mm) => {
    expect(Math.abs(bwg(n)!.min - mm)).toBeLessThanOrEqual(5.1e-4);
  });
});

/** ISO 20696:2018, 5.5.2: mm rounded up to 0.1; both that and the exact third are right. */
describe('French, rounded up to a tenth of a millimetre', () => {
  const TENTHS =
    '0.4 0.7 1.0 1.4 1.7 2.0 2.4 2.7 3.0 3.4 3.7 4.0 4.4 4.7 5.0 5.4 5.7 6.0 6.4 6.7 7.0 7.4 7.7 8.0 8.4 8.7 9.0 9.4 9.7 10.0 10.4 10.7 11.0 11.4 11.7 12.0';
  it.each(TENTHS.split(' ').map((mm, i) => [i + 1, Number(mm)] as const))('%i Fr is %f mm', (french, mm) => {
    const { min, max, nominal } = outer('french', french);
    expect(max).toBeCloseTo(mm, 9);
    for (const written of [french / 3, Number((french / 3).toFixed(1)), Number((french / 3).toFixed(2))])
      expect(written >= min - 1e-9 && written <= max + 1e-9).toBe(true);
    expect(nominal).toBe(french / 3);
  });
});
