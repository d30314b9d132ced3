/** Lines of a text with their offsets. LF, CR and CRLF end a line, as in CommonMark and WebVTT. */
import type { Span } from './model.ts';

export interface Line extends Span {
  /** Offset after the line ending; `end` is before it. */
  readonly next: number;
}

export function linesOf(text: string, from: number): Line[] {
  const lines: Line[] = [];
  const ending = /\r\n?|\n/g;
  let start = from;
  ending.lastIndex = from;
  for (let match = ending.exec(text); match; match = ending.exec(text)) {
    lines.push({ start, end: match.index, next: ending.lastIndex });
    start = ending.lastIndex;
  }
  if (start < text.length) lines.push({ start, end: text.length, next: text.length });
  return lines;
}

/** Lines of a passage's text that hold anything; in prose a line feed alone ends a line. */
export function filledLines(text: string): Span[] {
  const lines: Span[] = [];
  for (let at = 0; at < text.length; ) {
    const next = text.indexOf('\n', at);
    const end = next < 0 ? text.length : next;
    if (end > at) lines.push({ start: at, end });
    at = end + 1;
  }
  return lines;
}

/** Runs of lines that are not blank. */
export function blocksOf(text: string, lines: readonly Line[]): Line[][] {
  const blocks: Line[][] = [];
  let open: Line[] | undefined;
  for (const line of lines) {
    if (/^[ \t]*$/.test(text.slice(line.start, line.end))) open = undefined;
    else if (open) open.push(line);
    else {
      open = [line];
      blocks.push(open);
    }
  }
  return blocks;
}
