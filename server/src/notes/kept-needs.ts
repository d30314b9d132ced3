/**
 * What patterns need (`needed.ts`), found out when the program was built: reading it from some two hundred patterns takes a
 * fresh program longer than reading a paragraph. The table is made from the patterns that common texts meet
 * (`server/tools/pattern-needs.ts`); what it lacks is found out at the first use. Without a build there is none.
 */
import type { Piece } from './needed.ts';

/**
 * For each mix of flags that matters, by a pattern's source: the pieces, each behind a figure for its edges; null for a pattern
 * that needs nothing.
 */
export type KeptNeeds = readonly Readonly<Record<string, readonly string[] | null>>[];

/** Set by the build. */
declare const PATTERN_NEEDS: KeptNeeds | undefined;

/** The mixes of flags that matter: any case or not, and `u` or not. */
export const MIXES = ['', 'i', 'u', 'iu'] as const;
export const mixOf = ({ ignoreCase, unicode }: RegExp): number => (ignoreCase ? 1 : 0) + (unicode ? 2 : 0);

const kept: KeptNeeds = typeof PATTERN_NEEDS === 'undefined' ? MIXES.map(() => ({})) : PATTERN_NEEDS;

/** The pieces that were kept for a pattern, or none where it needs nothing; undefined for one that was not met. */
export function keptFor(pattern: RegExp): readonly Piece[] | undefined {
  const own = kept[mixOf(pattern)]!;
  return Object.hasOwn(own, pattern.source) ? (own[pattern.source] ?? []).map(pieceOf) : undefined;
}

const BEGINS = 1;
const ENDS = 2;

/** As it is kept. */
export const writtenPiece = ({ text, begins, ends }: Piece): string =>
  `${(begins ? BEGINS : 0) + (ends ? ENDS : 0)}${text}`;

function pieceOf(written: string): Piece {
  const edges = Number(written[0]);
  return { text: written.slice(1), begins: (edges & BEGINS) > 0, ends: (edges & ENDS) > 0, open: false };
}
