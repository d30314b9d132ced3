/** The cells of a table as texts, read once a row however many of its statements ask for them. */
import type { Note, Passage, Table } from '../../notes/model.ts';
import { remembered } from '../text/remember.ts';

/** The text of a cell; nothing for a cell that is not there. */
export const cellText = (note: Note, index: number | undefined): string =>
  (note.passages[index ?? -1]?.text ?? '').trim();

/** A test of a header and the cell below it, or of the cell alone. */
export type Column = (head: string, cell: string) => boolean;

const textsIn = remembered((_: Note) => new Map<readonly number[], readonly string[]>());

/** The texts of a row or of a header. */
export function textsOf(note: Note, row: readonly number[]): readonly string[] {
  const known = textsIn(note);
  const texts = known.get(row) ?? row.map((index) => cellText(note, index));
  known.set(row, texts);
  return texts;
}

export const tableOf = (note: Note, { cell }: Passage): Table | undefined => cell && note.tables[cell.table];

const columnsIn = remembered((_: Note) => new Map<readonly number[], Map<Column, readonly number[]>>());

/** Does a column of the row, other than that of the statement, pass the test? */
export function besideIn(
  note: Note,
  { rows }: Table,
  { row, column }: NonNullable<Passage['cell']>,
  test: Column,
): boolean {
  const passing = columnsOf(note, rows[0]!, rows[row]!, test);
  return passing.some((at) => at !== column);
}

/** The first two columns that pass: one of them is another than that of the statement. */
function columnsOf(
  note: Note,
  header: readonly number[],
  row: readonly number[],
  test: Column,
): readonly number[] {
  const byRow = columnsIn(note);
  const tests = byRow.get(row) ?? new Map<Column, readonly number[]>();
  byRow.set(row, tests);
  const known = tests.get(test);
  if (known) return known;
  const [heads, cells] = [textsOf(note, header), textsOf(note, row)];
  const passing = heads.flatMap((head, c) => (test(head, cells[c] ?? '') ? [c] : [])).slice(0, 2);
  tests.set(test, passing);
  return passing;
}
