/**
 * One of several, called by a name and not by its size: "the distal lumen is 16 G and the other two are 18 G, so the distal is the
 * widest of the three". The name stands before its size, and again where something is said of it.
 */
import { joined, textOf } from '../text/joined.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, twoSizes } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

export const byLabel: Construction = {
  id: 'by-label',
  needs: () => [
    { sizes: 2, holds: ['superlative'], words: MANY },
    { sizes: 2, holds: ['compared'], words: MANY },
  ],
  read(scene) {
    const { items } = scene;
    const [first, last] = groups(items).slice(-2);
    if (!first || !last || !twoSizes(first, last)) return [];
    const words = measuredWords(items).filter((m) => m.at > last.to && m.degree !== 'plain');
    const [word] = words;
    // One lumen may run slower than another because it is longer.
    if (
      !word ||
      words.length > 1 ||
      word.axis === 'flow' ||
      !decidable(word.axis) ||
      word.idiom ||
      word.excess
    )
      return [];
    const before = joined(items, Math.max(0, first.from - 7), first.from);
    const between = textOf(items.slice(first.to + 1, last.from));
    const name = NAMED.exec(before)?.[1];
    if (name && OTHERS.test(between)) return told(scene, name, [first, last], word);
    const later = FEW.test(before) ? NAMED_LAST.exec(between)?.[1] : undefined;
    return later ? told(scene, later, [last, first], word) : [];
  },
};

/** Words for those that are not called by name. */
const MANY = ['other', 'others', 'rest', 'remaining', 'two', 'three'];
const NOUN = '(?:lumens?|ports?|channels?|limbs?|ones?|needles?|cannulas?|tubes?|drains?|wires?|threads?)';

const OTHERS =
  /^(?:[a-z]+ )?(?:, )?(?:and|but|while|whereas|;|,) (?:the )?(?:(?:other|remaining) (?:two|three|one|ones|lumens?|ports?|channels?|limbs?)|(?:two |three )?others|other|rest)(?: (?:lumens?|ports?|channels?|limbs?|ones))? (?:is|are|measures?|has|have|come at)(?: (?:an?|each|both|all|only|just))*$/;
const NAMED = new RegExp(
  `\\b(?:the|its|their|our) ([a-z]+)(?: ${NOUN})? (?:is|measures|has|comes at)(?: (?:an?|only|just))*$`,
);
/** "Two lumens are 18 G and the distal is 16 G": the many first. */
const FEW = new RegExp(
  `(?:^|[,;:] )(?:the |its |our )?(?:other )?(?:two|three)(?: of (?:the|its|them)(?: ${NOUN})?)?(?: ${NOUN})? (?:are|have|measure)(?: (?:an?|both|each|all|only|just))*$`,
);
const NAMED_LAST = new RegExp(
  `^(?:[a-z]+ )?(?:, )?(?:and|but|while|whereas|;|,) (?:the|its|our) ([a-z]+)(?: ${NOUN})? (?:is|measures|has|comes at)(?: (?:an?|only|just))*$`,
);

/** "the distal one therefore being the widest of the three", "so the distal is the widest"; "it" is the one named last. */
function told(scene: Scene, name: string, [own, rest]: readonly [Group, Group], word: Measured): Reading[] {
  const last = Math.max(own.to, rest.to);
  const said = joined(scene.items, last + 1, word.at);
  const after = joined(scene.items, word.to + 1, word.to + 6);
  const link = new RegExp(
    `(?:^|[ ,;—])(?:so|and|hence|thus|therefore|which makes|making)?[ ,]*(?:the|its|our) ${name}(?: ${NOUN})?(?: (?:therefore|thus|hence|then|,))*(?: (?:is|being|was)(?: (?:therefore|thus|hence|then|also|clearly|of course|by far))*)? the$`,
  );
  const taken = own.to === last && IT.test(said);
  if (!(link.test(said) || taken) || TURNS.test(said) || !ENDS.test(after)) return [];
  return [comparison(scene, 'by-label', own, rest, word)];
}
const IT =
  /^(?:[a-z]+ )?, (?:which makes it|making it|so it is|so that it is|and it is|it being|and is|being)(?: (?:therefore|thus|hence|then|also|clearly|of course|by far))* the$/;
const TURNS =
  /\b(?:not|never|no|nor|neither|cannot|\w+n't|if|unless|would|might|could|may|second|next|than)\b/;
const ENDS =
  /^(?:$|[.,;!)]|(?:one|lumen|port|channel|limb)(?: [.,;!)]|$| of)|of (?:the|all|them|these|those)\b|(?:by far|there|here)\b)/;
