/** Sizes that a text names as no size: said not to exist, asked for by mistake, joked about. */
import type { Reading } from '../constructions/model.ts';
import type { Claim } from '../model.ts';
import { joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';

/** A size that is written is taken for one that exists; what is said not to exist is a claim like any other. */
export const named = (claim: Claim): boolean => claim.kind === 'existence' && claim.absent === undefined;

/** "there is no 2.5-0", "2.5-0 does not exist", "anyone asking for a 4.2-0 is joking". */
export function unreal({ items }: Scene, { at }: Reading): boolean {
  const before = items.slice(Math.max(0, at - 7), at);
  const comma = before.findLastIndex((item) => item.word === ',');
  const behind = items.slice(at, at + 6);
  const aside = behind.findIndex((item) => /^(?:,|which|who)$/.test(item.word));
  // "the 3.5-0, which is not often stocked": something else is denied.
  const near = [...before.slice(comma + 1), ...(aside < 0 ? behind : behind.slice(0, aside))];
  const denied = items.some((item) => NEGATIONS.has(item.word));
  return (
    near.some((item) => NEGATIONS.has(item.word) && !/^(?:hardly|without)$/.test(item.word)) ||
    items.some((item) => UNREAL.has(item.word) && (denied || !/^exists?$/.test(item.word))) ||
    PASSED_OVER.test(joined(items, 0, at)) ||
    (ASKED_ONCE.test(joined(items, 0, at)) && !KEPT.test(joined(items, at + 1, at + 14)))
  );
}
/** "The box from the eye clinic says 4.5-0": what is printed on it is there. */
export const packed = (scene: Scene, { at }: Reading): boolean =>
  scene.items
    .slice(0, at)
    .some((item) => /^(?:box|boxes|packet|packets|pack|packs|label|labels|card|lid)$/.test(item.word)) &&
  !scene.items
    .slice(0, at)
    .some((item) => /^(?:slides?|posters?|figure|misprint|draft|photo)$/.test(item.word));

/** "The scale leaves out 4.5-0." */
const PASSED_OVER = /\b(?:leaves? out|skips?|omits?|misses out)(?: (?:an?|the))?$/;

/** "A trainee once asked for 4.5-0": a story of somebody's mistake. */
const ASKED_ONCE =
  /\b(?:once (?:asked|called|begged|sent)|(?:student|trainee|somebody|someone|anyone|intern|newcomer|he|she|they) (?:\w+ )?(?:asked|asks|called|wrote|ordered))\b/;

/** "Someone asked for 4.5-0; it is kept in the small box": there it is. */
const KEPT =
  /^(?:nylon |silk |thread |suture )?[;,:.] (?:and )?(?:it|that|this|they|those|we) (?:is|are|'s|live|lives|sit|sits|stay|stays|keep|stock|have|hold)(?: it| that| them)?(?: (?:kept|stocked|stored|filed|found|in|on|at|beside|next|under))/;

const UNREAL = new Set([
  'joking',
  'joke',
  'exist',
  'exists',
  'nothing',
  'imaginary',
  'invented',
  'prank',
  'fictional',
  'made-up',
  'unheard',
]);
