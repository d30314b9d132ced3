/** What is said at once to follow from a sum: "18 over 3 is 6, so 6 mm across", "5 times 3 is 15, hence 18 Fr". */
import { type Figure, figureAt } from '../text/figures.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';

/**
 * The result of a sum: a bare one takes the unit it is given next, and another number that is concluded at once is what the sum
 * is said to come to, unless it is the next size there is.
 */
export function concluded(items: readonly Item[], result: Figure): Figure {
  if (result.unit) return result;
  for (let i = result.to + 1; i <= result.to + 6 && i < items.length; i++) {
    const again = figureAt(items, i);
    if (!again) continue;
    if (again.value === result.value) return again.unit ? { ...result, unit: again.unit } : result;
    const atOnce = CONCLUDES.test(`${joined(items, result.to + 1, i)} `);
    return again.unit && atOnce && closes(items[again.to + 1]) && !rounds(result, again) ? again : result;
  }
  return result;
}

/** Nothing but a plain word for the outside follows: not "16 mm for two of them", "4 mm inside". */
const closes = (next: Item | undefined): boolean =>
  next === undefined ||
  next.kind === 'punctuation' ||
  next.deviceNoun !== undefined ||
  /^(?:across|wide|thick|outside|outer)$/.test(next.word);
const CONCLUDES =
  /^(?:[,;:→(—–] )?(?:(?:so|hence|thus|therefore|that is|that's|which is|which makes it|making it|i\.?e\.?|or) )?(?:(?:round(?:ed|ing)?|call(?:ed)?) (?:(?:it|that) )?(?:(?:up|down) )?(?:to )?|about |roughly |an? |= |→ )?$/;
/** The nearest size that is made, or the result with fewer digits. */
const rounds = (result: Figure, { value, decimals, unit }: Figure): boolean =>
  Math.abs(value - result.value) <= (unit === 'french' ? 1 : 10 ** -decimals) + 1e-9;
