/**
 * Patterns of files in settings. A course may come from anybody, so what could keep a matcher busy for hours is refused,
 * and signs that some matchers take for regular expressions stand for themselves.
 */

import { type Phrase, phrase } from '../../texts/index.ts';
import { PATTERN } from '../texts/settings.ts';

const LONGEST = 200;
/** Each star may be tried at every character of a path, so few keep the work small. */
const STARS = 3;
const DOUBLE_STARS = 3;
const BRACES = 2;

const countOf = (pattern: string, sign: RegExp): number => pattern.match(sign)?.length ?? 0;

/** Stars that stand for a stretch of a name; double stars aside. */
const stars = (pattern: string): number => countOf(pattern, /\*+/g) - doubleStars(pattern);
const doubleStars = (pattern: string): number => countOf(pattern, /\*\*+/g);

/** Why a pattern is refused; undefined when it is not. */
export function refusal(pattern: string): Phrase | undefined {
  if (pattern.length > LONGEST) return phrase(PATTERN.long, { most: LONGEST });
  if (stars(pattern) > STARS) return phrase(PATTERN.stars, { most: STARS });
  if (doubleStars(pattern) > DOUBLE_STARS) return phrase(PATTERN.doubleStars, { most: DOUBLE_STARS });
  if (countOf(pattern, /\{/g) > BRACES) return phrase(PATTERN.braces, { most: BRACES });
  return undefined;
}

/** The pattern with round brackets, bars and plus signs as themselves: they are parts of names here. */
export const literalSigns = (pattern: string): string =>
  pattern.replace(/\\?[()|+]/g, (sign) => `\\${sign.at(-1)}`);

/** Whether a line of an ignore file can be matched in short time; the matcher of those lines is slower. */
export const isTame = (line: string): boolean =>
  line.length <= 1000 && stars(line) <= STARS && doubleStars(line) < DOUBLE_STARS;
