/**
 * Errors left in on purpose. `<!-- wrong on purpose: reason -->` covers the findings of the block that follows it, or of
 * the line it stands on. A mark without a reason, or one that covers nothing, is reported.
 */

import { matchesOf } from '../notes/matches.ts';
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
    let at = uncovered(firstFrom(inOrder, mark.covers.start, ({ span }) => span.start));
    for (; at < inOrder.length && inOrder[at]!.span.start < mark.covers.end; at = uncovered(at)) {
      covering.set(inOrder[at]!, mark);
      next[at] = at + 1;
    }
  }
  return covering;
}

/** Index of the first of the items, in order of their places, that stands at `offset` or later. */
function firstFrom<Item>(inOrder: readonly Item[], offset: number, placeOf: (item: Item) => number): number {
  let low = 0;
  let high = inOrder.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (placeOf(inOrder[middle]!) < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

function marksOf(note: Note): Mark[] {
  const marks = note.comments.flatMap((comment) => {
    const match = MARK.exec(comment.text);
    return match ? [{ comment, reason: match[1]! }] : [];
  });
  if (marks.length === 0) return [];
  const lines = linesOf(note.text);
  return marks.map((mark) => ({ ...mark, covers: coverOf(note.text, lines, mark.comment.span) }));
}

interface Line extends Span {
  readonly prose: number;
  /** What is left of the block it stands in, up to the next blank line; of a blank line, the next block. */
  readonly block: Span;
}

/** The lines of a note, without the signs that end them. Worked out once, since marks may crowd in one. */
function linesOf(text: string): Line[] {
  const breaks = matchesOf(text, /\r\n?|\n/g);
  const ends = [...breaks.map(({ index }) => index), text.length];
  const starts = [0, ...breaks.map(({ index, 0: sign }) => index + sign.length)];
  const lines: Line[] = [];
  let block: Span = { start: text.length, end: text.length };
  let inBlock = false;
  for (let i = starts.length - 1; i >= 0; i--) {
    const [start, end] = [starts[i]!, ends[i]!];
    const line = text.slice(start, end);
    const filled = line.trim() !== '';
    if (filled) block = { start, end: inBlock ? block.end : end };
    inBlock = filled;
    lines.push({ start, end, prose: proseIn(line), block });
  }
  return lines.reverse();
}

/** The line of the mark when prose stands on it; else the block below, up to the next blank line. */
function coverOf(text: string, lines: readonly Line[], mark: Span): Span {
  const lineAt = (at: number): number => firstFrom(lines, at, ({ end }) => end);
  const last = lineAt(mark.end);
  const own = lines.slice(lineAt(mark.start), last + 1);
  const prose = own.reduce((sum, line) => sum + line.prose, 0);
  if (prose > proseIn(text.slice(mark.start, mark.end)))
    return { start: own[0]!.start, end: own.at(-1)!.end };
  return lines[last + 1]?.block ?? { start: text.length, end: text.length };
}

/** How many characters are more than blanks and the signs of quotes and lists. */
const proseIn = (text: string): number => text.replace(/[\s>*+-]/g, '').length;

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
