/**
 * Columns that say different things, and one that names which of them is right: "| Team Red says | Team Blue says | Point to |". What
 * stands under the others was said by somebody, and is not taught.
 */
import type { Note, Table } from '../../notes/model.ts';
import type { Read } from './reads.ts';

/** A table that is set out to be judged is short and narrow. */
const MOST_ROWS = 60;
const FEW_COLUMNS = 12;
/** What names a column is a word or two. */
const LONGEST_NAME = 16;

/** The column that names others by a word of their headers; -1 where there is none. */
const JUDGES = new WeakMap<Table, number>();

const textsOf = (row: readonly number[], reads: readonly Read[]): string[] =>
  row.slice(0, FEW_COLUMNS).map((index) => reads[index]?.passage.text.trim() ?? '');

/** The column of a table that says which of its other columns is right; -1 where there is none. */
export function judgeColumn(table: Table, reads: readonly Read[]): number {
  const known = JUDGES.get(table);
  if (known !== undefined) return known;
  const [heads, ...rows] = table.rows.length > MOST_ROWS ? [] : table.rows.map((row) => textsOf(row, reads));
  const found = heads ? judgeOf(heads, rows) : -1;
  JUDGES.set(table, found);
  return found;
}

/** "| 1st answer | 2nd answer | Awarded |": the column that the judge of a row names; undefined where nobody judges. */
export function decidedIn(
  table: Table,
  reads: readonly Read[],
): ((row: readonly number[]) => number) | undefined {
  const judge = judgeColumn(table, reads);
  if (judge < 0) return undefined;
  const heads = textsOf(table.rows[0]!, reads);
  return (row) => {
    const named = textsOf(row, reads)[judge] ?? '';
    return CALLS_FALSE.test(heads[judge]!)
      ? -1
      : heads.findIndex((head, c) => c !== judge && names(named, head));
  };
}

/** Is the cell under a column that the judge of its row did not name, or named as the false one? */
export function judgedAgainst(note: Note, reads: readonly Read[], { passage: { cell } }: Read): boolean {
  const table = cell && note.tables[cell.table];
  if (!cell || !table || cell.row === 0) return false;
  const judge = judgeColumn(table, reads);
  if (judge < 0 || judge === cell.column) return false;
  const texts = (row: number): string[] => textsOf(table.rows[row]!, reads);
  const heads = texts(0);
  const own = heads[cell.column] ?? '';
  const named = names(texts(cell.row)[judge] ?? '', own);
  if (CALLS_FALSE.test(heads[judge]!)) return named;
  return !named && table.rows.some((_, r) => r > 0 && names(texts(r)[judge] ?? '', own));
}
const CALLS_FALSE = /\b(?:lies?|lying|false|wrong|untrue|odd|mistaken?|fibs?)\b/i;

function judgeOf(heads: readonly string[], rows: readonly (readonly string[])[]): number {
  if (heads.length < 3 || rows.length < 2) return -1;
  return heads.findIndex((_, column) => {
    const named = rows.map((row) =>
      heads.findIndex((head, c) => c !== column && names(row[column] ?? '', head)),
    );
    return named.every((c) => c >= 0) && new Set(named).size > 1;
  });
}

/** "A" under "Who is right" names "Ward A". */
const names = (cell: string, head: string): boolean => {
  const word = cell.replace(/^\W+|\W+$/g, '').toLowerCase();
  return (
    word !== '' &&
    word.length <= LONGEST_NAME &&
    ` ${head.toLowerCase().replace(/[^\p{L}\d]+/gu, ' ')} `.includes(` ${word} `)
  );
};
