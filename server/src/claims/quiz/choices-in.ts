/** Choices under letters or numbers within a stretch of a passage, whichever way the labels are set off; and choices before their question. */

import { matchesOf } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';
import { finds, firstMatch } from '../../notes/patterns.ts';
import type { Read } from '../text/scenes.ts';
import type { Sentence } from '../text/sentences.ts';
import { linesOf } from './lines.ts';
import { type Piece, piece, placeOf } from './piece.ts';

const LETTER = /(^|[\s;,*])[([]?([A-Fa-f]|i{1,3}|iv|vi?)[)\].:]\s+/g;

const BRACKETED = /(^|[\s;,*])[([]?([A-Fa-f]|i{1,3}|iv|vi?)[)\].]\s+/g;

export function letteredPieces(read: Read, within: Span, already = 0): Piece[] {
  const text = read.passage.text.slice(0, within.end);
  if (already === 0 && !finds(MAY_OFFER, text.slice(within.start))) return [];
  const marked = lettersIn(text, within.start, SPEAKERS.test(text) ? BRACKETED : LETTER, already);
  const starts =
    marked.length > 0
      ? marked
      : (some(lettersIn(text, within.start, COMMA_LETTER, already), already) ??
        some(lettersIn(text, within.start, EQUAL_LETTER, already), already) ??
        numberedChoices(text, within.start, already) ??
        bareLetters(text, within.start, already));
  if (starts.length === 0 || (already > 0 && starts[0]!.at > 2)) return [];
  return starts.map(({ body }, i) => piece(read, body, endOf(text, body, starts[i + 1]?.at ?? text.length)));
}

/** The label of a first choice in each way of setting it off; of letters alone, that of the second, which must follow. */
const MAY_OFFER = /(?:^|[\s;,*([.?!:])(?:(?:[Aa]|i)[)\].:]|A(?:,|\s?=))|\(1\)|(?:^|\s)B\s/;

/** "A: …", "N: …": people with initials talk, and a letter with a colon offers nothing. */
const SPEAKERS = /(?:^|\n)\W{0,4}[G-PR-Z]:\s/;

interface Start {
  readonly at: number;
  readonly body: number;
}

function lettersIn(text: string, from: number, pattern: RegExp, already: number): Start[] {
  const starts: Start[] = [];
  for (const match of matchesOf(text.slice(from), pattern)) {
    const place = /\d/.test(match[2]!) ? Number(match[2]) - 1 : placeOf(match[2]!);
    if (place !== already + starts.length) continue;
    const at = from + match.index;
    starts.push({ at, body: at + match[0].length });
  }
  return starts;
}

/** "A, 18 G. B, 22 G. C, 24 G.": read out loud, each letter after a stop and before a comma. */
const COMMA_LETTER = /(^\s*|[.?!:;\n]\s*)([A-F]),\s+(?=\S)/g;

/** "A = 12 Fr, B = 4.5 mm". */
const EQUAL_LETTER = /(^\s*|[.?!:;,\n]\s*|\s)([A-F])\s?=\s?(?=\S)/g;

/** "(1) 0.018 inch, (2) 0.014 inch": choices counted in brackets; what goes on for longer is a text. */
const BRACKETED_NUMBER = /(^|[\s;,*:])\(([1-6])\)\s+/g;
function numberedChoices(text: string, from: number, already: number): Start[] | undefined {
  const starts = already > 0 ? [] : lettersIn(text, from, BRACKETED_NUMBER, already);
  const short = starts.every(({ body }, i) => (starts[i + 1]?.at ?? body) - body <= LONGEST_CHOICE);
  return starts.length >= 2 && short ? starts : undefined;
}
const LONGEST_CHOICE = 40;

/** One letter with a comma may be anything. */
const some = (starts: Start[], already: number): Start[] | undefined =>
  starts.length + already >= 2 ? starts : undefined;

const BARE_LETTER = /(^|\s)([A-F])\s+(?=\S)/g;

/** "A 3 mm  B 6 mm  C 9 mm": capitals alone count when a line or what follows a colon opens with A and B comes after. */
function bareLetters(text: string, from: number, already: number): Start[] {
  const starts = lettersIn(text, from, BARE_LETTER, already);
  const first = starts[0];
  const opens = first && /(?:^|[\n:?])[ \t]*$/.test(text.slice(Math.max(0, from - 2), first.body - 2));
  return already === 0 && opens && starts.length >= 2 ? starts : [];
}

/** An option ends before a key that stands on the same lines. */
export function endOf(text: string, body: number, end: number): number {
  const key = firstMatch(
    /(?:\n|\s[-—–(*]?)\s*[*[(]*(?:(?:right|correct|best|model|keyed)\s+)?(?:answer|choice|ans|keyed|key|correct|right|solution)\b/i,
    text.slice(body, end),
  );
  const stop = key ? body + key.index : end;
  const reason = firstMatch(REASON, text.slice(body, stop));
  return reason ? body + reason.index + 1 : stop;
}
/** "D 24 Fr. Because you multiply by three.": why one of them is right is part of none. */
const REASON = /[.;]\s+(?:because|reason|rationale|explanation|commentary)\b/i;

/** "A) 14 G B) 16 G – which is the narrower?", "18 G, 20 G: which of them is wider?": where the question begins behind its choices. */
const ASKS_BEHIND = /(?:[:.;–—]|\s-)\s+(?=(?:which|what|how|who|pick|name|choose|where)\b)/gi;

/** Choices that stand before their question, and the question without them. */
export function offeredBefore(
  read: Read,
  { start }: Span,
  asking: Sentence,
): { readonly options: readonly Piece[]; readonly question: Piece } | undefined {
  const text = read.passage.text.slice(start, asking.end);
  const cut = matchesOf(text, ASKS_BEHIND).at(-1);
  if (!cut || cut.index > LONGEST_ROW) return undefined;
  const options = letteredPieces(read, { start, end: start + cut.index });
  const opens = options[0] && options[0].span.start - start <= 5;
  return options.length >= 2 && opens
    ? { options, question: piece(read, start + cut.index + cut[0].length, asking.end) }
    : undefined;
}
const LONGEST_ROW = 160;

const TICK_BEHIND = /\s*[✓✔✅☑]\s*$/u;
const LONGEST_LINE = 30;
const MOST_LINES = 8;

/** Bare lines below a question, one of them ticked: "20 Fr ✔", "24 Fr", "28 Fr". */
export function tickedLines(reads: readonly Read[], read: Read, from: number): Piece[] | undefined {
  const own = linesOf(read).filter(({ start }) => start >= from);
  const next = reads[read.passage.index + 1];
  const at = own.length > 0 ? read : next;
  if (!at || at.passage.cell || at.passage.kind === 'heading' || !/[✓✔✅☑]/u.test(at.passage.text))
    return undefined;
  const lines = at === read ? own : linesOf(at);
  const texts = lines.map(({ start, end }) => at.passage.text.slice(start, end));
  if (
    lines.length < 2 ||
    lines.length > MOST_LINES ||
    texts.filter((text) => TICK_BEHIND.test(text)).length !== 1
  )
    return undefined;
  const pieces = lines.map(({ start }, i) =>
    piece(at, start, start + texts[i]!.replace(TICK_BEHIND, '').length),
  );
  const plain = pieces.every(
    ({ span, items }) =>
      span.end - span.start <= LONGEST_LINE &&
      items.filter(({ kind, colour }) => kind === 'size' || colour).length === 1,
  );
  return plain ? pieces : undefined;
}
