/** A size said to belong to a class, such as large-bore. */

import type { Size } from '../../sizes/model.ts';
import { phrase } from '../../texts/index.ts';
import type { CategoryClaim } from '../model.ts';
import { CLASS } from '../texts/classes.ts';
import { CATEGORIES, type CategoryRow } from '../words/categories.ts';
import { type Band, USUAL } from '../words/usual.ts';
import { cannotTell, type Judgement, sourceNames } from './model.ts';
import { sizeWords } from './words.ts';

export function judgeCategory(claim: CategoryClaim): Judgement {
  const row = CATEGORIES.find((one) => one.id === claim.category);
  if (!row) return judgeUsual(claim);
  const says = phrase(claim.member ? CLASS.says : CLASS.saysNot, {
    size: sizeWords(claim.size),
    label: row.label,
  });
  const { sizes } = claim.size;
  const inside = sizes.every(within(row.member));
  const outside =
    claim.each && claim.member
      ? sizes.some(within(row.outside))
      : sizes.every(within(row.outside)) || overruns(claim, row);
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

const within =
  ([min, max]: Band) =>
  ({ value }: Size): boolean =>
    value >= min && value <= max;

/** How far into the sizes of another class a range must reach before it is wrong as a whole. */
const OVERRUN = 2;

/** "Large-bore means 14 to 22 G": a range with one end far among the others. */
function overruns({ size, member }: CategoryClaim, row: CategoryRow): boolean {
  if (!member || size.mentions[0]?.kind !== 'range') return false;
  const [min, max] = row.outside;
  return size.sizes.some(({ value }) =>
    min > row.member[1] ? value >= min + OVERRUN && value <= max : value <= max - OVERRUN && value >= min,
  );
}

/** A habit of teaching: contradicted only far outside, otherwise left open. */
function judgeUsual(claim: CategoryClaim): Judgement {
  const row = USUAL.find((one) => one.id === claim.category);
  if (!row) return cannotTell('', '');
  const ends = claim.each && (row.ends ?? []).some((band) => claim.size.sizes.some(within(band)));
  const outside = ends || row.outside.some((band) => claim.size.sizes.every(within(band)));
  return {
    verdict: outside ? 'contradicted' : 'cannot-tell',
    says: phrase(CLASS.saysUsual, { size: sizeWords(claim.size) }),
    holds: phrase(CLASS.holdsUsual, { rule: row.holds }),
    source: sourceNames(row.sources) || 'common practice, no source',
    sources: row.sources,
    steps: [{ label: 'value', text: row.holds, sources: row.sources }],
  };
}
