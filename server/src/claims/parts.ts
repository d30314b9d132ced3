/** Parts of a device and what it is kept in: "the balloon of the 12 Fr", "the 22 G drawer". Their size is not the device's. */
import { finds } from '../notes/patterns.ts';
import type { Claim } from './model.ts';
import type { Item } from './text/items.ts';
import { placeOf, type Scene } from './text/scene.ts';

const PART =
  /^(?:wings?|hubs?|handles?|labels?|packets?|packs?|packaging|box(?:es)?|trays?|drawers?|shel(?:f|ves)|racks?|bins?|crates?|cupboards?|balloons?|eyes?|eyelets?|cuffs?|walls?|pads?|bevels?|stylets?|caps?|connectors?|clamps?|funnels?|sleeves?|pouch(?:es)?|tags?|stickers?|stocks?|piles?|queues?|orders?|bills?|rolls?|reels?|spools?)$/;
const OF = /^(?:of|on|for|in|from|with)$/;
const ARTICLE = /^(?:the|an?|our|my|this|that|each|every)$/;
const POSSESSIVE = /^(?:'s|’s|'|’|s)$/;

/** Is a part or a container compared, and not the sizes themselves? */
export function comparesParts({ items }: Scene, claim: Claim): boolean {
  if (claim.kind !== 'comparison') return false;
  return [claim.left, claim.right].some((side) => {
    const at = placeOf(items, side);
    return at >= 0 && (partBefore(items, at) || partAfter(items, at));
  });
}

/** "the wings of the 22 G". */
function partBefore(items: readonly Item[], at: number): boolean {
  const of = ARTICLE.test(items[at - 1]?.word ?? '') ? at - 2 : at - 1;
  return OF.test(items[of]?.word ?? '') && finds(PART, items[of - 1]?.word ?? '');
}

/** "the 22 G drawer", "the 7.0's cuff", "the 18 G cannula's hub". */
function partAfter(items: readonly Item[], at: number): boolean {
  const next = items.slice(at + 1, at + 5).filter((item) => !POSSESSIVE.test(item.word));
  const noun = next[0]?.deviceNoun === true && !finds(PART, next[0].word) ? next[1] : next[0];
  return finds(PART, noun?.word ?? '');
}
