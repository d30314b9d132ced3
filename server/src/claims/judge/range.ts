/** A size said to lie inside or outside a range. */

import { label } from '../../sizes/index.ts';
import { phrase, quote } from '../../texts/index.ts';
import type { RangeClaim } from '../model.ts';
import { RANGE } from '../texts/limits.ts';
import { cannotTell, type Judgement } from './model.ts';

export function judgeRange(claim: RangeClaim): Judgement {
  const [low, high] = [claim.low.sizes[0], claim.high.sizes[0]];
  const size = claim.size.sizes[0];
  const ends = low && high && size ? { size: label(size), low: label(low), high: label(high) } : undefined;
  const says = ends ? phrase(claim.inside ? RANGE.saysInside : RANGE.saysOutside, ends) : '';
  if (!low || !high || !ends) return cannotTell(says, '');
  const [min, max] = [Math.min(low.value, high.value), Math.max(low.value, high.value)];
  const within = (value: number) =>
    claim.strict ? value > min && value < max : value >= min && value <= max;
  const inside = claim.size.sizes.every((one) => within(one.value));
  const outside = claim.size.sizes.every((one) => !within(one.value));
  const verdict =
    inside === outside ? 'cannot-tell' : (claim.inside ? inside : outside) ? 'agrees' : 'contradicted';
  const end = claim.strict ? [low, high].find(({ value }) => value === size?.value) : undefined;
  const written = quote(claim.size.mentions[0]?.text ?? '');
  const holds = end
    ? phrase(RANGE.end, { size: written, end: ends.low === label(end) ? ends.low : ends.high })
    : phrase(inside ? RANGE.inside : RANGE.outside, ends);
  return {
    verdict,
    says: end ? phrase(RANGE.saysBetween, { ...ends, size: written }) : says,
    holds,
    source: 'order of the numbers',
    sources: [],
    steps: [{ label: 'rule', text: holds }],
  };
}
