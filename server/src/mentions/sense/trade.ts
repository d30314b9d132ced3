/** Does a size belong to another trade: jewellery, yarn, strings, electric wire? */
import type { System } from '../../sizes/model.ts';
import { headingsOf, type Scene, type Surroundings } from '../scene.ts';
import { speaksOfClinic, tradeIn } from '../words/other-trades.ts';
import type { Place } from './place.ts';
import { systemOf } from './systems.ts';

const trades = new WeakMap<Scene, ReturnType<typeof tradeIn>>();

function tradeOf(scene: Scene): ReturnType<typeof tradeIn> {
  if (trades.has(scene)) return trades.get(scene);
  const trade = tradeIn(scene.brief);
  trades.set(scene, trade);
  return trade;
}

/** Named in the passage or the headings over it; a needle or cannula in the sentence outweighs all but yarn and dials. */
export const ofOtherTrade = (place: Place): boolean =>
  (noteOfTrade(place.around) && !clinical(place)) ||
  [place.scene, ...headingsOf(place.around, place.scene.passage)].some((scene) => {
    const trade = tradeOf(scene);
    return trade === 'needled' || (trade === 'needleless' && !clinical(place));
  });

const clinical = (place: Place): boolean =>
  place.materials.some((hit) => hit.means !== 'stainless-steel') ||
  place.devices.some((hit) => CLINICAL.has(systemOf(hit.means)) || hit.means === 'steel-wire');

const CLINICAL: ReadonlySet<System | undefined> = new Set<System | undefined>(['needle-gauge', 'usp']);

const notes = new WeakMap<Surroundings, boolean>();

const namesOurs = ({ devices, materials }: Scene): boolean =>
  materials.length > 0 || devices.some((hit) => !WIRES.has(systemOf(hit.means)));
const WIRES: ReadonlySet<System | undefined> = new Set<System | undefined>([
  'wire-inch',
  'wire-gauge',
  undefined,
]);

/** The note speaks of another trade, hardly ever or never of the clinic: what its passages leave unsaid is theirs too. */
function noteOfTrade(around: Surroundings): boolean {
  const known = notes.get(around);
  if (known !== undefined) return known;
  const count = (test: (scene: Scene) => boolean): number => around.scenes.filter(test).length;
  const trade = count((scene) => tradeOf(scene) !== undefined);
  const clinics = trade > 0 ? count((scene) => speaksOfClinic(scene.brief)) : 0;
  const found = trade > 0 && (trade >= 2 ? clinics * 3 <= trade : clinics === 0 && !count(namesOurs));
  notes.set(around, found);
  return found;
}
