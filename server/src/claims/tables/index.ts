/** What the rows and columns of a table assert: equal sizes in one row, hub colours, materials, order down a column. */
import type { Note } from '../../notes/model.ts';
import { ofAnimals } from '../constructions/usual.ts';
import type { Claim } from '../model.ts';
import type { Read } from '../text/scenes.ts';
import { colours } from './colours.ts';
import { comparisons, picks, signed, verdicts } from './compared.ts';
import { directions } from './directions.ts';
import { fits } from './fits.ts';
import { flows } from './flows.ts';
import { type Grid, gridOf, type Row, sectioned, upright } from './grid.ts';
import { learned } from './learned.ts';
import { looseRows } from './loose.ts';
import { headedMaterials, properties } from './materials.ts';
import { columnOrders, rankings, rowOrders } from './orders.ts';
import { rowReferences } from './rows.ts';
import { usuals } from './usual.ts';
import { equivalences } from './values.ts';
import { writings } from './writings.ts';

export function readTables(note: Note, reads: readonly Read[]): Claim[] {
  return note.tables.flatMap((table) => {
    const set = gridOf(note, reads, table);
    if (matching(set) || TO_MEND.test(set.around)) return [];
    const grid = upright(set);
    return [
      ...grid.rows.flatMap((row) => readRow(grid, row)),
      ...sectioned(set).flatMap((part) => part.rows.flatMap((row) => readRow(part, row))),
      ...columnOrders(set),
      ...rowOrders(set),
      ...rankings(set),
      ...flows(grid),
      ...writings(grid),
      ...(lettered(set) ? [] : [...learned(grid), ...looseRows(grid)]),
      ...(lettered(set) ? [] : rowReferences(grid)),
      ...directions(set),
    ];
  });
}

/** A table with faults put in for somebody to find. */
const TO_MEND =
  /\b(?:correct|mend|fix|repair|spot|find|hunt)\b.{0,20}\b(?:tables?|charts?|errors?|slips?|mistakes?|rows?)\b|\b(?:wrong|mixed up|faulty) (?:on purpose|table|chart)\b/;

/** "1. 18 G | a. blue": two columns to be matched, so that nothing in a row belongs together. */
function matching({ rows, header }: Grid): boolean {
  const labelled = (column: number, label: RegExp) =>
    rows.length > 1 && rows.every((row) => label.test(row[column]?.passage.text ?? ''));
  const columns = header.map((_, column) => column);
  return (
    columns.some((column) => labelled(column, /^\W*\d{1,2}[.)]\s/) || counted(rows, column, '1234')) &&
    columns.some((column) => labelled(column, /^\W*[a-z][.)]\s/i) || inTurn(rows, column))
  );
}

/** A column of labels only, from the first on. */
function counted(rows: Grid['rows'], column: number, labels: string): boolean {
  const cells = rows.slice(0, labels.length).map((row) => labelIn(row[column]));
  return cells.length > 1 && cells.every((label, i) => label === labels[i]);
}
const labelIn = (cell: Row[number] | undefined): string =>
  (cell?.passage.text ?? '').toLowerCase().replace(/[^\p{L}\d]/gu, '');

/** "P", "Q", "R": a column of letters in their order, from whichever is the first. */
function inTurn(rows: Grid['rows'], column: number): boolean {
  const first = ALPHABET.indexOf(labelIn(rows[0]?.[column]));
  return first >= 0 && counted(rows, column, ALPHABET.slice(first, first + 4));
}
const ALPHABET = 'abcdefghijklmnopqrstuvwxyz';

/** Columns headed by letters hold choices, of which one is right. */
const lettered = ({ header }: Grid): boolean =>
  header.filter((text) => /^(?:\(?[a-f][).]?|(?:option|choice) ?[a-f1-4])$/.test(text.trim())).length > 1;

/** What is usual for people says nothing in a note on animals. */
const people = (grid: Grid, row: Row): Claim[] => (ofAnimals(grid.note) ? [] : usuals(grid, row));

function readRow(grid: Grid, row: Row): Claim[] {
  return [
    ...(lettered(grid) ? [] : [...equivalences(grid, row), ...colours(grid, row), ...people(grid, row)]),
    ...properties(grid, row),
    ...headedMaterials(grid, row),
    ...comparisons(row),
    ...picks(grid, row),
    ...signed(row),
    ...verdicts(row),
    ...fits(grid, row),
  ];
}
