/** A size said to lie inside or outside a range. */
import { statementCheck } from './statement-check.ts';

export const range = statementCheck(
  {
    id: 'size-range',
    title: 'The size is on the other side of the range',
    docs: 'A size is said to lie within (or outside) a range of sizes written beside it, and it does not.',
  },
  ({ claim }) => claim.kind === 'range',
);
