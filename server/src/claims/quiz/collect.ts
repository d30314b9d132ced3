/** Finds the questions of a note that offer choices, with their choices. Keys are matched in `key.ts`. */

import { matchesOf } from '../../notes/index.ts';
import type { Note, Span } from '../../notes/model.ts';
import { finds, firstMatch } from '../../notes/patterns.ts';
import type { Read } from '../text/scenes.ts';
import type { Sentence } from '../text/sentences.ts';
import { OPTION_LEAD } from '../words/frames.ts';
import { endOf, letteredPieces, offeredBefore, tickedLines } from './choices-in.ts';
import { linesOf } from './lines.ts';
import {
  labelNumber,
  letterNumber,
  markerNumber,
  numberIn,
  type Piece,
  piece,
  plainNumber,
  romanNumber,
  wholePiece,
} from './piece.ts';
import { letteredRow, slashed } from './slashed.ts';
import { wordLabel, wordNumber } from './spoken.ts';
import { tabled } from './tabled.ts';

export interface Quiz {
  readonly question: Piece;
  /** Number written before the question, else its place among the note's quizzes. */
  readonly number: number;
  readonly options: readonly Piece[];
  /** Where the question's own lines end in its passage. */
  readonly end: number;
  /** Passage index of the last option. */
  readonly last: number;
}

export function quizzes(note: Note, reads: readonly Read[]): Quiz[] {
  const found: Quiz[] = [];
  for (const read of reads)
    for (const bounds of read.passage.cell ? [] : questionLines(read)) {
      const quiz = quizAt(note, reads, read, bounds, found.length + 1);
      if (quiz) found.push(quiz);
    }
  found.push(...tableQuizzes(note, reads), ...cellQuizzes(note, reads));
  return found;
}

/** Tables with a question, lettered columns and a key: one quiz a row. */
function tableQuizzes(note: Note, reads: readonly Read[]): Quiz[] {
  return note.tables.flatMap(({ rows }) => {
    const header = rows[0]!.map((index) => reads[index]!.passage.text.trim());
    const columns = header.flatMap((text, c) => (/^\(?[A-Fa-f]\)?$/.test(text) ? [c] : []));
    const asking = header.findIndex((text) => /question|stem|item/i.test(text));
    if (columns.length < 2 || asking < 0) return [];
    const counted = header.findIndex((text) => /^(?:#|no\.?|nr\.?|q|number|item)$/i.test(text));
    return rows.slice(1).flatMap((row, r) => {
      const label = counted < 0 ? '' : (reads[row[counted]!]?.passage.text.trim() ?? '');
      const number = /^\d{1,2}$/.test(label) ? Number(label) : -1 - r;
      const question = reads[row[asking]!];
      const options = columns
        .flatMap((c) => reads[row[c]!] ?? [])
        .map((cell) => piece(cell, 0, cell.passage.text.length));
      if (!question || options.length < 2) return [];
      const end = question.passage.text.length;
      return [{ question: piece(question, 0, end), number, options, end, last: question.passage.index }];
    });
  });
}

/** "| 1 | Larger bore: A 18 G, B 22 G |": a row opens with its number, and a cell of it offers lettered choices. */
function cellQuizzes(note: Note, reads: readonly Read[]): Quiz[] {
  return note.tables.flatMap(({ rows }) =>
    rows.slice(1).flatMap((row) => {
      const [label, asked] = row.map((index) => reads[index]);
      const number = labelNumber(`${label?.passage.text.trim() ?? ''}. `);
      if (!asked || number === undefined) return [];
      const whole = { start: 0, end: asked.passage.text.length };
      const end = stemEnd(asked, whole);
      const last = asked.passage.index;
      const own = end < whole.end ? inline(asked, { start: end, end: whole.end }) : undefined;
      if (own) return [{ question: piece(asked, 0, end), number, options: own, end: whole.end, last }];
      const options = row.slice(2).flatMap((index) => offeredIn(reads[index]));
      return options.length < 2
        ? []
        : [{ question: wholePiece(asked), number, options, end: whole.end, last }];
    }),
  );
}

/** "A 22 G, B 18 G, C 16 G": choices in a cell of their own. */
const offeredIn = (read: Read | undefined): Piece[] => {
  const own = read ? letteredPieces(read, { start: 0, end: read.passage.text.length }) : [];
  return own.length > 1 ? own : [];
};

/** Lines that each open with a number are questions of their own; else the passage is one. */
function questionLines(read: Read): Span[] {
  const { text } = read.passage;
  const starts: number[] = [];
  for (let at = 0; at >= 0 && at < text.length; ) {
    const next = text.indexOf('\n', at);
    if (numbered(text.slice(at, at + 14)) || romanAsks(text.slice(at, next < 0 ? text.length : next)))
      starts.push(at);
    at = next < 0 ? -1 : next + 1;
  }
  // "Thickest wire:\n(1) 0.035\n(2) 0.018": choices of the line above.
  const choices = starts.every((at) => CHOICE_LINE.test(text.slice(at, at + 60).split('\n')[0]!));
  if (starts.length > 1 && starts[0]! > 0 && choices) return [{ start: 0, end: text.length }];
  if (starts.length < 2) starts.splice(0, starts.length, ...letteredQuestions(read));
  if (starts.length < 2) return [{ start: 0, end: text.length }];
  return starts.map((start, i) => ({ start, end: starts[i + 1] ?? text.length }));
}

/** Does a number count the line that begins like this? */
const numbered = (head: string): boolean =>
  /\d/.test(head) && (numberIn(head.slice(0, 12)) !== undefined || plainNumber(head) !== undefined);

const CHOICE_LINE = /^\([1-6]\)\s+[^?]{1,40}$/;

/** "ii. Widest? A 10 Fr B 12 Fr": counted by a numeral, and a question. */
const romanAsks = (line: string): boolean =>
  line.includes('?') && romanNumber(line.slice(0, 8)) !== undefined;

/** Lines "A. …?", "B. …?" that each offer choices counted otherwise: questions, not choices. */
function letteredQuestions(read: Read): number[] {
  const lines = linesOf(read).filter(
    ({ start }) => letterNumber(read.passage.text.slice(start, start + 12)) !== undefined,
  );
  const offering = lines.filter(({ start, end }) =>
    /[?:]\s+\(?i[).]\s/i.test(read.passage.text.slice(start, end)),
  );
  return offering.length > 0 && lines.length > 1 ? lines.map(({ start }) => start) : [];
}

function quizAt(
  note: Note,
  reads: readonly Read[],
  read: Read,
  bounds: Span,
  place: number,
): Quiz | undefined {
  if (read.passage.kind === 'cell' || read.passage.kind === 'alt' || read.size === 0) return undefined;
  if (finds(/^\W*(?:answers?|key|ans|correct)\b/i, read.passage.text.slice(bounds.start, bounds.start + 12)))
    return undefined;
  if (
    read.passage.kind === 'heading' &&
    finds(
      /\b(?:true|right|yes) or (?:false|wrong|not|no)\b|\bt ?\/ ?f\b/i,
      read.passage.text.slice(bounds.start, bounds.end),
    )
  )
    return undefined;
  const asking = askingIn(read, bounds);
  if (!asking && read.passage.kind === 'heading' && titles(read)) return undefined;
  const end = stemOf(read, bounds, asking);
  const before = asking && offeredBefore(read, bounds, asking);
  const whole = bounds.end === read.passage.text.length;
  const options =
    inline(read, { start: end, end: bounds.end }) ??
    slashed(read, bounds, asking?.end) ??
    before?.options ??
    (whole && asking ? tickedLines(reads, read, end) : undefined) ??
    (whole ? boxLines(reads, read, end, asking !== undefined) : undefined) ??
    letteredRow(read, bounds) ??
    (whole
      ? (following(reads, read, asking !== undefined) ?? listed(reads, read) ?? tabled(note, reads, read))
      : undefined);
  if (
    !options ||
    options.length < 2 ||
    options.some(asksItself) ||
    answersAlready(options[0]!) ||
    finds(MARKS_EACH, read.passage.text.slice(bounds.start, bounds.end)) ||
    (!asking &&
      !keyedHere(piece(read, bounds.start, end), options) &&
      !testing(note, read) &&
      !(unfinished(read) && options[0]!.read.passage.cell) &&
      !closed(reads, options))
  )
    return undefined;
  const number =
    labelNumber(read.passage.text.slice(bounds.start, bounds.start + 14)) ??
    plainNumber(read.passage.text.slice(bounds.start, bounds.start + 14)) ??
    wordNumber(read.passage.text.slice(bounds.start, bounds.start + 20)) ??
    writtenNumber(note, reads, read) ??
    (asking || testing(note, read) ? place : UNCOUNTED);
  const first = options[0]!;
  const stop = first.read === read ? Math.min(end, first.span.start) : end;
  const from = bounds.start + wordLabel(read.passage.text.slice(bounds.start, bounds.start + 20));
  const own = options === before?.options ? before.question : undefined;
  const question = own ?? piece(read, from, Math.max(stop, from + 1));
  return { question, number, options, end: bounds.end, last: options.at(-1)!.read.passage.index };
}

/** The number of what is neither counted nor asks: no key names it so. */
const UNCOUNTED = -1;

/** "Mark each statement true or false.": what follows is judged one by one, and nothing is chosen. */
const MARKS_EACH =
  /\b(?:each|every|all|these|following|below|statements)\b[^.?!\n]{0,40}\b(?:true|right|correct) or (?:false|wrong|incorrect)\b/i;

/** The last sentence that asks. Most texts have no sign of any, and need not be read for it. */
const askingIn = (read: Read, { start, end }: Span): Sentence | undefined =>
  /[?:]/.test(read.passage.text.slice(start, end))
    ? read.sentences.filter((s) => s.start >= start && s.end <= end && asks(s)).at(-1)
    : undefined;

/** "Threads": what a list below is about. A heading that asks has a number, a word that measures or a mark. */
const titles = ({ passage, items }: Read): boolean =>
  !/[\d:_…]|\b(?:which|what|name|choose|pick|best|true|correct)\b/i.test(passage.text) &&
  !items.some(({ magnitude, axisNoun, colour }) => magnitude ?? axisNoun ?? colour);

/** Lettered choices after a question or a stem they complete; after any other only when an answer line closes them. */
function following(reads: readonly Read[], read: Read, asked: boolean): Piece[] | undefined {
  const pieces = lettered(reads, read);
  const last = pieces?.at(-1)?.read.passage.index;
  if (!pieces || last === undefined || asked || unfinished(read)) return pieces;
  const next = reads[last + 1]?.passage.text ?? '';
  return /^\W*(?:the )?(?:correct |right )?(?:answers?|ans|key|wrong|false)\b/i.test(next) ||
    LETTER_ALONE.test(next) ||
    finds(IS_RIGHT, next)
    ? pieces
    : undefined;
}

/** "The hub of a 20 G cannula is": a stem that its choices complete. */
const unfinished = ({ passage }: Read): boolean =>
  finds(
    /\b(?:is|are|was|were|has|have|the|an?|of|by|to|means?|equals?|measures?|called|about|with|from|in|at)(?:\s*[.…_:]{2,}|\s*…|\s*:)?\s*$/,
    passage.text,
  );

/** A stem ends at its question mark, unless the mark closes the choices: "Which is 21 G: (a) green (b) blue?" */
function stemOf(read: Read, bounds: Span, asking: Sentence | undefined): number {
  const end = stemEnd(read, bounds);
  if (!asking) return end;
  const offers = end < asking.end && inline(read, { start: end, end: asking.end }) !== undefined;
  return offers ? end : asking.end;
}

/** Without a question mark the stem ends where the first lettered choice begins. */
function stemEnd(read: Read, { start, end }: Span): number {
  const text = read.passage.text.slice(start, end);
  if (!MAY_OFFER.test(text)) return end;
  const first = firstMatch(
    /(?:^|[\s;,(])[([]?(?:[Aa]|i)[)\].:]\s+|[.:?]\s(?=A\s?=\s)|\n(?=A,? \S)|:(?=\s+A,? \S)|\s(?=[☐○◯□])|\s(?=\(1\)\s)/u,
    text,
  );
  return first && first.index > 0 ? start + first.index : end;
}

/** What every first choice has; most texts hold none of it. */
const MAY_OFFER = /\b(?:[Aa]|i)[)\].:]\s|\bA[\s,=]|[☐○◯□]|\(1\)/u;

/** Choices that carry a mark of their own are choices even when nothing asks. */
function keyedHere({ items }: Piece, options: readonly Piece[]): boolean {
  const ticked = options.filter(({ read }) => read.passage.list?.checked === true).length;
  const boxes = options.filter(({ read }) => read.passage.list?.checked !== undefined).length;
  const lettered = options.every(({ span }) => span.start > 0);
  const many = items.some(({ word }) => ALL.has(word)) && ticked < boxes;
  return (boxes === options.length && (ticked === 1 || (ticked > 1 && many))) || lettered;
}
const ALL = new Set(['all', 'those', 'every', 'any', 'select', 'tick', 'mark', 'circle', 'choose', 'which']);

const BOX = /^\s*(?:[☐☑☒✅✔✓✗✘○●]|\((?: |x|X|•|✓)?\)|\[(?: |x|X)?\])\s+/u;

/** Lines with a box each, of this passage or of the next. */
function boxLines(reads: readonly Read[], read: Read, from: number, asked: boolean): Piece[] | undefined {
  const own = linesOf(read).filter((line) => line.start >= from);
  const next = reads[read.passage.index + 1];
  const at = own.length > 0 ? read : next && !next.passage.list && asked ? next : undefined;
  if (!at) return undefined;
  const pieces = (at === read ? own : linesOf(at)).map((line) => {
    const box = BOX.exec(at.passage.text.slice(line.start, line.end));
    return box ? piece(at, line.start + box[0].length, line.end) : undefined;
  });
  return pieces.length >= 2 && pieces.length <= 12 && pieces.every((one) => one !== undefined)
    ? (pieces as Piece[])
    : undefined;
}

/** "Answers: a) 5-0 b) 18 G": under these letters stand the answers to several questions. */
const answersAlready = ({ read, span }: Piece): boolean =>
  finds(
    /\b(?:answers?|key|solutions?)\b[^\n]{0,12}\(?[Aai]\)?\W*$/i,
    read.passage.text.slice(Math.max(0, span.start - 40), span.start),
  );

/** "a) Which leaves the larger hole?": lettered questions are no choices. */
const asksItself = ({ read, span }: Piece): boolean =>
  read.sentences.some(({ start, end, close }) => close === '?' && start >= span.start && end <= span.end);

/** An answer line right below the choices. */
function closed(reads: readonly Read[], options: readonly Piece[]): boolean {
  const next = reads[(options.at(-1)?.read.passage.index ?? reads.length) + 1];
  const text = next?.passage.text ?? '';
  return finds(KEY_BELOW, text) || LETTER_ALONE.test(text) || finds(IS_RIGHT, text);
}
/** "b is right, because …", "B. The point …". */
const IS_RIGHT =
  /^\W*(?:\(?[a-f]\)? (?:is|was) (?:right|correct|the answer|true|best)|[A-F]\.? (?=[A-Z]|because|since|as ))\b/;
const LETTER_ALONE = /^\W*[a-f]\W*$/i;
const KEY_BELOW = /^\W*(?:the )?(?:correct |right )?(?:answers?|ans|key|wrong|false)\b\W*\(?[a-f1-6]\b/i;

/** Stands under a heading of a test. */
const testing = (note: Note, read: Read): boolean =>
  finds(
    /\b(?:quiz|questions?|tests?|exam|mcqs?|answers?|key|check yourself|to finish|have a go|revision|assessment|self-check)\b/i,
    note.passages[read.passage.path.at(-1) ?? -1]?.text ?? '',
  );

const asks = (sentence: Sentence): boolean =>
  sentence.close === '?' ||
  (sentence.items.at(-1)?.word === ':' &&
    OPTION_LEAD.test(sentence.items.map((item) => item.word).join(' ')));

/** "Which is thinnest? A) 18 G B) 20 G C) 22 G" in one passage. */
function inline(read: Read, within: Span): Piece[] | undefined {
  const pieces = letteredPieces(read, within);
  return pieces.length >= 2 ? pieces : boxedPieces(read, within);
}

const EMPTY_BOX = /[☐○◯□☑☒]\s*(?=\S)/gu;

/** "nylon is ☐ natural ☐ synthetic": a box in front of each. */
function boxedPieces(read: Read, { start, end }: Span): Piece[] | undefined {
  const text = read.passage.text.slice(start, end);
  const boxes = text.includes('\n') ? [] : matchesOf(text, EMPTY_BOX);
  // "☐ T ☑ F" keys what stands before it.
  if (boxes.length < 2 || /[☐○◯□☑☒]\s*T(?:rue)?\b\W*F(?:alse)?\W*$/iu.test(text)) return undefined;
  return boxes.map((box, i) =>
    piece(read, start + box.index + box[0].length, start + (boxes[i + 1]?.index ?? text.length)),
  );
}

/** Lettered lines in the passages that follow, until something else comes. */
function lettered(reads: readonly Read[], read: Read): Piece[] | undefined {
  const pieces: Piece[] = [];
  for (let i = read.passage.index + 1; i < reads.length && i <= read.passage.index + 6; i++) {
    const next = reads[i]!;
    if (next.passage.list && !leads(read, next) && !sameItem(read, next) && pieces.length === 0) break;
    if (finds(KEY_OPENS, next.passage.text)) break;
    const own = letteredPieces(next, { start: 0, end: next.passage.text.length }, pieces.length);
    if (own.length === 0 || OWN_STEM.test(next.passage.text.slice(0, own[0]!.span.start))) break;
    pieces.push(...own);
  }
  return pieces.length >= 2 ? pieces : undefined;
}

/** Choices behind a question of their own answer that one. */
const OWN_STEM = /\?|^\W*(?:\d{1,2}[.)]\s*)?(?:which|what|how)\b/i;
const KEY_OPENS = /^\W*(?:(?:right |correct |model )?answers?|key|ans|solutions?)\b/i;

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
    const marked = /^\(?(?:[A-Fa-f]|i{1,3}|iv|vi?)[).:]\s+/.exec(passage.text)?.[0].length ?? 0;
    const line = passage.text.indexOf('\n', marked);
    pieces.push(piece(reads[i]!, marked, endOf(passage.text, marked, line < 0 ? passage.text.length : line)));
  }
  return pieces.length >= 2 ? pieces : undefined;
}

/** Another paragraph of the same list item. */
const sameItem = (a: Read, b: Read) =>
  a.passage.list !== undefined &&
  a.passage.list.list === b.passage.list?.list &&
  a.passage.list.index === b.passage.list?.index;

/** The list's lead-in, the item it is nested in, or the heading right above it. */
function leads(read: Read, first: Read): boolean {
  const { list, index } = first.passage;
  const own = read.passage.index;
  return (
    list?.leadIn === own ||
    list?.parent === own ||
    (read.passage.kind === 'heading' && index === own + 1) ||
    // A numbered question whose choices follow as a list of their own, not indented.
    (read.passage.list?.ordered === true &&
      index === own + 1 &&
      list?.index === 0 &&
      list.list !== read.passage.list.list)
  );
}

/** The number in the list marker, or in the heading right above. */
function writtenNumber(note: Note, reads: readonly Read[], read: Read): number | undefined {
  const own = markerNumber(note, read);
  if (own !== undefined) return own;
  const heading = note.passages[read.passage.path.at(-1) ?? -1];
  const previous = reads[read.passage.index - 1]?.passage;
  return heading && previous === heading ? numberIn(heading.text) : undefined;
}
