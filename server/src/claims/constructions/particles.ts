/** "Set up the trolley", "we write down the size": "up" and "down" that belong to a verb lead nowhere. */
import type { Item } from '../text/items.ts';
import { changed } from '../text/place.ts';
import type { Scene } from '../text/scene.ts';
import { DETERMINERS, PERSONS } from '../words/asides.ts';

const words = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/));

const VERBS: Readonly<Record<string, ReadonlySet<string>>> = {
  up: words(
    'set sets setting draw draws drawing drew drawn pick picking picked line lines lining lined look looking looked write writes writing wrote written note wash washing tidy fill hang clean wrap pack make open',
  ),
  down: words(
    'sit sits sitting sat write writes writing wrote written note jot put puts putting lay lie track',
  ),
};

/** Who does it, or what an order begins with. */
const DOES = words('to please and then let will must should can always');

/** The scene in which such verbs are verbs and nothing else. Nothing moves to another place. */
export function withoutParticles(scene: Scene): Scene {
  const { items } = scene;
  const at = items.flatMap((_, i) => (ofVerb(items, i) ? [i] : []));
  if (at.length === 0) return scene;
  const inert = (item: Item, word: string): Item => ({ ...item, word, deviceNoun: undefined });
  return changed(scene, {
    items: items.map((item, i) =>
      at.includes(i) ? inert(item, 'out') : at.includes(i + 1) ? inert(item, 'lay') : item,
    ),
  });
}

/** Someone does it, or something is its object: "the flow picks up" is a rise. */
function ofVerb(items: readonly Item[], i: number): boolean {
  const verb = items[i - 1]?.word;
  if (!verb || !VERBS[items[i]!.word]?.has(verb)) return false;
  const who = items[i - 2];
  return (
    who === undefined ||
    who.kind === 'punctuation' ||
    PERSONS.has(who.word) ||
    DOES.has(who.word) ||
    DETERMINERS.has(items[i + 1]?.word ?? '')
  );
}
