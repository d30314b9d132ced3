/** Sizes that the reader is asked to put in order: they stand in none yet. */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Group, Scene } from '../text/scene.ts';

/** "Put 21 G, 23 G and 25 G in order, smallest first.": sizes to be put in order are in none yet. */
export const requested = (items: readonly Item[], { from, to }: Group): boolean =>
  /(?:^|[:.] )(?:please )?(?:put|rank|sort|arrange|order|place|list|write|copy|enter|lay|set|hang)(?: (?:these|the|a|an|gauge|sizes?|needles?|sutures?|threads?|:))*$/.test(
    joined(items, 0, from),
  ) &&
  !items.slice(0, from).some((item) => item.magnitude !== undefined) &&
  items.slice(to).some((item) => item.magnitude !== undefined);

/** "Part F: put in order", above a list whose key comes later: each row says which way it is to be put. */
export const toBeSorted = ({ headings, passage, before }: Scene): boolean =>
  (TO_SORT.test(headings.at(-1) ?? '') && !/^\W*(?:answers?|key|solutions?)\b/i.test(passage.text)) ||
  before.slice(-2).some(({ items }) => YOUR_TURN.test(joined(items, 0, 8)));

/** "Your turn. Finest first: …": the reader is to do it. */
const YOUR_TURN =
  /^(?:\S+ ){0,4}?(?:(?:now )?(?:it's |it is )?your (?:turn|go)|over to you|(?:now )?you try|have a go|try (?:it|this|one|these)(?: one)?(?: yourself| yourselves)?)\b/;
const TO_SORT =
  /(?:^|[:,.–—] ?)(?:now )?(?:order|sort|rank|arrange) (?:the (?:following|sizes?|threads?|needles?|sutures?)|these|them|those)\b|\b(?:put|place|set|rank|sort|arrange|line up)\b(?: [a-z]+){0,4} (?:in|into) (?:the right |the correct |their )?order\b/i;
