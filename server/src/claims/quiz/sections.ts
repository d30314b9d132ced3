/** Replies that stand apart from their questions: in a column of the same table, or by number in an answer section. */
import type { Note, Span } from '../../notes/model.ts';
import { orderCue } from '../constructions/order.ts';
import { decidedIn } from '../text/judged-columns.ts';
import type { Read } from '../text/scenes.ts';
import type { Answers } from './answers.ts';
import type { Desk } from './desk.ts';
import { gapIn } from './gap.ts';
import { askedOn, linesOf } from './lines.ts';
import type { Pair } from './pairs.ts';
import { labelNumber, markerNumber, type Piece, plainNumber, wholePiece } from './piece.ts';
import { questionIn, replyIn } from './turns.ts';

const PROMPT_HEAD = /\b(?:questions?|prompts?|front|cards?|stem|items?|asks?|asked|viva|q)\b|\?\s*$/i;
const REPLY_HEAD =
  /\b(?:answers?|accept(?:ed)?(?: answers?)?|back|response|reply|replies|solutions?|expected|model answer)\b|^\W*(?:key|correct|right|a)\W*$/i;

/** What a learner answers is not the key. */
const OTHERS = /\b(?:your|my|students?|candidates?|learners?|given|wrong)\b/i;

/** Rows of a table with a column of questions or prompts and one of answers. */
export function tablePairs({ note, reads }: Desk): Pair[] {
  return note.tables.flatMap((table) => {
    const { rows } = table;
    const heads = (rows[0] ?? []).map((index) => reads[index]?.passage.text ?? '');
    const prompt = heads.findIndex((head) => PROMPT_HEAD.test(head));
    const choices = heads.some((head) =>
      /^\W*(?:(?:option|choice) )?(?:b|(?:option|choice) 2)\W*$/i.test(head),
    );
    const headed = heads.findIndex(
      (head, c) =>
        c !== prompt && REPLY_HEAD.test(head) && !OTHERS.test(head) && !(choices && /^\W*a\W*$/i.test(head)),
    );
    const reply = headed >= 0 || choices ? headed : besideAsking(rows, heads, reads);
    if (reply < 0) return [];
    const decided = decidedIn(table, reads);
    const offer = heads.findIndex((head) => OFFER_HEAD.test(head));
    return rows.slice(1).flatMap((row, i) => {
      const asked = reads[row[prompt < 0 ? asking(row, reads) : prompt] ?? -1];
      const given = reads[row[decided ? decided(i + 1) : reply] ?? -1];
      if (!asked || !given || asked === given || EMPTY_MARK.test(given.passage.text)) return [];
      const { text } = asked.passage;
      return [
        {
          question: withChoices(questionIn(asked, { start: 0, end: text.length }), reads[row[offer] ?? -1]),
          reply: wholePiece(given),
          marked: true,
        },
      ];
    });
  });
}

/** "yes ○" beside "no ●": the answer that was not marked. */
const EMPTY_MARK = /^\s*(?:[☐□◻○◯⚪]|\[ ?\]|\( ?\))|(?:[☐□◻○◯⚪]|\[ ?\]|\( ?\))\s*$/u;

/** Without a header for it, the column next to one in which most cells ask, where no cell does. */
function besideAsking(rows: Rows, heads: readonly string[], reads: readonly Read[]): number {
  const cells = (column: number) =>
    rows.slice(1).map((row) => reads[row[column] ?? -1]?.passage.text.trim() ?? '');
  const prompt = heads.slice(0, FEW_COLUMNS).findIndex((_, column) => {
    const asked = cells(column).filter((text) => /\?\W*$/.test(text) || ASKS.test(text));
    return asked.length >= 2 && asked.length >= MOST * (rows.length - 1);
  });
  const next = prompt + 1;
  if (prompt < 0 || next >= heads.length || OTHERS.test(heads[next]!) || ASIDE.test(heads[next]!)) return -1;
  const given = cells(next);
  return given.every((text) => text.length <= LONGEST_ANSWER && !text.includes('?')) ? next : -1;
}
type Rows = readonly (readonly number[])[];
const FEW_COLUMNS = 4;
const MOST = 0.6;
const LONGEST_ANSWER = 120;
/** "Thicker: 3-0 or 5-0", "True or false", "Name a monofilament": asked without a mark. */
const ASKS = /^\w+er(?: \w+)?: .*\bor\b|\btrue or false\b|^(?:name|state|convert|give|put|which|what|how)\b/i;
/** What stands beside a question and is no answer to it. */
const ASIDE =
  /\b(?:marks?|points?|score|page|slide|time|source|level|topic|hints?|clues?|options?|choices?|who|date)\b/i;

const OFFER_HEAD = /^\W*(?:options?|choices?|choose from|pick from|out of|of)\W*$/i;

/** The choices stand in a cell of their own. */
const withChoices = (question: Piece, offer: Read | undefined): Piece =>
  offer ? { ...question, items: [...question.items, ...offer.items] } : question;

/** Without a header for it, the questions are known by their marks. */
const asking = (row: readonly number[], reads: readonly Read[]): number =>
  row.findIndex((index) => /\?\s*$/.test(reads[index]?.passage.text ?? ''));

/** Numbered questions and gaps with the entry of the same number in an answer section. */
export function sectionPairs({ note, reads }: Desk, answers: Answers): Pair[] {
  if (answers.empty) return [];
  const inTables = note.tables.flatMap(({ rows }) =>
    rows.slice(1).flatMap((row) => rowPair(row, reads, answers)),
  );
  return [
    ...reads.flatMap((read) => (read.passage.cell ? [] : numbered(note, reads, read, answers))),
    ...inTables,
  ];
}

/** "| V1 | Widest: 14, 17 or 20 G? |": a question in a row that opens with its number, answered further down. */
function rowPair(row: readonly number[], reads: readonly Read[], answers: Answers): Pair[] {
  const [label, asked, ...more] = row.map((index) => reads[index]);
  if (!label || !asked || more.length > 0 || !/\?\W*$/.test(asked.passage.text)) return [];
  const number = labelNumber(`${label.passage.text.trim()}. `);
  const entry = number === undefined ? undefined : answers.find(number, asked);
  const given = entry?.body ?? entry?.at;
  if (!given || given.read.passage.cell || given.read.passage.index < asked.passage.index) return [];
  const question = questionIn(asked, { start: 0, end: asked.passage.text.length });
  return [{ question, reply: replyIn(given.read, firstSentence(given)).piece, marked: true }];
}

function numbered(note: Note, reads: readonly Read[], read: Read, answers: Answers): Pair[] {
  return linesOf(read)
    .flatMap((line) => askedOn(read, line))
    .flatMap((line, i) => {
      const text = read.passage.text.slice(line.start, line.end);
      const head = text.slice(0, 14);
      const number =
        labelNumber(head) ?? plainNumber(head) ?? (i === 0 ? markerNumber(note, read) : undefined);
      const entry = number === undefined ? undefined : answers.find(number, read);
      const given = entry?.body ?? entry?.at;
      if (!given || given.read.passage.index < read.passage.index) return [];
      if (given.read === read && given.span.start < line.end) return [];
      const asks =
        text.includes('?') || CHOICE.test(text) || gapIn(read, line) || REQUEST.test(text.slice(0, 60));
      if (!asks && (!orderCue(questionIn(read, line).items) || askedLater(note, reads, read, given, number)))
        return [];
      const reply = replyIn(given.read, firstSentence(given));
      return [{ question: questionIn(read, line), reply: reply.piece, marked: true }];
    });
}

/** "2. Thickest first: 1, 0, 3-0", in a list further up: the key is that of a question 2 which stands between. */
const askedLater = (
  note: Note,
  reads: readonly Read[],
  { passage }: Read,
  { read }: Piece,
  number: number | undefined,
): boolean =>
  reads
    .slice(passage.index + 1, read.passage.index)
    .some(
      (other) =>
        other.passage.list !== undefined &&
        other.passage.list.list !== passage.list?.list &&
        markerNumber(note, other) === number &&
        /[?:]/.test(other.passage.text),
    );

/** "State the colour of a 22 G cannula." behind its number. */
const REQUEST =
  /^[^a-z]{0,6}(?:[a-z]?\d{1,2}\b[^a-z]{0,6})?(?:state|name|give|find|work out|calculate|convert|say|write down|what|which|how|tell)\b/i;

/** "is (thinner / thicker) than": one of the two is to be chosen. */
const CHOICE = /\([^()/\n]{2,24}\/[^()/\n]{2,24}\)/;

/** A reason after the answer is read on its own. */
function firstSentence({ read, span }: Piece): Span {
  const text = read.passage.text.slice(span.start, span.end);
  const stop = /[.;](?=\s+\S)|\n/.exec(text.slice(2));
  return { start: span.start, end: stop ? span.start + 2 + stop.index : span.end };
}
