/**
 * Who a finding is, apart from where it stands: its check and the statement it is about. Lines above may
 * come and go, neighbours may be reworded, a paragraph may be wrapped anew: the identity stays.
 */
import type { Finding } from '../checks/model.ts';
import type { Passage, Span } from '../notes/model.ts';
import type { Analysis } from './analyse.ts';
import { hash } from './hash.ts';

/** No statement or sentence is looked for further away than this, so that long notes stay linear. */
const REACH = 2000;

/** Spans by their start, to be asked which of them surround a place. */
class Spans {
  readonly #sorted: readonly Span[];

  constructor(spans: readonly Span[]) {
    this.#sorted = [...spans].sort((a, b) => a.start - b.start);
  }

  /** The shortest span around `inner` that starts within reach. */
  around(inner: Span): Span | undefined {
    let best: Span | undefined;
    for (let i = this.#after(inner.start) - 1; i >= 0; i--) {
      const span = this.#sorted[i]!;
      if (span.start < inner.start - REACH) break;
      if (span.end >= inner.end && (!best || span.end - span.start < best.end - best.start)) best = span;
    }
    return best;
  }

  /** The last span that starts at or before `offset`. */
  last(offset: number): Span | undefined {
    return this.#sorted[this.#after(offset) - 1];
  }

  /** Index of the first span that starts after `offset`. */
  #after(offset: number): number {
    let low = 0;
    let high = this.#sorted.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (this.#sorted[middle]!.start <= offset) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** Source span of a passage: from its first piece to its last; even an empty one has a piece. */
function extent(passage: Passage): Span {
  const { sources, sourceLengths } = passage.map;
  const last = sources.length - 1;
  return { start: sources[0]!, end: sources[last]! + sourceLengths[last]! };
}

/** The sentence around `span`, inside its passage. */
function sentence(text: string, passage: Span | undefined, span: Span): Span {
  const start = Math.max(passage?.start ?? 0, span.start - REACH);
  const end = Math.min(Math.max(passage?.end ?? 0, span.end), span.end + REACH);
  const before = text.slice(start, span.start);
  const cut = Math.max(before.lastIndexOf('. '), before.lastIndexOf('? '), before.lastIndexOf('! '));
  const stop = text.slice(span.end, end).search(/[.?!]\s/);
  return { start: cut < 0 ? start : start + cut + 2, end: stop < 0 ? end : span.end + stop + 1 };
}

/** Words alone: wrapping, quoting and emphasis may change. */
const plain = (text: string): string => text.replace(/[\s>*_]+/g, ' ').trim();

export interface Identified {
  readonly identity: string;
  /** The statement or sentence the finding is about. */
  readonly home: Span;
}

/** Identity and home of each finding, in order. A statement that occurs twice is told apart by its turn. */
export function identified({ note, statements, findings }: Analysis): Identified[] {
  if (findings.length === 0) return [];
  const claims = new Spans(statements.map(({ claim }) => claim.span));
  const passages = new Spans(note.passages.map(extent));
  const words = (span: Span) => plain(note.text.slice(span.start, span.end));
  const homeOf = ({ span }: Finding) =>
    claims.around(span) ?? sentence(note.text, passages.last(span.start), span);
  const turns = new Map<string, number>();
  return findings.map((finding) => {
    const home = homeOf(finding);
    const key = [finding.check, words(finding.span), words(home)].join('\n');
    const turn = turns.get(key) ?? 0;
    turns.set(key, turn + 1);
    return { identity: hash(turn === 0 ? key : `${key}\n${turn}`), home };
  });
}

export const identities = (analysis: Analysis): string[] =>
  identified(analysis).map(({ identity }) => identity);
