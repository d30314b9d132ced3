/** Finds which choice a note marks as right: a marked option, a line "Answer: B", or an answer key further down. */
import type { Note, Span } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';
import { type Answers, answerCell } from './answers.ts';
import type { Quiz } from './collect.ts';
import { placeSaid } from './loose/said.ts';
import { markerNumber, type Piece, piece, placeOf } from './piece.ts';
import { pointed } from './pointed.ts';

export interface Keyed {
  readonly quiz: Quiz;
  readonly chosen: Piece;
  /** What a finding points at: the option marked, or the letter in the key. */
  readonly at: Piece;
  /** One of several that the key names. */
  readonly several?: true;
  /** Where the entry of this question ends in the key. */
  readonly limit?: number | undefined;
  /** The choices in the order in which the key names them. */
  readonly sequence?: readonly Piece[];
}

const TICK =
  /[✓✔☑✅]|\((?:correct|right|answer|key)\)|(?:←|<--?|⇐)\s*(?:correct|answer|key|$)|\bcorrect answer\b|\*\s*$/i;
const KEY_LINE =
  /(?:^|[\n(*—–-]\s*|[.?)]\s+|\s\*{0,2})(?:(?:(?:right|correct|best|model|keyed)\s+)?(?:answers?|choices?|options?|response)|ans|keyed|key|solution|correct|right|(?<!\bor |\/ ?|[0-9a-z]: )(?:wrong|false|odd)(?: one| statement)?(?: out)?)\.?\s*(?:is|was|as|:|=|—|–|-|→|⇒|▸|=>)?\s*[([]?([A-Fa-f]|i{1,3}|iv|vi?)\b(?=[)\].,;:]|\s*$|\s*\n|\s*[(—–-]|\s*(?:,|and|&|\+|→)\s*\(?[A-Fa-f]\b|\s+[A-F]\b)/i;

export function keyed(note: Note, reads: readonly Read[], found: readonly Quiz[], answers: Answers): Keyed[] {
  return found.flatMap((quiz, i) => {
    const limit = found[i + 1]?.question.read.passage.index ?? reads.length;
    const ticks = severalTicked(quiz);
    if (ticks.length > 1) return ticks;
    const hit =
      marked(quiz) ??
      keyCell(note, reads, quiz) ??
      nearest(keyLine(note, reads, quiz, limit), tabled(answers, quiz)) ??
      pointed(reads, quiz);
    return hit ? several(hit) : [];
  });
}

/** "Answers: b, c, a": a line for all the questions; what it says of the last is not what it says first. */
function nearest(line: Keyed | undefined, counted: Keyed | undefined): Keyed | undefined {
  const shared = line && counted && line.at.read === counted.at.read;
  return shared ? counted : (line ?? counted);
}

/** More boxes than one ticked: each is an answer, where the boxes left empty show that there was a choice. */
function severalTicked(quiz: Quiz): Keyed[] {
  const hits = quiz.options.filter(checked);
  return hits.length < 2 || hits.length === quiz.options.length
    ? []
    : hits.map((chosen) => ({ quiz, chosen, at: chosen, several: true }));
}

const NEXT_LETTER = /^\)?\s*(?:,|;|and|&|\+|→|>|<|–|-)?\s*(?:and\s+)?\(?([A-Fa-f1-6])\)?(?=[\s,;.)→><–-]|$)/;

/** "a, c": the key goes on after its first letter. */
function several(hit: Keyed): Keyed[] {
  const { quiz, at } = hit;
  const text = at.read.passage.text.slice(0, hit.limit);
  const pieces = [hit.chosen];
  let end = at.span.end;
  for (;;) {
    const next = NEXT_LETTER.exec(text.slice(end, end + 16));
    const place = next ? (/\d/.test(next[1]!) ? Number(next[1]) - 1 : placeOf(next[1]!)) : -1;
    const piece = quiz.options[place];
    if (!next || !piece || (/\d/.test(next[1]!) && !numbered(quiz))) break;
    pieces.push(piece);
    end += next[0].length;
  }
  const rest = text.slice(end).split('\n')[0]!;
  if (pieces.length < 2 || new Set(pieces).size < pieces.length || !/^[\s.;)*]*$/.test(rest)) return [hit];
  const whole = piece(at.read, at.span.start, end);
  return pieces.map((chosen) => ({ quiz, chosen, at: whole, several: true, sequence: pieces }));
}

/** The key column of a quiz set as a table. */
function keyCell(note: Note, reads: readonly Read[], quiz: Quiz): Keyed | undefined {
  const cell = answerCell(note, reads, quiz.question.read);
  const letter = /^\(?([A-Fa-f])\)?\.?$/.exec(cell?.passage.text.trim() ?? '');
  const chosen = letter && quiz.options[placeOf(letter[1]!)];
  return cell && chosen ? { quiz, chosen, at: piece(cell, 0, cell.passage.text.length) } : undefined;
}

/** Longest label in front of an option, characters: "(iii) ", "option b) ". */
const LABEL = 12;

/** Exactly one option in bold, ticked or checked. */
function marked(quiz: Quiz): Keyed | undefined {
  for (const test of [
    ticked,
    starred,
    boxed,
    checked,
    bold,
    left(quiz),
    markedLetter('strong'),
    markedLetter('emphasis'),
  ]) {
    const hits = quiz.options.filter(test);
    if (hits.length === 1) return { quiz, chosen: hits[0]!, at: hits[0]! };
  }
  return undefined;
}

/** Every other option is struck out. */
const left =
  ({ options }: Quiz) =>
  (option: Piece): boolean =>
    !struck(option) && options.every((other) => other === option || struck(other));
const struck = ({ read, span }: Piece): boolean =>
  read.passage.marks.some(
    (mark) => mark.kind === 'strike' && mark.start <= span.start + 2 && mark.end >= span.end - 2,
  );

/** Only the letter in front of the option is set off. */
const markedLetter =
  (kind: 'strong' | 'emphasis') =>
  ({ read, span }: Piece): boolean =>
    read.passage.marks.some(
      (mark) =>
        mark.kind === kind &&
        mark.end <= span.start + 1 &&
        mark.end >= span.start - 2 &&
        mark.end - mark.start <= 4,
    );

function ticked({ read, span }: Piece): boolean {
  // "☐ 3-0 ☑ 5-0": the tick behind a choice is the box of the next.
  if (/[☐○◯□☑☒]\s*$/u.test(read.passage.text.slice(Math.max(0, span.start - 3), span.start))) return false;
  const line = read.passage.text.slice(span.start).split('\n')[0]!;
  const inline =
    read.passage.text.slice(span.start, span.end).includes('\n') || line.length < span.end - span.start + 12;
  return TICK.test(inline ? line : read.passage.text.slice(span.start, span.end));
}
/** "* 20 G", "*b) 20 G" among others without. */
const starred = ({ read, span }: Piece): boolean =>
  /^\s*\*\s*\S/.test(read.passage.text.slice(span.start, span.start + 4)) ||
  /\*\s*\(?[A-Fa-f][).:]\s*$/.test(read.passage.text.slice(Math.max(0, span.start - 8), span.start));
/** "(x) 20 G", "☑ 20 G" among empty ones. */
const boxed = ({ read, span }: Piece): boolean =>
  /(?:[☑☒✅✔✓]|\((?:x|X|•|✓)\)|\[(?:x|X)\])\s*$/u.test(
    read.passage.text.slice(Math.max(0, span.start - 6), span.start),
  );
const checked = ({ read }: Piece) => read.passage.list?.checked === true;

/** Most of the option is set in strong type, and not the question with it. */
function bold({ read, span }: Piece): boolean {
  const length = span.end - span.start;
  return read.passage.marks.some(
    (mark) =>
      mark.kind === 'strong' &&
      mark.start >= span.start - LABEL &&
      Math.min(mark.end, span.end) - Math.max(mark.start, span.start) >= 0.6 * length,
  );
}

/** "Answer: B", "B is correct", "Answer: 16 G" in the passage of the options or in the next few. */
function keyLine(note: Note, reads: readonly Read[], quiz: Quiz, limit: number): Keyed | undefined {
  const first = quiz.question.read.passage.index;
  for (let i = first; i === first || i < Math.min(limit, quiz.last + 4); i++) {
    const read = reads[i]!;
    if (read.passage.kind === 'heading' && i > quiz.last) break;
    if (i > quiz.last && ofAnother(note, read, quiz)) continue;
    const own = read === quiz.question.read;
    const within = own
      ? { start: quiz.question.span.start, end: quiz.end }
      : { start: 0, end: read.passage.text.length };
    const hit =
      letterIn(read, quiz, within) ??
      contentIn(read, quiz, within, i > quiz.last) ??
      (i > quiz.last ? echoIn(read, quiz) : undefined) ??
      (i === quiz.last + 1 ? aloneIn(read, quiz) : undefined);
    if (hit) return hit;
  }
  return undefined;
}

/** "1. (a)", below the third question: an entry of a counted key, for the first. */
const ofAnother = (note: Note, read: Read, { number }: Quiz): boolean =>
  COUNTED_LETTER.test(read.passage.text) && (markerNumber(note, read) ?? number) !== number;
const COUNTED_LETTER = /^\W*[A-F](?:[).:,]|\s+[–—-]\s|\W*$)/i;

/** "… c) 22 G → b", "… c) 22 G [b]": the letter at the very end. */
const KEY_TAIL = /(?:→|=>|⇒|->|\[|\(|[—–]\s)\s*([A-Fa-f])\s*[\])]?\s*\.?\s*$/;
const IS_RIGHT = /(?:^|[\n(*—–.]\s*)\(?([A-Fa-f])\)? (?:is|was) (?:correct|right|the answer|true)\b/;

function letterIn(read: Read, quiz: Quiz, within: Span): Keyed | undefined {
  const from = within.start;
  const text = read.passage.text.slice(from, within.end);
  for (const pattern of [KEY_LINE, IS_RIGHT, KEY_TAIL, ...(numbered(quiz) ? [KEY_NUMBER] : [])]) {
    const match = pattern.exec(text);
    const place = match && (/\d/.test(match[1]!) ? Number(match[1]) - 1 : placeOf(match[1]!));
    const chosen = match && place !== null ? quiz.options[place] : undefined;
    if (!match || !chosen || /\b(?:wrong|false|odd)\b[^\n]*\n/i.test(match[0])) continue;
    // "Pick the wrong one: A. 20 G …": the first of the choices.
    if (
      chosen.read === read &&
      chosen.span.start - (from + match.index + match[0].length) <= 3 &&
      chosen.span.start > from + match.index
    )
      continue;
    if (otherLabels(quiz, match[1]!) || (/^f$/i.test(match[1]!) && calledTrue(quiz))) continue;
    if (KEY_OF_PART.test(match[0]) && numbered(quiz)) continue;
    const end = from + match.index + match[0].length;
    return { quiz, chosen, at: piece(read, end - match[1]!.length, end) };
  }
  return undefined;
}

/** "… — T" behind one of them, "… — F" behind another: each is called true or false, and no sixth choice is named. */
const calledTrue = ({ options }: Quiz): boolean =>
  options.some(({ read: { passage } }) => /(?:[—–-]|\(|\[)\s*T\s*[)\]]?\s*\.?\s*$/.test(passage.text));

/** "Answers: (i) a" beside choices (a), (b), (c): a numeral counts the questions. */
const otherLabels = ({ options: [first] }: Quiz, label: string): boolean =>
  /^[iv]+$/i.test(label) && first !== undefined && !ROMAN_LABEL.test(labelOf(first));
const ROMAN_LABEL = /\bi[).:]?\s*$/i;
const labelOf = ({ read, span }: Piece): string =>
  read.passage.text.slice(Math.max(0, span.start - 6), span.start);

/** "Key A", over the answers to the numbered statements of part A. */
const KEY_OF_PART = /^\W*key\s+[A-F]$/i;

/** Options of an ordered list may be keyed by their number. */
const numbered = (quiz: Quiz) =>
  quiz.options.every(
    (option) =>
      (option.read.passage.list?.ordered === true && option.span.start === 0) ||
      /\([1-6]\)\s*$/.test(labelOf(option)),
  );
const KEY_NUMBER =
  /(?:^|[\n(*.?\uFFFC]\s*)(?:(?:right |correct |best |the )*(?:answers?|choice|option|ans|key|wrong)|correct(?: answers?)?|it)\.?\s*(?:is|are|:|=|—|–|-)?\s*(?:number |no\.? |option |choice |answer |#)?\(?([1-6])\b(?!\s?[).:=–—-]*\s*(?:true|false|t|f|yes|no|right|wrong)\b)(?=[).,;]|\s*$|\s*\n|\s*(?:and|&|\+|→|-)\s*[1-6]\b)/i;
const KEY_CONTENT =
  /(?:^|[\n(*]\s*|[.?]\s+|[—–-]\s+)(?:(?:(?:right|correct|best|model|keyed)\s+)?(?:answer|choice|option|response)|ans|keyed|key|solution|correct|right)\.?\s*(?:is\b|:|=|—|–|→|⇒)\s*|(?:^|\s)(?:→|⇒|=>|►|▸|➜)\s*/i;
/** Below the options "A:" opens an answer too. */
const KEY_CONTENT_AFTER =
  /(?:^|[\n(*]\s*|[.?]\s+)(?:(?:(?:right|correct|best|model|keyed)\s+)?(?:answer|choice|option|response)|ans|keyed|key|solution|correct|right|a)\.?\s*(?:is\b|:|=|—|–|→|⇒)\s*/i;
const ECHO = /^\(?([A-Fa-f])[).:]\s+(.+)$/;

/** Below the options one of them stands again, letter and words. */
function echoIn(read: Read, quiz: Quiz): Keyed | undefined {
  const match = ECHO.exec(read.passage.text.trim());
  const chosen = match && quiz.options[placeOf(match[1]!)];
  if (!match || !chosen || read.passage.list) return undefined;
  const text = plainText(chosen.read.passage.text.slice(chosen.span.start, chosen.span.end));
  return plainText(match[2]!) === text
    ? { quiz, chosen, at: piece(read, 0, read.passage.text.length) }
    : undefined;
}

/** Right below the choices one of their letters opens a paragraph: "C. It is the highest number.", "b, as 3 Fr make 1 mm". */
function aloneIn(read: Read, quiz: Quiz): Keyed | undefined {
  if (read.passage.kind === 'heading' || quiz.options[0]!.read === read) return undefined;
  const match = /^[\s>*_(]*([A-Fa-f])(?:[).:,]|\s*[–—-]\s|\s+(?:as|because|since|being|is)\b|\s*$)/.exec(
    read.passage.text,
  );
  const chosen = match && quiz.options[placeOf(match[1]!)];
  if (!match || !chosen) return undefined;
  const start = match[0].lastIndexOf(match[1]!);
  return { quiz, chosen, at: piece(read, start, start + 1) };
}

/** The key repeats one option's words. */
function contentIn(read: Read, quiz: Quiz, within: Span, after: boolean): Keyed | undefined {
  const match = (after ? KEY_CONTENT_AFTER : KEY_CONTENT).exec(
    read.passage.text.slice(within.start, within.end),
  );
  if (!match) return undefined;
  const start = within.start + match.index + match[0].length;
  const line = read.passage.text.slice(start).split('\n')[0]!;
  const chosen = sameWords(quiz, line);
  const end = start + line.trimEnd().length;
  return chosen ? { quiz, chosen, at: piece(read, start, end) } : undefined;
}

const plainText = (text: string) =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}./]+/gu, ' ')
    .replace(/\b(?:the|a|an)\b/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/[. ]+$/, '')
    .trim();

function tabled(answers: Answers, quiz: Quiz): Keyed | undefined {
  const entry = answers.find(quiz.number, quiz.question.read);
  if (
    !entry ||
    otherLabels(quiz, entry.answer) ||
    quiz.question.read.passage.index > entry.at.read.passage.index
  )
    return undefined;
  const place =
    /^[1-6]$/.test(entry.answer) && numbered(quiz) ? Number(entry.answer) - 1 : placeOf(entry.answer);
  const { options } = quiz;
  const chosen =
    options[place] ?? sameWords(quiz, entry.answer) ?? options[placeSaid(entry.at, options.length)];
  return chosen ? { quiz, chosen, at: entry.at, limit: entry.body?.span.end } : undefined;
}

/** The one option whose words the answer repeats. */
function sameWords(quiz: Quiz, answer: string): Piece | undefined {
  const said = plainText(answer);
  const hits = quiz.options.filter(({ read, span }) => {
    const text = plainText(read.passage.text.slice(span.start, span.end));
    return text.length > 0 && (said === text || said.startsWith(`${text} `));
  });
  return hits.length === 1 ? hits[0] : undefined;
}
