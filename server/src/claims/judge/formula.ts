/** Rules of conversion. */
import { phrase } from '../../texts/index.ts';
import type { FormulaClaim } from '../model.ts';
import { RULE } from '../texts/rules.ts';
import { FORMULAS } from '../words/formulas.ts';
import { cannotTell, type Judgement } from './model.ts';

export function judgeFormula(claim: FormulaClaim): Judgement {
  const row = FORMULAS.find((one) => one.id === claim.formula);
  if (!row) return cannotTell('', '');
  const holds =
    claim.sum === undefined ? row.holds : phrase(RULE.worked, { rule: row.holds, sum: claim.sum });
  return {
    verdict: row.true ? 'agrees' : 'contradicted',
    says: phrase(RULE.says, { rule: row.says }),
    holds: phrase(RULE.holds, { rule: holds }),
    source: row.standard,
    sources: row.sources,
    steps: [{ label: 'rule', text: holds, sources: row.sources }],
  };
}
