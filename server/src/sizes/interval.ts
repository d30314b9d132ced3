/** Lengths in millimetres with what gives them: making, joining and comparing. */
import type { Confidence, Designated, Interval, SourceKey } from './model.ts';

const RANK: readonly Confidence[] = ['confirmed', 'single-source', 'common-practice', 'memory'];

/** The weaker of several confidences: a joined value is as sure as its least sure part. */
export const weakest = (all: readonly Confidence[]): Confidence =>
  all.reduce<Confidence>((a, b) => (RANK.indexOf(b) > RANK.indexOf(a) ? b : a), 'confirmed');

export const distinct = <T>(all: readonly T[]): T[] => [...new Set(all)];

/** The shortest interval that holds all of them; the first one's nominal value is kept. */
export function union<T extends Interval>(
  parts: readonly [T, ...Interval[]],
  standard?: string,
  caution?: string,
): T;
export function union(parts: readonly Interval[], standard?: string, caution?: string): Interval | undefined;
export function union(parts: readonly Interval[], standard?: string, caution?: string): Interval | undefined {
  const first = parts[0];
  if (!first) return undefined;
  const cautions = distinct([caution, ...parts.map((p) => p.caution)].filter((c) => c !== undefined));
  return {
    min: Math.min(...parts.map((p) => p.min)),
    max: Math.max(...parts.map((p) => p.max)),
    ...(first.nominal === undefined ? {} : { nominal: first.nominal }),
    standard: standard ?? distinct(parts.map((p) => p.standard)).join(', '),
    sources: distinct(parts.flatMap((p) => p.sources)),
    confidence: weakest(parts.map((p) => p.confidence)),
    ...(cautions.length > 0 ? { caution: cautions.join('; ') } : {}),
  };
}

/** An exact length. */
export const exact = (mm: number, standard: string, sources: readonly SourceKey[]): Designated => ({
  min: mm,
  max: mm,
  nominal: mm,
  standard,
  sources,
  confidence: 'confirmed',
});

const CLOSE = 1e-9;
export const isDesignated = (i: Interval | undefined): i is Designated => i?.nominal !== undefined;
export const isPoint = (i: Interval): boolean => i.max - i.min <= CLOSE;
export const overlaps = (a: Interval, b: Interval): boolean =>
  a.min <= b.max + CLOSE && b.min <= a.max + CLOSE;
/** Is the length inside, binary noise aside? */
export const contains = (i: Interval, mm: number): boolean => mm >= i.min - CLOSE && mm <= i.max + CLOSE;

/** Up to `digits` decimals, no trailing zeros. */
export const decimals = (value: number, digits: number): string => String(Number(value.toFixed(digits)));
const fine = (mm: number): string => decimals(mm, mm < 1 ? 3 : 2);
/** "0.3–0.349 mm" or "4.67 mm". */
export const mmText = (i: Interval): string =>
  fine(i.min) === fine(i.max) ? `${fine(i.min)} mm` : `${fine(i.min)}–${fine(i.max)} mm`;
/** One length: "4.67 mm". */
export const oneMm = (mm: number): string => `${fine(mm)} mm`;
