/** The number of a system said to run the wrong way. */
import { statementCheck } from './statement-check.ts';

export const direction = statementCheck(
  {
    id: 'size-direction',
    title: 'The numbers run the other way',
    docs: 'A sentence on which way a scale runs contradicts the scale: a larger gauge number is thinner, a larger French number is thicker, more zeros are thinner. “A larger gauge” without the word *number* is left alone, because people mean either by it.',
  },
  ({ claim }) => claim.kind === 'direction' && claim.construction !== 'answer-key',
);
