/** Sentences and their clauses over items. A line that opens with a speaker's name opens a sentence too. */
import type { Item } from './items.ts';

export interface Sentence {
  readonly items: readonly Item[];
  readonly start: number;
  readonly end: number;
  /** Closing mark: ".", "!", "?" or "". */
  readonly close: string;
}

const CLOSERS = new Set(['.', '!', '?', '…']);
const ABBREVIATIONS = new Set(
  'fr no approx vs e.g i.e e.g. i.e. etc cf ca fig dr mr mrs st ch max min resp incl in ga dia diam'.split(
    ' ',
  ),
);
const TRAILING = new Set([')', '"', '”', '’', "'", '»', '*']);

/** Nobody writes a sentence of more words and signs; leaving it unread keeps the time linear in the text. */
const LONGEST = 400;

export function splitSentences(items: readonly Item[], text: string): Sentence[] {
  const sentences: Sentence[] = [];
  let from = 0;
  for (let i = 0; i < items.length; i++) {
    const speaker = opensTurn(items, i, text) || opensEntry(items[i]!, text);
    if (speaker && i > from) {
      if (!stampAlone(items.slice(from, Math.min(i, from + STAMP)), i - from))
        push(sentences, items.slice(from, i));
      from = i;
    }
    if (!closes(items, i, text)) continue;
    let to = i + 1;
    while (
      to < items.length &&
      (TRAILING.has(items[to]!.word) || CLOSERS.has(items[to]!.word)) &&
      glued(items, to)
    )
      to++;
    push(sentences, items.slice(from, to));
    from = to;
    i = to - 1;
  }
  push(sentences, items.slice(from));
  return sentences;
}

/** "[02:04]" before a speaker tells when, and says nothing. */
const stampAlone = (items: readonly Item[], length: number): boolean =>
  length < STAMP && items.every(({ word }) => /^(?:[[\]()]|\d{1,2}(?::\d{2}){1,2}|:|\d{1,2})$/.test(word));
const STAMP = 8;

const glued = (items: readonly Item[], i: number) => items[i]!.start === items[i - 1]!.end;

function push(into: Sentence[], items: readonly Item[]): void {
  const first = items[0];
  const last = items.at(-1);
  if (!first || !last || items.length > LONGEST) return;
  let close = '';
  for (let i = items.length - 1; i >= 0 && items[i]!.kind === 'punctuation'; i--)
    if (CLOSERS.has(items[i]!.word)) close = items[i]!.word;
  into.push({ items, start: first.start, end: last.end, close });
}

const THINGS = /^(?:ivs?|ett|ng|og|ngt|picc|piccs|cvc|cvl|usp|od|id|fr|ga|io|peg|ports?|cvp)$/;

/** "TECH:" at the start of a line, or a bold name before a colon inside a line of script. */
function opensTurn(items: readonly Item[], i: number, text: string): boolean {
  const item = items[i]!;
  const next = items[i + 1];
  if (next?.word !== ':' || item.kind !== 'word') return false;
  // "Pink IV: 18 G": a thing, and nobody who speaks.
  if (THINGS.test(item.word) && items[i - 1]?.kind === 'word') return false;
  const raw = text.slice(item.start, item.end);
  return raw.length > 1 && raw === raw.toUpperCase() && /^\p{L}/u.test(raw);
}

/** "a) …" and on the next line "b) …": statements without a full stop. */
const opensEntry = ({ start }: Item, text: string): boolean =>
  text[start - 1] === '\n' &&
  (ENTRY.test(text.slice(start, start + 6)) ||
    KEYED_LINE.test(text.slice(Math.max(0, start - 14), start - 1)));
/** "14 G is wider than 16 G ✔", "… — F": the line is judged, and done. */
const KEYED_LINE = /(?:(?:[—–→]|\s-)\s*\(?(?:T|F|true|false)\)?|\S\s+[✓✔✅✗✘❌])[ \t]*$/iu;
const ENTRY = /^\(?(?:\d{1,2}|[a-hA-H]|[ivx]{1,4})\)\s/;

/** "No. 15 blades" is one sentence; "No. 18 G is wider." are two. */
function closes(items: readonly Item[], i: number, text: string): boolean {
  const item = items[i]!;
  if (item.kind !== 'punctuation' || !CLOSERS.has(item.word)) return false;
  const next = items[i + 1];
  if (!next) return true;
  if (item.word !== '.') return true;
  const before = items[i - 1];
  if (before?.word === 'no' && next.kind !== 'size' && /^[0-9]/.test(next.word) && glued(items, i))
    return false;
  if (before && ABBREVIATIONS.has(before.word) && glued(items, i) && !startsSentence(next, text))
    return false;
  if (
    before?.word &&
    before.word.length === 1 &&
    /[a-z]/.test(before.word) &&
    glued(items, i) &&
    !before.mention
  )
    return startsSentence(next, text);
  return next.start > item.end || TRAILING.has(next.word);
}

const startsSentence = (item: Item, text: string) =>
  /^[\p{Lu}\p{N}"“(*]/u.test(text.slice(item.start, item.end));
