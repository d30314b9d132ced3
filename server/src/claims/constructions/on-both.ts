/** One colour told of two devices at once: "pink on a needle and pink on a cannula both mean 20 G". */
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import type { Colour } from './hub-code.ts';

/** "Pink on a needle and pink on a cannula both mean 20 G", "the pink needle and the pink IV catheter are both 18 G". */
export const onBoth = (items: readonly Item[], [a, b]: readonly Colour[]): boolean =>
  a!.family === b!.family &&
  ((TWO_THINGS.test(textOf(items.slice(a!.to + 1, b!.at))) &&
    ARE_BOTH.test(textOf(items.slice(b!.to + 1, b!.to + 7)))) ||
    onEach(items, a!, b!));
const TWO_THINGS =
  /^(?:hub |hubbed )?(?:iv |venous )?(?:needles?|cannulas?|catheters?|ivs?)(?: hub)? and(?: an?| the| our)?$/;
const ARE_BOTH =
  /^(?:hub |hubbed )?(?:iv |venous |hypodermic )?(?:needles?|cannulas?|catheters?|ivs?)(?: hub)? (?:are both|both are|both mean|each mean|are each|both measure|both come in|both come as)\b/;

const onEach = (items: readonly Item[], a: Colour, b: Colour): boolean =>
  /^(?:on|for) (?:an? |the )?\S+ and (?:an? |the )?$/.test(`${textOf(items.slice(a.to + 1, b.at))} `) &&
  /^(?:on|for) (?:an? |the )?\S+ (?:both |each )?(?:means?|are|is|stands? for|mark)\b/.test(
    textOf(items.slice(b.to + 1)),
  );
