/** What keeps one thing from being said to go through another: the words that take it back, and what runs and is no thing. */
import type { Item } from '../text/items.ts';

/** Takes back, wishes, supposes, compares, exchanges; or something else runs. */
export function stops(items: readonly Item[], i: number): boolean {
  const { word, magnitude } = items[i]!;
  return (
    (STOPS.test(word) && !eased(items, i) && !measured(items, i)) ||
    magnitude?.degree === 'comparative' ||
    (magnitude?.excess ?? false)
  );
}
const STOPS =
  /^(?:not|never|no|cannot|\w+n't|neither|nor|without|unless|hardly|barely|rarely|seldom|scarcely|unable|what|outside|fails?|failed|refuses?|refused|jams?|tight|than|if|unlike|instead|rather|or|until|wish|except|change|changed|changes|swap|swapped|exchange|exchanged|replaced?|upsized?|convert|flows?|flow|beside|alongside|next|dilate[sd]?|cut|guiding)$/;
/** "without a struggle", "no trouble": how well it goes. */
const eased = (items: readonly Item[], i: number): boolean =>
  /^(?:without|no)$/.test(items[i]!.word) && items.slice(i + 1, i + 4).some(({ word }) => EASE.test(word));
/** "outside 6.0 mm", "6.0 mm outside": what was measured. */
const measured = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === 'outside' &&
  [items[i - 1], items[i + 1]].some((near) => near?.mention?.sizes[0]?.system === 'millimetre');
const EASE =
  /^(?:struggles?|fuss|bother|doubt|trouble|difficulty|difficulties|problems?|effort|force|ado|complaints?|resistance|pushing|pressing|changing|forcing)$/;

/** "Blood runs through …": what goes through is no thing. */
export const fluid = (items: readonly Item[], from: number, to: number): boolean =>
  items.slice(from, to + 1).some(({ word }) => FLUIDS.test(word));
const FLUIDS =
  /^(?:fluids?|blood|saline|flow|litres?|liters?|water|contrast|drugs?|drip|air|gas|oxygen|urine|pus|infusions?|transfusions?|injections?|inject|injected)$/;

/** "Take out the 18 Fr and put in a 16 Fr": what follows is put there, and nothing goes through it. */
export const putsIn = (items: readonly Item[], at: number): boolean =>
  /^(?:in|down)$/.test(items[at]!.word) &&
  PUTS.test(items[at - 1]?.word ?? '') &&
  /^(?:an?|the|our|your|another)$/.test(items[at + 1]?.word ?? '') &&
  (at < 2 || (items[at]!.word === 'in' ? BY_WHOM : NEXT).test(items[at - 2]!.word));
const PUTS =
  /^(?:put|place[ds]?|slip|slipped|slide|slid|drop|dropped|thread|threaded|insert|inserted|pass|passed|push|pushed|feed|fed|run|ran|pop|popped|putting|placing|slipping|sliding|threading|passing)$/;
const BY_WHOM =
  /^(?:and|or|then|to|by|[,;:.—–]|we|you|i|they|she|he|please|can|will|should|must|could|may|might|just|now|instead|simply|usually|always|never|not)$/;
const NEXT = /^(?:and|then)$/;
