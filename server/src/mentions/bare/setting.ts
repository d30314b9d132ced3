/** Words that set a system, in running text and at the heads of a table's columns. */
import type { System } from '../../sizes/model.ts';
import type { Scene } from '../scene.ts';
import { SETTING } from '../words/frames.ts';
import { type Board, holds, systemsOf } from './board.ts';
import type { Bare } from './tokens.ts';

/** "G: and two emails came in": a speaker is no unit. */
const SPEAKER = /^\W*[A-Za-z]{1,12}:\W/;
/** "Nothing to do with French": named to be left out. */
const SET_ASIDE =
  /\b(?:(?:nothing|anything) to do with|not to be confused with|no(?:t in)?|unlike|never in|instead of) (?:the )?(?:French|gau?ges?|charri[eè]re|metric|USP|wires?)\b/gi;
/** "an 8, labelled the metric way": in millimetres. */
const METRIC_WAY = /\bmetric (?:way|system|units?|fashion|terms?)\b/gi;
/** "14–15 on the French scale is a 3.7 GPA": marks of schools, and of rocks. */
const GRADES = /\b(?:GPA|baccalaur\w+|bac|lyc[ée]es?|climb(?:s|ed|ing|ers?)?|boulder\w*|transcripts?)\b/i;
export const settingWords = (text: string): readonly System[] => {
  const said = text
    .replace(SPEAKER, '')
    .replace(SET_ASIDE, '')
    .replace(METRIC_WAY, '')
    .replace(GRADES.test(text) ? /French/g : '', '');
  return SETTING.filter(([, pattern]) => pattern.test(said)).map(([system]) => system);
};

/** "the two 18s" below a table that has them: of one system. */
export function inTable({ passage }: Scene, board: Board, bare: Bare): readonly System[] {
  const rows = board.around.note.tables[passage.cell!.table]!.rows.slice(0, 24);
  const cells = rows.flatMap((row) => row.slice(0, 8)).flatMap((index) => board.settled[index] ?? []);
  const same = systemsOf(cells.filter((one) => holds(one, bare.value)));
  if (same.length > 0) return same.length === 1 ? same : [];
  const textAt = (index: number | undefined) => board.around.scenes[index ?? -1]?.passage.text.trim() ?? '';
  const columns = rows[0]!.filter((_, c) =>
    rows.some((row, r) => r > 0 && textAt(row[c]) === `${bare.value}`),
  );
  const headed = [...new Set(columns.flatMap((index) => settingWords(textAt(index))))];
  return headed.length === 1 ? headed : [];
}

/** Words for a system in the sentence that ends at an offset. */
export function wordsBefore(text: string, end: number): readonly System[] {
  const before = text.slice(Math.max(0, end - 120), end).trimEnd();
  return settingWords(before.slice(before.slice(0, -1).search(/[.!?]\s(?!.*[.!?]\s)/) + 1));
}

/** "22 or 18, which pours faster?" */
export const WHICH_FLOWS =
  /\bwhich (?:one )?(?:pours|flows|runs|drips|fills|gives|lets|goes)\b[^.?]{0,24}\b(?:faster|slower|quicker|fastest|slowest|more|better)\b/i;
