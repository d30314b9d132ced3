/** The sample of faults is drawn fairly, and its score says no more than it knows. */
import { describe, expect, it } from 'vitest';
import { draw, type Fault, faultKey, rangeOf, wilson } from '../../server/tools/hardening/draw.ts';
import { faultsIn } from '../../server/tools/hardening/faults.ts';
import { type Status, statuses, summary } from '../../server/tools/hardening/mutation-sample.ts';

const SOURCE = `const TABLE = ['a', 'b'];
const longer = (a: string) => a.length > 3;
export function pick(a: string): string {
  return longer(a) ? TABLE[0]! : 'none';
}
`;

describe('drawing', () => {
  const list = Array.from({ length: 20 }, (_, i) => i);

  it('takes each at most once, as many as are asked for, and all of a shorter list', () => {
    const drawn = draw(list, 8, 1);
    expect(new Set(drawn).size).toBe(8);
    expect(drawn.every((one) => list.includes(one))).toBe(true);
    expect(draw(list, 50, 3).toSorted((a, b) => a - b)).toEqual(list);
  });

  it('repeats itself for a seed, and not for another', () => {
    expect(draw(list, 8, 1)).toEqual(draw(list, 8, 1));
    expect(draw(list, 8, 1)).not.toEqual(draw(list, 8, 2));
  });

  it('gives each the same chance, wherever it stands', () => {
    const times = list.map(() => 0);
    const draws = 4000;
    for (let seed = 0; seed < draws; seed++) for (const one of draw(list, 5, seed)) times[one]!++;
    // A quarter of 4000 with a standard deviation of 27: five of them on either side.
    for (const count of times) expect(Math.abs(count - draws / 4)).toBeLessThan(137);
  });
});

describe('the interval of a share', () => {
  // Newcombe, R. G. (1998), Two-sided confidence intervals for the single proportion, Statistics in Medicine 17,
  // table I, method 3.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%i of %i', (right, all, low, high) => {
    const found = wilson(right, all);
    expect(found.low).toBeCloseTo(low, 4);
    expect(found.high).toBeCloseTo(high, 4);
  });

  it('is everything while nothing was tried', () => {
    expect(wilson(0, 0)).toEqual({ low: 0, high: 1 });
  });
});

describe('the faults of a file', () => {
  it('are those of what is called; tables and values made at loading are left out', async () => {
    const faults = await faultsIn('a.ts', SOURCE);
    expect(faults.map(({ start }) => start.line).filter((line) => line === 1)).toEqual([]);
    expect(faults.map(({ kind, replacement }) => `${kind} ${replacement}`).sort()).toEqual([
      'BlockStatement {}',
      'ConditionalExpression false',
      'ConditionalExpression true',
      'EqualityOperator a.length <= 3',
      'EqualityOperator a.length >= 3',
      'StringLiteral ""',
    ]);
  });

  it('stand where the text says', async () => {
    const [fault] = (await faultsIn('a.ts', SOURCE)).filter(({ kind }) => kind === 'StringLiteral');
    const { start, end } = fault!;
    expect(SOURCE.split('\n')[start.line - 1]!.slice(start.column, end.column)).toBe("'none'");
    expect(rangeOf(fault!)).toBe('a.ts:4:33-4:39');
  });
});

describe('the score', () => {
  const at = (line: number): Fault => ({
    file: 'stryker.config.js',
    kind: 'StringLiteral',
    start: { line, column: 0 },
    end: { line, column: 3 },
    replacement: '""',
  });
  const faults = [1, 2, 3, 4, 5].map(at);
  const ended: Status[] = ['Killed', 'Timeout', 'Survived', 'NoCoverage', 'Ignored'];
  const reported = (each: Fault, status: Status) => ({
    mutatorName: each.kind,
    replacement: each.replacement,
    status,
    location: { start: { ...each.start, column: 1 }, end: { ...each.end, column: 4 } },
  });

  it('counts what was noticed of what ran, and lists the rest', () => {
    const mutants = faults.map((each, i) => reported(each, ended[i]!));
    const text = summary(faults, statuses({ files: { 'stryker.config.js': { mutants } } }));
    expect(text).toContain('2 of 4 noticed: 50.0 % (95 %: 15.0 to 85.0 %)');
    expect(text).toContain('Survived stryker.config.js:3:1 StringLiteral');
    expect(text).toContain('NoCoverage stryker.config.js:4:1');
    expect(text).toContain('1 more ran while loading');
  });

  it('knows a fault again by all that makes it one', () => {
    expect(faultKey(at(1))).toBe(faultKey(at(1)));
    expect(new Set(faults.map(faultKey)).size).toBe(faults.length);
    expect(faultKey({ ...at(1), replacement: 'x' })).not.toBe(faultKey(at(1)));
  });
});
