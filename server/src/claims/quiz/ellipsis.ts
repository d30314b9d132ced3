/**
 * Replies that leave out what was just said: "And which of those is thinner?" "The 22 G.", "A 5-0 next to a 3-0?"
 * "Thicker.", "And the 16?" "Wider still.", "Through a 25 G?" "Faster than through the 21 G."
 */
import { judgeComparison } from '../judge/comparison.ts';
import type { Axis, ComparisonClaim, Operand } from '../model.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { lineAt } from '../text/lines.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { groups } from '../text/scene.ts';
import type { Read } from '../text/scenes.ts';
import { NEGATIONS } from '../words/changes.ts';
import {
  askedMagnitude,
  compare,
  type Desk,
  eachOnce,
  type KeyReading,
  limited,
  sizeKey,
  sizesOf,
  spanOf,
} from './desk.ts';
import { type Pair, replySpan } from './pairs.ts';
import { piece } from './piece.ts';
import { YES } from './yes.ts';

type Word = Measured & { readonly axis: Axis };

export const elliptic = (pair: Pair, desk: Desk): KeyReading[] | undefined =>
  amongThose(pair, desk) ??
  thanSaid(pair) ??
  thanAsked(pair) ??
  comparedAlone(pair, desk) ??
  stillMore(pair, desk);

const asserted = (claims: readonly ComparisonClaim[]): KeyReading[] =>
  claims.map((claim) => ({ claim, stance: 'asserted' }));

const THOSE =
  /\b(?:those|these|them|the (?:two|three|four|pair|lot)|that list|ones|your (?:two|three)|of (?:the )?both)\b/;

const WHICH = /^(?:and |so |now )?(?:which|what|who)\b/;
/** "Smaller one?", "Thinnest please." */
const CALLS = /^(?:and |so |now |the )*(?:\w+er|\w+est|least|most \w+)\b/;
const SHORT = 6;

/** "Which of those is thinner?", "Which is fatter?": the choices were named just before. */
function amongThose(pair: Pair, desk: Desk): KeyReading[] | undefined {
  const { question, reply } = pair;
  const word = askedMagnitude(question.items.filter((item) => item.word !== 'please'));
  const text = textOf(question.items);
  const those =
    THOSE.test(text) || (question.items.length <= SHORT && (WHICH.test(text) || CALLS.test(text)));
  if (!word || !those || groups(question.items).length > 0) return undefined;
  const [chosen, ...more] = sizesOf(reply);
  if (!chosen || more.length > 0 || limited(question.items) || negates(reply.items)) return [];
  const choices = eachOnce(before(pair, desk));
  if (choices.length < 2 || !choices.some((one) => sizeKey(one) === sizeKey(chosen))) return [];
  const others = choices.filter(
    (one) => sizeKey(one) !== sizeKey(chosen) && systemOf(one) === systemOf(chosen),
  );
  if (others.length < choices.length - 1) return [];
  return asserted(others.map((other) => compare(chosen, other, word, replySpan(pair), spanOf(question))));
}

/** "Yes, faster than through the 21 G": said of the one size of the question. */
function thanSaid(pair: Pair): KeyReading[] | undefined {
  const { question, reply } = pair;
  const word = onlyComparative(reply.items);
  const than = reply.items.findIndex((item) => item.word === 'than');
  if (!word || than !== word.to + 1 || word.at > 3 || groups(reply.items.slice(0, word.at)).length > 0)
    return undefined;
  const [subject, ...others] = sizesOf(question);
  const [object, ...more] = sizesOf(reply);
  if (!subject || !object || others.length > 0 || more.length > 0) return undefined;
  if (systemOf(subject) !== systemOf(object) || sizeKey(subject) === sizeKey(object)) return [];
  if (negates(reply.items.slice(word.at)) || reply.items.length > than + 5) return [];
  return asserted([compare(subject, object, word, replySpan(pair), spanOf(question))]);
}

/** "What is one size thicker than 3-0?" "4-0." */
function thanAsked(pair: Pair): KeyReading[] | undefined {
  const { question, reply } = pair;
  const word = onlyComparative(question.items);
  const than = question.items.findIndex((item) => item.word === 'than');
  const [object, ...more] = sizesOf(question);
  const [subject, ...others] = sizesOf(reply);
  if (!word || than !== word.to + 1 || !object || more.length > 0 || !subject || others.length > 0)
    return undefined;
  if (!/\b(?:what|which|name|give|say)\b/.test(textOf(question.items.slice(0, word.at)))) return undefined;
  const words = reply.items.filter((item) => item.kind === 'word');
  if (words.length > FEW || negates(reply.items) || negates(question.items)) return [];
  if (systemOf(subject) !== systemOf(object) || sizeKey(subject) === sizeKey(object)) return [];
  return asserted([compare(subject, object, word, replySpan(pair), spanOf(question))]);
}

/** "Then would a 20 G be finer again?" "It would.", "Thinner still. A 19 G.": than those talked of just before. */
function stillMore(pair: Pair, desk: Desk): KeyReading[] | undefined {
  const { question, reply } = pair;
  const yes = YES.test(textOf(reply.items));
  const saying = yes ? question : reply;
  const word = onlyComparative(saying.items);
  const [subject, ...more] = sizesOf(saying);
  if (!word || !subject || more.length > 0 || negates(saying.items) || saying.items.length > LONGEST)
    return undefined;
  const after = saying.items[word.to + 1]?.word ?? '';
  if (!STILL.test(after) || saying.items.some((item) => item.word === 'than')) return undefined;
  const asked = yes ? [] : sizesOf(question);
  const others = eachOnce(asked.length > 0 ? asked : before(pair, desk)).filter(
    (one) => systemOf(one) === systemOf(subject) && sizeKey(one) !== sizeKey(subject),
  );
  const claims = others.map((other) => compare(subject, other, word, replySpan(pair), spanOf(question)));
  return asserted(againstAll(claims, desk));
}
const STILL = /^(?:still|again|yet|even)$/;
const LONGEST = 12;

const BESIDE =
  /\b(?:next to|against|beside|alongside|compared? (?:to|with)|versus|vs|and how does|set against|to)\b/;

/** "Thicker.", "Wider still.": the first of two sizes asked about; of one size, against those talked of just before. */
function comparedAlone(pair: Pair, desk: Desk): KeyReading[] | undefined {
  const { question, reply } = pair;
  const word = onlyComparative(reply.items);
  const words = reply.items.filter((item) => item.kind === 'word');
  if (!word || words.length > FEW || groups(reply.items).length > 0 || negates(reply.items)) return undefined;
  if (measuredWords(question.items).length > 0) return undefined;
  const asked = sizesOf(question);
  const [subject, object] = asked;
  if (!subject || asked.length > 2) return undefined;
  if (object) {
    const told = BESIDE.test(textOf(question.items)) && systemOf(subject) === systemOf(object);
    return told ? asserted([compare(subject, object, word, replySpan(pair), spanOf(question))]) : undefined;
  }
  const others = eachOnce(before(pair, desk)).filter(
    (one) => systemOf(one) === systemOf(subject) && sizeKey(one) !== sizeKey(subject),
  );
  return asserted(
    againstAll(
      others.map((other) => compare(subject, other, word, replySpan(pair), spanOf(question))),
      desk,
    ),
  );
}
const FEW = 4;

/** Which of them is meant is open: only what fails against each of them fails. */
function againstAll(claims: readonly ComparisonClaim[], { note }: Desk): ComparisonClaim[] {
  const failing =
    claims.length > 0 && claims.every((claim) => judgeComparison(claim, note).verdict === 'contradicted');
  return failing ? claims.slice(-1) : [];
}

function onlyComparative(items: readonly Item[]): Word | undefined {
  const [word, ...more] = measuredWords(items);
  const fits = word && more.length === 0 && word.degree === 'comparative' && decidable(word.axis);
  return fits && !word.idiom ? (word as Word) : undefined;
}

/** "No" turns down the question; any other denial the reply. */
const negates = (items: readonly Item[]): boolean =>
  items.some((item, i) => NEGATIONS.has(item.word) && !(i === 0 && item.word === 'no'));

/** Sizes named in the sentences before the question: of its own passage, else of the one before. */
function before({ question }: Pair, desk: Desk): Operand[] {
  const { read, span } = question;
  const line = lineAt(read.passage, span.start).start;
  const own = sizesOf(piece(read, Math.max(0, line - FAR), span.start));
  if (own.length > 0) return own;
  const previous: Read | undefined = desk.reads[read.passage.index - 1];
  if (!previous || previous.passage.kind === 'heading' || previous.passage.cell) return [];
  const { length } = previous.passage.text;
  return sizesOf(piece(previous, Math.max(0, length - FAR), length));
}
/** Characters that a talk is followed back. */
const FAR = 240;

const systemOf = ({ sizes }: Operand) => sizes[0]!.system;
