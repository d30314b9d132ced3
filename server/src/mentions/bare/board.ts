/** What has been found so far, kept so that a rule can look around it cheaply. */
import type { Span } from '../../notes/model.ts';
import type { System } from '../../sizes/model.ts';
import type { Mention } from '../model.ts';
import type { Surroundings } from '../scene.ts';

/** What the notations found in one passage. */
export interface Written {
  /** In text order. */
  readonly mentions: readonly Mention[];
  /** Spans that name a unit and yet are no size: their numbers are taken. */
  readonly refused: readonly Span[];
}

export interface Board {
  readonly around: Surroundings;
  /** Mentions by passage, in text order. */
  readonly settled: readonly (readonly Mention[])[];
  /** Spans by passage that are known to be something else. */
  readonly refused: readonly (readonly Span[])[];
  /** How often each system occurs in the note. */
  readonly counts: ReadonlyMap<System, number>;
}

const isLength = (system: System): boolean => system === 'millimetre' || system === 'inch';

export function boardOf(around: Surroundings, written: readonly Written[]): Board {
  const counts = new Map<System, number>();
  for (const mention of written.flatMap((one) => one.mentions)) {
    const system = mention.sizes[0]?.system;
    if (system && !isLength(system)) counts.set(system, (counts.get(system) ?? 0) + 1);
  }
  return {
    around,
    settled: written.map((one) => one.mentions),
    refused: written.map((one) => one.refused),
    counts,
  };
}

/** Mentions inside a span of a passage's sorted mentions (binary search, at most `most`). */
export function mentionsIn(sorted: readonly Mention[], span: Span, most = 24): readonly Mention[] {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]!.span.start < span.start) low = middle + 1;
    else high = middle;
  }
  let end = low;
  while (end < sorted.length && end - low < most && sorted[end]!.span.end <= span.end) end++;
  return sorted.slice(low, end);
}

/** Systems of some mentions; lengths say nothing about a bare number. */
export const systemsOf = (mentions: readonly Mention[]): readonly System[] => [
  ...new Set(
    mentions.flatMap((one) => one.sizes.map((size) => size.system)).filter((system) => !isLength(system)),
  ),
];

/** Does a mention hold this value? */
export const holds = (mention: Mention, value: number): boolean =>
  mention.sizes.some((size) => size.value === value && !isLength(size.system));

/** The system most of the note's sizes have, when it is three quarters of them and at least three. */
export function dominant(board: Board): System | undefined {
  const total = [...board.counts.values()].reduce((sum, n) => sum + n, 0);
  const [first] = [...board.counts].sort((a, b) => b[1] - a[1]);
  return first && first[1] >= 3 && first[1] / total >= 0.75 ? first[0] : undefined;
}
