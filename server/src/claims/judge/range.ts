/** A size said to lie inside or outside a range. */
import { label } from '../../sizes/index.ts';
import type { RangeClaim } from '../model.ts';
import { cannotTell, type Judgement } from './model.ts';

export function judgeRange(claim: RangeClaim): Judgement {
  const [low, high] = [claim.low.sizes[0], claim.high.sizes[0]];
  const where = claim.inside ? 'inside' : 'outside';
  const size = claim.size.sizes[0];
  const says = size && low && high ? `Says ${label(size)} is ${where} ${label(low)} to ${label(high)}.` : '';
  if (!low || !high || claim.size.sizes.length === 0) return cannotTell(says, '');
  const [min, max] = [Math.min(low.value, high.value), Math.max(low.value, high.value)];
  const inside = claim.size.sizes.every((one) => one.value >= min && one.value <= max);
  const outside = claim.size.sizes.every((one) => one.value < min || one.value > max);
  const verdict =
    inside === outside ? 'cannot-tell' : (claim.inside ? inside : outside) ? 'agrees' : 'contradicted';
  const holds = `${label(size!)} lies ${inside ? 'inside' : 'outside'} ${label(low)} to ${label(high)}.`;
  return {
    verdict,
    says,
    holds,
    source: 'order of the numbers',
    sources: [],
    steps: [{ label: 'rule', text: holds }],
  };
}
