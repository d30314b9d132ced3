/** A stretch of a passage, and the numbers and letters that stand before questions, choices and answers. */
import { sourceSpan } from '../../notes/index.ts';
import type { Note, Span } from '../../notes/model.ts';
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

/** "Q3.", "3)", "Question 3" at the head of a text. */
export const numberIn = (text: string): number | undefined => {
  const match = /^\s*\(?(?:q(?:uestion)?\s*(\d{1,3})|(\d{1,3})[).:])(?=[\s).:]|$)/i.exec(text);
  return match ? Number(match[1] ?? match[2]) : undefined;
};

/** Statements may be counted by letters: "a)" is the first; such numbers are kept apart from figures. */
export const letterNumber = (text: string): number | undefined => {
  const match = /^\s*\(?([a-h])[).:]\s/i.exec(text);
  return match ? LETTERS_FROM + placeOf(match[1]!) : undefined;
};
export const LETTERS_FROM = 1000;
