/**
 * Long patterns, each asked something cheap first. The engine compiles a pattern at its first use, which for a long one takes
 * longer than reading a paragraph, and most patterns match nothing in the notes of a day. So a text is first looked through
 * for what the pattern cannot be without (`needed.ts`), and the pattern is compiled when a text has that.
 */
import { type KeptNeeds, keptFor, MIXES, mixOf, writtenPiece } from './kept-needs.ts';
import { matchesOf } from './matches.ts';
import { neededBy, type Piece, standsOne } from './needed.ts';

/** What is looked for before a pattern is tried. */
interface Guard {
  readonly pieces: readonly Piece[];
  /** How many more texts may be looked through: in the long run a compiled pattern is the quicker. */
  left: number;
}

const MOST_LOOKS = 200;
const NO_GUARD: Guard = { pieces: [], left: 0 };

/** By a pattern's source, a map for each mix of flags: a pattern in a function is another one each time. */
const guards = MIXES.map(() => new Map<string, Guard>());
const guardsFor = (pattern: RegExp): Map<string, Guard> => guards[mixOf(pattern)]!;

function learn(pattern: RegExp): Guard {
  const pieces = keptFor(pattern) ?? neededBy(pattern.source, pattern.flags) ?? [];
  const guard = pieces.length > 0 ? { pieces, left: MOST_LOOKS } : NO_GUARD;
  guardsFor(pattern).set(pattern.source, guard);
  return guard;
}

/** What the patterns met so far need, for a program to be built with. */
export const learned = (): KeptNeeds =>
  MIXES.map((flags, mix) =>
    Object.fromEntries(
      [...guards[mix]!.keys()].map((source) => [source, neededBy(source, flags)?.map(writtenPiece) ?? null]),
    ),
  );

/** May the pattern match in a text? False when it cannot; true says nothing, but that it is to be tried. */
export function mayMatch(pattern: RegExp, text: string): boolean {
  const guard = guardsFor(pattern).get(pattern.source) ?? learn(pattern);
  if (guard === NO_GUARD) return true;
  if (guard.left-- > 0 && !standsOne(guard.pieces, pattern.ignoreCase ? lowered(text) : text)) return false;
  guardsFor(pattern).set(pattern.source, NO_GUARD);
  return true;
}

/** In lower case. A sign beyond ASCII is no sign of a word and becomes none: two have a letter of ASCII in lower case. */
export const lowered = (text: string): string =>
  (FOLDED.test(text) ? text.replace(/[\u0130\u212a]/g, '\u00d7') : text).toLowerCase();
const FOLDED = /[\u0130\u212a]/;

/** Does the pattern match in a text? For long patterns without `g` and `y`. */
export const finds = (pattern: RegExp, text: string): boolean =>
  mayMatch(pattern, text) && pattern.test(text);

/** The first match of a pattern in a text. For long patterns without `g` and `y`. */
export const firstMatch = (pattern: RegExp, text: string): RegExpExecArray | null =>
  mayMatch(pattern, text) ? pattern.exec(text) : null;

/** Every match of a global pattern, in order. */
export const everyMatch = (pattern: RegExp, text: string): readonly RegExpExecArray[] =>
  mayMatch(pattern, text) ? matchesOf(text, pattern) : [];
