/**
 * Work, time and memory against size on hostile input.
 *
 * Work is counted: every statement, function and branch of ours and of the parser, the same on every machine. Its exponent is held at 1.1, where 1
 * is linear. Time shows what counting does not see, the patterns and copies inside one statement; it is the shortest of
 * several runs, fitted over a series of sizes, and held at 1.25: the collector and colder memory make linear work look like
 * 1.1 at times, and other work on the machine adds to it, while a square shows as 1.5 and more. Memory is counted too, as what
 * can be reached from an analysis: the heap after a collection also holds compiled code, and moves by megabytes.
 */
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { analyseWhole } from '../../server/src/course/index.ts';
import {
  type Counted,
  counted,
  doubling,
  exponent,
  held,
  lastExponent,
  type Point,
} from '../../server/tools/hardening/growth.ts';
import { FULL_SIZE, TEXTS, type Text } from '../../server/tools/hardening/hostile-texts.ts';
import { runs } from '../notes/markdown-pieces.ts';
import { incremental } from './pipeline.ts';

const LONG = runs(1) > 1;
const ALL = Object.entries(TEXTS);

let calls = 0;
const salted = (text: Text, size: number): string => text(size, ` ${calls++}`);

it('the measure knows a line from a square, and is not moved by one odd value', () => {
  const series = (cost: (size: number) => number): Point[] =>
    doubling(1000, 6).map((size) => ({ size, cost: cost(size) }));
  expect(exponent(series((n) => 7 * n))).toBeCloseTo(1);
  expect(exponent(series((n) => (n === 4000 ? 90 * n : 7 * n)))).toBeCloseTo(1);
  expect(exponent(series((n) => n * n))).toBeCloseTo(2);
  expect(lastExponent(series((n) => 10_000 * n + n * n))).toBeGreaterThan(1.5);
  expect(held({ a: ['xyz', 'xyz', 1], b: new Map([['k', null]]) })).toBe(16);
});

describe('work grows with the length of', () => {
  const SIZES = doubling(1000, LONG ? 7 : 4);
  const MOST = 1.1;
  /** Statements that a text may take for nothing: tables are made when they are first needed. */
  const SETTING_UP = 20_000;
  let work: Counted;
  beforeAll(async () => {
    work = await counted(fileURLToPath(new URL('pipeline.ts', import.meta.url)), 'incremental');
    for (const [, text] of ALL) work(salted(text, 100));
  }, 300_000);

  it.each(ALL)(
    '%s',
    (_, text) => {
      const points = SIZES.map((size) => ({ size, cost: work(salted(text, size)) }));
      if (points.at(-1)!.cost < SETTING_UP) return;
      expect(exponent(points)).toBeLessThanOrEqual(MOST);
      expect(lastExponent(points)).toBeLessThanOrEqual(MOST);
    },
    runs(60_000),
  );
});

describe('time grows with the length of', () => {
  const SIZES = doubling(2000, LONG ? 6 : 3);
  const MOST = 1.25;
  const ROUNDS = 6;
  const RUNS = 2;
  /** Milliseconds below which a time says nothing. */
  const NOISE = 15;

  const once = (text: Text, size: number): number => {
    const source = salted(text, size);
    const start = process.cpuUsage();
    incremental(source);
    return process.cpuUsage(start).user / 1000;
  };
  const point = (text: Text, size: number): Point => ({
    size,
    cost: Math.min(...Array.from({ length: RUNS }, () => once(text, size))),
  });

  it.each(ALL)(
    '%s',
    (_, text) => {
      // A round that fails is measured again: time that grows with the square fails always.
      let best = Number.POSITIVE_INFINITY;
      for (let round = 0; round < ROUNDS && best > MOST; round++) {
        const points = SIZES.map((size) => point(text, size));
        best = Math.min(best, points.at(-1)!.cost < NOISE ? 0 : exponent(points));
      }
      expect(best).toBeLessThanOrEqual(MOST);
    },
    runs(60_000),
  );
});

describe('what an analysis holds grows with the length of', () => {
  const SIZES = doubling(1000, LONG ? 6 : 4);
  const MOST = 1.1;

  it.each(ALL)(
    '%s',
    (_, text) => {
      const points = SIZES.map((size) => ({ size, cost: held(analyseWhole(salted(text, size))) }));
      expect(exponent(points)).toBeLessThanOrEqual(MOST);
      expect(lastExponent(points)).toBeLessThanOrEqual(MOST);
    },
    runs(60_000),
  );
});

// Run with SIZEWRIGHT_RUNS above 1: these need seconds to minutes.
describe.runIf(LONG)('is read in the end:', () => {
  it.each(Object.entries(FULL_SIZE))(
    '%s',
    (_, { text, mentions, findings }) => {
      const read = incremental(text());
      expect([read.mentions.length, read.findings.length]).toEqual([mentions, findings]);
    },
    600_000,
  );

  it('texts of the size they claim', () => {
    expect(FULL_SIZE['one line of 5 MB'].text().length).toBeGreaterThan(5e6);
    expect(FULL_SIZE['a note of 50 MB'].text().length).toBeGreaterThan(50e6);
  });
});
