/** Joining, comparing and writing lengths with their limits. */
import { describe, expect, it } from 'vitest';
import {
  contains,
  exact,
  isPoint,
  mmText,
  oneMm,
  overlaps,
  union,
  weakest,
} from '../../server/src/sizes/interval.ts';
import type { Interval } from '../../server/src/sizes/model.ts';
import { neighbours } from '../../server/src/sizes/neighbours.ts';

const between = (min: number, max: number, more: Partial<Interval> = {}): Interval => ({
  min, max, standard: 'one', sources: [], confidence: 'confirmed', ...more,
}); // biome-ignore format: a value

describe('a joined length', () => {
  it('holds all parts, is as sure as the least sure, and names each standard once', () => {
    const joined = union([
      between(2, 3, { nominal: 2.5, confidence: 'single-source' }),
      between(1, 2.5, { standard: 'two', confidence: 'memory' }),
      between(1, 2.5),
    ]);
    expect(joined).toEqual({
      min: 1,
      max: 3,
      nominal: 2.5,
      standard: 'one, two',
      sources: [],
      confidence: 'memory',
    });
  });

  it('has no nominal length and no caution where its parts have none', () => {
    const joined = union([between(1, 2), between(2, 3, { nominal: 2 })])!;
    expect(Object.keys(joined)).not.toContain('nominal');
    expect(Object.keys(joined)).not.toContain('caution');
    expect(union([])).toBeUndefined();
  });

  it('says each caution once, its own first', () => {
    const parts = [
      between(1, 2, { caution: 'b' }),
      between(1, 2, { caution: 'b' }),
      between(1, 2, { caution: 'c' }),
    ];
    expect(union(parts, 'named', 'a')).toMatchObject({ standard: 'named', caution: 'a; b; c' });
  });

  it('counts confidence from the surest', () => {
    expect(weakest([])).toBe('confirmed');
    expect(weakest(['single-source', 'common-practice', 'confirmed'])).toBe('common-practice');
  });
});

describe('comparing', () => {
  it('takes touching ends for shared, and binary noise for nothing', () => {
    expect(overlaps(between(1, 2), between(2, 3))).toBe(true);
    expect(overlaps(between(2, 3), between(1, 2))).toBe(true);
    expect(overlaps(between(1, 2), between(2.001, 3))).toBe(false);
    expect(overlaps(between(2.001, 3), between(1, 2))).toBe(false);
    expect(overlaps(between(0, 0), between(1e-9, 1))).toBe(true);
    expect(overlaps(between(1e-9, 1), between(0, 0))).toBe(true);
    expect(contains(between(0.1 + 0.2, 1), 0.3)).toBe(true);
    expect(contains(between(0, 0.3), 0.1 + 0.2)).toBe(true);
    expect(contains(between(1, 2), 0.999)).toBe(false);
    expect(contains(between(1, 2), 2.001)).toBe(false);
    expect(contains(between(0, 0), 1e-9)).toBe(true);
    expect(contains(between(0, 0), -1e-9)).toBe(true);
  });

  it('knows a point', () => {
    expect(isPoint(exact(1.5, 'one', []))).toBe(true);
    expect(isPoint(between(0, 1e-9))).toBe(true);
    expect(isPoint(between(1, 1.01))).toBe(false);
  });
});

describe('writing', () => {
  it.each([
    [between(0.3, 0.349), '0.3–0.349 mm'],
    [between(4.6666, 4.6667), '4.67 mm'],
    [between(0.9996, 1.0004), '1 mm'],
    [between(1.2345, 2), '1.23–2 mm'],
    [between(1, 1), '1 mm'],
  ])('%j as %s', (interval, text) => {
    expect(mmText(interval)).toBe(text);
  });

  it('one length', () => {
    expect(oneMm(14 / 3)).toBe('4.67 mm');
    expect(oneMm(1.0006)).toBe('1 mm');
    expect(oneMm(0.2344)).toBe('0.234 mm');
  });
});

describe('neighbours', () => {
  it('of a plain length there are none', () => {
    expect(neighbours({ system: 'millimetre', value: 3 })).toEqual({});
  });

  it('of a size outside its table are the nearest of the table', () => {
    expect(neighbours({ system: 'usp', value: 99 }).thinner).toBeDefined();
    expect(neighbours({ system: 'usp', value: 99 }).thicker).toBeUndefined();
  });

  it('of other systems share no row with anything', () => {
    expect(neighbours({ system: 'french', value: 1 }).thicker).toBeDefined();
    expect(neighbours({ system: 'hegar', value: 0 }).thicker).toMatchObject({ system: 'hegar' });
  });
});
