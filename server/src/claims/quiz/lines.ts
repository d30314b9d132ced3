/** The lines of a passage, for layouts that a line break makes. */
import { filledLines, matchesOf } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';

export const linesOf = ({ passage }: Read): Span[] => filledLines(passage.text);

/**
 * "Q1 thicker: 3-0 / 4-0? ‖ Q2 9 mm = ? Fr", "(i) Wider: 22 G or 18 G? (ii) 18 Fr in mm?": several questions on one line, each
 * opened by its number; else the line.
 */
export function askedOn({ passage }: Read, line: Span): Span[] {
  const { start, end } = line;
  if (end - start > LONGEST_ROW) return [line];
  const text = passage.text.slice(start, end);
  const counted = OPENINGS.find(([opening]) => opening.test(text.slice(0, 8)))?.[1];
  const starts = counted ? matchesOf(text, counted) : [];
  return starts.length < 2
    ? [line]
    : starts.map(({ index }, i) => ({
        start: start + index,
        end: start + (starts[i + 1]?.index ?? text.length),
      }));
}
/** How the first opens, and where each of them begins; one in brackets behind the mark of the one before. */
const OPENINGS: readonly (readonly [RegExp, RegExp])[] = [
  [/^\W{0,3}Q ?1?\d\b/, /(?:^|\s)(?=Q ?1?\d\b)/g],
  [/^\(i\)\s/, /(?:^|(?<=\?\s))(?=\([ivx]{1,4}\)\s)/g],
  [/^\(1\)\s/, /(?:^|(?<=\?\s))(?=\(\d{1,2}\)\s)/g],
];
const LONGEST_ROW = 800;
