/** The entries of an answer section in one line: "1 b, 2 a", "(1) pink; (2) 6 mm", "A1 7-0. A2 silk.", "a) 7 Fr. b) 0.035." */
import { matchesOf } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';
import { compositeNumber, LETTERS_FROM, placeOf, ROMAN, ROMANS_FROM, seriesNumber } from './piece.ts';
import { wordedIn } from './spoken.ts';

export interface Body {
  readonly number: number;
  /** What stands between this number and the next, in the passage's text. */
  readonly span: Span;
}

const OPENER =
  /^[\s*_(>–—-]*(?:(?:(?:(?:model|sample|suggested|short|full|correct|right|my|our|all|the)(?: own)? )?(?:answer key|answers?|key|solutions?|gaps|marking(?: guide| scheme)?)|(?:on the )?(?:back|reverse)(?: side)? of (?:the |this )?(?:card|sheet|page|paper|handout|slide|poster))\b[^:.\n]{0,24}[:.)–—-]?\s*)?/i;
const MARK =
  /(?:^|(?<=[\s,;.(|·/]))(?:(?:q(?:uestion)?|a(?:nswer|ns)|a(?=\s?\d)|no\.|item|#)\s*)?[(*]*([1-9]\d?\.\d{1,2}|\d{1,2}|[b-pr-z][1-9]\d?(?!\d)|[ivx]{1,4}|[a-h])[*]*(?:(\s*[).:=>→–—-]+(?!\d)|,(?=\s))|(?=\s|$))/gi;

interface Mark {
  readonly number: number;
  readonly style: string;
  readonly at: number;
  readonly end: number;
}

/** Entries in their order: numbers that rise one by one and are set off alike. */
export function bodiesIn(text: string, { start, end }: Span): Body[] {
  const line = text.slice(start, end);
  // The bracket or star that ends it opens the first entry: "(2) pink".
  const from = (OPENER.exec(line)?.[0] ?? '').replace(/[\s(*]+$/, '').length;
  const marks = marksIn(line.slice(0, end - start), from);
  const first = marks[0];
  if (!first || line.slice(from, first.at).trim() !== '') return [];
  const chain = [first];
  for (const mark of marks.slice(1)) {
    const last = chain.at(-1)!;
    if (mark.number === last.number + 1 && mark.style === first.style && mark.at >= last.end)
      chain.push(mark);
  }
  return chain.map((mark, i) => ({
    number: mark.number,
    span: { start: start + mark.end, end: start + (chain[i + 1]?.at ?? line.length) },
  }));
}

function marksIn(line: string, from: number): Mark[] {
  return matchesOf(line, MARK).flatMap((match) => {
    const written = match[1]!;
    const style = (match[2] ?? '').trim().slice(0, 1);
    const lettered = /^[a-z]+$/i.test(written);
    // "B2" counts; "c5" within a sentence does not.
    if (/^[a-z]\d/.test(written)) return [];
    // A letter without a bracket or a stop is a word, or the answer itself.
    const numeral = lettered && ROMAN_ENTRY.test(line.slice(match.index, match.index + 12));
    if (match.index < from || (lettered && !numeral && !/[).:]/.test(style))) return [];
    if (style === '' && match.index > from && !opensEntry(line, from, match.index)) return [];
    const number = labelOf(written);
    if (number === undefined) return [];
    return [{ number, style, at: match.index, end: match.index + match[0].length }];
  });
}

/** "ii A": a numeral and the letter of a choice. */
const ROMAN_ENTRY = /^(?:i{1,3}|iv|vi{0,3}|ix|x)(?:\s*[–—-])?\s+\(?(?:[A-F](?=\W|$)|[a-f]\)|true\b|false\b)/i;

function labelOf(written: string): number | undefined {
  const [part, of] = written.split('.');
  if (of !== undefined) return compositeNumber(part!, of);
  if (/^[a-z]/i.test(written) && /\d/.test(written)) return seriesNumber(written[0]!, written.slice(1));
  if (/\d/.test(written)) return Number(written);
  const roman = ROMAN.indexOf(written.toLowerCase());
  if (roman >= 0) return ROMANS_FROM + roman;
  return placeOf(written) < 0 ? undefined : LETTERS_FROM + placeOf(written);
}

/** A bare number opens an entry at the start of the key or after a mark. */
function opensEntry(line: string, from: number, at: number): boolean {
  let i = at - 1;
  while (i >= from && at - i < 6 && /\s/.test(line[i]!)) i--;
  return i < from || /[,;.|·/]/.test(line[i]!);
}

const NUMBERED_TWICE = /\bQ\s?\d{1,2}\b[^\n]{1,200}\bQ\s?\d{1,2}\b/;
/** "Answers: F, T, F, F, T." */
export const SEVERAL_VERDICTS =
  /^\W*(?:answers?\W+|key\W+)?(?:[TFYN]|true|false|yes|no)(?:[\s,;/]{1,3}(?:[TFYN]|true|false|yes|no)\b){2,}/i;
/** A line of numbered answers belongs to several questions. */
export const severalEntries = ({ passage }: Read): boolean => {
  if (wordedIn(passage).length > 0) return true;
  const text = passage.text.slice(0, 400);
  if (NUMBERED_TWICE.test(text) || SEVERAL_VERDICTS.test(text)) return true;
  const bodies = bodiesIn(text, { start: 0, end: text.length });
  return bodies.filter(({ number }) => number < LETTERS_FROM).length >= 2;
};
