/** A size that its system does not have. */
import { statementCheck } from './statement-check.ts';

export const existence = statementCheck(
  {
    id: 'no-such-size',
    title: 'This size does not exist',
    docs: 'The system has no such size: USP has no 2.5-0 and no 13-0, no hypodermic needle is 36 G, no tracheal tube 6.8 mm and no urinary catheter 15.2 Ch.',
  },
  ({ claim }) => claim.kind === 'existence' && claim.absent === undefined,
);
