/** A size said to belong to a class, such as large-bore. */

import { phrase } from '../../texts/index.ts';
import type { CategoryClaim } from '../model.ts';
import { CLASS } from '../texts/classes.ts';
import { CATEGORIES } from '../words/categories.ts';
import { USUAL } from '../words/usual.ts';
import { cannotTell, type Judgement, sourceNames } from './model.ts';
import { sizeWords } from './words.ts';

export function judgeCategory(claim: CategoryClaim): Judgement {
  const row = CATEGORIES.find((one) => one.id === claim.category);
  if (!row) return judgeUsual(claim);
  const says = phrase(claim.member ? CLASS.says : CLASS.saysNot, {
    size: sizeWords(claim.size),
    label: row.label,
  });
  const within = ([min, max]: readonly [number, number]) =>
    claim.size.sizes.every((size) => size.value >= min && size.value <= max);
  const inside = within(row.member);
  const [min, max] = row.outside;
  const strays = claim.size.sizes.some(({ value }) => value >= min && value <= max);
  const outside = claim.each && claim.member ? strays : within(row.outside);
  const verdict = !inside && !outside ? 'cannot-tell' : inside === claim.member ? 'agrees' : 'contradicted';
  return {
    verdict,
    says,
    holds: phrase(CLASS.holds, { rule: row.holds }),
    source: sourceNames(row.sources) || 'common practice, no source',
    sources: row.sources,
    steps: [{ label: 'value', text: row.holds, sources: row.sources }],
  };
}

/** A habit of teaching: contradicted only far outside, otherwise left open. */
function judgeUsual(claim: CategoryClaim): Judgement {
  const row = USUAL.find((one) => one.id === claim.category);
  if (!row) return cannotTell('', '');
  const [min, max] = row.outside;
  const outside = claim.size.sizes.every((size) => size.value >= min && size.value <= max);
  return {
    verdict: outside ? 'contradicted' : 'cannot-tell',
    says: phrase(CLASS.saysUsual, { size: sizeWords(claim.size) }),
    holds: phrase(CLASS.holdsUsual, { rule: row.holds }),
    source: sourceNames(row.sources),
    sources: row.sources,
    steps: [{ label: 'value', text: row.holds, sources: row.sources }],
  };
}
