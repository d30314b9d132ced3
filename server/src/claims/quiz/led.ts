/** "Thicker or thinner?" over lines that set one size against another: "22 G next to 20 G: thinner", "3-0 against 2-0 – thinner". */
import type { Span } from '../../notes/model.ts';
import { readItems } from '../text/items.ts';
import { measuredWords } from '../text/magnitudes.ts';
import type { Read } from '../text/scenes.ts';
import type { Desk } from './desk.ts';
import { linesOf } from './lines.ts';
import type { Pair } from './pairs.ts';
import { piece } from './piece.ts';
import { questionIn } from './turns.ts';

const LONGEST_LEAD = 16;
const MOST = 20;
const LED = /\b(\w{2,}er) (?:or|\/) (\w{2,}er)\b/i;
/** A pair of things, and the one word said of the first. */
const ANSWERED = /^(.{6,90}?)\s*(?::|–|—|→|=|\.{2,}|…|\s-)\s*\(?(\w{4,})\)?[.,;!]?\s*$/;
const AGAINST = /\b(?:next to|against|beside|alongside|compared? (?:to|with)|versus|vs)\b/i;

/** Each line below such a lead, or each sentence behind it, with its word. */
export function led({ reads }: Desk, read: Read): Pair[] {
  const { passage, sentences } = read;
  if (passage.cell || !/er (?:or|\/) /.test(passage.text) || !LED.test(passage.text)) return [];
  const lead = sentences.find(({ items }) => asksEither(items));
  if (!lead) return [];
  const behind = sentences.filter(({ start }) => start >= lead.end);
  const own = behind.flatMap(({ start, end }) => inLines(read, { start, end }));
  if (own.length > 0 || behind.length > 0) return own.flatMap((span) => answeredIn(read, span));
  const found: Pair[] = [];
  for (const next of reads.slice(passage.index + 1, passage.index + 1 + MOST)) {
    if (next.passage.cell || next.passage.kind === 'heading') break;
    const pairs = linesOf(next).flatMap((line) => answeredIn(next, line));
    if (pairs.length === 0) break;
    found.push(...pairs);
  }
  return found;
}

/** Two opposite words to choose from, and no size. */
function asksEither(items: Read['items']): boolean {
  const words = measuredWords(items).filter(({ degree }) => degree === 'comparative');
  const [a, b] = words;
  return (
    items.length <= LONGEST_LEAD &&
    a !== undefined &&
    b !== undefined &&
    words.length === 2 &&
    a.sign !== b.sign &&
    !items.some(({ kind }) => kind === 'size')
  );
}

const inLines = (read: Read, { start, end }: Span): Span[] =>
  linesOf(read).flatMap((line) => {
    const own = { start: Math.max(line.start, start), end: Math.min(line.end, end) };
    return own.end > own.start ? [own] : [];
  });

function answeredIn(read: Read, { start, end }: Span): Pair[] {
  const match = ANSWERED.exec(read.passage.text.slice(start, end));
  if (!match || !AGAINST.test(match[1]!)) return [];
  const said = readItems(match[2]!, [])[0]?.magnitude;
  if (said?.degree !== 'comparative') return [];
  const from = start + match[0].lastIndexOf(match[2]!);
  return [
    {
      question: questionIn(read, { start, end: start + match.index + match[1]!.length }),
      reply: piece(read, from, from + match[2]!.length),
      marked: true,
    },
  ];
}
