/** Rows of tables that set a statement out without standing behind it: a verdict, a count or an empty box in another cell, options in rows. */
import type { Note, Passage } from '../../notes/model.ts';
import type { Scene } from '../text/scene.ts';

interface Cells {
  readonly own: number;
  readonly heads: readonly string[];
  readonly cells: readonly string[];
  readonly firsts: readonly string[];
}

/** Is the statement of this cell one to be judged, chosen or counted? */
export function setOutInRow({ note, passage }: Scene): boolean {
  const row = rowOf(note, passage);
  return (
    row !== undefined && (ofOthers(row) || row.cells.some((cell, c) => c !== row.own && beside(row, cell, c)))
  );
}

function rowOf(note: Note, { cell }: Passage): Cells | undefined {
  const table = cell && note.tables[cell.table];
  if (!table || cell.row === 0 || table.rows.length > MANY) return undefined;
  const text = (index: number | undefined) => (note.passages[index ?? -1]?.text ?? '').trim();
  return {
    own: cell.column,
    heads: table.rows[0]!.map(text),
    cells: table.rows[cell.row]!.map(text),
    firsts: table.rows.slice(1).map((row) => text(row[0])),
  };
}
const MANY = 60;

/** Under "First try" or "Distractor"; in one of several rows that letters name, under "Option". */
const ofOthers = ({ own, heads, firsts }: Cells): boolean =>
  OTHERS.test(heads[own] ?? '') ||
  (own > 0 &&
    OPTION.test(heads[0] ?? '') &&
    firsts.length > 1 &&
    firsts.every((first, i) => first.replace(/[^A-Za-z]/g, '').toUpperCase() === 'ABCDEFGH'[i]));
const OTHERS =
  /^\W*(?:(?:the )?(?:first|1st|early|initial) (?:try|attempt|guess|answer|version|go|idea)|distractors?|traps?|bait|reject(?:ed)?|do not accept|fail(?:s|ed)?|misconceptions?|(?:the )?(?:if |when )?(?:they|you|he|she|learners?|students?|class|candidates?) (?:writes?|says?|wrote|said|thinks?|thought))\W*$/i;
const OPTION = /^\W*(?:options?|choices?|letters?|distractors?|)\W*$/i;

function beside({ heads }: Cells, cell: string, c: number): boolean {
  const head = heads[c] ?? '';
  return (
    UNTRUE.test(cell) ||
    (/^[-–−]\d/.test(cell) && /\b(?:points?|marks?|score)\b/i.test(head)) ||
    (POOR.test(cell) && /^\W*(?:levels?|grades?|quality|candidates?)\W*$/i.test(head)) ||
    (/^[☐□◻]$/u.test(cell) && (head === '' || HOLDS.test(head))) ||
    (/^\W*no\W*$/i.test(cell) && HOLDS.test(head)) ||
    (/^\d{1,3}(?:[.,]\d+)? ?%?$/.test(cell) && COUNTED.test(head)) ||
    (/^(?:true|false|t|f)$/i.test(cell) && /^\W*(?:before|after|pre-?test|post-?test)\W*$/i.test(head))
  );
}
const UNTRUE =
  /^(?:[☐□◻☒☑]\s*(?:T|true|R|richtig)\s*[☐□◻☒☑]\s*(?:F|false|falsch))$|^\W{0,2}(?:F|false|falsch|wrong|untrue|incorrect|nope|[✗✘❌])\W{0,2}$/iu;
const POOR = /^\W*(?:poor|weak|bad|fail|unsafe|F|0|low|borderline)\W*$/i;
const HOLDS = /\b(?:fits?|match(?:es)?|ok|pairs?|goes|go|holds?|agrees?|true|right|correct|so|belongs?)\b/i;
const COUNTED =
  /^\W*(?:n|%|votes?|counts?|(?:chosen|picked|ticked) by|responses?|hands?|share|facility|p-value)\W*$|^\W*%\W*$|\b(?:true|false|agree|disagree)\b/i;
