/** A tube said to be inside what its own number says of the outside: "a 37 Fr is 37 Fr on the inside of each lumen", "an 18 Fr drain is 6 mm inside". */
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import type { Reading } from './model.ts';
import { ofSheaths } from './of-sheaths.ts';
import { ruleClaim } from './rule-claim.ts';

/** Readings of a sentence that gives a tube its own number inside. */
export function ownInside(scene: Scene): Reading[] {
  const { items, sentence } = scene;
  const [own, inside, ...more] = groups(items);
  if (!own || !inside || more.length > 0 || sentence.close === '?' || !sameWidth(own, inside)) return [];
  const between = textOf(items.slice(own.to + 1, inside.from));
  if (!LINK.test(between) || !INSIDE.test(joined(items, inside.to + 1, inside.to + 6))) return [];
  const double = ofDoubleLumen(scene);
  if (TURNS.test(joined(items)) || (!double && (!TUBE.test(between) || ofSheaths(scene)))) return [];
  const formula = double ? 'double-lumen-is-inner' : 'french-is-inner';
  const claim = ruleClaim(scene, 'own-inside', 'french', formula, inside.from, inside.to);
  return [{ claim, at: inside.from, from: own.from, to: inside.to }];
}

const TUBE =
  /^(?:[a-z]+ ){0,2}?(?:foley|(?<!guide |guiding )catheter|drain|chest tube|feeding tube|nasogastric tube|stomach tube)\b/;
const LINK =
  /^(?:[a-z-]+ ){0,4}?(?:is|measures|means|will be|has to be)(?: (?:also|therefore|then|just|still|exactly|really|indeed))*(?: an?)?$/;
const INSIDE =
  /^(?:(?:on|across|at|down) (?:the|its|their) (?:inside|inner side)|(?:inside|internally|in (?:each|either|both) lumens?|inside each lumen)(?= [.,;!]|$| (?:of )?(?:each|either|both)))/;
const TURNS =
  /\b(?:not|never|no|nor|neither|cannot|\w+n't|if|unless|than|less|but|outside|outer|would|might|could|may|about|nearly|almost|guiding|sheaths?|introducers?|trocars?|channels?|scopes?)\b/;

const ofDoubleLumen = ({ items, before }: Scene): boolean =>
  [items, before.at(-1)?.items ?? []].some((said) => said.some(isDouble));
const isDouble = ({ word }: Item, i: number, all: readonly Item[]): boolean =>
  word === 'double-lumen' || (word === 'double' && all[i + 1]?.word === 'lumen');

/** The same French, or just the millimetres that it makes. */
function sameWidth({ sizes: [a], mentions: [own] }: Group, { sizes: [b], mentions }: Group): boolean {
  if (a?.system !== 'french' || !b || !own || mentions.length > 1 || mentions[0]!.bound) return false;
  if (b.system === 'french') return a.value === b.value;
  return b.system === 'millimetre' && Math.abs(b.value - a.value / 3) < 0.06;
}
