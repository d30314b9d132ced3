/** Grids of crosses: a statement, a size or a material at the head of each row, a mark under the answer. */
import type { Note, Table } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';
import { HEADS_FALSE, HEADS_TRUE } from '../text/truth-keys.ts';
import type { Keyed } from './key.ts';
import { type Piece, wholePiece } from './piece.ts';

const MARK = /^(?:✓|✔|✅|☑|x|X|×|●|•|■|\+|\[x\]|\*)$/u;
const BLANK = /^(?:|[-–—]|✗|✘|❌|○|☐|\[ ?\]|no)$/u;
const DONE = /^\W*done\W*$/i;

/** Over a column of verdicts or of what is done: no answer to choose. */
const judges = (head: string): boolean => HEADS_TRUE.test(head) || HEADS_FALSE.test(head) || DONE.test(head);

/** Nobody sets a question with more columns. */
const MANY = 20;

/** Each marked cell chooses the header above it for the label of its row. */
export const crossed = (note: Note, reads: readonly Read[]): Keyed[] =>
  note.tables.flatMap((table) => readCrosses(table, reads));

function readCrosses({ rows }: Table, reads: readonly Read[]): Keyed[] {
  const [head, ...body] = rows as readonly [readonly number[], ...(readonly number[])[]];
  const text = (index: number | undefined) => reads[index ?? -1]?.passage.text.trim() ?? '';
  const options = head.slice(1).map((index) => reads[index]!);
  const marks = body.flatMap((row) => row.slice(1).map(text));
  if (
    options.length < 2 ||
    options.length > MANY ||
    options.some(({ passage }) => passage.text.trim() === '' || judges(passage.text))
  )
    return [];
  if (!marks.some((cell) => MARK.test(cell)) || marks.some((cell) => !MARK.test(cell) && !BLANK.test(cell)))
    return [];
  const corner = reads[head[0]!]!;
  return body.flatMap((row, r) => {
    const label = reads[row[0]!];
    const hits = row.slice(1).flatMap((index, c) => (MARK.test(text(index)) ? [c] : []));
    if (!label || hits.length === 0 || hits.length === options.length) return [];
    const pieces = options.map(wholePiece);
    const quiz = { question: asked(corner, label), number: -1 - r, options: pieces, end: 0, last: 0 };
    return hits.map((c) => ({
      quiz,
      chosen: pieces[c]!,
      at: wholePiece(reads[row[c + 1]!]!),
      ...(hits.length > 1 ? { several: true as const } : {}),
    }));
  });
}

/** The label of the row; the corner above it says of what. */
function asked(corner: Read, label: Read): Piece {
  const own = wholePiece(label);
  return { ...own, items: [...corner.items.filter((item) => item.kind === 'word'), ...own.items] };
}
