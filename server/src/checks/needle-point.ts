/** A needle point said to have its edge where it has none, or to be for a tissue it is not for. */
import { statementCheck } from './statement-check.ts';

export const needlePoint = statementCheck(
  {
    id: 'needle-point',
    title: 'The needle point is described wrongly',
    docs: 'A conventional cutting needle has its third edge on the inner curve, a reverse cutting needle on the outer; taper and blunt points have none. A point given to a tissue for which every text has another (a cutting needle for bowel, a blunt one for skin) is reported too.',
  },
  ({ claim }) => claim.kind === 'property' && claim.of === 'point' && claim.construction !== 'answer-key',
);
