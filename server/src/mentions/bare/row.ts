/** The row of a table around a number: what its other cells say of it leaves nothing to ask. */
import type { Place } from '../sense/place.ts';
import { type Board, systemsOf } from './board.ts';

/** Cells of a row that is read by people. */
const MOST_CELLS = 12;

/**
 * "| Leaks round a 16 Fr | "just go up to a 20" |", "| "Size 3" | What shares metric 6 with size 4? |": other cells of the row name
 * sizes of one system, or put the question that this one answers.
 */
export function rowTells({ around, scene: { passage } }: Place, { settled }: Board): boolean {
  const { cell, index } = passage;
  const row = cell && around.note.tables[cell.table]?.rows[cell.row];
  if (!row || row.length > MOST_CELLS) return false;
  const others = row.filter((each) => each >= 0 && each !== index);
  return (
    systemsOf(others.flatMap((each) => settled[each] ?? [])).length === 1 ||
    others.some((each) => /\?["”’)\s*_]*$/.test(around.note.passages[each]!.text))
  );
}
