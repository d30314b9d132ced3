/** Rules of conversion. */
import type { FormulaClaim } from '../model.ts';
import { FORMULAS } from '../words/formulas.ts';
import { cannotTell, type Judgement } from './model.ts';

export function judgeFormula(claim: FormulaClaim): Judgement {
  const row = FORMULAS.find((one) => one.id === claim.formula);
  if (!row) return cannotTell('', '');
  const holds = claim.sum === undefined ? row.holds : `${row.holds}: ${claim.sum}`;
  return {
    verdict: row.true ? 'agrees' : 'contradicted',
    says: `Says ${row.says}.`,
    holds: `${holds}.`,
    source: row.standard,
    sources: row.sources,
    steps: [{ label: 'rule', text: holds, sources: row.sources }],
  };
}
