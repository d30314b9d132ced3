/**
 * Where a Markdown note may be cut: before a line that starts in the first column, follows a blank line and
 * is no list marker. By CommonMark such a line ends every paragraph, list, quote, footnote and table, so only
 * fenced code, display math and HTML can still be open; the reader finds those out by parsing.
 */

import { firstMatch } from './patterns.ts';

/** A list marker; also the start of a thematic break such as `* * *`, which does no harm. */
const LIST_MARKER = /^(?:[-+*]|\d{1,9}[.)])(?:[ \t\r\n]|$)/;

const FRONT_MATTER =
  /^(?:---[ \t]*(?:\r\n?|\n)(?:[\s\S]*?(?:\r\n?|\n))??---|\+\+\+[ \t]*(?:\r\n?|\n)(?:[\s\S]*?(?:\r\n?|\n))??\+\+\+)[ \t]*(?:\r\n?|\n|$)/;

/** End of the front matter at the start of the text, line ending included; 0 when there is none. */
export function frontMatterEnd(text: string): number {
  return firstMatch(FRONT_MATTER, text)?.[0].length ?? 0;
}

function isBlank(text: string, start: number, end: number): boolean {
  for (let at = start; at < end; at++) {
    const code = text.charCodeAt(at);
    if (code !== 32 && code !== 9 && code !== 10 && code !== 13) return false;
  }
  return true;
}

function mayStart(text: string, start: number): boolean {
  const code = text.charCodeAt(start);
  if (code === 32 || code === 9) return false;
  return !LIST_MARKER.test(text.slice(start, start + 12));
}

/** Offsets in `text`, ascending, at or after `from`, where a stretch may begin; the first is `from`. */
export function candidates(text: string, from: number): number[] {
  const found = [from];
  const ending = /\r\n?|\n/g;
  ending.lastIndex = from;
  let afterBlank = false;
  for (let start = from; start < text.length; ) {
    const end = ending.test(text) ? ending.lastIndex : text.length;
    const blank = isBlank(text, start, end);
    if (!blank && afterBlank && mayStart(text, start)) found.push(start);
    afterBlank = blank;
    start = end;
  }
  return found;
}
