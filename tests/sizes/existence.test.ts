/** Which sizes exist, and the next ones in a series. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compareThickness,
  existence,
  type Lens,
  neighbours,
  SOURCES,
  writeValue,
} from '../../server/src/sizes/index.ts';
import { anyLens, anySize, SYSTEMS, size, sizeOf } from './support.ts';

describe('existence', () => {
  it.each([
    // European Pharmacopoeia comparison table; Japanese standards of 1999 and 2015.
    ['usp', '12-0', {}, 'yes'],
    ['usp', '13-0', {}, 'no'],
    ['usp', '2.5-0', {}, 'no'],
    ['usp', '0', {}, 'yes'],
    ['usp', '10', {}, 'yes'],
    ['usp', '11', {}, 'no'],
    ['usp', '11-0', { material: 'chromic-gut' }, 'unknown'],
    ['usp', '3-0', { material: 'chromic-gut' }, 'yes'],
    ['usp', '13-0', { material: 'eptfe' }, 'unknown'],
    ['ep-metric', '2.5', {}, 'yes'],
    ['ep-metric', '3.2', {}, 'no'],
    ['ep-metric', '12', {}, 'unknown'],
    ['ep-metric', '0.05', {}, 'unknown'],
    // ISO 9626:2016, scope: 3.4 mm (10 G) to 0.18 mm (34 G); nominal chart from 7 G (6 G from memory).
    ['needle-gauge', '34', {}, 'yes'],
    ['needle-gauge', '35', {}, 'no'],
    ['needle-gauge', '6', {}, 'yes'],
    ['needle-gauge', '5', {}, 'unknown'],
    ['needle-gauge', '18.5', {}, 'no'],
    ['needle-gauge', '40', { device: 'cannula' }, 'no'],
    // Japan, notice of October 2006: the list of IV catheters has no 19 G.
    ['needle-gauge', '19', { device: 'cannula' }, 'unknown'],
    ['needle-gauge', '20', { device: 'cannula' }, 'yes'],
    ['needle-gauge', '40', { device: 'steel-wire' }, 'yes'],
    ['needle-gauge', '60', { device: 'k-wire' }, 'unknown'],
    ['wire-gauge', '50', {}, 'yes'],
    ['wire-gauge', '51', {}, 'unknown'],
    ['wire-gauge', '26', {}, 'yes'],
    ['wire-gauge', '26.5', {}, 'unknown'],
    ['french', '14', {}, 'yes'],
    ['french', '7.5', {}, 'yes'],
    ['french', '14.2', {}, 'unknown'],
    ['french', '50', {}, 'yes'],
    ['french', '51', {}, 'unknown'],
    ['french', '0', {}, 'unknown'],
    ['wire-inch', '0.035', {}, 'yes'],
    ['wire-inch', '0.0351', {}, 'unknown'],
    // A zero lost after the point: no guidewire is a tenth of an inch thick (series of northcutt).
    ['wire-inch', '0.35', {}, 'no'],
    ['wire-inch', '0.1', {}, 'no'],
    ['wire-inch', '1', {}, 'unknown'],
    ['inch', '0.35', { device: 'guidewire' }, 'no'],
    ['inch', '1', { device: 'guidewire' }, 'yes'],
    ['inch', '1.5', { device: 'guidewire' }, 'yes'],
    ['tube-id', '7.5', {}, 'yes'],
    ['tube-id', '7.3', {}, 'unknown'],
    ['hegar', '8', {}, 'yes'],
    ['hegar', '80', {}, 'unknown'],
    ['millimetre', '4.7', {}, 'yes'],
    ['millimetre', '0', {}, 'unknown'],
    ['inch', '0.5', {}, 'yes'],
  ] as const)('%s %s %j: %s', (system, text, lens, exists) => {
    expect(existence(size(system, text), lens).exists).toBe(exists);
  });

  it('says why in words, and by sources that are listed', () => {
    const anything = fc.double({ min: -50, max: 100, noNaN: true });
    const listed = fc.constantFrom(
      ...[-13, -11, -2, 0, 0.035, 0.35, 0.5, 1, 3, 3.2, 7.5, 8, 11, 12, 14, 18, 18.5, 19, 35, 50, 60],
    );
    fc.assert(
      fc.property(fc.constantFrom(...SYSTEMS), fc.oneof(listed, anything), anyLens, (system, value, lens) => {
        const { because, sources } = existence({ system, value }, lens);
        expect(because.trim().length).toBeGreaterThan(5);
        expect(sources.filter((key) => !(key in SOURCES))).toEqual([]);
      }),
      { numRuns: 1000 },
    );
    for (const [system, text, material] of [
      ['usp', '3-0', 'eptfe'],
      ['usp', '11-0', 'chromic-gut'],
    ] as const) {
      const { because, sources } = existence(size(system, text), { material });
      expect(because).toMatch(/CV numbers|gut table/);
      expect(sources.every((key) => key in SOURCES)).toBe(true);
    }
    const cannula = existence(size('needle-gauge', '19'), { device: 'cannula' });
    expect(cannula.because).toContain('ISO 10555-5');
    expect(cannula.sources).toEqual(['ISO10555-5', 'JPneedle']);
    expect(existence(size('needle-gauge', '35')).because).toContain('34 G');
    expect(existence(size('ep-metric', '3.2')).because).toContain('3, 3.5');
    expect(existence(size('wire-inch', '0.35')).because).toContain('a zero is missing');
  });

  it('says why and by what source when it says no', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SYSTEMS),
        fc.double({ min: -50, max: 100, noNaN: true }),
        anyLens,
        (system, value, lens) => {
          const answer = existence({ system, value }, lens);
          if (answer.exists === 'no') expect(answer.sources.length).toBeGreaterThan(0);
        },
      ),
    );
  });
});

describe('neighbours', () => {
  const near = (system: Parameters<typeof size>[0], text: string, lens: Lens = {}) => {
    const { thinner, thicker } = neighbours(size(system, text), lens);
    return [thinner && writeValue(thinner), thicker && writeValue(thicker)];
  };
  it.each([
    ['usp', '2-0', {}, '3-0', '0'],
    ['usp', '0', {}, '2-0', '1'],
    ['usp', '12-0', {}, undefined, '11-0'],
    ['usp', '10', {}, '9', undefined],
    ['usp', '3', {}, '2', '5'],
    ['usp', '4', {}, '2', '5'],
    ['usp', '3', { material: 'gut' }, '2', '4'],
    ['usp', '9-0', { material: 'gut' }, undefined, '8-0'],
    ['needle-gauge', '18', {}, '19', '17'],
    ['needle-gauge', '18', { device: 'cannula' }, '20', '17'],
    ['needle-gauge', '34', {}, undefined, '33'],
    ['wire-gauge', '20', {}, '21', '19'],
    ['ep-metric', '3', {}, '2.5', '3.5'],
    ['french', '14', {}, '12', '16'],
    ['french', '13', {}, '12', '14'],
    ['wire-inch', '0.035', {}, '0.025', '0.038'],
    ['tube-id', '7.5', {}, '7', '8'],
    ['hegar', '8', {}, '7', '9'],
    ['millimetre', '4.7', {}, undefined, undefined],
    // The ranks 3 and 4 share a row; the numbers 3 and 4 of other systems do not.
    ['ep-metric', '4', {}, '3.5', '5'],
    ['hegar', '3', {}, '2', '4'],
    ['inch', '1', {}, undefined, undefined],
  ] as const)('of %s %s %j: %s and %s', (system, text, lens, thinner, thicker) => {
    expect(near(system, text, lens)).toEqual([thinner, thicker]);
  });

  it('are thinner and thicker', () => {
    fc.assert(
      fc.property(anySize, (one) => {
        const { thinner, thicker } = neighbours(one);
        if (thinner) expect(compareThickness(thinner, one).result).toBe('thinner');
        if (thicker) expect(compareThickness(thicker, one).result).toBe('thicker');
      }),
    );
  });

  it('lead back', () => {
    fc.assert(
      fc.property(sizeOf('needle-gauge'), (one) => {
        const { thicker } = neighbours(one);
        if (thicker) expect(neighbours(thicker).thinner).toEqual(one);
      }),
    );
  });
});
