/** One gauge, one bore, whatever the wall: "any two 18 G needles, whatever their walls, have the same bore". */
import { cue, holds } from '../text/cues.ts';
import { joined } from '../text/joined.ts';
import { groups, type Scene } from '../text/scene.ts';
import type { Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

/** Readings of a sentence that has all needles of a gauge equal inside, thin walls or thick. */
export function sameBore(scene: Scene): Reading[] {
  const { items, sentence } = scene;
  if (sentence.close === '?' || !holds(items, WALL)) return [];
  const text = joined(items);
  if (!WALLS.test(text) || !SAME.test(text) || TURNS.test(text)) return [];
  const sizes = groups(items).flatMap((group) => group.sizes);
  const gauge = items.some(({ word, system }) => system === 'needle-gauge' && word.length > 1);
  if (
    sizes.length > 1 ||
    sizes.some(({ system }) => system !== 'needle-gauge') ||
    (!gauge && sizes.length === 0)
  )
    return [];
  const at = items.findLastIndex(({ word }) => BORE.test(word));
  return [
    { claim: ruleClaim(scene, 'same-bore', 'needle-gauge', 'gauge-is-inner', at), at, from: 0, to: at },
  ];
}

const WALL = cue(/^wall(?:s|ed)?$/);
const WALLS =
  /\b(?:whatever|regardless of|irrespective of|no matter how (?:thick|thin)|however (?:thick|thin)|thin-walled or not|thin wall or (?:thick|not))\b(?: (?:their|the|its|kind|sort|type|of))*(?: walls?| thickness of (?:the|their) walls?)?\b/;
const SAME =
  /\b(?:any two|all|every|each|both|any)\b.*\b(?:have|has) (?:exactly |just |precisely )?(?:the|one) (?:very )?same (?:bores?|lumens?|inside|inner diameter|inside diameter|internal diameter)\b/;
const BORE = /^(?:bores?|lumens?|inside|diameter)$/;
const TURNS =
  /\b(?:not|never|no(?! matter)|nor|neither|cannot|\w+n't|if|unless|would|might|could|may|outside|outer|length|almost|nearly|wrong|myth|mistake)\b/;
