/** A list of sizes out of the order the text announces. */
import { statementCheck } from './statement-check.ts';

export const order = statementCheck(
  {
    id: 'size-order',
    title: 'These sizes do not run in the order announced',
    docs: 'A list or a column is said to run from thick to thin, or from thin to thick, and one size stands in the wrong place.',
  },
  ({ claim }) => claim.kind === 'order' && claim.construction !== 'answer-key',
);
