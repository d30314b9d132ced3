/** A needle point said to have its edge where it has none. */
import { statementCheck } from './statement-check.ts';

export const needlePoint = statementCheck(
  {
    id: 'needle-point',
    title: 'The needle point is described wrongly',
    docs: 'A conventional cutting needle has its third edge on the inner curve, a reverse cutting needle on the outer; taper and blunt points have none.',
  },
  ({ claim }) => claim.kind === 'property' && claim.of === 'point' && claim.construction !== 'answer-key',
);
