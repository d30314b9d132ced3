/** A cuffed tracheal tube against an uncuffed one. */
import type { FormulaRow } from './formulas.ts';

const cuff = (id: string, says: string, holds: boolean): FormulaRow => ({
  id,
  system: 'tube-id',
  says,
  true: holds,
  holds: 'The cuff takes room: for one child a cuffed tube is half a size smaller than an uncuffed one',
  standard: 'airway size references',
  sources: ['ett'],
});

export const TUBE_RULES: readonly FormulaRow[] = [
  cuff('cuffed-is-smaller', 'for one child the cuffed tube is the smaller', true),
  cuff('cuffed-is-larger', 'for one child the cuffed tube is the larger', false),
];
