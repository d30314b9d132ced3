/** Tasks to put sizes in order, and the row of sizes that answers them on the next line: "Smallest first: 28, 12, 20 Fr." "12, 20, 28 Fr." */
import type { Span } from '../../notes/model.ts';
import { orderCue } from '../constructions/order.ts';
import type { Read } from '../text/scenes.ts';
import { type Desk, sizeKey, sizesOf } from './desk.ts';
import { linesOf } from './lines.ts';
import { doubted, type Pair } from './pairs.ts';
import type { Piece } from './piece.ts';
import { questionIn, replyIn } from './turns.ts';

/** Longest line that is looked at, and fewest sizes that make a row. */
const LONGEST = 300;
const FEWEST = 3;

/** Every line that asks for an order with the row of sizes right below it. */
export function sortedPairs(desk: Desk, read: Read): Pair[] {
  if (read.passage.cell || read.passage.kind === 'heading') return [];
  if (!holdsRow(read) && !holdsRow(desk.reads[read.passage.index + 1])) return [];
  const lines = linesOf(read);
  return lines.flatMap((line, i) => {
    if (line.end - line.start > LONGEST) return [];
    const question = questionIn(read, line);
    if (!orderCue(question.items)) return [];
    const beside = bracketed(read, line);
    if (beside) return [beside];
    const below = lines[i + 1];
    const next = below ? read : desk.reads[read.passage.index + 1];
    const own = below ?? (next && !next.passage.cell ? linesOf(next)[0] : undefined);
    const answer = next && own && rowIn(next, own);
    if (!answer || doubted(next.sentences.find(({ start }) => start >= own.end))) return [];
    const asked = valuesOf(question);
    const given = valuesOf(answer.piece);
    const answers = asked.length > 0 ? sameButOrder(asked, given) : answer.spoken;
    return answers ? [{ question, reply: answer.piece, marked: true }] : [];
  });
}

/** Does a passage name as many sizes as make a row? */
function holdsRow(read: Read | undefined): boolean {
  let sizes = 0;
  for (const item of read?.items ?? []) if (item.mention && ++sizes === FEWEST) return true;
  return false;
}

/** "Thinnest to thickest: 2-0, 4-0, 3-0. (4-0, 3-0, 2-0)": the row in brackets at the end. */
function bracketed(read: Read, line: Span): Pair | undefined {
  const match = /[.:?]\s+[([]([^()[\]]{6,80})[)\]]\W*$/.exec(read.passage.text.slice(line.start, line.end));
  if (!match) return undefined;
  const start = line.start + match.index + match[0].indexOf(match[1]!);
  const [question, reply] = [
    questionIn(read, { start: line.start, end: line.start + match.index }),
    replyIn(read, { start, end: start + match[1]!.length }).piece,
  ];
  return sameButOrder(valuesOf(question), valuesOf(reply)) && valuesOf(reply).length >= FEWEST
    ? { question, reply, marked: true }
    : undefined;
}

/** The sizes of a line that holds a row of them, without a remark after it: "B: 22 G, 20 G, 18 G. Easy." */
function rowIn(read: Read, line: Span): { readonly piece: Piece; readonly spoken: boolean } | undefined {
  const first = read.sentences.find(({ start, end }) => start >= line.start && end <= line.end);
  const own = first ? { start: line.start, end: first.end } : line;
  if (OTHERS.test(read.passage.text.slice(own.start, own.end))) return undefined;
  const reply = replyIn(read, own);
  return sizesOf(reply.piece).length >= FEWEST
    ? { piece: reply.piece, spoken: reply.speaker !== undefined }
    : undefined;
}

/** "Your neighbour's answer was …; she had it the other way about.": somebody's try, and no key. */
const OTHERS =
  /\b(?:your|my|his|her|their|they|she|he|somebody|someone|neighbours?|students?|pupils?|candidates?|learners?|wrote|tried|old|wrong|other way)\b(?!:)|['’]s (?:answer|row|list|try|order)\b/i;

const valuesOf = (piece: Piece): string[] => sizesOf(piece).map(sizeKey);

/** What was to be put in order, put in another. */
const sameButOrder = (asked: readonly string[], given: readonly string[]): boolean =>
  asked.join() !== given.join() && [...asked].sort().join() === [...given].sort().join();
