/** Sizes said not to exist, and scales said to end, judged. */
import { describe, expect, it } from 'vitest';
import { judged, NOBODY, type Said, side, type Written } from './claims.ts';

type Absent = Extract<Said, { kind: 'existence' }>['absent'];

const usp = (absent: Absent, text: string | string[], written: Written = {}): Said => ({
  kind: 'existence',
  size: side('usp', text, written),
  absent,
});
const gauge = (absent: Absent, text: string | string[], written: Written = {}): Said => ({
  kind: 'existence',
  size: side('needle-gauge', text, written),
  absent,
});

describe('a size said not to exist', () => {
  it.each([
    [usp('itself', '7-0'), 'contradicted'],
    [usp('itself', '11-0'), 'contradicted'],
    [usp('itself', '12-0'), 'cannot-tell'],
    [usp('itself', '13-0'), 'agrees'],
    [usp('itself', '2.5-0'), 'agrees'],
    [usp('itself', '5'), 'contradicted'],
    [usp('itself', '6'), 'cannot-tell'],
    [usp('itself', '11'), 'agrees'],
    [usp('itself', ['13-0', '7-0']), 'contradicted'],
    [usp('itself', ['13-0', '12-0']), 'cannot-tell'],
    [usp('itself', '7-0', { material: 'silk' }), 'cannot-tell'],
    [usp('itself', '7-0', { material: 'gut' }), 'cannot-tell'],
    [gauge('itself', '19'), 'contradicted'],
    [gauge('itself', '19', { device: 'needle' }), 'contradicted'],
    [gauge('itself', '19', { device: 'cannula' }), 'cannot-tell'],
    [gauge('itself', '20', { device: 'cannula' }), 'contradicted'],
    [gauge('itself', '8'), 'cannot-tell'],
    [gauge('itself', '10'), 'contradicted'],
    [gauge('itself', '36'), 'agrees'],
    [{ kind: 'existence', size: side('french', '5'), absent: 'itself' }, 'cannot-tell'],
    [{ kind: 'existence', size: NOBODY, absent: 'itself' }, 'cannot-tell'],
  ] as const)('%#', (claim, verdict) => {
    expect(judged(claim as Said).verdict).toBe(verdict);
  });

  it('is told with what it is', () => {
    expect(judged(gauge('itself', ['19', '23']))).toMatchObject({
      says: 'Says there is no size 19 G or 23 G.',
      holds: '19 G exists: it is a hypodermic needle, 1.1 mm thick.',
    });
    expect(judged(gauge('itself', '19')).source).toMatch(/^ISO 9626/);
    expect(judged(usp('itself', '5'))).toMatchObject({
      says: 'Says there is no size 5.',
      holds: 'USP 5 exists: USP runs from 12-0 to 10.',
    });
    expect(judged(usp('itself', '13-0')).holds).toBe('Right: USP sizes end at 12-0, the finest.');
  });
});

describe('a scale said to end', () => {
  it.each([
    [usp('finer', '7-0'), 'contradicted'],
    [usp('finer', '10-0'), 'contradicted'],
    [usp('finer', '11-0'), 'cannot-tell'],
    [usp('finer', '12-0'), 'agrees'],
    [usp('thicker', '2'), 'contradicted'],
    [usp('thicker', '4'), 'contradicted'],
    [usp('thicker', '5'), 'cannot-tell'],
    [usp('thicker', '10'), 'agrees'],
    [gauge('finer', '30'), 'contradicted'],
    [gauge('finer', '34'), 'agrees'],
    [gauge('thicker', '10'), 'cannot-tell'],
  ] as const)('%#', (claim, verdict) => {
    expect(judged(claim).verdict).toBe(verdict);
  });

  it('is told with the next one', () => {
    expect(judged(usp('finer', '7-0'))).toMatchObject({
      says: 'Says nothing finer than 7-0 exists.',
      holds: '8-0 is finer and exists: USP runs from 12-0 to 10.',
    });
    expect(judged(usp('thicker', '2')).says).toBe('Says nothing thicker than USP 2 exists.');
    // 4 shares its row with 3.
    expect(judged(usp('thicker', '3')).holds).toBe('USP 5 is thicker and exists: USP runs from 12-0 to 10.');
    expect(judged(gauge('finer', '30')).holds).toBe(
      '31 G is finer and exists: it is a hypodermic needle, 0.25 mm thick.',
    );
  });
});

describe('sizes said to be passed over', () => {
  it('between two', () => {
    expect(judged(usp('between', ['2-0', '4-0']))).toMatchObject({
      verdict: 'contradicted',
      says: 'Says there is no size between 2-0 and 4-0.',
      holds: '3-0 lies between them: USP runs from 12-0 to 10.',
    });
    expect(judged(usp('between', ['4-0', '2-0'])).verdict).toBe('contradicted');
    expect(judged(usp('between', ['2-0', '3-0'])).verdict).toBe('cannot-tell');
    expect(judged(usp('between', '2-0')).verdict).toBe('cannot-tell');
  });

  it('that are no even numbers', () => {
    expect(judged({ kind: 'existence', size: NOBODY, absent: 'uneven' })).toMatchObject({
      verdict: 'contradicted',
      says: 'Says needle gauges are even numbers only.',
      holds: '19 G exists: it is a hypodermic needle, 1.1 mm thick.',
    });
  });
});
