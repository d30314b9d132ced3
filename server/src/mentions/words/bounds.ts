/** Bounds and approximation: "≥18 G", "18G+", "at least 18 G", "about 4.7 mm". */
import { finds } from '../../notes/patterns.ts';
import type { System } from '../../sizes/model.ts';
import type { Mention } from '../model.ts';

type Bound = NonNullable<Mention['bound']>;

const BEFORE: readonly (readonly [Bound, RegExp])[] = [
  [
    'at-least',
    /(?:≥|>=|\bat least|\bno (?:smaller|thinner|less|finer) than|\bminimum(?: of)?|\bor larger than)(?:\s(?:an?|the))?\s?$/i,
  ],
  [
    'at-most',
    /(?:≤|<=|\bat most|(?<!\b(?:go|goes|going|went|gone|move|moves|moving|step|stepping|steps|stepped|jump|jumps|drop|change|changing)\s)\bup to|\bno (?:larger|bigger|thicker|more) than|\bmaximum(?: of)?)(?:\s(?:an?|the))?\s?$/i,
  ],
  ['more-than', />\s?$/i],
  ['less-than', /<\s?$/i],
];

const AFTER: readonly (readonly [Bound, RegExp])[] = [
  ['at-least', /^(?:\+|\s(?:or|and) (?:larger|bigger|wider|thicker|above|up|more|better)\b)/i],
  ['at-most', /^\s(?:or|and) (?:smaller|thinner|finer|narrower|below|less|under)\b/i],
];

/** A bound beside a size; undefined when it stands alone. */
export function boundOf(before: string, after: string, text: string): Bound | undefined {
  if (text.endsWith('+')) return 'at-least';
  const front = before.slice(-40);
  if (/[0-9](?:\s?[A-Za-z]{1,8}|-0)?\s?[<>]\s?$/.test(front)) return undefined;
  const back = after.slice(0, 24);
  return (
    BEFORE.find(([, pattern]) => finds(pattern, front))?.[0] ??
    AFTER.find(([, pattern]) => finds(pattern, back))?.[0]
  );
}

const ABOUT =
  /(?:[~≈∼±]|\b(?:about|around|roughly|approximately|approx\.?|circa|ca\.?|close to|nearly|almost|just (?:over|under|shy of)|near(?:ly)?|not quite|or so|give or take|a hair (?:over|under)|a shade (?:over|under)))(?:\s(?:an?|the))?\s?$/i;

/** "Some 18g needles" are a few of them; "some 4 mm" is about as much. */
const SOME_LENGTH = /\bsome\s$/i;

/** Is a size said to be about so much? */
export const approximate = (before: string, system: System): boolean =>
  finds(ABOUT, before.slice(-32)) ||
  ((system === 'millimetre' || system === 'inch') && SOME_LENGTH.test(before.slice(-8)));
