/** Rows of tables that set a statement out without standing behind it: a verdict, a count or an empty box in another cell, options in rows. */
import type { Note, Table } from '../../notes/model.ts';
import type { Scene } from '../text/scene.ts';
import { besideIn, cellText, tableOf, textsOf } from './cells.ts';

/** Is the statement of this cell one to be judged, chosen or counted? */
export function setOutInRow({ note, passage }: Scene): boolean {
  const { cell } = passage;
  const table = tableOf(note, passage);
  if (!cell || !table || cell.row === 0 || table.rows.length > MANY) return false;
  return ofOthers(note, table, cell.column) || besideIn(note, table, cell, setsOut);
}
const MANY = 60;

/** Under "First try" or "Distractor"; in one of several rows that letters name, under "Option". */
function ofOthers(note: Note, { rows }: Table, own: number): boolean {
  const heads = textsOf(note, rows[0]!);
  const firsts = rows.slice(1).map((row) => cellText(note, row[0]));
  return (
    OTHERS.test(heads[own] ?? '') ||
    (own > 0 &&
      OPTION.test(heads[0] ?? '') &&
      firsts.length > 1 &&
      firsts.every((first, i) => first.replace(/[^A-Za-z]/g, '').toUpperCase() === 'ABCDEFGH'[i]))
  );
}
const OTHERS =
  /^\W*(?:(?:the )?(?:first|1st|early|initial) (?:try|attempt|guess|answer|version|go|idea)|distractors?|traps?|bait|reject(?:ed)?|do not accept|fail(?:s|ed)?|misconceptions?|(?:the )?(?:if |when )?(?:they|you|he|she|learners?|students?|class|candidates?) (?:writes?|says?|wrote|said|thinks?|thought))\W*$/i;
const OPTION = /^\W*(?:options?|choices?|letters?|distractors?|)\W*$/i;

/** What a cell beside the statement says of it, by its header. */
function setsOut(head: string, cell: string): boolean {
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
