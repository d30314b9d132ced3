/** Named sizes compared the wrong way round. */
import { statementCheck } from './statement-check.ts';

export const comparison = statementCheck(
  {
    id: 'size-comparison',
    title: 'These sizes compare the other way',
    docs: 'Two named sizes are compared in thickness, bore, strength or the hole they leave, and the tables say the opposite. Sizes of different systems are compared in millimetres, only when their intervals do not overlap.',
  },
  ({ claim }) => claim.kind === 'comparison' && claim.axis !== 'flow' && claim.construction !== 'answer-key',
);
