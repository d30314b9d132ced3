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
    { sizes: 2, holds: ['superlative'], words: ['other', 'others', 'rest', 'remaining'] },
    { sizes: 2, holds: ['compared'], words: ['other', 'others', 'rest', 'remaining'] },
  ],
  read(scene) {
    const { items } = scene;
    const [own, rest] = groups(items).filter((_, i, all) => i >= all.length - 2);
    if (!own || !rest || !twoSizes(own, rest) || !OTHERS.test(textOf(items.slice(own.to + 1, rest.from))))
      return [];
    const name = NAMED.exec(joined(items, Math.max(0, own.from - 6), own.from))?.[1];
    const words = measuredWords(items).filter((m) => m.at > rest.to && m.degree !== 'plain');
    const [word] = words;
    return name && word && words.length === 1 && decidable(word.axis) && !word.idiom && !word.excess
      ? told(scene, name, own, rest, word)
      : [];
  },
};

const OTHERS =
  /^(?:[a-z]+ )?(?:, )?(?:and|but|while|whereas|;|,) (?:the )?(?:(?:other|remaining) (?:two|three|one|ones|lumens?|ports?|channels?|limbs?)|(?:two |three )?others|other|rest)(?: (?:lumens?|ports?|channels?|limbs?|ones))? (?:is|are|measures?|has|have|come at)(?: (?:an?|each|both|all|only|just))*$/;
const NAMED =
  /\b(?:the|its|their|our) ([a-z]+)(?: (?:lumen|port|channel|limb|one|needle|cannula|tube|drain|wire|thread))? (?:is|measures|has|comes at)(?: (?:an?|only|just))*$/;

/** "the distal one therefore being the widest of the three", "so the distal is the widest". */
function told(scene: Scene, name: string, own: Group, rest: Group, word: Measured): Reading[] {
  const said = joined(scene.items, rest.to + 1, word.at);
  const after = joined(scene.items, word.to + 1, word.to + 6);
  const link = new RegExp(
    `(?:^|[ ,;—])(?:so|and|hence|thus|therefore|which makes|making)?[ ,]*(?:the|its|our) ${name}(?: (?:lumen|port|channel|limb|one|needle|cannula|tube|drain|wire|thread))?(?: (?:therefore|thus|hence|then|,))*(?: (?:is|being|was)(?: (?:therefore|thus|hence|then|also|clearly|of course|by far))*)? the$`,
  );
  if (!link.test(said) || TURNS.test(said) || !ENDS.test(after)) return [];
  return [comparison(scene, 'by-label', own, rest, word)];
}
const TURNS =
  /\b(?:not|never|no|nor|neither|cannot|\w+n't|if|unless|would|might|could|may|second|next|than)\b/;
const ENDS =
  /^(?:$|[.,;!)]|(?:one|lumen|port|channel|limb)(?: [.,;!)]|$| of)|of (?:the|all|them|these|those)\b|(?:by far|there|here)\b)/;
