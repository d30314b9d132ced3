/**
 * Papers and their keys known by their labels alone: questions counted V1, V2, V3, and further down lines counted the same way
 * that ask nothing; or as many answers in a row as there are questions.
 */
import { matchesOf } from '../../notes/index.ts';
import type { Note, Span } from '../../notes/model.ts';
import { orderCue } from '../constructions/order.ts';
import type { Read } from '../text/scenes.ts';
import { askedOn, linesOf } from './lines.ts';
import { partsIn } from './parts-in.ts';
import {
  LETTERS_FROM,
  labelNumber,
  markerNumber,
  type Piece,
  piece,
  seriesNumber,
  written,
} from './piece.ts';
import { wordLabel, wordNumber } from './spoken.ts';

/** A line with its label, and what stands behind the label. */
interface Line {
  readonly label: number;
  readonly body: Piece;
  readonly asks: boolean;
}

/** Lines counted one by one. */
type Run = readonly Line[];

/** A line of a key: the label of the question, and what is answered. */
export interface Answered {
  readonly label: number;
  readonly body: Piece;
}

const LONGEST_LINE = 400;
const LONGEST_ANSWER = 160;
/** Passages between a paper and its key. */
const FAR = 40;
const FEWEST = 2;
/** Share of a paper's lines that ask, and of its questions that a key must answer. */
const MOST = 0.6;
/** Labels of one way of counting lie closer together. */
const BAND = 100;

/** Every key of the note that its labels give away. */
export function labelledKeys(note: Note, reads: readonly Read[]): Answered[][] {
  const papers: Run[] = [];
  const keys: Answered[][] = [];
  const met = new Set<Run>();
  for (const run of runsOf(note, reads)) {
    const asking = run.filter(({ asks }) => asks).length;
    if (asking >= MOST * run.length) {
      if (run.filter(({ body }) => open(body)).length >= MOST * run.length) papers.push(run);
    } else if (asking === 0) {
      const paper = papers.findLast((one) => !met.has(one) && answers(run, one));
      if (!paper) continue;
      met.add(paper);
      keys.push(run.map(({ body }, i) => ({ label: paper[i]!.label, body })));
    }
  }
  return papers.length === 0 ? keys : [...keys, ...reads.flatMap((read) => inOrder(read, papers))];
}

/** Runs of labelled lines in the order in which they end. */
function runsOf(note: Note, reads: readonly Read[]): Run[] {
  const open = new Map<number, Line[]>();
  const runs: Line[][] = [];
  for (const read of reads)
    for (const line of labelledLines(note, read)) {
      const band = Math.floor(line.label / BAND);
      const run = open.get(band);
      if (run && run.at(-1)!.label + 1 === line.label) run.push(line);
      else {
        const fresh = [line];
        open.set(band, fresh);
        runs.push(fresh);
      }
    }
  return runs.filter((run) => run.length >= FEWEST);
}

function labelledLines(note: Note, read: Read): Line[] {
  const { passage } = read;
  if (passage.cell || passage.kind === 'heading' || passage.kind === 'alt') return [];
  return linesOf(read)
    .flatMap((line) => askedOn(read, line))
    .flatMap((line, i) => {
      if (line.end - line.start > LONGEST_LINE) return [];
      const text = passage.text.slice(line.start, line.end);
      const head = text.slice(0, 20);
      const written = NUMBER.test(head) ? undefined : (labelNumber(head) ?? wordNumber(head));
      const label = written ?? (i === 0 ? markerNumber(note, read) : undefined);
      if (label === undefined) return [];
      const lead = written === undefined ? 0 : labelLength(text);
      return [{ label, body: piece(read, line.start + lead, line.end), asks: asksAt(read, line) }];
    });
}

/** "3. 13.5": an answer and no label. */
const NUMBER = /^\s*\d{1,2}(?:[.,]\d{1,2})?\.?\s*$/;
const LABEL =
  /^[\s*_(>]*(?:q(?:uestion)?\s*)?(?:[a-z]?\d{1,2}(?:\.\d{1,2})?|[ivx]{1,4}|[a-h])\b[\s*_).:–—-]*/i;
const labelLength = (text: string): number =>
  wordLabel(text.slice(0, 20)) || (LABEL.exec(text)?.[0].length ?? 0);

/** Nothing behind its question mark but the marks it earns: it waits for its answer. */
function open(asked: Piece): boolean {
  const text = written(asked);
  if (TO_JUDGE.test(text)) return true;
  const rest = text.slice(text.lastIndexOf('?') + 1);
  return (
    !text.includes('?') ||
    !/[a-z0-9]/i.test(rest.replace(/\(\d{1,2} ?(?:marks?|points?|pts?)?\)/, '')) ||
    OFFERS.test(rest)
  );
}
/** "True or false? A 10 Fr is wider than an 8 Fr.": no verdict behind the statement. */
const TO_JUDGE =
  /^\W*true or false\?\W+(?!.*\b(?:t|f|true|false)\W*$)[A-Z0-9](?:[^.?!]|\.(?=\d)){8,140}[.!]?\W*$/i;
/** Choices behind the mark. */
const OFFERS =
  /^\W*\d[^\s,;.]{0,6}(?: ?[A-Za-z]{1,3})?(?:, (?:or )?\d[^\s,;]{0,6}(?: ?[A-Za-z]{1,3})?){1,5}\.?\W*$|\b[Aa][).]?\s.*\b[Bb][).]?\s|\/|\bor\b|\ba\).*\bb\)|\(i\)/;

/** It has a question mark, a gap or a choice, or sets a task. */
function asksAt(read: Read, line: Span): boolean {
  const text = read.passage.text.slice(line.start, line.end);
  return (
    /\?|_{3,}|\.{5,}|\btrue (?:or|\/) false\b|\bT ?\/ ?F\b/i.test(text) ||
    TASK.test(text) ||
    CHOICE.test(text) ||
    orderCue(piece(read, line.start, line.end).items) !== undefined
  );
}
const TASK =
  /^\W*(?:[a-z]?\d{1,2}\W{1,3}|[a-h]\W{1,2})?(?:convert|calculate|work out|turn|name|give|state|find|put|sort|order|rank|arrange|list|write|which|what|how|say|tell|complete|fill)\b/i;
/** "Thicker: 3-0 or 5-0", "(thinner / thicker)". */
const CHOICE = /^[^:.]{3,40}: [^.]{1,60}\bor\b[^.]{1,40}$|\([^()/\n]{2,24}\/[^()/\n]{2,24}\)/;

/** Counted like the paper, or "A1, A2" under "Q1, Q2"; of plain numbers the lines must look like answers to those questions. */
function answers(run: Run, paper: Run): boolean {
  const [from, to] = [paper.at(-1)!.body.read.passage.index, run[0]!.body.read.passage.index];
  if (from > to || to - from > FAR || run.length > paper.length || run.length < MOST * paper.length)
    return false;
  const asked = paper[0]!.label;
  const series = run[0]!.label === seriesNumber('A', `${asked}`);
  if (run[0]!.label !== asked && !series) return false;
  if (run.some(({ body }) => body.span.end - body.span.start > LONGEST_ANSWER || body.items.length === 0))
    return false;
  return series || asked >= LETTERS_FROM * 2 || meet(run, paper);
}

/** Most of the answers are of the kind asked for. */
function meet(run: Run, paper: Run): boolean {
  const met = run.map(({ body }, i) => suits(paper[i]!.body, body)).filter((one) => one !== undefined);
  return met.length >= FEWEST && met.filter(Boolean).length >= MOST * met.length + 0.2;
}

/** Is this answer of the kind that the question asks for? Undefined when the question does not tell. */
function suits(question: Piece, answer: Piece): boolean | undefined {
  const text = written(question).toLowerCase();
  const said = written(answer).toLowerCase();
  if (CHOOSES.test(said)) return true;
  if (/\bcolou?r\b/.test(text)) return answer.items.some(({ colour }) => colour !== undefined);
  if (
    /\bhow (?:many|wide|thick|big)\b|\b(?:what|which|whose) (?:size|gauge|french|number)\b|\bmm\b|\bmillimet/.test(
      text,
    )
  )
    return /\d/.test(said) || /\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve)\b/.test(said);
  if (/\bor\b|\bwhich\b/.test(text) && question.items.some(({ magnitude }) => magnitude))
    return /\d|\b(?:first|second|last|wider|narrower|thicker|thinner|larger|smaller|[a-f])\b/.test(said);
  if (/^\W*(?:is|are|does|do|can|will|true)\b/.test(text))
    return /^\W*(?:yes|no|true|false|right|wrong|t|f)\b/.test(said);
  return undefined;
}

/** "the second", "option 3", "(b)": of whatever was offered. */
const CHOOSES =
  /^\W*(?:(?:is|it's|the|option|choice|letter|goes to) )*(?:first|second|third|last|middle|option \d|[a-f])\b\W*(?:one\W*)?$/;

const ANNOUNCED =
  /^\W*(?:(?:the|model|right|correct|all) )?(?:answers?|key|solutions)\b(?![^:]{0,40}\d)[^:.\n]{0,40}[:.][\s*_]+(?=\S)/i;

/** "Answers in order: pink / 6 mm / the 14": as many as the nearest paper above has questions. */
function inOrder(read: Read, papers: readonly Run[]): Answered[][] {
  const { passage } = read;
  if (passage.cell || passage.text.length > LONGEST_LINE) return [];
  const lead = ANNOUNCED.exec(passage.text);
  if (!lead || /\?/.test(passage.text)) return [];
  const paper = papers.findLast((one) => one.at(-1)!.body.read.passage.index < passage.index);
  const parts = paper ? partsOf(read, lead[0].length, paper) : [];
  if (!paper || parts.length !== paper.length || parts.some(({ items }) => items.length === 0)) return [];
  if (parts.some(({ span: { start } }) => labelNumber(passage.text.slice(start, start + 12)) !== undefined))
    return [];
  return [parts.map((body, i) => ({ label: paper[i]!.label, body }))];
}

/** "1 pink, 2 on the outer curve, 3 16 Fr": each number stands where an answer ends. */
function countedParts(text: string, from: number, paper: Run): Span[] | undefined {
  const starts: { at: number; body: number }[] = [];
  for (const { label } of paper) {
    const after = starts.at(-1)?.body ?? from;
    const found = matchesOf(text.slice(after), COUNT).find((match) => Number(match[2]) === label);
    if (!found) return undefined;
    const at = after + found.index + found[1]!.length;
    if (starts.length === 0 && at > from + 2) return undefined;
    starts.push({ at, body: at + found[0].length - found[1]!.length });
  }
  return starts.map(({ body }, i) => ({ start: body, end: starts[i + 1]?.at ?? text.length }));
}
const COUNT = /(^[\s*_(]*|[,;.|/·][\s*_(]*)(\d{1,2})[\s*_).:=–—-]+(?=\S)/g;

const CAPITAL = /[A-F]/g;

/** Cut where the numbers of the questions stand one after the other; else at the mark that cuts it at all. */
function partsOf(read: Read, from: number, paper: Run): Piece[] {
  const text = read.passage.text.replace(/[.)*_\s]+$/, '');
  const counted = countedParts(text, from, paper);
  if (counted) return counted.map(({ start, end }) => piece(read, start, end));
  const parts = partsIn(text, { start: from, end: text.length });
  if (parts.length > 1) return parts.map(({ start, end }) => piece(read, start, end));
  // "B C A B"
  return /^[A-F](?: +[A-F])+$/.test(text.slice(from))
    ? matchesOf(text.slice(from), CAPITAL).map(({ index }) => piece(read, from + index, from + index + 1))
    : [];
}
