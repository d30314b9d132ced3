/** The lines of a passage, for layouts that a line break makes. */
import type { Span } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';

export function linesOf({ passage }: Read): Span[] {
  const { text } = passage;
  const lines: Span[] = [];
  for (let at = 0; at < text.length; ) {
    const next = text.indexOf('\n', at);
    const end = next < 0 ? text.length : next;
    if (end > at) lines.push({ start: at, end });
    at = end + 1;
  }
  return lines;
}

/** "Q1 thicker: 3-0 / 4-0? ‖ Q2 9 mm = ? Fr": several questions on one line, each opened by its number; else the line. */
export function askedOn({ passage }: Read, line: Span): Span[] {
  const { start, end } = line;
  if (end - start > LONGEST_ROW || !/^\W{0,3}Q ?1?\d\b/.test(passage.text.slice(start, start + 8)))
    return [line];
  const starts = [...passage.text.slice(start, end).matchAll(/(?:^|\s)(?=Q ?1?\d\b)/g)];
  return starts.length < 2
    ? [line]
    : starts.map(({ index }, i) => ({
        start: start + index,
        end: start + (starts[i + 1]?.index ?? end - start),
      }));
}
const LONGEST_ROW = 800;
