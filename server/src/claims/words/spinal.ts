/** What holds of the tips of spinal needles. From memory; anaesthesia texts agree. */
import type { FormulaRow } from './formulas.ts';

const tip = (id: string, says: string, holds: boolean): FormulaRow => ({
  id,
  system: 'needle-gauge',
  says,
  true: holds,
  holds: 'A pencil-point spinal needle has a closed, rounded tip and its opening on the side',
  standard: 'from memory',
  sources: [],
});

export const SPINAL_TIPS: readonly FormulaRow[] = [
  tip('pencil-point-side', 'a pencil-point needle opens at its side', true),
  tip('pencil-point-open', 'a pencil-point needle opens at its tip or has a cutting bevel', false),
];
