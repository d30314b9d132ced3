/** A change as a unified diff (the format of POSIX `diff -u`), from the edits that made it. */
import type { Edit } from '../../checks/model.ts';
import { Lines } from '../lines.ts';

const CONTEXT = 3;

/** Neighbouring lines changed together; lines from 1, both ends inclusive. */
interface Change {
  readonly from: number;
  readonly to: number;
  readonly edits: readonly Edit[];
}

function changesOf(lines: Lines, edits: readonly Edit[]): Change[] {
  const list: Change[] = [];
  for (const edit of edits) {
    const { line, endLine } = lines.place(edit.span);
    const last = list.at(-1);
    if (!last || line > last.to) list.push({ from: line, to: endLine, edits: [edit] });
    else
      list[list.length - 1] = {
        from: last.from,
        to: Math.max(last.to, endLine),
        edits: [...last.edits, edit],
      };
  }
  return list;
}

/** Changes whose context would touch stand in one hunk. */
function hunksOf(changes: readonly Change[]): Change[][] {
  const hunks: Change[][] = [];
  for (const change of changes) {
    const last = hunks.at(-1);
    if (last && change.from - last.at(-1)!.to <= 2 * CONTEXT + 1) last.push(change);
    else hunks.push([change]);
  }
  return hunks;
}

/** The lines of a change after its edits. */
function after(text: string, lines: Lines, { from, to, edits }: Change): string[] {
  let at = lines.span(from).start;
  let result = '';
  for (const { span, text: inserted } of edits) {
    result += text.slice(at, span.start) + inserted;
    at = span.end;
  }
  return (result + text.slice(at, lines.span(to).end)).split(/\r\n|\n|\r/);
}

function range(lines: Lines, sign: string, from: number, to: number): string[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => sign + lines.line(from + i));
}

/** Lines may be shown without their CR; the diff is for reading. */
export function unified(path: string, text: string, edits: readonly Edit[]): string {
  const lines = new Lines(text);
  const last = lines.line(lines.count) === '' ? lines.count - 1 : lines.count;
  const out = [`--- ${path}`, `+++ ${path}`];
  let shift = 0;
  for (const hunk of hunksOf(changesOf(lines, edits))) {
    const start = Math.max(1, hunk[0]!.from - CONTEXT);
    const end = Math.min(last, hunk.at(-1)!.to + CONTEXT);
    const rows: string[] = [];
    let next = start;
    for (const change of hunk) {
      rows.push(...range(lines, ' ', next, change.from - 1), ...range(lines, '-', change.from, change.to));
      rows.push(...after(text, lines, change).map((line) => `+${line}`));
      next = change.to + 1;
    }
    rows.push(...range(lines, ' ', next, end));
    const old = rows.filter((row) => row[0] !== '+').length;
    const now = rows.filter((row) => row[0] !== '-').length;
    out.push(`@@ -${start},${old} +${start + shift},${now} @@`, ...rows);
    shift += now - old;
  }
  return `${out.join('\n')}\n`;
}
