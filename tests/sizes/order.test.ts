/** The order of thickness: laws that hold for any sizes, and the direction of each system as published. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareThickness, direction, type Thickness } from '../../server/src/sizes/index.ts';
import { anyLens, anySize, SYSTEMS, size, sizeOf } from './support.ts';

type Result = Thickness['result'];
const FLIPPED: Readonly<Record<Result, Result>> = {
  thicker: 'thinner',
  thinner: 'thicker',
  same: 'same',
  'cannot-tell': 'cannot-tell',
};

describe.each(SYSTEMS)('within %s', (system) => {
  const one = sizeOf(system);
  const rowOfThreeAndFour = (a: number, b: number) =>
    system === 'usp' && a !== b && [3, 4].includes(a) && [3, 4].includes(b);

  it('any two sizes compare, save USP 3 and 4', () => {
    fc.assert(
      fc.property(one, one, (a, b) => {
        const { result } = compareThickness(a, b);
        if (a.value === b.value) expect(result).toBe('same');
        else if (rowOfThreeAndFour(a.value, b.value)) expect(result).toBe('cannot-tell');
        else expect(['thicker', 'thinner']).toContain(result);
      }),
    );
  });

  it('is transitive', () => {
    fc.assert(
      fc.property(one, one, one, (a, b, c) => {
        fc.pre(compareThickness(a, b).result === 'thicker' && compareThickness(b, c).result === 'thicker');
        expect(compareThickness(a, c).result).toBe('thicker');
      }),
    );
  });
});

it('is antisymmetric, whatever the systems and the things', () => {
  fc.assert(
    fc.property(anySize, anySize, anyLens, anyLens, (a, b, lensA, lensB) => {
      const there = compareThickness(a, b, lensA, lensB).result;
      expect(compareThickness(b, a, lensB, lensA).result).toBe(FLIPPED[there]);
    }),
    { numRuns: 1000 },
  );
});

it('never runs in a circle across systems', () => {
  fc.assert(
    fc.property(anySize, anySize, anySize, (a, b, c) => {
      fc.pre(compareThickness(a, b).result === 'thicker' && compareThickness(b, c).result === 'thicker');
      expect(['thicker', 'cannot-tell']).toContain(compareThickness(a, c).result);
    }),
    { numRuns: 1000 },
  );
});

it('gives a reason for every answer', () => {
  fc.assert(
    fc.property(anySize, anySize, anyLens, anyLens, (a, b, lensA, lensB) => {
      expect(compareThickness(a, b, lensA, lensB).because).toMatch(/\S/);
    }),
  );
});

describe('direction, as published', () => {
  it.each([
    ['usp', '3-0', '6-0', 'Book of Style for Medical Transcription, 3rd ed., p. 251: more zeros, finer'],
    ['usp', '2', '1', 'Book of Style for Medical Transcription, 3rd ed., p. 251: whole numbers run up'],
    ['usp', '1', '0', 'Book of Style: 1 is thicker than 0'],
    ['usp', '7', '7-0', 'Book of Style: size 7 is the thick end, 7-0 is fine'],
    ['ep-metric', '3', '2', 'European Pharmacopoeia: least diameter in tenths of a millimetre'],
    ['needle-gauge', '18', '22', 'nominal needle chart; ISO 9626'],
    ['wire-gauge', '20', '26', 'GNU Units; How Many? A Dictionary of Units of Measurement'],
    ['french', '16', '14', 'UCUM [Ch]'],
    ['wire-inch', '0.035', '0.018', 'a length in inches'],
    ['inch', '0.5', '0.25', 'a length in inches'],
    ['millimetre', '2', '1.5', 'a length'],
    ['tube-id', '8', '7.5', 'Korean J Anesthesiol 2019;72(1): the size is the inner diameter in mm'],
    ['hegar', '8', '7', 'A System of Operative Surgery, vol. 4: Hegar numbers are mm'],
  ] as const)('%s: %s is thicker than %s (%s)', (system, thick, thin, _published) => {
    expect(compareThickness(size(system, thick), size(system, thin)).result).toBe('thicker');
    expect(compareThickness(size(system, thin), size(system, thick)).result).toBe('thinner');
  });

  it.each(SYSTEMS.filter((system) => direction(system) !== 'split'))(
    '%s runs the way it is said to',
    (system) => {
      fc.assert(
        fc.property(sizeOf(system), sizeOf(system), (a, b) => {
          fc.pre(a.value > b.value);
          expect(compareThickness(a, b).result).toBe(direction(system) === 'up' ? 'thicker' : 'thinner');
        }),
      );
    },
  );

  it('is split for USP alone', () => {
    expect(SYSTEMS.filter((system) => direction(system) === 'split')).toEqual(['usp']);
  });
});
