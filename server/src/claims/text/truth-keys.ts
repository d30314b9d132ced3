/** Keys that stand beside statements to be called true or false: a letter in front or behind, a tick, a cell of the row. */

import type { Note, Passage, Table } from '../../notes/model.ts';
import { finds, firstMatch } from '../../notes/patterns.ts';
import { lineAt } from './lines.ts';
import { remembered } from './remember.ts';
import type { Scene } from './scene.ts';
import { wordsOf } from './scene.ts';
import type { Read } from './scenes.ts';
import type { Sentence } from './sentences.ts';

/** "A 14 G … T / F", one of the letters set off. */
const EITHER = /\b(T(?:rue)?)[\s*_]*\/[\s*_]*(F(?:alse)?)[\s.)\]*_]*$/i;

/** Does a passage end in the two letters, to be called true or false? Asked once a passage. */
export const offersEither = remembered(({ text }: Passage): boolean => finds(EITHER, text));

/** The letter in strong type or emphasis, or the one not struck. */
function eitherKey({ passage }: Read): 'true' | 'false' | undefined {
  const match = firstMatch(EITHER, passage.text);
  if (!match) return undefined;
  const second = match.index + match[0].toLowerCase().lastIndexOf('f');
  const set = (at: number, struck: boolean) =>
    passage.marks.some(
      (mark) =>
        mark.start <= at &&
        at < mark.end &&
        mark.end - mark.start <= 7 &&
        (mark.kind === 'strike') === struck,
    );
  const [yes, no] = [set(match.index, false), set(second, false)];
  if (yes !== no) return yes ? 'true' : 'false';
  const [notTrue, notFalse] = [set(match.index, true), set(second, true)];
  return notTrue === notFalse ? undefined : notTrue ? 'false' : 'true';
}

const TRUTH =
  /\b(?:true (?:or|\/) false|t\/f|t or f|true\/false|fact or (?:fiction|myth)|myth or fact|right (?:or|\/) wrong|right\/wrong|agree (?:or|\/) disagree|agree\/disagree|if (?:it is |it's )?(?:true|false)\b.{0,40}\bif (?:it is |it's )?(?:true|false))\b/;

/** "A 5-0 is thicker than a 3-0. True or false?": it asks so itself. Asked once a passage. */
export const asksTruth = remembered(({ text }: Passage): boolean => finds(TRUTH, text.toLowerCase()));

/** "Part 2. True or false", right above: what stands below is to be called so. */
export const headsTruth = remembered((headings: readonly string[]): boolean =>
  finds(TRUTH, headings.at(-1) ?? ''),
);

/** Its own words set a passage out to be called true or false. Asked once a passage, however many sentences it has. */
const setsOut = remembered((passage: Passage): boolean => {
  const { text, kind } = passage;
  return (
    asksTruth(passage) ||
    BOXES.test(text) ||
    offersEither(passage) ||
    (kind !== 'heading' && !SEVERAL_KEYS.test(text) && (FRONT_KEY.test(text) || finds(END_KEY, text)))
  );
});

export function isTruthItem(read: Read, lead: Sentence | undefined, headings: readonly string[]): boolean {
  return (
    setsOut(read.passage) ||
    (lead !== undefined && finds(TRUTH, wordsOf(lead).replace(/ \/ /g, '/'))) ||
    headsTruth(headings) ||
    (read.passage.list?.ordered === true && headings.some((heading) => finds(TRUTH, heading))) ||
    read.passage.cell !== undefined
  );
}

/** "A 12 Fr tube is 6 mm wide. F": a key after a statement. */
const END_KEY =
  /[.!]\s+(?:[–—-]\s*)?\(?[TF]\)?\.?\s*$|[.!]\s+[–—-]\s*(?:[TF]|True|False)\s*[;,(:]|[.!]\s+(?:True|False)(?:\s*[–—:;,.-]|\s+(?:because|as|since)\b)|[.!]["”]\s+(?:True|False|Correct|Right|Wrong|Incorrect|Untrue)\b/;

/** Marks on lines of one passage: each is about its own line. */
const SEVERAL_KEYS = /\n[ \t]*[✅✔✓☑❌✗✘✖]/u;
/** "(T) A 14 G …": a key in front of a statement. */
const FRONT_KEY = /^(?:\((T|F|True|False)\)|([✅✔☑❌✗✘]))\s?/u;

const BOXES = /^true\s*\/\s*\[([ xX])\]\s*false\b/i;

/** A key that stands beside the statement: ticked boxes, a letter in front, or the row's cell. */
export function truthKey(
  note: Note,
  reads: readonly Read[],
  read: Read,
  truth: boolean,
): 'true' | 'false' | undefined {
  if (!truth && !markedBeside(reads, read)) return undefined;
  const boxes = BOXES.exec(read.passage.text);
  if (boxes) {
    const second = boxes[1] !== ' ';
    return read.passage.list?.checked === second ? undefined : second ? 'false' : 'true';
  }
  if (read.passage.cell) return cellKey(note, reads, read);
  const either = eitherKey(read);
  if (either) return either;
  if (SEVERAL_KEYS.test(read.passage.text)) return undefined;
  if (lettered(reads, read) || finds(BOTH_LETTERS, read.passage.text)) return undefined;
  const front = FRONT_KEY.exec(read.passage.text) ?? /^(T|F|True|False)\s*[—–:.)-]/.exec(read.passage.text);
  return front ? (/^(?:T|[✅✔☑])/u.test(front[1] ?? front[2] ?? '') ? 'true' : 'false') : undefined;
}

/** "F. …" between "E. …" and "G. …": the sixth of them. */
function lettered(reads: readonly Read[], { passage }: Read): boolean {
  const own = /^\(?([TF])[.):]/.exec(passage.text)?.[1];
  if (own === undefined) return false;
  return [-1, 1].some((step) => {
    const beside = /^\(?([A-Z])[.):]/.exec(reads[passage.index + step]?.passage.text ?? '')?.[1];
    return beside !== undefined && beside.charCodeAt(0) - own.charCodeAt(0) === step;
  });
}

/** "- F: …" where the items beside it open with T or F as well: no speaker. */
const MARKED_ITEM = /^\(?(?:T|F)\)?\s*[:.)–—-]\s/;
const markedBeside = (reads: readonly Read[], { passage }: Read): boolean => {
  if (!passage.list || !MARKED_ITEM.test(passage.text)) return false;
  const beside = [-2, -1, 1, 2].flatMap((step) => {
    const near = reads[passage.index + step]?.passage;
    return near?.list && near.list.list === passage.list!.list ? [near.text] : [];
  });
  return beside.length > 0 && beside.every((text) => MARKED_ITEM.test(text));
};

const ANSWER_HEADER =
  /\b(?:key|answers?|true|t\/f|t or f|correct|right|solutions?|lösung|truth|so(?=\?)|verdict|marks?|marked|holds|agree|fact or (?:myth|fiction))\b|\byes ?(?:\/|or) ?no\b|^\W*[✓✔]\W*(?:or\W*)?[✗✘✕×]\W*$/iu;
const SAYS_TRUE = /^(?:true|t|r|richtig|yes|yep|yeah|y|✓|✔|✅|☑|correct|right|holds|fact)\W*$/;
const SAYS_FALSE =
  /^(?:false|f|falsch|no|nope|nah|n|✗|✘|❌|✕|×|wrong|incorrect|untrue|myth|nonsense|rubbish|no way|never)\W*$/;

/** A column of keys needs no header. */
const KEY_CELL = /^\W{0,2}(?:t|f|true|false|✓|✔|✗|✘)\W{0,2}$/i;
const columnOf = (table: Table, column: number, reads: readonly Read[]): string[] =>
  table.rows.slice(1).map((row) => reads[row[column] ?? -1]?.passage.text ?? '');

/** Columns of each table under a header that says it is the answer, found once for all its cells. */
const ANSWER_COLUMNS = new WeakMap<Table, readonly number[]>();

function answerColumns(table: Table, reads: readonly Read[]): readonly number[] {
  const kept = ANSWER_COLUMNS.get(table);
  if (kept) return kept;
  const columns = table.rows[0]!.flatMap((index, column) => {
    const head = reads[index]!.passage.text;
    const keys = head.trim() === '' && columnOf(table, column, reads).every((text) => KEY_CELL.test(text));
    return ANSWER_HEADER.test(head) || keys ? [column] : [];
  });
  const keys = columns.filter((column) => !OF_OTHERS.test(reads[table.rows[0]![column]!]!.passage.text));
  const found = keys.length > 0 ? keys : columns;
  ANSWER_COLUMNS.set(table, found);
  return found;
}

/** "My answer", beside "Key". */
const OF_OTHERS =
  /\b(?:my|your|his|her|their|students?|candidates?|trainees?|learners?|class|given|first)\b/i;

/** What stands over the ticks of true statements, and of false ones. */
export const HEADS_TRUE =
  /^\W*(?:t(?:rue)?|r(?:ight)?|richtig|correct|yes|agree|facts?)\W*$|^\s*[✓✔✅☑👍+]\s*$/iu;
export const HEADS_FALSE =
  /^\W*(?:f(?:alse)?|falsch|w(?:rong)?|incorrect|no(?!\.)|disagree|myths?|fiction)\W*$|^\s*[✗✘❌✕×👎–—-]\s*$/iu;

const TICK_COLUMNS = new WeakMap<Table, { readonly yes: number; readonly no: number }>();

/** First columns headed "T" and "F", -1 where there is none; `reads` are those of the table's note. */
function tickColumns(table: Table, reads: readonly Read[]): { readonly yes: number; readonly no: number } {
  const kept = TICK_COLUMNS.get(table);
  if (kept) return kept;
  const heads = table.rows[0]!.map((index) => reads[index]!.passage.text);
  const columns = {
    yes: heads.findIndex((head) => HEADS_TRUE.test(head)),
    no: heads.findIndex((head) => HEADS_FALSE.test(head)),
  };
  TICK_COLUMNS.set(table, columns);
  return columns;
}

/** A tick under "T" or under "F". */
function tickedKey(reads: readonly Read[], table: Table, row: number): 'true' | 'false' | undefined {
  const ticked = (column: number) => {
    const text = column < 0 ? undefined : reads[table.rows[row]?.[column] ?? -1]?.passage.text;
    return text === undefined ? undefined : /^\s*(?:✓|✔|✅|☑|☒|●|•|x|X|×|yes|\[x\])\s*$/u.test(text);
  };
  const columns = tickColumns(table, reads);
  const [yes, no] = [ticked(columns.yes), ticked(columns.no)];
  if (yes === undefined || no === undefined || yes === no) return undefined;
  return yes ? 'true' : 'false';
}

interface RowAnswer {
  readonly column: number;
  readonly says: 'true' | 'false';
}

const ROW_ANSWERS = new WeakMap<readonly number[], readonly RowAnswer[]>();

/** What a row says under headers of answers; every cell of the row asks. */
function rowAnswers(row: readonly number[], table: Table, reads: readonly Read[]): readonly RowAnswer[] {
  const kept = ROW_ANSWERS.get(row);
  if (kept) return kept;
  const answers = answerColumns(table, reads).flatMap((column): RowAnswer[] => {
    const text = reads[row[column] ?? -1]?.passage.text.trim().toLowerCase() ?? '';
    if (SAYS_TRUE.test(text)) return [{ column, says: 'true' }];
    return SAYS_FALSE.test(text) ? [{ column, says: 'false' }] : [];
  });
  ROW_ANSWERS.set(row, answers);
  return answers;
}

/** What says why is no statement to be called true or false. */
const REASON_HEADER =
  /^\W*(?:why\b|(?:what to |then )?(?:say|tell|add)\b|discuss\w*|reason|because|explanation|explained|comment|correction|rationale|feedback|fix|notes?\b|remark|truth\b)/i;

/** "True" or "F" alone in another cell of the row, under a header that says it is the answer. */
function cellKey(note: Note, reads: readonly Read[], read: Read): 'true' | 'false' | undefined {
  const { cell } = read.passage;
  const table = cell && note.tables[cell.table];
  if (!cell || !table || cell.row === 0) return undefined;
  if (REASON_HEADER.test(reads[table.rows[0]![cell.column]!]?.passage.text ?? '')) return undefined;
  const blank = blankKey(reads, table, cell.row, cell.column);
  if (blank) return blank;
  const answers = rowAnswers(table.rows[cell.row]!, table, reads);
  // "| 1 | False | more noughts, thinner |": what stands behind the verdict is a remark, unless its header says otherwise.
  const judged = answers.find(({ column }) => column !== cell.column);
  const remark =
    judged && judged.column < cell.column && judged.column > 0 && !statesIn(reads, table, cell.column);
  if (remark && COUNTS.test(reads[table.rows[cell.row]![0]!]?.passage.text ?? '')) return undefined;
  if (judged && remarks(reads, table, cell.row, cell.column, judged.column)) return undefined;
  return judged?.says ?? tickedKey(reads, table, cell.row);
}

/** "| "Green is 18 G." | Myth | A green hub is a 21 G. |": the verdict is on what stands before it, not on what follows. */
const remarks = (reads: readonly Read[], table: Table, row: number, own: number, verdict: number): boolean =>
  own > verdict &&
  !STATES.test(reads[table.rows[0]![own]!]?.passage.text ?? '') &&
  table.rows[row]!.slice(0, verdict).some((index) => SEVERAL_WORDS.test(reads[index]?.passage.text ?? ''));
const SEVERAL_WORDS = /^\W*\w+(?:\W+\w+){2}/;

/** Is a row called true or false in a cell of its own, by the author and not by somebody who answers? */
export function judgedInRow({ tables }: Note, reads: readonly Read[], { passage: { cell } }: Read): boolean {
  const table = cell && tables[cell.table];
  if (!cell || !table || cell.row === 0) return false;
  return rowAnswers(table.rows[cell.row]!, table, reads).some(
    ({ column }) => !OF_OTHERS.test(reads[table.rows[0]![column]!]?.passage.text ?? ''),
  );
}

/** A row that opens with a number and nothing else. */
const COUNTS = /^\W*[a-z]?\d{1,2}\W*$/i;
const STATES = /\b(?:statements?|claims?|sentences?|assertions?|myths?|true or false|questions?|items?)\b/i;
const statesIn = (reads: readonly Read[], table: Table, column: number): boolean => {
  const header = reads[table.rows[0]![column]!]?.passage.text ?? '';
  return STATES.test(header) || /^\W*$/.test(header);
};

/** Under "Tick if true" a cell left empty, where others are ticked and nothing else stands there, says that the row is false. */
function blankKey(
  reads: readonly Read[],
  table: Table,
  row: number,
  own: number,
): 'true' | 'false' | undefined {
  const column = table.rows[0]!.findIndex(
    (index, c) => c !== own && TICK_TRUE.test(reads[index]?.passage.text ?? ''),
  );
  if (column < 0 || table.rows.length > MANY_ROWS) return undefined;
  const cells = columnOf(table, column, reads).map((text) => text.trim());
  const ticked = cells.some((text) => TICKED.test(text));
  if (!ticked || cells.some((text) => text !== '' && !TICKED.test(text))) return undefined;
  return TICKED.test(cells[row - 1] ?? '') ? 'true' : 'false';
}
const TICK_TRUE = /^\W*tick(?:ed)? (?:if|when|the) (?:true|right|correct)/i;
const TICKED = /^(?:✓|✔|✅|☑|x|\[x\])$/iu;
const MANY_ROWS = 40;

const LINE_FRONT =
  /^\W{0,3}?(?:(?:\d{1,2}[.)]?|[a-h][.)])\s+)?(?:[[(]\s*(T|F|True|False|✓|✔|✗|✘)\s*[\])]|(TRUE|FALSE|True|False)\s*:|(T|F)(?=\s+\d{1,2}[.)]\s|\s{2,}[A-Z][a-z]* ))/u;
/** "2 F A 30 Fr drain …". */
const NUMBER_FRONT = /^\W{0,3}(?:\d{1,2}[.)]?|[a-h][.)])\s+(T|F)\s*[—–:.)-]?\s+(?=[A-Z0-9])/;
/** "A 3-0 is thinner than a 5-0 — no". */
const LINE_END =
  /(?:[—–→]|\s-|\.{3,}|…|\s(?=[([])|(?<=[a-z0-9]{2})\s(?=[✓✔]))\s*[([]?(T|F|true|false|yes|no|✓|✔|✗|✘|wrong)[)\]]?\s*\.?\s*$/i;

/** "b) A 3-0 is thinner than a 5-0. Answer: false": a lettered line has its answer on it; a letter is one on any line. */
const ANSWERED_END =
  /(?:^\W{0,3}[a-h][.)]\s.{1,250}[.!]\s+(?:answer|ans|key)\s*[:=.]\s*(T|F|true|false)|[.!]\s+(?:answer|ans|key)\s*[:=.]\s*(T|F))\W*$/i;

/** The last letters of its words. */
const MAY_END = /[tfeosg✓✔✗✘][)\]]?\s*\.?\s*$/i;

const keyed = (mark: string): 'true' | 'false' => (/^(?:t|yes|✓|✔)/i.test(mark) ? 'true' : 'false');

/** "4-0 thicker than 3-0 (F), 3-0 thicker than 4-0 (T)": several keys of one line. */
const BRACKETED = /\((?:T|F|true|false|right|wrong|up|down)\)/gi;
const LABELS = /\b(?:TRUE|FALSE|True|False)\s*:/g;

/** "17 G is wider than 15 G ✘": behind nothing but a space a cross may also advise against what is named, unless truth is asked for. */
const CROSSED = /(?<=[a-z0-9]{2}) [✗✘]\s*$/u;
const ASKED_OF = /\b(?:true|false|right|wrong|correct|incorrect|quiz|myths?|ticks?|cross(?:es|ed)?)\b/i;

/** "… → F; … → T". */
const ARROWED = /[→⇒]\s*(?:T|F|true|false)(?=\s*(?:[;,.]|$))/gi;
/** "T F  20 G is wider", "(T) (F) …": both letters in front, one to be ringed. */
export const BOTH_LETTERS =
  /^\W{0,3}(?:T[\s()[\]|]{1,4}F|True[\s()[\]|]{1,4}False)[\s()[\]|]{1,4}(?=[A-Z0-9])/;

/** "… wider than an 18 G. ☐ T ☑ F": a box for each, one of them ticked. */
const BOX_EACH = /([☐□◻○☑☒✅])\s*T(?:rue)?\W{1,6}?([☐□◻○☑☒✅])\s*F(?:alse)?\W*$/iu;
const EMPTY = /[☐□◻○]/u;

function boxedKey(line: string): 'true' | 'false' | undefined {
  const [, yes, no] = firstMatch(BOX_EACH, line) ?? [];
  if (!yes || !no || EMPTY.test(yes) === EMPTY.test(no)) return undefined;
  return EMPTY.test(no) ? 'true' : 'false';
}

function lineKey(line: string): 'true' | 'false' | undefined {
  if (finds(BOTH_LETTERS, line) || (line.match(ARROWED)?.length ?? 0) > 1) return undefined;
  if ((line.match(LABELS)?.length ?? 0) > 1 || (line.match(BRACKETED)?.length ?? 0) > 1) return undefined;
  const boxed = boxedKey(line);
  if (boxed) return boxed;
  const front =
    firstMatch(LINE_FRONT, line) ?? firstMatch(NUMBER_FRONT, line) ?? firstMatch(ANSWERED_END, line);
  const end = front || !MAY_END.test(line) || /[✗✘❌].*[✓✔]/u.test(line) ? null : firstMatch(LINE_END, line);
  const mark = front ? (front[1] ?? front[2] ?? front[3]) : end?.[1];
  return mark === undefined ? undefined : keyed(mark);
}

/** "[F] Nylon is braided. [T] Silk is braided.": of several keys in front of their sentences each counts for its own. */
function frontKey(line: string, at: number): 'true' | 'false' | undefined {
  if (!FRONTED.test(line)) return undefined;
  const all = [...line.matchAll(FRONTS)];
  const own = all.length > 1 ? all.findLast(({ index }) => index <= at + 1) : undefined;
  return own ? keyed(own[1] ?? own[2] ?? 't') : undefined;
}
const FRONTED = /^\s*(?:[[(](?:T|F|True|False)[\])]|(?:T|F|True|False|TRUE|FALSE)\s*:)/;
const FRONTS = /(?<=^\s*|[.;!]\s+)(?:[[(](T|F|True|False)[\])]|(T|F|True|False|TRUE|FALSE)\s*:)/g;

const KEY_OF_LAST = /^\W{0,3}(?:T|F|true|false)\W{0,3}\n/i;

/** "**F** 20 G is wider than 18 G": the letter alone in strong type or emphasis. */
function setOffKey({ text, marks }: Passage, start: number): 'true' | 'false' | undefined {
  const letter = /^[TF](?=\s+[A-Z0-9])/.exec(text.slice(start, start + 6))?.[0];
  return letter && marks.some((mark) => mark.start === start && mark.end === start + 1)
    ? keyed(letter)
    : undefined;
}

/** "F – 20 G is wider than 18 G", where other lines open with such a letter too. */
function dashedKey(passage: Passage, line: string): 'true' | 'false' | undefined {
  const mark = DASHED.exec(line)?.[1];
  return mark && SEVERAL_DASHED.test(passage.text.slice(0, 1000)) ? keyed(mark) : undefined;
}
const DASHED = /^\W{0,3}(T|F)\s*[–—-]\s/;
const SEVERAL_DASHED = /(?:^|\n)[TF]\s*[–—-]\s[^\n]*\n[TF]\s*[–—-]\s/;

/** The key that each line of a passage carries, for the sentence that begins at an offset. */
export function lineKeys({ passage }: Read): (at: number) => Pick<Scene, 'truthItem' | 'key'> {
  if (passage.cell || passage.kind === 'heading') return () => ({});
  return (from) => {
    // "… wider than 18 G ... F" and a new line: the key in front belongs to the line before.
    const at = from + (firstMatch(KEY_OF_LAST, passage.text.slice(from, from + 12))?.[0].length ?? 0);
    const { start, end } = lineAt(passage, at);
    const line = passage.text.slice(start, Math.min(end, start + 300));
    const key =
      frontKey(line, at - start) ??
      lineKey(line) ??
      setOffKey(passage, start) ??
      dashedKey(passage, line) ??
      (CROSSED.test(line) && ASKED_OF.test(passage.text) ? 'false' : undefined);
    return key ? { truthItem: true, key } : {};
  };
}
