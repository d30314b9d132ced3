/** Statements that a worksheet, a marking guide or a poll sets out: rows left to be answered, boxes left empty, answers that earn nothing, votes. */

import { matchesOf } from '../../notes/index.ts';
import type { Note, Passage, Table } from '../../notes/model.ts';
import { finds } from '../../notes/patterns.ts';
import type { Reading } from '../constructions/model.ts';
import { lineAt } from '../text/lines.ts';
import { remembered } from '../text/remember.ts';
import type { Scene } from '../text/scene.ts';
import { asksTruth, BOTH_LETTERS, HEADS_FALSE, HEADS_TRUE } from '../text/truth-keys.ts';
import { besideIn, type Column, cellText, tableOf, textsOf } from './cells.ts';
import { setOutInRow } from './set-out-rows.ts';

/** Nobody has said yet whether it holds. */
export const leftOpen = (scene: Scene): boolean =>
  leftBlank(scene) ||
  askedBelow(scene) ||
  choicesBelow(scene) ||
  setOutInRow(scene) ||
  keyedAbove(scene) ||
  keyedInTable(scene) ||
  told(scene);

/** "Agree?" before it, "The lie is b." behind it. */
function told({ before, passage, sentence }: Scene): boolean {
  const ahead = before.at(-1);
  if (
    ahead &&
    ahead.close === '?' &&
    /^(?:do you |who )?(?:agrees?|true|right|correct)\W*$/i.test(
      passage.text.slice(ahead.start, Math.min(ahead.end, ahead.start + LABEL)),
    )
  )
    return true;
  return finds(
    /\bthe (?:lie|liar|fib|(?:false|wrong|untrue) one) (?:is|was) \W?[a-h1-9]\b/i,
    passage.text.slice(sentence.start, sentence.start + LONGEST_SET),
  );
}

/** An item of a numbered list, whose number has a cross under "T" or "F" in a table. */
const keyedInTable = ({ note, passage }: Scene): boolean =>
  passage.list?.ordered === true && numbersKeyed(note);
const numbersKeyed = remembered((note: Note): boolean =>
  note.tables.slice(0, FAR).some(({ rows }) => {
    const heads = textsOf(note, rows[0]!);
    return (
      rows.length > 2 &&
      heads.some((head) => HEADS_TRUE.test(head)) &&
      heads.some((head) => HEADS_FALSE.test(head)) &&
      /^\W*\d{1,2}\W*$/.test(cellText(note, rows[1]![0]))
    );
  }),
);

/** "1F 2T. (1) …": the keys, and behind them the statements. */
const keyedAbove = ({ passage, sentence }: Scene): boolean =>
  finds(/(?:^|\s)1 ?[TF]\W{1,3}2 ?[TF]\b/, passage.text.slice(0, Math.min(sentence.start, 200)));

/** Under a header that asks for it there is nothing to be read. */
const asked: Column = (head, cell) => EITHER.test(head) && SHORT.test(cell);
const trueLeft: Column = (head, cell) => HEADS_TRUE.test(head) && BLANK.test(cell);
const falseLeft: Column = (head, cell) => HEADS_FALSE.test(head) && BLANK.test(cell);
const shared: Column = (head, cell) => head !== '' && SHARE.test(cell);
const worthless: Column = (head, cell) =>
  /^\W*(?:points?|marks?|score|pts|credit)\W*$/i.test(head) &&
  /^\W*(?:0|none|nil|no|zero|[–—-])\W*$/i.test(cell);

/** A cell whose row has no key under "T/F" or "Answer" that could be read, or nothing under "T" and under "F". */
function leftBlank({ note, passage }: Scene): boolean {
  const { cell } = passage;
  const table = tableOf(note, passage);
  if (!cell || !table) return false;
  // Statements at the heads of the columns, "true" and "false" at those of the rows.
  if (cell.row === 0)
    return table.rows.length > 1 && table.rows.slice(1).every((row) => VERDICT.test(cellText(note, row[0])));
  const beside = (test: Column) => besideIn(note, table, cell, test);
  return (
    beside(asked) ||
    (beside(trueLeft) && beside(falseLeft)) ||
    beside(shared) ||
    emptyColumns(note).has(table)
  );
}
/** Tables with a column without a header and without a word, for the learner to write in. */
const emptyColumns = remembered(
  (note: Note): ReadonlySet<Table> => new Set(note.tables.filter((table) => emptyColumn(note, table))),
);
const emptyColumn = (note: Note, { rows }: Table): boolean =>
  rows.length > 2 && rows[0]!.some((_, c) => rows.every((row) => BLANK.test(cellText(note, row[c]))));
const BLANK = /^[\s_.…☐□◻○-]*$/u;
const VERDICT = /^\W*(?:true|false|t|f|right|wrong)\W*$|^\s*[✓✗]\s*$/iu;
const SHORT = /^[^\n]{0,10}$/;
/** "60 % true": how many held it. */
const SHARE = /^\W*\d{1,3} ?% (?:said |of )?(?:true|false|agreed?|yes|right|wrong|correct|t|f)\b/i;
const EITHER =
  /^\W*(?:your |the )?(?:answers?|solutions?|lösung|truth value|key\b.*|verdict|t\W{0,3}(?:or\W{0,3})?f|true\W{1,3}(?:or\W{1,3})?false|right\W{1,3}(?:or\W{1,3})?wrong|r\W{0,3}f|r\W{0,3}w|true|tick|yes\W{1,3}(?:or\W{1,3})?no|1 ?= ?true.*|(?:is it |that'?s? )?(?:correct|right|true)\?|fact\W{1,3}(?:or\W{1,3})?(?:myth|fiction))\W*$/i;
/** An item of a numbered list, with "True or false? Key: F T F" right below the list. */
function askedBelow({ note, passage }: Scene): boolean {
  const { list } = passage;
  if (!list?.ordered) return false;
  for (let at = passage.index + 1; at <= passage.index + FAR; at++) {
    const below: Passage | undefined = note.passages[at];
    if (!below || below.kind === 'heading') return false;
    if (below.list?.list !== list.list)
      return !below.list && (asksTruth(below) || KEYS_BELOW.test(below.text.slice(0, 80)));
  }
  return false;
}
/** Right above "true" and "false", which are the choices. */
function choicesBelow({ note, passage }: Scene): boolean {
  const below = note.passages[passage.index + 1];
  if (below && below.text.length < LABEL && LETTERED_TRUTH.test(below.text)) return true;
  const [first, second] = [1, 2].map((step) => choiceIn(note.passages[passage.index + step]));
  return first !== undefined && second !== undefined && first !== second;
}
/** Does a line say no more than "true"? Undefined when it is no such choice. */
function choiceIn(passage: Passage | undefined): boolean | undefined {
  const said = passage?.list && passage.text.length < LABEL ? BARE_CHOICE.exec(passage.text)?.[1] : undefined;
  return said === undefined ? undefined : /^(?:t|true|right|yes|correct|agree)$/i.test(said);
}
const BARE_CHOICE =
  /^(?:[^A-Za-z]|[ab](?=[.)\]:])|(?<=\[)x(?=\]))*(t|f|true|false|right|wrong|yes|no|correct|incorrect|agree|disagree)\W*$/i;
const KEYS_BELOW =
  /^\W*\d{1,2}\W{0,3}(?:[TF✓✗✘]|true|false)\W{1,4}\d{1,2}\W{0,3}(?:[TF✓✗✘]|true|false)|^\W*(?:number|no\.?|statement|item|sentence) \w+ (?:is|was) (?:wrong|false|untrue|not true|the lie)\b|^\W*which (?:one |of (?:them|these) )?(?:is|was) (?:the )?(?:lie|liar|false|wrong|untrue|not true)\b/iu;
const FAR = 16;

/** Behind an empty box, where another line or choice of the passage has a ticked one; or with both letters in front. */
export function leftUnticked(scene: Scene, reading: Reading): boolean {
  const { items, passage, sentence } = scene;
  const { at, to } = reading;
  const { start } = lineAt(passage, sentence.start);
  const last = items[Math.max(at, to)]?.end ?? sentence.end;
  if (last - start > LONGEST) return false;
  const text = passage.text.slice(start, last);
  if (BOTH_LETTERS.test(text)) return true;
  const said = passage.text.slice(sentence.start, Math.min(sentence.end, sentence.start + LONGEST));
  if (
    notInBold(scene, reading) ||
    finds(LETTERED, said) ||
    finds(STARRED, said) ||
    finds(BOXED_LETTERS, lineOf(passage, start)) ||
    finds(LETTERED_TRUTH, passage.text.slice(start, sentence.end + LABEL)) ||
    TO_JOIN.test(lineOf(passage, start))
  )
    return true;
  const kind = boxed(passage);
  const box = kind && matchesOf(text, kind).at(-1)?.[0].trim();
  return box !== undefined && EMPTY.test(box);
}
/** "is **outer** / inner", "pink / **green** / blue": choices with strokes between, of which the one in bold is right and another was read. */
const notInBold = (
  { passage: { text, marks }, sentence, items }: Scene,
  { at, from, to }: Reading,
): boolean =>
  marks.some(
    (mark) =>
      mark.kind === 'strong' &&
      mark.start >= sentence.start &&
      mark.end <= sentence.end &&
      (/[^/]\s\/\s$/.test(text.slice(Math.max(0, mark.start - 4), mark.start)) ||
        /^\s\/\s[^/]/.test(text.slice(mark.end, mark.end + 4))) &&
      ![at, from, to].some((i) => items[i] && items[i].start >= mark.start && items[i].end <= mark.end),
  );

/** "A 12 mm B 36 mm C 4 mm": choices, one behind the other. */
const LETTERED = /(?:^|\s)\(?A[).:]?\s\d[\d.-]*\s?(?:mm|G|Fr|Ch)?[,;]?\s\(?B[).:]?\s\d/;
/** "2-0 / 4-0 / 6-0✓ / 3-0". */
const STARRED =
  /\d\S*\s?[A-Za-z]*\s?[/|][^/|\n]{1,16}[/|]?[^/|\n]{0,16}[✓✔✅*]\W*(?:[/|]|$)|[✓✔✅*]\s?[/|]\s?\d/u;
/** "☐ T ☒ F". */
const BOXED_LETTERS = /[☐□◻☒☑]\s*(?:T|true|R)\W{0,2}\s*[☐□◻☒☑]\s*(?:F|false)\b/iu;
/** "(a) true (b) false": both are to choose from. */
const LETTERED_TRUTH =
  /(?:^|[\s(["])(?:a|i|1)[).\]:]\W{0,4}(?:true|right|yes|correct|agree)\W{0,6}(?:or )?\W{0,3}(?:b|ii|2)[).\]:]\W{0,4}(?:false|wrong|no|incorrect|disagree)\b/i;
/** "12 Fr ( b )   a) 8 mm": the letter that was put in, and the next of those to choose from. */
const TO_JOIN = /[(_]\s?[a-z]\s?[)_]\s+[a-z][.)]\s/i;
const lineOf = (passage: Passage, start: number): string =>
  passage.text.slice(start, Math.min(lineAt(passage, start).end, start + LONGEST));
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
    finds(FAILS, said) ||
    finds(NOT_SO, passage.text.slice(sentence.start, Math.min(sentence.end + 2, sentence.start + LONGEST))) ||
    finds(SHUFFLED, passage.text.slice(start, sentence.start + LEAD)) ||
    (end - start < LONGEST && finds(VOTES, passage.text.slice(start, end))) ||
    finds(RED, passage.text.slice(sentence.start, Math.min(sentence.end, sentence.start + LONGEST))) ||
    withoutPoints(scene)
  );
}
/** "Pairs (face down, so mixed): …": laid out for others to put together. */
const SHUFFLED = /\b(?:shuffled|jumbled|scrambled|mixed(?: up)?|muddled)\b[^.:\n]{0,24}:/i;
const LEAD = 60;
const LABEL = 40;
const LONGEST = 300;
/** "20 G is wider than 18 G: red.", "… (down)". */
const RED = /(?::\s*red|\((?:thumbs? )?down\)|\(sit\)|🔴|👎)\W*$/iu;
/** "… : F.", "… ⇒ false", "(f, it is narrower)", "option C (12 Fr = 12 mm) drew 40 %", "18→20 G ▼; 14→16 Fr ▲". */
const NOT_SO =
  /\.\s?\{F|\((?:falsch)\)|\bF\s*(?:→|=>)|(?:[:⇒→]|=>)\s*(?:F|f|false|False|FALSE)(?:[\s.;,⇒)]|$)|\((?:[fF]|false|False)[,;:)]|\b(?:[Oo]ption|[Dd]istractor|[Cc]hoice|[Aa]nswer) [A-E] \([^)\n]{1,60}\) (?:drew|attracted|got|took|was (?:chosen|picked))\b|\d\s?(?:G|Fr|Ch|mm)?\s?[↑↓▲▼]\s?[;,][^;,\n]{1,40}\d\s?(?:G|Fr|Ch|mm)?\s?[↑↓▲▼]/u;
const FAILS =
  /^\W{0,3}(?:F|false|grade [EF]|level 0|(?:actor|role) card[^:\n]{0,24}|devil['’]s advocate says|bait|fail(?:s|ed)?|none|nil|zero|reject(?:ed)?|not accept(?:ed|able)?|do not accept|no credit|unacceptable|(?:common |usual |typical )?(?:wrong|weak|poor|bad)(?: answers?)?)\s*(?:[:–—=]|\s-\s)/i;
const VOTES =
  /[:–—(=-]\s*\d{1,3} ?(?:votes?|hands?|ticks?|voices?|people|students?|%)(?:\W{1,3}[^.\n]{0,24})?\W*$/i;

/** Another cell of the row says that it earns nothing. */
function withoutPoints({ note, passage }: Scene): boolean {
  const { cell } = passage;
  const table = tableOf(note, passage);
  return cell !== undefined && table !== undefined && cell.row > 0 && besideIn(note, table, cell, worthless);
}
