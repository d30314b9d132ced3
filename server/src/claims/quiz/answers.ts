/** Answer sections: numbered entries under a heading or a word that says they are the key. */
import type { Note } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';
import { LETTERS_FROM, markerNumber, numberIn, type Piece, piece, placeOf } from './collect.ts';

export interface Entry {
  /** Letter, roman numeral, "true" or "false", lower case. */
  readonly answer: string;
  readonly at: Piece;
}

const KEY_WORDS = /\b(?:answers?|key|solutions|marking (?:guide|scheme))\b/i;
const OPENS_KEY = /^\W*(?:answer key|answers|key|solutions)\b/i;
const ENTRY =
  /(?:^|[\s,;|(/·])(?:(?:q(?:uestion)?|item|no\.|#)\s*)?(\d{1,2})\s*[-–—.:)=→>]*\s*\(?(true|false|[A-FTa-ft]|i{1,3}|iv|vi?)\b(?=[\s,;.|)\-–—:(/·]|$)/gi;
/** "a) false", "b = T". */
const LETTERED_TRUTH = /(?:^|[\n\s,;])\(?([a-h])[).:]?\s*[-–—=:]*\s*(true|false)\b/gi;
const TRUTH_LIST = /\b(true|false)\s*[:=]\s*(\d{1,2}(?:\s*(?:,|and|&)\s*\d{1,2})*)/gi;

/** "True: 1, 2 and 4". */
function readTruthList(read: Read, table: Map<number, Entry>): void {
  for (const match of read.passage.text.matchAll(TRUTH_LIST))
    for (const number of match[2]!.matchAll(/\d+/g))
      add(table, Number(number[0]), match[1]!, piece(read, match.index, match.index + match[0].length));
}

/** "Key to 1: option 3". */
const KEY_TO =
  /\b(?:key|answer) to (?:q(?:uestion)? ?)?(\d{1,2})\s*[:=—–-]\s*(?:option |choice )?([A-Fa-f1-6])\b/gi;
const OPENING = /^\(?(true|false|[A-FTa-ft]|i{1,3}|iv|vi?)\b(?:[).:,;—–-]|\s|$)/i;

/** Question number → what the key says. */
export function answerTable(note: Note, reads: readonly Read[]): ReadonlyMap<number, Entry> {
  const table = new Map<number, Entry>();
  for (const read of reads) if (isKey(note, reads, read)) readEntries(note, read, table);
  for (const { rows } of note.tables)
    readGrid(
      rows.map((row) => row.map((index) => reads[index])),
      table,
    );
  return table;
}

function isKey(note: Note, reads: readonly Read[], read: Read): boolean {
  const { passage } = read;
  if (passage.kind === 'heading') return false;
  const heading = note.passages[passage.path.at(-1) ?? -1]?.text ?? '';
  const lead = passage.list?.leadIn === undefined ? '' : (reads[passage.list.leadIn]?.passage.text ?? '');
  return (
    OPENS_KEY.test(passage.text) ||
    keyHeading(heading) ||
    OPENS_KEY.test(lead) ||
    mostlyEntries(passage.text) ||
    /^\W*(?:true|false)\s*[:=]\s*\d/i.test(passage.text)
  );
}

/** A heading that is about the key, not one that says where the key stands. */
function keyHeading(heading: string): boolean {
  const plain = heading.replace(/\([^)]*\)/g, ' ').trim();
  return (
    KEY_WORDS.test(plain) &&
    plain.split(/\s+/).length <= 6 &&
    !/\b(?:below|bottom|follows?|at the end|best answer|choose|tick)\b/i.test(plain)
  );
}

/** "1b, 2a, 3d": three entries or more and little else. */
function mostlyEntries(text: string): boolean {
  const entries = [...text.matchAll(ENTRY)];
  return entries.length >= 3 && entries.reduce((sum, match) => sum + match[0].length, 0) >= 0.5 * text.length;
}

function readEntries(note: Note, read: Read, table: Map<number, Entry>): void {
  for (const match of read.passage.text.matchAll(ENTRY)) {
    const end = match.index + match[0].length;
    add(table, Number(match[1]), match[2]!, piece(read, end - match[2]!.length, end));
  }
  for (const match of read.passage.text.matchAll(LETTERED_TRUTH)) {
    const end = match.index + match[0].length;
    add(table, LETTERS_FROM + placeOf(match[1]!), match[2]!, piece(read, end - match[2]!.length, end));
  }
  readTruthList(read, table);
  for (const match of read.passage.text.matchAll(KEY_TO)) {
    const end = match.index + match[0].length;
    add(table, Number(match[1]), match[2]!, piece(read, end - match[2]!.length, end));
  }
  const opening = read.passage.list?.ordered ? OPENING.exec(read.passage.text) : null;
  const number = opening ? markerNumber(note, read) : undefined;
  if (opening && number !== undefined) add(table, number, opening[1]!, piece(read, 0, opening[0].length));
}

type Grid = readonly (readonly (Read | undefined)[])[];
const NUMBER_CELL = /^(?:(?:q(?:uestion)?|item|no\.?|#)\s*)?(\d{1,2})[.)]?$/i;
/** A letter alone, or a letter with the choice or a reason after it. */
const ANSWER_CELL = /^\(?(true|false|[A-FTa-ft])\)?(?:\.?$|[.,:;)—–(-]\s*\S|\s+[(—–-]|\s*[,;])/i;
const ANSWER_HEADER =
  /\b(?:answers?|key|correct|right|solutions?|letter|response|choice|verdict|keyed|reply|marked)\b/i;

/** A table of question numbers and answers: beside each other, or one row above the other. */
function readGrid(rows: Grid, table: Map<number, Entry>): void {
  rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      const number = NUMBER_CELL.exec(cell?.passage.text.trim() ?? '');
      if (!number) return;
      const header = rows[0]?.[c + 1]?.passage.text ?? '';
      const beside = r > 0 && (ANSWER_HEADER.test(header) || keyColumn(rows, c)) ? row[c + 1] : undefined;
      const across = NUMBER_CELL.test(row[c + 1]?.passage.text.trim() ?? '') || c > 0;
      const below = across ? answerRow(rows.slice(r + 1))?.[c] : undefined;
      const answer = beside ?? below;
      const text = answer?.passage.text.trim() ?? '';
      const letter =
        ANSWER_CELL.exec(text)?.[1] ?? (beside ? /^\(?([A-Fa-f])\)?\s/.exec(text)?.[1] : undefined);
      if (answer && text !== '' && (letter || beside))
        add(table, Number(number[1]), letter ?? text, piece(answer, 0, answer.passage.text.length));
    });
  });
}

/** Of the rows under a row of numbers: the one that calls itself the key, else the first of letters. */
function answerRow(below: Grid): Grid[number] | undefined {
  const text = (read: Read | undefined) => read?.passage.text.trim() ?? '';
  const named = below.find((row) => ANSWER_HEADER.test(text(row[0])));
  return (
    named ??
    below.find((row) => row.slice(1).every((cell) => text(cell) === '' || ANSWER_CELL.test(text(cell))))
  );
}

/** A column of numbers beside a column of letters is a key whatever its header says. */
function keyColumn(rows: Grid, c: number): boolean {
  const text = (row: Grid[number], column: number) => row[column]?.passage.text.trim() ?? '';
  const body = rows.slice(1).filter((row) => text(row, c) !== '');
  const lettered = body.filter(
    (row) => NUMBER_CELL.test(text(row, c)) && /^\(?(?:[A-FTa-ft]|true|false)\)?\.?$/i.test(text(row, c + 1)),
  );
  return lettered.length >= 2 && lettered.length === body.length;
}

const WORDS: Readonly<Record<string, string>> = { t: 'true' };

function add(table: Map<number, Entry>, number: number, answer: string, at: Piece): void {
  const lower = answer.toLowerCase();
  if (!table.has(number)) table.set(number, { answer: WORDS[lower] ?? lower, at });
}

/** Question number → the passage that answers it in an answer section, or its cell beside the question. */
export function answerPassages(note: Note, reads: readonly Read[]): ReadonlyMap<number, Read> {
  const found = new Map<number, Read>();
  for (const read of reads) {
    const number = isKey(note, reads, read)
      ? (markerNumber(note, read) ?? numberIn(read.passage.text))
      : undefined;
    if (number !== undefined && !found.has(number)) found.set(number, read);
  }
  return found;
}

/** The answer cell of a question's row, under a header that says so. */
export function answerCell(note: Note, reads: readonly Read[], read: Read): Read | undefined {
  const { cell } = read.passage;
  const table = cell && note.tables[cell.table];
  if (!cell || !table || cell.row === 0) return undefined;
  const column = (table.rows[0] ?? []).findIndex(
    (index, c) => c !== cell.column && KEY_WORDS.test(reads[index]?.passage.text ?? ''),
  );
  return column < 0 ? undefined : reads[table.rows[cell.row]?.[column] ?? -1];
}
