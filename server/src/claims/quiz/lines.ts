/** The lines of a passage, for layouts that a line break makes. */
import { filledLines, matchesOf } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';

export const linesOf = ({ passage }: Read): Span[] => filledLines(passage.text);

/** "Q1 thicker: 3-0 / 4-0? ‖ Q2 9 mm = ? Fr": several questions on one line, each opened by its number; else the line. */
export function askedOn({ passage }: Read, line: Span): Span[] {
  const { start, end } = line;
  if (end - start > LONGEST_ROW || !/^\W{0,3}Q ?1?\d\b/.test(passage.text.slice(start, start + 8)))
    return [line];
  const starts = matchesOf(passage.text.slice(start, end), COUNTED);
  return starts.length < 2
    ? [line]
    : starts.map(({ index }, i) => ({
        start: start + index,
        end: start + (starts[i + 1]?.index ?? end - start),
      }));
}
const COUNTED = /(?:^|\s)(?=Q ?1?\d\b)/g;
const LONGEST_ROW = 800;
