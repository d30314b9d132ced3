/** A size that is said not to exist, and does. */
import { statementCheck } from './statement-check.ts';

export const absence = statementCheck(
  {
    id: 'size-exists',
    title: 'This size exists',
    docs: 'A size is said not to exist, or a scale to end, where it goes on: there are hypodermic needles of 19 and 23 G, and threads finer than 7-0. What a shelf, a ward, a maker or one material has is left alone, and so are cannulas, catheters and other needles.',
  },
  ({ claim }) =>
    claim.kind === 'existence' && claim.absent !== undefined && claim.construction !== 'answer-key',
);
