/** Runs the notations over one passage: candidate sizes, not yet understood. */

import { type Item, NOTATIONS, type Notation } from '../../../grammars/notations/index.ts';
import { matchesOf } from '../notes/index.ts';
import type { Span } from '../notes/model.ts';
import { CUES, hasDigit, needsDigit } from './cues.ts';

export interface Candidate {
  readonly notation: Notation;
  /** Span of this size alone. */
  readonly span: Span;
  readonly item: Item;
  /** Span of the whole match, the list that shares the unit. */
  readonly match: Span;
}

const COMPILED = NOTATIONS.map((notation) => ({
  notation,
  regex: new RegExp(notation.pattern, notation.anyCase ? 'gi' : 'g'),
  cue: CUES[notation.id] ?? /(?:)/,
  digit: needsDigit(notation.id),
}));

/** Candidates in text order; where two notations overlap, the one declared first stays. */
export function scan(text: string): readonly Candidate[] {
  const taken = new Taken(text.length);
  const found: Candidate[] = [];
  const digits = hasDigit(text);
  for (const { notation, regex, cue, digit } of COMPILED) {
    if ((digit && !digits) || !cue.test(text)) continue;
    for (const match of matchesOf(text, regex)) {
      for (const candidate of candidates(notation, match[0], match.index)) {
        if (taken.claim(candidate.span)) found.push(candidate);
      }
    }
  }
  return found.sort((a, b) => a.span.start - b.span.start);
}

function candidates(notation: Notation, text: string, at: number): readonly Candidate[] {
  const match = { start: at, end: at + text.length };
  return itemsOf(notation, text).map((item) => ({
    notation,
    item,
    match,
    span: { start: at + item.start, end: at + item.end },
  }));
}

/** Matches remembered, of all notations; a course writes the same few sizes over and over. */
const MOST_MATCHES = 4000;
/** Longest match remembered: a list of many sizes comes but once. */
const LONGEST_MATCH = 40;
const known = new Map<string, readonly Item[]>();

/** What a notation reads in a match, which depends on nothing else. */
function itemsOf(notation: Notation, text: string): readonly Item[] {
  if (text.length > LONGEST_MATCH) return notation.read(text);
  const key = `${notation.id} ${text}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  if (known.size >= MOST_MATCHES) known.clear();
  const items = notation.read(text);
  known.set(key, items);
  return items;
}

/** Which characters already belong to a size. */
class Taken {
  private marks: Uint8Array | undefined;
  constructor(private readonly length: number) {}
  claim(span: Span): boolean {
    this.marks ??= new Uint8Array(this.length);
    for (let i = span.start; i < span.end; i++) if (this.marks[i]) return false;
    this.marks.fill(1, span.start, span.end);
    return true;
  }
}
