/** A size said to keep to a limit. */
import type { Context } from '../../mentions/model.ts';
import { compareThickness, label } from '../../sizes/index.ts';
import type { Size } from '../../sizes/model.ts';
import type { LimitClaim, Verdict } from '../model.ts';
import { cannotTell, type Judgement, lensOf, sourceNames } from './model.ts';
import { ruleWords } from './words.ts';

export function judgeLimit(claim: LimitClaim, context?: Context): Judgement {
  const bound = claim.bound.sizes[0];
  if (!bound || claim.size.sizes.length === 0) return cannotTell('', '');
  const tests = claim.size.sizes.map((size) => ({ size, verdict: within(claim, size, bound, context) }));
  const bad = tests.find((test) => test.verdict === 'contradicted');
  const size = bad?.size ?? tests[0]!.size;
  const says = `Says ${label(size)} keeps to the limit “${limitWords(claim, bound)}”.`;
  const open = tests.some((test) => test.verdict === 'cannot-tell');
  const { result, sources } = compared(claim, size, bound, context);
  if (!bad && open) return cannotTell(says, '');
  const relation = result === 'same' ? 'is' : `is ${result} than`;
  return {
    verdict: bad ? 'contradicted' : 'agrees',
    says,
    holds: `${label(size)} ${relation} ${label(bound)}: ${ruleWords(size, bound)}.`,
    source: sourceNames(sources) || ruleWords(size, bound),
    sources,
    steps: [{ label: 'rule', text: ruleWords(size, bound), sources }],
  };
}

function limitWords({ side, strict }: LimitClaim, bound: Size): string {
  const word = side === 'at-least' ? 'thicker' : 'thinner';
  return strict ? `${word} than ${label(bound)}` : `${label(bound)} or ${word}`;
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
