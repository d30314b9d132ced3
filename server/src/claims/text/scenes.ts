/** Builds the scenes of a note: every sentence of every passage with what stands around it. Linear in the note. */
import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { Note, Passage, Table } from '../../notes/model.ts';
import type { System } from '../../sizes/model.ts';
import { correctionAt } from '../errata.ts';
import { type Answers, answersOf } from '../quiz/answers.ts';
import { letterNumber, markerNumber, numberIn } from '../quiz/collect.ts';
import { OPTION_LEAD } from '../words/frames.ts';
import { type Item, readItems } from './items.ts';
import { quotationSpans } from './quotations.ts';
import { type Scene, wordsOf } from './scene.ts';
import { type Sentence, splitSentences } from './sentences.ts';

/** A passage read once: items, sentences, quotation spans. */
export interface Read {
  readonly passage: Passage;
  readonly items: readonly Item[];
  readonly sentences: readonly Sentence[];
  readonly quotes: readonly (readonly [number, number])[];
}

export function readPassages(note: Note, mentions: readonly Mention[]): Read[] {
  const byPassage = new Map<number, Mention[]>();
  for (const mention of mentions) {
    const list = byPassage.get(mention.passage);
    if (list) list.push(mention);
    else byPassage.set(mention.passage, [mention]);
  }
  return note.passages.map((passage) => {
    const own = (byPassage.get(passage.index) ?? []).toSorted((a, b) => a.span.start - b.span.start);
    const items = readItems(passage.text, own);
    return { passage, items, sentences: splitSentences(items, passage.text), quotes: quotationSpans(items) };
  });
}

export interface Whole {
  readonly reads: readonly Read[];
  readonly scenes: readonly Scene[];
  readonly answers: Answers;
}

/** The note read last: its statements and its named sizes are asked for one after the other. */
let last: { readonly note: Note; readonly mentions: readonly Mention[]; readonly whole: Whole } | undefined;

/** Passages and scenes of a note, read once for all who ask in a row. */
export function readWhole(note: Note, mentions: readonly Mention[]): Whole {
  if (last?.note !== note || last.mentions !== mentions) {
    const reads = readPassages(note, mentions);
    const answers = answersOf(note, reads);
    const scenes = reads.flatMap((read) => scenesOfPassage(note, reads, read, answers));
    last = { note, mentions, whole: { reads, scenes, answers } };
  }
  return last.whole;
}

function scenesOfPassage(note: Note, reads: readonly Read[], read: Read, answers: Answers): Scene[] {
  const { passage, sentences } = read;
  if (!speaks(read)) return [];
  const around = surroundings(reads, read);
  const headings = passage.path.map((index) => (note.passages[index]?.text ?? '').toLowerCase());
  const system = systemOf(reads, read, headings);
  const heading = headingAbove(note, reads, read);
  const option = isOption(read, around.lead, heading, inTest(note, reads, read));
  const truth = isTruthItem(read, around.lead, headings);
  const key = truthKey(note, reads, read, truth);
  const next = nextSentence(reads, read);
  const reported = inStruckColumn(note, reads, read);
  return sentences.flatMap((whole, i) =>
    splitErratum(whole).map(({ sentence, erratum }) => ({
      note,
      passage,
      sentence,
      items: sentence.items,
      before: sentences.slice(Math.max(0, i - 3), i),
      after: sentences.slice(i + 1, i + 3),
      context: around.context,
      headings,
      quotes: read.quotes,
      ...(erratum ? { erratum } : {}),
      ...(reported ? { reported } : {}),
      ...(system ? { system } : {}),
      ...(next ? { next } : {}),
      ...(around.lead ? { lead: around.lead } : {}),
      ...(option ? { option } : {}),
      ...(truth ? { truthItem: true } : {}),
      ...(key ? { key } : {}),
      ...keyedElsewhere(note, read, sentence, answers),
    })),
  );
}

/** A numbered statement that an answer section keys true or false. */
function keyedElsewhere(
  note: Note,
  read: Read,
  sentence: Sentence,
  answers: Answers,
): Pick<Scene, 'truthItem' | 'key' | 'keyAt'> {
  if (answers.empty) return {};
  const text = read.passage.text;
  const line = text.lastIndexOf('\n', sentence.start) + 1;
  const head = text.slice(line, line + 14);
  const number = numberIn(head) ?? letterNumber(head) ?? (line === 0 ? markerNumber(note, read) : undefined);
  const entry = number === undefined ? undefined : answers.find(number, read);
  // Beside a statement that offers no choices an F is not the sixth of them.
  const key = entry?.answer === 'f' ? 'false' : entry?.answer;
  const listed = number !== undefined && answers.judges;
  if (!entry) return listed && read.passage.list?.ordered ? { truthItem: true } : {};
  if ((key !== 'true' && key !== 'false') || entry.at.read === read) return {};
  // A list further down counts anew from 1, unless a key right before it announces it.
  const ahead = read.passage.index - entry.at.read.passage.index;
  const announced =
    /^\W*(?:answer )?key\b/i.test(entry.at.read.passage.text) &&
    ahead - (read.passage.list?.index ?? 0) === 1;
  if (ahead > 0 && !announced) return {};
  return { truthItem: true, key, keyAt: sourceSpan(entry.at.read.passage, entry.at.span) };
}

interface Part {
  readonly sentence: Sentence;
  readonly erratum?: 'struck' | 'holds';
}

/** "For X read Y", "X should read Y": two sentences of opposite standing. */
function splitErratum(sentence: Sentence): Part[] {
  const cut = correctionAt(sentence.items);
  if (cut === undefined) return [{ sentence }];
  const part = (items: readonly Item[], erratum: 'struck' | 'holds'): Part[] =>
    items.length === 0
      ? []
      : [{ sentence: { ...sentence, items, start: items[0]!.start, end: items.at(-1)!.end }, erratum }];
  return [...part(sentence.items.slice(0, cut), 'struck'), ...part(sentence.items.slice(cut + 1), 'holds')];
}

/** A cell under "Printed", "Wrong", "Was": what stands there is reported, not taught. */
function inStruckColumn(note: Note, reads: readonly Read[], read: Read): boolean {
  const { cell } = read.passage;
  if (!cell || cell.row === 0) return false;
  const head = reads[note.tables[cell.table]?.rows[0]?.[cell.column] ?? -1]?.passage.text ?? '';
  return STRUCK_HEADER.test(head);
}

export const STRUCK_HEADER =
  /^(?:printed|wrong|was|before|error|mistake|incorrect|myth|old|as printed|first draft|what they say|students say|misreading|instead of|not this|don't)\b/i;

/** A passage without sizes, systems, colours, points or materials claims nothing of ours. */
const speaks = (read: Read): boolean =>
  read.items.some((item) => item.kind === 'word' || item.kind === 'size');

function surroundings(reads: readonly Read[], read: Read): { context: Sentence[]; lead?: Sentence } {
  const { passage } = read;
  const context: Sentence[] = [];
  const leadIndex = passage.list?.leadIn ?? (passage.cell ? undefined : passage.list?.parent);
  const lead = leadIndex === undefined ? undefined : reads[leadIndex]?.sentences.at(-1);
  if (lead && leadIndex !== undefined) context.push(...(reads[leadIndex]?.sentences.slice(-3) ?? []));
  const previous = reads[passage.index - 1];
  if (previous && flows(previous.passage, passage)) context.push(...previous.sentences.slice(-2));
  return { context, ...(lead ? { lead } : {}) };
}

/** Prose flows on from one paragraph or list item to the next; not out of headings, tables or pictures. */
function flows(from: Passage, to: Passage): boolean {
  const prose = (passage: Passage) => passage.kind === 'paragraph' || passage.kind === 'caption';
  if (!prose(from) || !prose(to)) return false;
  return from.list?.list === to.list?.list || to.list === undefined || from.list === undefined;
}

function nextSentence(reads: readonly Read[], read: Read): Sentence | undefined {
  const next = reads[read.passage.index + 1];
  return next && flows(read.passage, next.passage) ? next.sentences[0] : undefined;
}

/** The one system that the sizes of this passage, else its headings, else its lead-in speak of. */
function systemOf(reads: readonly Read[], read: Read, headings: readonly string[]): System | undefined {
  const own = systemsOf(read.items);
  if (own.size > 0) return own.size === 1 ? [...own][0] : undefined;
  for (const heading of [...headings].reverse()) {
    const named = HEADING_SYSTEMS.filter(([pattern]) => pattern.test(heading));
    if (named.length > 0) return named.length === 1 ? named[0]![1] : undefined;
  }
  const near = new Set<System>();
  for (let i = read.passage.index - 1; i >= 0 && i >= read.passage.index - 3; i--)
    for (const system of systemsOf(reads[i]!.items)) near.add(system);
  return near.size === 1 ? [...near][0] : undefined;
}

const HEADING_SYSTEMS: readonly (readonly [RegExp, System])[] = [
  [/\b(?:french|charri[eè]re|catheter sizes)\b/, 'french'],
  [/\b(?:gauges?|needles?|cannula[es]?|iv access)\b/, 'needle-gauge'],
];

function systemsOf(items: readonly Item[]): Set<System> {
  const found = new Set<System>();
  for (const item of items)
    for (const size of item.mention?.sizes ?? [])
      if (size.system !== 'millimetre' && size.system !== 'inch') found.add(size.system);
  for (const item of items)
    if (item.system && item.system !== 'usp-zeros' && item.word.length > 2) found.add(item.system);
  return found;
}

/** Text of the heading when this passage's list stands right below it. */
function headingAbove(note: Note, reads: readonly Read[], read: Read): string {
  const { passage } = read;
  if (!passage.list) return '';
  const first = reads[passage.index - passage.list.index - 1]?.passage;
  return first?.kind === 'heading' && first.index === passage.path.at(-1)
    ? (note.passages[first.index]?.text ?? '')
    : '';
}

const TEST_HEADING =
  /\b(?:quiz|questions?|tests?|exam|mcqs?|answers?|key|check yourself|revision|assessment|self-check|practice)\b/i;

const ANSWERS = /(?:^|\n)\W*(?:correct |right )?(?:answers?|key)\b.{0,12}[:=]/i;

/** Lettered lines are choices where something is asked; elsewhere they are an outline. */
function inTest(note: Note, reads: readonly Read[], read: Read): boolean {
  const { index, path } = read.passage;
  const near = [index, index - 1, index - 2].some((i) => reads[i]?.passage.text.includes('?') === true);
  const answered = [index, index + 1, index + 2].some((i) => ANSWERS.test(reads[i]?.passage.text ?? ''));
  const heads = path.map((heading) => note.passages[heading]?.text ?? '');
  return (
    near || answered || heads.some((text) => TEST_HEADING.test(text) || OPTION_LEAD.test(text.toLowerCase()))
  );
}

/** A lettered or listed choice under a question that is not ticked. Keyed choices are read by `quiz` instead. */
function isOption(read: Read, lead: Sentence | undefined, heading: string, tested: boolean): boolean {
  const { list, text } = read.passage;
  if (LINE_A.test(text) && LINE_B.test(text)) return tested;
  if (!list)
    return tested && ((LETTERED.test(text) && multiLettered(text)) || /(?:^|\n)A \S[^\n]*\sB \S/.test(text));
  if (list.checked === true) return false;
  if (LETTERED.test(text) && list.checked === undefined) return tested || asks(lead);
  if (list.checked === false && /\?\s*$/.test(heading)) return true;
  if (OPTION_LEAD.test(heading.toLowerCase()) || /\?\s*$/.test(heading)) return true;
  return asks(lead);
}

const asks = (lead: Sentence | undefined): boolean =>
  lead !== undefined && (lead.close === '?' || OPTION_LEAD.test(wordsOf(lead)));

const LETTERED = /^\(?[A-Ea-e][).]\s/;
/** Choices on lines of their own below their question, in one passage. */
const LINE_A = /\n[ \t]*\(?[Aa][).][ \t]/;
const LINE_B = /\n[ \t]*\(?[Bb][).][ \t]/;
const multiLettered = (text: string) =>
  /(?:^|\n)\s*\(?[B-Eb-e][).]\s/.test(text.slice(1)) || LETTERED.test(text);

/** "A 14 G … T / F", one of the letters set off. */
const EITHER = /\b(T(?:rue)?)[\s*_]*\/[\s*_]*(F(?:alse)?)[\s.)\]*_]*$/i;

/** The letter in strong type or emphasis, or the one not struck. */
function eitherKey({ passage }: Read): 'true' | 'false' | undefined {
  const match = EITHER.exec(passage.text);
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

const TRUTH = /\b(?:true (?:or|\/) false|t\/f|t or f|true\/false)\b/;

function isTruthItem(read: Read, lead: Sentence | undefined, headings: readonly string[]): boolean {
  return (
    TRUTH.test(read.passage.text.toLowerCase()) ||
    BOXES.test(read.passage.text) ||
    EITHER.test(read.passage.text) ||
    (read.passage.kind !== 'heading' &&
      !SEVERAL_KEYS.test(read.passage.text) &&
      (FRONT_KEY.test(read.passage.text) || END_KEY.test(read.passage.text))) ||
    (lead !== undefined && TRUTH.test(wordsOf(lead).replace(/ \/ /g, '/'))) ||
    headings.some(
      (heading, i) =>
        TRUTH.test(heading) && (i === headings.length - 1 || read.passage.list?.ordered === true),
    ) ||
    read.passage.cell !== undefined
  );
}

/** "A 12 Fr tube is 6 mm wide. F": a key after a statement. */
const END_KEY = /[.!]\s+\(?[TF]\)?\.?\s*$/;

/** "(T) A 14 G …": a key in front of a statement. */
/** Marks on lines of one passage: each is about its own line. */
const SEVERAL_KEYS = /\n[ \t]*[✅✔✓☑❌✗✘✖]/u;
const FRONT_KEY = /^(?:\((T|F|True|False)\)|([✅✔☑❌✗✘]))\s?/u;

const BOXES = /^true\s*\/\s*\[([ xX])\]\s*false\b/i;

/** A key that stands beside the statement: ticked boxes, a letter in front, or the row's cell. */
function truthKey(
  note: Note,
  reads: readonly Read[],
  read: Read,
  truth: boolean,
): 'true' | 'false' | undefined {
  if (!truth) return undefined;
  const boxes = BOXES.exec(read.passage.text);
  if (boxes) {
    const second = boxes[1] !== ' ';
    return read.passage.list?.checked === second ? undefined : second ? 'false' : 'true';
  }
  if (read.passage.cell) return cellKey(note, reads, read);
  const either = eitherKey(read);
  if (either) return either;
  if (SEVERAL_KEYS.test(read.passage.text)) return undefined;
  const front = FRONT_KEY.exec(read.passage.text) ?? /^(T|F|True|False)\s*[—–:.)-]/.exec(read.passage.text);
  return front ? (/^(?:T|[✅✔☑])/u.test(front[1] ?? front[2] ?? '') ? 'true' : 'false') : undefined;
}

const ANSWER_HEADER = /\b(?:key|answers?|true|t\/f|t or f|correct|right|so\?|verdict|holds|fact or myth)\b/i;
const SAYS_TRUE = /^(?:true|t|yes|y|✓|✔|✅|☑|correct|right|holds|fact)\W*$/;
const SAYS_FALSE = /^(?:false|f|no|n|✗|✘|❌|✕|×|wrong|incorrect|untrue|myth)\W*$/;

/** Columns of each table under a header that says it is the answer, found once for all its cells. */
const ANSWER_COLUMNS = new WeakMap<Table, readonly number[]>();

function answerColumns(table: Table, reads: readonly Read[]): readonly number[] {
  const kept = ANSWER_COLUMNS.get(table);
  if (kept) return kept;
  const columns = (table.rows[0] ?? []).flatMap((index, column) => {
    const head = reads[index]?.passage.text ?? '';
    return ANSWER_HEADER.test(head) ? [column] : [];
  });
  ANSWER_COLUMNS.set(table, columns);
  return columns;
}

/** A tick under "T" or under "F". */
function tickedKey(reads: readonly Read[], table: Table, row: number): 'true' | 'false' | undefined {
  const ticked = (head: RegExp) => {
    const column = (table.rows[0] ?? []).findIndex((index) => head.test(reads[index]?.passage.text ?? ''));
    const text = column < 0 ? undefined : reads[table.rows[row]?.[column] ?? -1]?.passage.text;
    return text === undefined ? undefined : /^\s*(?:✓|✔|✅|☑|x|X|×|yes|\[x\])\s*$/.test(text);
  };
  const [yes, no] = [ticked(/^\W*t(?:rue)?\W*$/i), ticked(/^\W*f(?:alse)?\W*$/i)];
  if (yes === undefined || no === undefined || yes === no) return undefined;
  return yes ? 'true' : 'false';
}

/** "True" or "F" alone in another cell of the row, under a header that says it is the answer. */
function cellKey(note: Note, reads: readonly Read[], read: Read): 'true' | 'false' | undefined {
  const { cell } = read.passage;
  const table = cell && note.tables[cell.table];
  if (!cell || !table || cell.row === 0) return undefined;
  for (const column of answerColumns(table, reads)) {
    const text = reads[table.rows[cell.row]?.[column] ?? -1]?.passage.text.trim().toLowerCase() ?? '';
    if (column === cell.column) continue;
    if (SAYS_TRUE.test(text)) return 'true';
    if (SAYS_FALSE.test(text)) return 'false';
  }
  return tickedKey(reads, table, cell.row);
}
