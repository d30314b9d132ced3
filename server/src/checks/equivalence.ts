/** A size said to equal a value that it does not have. */
import { statementCheck } from './statement-check.ts';

export const equivalence = statementCheck(
  {
    id: 'size-conversion',
    title: 'The converted value does not match',
    docs: 'A size stands beside a value in another system (mm, inch, French, metric number) that lies outside the interval of the standard, with room for the rounding of the digits as written. Values that standards or makers differ on are left alone.',
  },
  ({ claim }) => claim.kind === 'equivalence' && claim.construction !== 'answer-key',
);
