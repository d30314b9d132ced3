/** A stretch of a passage, and the numbers and letters that stand before questions, choices and answers. */

import { sourceSpan } from '../../notes/index.ts';
import type { Note, Span } from '../../notes/model.ts';
import { firstMatch } from '../../notes/patterns.ts';
import type { Item } from '../text/items.ts';
import type { Read } from '../text/scenes.ts';

/** A stretch of one passage. */
export interface Piece {
  readonly read: Read;
  readonly items: readonly Item[];
  /** In the passage's text. */
  readonly span: Span;
}

/** Index of the first item that begins at or after an offset. */
function firstAt(items: readonly Item[], offset: number): number {
  let low = 0;
  let high = items.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (items[middle]!.start < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

export function piece(read: Read, start: number, end: number): Piece {
  return {
    read,
    span: { start, end },
    items: read.items
      .slice(firstAt(read.items, start), firstAt(read.items, end))
      .filter((item) => item.end <= end),
  };
}

/** A whole passage as a piece. */
export const wholePiece = (read: Read): Piece => piece(read, 0, read.passage.text.length);

/** A piece as it stands in the text. */
export const written = ({ read, span }: Piece): string => read.passage.text.slice(span.start, span.end);

/** Places that letters and roman numerals stand for. */
const PLACES: ReadonlyMap<string, number> = new Map([
  ...[...'abcdef'].map((letter, i) => [letter, i] as const),
  ...['i', 'ii', 'iii', 'iv', 'v', 'vi'].map((numeral, i) => [numeral, i] as const),
]);

/** Place of an option's letter or numeral, from 0; −1 for anything else. */
export const placeOf = (letter: string): number => PLACES.get(letter.toLowerCase()) ?? -1;

/** The number an ordered list writes before the item. */
export function markerNumber(note: Note, read: Read): number | undefined {
  const { list } = read.passage;
  if (!list?.ordered) return undefined;
  // The third choice below question 19 is not question 3.
  if (list.parent !== undefined && note.passages[list.parent]?.list?.ordered) return undefined;
  const start = sourceSpan(read.passage, { start: 0, end: Math.min(1, read.passage.text.length) }).start;
  const match = /(\d{1,3})[.)]\s*\**$/.exec(note.text.slice(Math.max(0, start - 14), start));
  return match ? Number(match[1]) : list.index + 1;
}

/** The number in the first cell of the row that a passage is in, where one stands there alone. */
export function rowNumber({ passages, tables }: Note, { passage: { cell } }: Read): number | undefined {
  if (!cell || cell.row === 0 || cell.column === 0) return undefined;
  const label = passages[tables[cell.table]?.rows[cell.row]?.[0] ?? -1]?.text ?? '';
  const match = /^\W*(?:q(?:uestion)?\s*)?(\d{1,3})[.)]?\W*$/i.exec(label);
  return match ? Number(match[1]) : undefined;
}

/** "Q3.", "3)", "Question 3" at the head of a text. */
export const numberIn = (text: string): number | undefined => {
  if (!/\d/.test(text)) return undefined;
  const parts = firstMatch(/^\s*\(?(?:q(?:uestion)?\s*)?([1-9]\d?)\.(\d{1,2})(?=[\s).:]|$)/i, text);
  if (parts) return compositeNumber(parts[1]!, parts[2]!);
  const own = /^[\s*(]*([A-PR-Z])([1-9]\d?)(?=[\s).:*–—-]|$)/.exec(text);
  if (own) return seriesNumber(own[1]!, own[2]!);
  const match = firstMatch(/^\s*\(?(?:q(?:uestion)?\s*(\d{1,3})|(\d{1,3})[).:])(?=[\s).:]|$)/i, text);
  return match ? Number(match[1] ?? match[2]) : undefined;
};

/** "2.3": the third of part 2. */
export const compositeNumber = (part: string, number: string): number =>
  PARTS_FROM + Number(part) * 100 + Number(number);
const PARTS_FROM = 100_000;

/** "B2", "P3": the second of series B. "Q2" is plainly the second. */
export const seriesNumber = (letter: string, number: string): number =>
  SERIES_FROM + letter.toUpperCase().charCodeAt(0) * 100 + Number(number);
const SERIES_FROM = 300_000;

/** "(iv)": counted by roman numerals. */
export const romanNumber = (text: string): number | undefined => {
  const match = /^\s*\(?([ivx]{1,4})[).:]\s/i.exec(text);
  const value = match ? ROMAN.indexOf(match[1]!.toLowerCase()) : -1;
  return value >= 0 ? ROMANS_FROM + value : undefined;
};
export const ROMAN = ['i', 'ii', 'iii', 'iv', 'v', 'vi', 'vii', 'viii', 'ix', 'x'];
export const ROMANS_FROM = 2000;

/** Whatever counts the line: a number, a letter, a numeral. */
export const labelNumber = (text: string): number | undefined =>
  numberIn(text) ?? letterNumber(text) ?? romanNumber(text);

/** Statements may be counted by letters: "a)" is the first; such numbers are kept apart from figures. */
export const letterNumber = (text: string): number | undefined => {
  const match = /^\s*\(?([a-h])[).:]\s/i.exec(text);
  return match ? LETTERS_FROM + placeOf(match[1]!) : undefined;
};
export const LETTERS_FROM = 1000;

/** "1 Which is finer?": a number and a question, without a stop between. */
export const plainNumber = (head: string): number | undefined => {
  const match = firstMatch(/^\s*(\d{1,2}) +(?:Which|What|How|Name|Give|State|Is|Are|Does|Whose)\b/, head);
  return match ? Number(match[1]) : undefined;
};
