/** Does a size belong to another trade: jewellery, yarn, strings, electric wire? */
import type { System } from '../../sizes/model.ts';
import { headingsOf, type Scene } from '../scene.ts';
import { tradeIn } from '../words/other-trades.ts';
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
  [place.scene, ...headingsOf(place.around, place.scene.passage)].some((scene) => {
    const trade = tradeOf(scene);
    return trade === 'needled' || (trade === 'needleless' && !clinical(place));
  });

const clinical = (place: Place): boolean =>
  place.materials.length > 0 ||
  place.devices.some((hit) => CLINICAL.has(systemOf(hit.means)) || hit.means === 'steel-wire');

const CLINICAL: ReadonlySet<System | undefined> = new Set<System | undefined>(['needle-gauge', 'usp']);
