/** Runs the notations over one passage: candidate sizes, not yet understood. */
import { type Item, NOTATIONS, type Notation } from '../../../grammars/notations/index.ts';
import type { Span } from '../notes/model.ts';
import { CUES } from './cues.ts';

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
}));

/** Candidates in text order; where two notations overlap, the one declared first stays. */
export function scan(text: string): readonly Candidate[] {
  const taken = new Taken(text.length);
  const found: Candidate[] = [];
  for (const { notation, regex, cue } of COMPILED) {
    if (!cue.test(text)) continue;
    for (const match of text.matchAll(regex)) {
      for (const candidate of candidates(notation, match[0], match.index)) {
        if (taken.claim(candidate.span)) found.push(candidate);
      }
    }
  }
  return found.sort((a, b) => a.span.start - b.span.start);
}

function candidates(notation: Notation, text: string, at: number): readonly Candidate[] {
  const match = { start: at, end: at + text.length };
  return notation.read(text).map((item) => ({
    notation,
    item,
    match,
    span: { start: at + item.start, end: at + item.end },
  }));
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
