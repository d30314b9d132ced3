/** Plain text: runs of lines between blank lines are paragraphs. */
import { type Container, PassageDraft } from './draft.ts';
import { blocksOf, type Line, linesOf } from './lines.ts';
import type { Note, Passage } from './model.ts';

const OUTERMOST: Container = { headings: [], path: [], quote: 0, footnote: false };

/** First and last offset of a line without the white space around its text. */
export function trimmed(text: string, line: Line): { start: number; end: number } {
  let { start, end } = line;
  while (start < end && /[ \t]/.test(text.charAt(start))) start++;
  while (end > start && /[ \t]/.test(text.charAt(end - 1))) end--;
  return { start, end };
}

function readBlock(text: string, lines: readonly Line[], index: number): Passage {
  const draft = new PassageDraft(index, 'paragraph', lines[0]!.start, OUTERMOST);
  let written = lines[0]!.start;
  for (const line of lines) {
    const { start, end } = trimmed(text, line);
    if (line !== lines[0]) draft.breakLine(written, start);
    draft.append(text.slice(start, end), start, end);
    written = end;
  }
  return draft.finish();
}

/** Reads plain text; a leading byte order mark is passed over but counted. */
export function readText(text: string): Note {
  const blocks = blocksOf(text, linesOf(text, text.startsWith('\uFEFF') ? 1 : 0));
  const passages = blocks.map((lines, index) => readBlock(text, lines, index));
  return { text, passages, tables: [], comments: [] };
}
