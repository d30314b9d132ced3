/** Which scale a bare "number" belongs to: the one named near it, that of the things spoken of, or that of the place. */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { groups, type Scene } from '../text/scene.ts';
import type { NumberSide } from './sides.ts';

/** The system a bare "number" belongs to: named near it, or the only one spoken of here. */
export function systemNear(
  scene: Scene,
  items: readonly Item[],
  at: number,
): NumberSide['system'] | undefined {
  const near = items.slice(Math.max(0, at - 4), at + 4).find((item) => item.system && item.system !== 'usp');
  const like = likened(items);
  if (like) return like;
  if (near?.system) return near.system;
  const text = joined(items);
  if (WIRES.test(text)) return 'wire-inch';
  if (TUBES.test(text)) return 'tube-id';
  const named = new Set(items.flatMap((item) => (item.system ? [item.system] : [])));
  if (named.size === 1) return [...named][0];
  const spoken = new Set(groups(items).flatMap((g) => g.sizes.map((size) => size.system)));
  const systems = [...spoken].filter((system) => system === 'needle-gauge' || system === 'french');
  if (systems.length === 1 && spoken.size === 1) return systems[0];
  const [only] = [...spoken];
  if (spoken.size === 1 && (only === 'wire-inch' || only === 'hegar' || only === 'tube-id')) return only;
  if (named.size > 1 || spoken.size > 0) return undefined;
  const thing = scene.headings.some((heading) => STITCHING.test(heading)) ? undefined : scaleOfThing(items);
  if (thing && turnedNext(scene, thing)) return undefined;
  if (thing) return thing === scene.system || scene.system === undefined ? thing : undefined;
  if (turnedNext(scene, scene.system)) return undefined;
  // "If urinary: other card, number up = bigger.": no gauge, whatever the rest of the card is about.
  const elsewhere = items.some(({ word }) => ELSEWHERE.test(word));
  if (scene.system === 'needle-gauge' && elsewhere) return undefined;
  // "Guidewires are given in inches. Go up in number and …": whatever the rest of the place is about.
  const before = spokenBefore(scene);
  if (before && scene.system && before !== scene.system) return undefined;
  // "Higher number, narrower needle. French is the other way round.": no needle is sized in French.
  return scene.system === 'needle-gauge' ||
    scene.system === 'french' ||
    scene.system === 'ep-metric' ||
    scene.system === 'tube-id'
    ? scene.system
    : scene.system === undefined
      ? unlessElse(before, elsewhere)
      : undefined;
}
const unlessElse = (system: NumberSide['system'] | undefined, elsewhere: boolean) =>
  system === 'needle-gauge' && elsewhere ? undefined : system;

/** "Chest drains come in French. Each higher number is …": the one scale, or things of one scale, of the sentence before. */
function spokenBefore({ before, headings }: Scene): NumberSide['system'] | undefined {
  const previous = before.at(-1);
  if (!previous || previous.close === '?' || headings.some((heading) => STITCHING.test(heading)))
    return undefined;
  const { items } = previous;
  const named = new Set(items.flatMap(({ system }) => system ?? []));
  const text = joined(items);
  if (named.size === 0) {
    if (WIRES.test(text)) return 'wire-inch';
    return TUBES.test(text) ? 'tube-id' : scaleOfThing(items);
  }
  const [only] = [...named];
  return named.size === 1 && only !== 'usp' && only !== 'usp-zeros' && !TURNED.test(text) ? only : undefined;
}

/** "The number falls as the catheter gets thicker. French goes the other way.": so it was not French. */
const turnedNext = ({ after }: Scene, system: NumberSide['system'] | undefined): boolean =>
  after
    .slice(0, 1)
    .some(
      ({ items }) =>
        items.slice(0, 4).some((item) => item.system !== undefined && item.system === system) &&
        TURNED.test(joined(items, 0, 14)),
    );
const TURNED = /\b(?:other way|opposite|reverse|reversed|contrary|backwards|upside down)\b/;

/** "French works like gauge: the higher the slimmer": said of the first. */
function likened(items: readonly Item[]): NumberSide['system'] | undefined {
  const at = items.findIndex((item) => /^(?:like|unlike|as|against)$/.test(item.word));
  const before = [
    ...new Set(items.slice(0, Math.max(at, 0)).flatMap((item) => (item.system ? [item.system] : []))),
  ];
  const next = items.slice(at + 1, at + 4).some((item) => item.system);
  return at > 0 && before.length === 1 && next ? before[0] : undefined;
}

/** "With needles a small number means …": the scale that such things are sized in, when only these are spoken of. */
export function scaleOfThing(items: readonly Item[]): NumberSide['system'] | undefined {
  const said = apartFrom(items);
  const needle = said.some((item) => NEEDLES.test(item.word));
  const tube = said.some((item) => DRAINS.test(item.word));
  if (items.some((item) => THREADS.test(item.word) || VENOUS.test(item.word))) return undefined;
  return needle === tube ? undefined : needle ? 'needle-gauge' : 'french';
}
/** "Unlike needles, catheters …": what is said is said of the second. */
function apartFrom(items: readonly Item[]): readonly Item[] {
  const at = items.findIndex(({ word }) => word === 'unlike');
  const comma = at < 0 ? -1 : items.findIndex(({ word }, i) => i > at && i <= at + 4 && word === ',');
  return comma < 0 ? items : items.slice(comma + 1);
}
const NEEDLES = /^(?:needles?|cannula(?:e|s)?|hypodermics?)$/;
const DRAINS = /^(?:drains?|foleys?|catheters?|sheaths?)$/;
const ELSEWHERE =
  /^(?:urinary|urethral|urine|bladder|suction|nasogastric|ng|ureteric|nephrostom(?:y|ies)|pigtails?|lmas?|masks?|guedels?|airways?)$/;
const THREADS =
  /^(?:sutures?|threads?|stitch(?:es)?|silk|nylon|metric|tracheal|endotracheal|tracheostomy|et|ett)$/;
/** Needles for threads have numbers of their own. */
const STITCHING = /\b(?:sutur|thread|stitch|closure)/;
/** Catheters for veins go by gauge. */
const VENOUS = /^(?:iv|ivs|venous|intravenous|peripheral|vein|veins|over-the-needle)$/;
const WIRES = /\b(?:guidewires?|wires?)\b.*\b(?:inch|inches)\b/;
const TUBES = /\b(?:tracheal|endotracheal|tracheostomy|et|ett) tubes?\b/;
