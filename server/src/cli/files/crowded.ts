/**
 * What is read of a size takes a kilobyte or two until the note is done, so that memory goes with the sizes in one note more
 * than with its length. Beyond a number that no note comes near, a note is refused instead of ending the run.
 */
import { UsageError } from '../usage-error.ts';

/** As many as a line of 6 MB in which every fourth word is a size. */
export const MOST_SIZES = 250_000;

/** Bytes of the shortest writing of a size with its blank: a shorter note cannot hold too many. */
const SHORTEST = 3;

const SIZE = /[0-9](?:[ -]?(?:g|ga|gauge|fr|f|ch|french|mm|in)\b|[-/]0(?![0-9]))/gi;

/** Throws `UsageError` for a note that holds more sizes than fit into memory. Linear in the text. */
export function refuseCrowded(path: string, text: string): void {
  if (text.length < MOST_SIZES * SHORTEST) return;
  let count = 0;
  SIZE.lastIndex = 0;
  while (SIZE.test(text)) count++;
  if (count > MOST_SIZES)
    throw new UsageError(
      `${path}: holds more than ${MOST_SIZES} sizes, which no note does; check it in parts`,
    );
}
