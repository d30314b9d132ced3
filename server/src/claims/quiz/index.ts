/** What keys and answers assert: choices marked right, and questions together with their replies. */
import type { Note, Span } from '../../notes/model.ts';
import { textOf } from '../text/joined.ts';
import { lineAt } from '../text/lines.ts';
import type { Whole } from '../text/scenes.ts';
import { arbitrated } from './arbiter.ts';
import { byLetter } from './by-letter.ts';
import { leaning } from './carried.ts';
import { readChoice } from './choice.ts';
import { type Quiz, quizzes } from './collect.ts';
import { credited } from './credited.ts';
import { crossed } from './crosses.ts';
import { type Desk, type KeyReading, sceneOf, spanOf } from './desk.ts';
import { inTurn } from './in-turn.ts';
import { type Keyed, keyed } from './key.ts';
import { led } from './led.ts';
import { because } from './loose/because.ts';
import { amongColours } from './loose/choices.ts';
import { loosely } from './loose/index.ts';
import { headOf, numbersIn } from './loose/said.ts';
import { asksOfSuction } from './loose/suction.ts';
import { matched } from './matching.ts';
import { narrated } from './narrated.ts';
import { type Pair, pairs, placeOfReply, replySpan } from './pairs.ts';
import { type Piece, piece } from './piece.ts';
import { readReason } from './reasons.ts';
import { readReply } from './reply.ts';
import { sectionPairs, tablePairs } from './sections.ts';
import { sortedPairs } from './sorting.ts';
import { truthful } from './truthful.ts';

export type { KeyReading } from './desk.ts';

export interface Keys {
  readonly readings: readonly KeyReading[];
  /** The choices of every question with a key: what they say is said by the key, or not at all. */
  readonly choices: readonly Span[];
}

export function readKeys(note: Note, { reads, scenes, answers }: Whole): Keys {
  const desk: Desk = { note, reads, scenes };
  const all = quizzes(note, reads);
  const asking = new Set(all.map(({ question }) => question.read.passage.index));
  const match = matched(desk, answers, asking);
  const offering = all.filter(({ question }) => !match.numbers.has(question.read.passage.index));
  const offered = new Set(
    offering.flatMap(({ question, options }) => [question, ...options].map(({ read }) => read.passage.index)),
  );
  const keys = keyed(note, reads, offering, answers);
  const letters = byLetter(desk);
  const settled = [...keys, ...letters.keys].map(({ quiz }) => quiz);
  const rows = reads.flatMap((read) => inTurn(desk, read));
  const answering = rows.map(({ reply: { read, span } }) => ({ read, span }));
  const inRow = ({ reply: { read, span } }: Pair): boolean =>
    answering.some((row) => row.read === read && row.span.start >= span.start && row.span.start < span.end);
  const near = pairs(desk, offered).filter((pair) => !inRow(pair));
  const met = new Set(near.map(placeOfReply));
  const byNumber = sectionPairs(desk, answers);
  const counted = new Set(byNumber.map(placeOfReply));
  const replied = [
    ...near,
    ...rows.filter((pair) => !counted.has(placeOfReply(pair))),
    ...reads.flatMap((read) => truthful(desk, read)).filter((pair) => !met.has(placeOfReply(pair))),
    ...reads.flatMap((read) => sortedPairs(desk, read)),
    ...reads.flatMap((read) => led(desk, read)),
    ...reads.flatMap((read) => narrated(read)).filter((pair) => !met.has(placeOfReply(pair))),
    ...tablePairs(desk),
    ...byNumber,
  ];
  const free = replied.filter(
    (pair) =>
      !settled.some((quiz) => holdsQuestion(quiz, pair.question)) &&
      !quotedWhole(pair) &&
      !lied(pair) &&
      !counts(pair) &&
      !ofAnother(pair) &&
      !ofOtherLabel(pair),
  );
  return {
    readings: [
      ...[...keys, ...letters.keys, ...crossed(note, reads)].flatMap((key) => readKey(key, desk)),
      ...keys.flatMap((key) => readReason(key, desk)),
      ...match.readings,
      ...letters.readings,
      ...reads.flatMap((read) => arbitrated(desk, read)),
      ...reads.flatMap((read) => credited(desk, read)),
      ...free.flatMap((pair) => withReason(pair, readPair(pair, desk), desk)),
    ],
    choices: keys.flatMap(({ quiz }) => quiz.options.map(spanOf)),
  };
}

/** Other lines of a passage may ask something else: "Q2. Colour of an 18 G? ⏎ Q3. 18 Fr in mm: (a) 5 (b) 6". */
const holdsQuestion = ({ question, options, end }: Quiz, { read, span }: Piece): boolean => {
  const first = options.find((option) => option.read === read)?.span.start ?? question.span.start;
  return read === question.read && span.start < end && span.end > Math.min(first, question.span.start);
};

/** As it stands; else made whole by the question before it. */
function readPair(pair: Pair, desk: Desk): KeyReading[] {
  const read = readWhole(pair, desk);
  const question = read.length > 0 ? undefined : leaning(desk, pair.question);
  return question ? readWhole({ ...pair, question }, desk) : read;
}

/** What the grammar reads; else what the words of the question ask for, wherever they stand. */
function readWhole(pair: Pair, desk: Desk): KeyReading[] {
  const { question, reply, marked } = pair;
  // "How big is it? Eighteen millimetres? – Six.": guessed, and then answered.
  if (reply.items.slice(1, 5).some((item, i) => item.word === '?' && reply.items.length > i + 2)) return [];
  // "What does moving from 4-0 to 6-0 do to it? It makes it finer.": said of the move, not of the first.
  if (OF_A_MOVE.test(textOf(question.items))) return [];
  const focus = replySpan(pair);
  const first = (marked && figureAlone(reply)) || asksOfSuction(question) || amongColours(question);
  const bare = first ? loosely(question, reply, [], focus, desk) : undefined;
  if (bare && bare.length > 0) return bare;
  const read = readReply(wholly(pair) ? { ...pair, marked: true } : pair, desk);
  if (read.length > 0 || (!marked && reply.items.length > LONGEST_UNMARKED)) return read;
  const found = bare ?? loosely(question, reply, [], focus, desk);
  const whole = found.length > 0 ? undefined : withLead(question);
  return whole ? loosely(whole, reply, [], focus, desk) : found;
}

/** And what the reply says behind its head, of the answer that the head names. */
function withReason({ question, reply, marked }: Pair, read: KeyReading[], desk: Desk): KeyReading[] {
  const head = headOf(reply);
  if (
    (!marked && read.length === 0) ||
    head === reply ||
    head.items.length === 0 ||
    head.items.length > LONGEST_UNMARKED
  )
    return read;
  const rest = piece(reply.read, head.span.end, reply.span.end);
  const sizes = head.items.filter(({ kind }) => kind === 'size');
  const numbers = numbersIn(head).map(({ value }) => value);
  const named = question.items.filter(({ mention }) =>
    mention?.sizes.some(({ value }) => numbers.includes(value)),
  );
  const chosen = sizes.length > 0 ? sizes : named;
  return chosen.length > 1 ? read : [...read, ...because(question, chosen, rest, sceneOf(desk, question))];
}

/** "You want one finer than 4-0. What do you ask for?": a question that names nothing asks about the sentence before it. */
function withLead({ read, span, items }: Piece): Piece | undefined {
  const names = items.some(({ kind, colour }) => kind === 'size' || colour);
  // "The outside of an 18 Fr, please. 4 mm, 6 mm or 8 mm?": nothing but what is offered.
  const offers = items.every(
    ({ kind, word }) => kind !== 'word' || /^(?:or|mm|is|it|and|\d+(?:\.\d+)?)$/.test(word),
  );
  if (names && !offers) return undefined;
  const at = read.sentences.findIndex(({ start, end }) => start <= span.start && span.start < end);
  const lead = read.sentences[at - 1];
  return lead && lead.close === '.' && lineAt(read.passage, lead.start).end >= span.start
    ? piece(read, lead.start, span.end)
    : undefined;
}
const OF_A_MOVE = /\bwhat (?:does|do|did|would|will) .*\bfrom .* to .* (?:do|change|bring)\b/;
/** "18": what it was taken for on its way says less than what was asked. */
const figureAlone = (reply: Piece): boolean => numbersIn(reply).length === 1 && reply.items.length <= 3;

/** A paragraph of its own that is short, below a paragraph that asks and no more. */
const wholly = ({ question, reply }: Pair): boolean =>
  question.read !== reply.read &&
  reply.items.length <= LONGEST_UNMARKED &&
  reply.read.sentences.length === 1 &&
  question.read.sentences.length === 1 &&
  question.read.passage.list?.list === reply.read.passage.list?.list;

/** What only its place makes an answer is short. */
const LONGEST_UNMARKED = 6;

function readKey(key: Keyed, desk: Desk): KeyReading[] {
  const { question, options } = key.quiz;
  const read = asksOfSuction(question) ? [] : readChoice(key, desk);
  // "You need a thread for the cornea, thinner than 9-0.": what it is used for is the lesser part.
  const than = question.items.some(({ word }) => word === 'than');
  if (key.several || read.some(({ claim }) => claim.kind !== 'category' || !than)) return read;
  const loose = loosely(question, key.chosen, options, spanOf(key.at), desk);
  const compares = loose.length > 0 && loose.every(({ claim }) => claim.kind === 'comparison');
  return read.length === 0 || compares ? loose : read;
}

/** "(iv) 18 Fr in mm?" and behind it "Answers. (i) 18 G.": the answer to another. */
function ofOtherLabel({ question, reply }: Pair): boolean {
  const [asked, said] = [bracketLabel(question), bracketLabel(reply)];
  return asked !== undefined && said !== undefined && asked !== said;
}

/** The "(iv)" that a question or an answer opens with. */
function bracketLabel({ read, span: { start } }: Piece): string | undefined {
  const { text } = read.passage;
  const before = /\(([ivx]{1,4}|[a-h]|\d{1,2})\)\W*$/i.exec(text.slice(Math.max(0, start - 8), start));
  const own = before ?? /^[\s*]*\(([ivx]{1,4}|[a-h]|\d{1,2})\)/i.exec(text.slice(start, start + 10));
  return own?.[1]?.toLowerCase();
}

/** "orange → 16: 14. 14: 7. 25: 1": how many gave which reply. */
const counts = ({ reply: { read, span } }: Pair): boolean =>
  COUNTS.test(read.passage.text.slice(span.start, Math.min(span.end, span.start + 60)));
const COUNTS = /^\W{0,3}\d{1,2}: \d{1,3}[.;,] \d{1,2}: \d/;

/** "You've keyed 24. 14!": what another put there. */
const ofAnother = ({ reply: { read, span } }: Pair): boolean => {
  const { text } = read.passage;
  return (
    OF_ANOTHER.test(text.slice(span.start, Math.min(span.end, span.start + 40))) ||
    POPULAR.test(text.slice(Math.max(0, span.start - 32), span.start)) ||
    AS_NUMBER.test(text.slice(span.start, span.end)) ||
    OLD_SET.test(text.slice(span.start, span.end)) ||
    IN_A_ROW.test(text.slice(span.start, Math.min(span.end, span.start + 120))) ||
    BREAKS_OFF.test(text.slice(Math.max(span.start, span.end - 4), span.end + 12)) ||
    outbid(text.slice(span.start, span.end), text.slice(span.end, span.end + 28))
  );
};
/** "Is 18 bigger than 16?" "As a number bigger.": of the figures. */
const AS_NUMBER = /\bas (?:an? )?(?:number|figure|numeral)s?\b/i;
/** "22 G | 18 G | 14 G*": the choices; "third": which of them. */
const IN_A_ROW =
  /[☐□]\W*$|[–—-]\s*no\W*$|\b(?:write|put|enter) (?:t|true|f|false) or (?:f|false|t|true)\b|\|[^|]*\||^\W*(?:the )?(?:third|fourth|fifth)\W*$/i;
/** "In our old set the 18 G." */
const OLD_SET =
  /\bdepends?\b|\b(?:old|former|previous|last year's) (?:set|kit|stock|system|scheme|series|code)s?\b/i;
/** "**Grey.** Popular: white": the wrong answer that many give. */
const POPULAR =
  /\b(?:popular|common|commonest|often|usual|favourite|tempting|distractors?|traps?|wrong|not|many|most|(?:class|room|group)(?=['’]?s? (?:answer|guess|vote|said)))\b[^:.?!\n]{0,16}:\W*$|\b(?:false|wrong|no)\s*(?:⇒|→|->|=>)\W*$/i;
/** R: "28." N: "24.": the next speaker gives another number. */
const outbid = (said: string, after: string): boolean => {
  const [, other] = /^\W*\p{Lu}\p{L}{0,11}: ?["“]?(\d+(?:\.\d+)?)\b/u.exec(after) ?? [];
  return other !== undefined && said.length < 24 && !said.includes(other);
};
/** "41... no. 39": thought better of. */
const BREAKS_OFF =
  /(?:\.{2,}|…)\s*\d|(?:\.{2,}|…|[—–])\s*(?:er |sorry,? |wait,? )?(?:no|wait|sorry|i mean)\b/i;
const OF_ANOTHER =
  /^\W{0,3}(?:the )?(?:class|room|group|first|early|quick|usual|majority|audience)(?:['’]?s)? (?:answers?|answered|said|says|guess|guesses|vote|voted|try|attempt|reply)\b|^\W{0,3}(?:(?:(?:an?|the|one|another|my|our) )?(?:student|candidate|learner|trainee|pupil|registrar|intern|junior|nurse|colleague|resident|parent|relative)s?(?: [A-D1-9])?|you|he|she|they|one|some|many|most)(?:['’](?:ve|d)| have| has| had)? (?:\w+ )?(?:keyed|put|ticked|say|said|wrote|write|written|given|give|answer|answered|marked|mark|circled|circle)\b/i;

/** "\"wider: 20 G or 18 G? 20 G\". It's the 18.": question and reply in one quotation are somebody else's. */
const quotedWhole = ({ question, reply }: Pair): boolean =>
  question.read === reply.read &&
  question.read.quotes.some(
    ([start, end]) => start <= question.span.start && question.span.end < end && reply.span.start < end,
  );

/** "one lie allowed a round:", above what was asked and answered. */
const lied = ({ question: { read, span } }: Pair): boolean =>
  /\b(?:one|a|each with a) lie\b(?! in it\b)/i.test(read.passage.text.slice(0, span.start));
