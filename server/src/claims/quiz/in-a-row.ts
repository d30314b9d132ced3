/** Matching exercises set in a row: "1 pink 2 green 3 grey with a 20 G b 18 G c 16 G. Key: 1a 2b 3c". */
import { matchesOf } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';
import { LETTERS_FROM, placeOf } from './piece.ts';

/** A label within a line, and where what it labels stands. */
export interface Labelled {
  readonly label: number;
  readonly span: Span;
}

const LABEL = /(?<=^|[\s,;:(|/])\(?(\d{1,2}|[A-Fa-f])[).:]?\s+(?=[^\s,;])/g;
/** Two that count have one of these among them: the first number, or the second letter. */
const OPENS = /(?:^|[\s,;:(|/])\(?[1Bb][).:]?\s/;
/** Behind the number that counts the line comes another first. */
const COUNTS = /(?:^|[\s,;:(|/])\(?\d/;
const LONGEST = 400;
/** The key on the same line, and words that only join the two rows. */
const KEY = /\b(?:key|answers?|solutions?|ans)\b\s*(?:is|are)?\s*[:=–—-]?\s*(?=\(?\d)/i;
const JOINS = /[\s,;./|:(–—-]*(?:\b(?:with|to|and|against|right|from|go|goes|belongs?)\b[\s,;./|:(–—-]*)*$/i;

/** Every label of a line that goes on counting, numbers and letters apart; none where there are not two. `opened`: what counts the line. */
export function labelledIn({ passage }: Read, { start, end }: Span, opened?: number): Labelled[] {
  if (end - start > LONGEST) return [];
  const line = passage.text.slice(start, end);
  if (!(opened === undefined ? OPENS : COUNTS).test(line)) return [];
  const text = line.slice(0, KEY.exec(line)?.index ?? line.length);
  const last = { number: opened ?? 0, letter: LETTERS_FROM - 1 };
  const found = matchesOf(text, LABEL).flatMap((match) => {
    const number = /\d/.test(match[1]!);
    const label = number ? Number(match[1]) : LETTERS_FROM + placeOf(match[1]!);
    const [side, first] = number ? (['number', 1] as const) : (['letter', LETTERS_FROM] as const);
    if (label !== first && label !== last[side] + 1) return [];
    last[side] = label;
    return [{ label, at: match.index, body: match.index + match[0].length }];
  });
  if (found.length === 0 || (found.length < 2 && opened === undefined)) return [];
  if (opened !== undefined && found[0]!.label >= LETTERS_FROM) return [];
  const marks = opened === undefined ? found : [{ label: opened, at: 0, body: 0 }, ...found];
  return marks.map(({ label, body }, i) => ({
    label,
    span: { start: start + body, end: start + bodyEnd(text, body, marks[i + 1]?.at ?? text.length) },
  }));
}

const bodyEnd = (text: string, from: number, to: number): number =>
  Math.max(from, to - (JOINS.exec(text.slice(from, to))?.[0].length ?? 0));

/** "22 G   A. yellow": what a numbered item names, and beside it the first of what it may be joined to. */
const BESIDE = /(?:\s{2,}|\s*[|/–—→…]+\s*|\.{2,}\s*)\(?([A-Fa-f])[).:]\s+(?=\S)/;

export function besideIn({ passage }: Read, { start, end }: Span): Labelled | undefined {
  const text = passage.text.slice(start, end);
  const match = text.length > 120 ? null : BESIDE.exec(text);
  return match && match.index > 0
    ? { label: LETTERS_FROM + placeOf(match[1]!), span: { start: start + match.index, end } }
    : undefined;
}

const JOINED = /(?:^|[\s,;(])(\d{1,2})\s*[-–—=:→)]?\s*\(?([A-Ha-h])\)?(?=[\s,;.)]|$)/g;

/** What a key on the same line gives each number: the letter, and where it stands. */
export function keyInRow({ passage }: Read): ReadonlyMap<number, { answer: string; span: Span }> {
  const { text } = passage;
  const key = text.length > 2 * LONGEST ? null : KEY.exec(text);
  const from = key ? key.index + key[0].length : text.length;
  return new Map(
    matchesOf(text.slice(from), JOINED).map((match) => {
      const end = from + match.index + match[0].length;
      return [Number(match[1]), { answer: match[2]!.toLowerCase(), span: { start: end - 1, end } }];
    }),
  );
}
