/** A change as a unified diff (the format of POSIX `diff -u`), from the edits that made it. */
import type { Edit } from '../../checks/model.ts';
import { Lines } from '../lines.ts';

const CONTEXT = 3;

interface Hunk {
  /** First and last line changed, from 1. */
  from: number;
  to: number;
  readonly edits: Edit[];
}

function hunks(lines: Lines, edits: readonly Edit[]): Hunk[] {
  const list: Hunk[] = [];
  for (const edit of edits) {
    const { line, endLine } = lines.place(edit.span);
    const last = list.at(-1);
    if (last && line - last.to <= 2 * CONTEXT) {
      last.to = Math.max(last.to, endLine);
      last.edits.push(edit);
    } else list.push({ from: line, to: endLine, edits: [edit] });
  }
  return list;
}

/** The lines `from` to `to` with their edits made. */
function mended(text: string, lines: Lines, { from, to, edits }: Hunk): string[] {
  let at = lines.span(from).start;
  let result = '';
  for (const { span, text: inserted } of edits) {
    result += text.slice(at, span.start) + inserted;
    at = span.end;
  }
  return (result + text.slice(at, lines.span(to).end)).split(/\r\n|\n|\r/);
}

const numbered = (lines: Lines, from: number, to: number): string[] =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => lines.line(from + i));

/** Hunks name line ranges only; text is given as it stands, without line endings other than LF. */
export function unified(path: string, text: string, edits: readonly Edit[]): string {
  const lines = new Lines(text);
  const last = lines.line(lines.count) === '' ? lines.count - 1 : lines.count;
  let shift = 0;
  let out = `--- ${path}\n+++ ${path}\n`;
  for (const hunk of hunks(lines, edits)) {
    const start = Math.max(1, hunk.from - CONTEXT);
    const end = Math.min(last, hunk.to + CONTEXT);
    const before = numbered(lines, start, hunk.from - 1);
    const after = numbered(lines, hunk.to + 1, end);
    const gone = numbered(lines, hunk.from, hunk.to);
    const come = mended(text, lines, hunk);
    const size = before.length + after.length;
    out += `@@ -${start},${size + gone.length} +${start + shift},${size + come.length} @@\n`;
    out += [
      ...before.map((line) => ` ${line}`),
      ...gone.map((line) => `-${line}`),
      ...come.map((line) => `+${line}`),
      ...after.map((line) => ` ${line}`),
    ].join('\n');
    out += '\n';
    shift += come.length - gone.length;
  }
  return out;
}
