/** Sums that a text works out: what comes out of them, and the rule they go by. */
import type { System } from '../../sizes/model.ts';
import type { FormulaRow } from './formulas.ts';

/** What a text works out from two sizes, and the rule it goes by. */
type Sum = readonly [says: string, holds: string];
const TUBE_SUM: Sum = [
  'this tube comes out of the rule given',
  'By the rule as the text gives it the sum is another',
];
const SUCTION_SUM: Sum = [
  'this catheter comes out of twice the tube',
  'Twice the tube, as the text has it, is less',
];
const AREA: Sum = [
  'the cross-sections stand in this ratio',
  'The cross-section goes with the square of the diameter',
];
const FOURTH: Sum = [
  'by the law the flows stand in this ratio',
  'By the law of narrow pipes the flow goes with the fourth power of the bore',
];
const worked = (id: string, system: System, [says, holds]: Sum, right: boolean): FormulaRow => ({
  id,
  system,
  says,
  true: right,
  holds,
  standard: 'arithmetic',
  sources: [],
});
const PLAIN: Sum = ['a sum that does not come out', 'The sum as it is written comes to something else'];
const ONE_ON: Sum = [
  'this size is the next one below or above what comes out',
  'The size lies on the other side of what comes out',
];

/** Rows of `FORMULAS` for what is worked out. */
export const WORKED: readonly FormulaRow[] = [
  worked('tube-as-worked-out', 'tube-id', TUBE_SUM, true),
  worked('tube-worked-out-wrong', 'tube-id', TUBE_SUM, false),
  worked('suction-as-worked-out', 'tube-id', SUCTION_SUM, true),
  worked('suction-worked-out-wrong', 'tube-id', SUCTION_SUM, false),
  worked('area-squared', 'french', AREA, true),
  worked('area-squared-wrong', 'french', AREA, false),
  worked('flow-to-fourth', 'tube-id', FOURTH, true),
  worked('flow-to-fourth-wrong', 'tube-id', FOURTH, false),
  worked('sum-comes-out', 'french', PLAIN, true),
  worked('sum-wrong', 'french', PLAIN, false),
  worked('next-of-sum', 'french', ONE_ON, true),
  worked('next-of-sum-wrong', 'french', ONE_ON, false),
];
