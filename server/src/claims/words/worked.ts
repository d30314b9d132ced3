/** Sums that a text works out: what comes out of them, and the rule they go by. */
import type { System } from '../../sizes/model.ts';
import type { FormulaRow } from './formulas.ts';

/** What a text works out: the row of what comes out, and the row of what does not. */
const worked = (
  right: string,
  wrong: string,
  system: System,
  says: string,
  holds: string,
): readonly FormulaRow[] =>
  [right, wrong].map((id) => ({
    id,
    system,
    says,
    true: id === right,
    holds,
    standard: 'arithmetic',
    sources: [],
  }));

/** Rows of `FORMULAS` for what is worked out. */
export const WORKED: readonly FormulaRow[] = [
  ...worked(
    'tube-as-worked-out',
    'tube-worked-out-wrong',
    'tube-id',
    'this tube comes out of the rule given',
    'By the rule as the text gives it the sum is another',
  ),
  ...worked(
    'suction-as-worked-out',
    'suction-worked-out-wrong',
    'tube-id',
    'this catheter comes out of twice the tube',
    'Twice the tube, as the text has it, is less',
  ),
  ...worked(
    'area-squared',
    'area-squared-wrong',
    'french',
    'the cross-sections stand in this ratio',
    'The cross-section goes with the square of the diameter',
  ),
  ...worked(
    'widths',
    'widths-wrong',
    'french',
    'the widths stand in this ratio',
    'These numbers are diameters, and their ratio is another',
  ),
  ...worked(
    'flow-to-fourth',
    'flow-to-fourth-wrong',
    'tube-id',
    'by the law the flows stand in this ratio',
    'By the law of narrow pipes the flow goes with the fourth power of the bore',
  ),
  ...worked(
    'flow-by-bore',
    'flow-by-bore-wrong',
    'tube-id',
    'the flow changes about as much as the bore',
    'The flow changes far more than the bore; by the law of narrow pipes with its fourth power',
  ),
  ...worked(
    'sum-comes-out',
    'sum-wrong',
    'french',
    'a sum that does not come out',
    'The sum as it is written comes to something else',
  ),
  ...worked(
    'next-of-sum',
    'next-of-sum-wrong',
    'french',
    'this size is the next one below or above what comes out',
    'The size lies on the other side of what comes out',
  ),
];
