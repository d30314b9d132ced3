/** A thing said to go through something narrower. */
import { statementCheck } from './statement-check.ts';

export const fit = statementCheck(
  {
    id: 'size-fit',
    title: 'The thing is thicker than what it is said to pass through',
    docs: 'A wire, catheter or tube is said to go through a needle, a cannula, a sheath or a channel that is narrower than it, whatever the wall. A near fit is left alone.',
  },
  ({ claim }) => claim.kind === 'fit' && claim.construction !== 'answer-key',
);
