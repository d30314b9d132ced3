/**
 * Several things asked in a row and answered in a row: "How wide is an 18 Ch? And a 9 Ch? Answers: 6 mm and 3 mm.", "The 19 G has a
 * ____ hub, the 27 G a ____ hub." "cream – grey". As many answers as questions, in their order.
 */
import type { Span } from '../../notes/model.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import type { Read } from '../text/scenes.ts';
import { carried } from './carried.ts';
import { type Desk, mark } from './desk.ts';
import { bodiesIn } from './entries.ts';
import { fills, fillsWhole } from './fillers.ts';
import { GAP_WORD, gapSentence, gapsIn } from './gap.ts';
import type { Pair } from './pairs.ts';
import { partsIn } from './parts-in.ts';
import { type Piece, piece } from './piece.ts';
import { questionIn, replyIn } from './turns.ts';

const LONGEST = 900;
const FEWEST = 2;
const MOST = 8;
/** Longest answer, in characters. */
const LONGEST_PART = 40;

/** What announces the answers, in front of them. */
const ANNOUNCED =
  /^[\s*_(>–—-]*(?:(?:and )?(?:the|my|our|model|right|correct|all|short) )*(?:answers?|key|solutions?|gaps|results?|ans)\b(?![^:=→]{0,24}\d)[^:=→.\n]{0,44}?[:=→][\s*_]*(?=\S)/i;

/** Every question of a passage with its answer in the row behind or below. */
export function inTurn(desk: Desk, read: Read): Pair[] {
  const { passage } = read;
  if (passage.cell || passage.kind === 'heading' || passage.text.length > LONGEST) return [];
  const asked = gapped(read) ?? questions(read) ?? itemised(desk, read);
  if (!asked || asked.pieces.length < FEWEST || asked.pieces.length > MOST) return [];
  const answers = rowBelow(desk, asked.last ?? read, asked);
  return (answers ?? []).map((answer, i) => ({
    question: asked.pieces[i]!,
    reply: replyIn(answer.read, answer.span).piece,
    marked: true,
  }));
}

interface Asked {
  readonly pieces: readonly Piece[];
  /** Where the last of them ends. */
  readonly end: number;
  /** Gaps are filled by whatever stands below; questions only by what calls itself the answers. */
  readonly gaps: boolean;
  /** Where the last of them stands, when each has a passage of its own. */
  readonly last?: Read;
}

/** The items of a list, each a question without a number of its own. */
function itemised({ reads }: Desk, first: Read): Asked | undefined {
  const { list } = first.passage;
  if (!list || list.ordered || list.index !== 0) return undefined;
  const pieces: Piece[] = [];
  let last = first;
  for (const read of reads.slice(first.passage.index)) {
    if (read.passage.list?.list !== list.list) break;
    const [asking, ...more] = read.sentences.filter(({ close }) => close === '?');
    if (!asking || more.length > 0 || read.sentences.at(-1) !== asking) return undefined;
    const own = questionIn(read, asking);
    const before = pieces.at(-1);
    pieces.push((before && carried(own, before)) ?? own);
    last = read;
  }
  return { pieces, end: last.passage.text.length, gaps: false, last };
}

/** The sentences that ask, each made whole by the one before it. */
function questions(read: Read): Asked | undefined {
  const asking = read.sentences.filter(({ close }) => close === '?');
  if (asking.length < FEWEST) return undefined;
  const pieces: Piece[] = [];
  for (const { start, end } of asking) {
    const own = questionIn(read, { start, end });
    const before = pieces.at(-1);
    pieces.push((before && carried(own, before)) ?? own);
  }
  return { pieces, end: asking.at(-1)!.end, gaps: false };
}

/** What every gap has in it. */
const MAY_GAP = /__|\.{3}|…|\[|\(|‗|\?/;

/** Clauses with a gap each, made whole by the first of them. */
function gapped(read: Read): Asked | undefined {
  if (!MAY_GAP.test(read.passage.text)) return undefined;
  const gaps = gapsIn(read, { start: 0, end: read.passage.text.length });
  if (gaps.length < FEWEST || read.passage.text.includes('?')) return undefined;
  const clauses: Piece[] = [];
  let from = gapSentence(read, gaps[0]!).start;
  for (const [i, gap] of gaps.entries()) {
    const sentence = gapSentence(read, gap);
    const next = gaps[i + 1];
    const to =
      next && gapSentence(read, next).start === sentence.start ? cutBetween(read, gap, next) : sentence.end;
    if (to === undefined) return undefined;
    const own = withGap(read, { start: Math.max(from, sentence.start), end: to }, gap);
    clauses.push((clauses[0] && framed(own, clauses[0])) ?? own);
    from = to;
  }
  return { pieces: clauses, end: gapSentence(read, gaps.at(-1)!).end, gaps: true };
}

/** Between two gaps of one sentence a comma, a semicolon or "and" sets the clauses apart. */
function cutBetween({ passage }: Read, gap: Span, next: Span): number | undefined {
  const between = /[;,]|\s(?:and|while|but)\s/.exec(passage.text.slice(gap.end, next.start));
  return between ? gap.end + between.index + between[0].length : undefined;
}

/** A clause with a word of ours for its gap. */
function withGap(read: Read, { start, end }: Span, gap: Span): Piece {
  const before = piece(read, start, gap.start).items;
  const after = piece(read, gap.end, end).items.filter(({ word }) => !/^(?:[;,.]|and|while|but)$/.test(word));
  return { read, span: { start, end }, items: [...before, mark(GAP_WORD), ...after] };
}

/** "the 27 G needle a ____ hub": the clause of the first, about the size of this one. */
function framed(own: Piece, first: Piece): Piece | undefined {
  if (own.items.some(({ word }) => VERB.test(word))) return undefined;
  const things = (items: readonly Item[]) => {
    const sizes = items.filter(({ kind }) => kind === 'size');
    return sizes.length > 0 ? sizes : items.filter(({ colour }) => colour !== undefined);
  };
  const [[thing, ...more], [old, ...others]] = [things(own.items), things(first.items)];
  const [unit, other] = [own.items, first.items].map((items) => textOf(behindGap(items)));
  if (unit !== '' && unit !== other) return undefined;
  if (!thing || !old || more.length > 0 || others.length > 0 || thing.kind !== old.kind) return undefined;
  return { ...own, items: first.items.map((item) => (item === old ? thing : item)) };
}
const behindGap = (items: readonly Item[]): readonly Item[] =>
  items
    .slice(items.findIndex(({ word }) => word === GAP_WORD) + 1)
    .filter(({ kind }) => kind !== 'punctuation');
const VERB = /^(?:is|are|has|have|measures?|means?|equals|comes|carries|wears|shows|gets?|=)$/;

/** In the passage of the questions behind the last of them, else in the next that does more than fill. */
function rowBelow({ reads }: Desk, read: Read, { pieces, end, gaps }: Asked): Piece[] | undefined {
  const behind = read.sentences.filter(({ start }) => start >= end);
  const first = behind.find((sentence) => !fills(sentence));
  const { text } = read.passage;
  if (first) {
    const from = announced(text.slice(first.start, first.start + 120));
    return from > 0 ? rowOf(read, first.start + from, pieces.length) : undefined;
  }
  for (const next of reads.slice(read.passage.index + 1, read.passage.index + 4)) {
    if (fillsWhole(next)) continue;
    if (next.passage.cell || next.passage.kind === 'heading') return undefined;
    const from = announced(next.passage.text);
    return from > 0 || gaps ? rowOf(next, from, pieces.length, from === 0) : undefined;
  }
  return undefined;
}

const announced = (text: string): number => {
  const lead = ANNOUNCED.exec(text)?.[0] ?? '';
  return OF_OTHERS.test(lead) ? 0 : lead.length;
};
/** "Answers given by the students:", "Answers we often see:": no key. */
const OF_OTHERS =
  /\b(?:given|students?|candidates?|learners?|wrong|you|they|he|she|people|popular|common|often|typical|first|received|heard|seen|not|old|last year)\b/i;

/** Counted entries; else what the marks between them cut; `bare`: nothing says that these are answers. */
function rowOf(read: Read, from: number, count: number, bare = false): Piece[] | undefined {
  const { text } = read.passage;
  if (text.slice(from).includes('?')) return undefined;
  const stop = /[.!](?=\s+\p{Lu})|\n/u.exec(text.slice(from));
  for (const end of stop ? [text.length, from + stop.index] : [text.length]) {
    const counted = bodiesIn(text, { start: from, end });
    const spans =
      counted.length === count ? counted.map(({ span }) => span) : partsIn(text, { start: from, end });
    if (spans.length !== count || spans.some((span) => span.end - span.start > LONGEST_PART)) continue;
    const parts = spans.map((span) => piece(read, span.start, span.end));
    if (parts.some(({ items }) => items.length === 0)) continue;
    if (!bare || parts.every(({ items }) => items.length <= 3)) return parts;
  }
  return undefined;
}
