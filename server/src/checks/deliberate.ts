/**
 * Errors left in on purpose. `<!-- wrong on purpose: reason -->` covers the findings of the block that follows it, or of
 * the line it stands on. A mark without a reason, or one that covers nothing, is reported.
 */

import type { Comment, Note, Span } from '../notes/model.ts';
import { type Locale, say, tell } from '../texts/index.ts';
import type { CheckDefinition } from './definition.ts';
import type { Finding } from './model.ts';
import { MARK as MARKS } from './texts/findings.ts';

const ID = 'idle-mark';
const MARK = /^\s*wrong on purpose\b\s*:?\s*([\s\S]*?)\s*$/i;

export const idleMark: CheckDefinition = {
  id: ID,
  kind: 'style',
  severity: 'hint',
  title: 'This mark covers nothing',
  docs: 'An error can be left in on purpose with `<!-- wrong on purpose: reason -->` on the same line or right above the block. A mark that covers no finding any more, or gives no reason, is reported.',
  // Which marks are idle is known only when every other check has run: see `coverDeliberate`.
  run: () => [],
};

interface Mark {
  readonly comment: Comment;
  readonly reason: string;
  readonly covers: Span;
}

/** Findings with the covered ones noted, and the idle marks added. Of several marks over one finding the first covers it. */
export function coverDeliberate(note: Note, findings: readonly Finding[], locale?: Locale): Finding[] {
  const marks = marksOf(note);
  if (marks.length === 0) return [...findings];
  const covering = coveringMarks(marks, findings);
  const used = new Set(covering.values());
  const kept = findings.map((finding) => {
    const mark = covering.get(finding);
    return mark === undefined ? finding : { ...finding, deliberate: mark.reason };
  });
  return [...kept, ...marks.filter((mark) => !used.has(mark)).map((mark) => idle(mark, locale))];
}

/** A pass over the findings in source order for each mark, which skips those already covered. */
function coveringMarks(marks: readonly Mark[], findings: readonly Finding[]): Map<Finding, Mark> {
  const inOrder = [...findings].sort((a, b) => a.span.start - b.span.start);
  /** For each place the next one that may be uncovered. */
  const next = Array.from({ length: inOrder.length + 1 }, (_, i) => i);
  const uncovered = (from: number): number => {
    let at = from;
    while (next[at] !== at) at = next[at] = next[next[at]!]!;
    return at;
  };
  const covering = new Map<Finding, Mark>();
  for (const mark of marks) {
    if (mark.reason === '') continue;
    let at = uncovered(firstFrom(inOrder, mark.covers.start));
    for (; at < inOrder.length && inOrder[at]!.span.start < mark.covers.end; at = uncovered(at)) {
      covering.set(inOrder[at]!, mark);
      next[at] = at + 1;
    }
  }
  return covering;
}

/** Index of the first finding that starts at `offset` or later. */
function firstFrom(inOrder: readonly Finding[], offset: number): number {
  let low = 0;
  let high = inOrder.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (inOrder[middle]!.span.start < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

function marksOf(note: Note): Mark[] {
  const coverage = new Coverage(note.text);
  return note.comments.flatMap((comment) => {
    const match = MARK.exec(comment.text);
    return match ? [{ comment, reason: match[1]!, covers: coverage.of(comment.span) }] : [];
  });
}

/** What each mark of a note covers. Remembers the last line and block looked at, since marks may crowd in one. */
class Coverage {
  readonly #text: string;
  #line = { start: -1, end: -1, prose: 0 };
  #block: Span = { start: -1, end: -1 };

  constructor(text: string) {
    this.#text = text;
  }

  /** The line of the mark when prose stands on it; else the block below, up to the next blank line. */
  of(mark: Span): Span {
    const { start, end, prose } = this.#lineOf(mark);
    if (prose > proseIn(this.#text.slice(mark.start, mark.end))) return { start, end };
    return this.#blockAfter(end);
  }

  #lineOf(mark: Span): { start: number; end: number; prose: number } {
    const { start, end } = this.#line;
    if (mark.start >= start && mark.end <= end) return this.#line;
    const from = lineStart(this.#text, mark.start);
    const to = lineEnd(this.#text, mark.end);
    const line = { start: from, end: to, prose: proseIn(this.#text.slice(from, to)) };
    // A mark over several lines has them for itself.
    if (lineEnd(this.#text, from) === to) this.#line = line;
    return line;
  }

  #blockAfter(from: number): Span {
    const { start, end } = this.#block;
    const first = firstFilledLine(this.#text, from);
    this.#block =
      first >= start && first < end
        ? { start: first, end }
        : { start: first, end: blockEnd(this.#text, first) };
    return this.#block;
  }
}

/** How many characters are more than blanks and the signs of quotes and lists. */
const proseIn = (text: string): number => text.replace(/[\s>*+-]/g, '').length;

const lineStart = (text: string, at: number) =>
  Math.max(text.lastIndexOf('\n', at - 1), text.lastIndexOf('\r', at - 1)) + 1;

function lineEnd(text: string, at: number): number {
  for (let i = at; i < text.length; i++) if (text[i] === '\n' || text[i] === '\r') return i;
  return text.length;
}

/** Where the line after the one that ends at `end` starts. */
const lineAfter = (text: string, end: number): number =>
  end + (text[end] === '\r' && text[end + 1] === '\n' ? 2 : 1);

const isBlank = (text: string, from: number, to: number): boolean => text.slice(from, to).trim() === '';

/** Start of the first line from `at` that is not blank; the length of the text when there is none. */
function firstFilledLine(text: string, at: number): number {
  let start = at;
  for (
    let end = lineEnd(text, start);
    start < text.length && isBlank(text, start, end);
    end = lineEnd(text, start)
  )
    start = lineAfter(text, end);
  return Math.min(start, text.length);
}

/** End of the block that starts at `start`: the next blank line. */
function blockEnd(text: string, start: number): number {
  let at = start;
  while (at < text.length) {
    const end = lineEnd(text, at);
    if (at > start && isBlank(text, at, end)) return at;
    at = lineAfter(text, end);
  }
  return text.length;
}

function idle({ comment, reason }: Mark, locale?: Locale): Finding {
  const without = reason === '';
  return {
    check: ID,
    kind: 'style',
    severity: 'hint',
    span: comment.span,
    says: say(locale, without ? MARKS.noReason : MARKS.idle),
    holds: say(locale, without ? MARKS.giveReason : MARKS.canGo),
    source: tell('this checker', locale),
    sources: [],
    fixes: without
      ? []
      : [{ title: say(locale, MARKS.remove), safety: 'safe', edits: [{ span: comment.span, text: '' }] }],
    related: [],
    derivation: [],
    unnecessary: !without,
  };
}
