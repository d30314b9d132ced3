/**
 * Errors left in on purpose. `<!-- wrong on purpose: reason -->` covers the findings of the block that follows it, or of
 * the line it stands on. A mark without a reason, or one that covers nothing, is reported.
 */
import type { Comment, Note, Span } from '../notes/model.ts';
import type { CheckDefinition } from './definition.ts';
import type { Finding } from './model.ts';

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

/** Findings with the covered ones noted, and the idle marks added. */
export function coverDeliberate(note: Note, findings: readonly Finding[]): Finding[] {
  const marks = marksOf(note);
  if (marks.length === 0) return [...findings];
  const used = new Set<Mark>();
  const kept = findings.map((finding) => {
    const mark = marks.find(
      ({ covers, reason }) =>
        reason !== '' && finding.span.start >= covers.start && finding.span.start < covers.end,
    );
    if (!mark) return finding;
    used.add(mark);
    return { ...finding, deliberate: mark.reason };
  });
  return [...kept, ...marks.filter((mark) => !used.has(mark)).map((mark) => idle(mark))];
}

function marksOf(note: Note): Mark[] {
  return note.comments.flatMap((comment) => {
    const match = MARK.exec(comment.text);
    return match ? [{ comment, reason: match[1] ?? '', covers: coverage(note.text, comment.span) }] : [];
  });
}

/** The line of the mark when prose stands on it; else the block below, up to the next blank line. */
function coverage(text: string, span: Span): Span {
  const start = lineStart(text, span.start);
  const end = lineEnd(text, span.end);
  const rest = `${text.slice(start, span.start)}${text.slice(span.end, end)}`.replace(/[\s>*+-]/g, '');
  return rest !== '' ? { start, end } : blockAfter(text, end);
}

const lineStart = (text: string, at: number) =>
  Math.max(text.lastIndexOf('\n', at - 1), text.lastIndexOf('\r', at - 1)) + 1;

function lineEnd(text: string, at: number): number {
  for (let i = at; i < text.length; i++) if (text[i] === '\n' || text[i] === '\r') return i;
  return text.length;
}

function blockAfter(text: string, from: number): Span {
  let at = from;
  let start = -1;
  while (at < text.length) {
    const next = lineEnd(text, at);
    const blank = text.slice(at, next).trim() === '';
    if (start < 0 && !blank) start = at;
    else if (start >= 0 && blank && at > start) return { start, end: at };
    at = next + (text[next] === '\r' && text[next + 1] === '\n' ? 2 : 1);
  }
  return { start: start < 0 ? text.length : start, end: text.length };
}

function idle({ comment, reason }: Mark): Finding {
  const without = reason === '';
  return {
    check: ID,
    kind: 'style',
    severity: 'hint',
    span: comment.span,
    says: without ? 'This mark gives no reason.' : 'This mark covers no finding.',
    holds: without ? 'Write why the error is left in: <!-- wrong on purpose: reason -->.' : 'It can go.',
    source: 'this checker',
    sources: [],
    fixes: without
      ? []
      : [{ title: 'Remove the mark', safety: 'safe', edits: [{ span: comment.span, text: '' }] }],
    related: [],
    derivation: [],
    unnecessary: !without,
  };
}
