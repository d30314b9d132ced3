/** Gaps to be filled: "a 24 Fr catheter is ___ mm wide", "a 5-0 is ........ than a 3-0". */
import { matchesOf, sourceSpan } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';
import type { System } from '../../sizes/model.ts';
import { type Item, readItems } from '../text/items.ts';
import type { Read } from '../text/scenes.ts';
import { numberSize } from './desk.ts';
import { type Piece, written } from './piece.ts';

const GAP =
  /_{2,}|\.{4,}|…(?:\s*…)*|\[\s*(?:\.{2,}|…|_+|\?)?\s*\]|\(\s*(?:\.{2,}|…|_+|\?)\s*\)|‗{2,}|(?<=[=≈] ?)\?(?= ?(?:mm|Fr|Ch|G|gauge|French|inch|in)\b)/g;

/** What every gap has; most texts hold none of it, and need not be tried for each kind. */
const MAY_GAP = /[_…[(‗]|\.{4}|[=≈] ?\?/;

const matchesIn = (text: string): readonly RegExpExecArray[] =>
  MAY_GAP.test(text) ? matchesOf(text, GAP) : [];

/** Stands for a gap among items that were put together. */
export const GAP_WORD = '____';

/** Every gap of a stretch. */
export const gapsIn = (read: Read, { start, end }: Span): Span[] =>
  matchesIn(read.passage.text.slice(start, end)).map((gap) => ({
    start: start + gap.index,
    end: start + gap.index + gap[0].length,
  }));

/** The sentence of a gap by its stops, since a gap may be made of dots. */
export function gapSentence({ passage: { text } }: Read, gap: Span): Span {
  const before = text.slice(0, gap.start);
  const opens = matchesOf(before, OPENS).at(-1);
  const start = opens ? opens.index + opens[0].length : 0;
  const stop = STOPS.exec(text.slice(gap.end));
  return { start, end: stop ? gap.end + stop.index + 1 : text.length };
}
const OPENS = /(?<![.\d])[.!?:]["”’)*]*\s+(?=[^\s._])|\n\s*(?:\d{1,2}[.)]\s+)?/g;
const STOPS = /[.!?](?=["”’)*]*(?:\s|$))|\n/;

/** The one gap of a line; of several none can be told from the other. */
export function gapIn(read: Read, { start, end }: Span): Span | undefined {
  const found = matchesIn(read.passage.text.slice(start, end));
  const gap = found[0];
  // An ellipsis at the end of a line trails off.
  if (!gap || found.length > 1 || (gap[0].startsWith('…') && start + gap.index + gap[0].length >= end))
    return undefined;
  if (/^\[\s?\]$/.test(gap[0]) && gap.index < 4) return undefined;
  return { start: start + gap.index, end: start + gap.index + gap[0].length };
}

/** "the bore gets ____ (larger)": the word in brackets right behind a gap fills it, where it is one of a pair. */
export function bracketed({ passage }: Read, gap: Span, end: number): Span | undefined {
  const match = /^\s*\(\s*([a-z]+)\s*\)/i.exec(passage.text.slice(gap.end, Math.min(end, gap.end + 24)));
  const word = match && readItems(match[1]!, [])[0];
  if (!match || !(word?.magnitude || word?.colour)) return undefined;
  const start = gap.end + match[0].indexOf(match[1]!);
  return { start, end: start + match[1]!.length };
}

const UNIT: readonly (readonly [RegExp, System])[] = [
  [/^(?:mm|millimet(?:re|er)s?)$/, 'millimetre'],
  [/^(?:g|gauge)$/, 'needle-gauge'],
  [/^(?:fr|f|ch|french|charri[eè]re)$/, 'french'],
  [/^(?:inch|inches|in)$/, 'inch'],
];

/** "labelled by the (inside / outside) diameter": the question with the one of the two that the reply names. */
export function chosenIn({ items }: Piece, reply: Piece): Item[] | undefined {
  const slash = items.findIndex((item) => item.word === '/');
  const open = items.findLastIndex((item, i) => i < slash && item.word === '(');
  const close = items.findIndex((item, i) => i > slash && item.word === ')');
  if (slash < 0 || open < 0 || close < 0 || close - open > LONGEST_CHOICE) return undefined;
  const said = wordsOf(reply.items);
  const chosen = [items.slice(open + 1, slash), items.slice(slash + 1, close)].filter(
    (choice) => wordsOf(choice) === said,
  );
  if (TRUTH.test(said)) return undefined;
  return chosen.length === 1
    ? [...items.slice(0, open), ...chosen[0]!, ...items.slice(close + 1)]
    : undefined;
}
/** Those judge what was said before. */
const TRUTH = /^(?:right|wrong|true|false|yes|no|t|f|correct|incorrect)$/;
const LONGEST_CHOICE = 9;
const wordsOf = (items: readonly Item[]): string =>
  items
    .filter((item) => item.kind !== 'punctuation')
    .map((item) => item.word)
    .join(' ');

/** What stands before the gap of a question and behind it. */
function aroundGap(question: Piece): { before: readonly Item[]; after: readonly Item[] } | undefined {
  const { items, read } = question;
  const at = items.findIndex(({ word }) => word === GAP_WORD);
  if (at >= 0) return { before: items.slice(0, at), after: items.slice(at + 1) };
  const gap = gapIn(read, question.span);
  if (!gap) return undefined;
  // "Fill the gap. A 30 Fr drain is ____ mm wide.": the task is no part of the statement.
  const own = gapSentence(read, gap);
  const within = items.filter(({ start, end }) => start >= own.start && end <= own.end);
  return {
    before: within.filter((item) => item.end <= gap.start),
    after: within.filter((item) => item.start >= gap.end),
  };
}

/** The question with the reply in its gap; a bare number takes the unit printed after the gap. */
export function filled(question: Piece, reply: Piece): Item[] | undefined {
  const around = aroundGap(question);
  if (!around) return undefined;
  const { before, after } = around;
  const unit = UNIT.find(([pattern]) => pattern.test(after[0]?.word ?? ''))?.[1];
  const number = unit && numberSize(reply, unit);
  const said = reply.items.filter((item, i, all) => !(item.word === '.' && i === all.length - 1));
  if (!number) {
    const named = unit && said.some((item) => item.mention?.sizes[0]?.system === unit);
    return [...before, ...said, ...after.slice(named ? 1 : 0)];
  }
  const size: Item = {
    start: number.span.start,
    end: number.span.end,
    word: written(reply).toLowerCase(),
    kind: 'size',
    capital: false,
    mention: { ...number, source: sourceSpan(reply.read.passage, number.span) },
  };
  return [...before, size, ...after.slice(1)];
}
