/** Choices in a table right below their question: a letter, then the choice. "| A | 22 G |". */
import type { Note } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';
import { type Piece, wholePiece } from './piece.ts';

const LETTERS = 'abcdefgh';
const ANSWERS = /question|item|answer|key|correct|right/i;

/** Two columns, letters in their order from the first row on or below a header. */
export function tabled(note: Note, reads: readonly Read[], read: Read): Piece[] | undefined {
  const cell = reads[read.passage.index + 1]?.passage.cell;
  const rows = cell && cell.row === 0 && cell.column === 0 ? note.tables[cell.table]?.rows : undefined;
  if (!rows?.every((row) => row.length === 2)) return undefined;
  const textOf = (index = -1): string => reads[index]?.passage.text ?? '';
  const letterOf = (row: readonly number[]): string =>
    /^\W*([a-h])\W*$/i.exec(textOf(row[0]))?.[1]?.toLowerCase() ?? '';
  const chosen = rows.slice(letterOf(rows[0]!) === 'a' ? 0 : 1);
  // "| Question | Answer |": under these letters stand the answers.
  if (chosen.length < rows.length && rows[0]!.some((index) => ANSWERS.test(textOf(index)))) return undefined;
  if (chosen.length < 2 || !chosen.every((row, i) => letterOf(row) === LETTERS[i])) return undefined;
  return chosen.flatMap(([, index]) => (reads[index!] ? [wholePiece(reads[index!]!)] : []));
}
