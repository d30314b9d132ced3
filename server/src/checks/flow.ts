/** Flow compared the wrong way round. */
import { statementCheck } from './statement-check.ts';

export const flow = statementCheck(
  {
    id: 'flow-comparison',
    title: 'The wider bore flows faster',
    docs: 'Of two cannulas of one length the wider one flows faster. Only the order is judged, never a rate, and nothing is said when lengths differ.',
  },
  ({ claim }) => claim.kind === 'comparison' && claim.axis === 'flow' && claim.construction !== 'answer-key',
);
