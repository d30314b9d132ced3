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

/** A column that judges the others. */
interface Judge {
  readonly column: number;
  /** The columns that it names in each row below the header, by a word of their headers. */
  readonly named: readonly (readonly number[])[];
  /** What it names is the false one. */
  readonly callsFalse: boolean;
}

const JUDGES = new WeakMap<Table, Judge | 'none'>();

const textsOf = (row: readonly number[], reads: readonly Read[]): string[] =>
  row.slice(0, FEW_COLUMNS).map((index) => reads[index]?.passage.text.trim() ?? '');

function judgeIn(table: Table, reads: readonly Read[]): Judge | undefined {
  const known = JUDGES.get(table);
  if (known !== undefined) return known === 'none' ? undefined : known;
  const [heads, ...rows] = table.rows.length > MOST_ROWS ? [] : table.rows.map((row) => textsOf(row, reads));
  const found = heads && judgeOf(heads, rows);
  JUDGES.set(table, found ?? 'none');
  return found;
}

/** Does one column of a table say which of the others is right? */
export const isJudged = (table: Table, reads: readonly Read[]): boolean =>
  judgeIn(table, reads) !== undefined;

/**
 * "| 1st answer | 2nd answer | Awarded |": the column that is named in a row, counted from the header on, as the right one; -1 where
 * none is. Undefined where nobody judges.
 */
export function decidedIn(table: Table, reads: readonly Read[]): ((row: number) => number) | undefined {
  const judge = judgeIn(table, reads);
  return judge && ((row) => (judge.callsFalse ? undefined : judge.named[row - 1]?.[0]) ?? -1);
}

/** Is the cell under a column that the judge of its row did not name, or named as the false one? */
export function judgedAgainst(
  { tables }: Note,
  reads: readonly Read[],
  { passage: { cell } }: Read,
): boolean {
  const table = cell && tables[cell.table];
  const judge = table && cell.row > 0 ? judgeIn(table, reads) : undefined;
  if (!cell || !judge || judge.column === cell.column) return false;
  const named = judge.named[cell.row - 1]?.includes(cell.column) ?? false;
  if (judge.callsFalse) return named;
  return !named && judge.named.some((columns) => columns.includes(cell.column));
}

function judgeOf(heads: readonly string[], rows: readonly (readonly string[])[]): Judge | undefined {
  if (heads.length < 3 || rows.length < 2) return undefined;
  for (const [column, head] of heads.entries()) {
    const named = rows.map((row) =>
      heads.flatMap((other, c) => (c !== column && names(row[column] ?? '', other) ? [c] : [])),
    );
    if (named.every((columns) => columns.length > 0) && new Set(named.map(([first]) => first)).size > 1)
      return { column, named, callsFalse: CALLS_FALSE.test(head) };
  }
  return undefined;
}
const CALLS_FALSE = /\b(?:lies?|lying|false|wrong|untrue|odd|mistaken?|fibs?)\b/i;

/** "A" under "Who is right" names "Ward A". */
const names = (cell: string, head: string): boolean => {
  const word = cell.replace(/^\W+|\W+$/g, '').toLowerCase();
  return (
    word !== '' &&
    word.length <= LONGEST_NAME &&
    ` ${head.toLowerCase().replace(/[^\p{L}\d]+/gu, ' ')} `.includes(` ${word} `)
  );
};
