/** Statements that a worksheet, a marking guide or a poll sets out: rows left to be answered, boxes left empty, answers that earn nothing, votes. */
import { matchesOf } from '../../notes/index.ts';
import type { Note, Passage } from '../../notes/model.ts';
import type { Reading } from '../constructions/model.ts';
import { lineAt } from '../text/lines.ts';
import { remembered } from '../text/remember.ts';
import type { Scene } from '../text/scene.ts';
import { asksTruth, BOTH_LETTERS, HEADS_FALSE, HEADS_TRUE } from '../text/truth-keys.ts';

/** Nobody has said yet whether it holds. */
export const leftOpen = (scene: Scene): boolean => leftBlank(scene) || askedBelow(scene);

/** A cell whose row has no key under "T/F" or "Answer" that could be read, or nothing under "T" and under "F". */
function leftBlank({ note, passage }: Scene): boolean {
  const { cell } = passage;
  const table = cell && note.tables[cell.table];
  if (!table || cell.row === 0) return false;
  const row = table.rows[cell.row]!;
  const heads = textsOf(note, table.rows[0]!);
  const under = (header: RegExp, body: RegExp) =>
    heads.some((head, c) => c !== cell.column && header.test(head) && body.test(textOf(note, row[c])));
  return under(EITHER, SHORT) || (under(HEADS_TRUE, BLANK) && under(HEADS_FALSE, BLANK)) || under(/./, SHARE);
}
const BLANK = /^[\s_.…☐□◻○-]*$/u;
const SHORT = /^[^\n]{0,8}$/;
/** "60 % true": how many held it. */
const SHARE = /^\W*\d{1,3} ?% (?:said |of )?(?:true|false|agreed?|yes|right|wrong|correct|t|f)\b/i;
const EITHER =
  /^\W*(?:your |the )?(?:answers?|verdict|t\W{0,3}(?:or\W{0,3})?f|true\W{1,3}(?:or\W{1,3})?false|right\W{1,3}(?:or\W{1,3})?wrong|r\W{0,3}f|r\W{0,3}w|true|tick|yes\W{1,3}(?:or\W{1,3})?no|1 ?= ?true.*|(?:is it |that'?s? )?(?:correct|right|true)\?|fact\W{1,3}(?:or\W{1,3})?(?:myth|fiction))\W*$/i;
const textOf = (note: Note, index: number | undefined): string => note.passages[index ?? -1]?.text ?? '';
const textsOf = (note: Note, row: readonly number[]): string[] =>
  row.map((index) => textOf(note, index).trim());

/** An item of a numbered list, with "True or false? Key: F T F" right below the list. */
function askedBelow({ note, passage }: Scene): boolean {
  const { list } = passage;
  if (!list?.ordered) return false;
  for (let at = passage.index + 1; at <= passage.index + FAR; at++) {
    const below: Passage | undefined = note.passages[at];
    if (!below || below.kind === 'heading') return false;
    if (below.list?.list !== list.list) return asksTruth(below) && !below.list;
  }
  return false;
}
const FAR = 16;

/** Behind an empty box, where another line or choice of the passage has a ticked one; or with both letters in front. */
export function leftUnticked({ items, passage, sentence }: Scene, { at, to }: Reading): boolean {
  const { start } = lineAt(passage, sentence.start);
  const last = items[Math.max(at, to)]?.end ?? sentence.end;
  if (last - start > LONGEST) return false;
  const text = passage.text.slice(start, last);
  if (BOTH_LETTERS.test(text)) return true;
  const kind = boxed(passage);
  const box = kind && matchesOf(text, kind).at(-1)?.[0].trim();
  return box !== undefined && EMPTY.test(box);
}
const EMPTY = /^(?:[☐□◻○◯~👎]|\[ ?\]|\( ?\))$/u;
const BOXES = /(?:^|\s)(?:[☐□◻○◯☑☒■●◉✓✔✅👍👎]|\[[ xX✓]?\]|\([ xX•●✓]?\))(?=\s)/gu;
const TILDES = /(?:^|[\s{])[=~](?=\d)/g;

/** With which marks a passage tells the right choices from the others: "[x]" and "[ ]", or "=" and "~". */
const boxed = remembered(({ text }: Passage): RegExp | undefined => {
  const own = text.slice(0, LONGEST_SET);
  if (/^[^{=~]{0,200}\{?\s*[=~]\S[^~]{0,200}~[^~]{1,200}~/.test(own)) return TILDES;
  const ticked = /(?:^|\s)(?:[☑☒■●◉✓✔✅👍]|\[[xX✓]\]|\([xX•●✓]\))\s/u.test(own);
  return ticked && /(?:^|\s)(?:[☐□◻○◯👎]|\[ ?\]|\( ?\))\s/u.test(own) ? BOXES : undefined;
});
const LONGEST_SET = 1200;

/** "Fail: 5-0 is thicker.", "none: …" in a marking guide, "0" under "Points", "6 votes" behind it. */
export function unearned(scene: Scene): boolean {
  const { passage, sentence } = scene;
  const { start, end } = lineAt(passage, sentence.start);
  const said = passage.text.slice(sentence.start, sentence.start + LABEL);
  return (
    FAILS.test(said) ||
    SHUFFLED.test(passage.text.slice(start, sentence.start + LEAD)) ||
    (end - start < LONGEST && VOTES.test(passage.text.slice(start, end))) ||
    withoutPoints(scene)
  );
}
/** "Pairs (face down, so mixed): …": laid out for others to put together. */
const SHUFFLED = /\b(?:shuffled|jumbled|scrambled|mixed(?: up)?|muddled)\b[^.:\n]{0,24}:/i;
const LEAD = 60;
const LABEL = 40;
const LONGEST = 300;
const FAILS =
  /^\W{0,3}(?:fail(?:s|ed)?|none|nil|zero|reject(?:ed)?|not accept(?:ed|able)?|do not accept|no credit|unacceptable|(?:common |usual |typical )?(?:wrong|weak|poor|bad)(?: answers?)?)\s*(?:[:–—=]|\s-\s)/i;
const VOTES =
  /[:–—(=-]\s*\d{1,3} ?(?:votes?|hands?|ticks?|voices?|people|students?|%)(?:\W{1,3}[^.\n]{0,24})?\W*$/i;

/** Another cell of the row says that it earns nothing. */
function withoutPoints({ note, passage: { cell } }: Scene): boolean {
  const table = cell && note.tables[cell.table];
  if (!table || cell.row === 0) return false;
  const heads = textsOf(note, table.rows[0]!);
  return heads.some(
    (head, c) =>
      c !== cell.column &&
      /^\W*(?:points?|marks?|score|pts|credit)\W*$/i.test(head) &&
      /^\W*(?:0|none|nil|no|zero|[–—-])\W*$/i.test(textOf(note, table.rows[cell.row]![c])),
  );
}
