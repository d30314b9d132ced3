/**
 * The size next to another, with the way one goes: "next below a 16 Fr comes the 14", "right after 0, going towards the finer
 * end, comes 2-0", "the step after 20 G, if you want a smaller one, is 22 G".
 */
import { direction } from '../../sizes/index.ts';
import { single } from '../text/focus.ts';
import { joined } from '../text/joined.ts';
import { compares, decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, twoSizes } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction } from './model.ts';
import { comparison, wordless } from './than.ts';

const FROM = new Set('after below above beneath beyond past following from next'.split(' '));

export const neighbour: Construction = {
  id: 'neighbour',
  needs: () => [{ sizes: 2, words: FROM }],
  read(scene) {
    const { items } = scene;
    if (scene.sentence.close === '?' || items.some(({ word }) => NEGATIONS.has(word) || OPEN.test(word)))
      return [];
    const own = groups(items).flatMap(single);
    const at = own.findIndex((g) => PLACE.test(joined(items, Math.max(0, g.from - 6), g.from)));
    const [a, b] = [own[at], own[at + 1]];
    if (own.length > 3 || !a || !b || !twoSizes(a, b)) return [];
    const lead = joined(items, Math.max(0, a.from - 6), a.from);
    const place = PLACE.exec(lead)?.[1];
    const link = joined(items, a.to + 1, b.from);
    if (!place || b.from - a.to > 16 || !IS.test(link)) return [];
    const word = way(scene, a, b, place);
    return word ? [{ ...wordless(comparison(scene, 'neighbour', b, a, word)), unconditional: true }] : [];
  },
};

const OPEN =
  /^(?:than|but|instead|rather|unless|except|wrong|used|cheaper|dearer|drawer|shelf|page|row|line|little|few)$/;
const PLACE =
  /(?:^|[ ,])(?:(?:the|our|your) )?(?:(?:next|right|just|step|size|one|straight|immediately|directly|coming)(?: (?:one|size|step))?(?: (?:up|down))? )?(after|below|above|beneath|beyond|past|following|up from|down from|to|from)(?: (?:an?|the|our))?$/;
const IS =
  /(?:^| )(?:is|comes|(?:we|you) (?:come|get|go) to|follows|stands|sits|lies|=|:)(?: then)?(?: (?:an?|the|our))?$/;

/** Which way: told by the one word of magnitude of the sentence, else by "below" where numbers grow with the size. */
function way({ items }: Scene, a: Group, b: Group, place: string): Measured | undefined {
  const words = measuredWords(items).filter((m) => decidable(m.axis) && !m.idiom);
  const [one, other] = words;
  const plain = /^(?:after|past|beyond|following|to|from)$/.test(place);
  if (!plain && words.length > 1) return undefined;
  if (one && !other && one.degree !== 'superlative' && one.at < b.from)
    return { ...one, degree: 'comparative' };
  // "Going from thick to thin": the way is that of the second word.
  if (
    one &&
    other &&
    words.length === 2 &&
    one.sign !== other.sign &&
    other.to < b.from &&
    joined(items, one.to + 1, other.at) === 'to'
  )
    return { ...other, degree: 'comparative' };
  if (words.length > 0 || direction(a.sizes[0]!.system) !== 'up') return undefined;
  const sign = /^(?:below|beneath|down from)$/.test(place)
    ? -1
    : /^(?:above|beyond|up from)$/.test(place)
      ? 1
      : undefined;
  return sign ? compares(a.from - 1, 'outer', sign) : undefined;
}
