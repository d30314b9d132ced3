/** A size said to belong to a class, such as large-bore. */

import type { CategoryClaim } from '../model.ts';
import { CATEGORIES } from '../words/categories.ts';
import { cannotTell, type Judgement, sourceNames } from './model.ts';
import { sizeWords } from './words.ts';

export function judgeCategory(claim: CategoryClaim): Judgement {
  const row = CATEGORIES.find((one) => one.id === claim.category);
  if (!row) return cannotTell('', '');
  const says = `Says ${sizeWords(claim.size)} is ${claim.member ? '' : 'not '}${row.label}.`;
  const within = ([min, max]: readonly [number, number]) =>
    claim.size.sizes.every((size) => size.value >= min && size.value <= max);
  const inside = within(row.member);
  const outside = within(row.outside);
  const verdict = !inside && !outside ? 'cannot-tell' : inside === claim.member ? 'agrees' : 'contradicted';
  return {
    verdict,
    says,
    holds: `${row.holds}.`,
    source: sourceNames(row.sources) || 'common practice, no source',
    sources: row.sources,
    steps: [{ label: 'value', text: row.holds, sources: row.sources }],
  };
}
