/** Which safe fixes of a note can be applied together, and the text after them. */
import type { Edit, Finding } from '../../checks/model.ts';

export interface Mended {
  readonly text: string;
  /** Edits applied, in source order. */
  readonly edits: readonly Edit[];
  /** Findings mended. */
  readonly count: number;
}

const inOrder = (a: Edit, b: Edit): number => a.span.start - b.span.start || a.span.end - b.span.end;

/** Two edits exclude each other when they overlap or insert at one place. */
const clash = (a: Edit, b: Edit): boolean =>
  a.span.start < b.span.end && b.span.start < a.span.end ? true : a.span.start === b.span.start;

/** Line endings of the note, for edits that bring new lines. */
function endingOf(text: string): string {
  return /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
}

/** Edits of the first safe fix of each finding; a fix that touches an earlier one waits for the next run. */
function chosen(findings: readonly Finding[]): { edits: Edit[]; count: number } {
  const edits: Edit[] = [];
  let last = -1;
  let count = 0;
  for (const finding of findings) {
    const fix =
      finding.deliberate === undefined ? finding.fixes.find(({ safety }) => safety === 'safe') : undefined;
    if (!fix || fix.edits.length === 0) continue;
    const wanted = [...fix.edits].sort(inOrder);
    if (
      wanted[0]!.span.start < last ||
      edits.slice(-8).some((edit) => wanted.some((one) => clash(edit, one)))
    )
      continue;
    edits.push(...wanted);
    last = wanted.at(-1)!.span.end;
    count++;
  }
  return { edits, count };
}

export function mend(text: string, findings: readonly Finding[]): Mended {
  const { edits, count } = chosen(findings);
  const ending = endingOf(text);
  let at = 0;
  let result = '';
  for (const { span, text: inserted } of edits) {
    result += text.slice(at, span.start) + inserted.replace(/\r\n|\n|\r/g, ending);
    at = span.end;
  }
  return { text: result + text.slice(at), edits, count };
}
