/** The lines of a text: of a passage, or of a whole note. */
import type { Span } from '../../notes/model.ts';
import { remembered } from './remember.ts';

/** What has lines. */
interface Text {
  readonly text: string;
}

/** Offsets at which lines begin, found once a text: looking back from each sentence costs a long line its square. */
const starts = remembered(({ text }: Text): readonly number[] => {
  const found = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) found.push(at + 1);
  return found;
});

/** The line that holds an offset of the text, without the break that ends it. */
export function lineAt(about: Text, at: number): Span {
  const lines = starts(about);
  let [low, high] = [0, lines.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (lines[middle]! <= at) low = middle;
    else high = middle - 1;
  }
  const next = lines[low + 1];
  return { start: lines[low]!, end: next === undefined ? about.text.length : next - 1 };
}
