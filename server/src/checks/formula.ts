/** A rule of conversion that does not hold. */
import { statementCheck } from './statement-check.ts';

export const formula = statementCheck(
  {
    id: 'conversion-rule',
    title: 'The rule of conversion does not hold',
    docs: 'A rule for turning one system into another is stated wrongly: French is three times the outer diameter in millimetres, so French divided by 3 gives millimetres; the metric number counts tenths of a millimetre; 2-0 means two zeros. A tube or a suction catheter worked out by such a rule is judged by the sum.',
  },
  ({ claim }) =>
    claim.kind === 'formula' && claim.construction !== 'answer-key' && claim.construction !== 'hues',
);
