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
