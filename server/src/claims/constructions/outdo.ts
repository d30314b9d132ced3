/** Verbs that compare by themselves: "the 14 G outruns the 18 G". */
import type { Axis } from '../model.ts';
import { compares } from '../text/magnitudes.ts';
import { groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

const VERBS: ReadonlyMap<string, { axis: Axis; sign: 1 | -1 }> = new Map(
  (
    [
      ['flow', 1, 'outrun outruns outpace outpaces outflow outflows outstrip outstrips'],
      ['outer', 1, 'dwarf dwarfs'],
    ] as const
  ).flatMap(([axis, sign, words]) => words.split(' ').map((word) => [word, { axis, sign }] as const)),
);
const FLOWS =
  /\b(?:flow|flows|infusions?|fast|faster|speed|litres?|liters?|volume|bag|drip|ml|minutes?|seconds?|fluids?|blood)\b/;
const TIME = /^(?:before|ahead|sooner|earlier)$/;
const BEATS = new Set(['beats', 'beat']);
const EXCEEDS = /^(?:exceeds?|surpass(?:es)?)$/;
const EMPTIES = /^(?:empt|deliver|finish|drain|run|fill|clear|get)/;

export const outdo: Construction = {
  id: 'outdo',
  needs: () => [
    { sizes: 2, words: [...VERBS.keys(), ...BEATS], like: EXCEEDS },
    { sizes: 2, like: TIME },
  ],
  read(scene) {
    const all = groups(scene.items);
    return scene.items.flatMap((item, at) => {
      const verb =
        VERBS.get(item.word) ??
        exceeds(scene, at) ??
        (beats(scene, item.word) ? { axis: 'flow' as const, sign: 1 as const } : undefined) ??
        earlier(scene, at);
      const left = all.filter((g) => g.to < at && at - g.to <= 8).at(-1);

      const right = all.find((g) => g.from > at && g.from - at <= 4);
      if (!verb || !left || !right || !sameSystem(left, right) || sameSizes(left, right)) return [];
      return [reading(scene, at, verb, left, right)];
    });
  },
};

const beats = (scene: Scene, word: string) =>
  BEATS.has(word) && FLOWS.test(scene.items.map((item) => item.word).join(' '));

/** "the bore of the 16 G exceeds that of the 18 G": the quantity is the subject. */
function exceeds(scene: Scene, at: number): { axis: Axis; sign: 1 | -1 } | undefined {
  if (!EXCEEDS.test(scene.items[at]!.word)) return undefined;
  const noun = scene.items.slice(Math.max(0, at - 8), at).find((item) => item.axisNoun)?.axisNoun;
  return noun && noun.axis !== 'number' ? noun : undefined;
}

/** "the 24 G empties it before the 18 G does": first to be done flows faster. */
function earlier(scene: Scene, at: number): { axis: 'flow'; sign: 1 } | undefined {
  if (!TIME.test(scene.items[at]!.word)) return undefined;
  const verb = scene.items.slice(Math.max(0, at - 5), at).some((item) => EMPTIES.test(item.word));
  const echoed = scene.items
    .slice(at + 1, at + 8)
    .some((item) => /^(?:does|did|do|will|would|is|has|can)$/.test(item.word));
  return verb && echoed ? { axis: 'flow', sign: 1 } : undefined;
}

function reading(
  scene: Scene,
  at: number,
  verb: { axis: Axis; sign: 1 | -1 },
  left: Parameters<typeof comparison>[2],
  right: Parameters<typeof comparison>[3],
): Reading {
  const word = compares(at, verb.axis, verb.sign);
  return comparison(scene, 'outdo', left, right, word);
}
