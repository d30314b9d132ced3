/** A size said to lie inside or outside a range, or to keep to a limit. */
import { statementCheck } from './statement-check.ts';

export const range = statementCheck(
  {
    id: 'size-range',
    title: 'The size is on the other side of the range',
    docs: 'A size is said to lie within (or outside) a range of sizes written beside it, or to keep to a limit such as “18 G or wider”, and it does not.',
  },
  ({ claim }) => claim.kind === 'range' || claim.kind === 'limit',
);
