/** A size that its system does not have. */

import { existence, label } from '../../sizes/index.ts';
import { phrase, quote } from '../../texts/index.ts';
import type { ExistenceClaim } from '../model.ts';
import { MISSING } from '../texts/missing.ts';
import { judgeAbsent } from './absence.ts';
import { cannotTell, type Judgement, lensOf, sourceNames } from './model.ts';
import { sizeWords } from './words.ts';

export function judgeExistence(claim: ExistenceClaim): Judgement {
  if (claim.absent) return judgeAbsent({ ...claim, absent: claim.absent });
  if (claim.odd) return judgeOdd(claim.odd);
  const says = phrase(MISSING.says, { size: sizeWords(claim.size) });
  const missing = claim.size.sizes
    .map((size) => ({ size, ...existence(size, lensOf(claim.size)) }))
    .find((one) => one.exists === 'no');
  if (!missing) return cannotTell(says, '');
  return {
    verdict: 'contradicted',
    says,
    holds: phrase(MISSING.holds, { size: label(missing.size), because: missing.because }),
    source: sourceNames(missing.sources) || 'common practice, no source',
    sources: missing.sources,
    steps: [{ label: 'value', text: missing.because, sources: missing.sources }],
  };
}

const judgeOdd = ({ written, because, sources = [] }: NonNullable<ExistenceClaim['odd']>): Judgement => ({
  verdict: 'contradicted',
  says: phrase(MISSING.saysWritten, { written: quote(written) }),
  holds: phrase(MISSING.holdsWritten, { written: quote(written), because }),
  source: sourceNames(sources) || 'common practice, no source',
  sources,
  steps: [{ label: 'rule', text: because, sources }],
});
