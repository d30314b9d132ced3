/**
 * How work grows with the length of what is read. Work is counted, not timed, so that every machine and every run says
 * the same: each statement, function and branch of ours and of the parser counts as one. What runs inside one statement,
 * such as a pattern or a copy, is not seen here; that is timed.
 */
import { instrumented } from './instrument.ts';

export interface Point {
  readonly size: number;
  /** Statements, milliseconds or bytes. */
  readonly cost: number;
}

/** The exponent between two points: 1 is linear, 2 the square. */
const slope = (from: Point, to: Point): number =>
  Math.log(Math.max(to.cost, 1) / Math.max(from.cost, 1)) / Math.log(to.size / from.size);

export const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
};

/**
 * The exponent of a series, growing in size: the median over all pairs, which one odd value does not move
 * (Theil 1950, Sen 1968, on logarithms).
 */
export function exponent(points: readonly Point[]): number {
  return median(points.flatMap((from, i) => points.slice(i + 1).map((to) => slope(from, to))));
}

/** The exponent at the large end, where a square that was small at first shows. */
export function lastExponent(points: readonly Point[]): number {
  return slope(points.at(-2)!, points.at(-1)!);
}

/** `count` lengths from `first`, each twice the one before. */
export const doubling = (first: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => first * 2 ** i);

/** Reads a text and says how many statements ran. */
export type Counted = (text: string) => number;

/** Counts the statements that calls of an export of `entry` run. */
export async function counted(entry: string, name: string): Promise<Counted> {
  const counting = { statements: true, parser: true };
  const { exports, counts } = await instrumented<Record<string, (text: string) => unknown>>(entry, counting);
  return (text) => {
    counts.fill(0);
    exports[name]!(text);
    return counts.reduce((sum, count) => sum + count, 0);
  };
}

/** Fields, entries and characters that can be reached from a value, each object and each string once. */
export function held(root: unknown): number {
  const seen = new Set<unknown>();
  const open = [root];
  let units = 0;
  while (open.length > 0) {
    const value = open.pop();
    if (seen.has(value)) continue;
    if (typeof value === 'string') units += value.length;
    else if (typeof value !== 'object' || value === null) continue;
    else {
      const inside = value instanceof Map || value instanceof Set ? [...value] : Object.values(value);
      units += 1 + inside.length;
      for (const each of inside) open.push(each);
    }
    seen.add(value);
  }
  return units;
}
