/** Laws of conversion: back again within what was stated, nothing out of nothing, no throwing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compareThickness,
  convert,
  existence,
  innerDiameter,
  neighbours,
  nominalNeedle,
  outerDiameter,
  type Size,
} from '../../server/src/sizes/index.ts';
import { anyLens, anySize, SYSTEMS, sizeOf } from './support.ts';

const target = (
  size: Size,
  to: string,
  ...lens: Parameters<typeof convert> extends [unknown, ...infer L] ? L : never
) => convert(size, ...lens).find((c) => c.to === to);

describe('there and back', () => {
  it.each(['french', 'inch', 'wire-inch', 'hegar'] as const)('%s through millimetres', (system) => {
    fc.assert(
      fc.property(sizeOf(system), (size) => {
        const mm = target(size, 'millimetre')!.value!;
        const back = system === 'french' || system === 'hegar' ? 'french' : 'inch';
        const value = target({ system: 'millimetre', value: mm }, back)!.value!;
        expect(value).toBeCloseTo(system === 'hegar' ? size.value * 3 : size.value, 9);
      }),
    );
  });

  it('USP through the metric number', () => {
    fc.assert(
      fc.property(sizeOf('usp'), fc.constantFrom('silk', 'gut'), (size, material) => {
        const metric = target(size, 'ep-metric', { material });
        fc.pre(
          metric !== undefined && outerDiameter({ system: 'ep-metric', value: metric.value! }) !== undefined,
        );
        const back = target({ system: 'ep-metric', value: metric!.value! }, 'usp', { material })!;
        const shared = material === 'silk' && [3, 4].includes(size.value);
        expect(back.value).toBe(shared ? undefined : size.value);
      }),
    );
  });

  it.each(['needle', 'cannula'] as const)('%s gauge through millimetres', (device) => {
    fc.assert(
      fc.property(sizeOf('needle-gauge'), (size) => {
        const mm = target(size, 'millimetre', { device });
        fc.pre(mm !== undefined);
        const back = target({ system: 'millimetre', value: mm!.value! }, 'needle-gauge', { device })!;
        expect(back.text.match(/\d+/g)).toContain(String(size.value));
      }),
    );
  });
});

it('names both gauges where the limits of two overlap', () => {
  // ISO 9626, from memory: 28 G is 0.349 to 0.37 mm, 29 G is 0.324 to 0.351 mm.
  const [between] = convert({ system: 'millimetre', value: 0.35 }, { device: 'needle' });
  expect(between).toMatchObject({ to: 'needle-gauge', text: '28 or 29 G' });
  expect(between).not.toHaveProperty('value');
  const [one] = convert({ system: 'millimetre', value: 0.36 }, { device: 'needle' });
  expect(one).toMatchObject({ text: '28 G', value: 28 });
  const [none] = convert({ system: 'millimetre', value: 0.39 }, { device: 'needle' });
  expect(none).toMatchObject({ to: 'inch' });
});

it('of a wire by its gauge says the scales apart, with a caution', () => {
  for (const device of ['steel-wire', 'k-wire'] as const) {
    const found = convert({ system: 'needle-gauge', value: 20 }, { device });
    expect(found.map(({ text }) => text)).toEqual(['0.812 mm (AWG)', '0.914 mm (SWG)']);
    for (const { caution } of found) expect(caution).toContain('the scales differ');
  }
});

it('of a length on an IV catheter goes by the list of catheters', () => {
  const [one] = convert({ system: 'millimetre', value: 1.1 }, { device: 'cannula' });
  expect(one).toMatchObject({ to: 'needle-gauge', text: '20 G', value: 20 });
  const [needle] = convert({ system: 'millimetre', value: 1.1 }, { device: 'needle' });
  expect(needle).toMatchObject({ text: '19 G' });
});

it('says of a tube and of a sheath what its number does not tell', () => {
  expect(convert({ system: 'tube-id', value: 7.5 })[0]).toMatchObject({
    text: '7.5 mm inside',
    caution: 'the outside depends on the make',
  });
  expect(convert({ system: 'french', value: 6 }, { device: 'sheath' })).toMatchObject([
    { text: 'accepts 2 mm', caution: 'the sheath itself is about 2 Fr thicker outside' },
  ]);
  expect(innerDiameter({ system: 'french', value: 6 }, { device: 'sheath' })?.standard).toBe(
    'sheath French = what it accepts',
  );
});

it('of a USP size that no table has gives nothing, and of a metric number only its diameter', () => {
  expect(convert({ system: 'usp', value: 11 })).toEqual([]);
  expect(convert({ system: 'millimetre', value: 20 }, { device: 'suture' }).map(({ to }) => to)).toEqual([
    'inch',
  ]);
});

it('says how sure a diameter is, and every caution that goes with it', () => {
  const oversize = outerDiameter({ system: 'usp', value: -2 }, { material: 'polydioxanone' })!;
  expect(oversize.confidence).toBe('single-source');
  expect(outerDiameter({ system: 'needle-gauge', value: 18 }, { device: 'needle' })?.standard).toBe(
    'ISO 9626, nominal needle chart',
  );
  expect(innerDiameter({ system: 'needle-gauge', value: 18 }, { device: 'needle' })?.standard).toBe(
    'ISO 9626, nominal needle chart',
  );
  expect(innerDiameter({ system: 'needle-gauge', value: 9 }, { device: 'needle' })?.standard).toBe(
    'nominal needle chart',
  );
});

it('knows no inches of a gauge that no needle chart lists', () => {
  expect(nominalNeedle(34)?.nominal).toBeCloseTo(0.00725 * 25.4, 9);
  expect(nominalNeedle(35)).toBeUndefined();
});

it('states an interval that holds the value, in millimetres, for every length', () => {
  fc.assert(
    fc.property(anySize, anyLens, (size, lens) => {
      for (const { to, value, interval } of convert(size, lens)) {
        if (!interval || value === undefined || to !== 'millimetre') continue;
        expect(value).toBeGreaterThanOrEqual(interval.min - 1e-9);
        expect(value).toBeLessThanOrEqual(interval.max + 1e-9);
      }
    }),
    { numRuns: 1000 },
  );
});

it('keeps the order: the thicker size converts to the larger length', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...SYSTEMS),
      fc.constantFrom('needle', 'cannula'),
      fc.integer(),
      (system, device, seed) => {
        const [a, b] = fc.sample(sizeOf(system), { numRuns: 2, seed }) as [Size, Size];
        fc.pre(compareThickness(a, b, { device }, { device }).result === 'thicker');
        const [x, y] = [
          target(a, 'millimetre', { device })?.value,
          target(b, 'millimetre', { device })?.value,
        ];
        if (x !== undefined && y !== undefined) expect(x).toBeGreaterThan(y);
      },
    ),
  );
});

it('says a text, a standard and a confidence each time', () => {
  fc.assert(
    fc.property(anySize, anyLens, (size, lens) => {
      for (const { to, text, standard, confidence } of convert(size, lens)) {
        expect(to).not.toBe(size.system);
        expect(text).toMatch(/\d/);
        expect(text).not.toMatch(/NaN|Infinity|undefined/);
        expect(standard).toMatch(/\S/);
        expect(confidence).toMatch(/^(?:confirmed|single-source|memory|common-practice)$/);
      }
    }),
    { numRuns: 1000 },
  );
});

it('holds the wall: the bore is smaller than the outside', () => {
  fc.assert(
    fc.property(anySize, anyLens, (size, lens) => {
      const outside = outerDiameter(size, lens);
      const inside = innerDiameter(size, lens);
      if (outside && inside) expect(inside.max).toBeLessThan(outside.max);
      for (const interval of [outside, inside])
        if (interval) {
          expect(interval.min).toBeGreaterThan(0);
          expect(interval.max).toBeGreaterThanOrEqual(interval.min);
        }
    }),
    { numRuns: 1000 },
  );
});

it('takes any number on any thing without throwing', () => {
  const wild = fc.record({ system: fc.constantFrom(...SYSTEMS), value: fc.double() });
  fc.assert(
    fc.property(wild, wild, anyLens, (a, b, lens) => {
      expect(Array.isArray(convert(a, lens))).toBe(true);
      expect(compareThickness(a, b, lens).result).toMatch(/\S/);
      expect(existence(a, lens).because).toMatch(/\S/);
      expect(neighbours(a, lens)).toBeDefined();
      const interval = outerDiameter(a, lens);
      if (interval) expect(Number.isFinite(interval.max)).toBe(true);
    }),
    { numRuns: 2000 },
  );
});
