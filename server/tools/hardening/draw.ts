/**
 * A fair sample of the faults that could be put into a room, and what its score says about all of them. Every fault that is
 * made while the code runs has the same chance; those in values made at loading, which are tables, are not drawn.
 */
import { Chance } from './random.ts';

export interface Place {
  /** From 1. */
  readonly line: number;
  /** From 0. */
  readonly column: number;
}

/** A small fault: what stands at a place, and what is put there instead. */
export interface Fault {
  readonly file: string;
  readonly kind: string;
  readonly start: Place;
  readonly end: Place;
  readonly replacement: string;
}

/** Two faults are the same one when they put the same text in the same place. */
export const faultKey = ({ file, kind, start, end, replacement }: Fault): string =>
  JSON.stringify([file, kind, start.line, start.column, end.line, end.column, replacement]);

/** `count` of the list, each with the same chance and at most once; all of a shorter list. The same seed draws the same ones. */
export function draw<Item>(list: readonly Item[], count: number, seed: number): Item[] {
  const chance = new Chance(seed);
  const rest = [...list];
  const drawn: Item[] = [];
  while (drawn.length < count && rest.length > 0) {
    const at = chance.below(rest.length);
    drawn.push(rest[at]!);
    rest[at] = rest.at(-1)!;
    rest.pop();
  }
  return drawn;
}

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** Where a share lies of which `right` of `all` were seen, at 95 % (Wilson 1927, the score interval). */
export function wilson(right: number, all: number): Interval {
  if (all === 0) return { low: 0, high: 1 };
  const z = 1.959964;
  const share = right / all;
  const middle = (share + (z * z) / (2 * all)) / (1 + (z * z) / all);
  const half = (z / (1 + (z * z) / all)) * Math.sqrt((share * (1 - share)) / all + (z * z) / (4 * all * all));
  return { low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}

/** Where a fault stands, as the tool that puts it in is told: columns from 0, the end left out. */
export const rangeOf = ({ file, start, end }: Fault): string =>
  `${file}:${start.line}:${start.column}-${end.line}:${end.column}`;
