/** A size said to keep to a limit. */

import type { Context } from '../../mentions/model.ts';
import { compareThickness, label } from '../../sizes/index.ts';
import type { Size } from '../../sizes/model.ts';
import { type Phrase, phrase } from '../../texts/index.ts';
import type { LimitClaim, Verdict } from '../model.ts';
import { OUTCOME } from '../texts/comparison.ts';
import { LIMIT } from '../texts/limits.ts';
import { cannotTell, type Judgement, lensOf, sourceNames } from './model.ts';
import { ruleWords } from './words.ts';

export function judgeLimit(claim: LimitClaim, context?: Context): Judgement {
  const bound = claim.bound.sizes[0];
  if (!bound || claim.size.sizes.length === 0) return cannotTell('', '');
  const tests = claim.size.sizes.map((size) => ({ size, verdict: within(claim, size, bound, context) }));
  const bad = tests.find((test) => test.verdict === 'contradicted');
  const size = bad?.size ?? tests[0]!.size;
  const says = phrase(LIMIT.says, { size: label(size), limit: limitWords(claim, bound) });
  const open = tests.some((test) => test.verdict === 'cannot-tell');
  const { result, sources } = compared(claim, size, bound, context);
  if (!bad && open) return cannotTell(says, '');
  const relation = phrase(result === 'same' ? LIMIT.is : OUTCOME[result]);
  return {
    verdict: bad ? 'contradicted' : 'agrees',
    says,
    holds: phrase(LIMIT.holds, {
      size: label(size),
      relation,
      bound: label(bound),
      rule: ruleWords(size, bound),
    }),
    source: sourceNames(sources) || ruleWords(size, bound),
    sources,
    steps: [{ label: 'rule', text: ruleWords(size, bound), sources }],
  };
}

function limitWords({ side, strict }: LimitClaim, bound: Size): Phrase {
  const [beyond, from] =
    side === 'at-least' ? [LIMIT.thickerThan, LIMIT.orThicker] : [LIMIT.thinnerThan, LIMIT.orThinner];
  return phrase(strict ? beyond : from, { bound: label(bound) });
}

const compared = (claim: LimitClaim, size: Size, bound: Size, context?: Context) =>
  compareThickness(size, bound, lensOf(claim.size, context), lensOf(claim.bound, context));

function within(claim: LimitClaim, size: Size, bound: Size, context?: Context): Verdict {
  const { result } = compared(claim, size, bound, context);
  if (result === 'cannot-tell') return 'cannot-tell';
  // The end itself is left alone: "above 20 Fr" takes 20 Fr in for many.
  if (result === 'same') return claim.strict ? 'cannot-tell' : 'agrees';
  return (result === 'thicker') === (claim.side === 'at-least') ? 'agrees' : 'contradicted';
}
