/** Finds the questions of a note that offer choices, with their choices. Keys are matched in `key.ts`. */
import { sourceSpan } from '../../notes/index.ts';
import type { Note, Span } from '../../notes/model.ts';
import type { Item } from '../text/items.ts';
import type { Read } from '../text/scenes.ts';
import type { Sentence } from '../text/sentences.ts';
import { OPTION_LEAD } from '../words/frames.ts';

/** A stretch of one passage. */
export interface Piece {
  readonly read: Read;
  readonly items: readonly Item[];
  /** In the passage's text. */
  readonly span: Span;
}

export interface Quiz {
  readonly question: Piece;
  /** Number written before the question, else its place among the note's quizzes. */
  readonly number: number;
  readonly options: readonly Piece[];
  /** Passage index of the last option. */
  readonly last: number;
}

const LETTER = /(^|[\s;,])\(?([A-Fa-f])[).:]\s+/g;

export function quizzes(note: Note, reads: readonly Read[]): Quiz[] {
  const found: Quiz[] = [];
  for (const read of reads) {
    const quiz = quizAt(note, reads, read, found.length + 1);
    if (quiz) found.push(quiz);
  }
  return found;
}

function quizAt(note: Note, reads: readonly Read[], read: Read, place: number): Quiz | undefined {
  if (read.passage.kind === 'cell' || read.passage.kind === 'alt' || read.items.length === 0)
    return undefined;
  const asking = read.sentences.filter(asks).at(-1);
  const end = asking?.end ?? stemEnd(read);
  const options = inline(read, end) ?? lettered(reads, read) ?? listed(reads, read);
  if (!options || options.length < 2 || (!asking && !keyedHere(options))) return undefined;
  const number = writtenNumber(note, reads, read) ?? place;
  return { question: stem(read, end), number, options, last: options.at(-1)!.read.passage.index };
}

/** The question with what leads to it, without a number or a speaker in front. */
const stem = (read: Read, end: number): Piece => piece(read, 0, Math.max(end, 1));

/** Without a question mark the stem ends where the first lettered choice begins. */
function stemEnd(read: Read): number {
  const first = /(?:^|[\s;,(])\(?[Aa][).:]\s+/.exec(read.passage.text);
  return first && first.index > 0 ? first.index : read.passage.text.length;
}

/** Choices that carry a mark of their own are choices even when nothing asks. */
function keyedHere(options: readonly Piece[]): boolean {
  const ticked = options.filter(({ read }) => read.passage.list?.checked === true).length;
  const boxes = options.filter(({ read }) => read.passage.list?.checked !== undefined).length;
  const lettered = options.every(({ span }) => span.start > 0);
  return (boxes === options.length && ticked === 1) || lettered;
}

const asks = (sentence: Sentence): boolean =>
  sentence.close === '?' ||
  (sentence.items.at(-1)?.word === ':' &&
    OPTION_LEAD.test(sentence.items.map((item) => item.word).join(' ')));

/** "Which is thinnest? A) 18 G B) 20 G C) 22 G" in one passage. */
function inline(read: Read, end: number): Piece[] | undefined {
  const pieces = letteredPieces(read, end);
  return pieces.length >= 2 ? pieces : undefined;
}

/** Lettered lines in the passages that follow, until something else comes. */
function lettered(reads: readonly Read[], read: Read): Piece[] | undefined {
  const pieces: Piece[] = [];
  for (let i = read.passage.index + 1; i < reads.length && i <= read.passage.index + 6; i++) {
    const next = reads[i]!;
    const own = letteredPieces(next, 0, pieces.length);
    if (own.length === 0) break;
    pieces.push(...own);
  }
  return pieces.length >= 2 ? pieces : undefined;
}

function letteredPieces(read: Read, from: number, already = 0): Piece[] {
  const text = read.passage.text;
  const starts: { at: number; body: number }[] = [];
  for (const match of text.slice(from).matchAll(LETTER)) {
    const wanted = String.fromCharCode(97 + already + starts.length);
    if (match[2]!.toLowerCase() !== wanted) continue;
    starts.push({ at: from + match.index, body: from + match.index + match[0].length });
  }
  if (starts.length === 0 || (already > 0 && starts[0]!.at > 2)) return [];
  return starts.map(({ body }, i) => piece(read, body, endOf(text, body, starts[i + 1]?.at ?? text.length)));
}

/** An option ends before a key that stands on the same lines. */
function endOf(text: string, body: number, end: number): number {
  const key = /(?:\n|\s[-—–(*]?)\s*\**(?:answer|key|correct)\b/i.exec(text.slice(body, end));
  return key ? body + key.index : end;
}

export function piece(read: Read, start: number, end: number): Piece {
  return {
    read,
    span: { start, end },
    items: read.items.filter((item) => item.start >= start && item.end <= end),
  };
}

/** A list that the question leads into, or that is nested in the question's own item. */
function listed(reads: readonly Read[], read: Read): Piece[] | undefined {
  const index = read.passage.index;
  const pieces: Piece[] = [];
  let list: number | undefined;
  for (let i = index + 1; i < reads.length && i <= index + 8; i++) {
    const { passage } = reads[i]!;
    if (!passage.list || (list !== undefined && passage.list.list !== list)) break;
    if (list === undefined && !leads(read, reads[i]!)) break;
    list = passage.list.list;
    const marked = /^\(?[A-Fa-f][).:]\s+/.exec(passage.text)?.[0].length ?? 0;
    pieces.push(piece(reads[i]!, marked, passage.text.length));
  }
  return pieces.length >= 2 ? pieces : undefined;
}

/** The list's lead-in, the item it is nested in, or the heading right above it. */
function leads(read: Read, first: Read): boolean {
  const { list, index } = first.passage;
  const own = read.passage.index;
  return (
    list?.leadIn === own || list?.parent === own || (read.passage.kind === 'heading' && index === own + 1)
  );
}

/** "Q3.", "3)", "Question 3" at the passage's head, in its list marker, or in the heading right above. */
function writtenNumber(note: Note, reads: readonly Read[], read: Read): number | undefined {
  const own = numberIn(read.passage.text) ?? markerNumber(note, read);
  if (own !== undefined) return own;
  const heading = note.passages[read.passage.path.at(-1) ?? -1];
  const previous = reads[read.passage.index - 1]?.passage;
  return heading && previous === heading ? numberIn(heading.text) : undefined;
}

/** The number an ordered list writes before the item. */
export function markerNumber(note: Note, read: Read): number | undefined {
  if (!read.passage.list?.ordered) return undefined;
  const start = sourceSpan(read.passage, { start: 0, end: Math.min(1, read.passage.text.length) }).start;
  const line = note.text.slice(Math.max(0, start - 12), start);
  const match = /(\d{1,3})[.)]\s*$/.exec(line);
  return match ? Number(match[1]) : read.passage.list.index + 1;
}

export const numberIn = (text: string): number | undefined => {
  const match = /^\s*\(?(?:q(?:uestion)?\s*(\d{1,3})|(\d{1,3})[).:])(?=[\s).:]|$)/i.exec(text);
  return match ? Number(match[1] ?? match[2]) : undefined;
};
