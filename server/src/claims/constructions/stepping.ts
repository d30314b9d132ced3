/** "step down from a 5 Fr to a 4 Fr", "the next size up from 14 Fr is 16 Fr": a step in size, for systems that run straight. */
import { direction } from '../../sizes/index.ts';
import type { Axis } from '../model.ts';
import { compares } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import { AXIS_NOUNS } from '../words/nouns.ts';
import type { Construction, Reading } from './model.ts';
import { comparison, wordless } from './than.ts';

const STEPS = new Set(['step', 'steps', 'stepping', 'stepped', 'size', 'sizes', 'upsize', 'downsize']);
const WAYS: ReadonlyMap<string, 1 | -1> = new Map([
  ['up', 1],
  ['down', -1],
  ['larger', 1],
  ['smaller', -1],
]);

export const stepping: Construction = {
  id: 'stepping',
  read(scene) {
    const all = groups(scene.items);
    return scene.items.flatMap((item, at) => {
      const sign = WAYS.get(item.word);
      if (!sign || !scene.items.slice(Math.max(0, at - 2), at).some((near) => STEPS.has(near.word)))
        return [];
      const from = anchored(scene, all, at);
      const to = from && all.find((g) => g.from > from.to && g.from - from.to <= 9);
      if (!from || !to || !sameSystem(from, to) || sameSizes(from, to)) return [];
      const axis = axisIn(scene, at, from.from);
      // "Up" in gauge may mean the number or the bore: only with the noun beside it.
      if (!axis && direction(from.sizes[0]!.system) === 'down') return [];
      return [reading(scene, at, sign, axis ?? 'outer', to, from)];
    });
  },
};

/** The size after "from". */
function anchored(scene: Scene, all: readonly Group[], at: number): Group | undefined {
  const from = scene.items.findIndex((item, i) => i > at && i <= at + 5 && item.word === 'from');
  return from < 0 ? undefined : all.find((g) => g.from > from && g.from - from <= 3);
}

function axisIn(scene: Scene, at: number, to: number): Axis | undefined {
  const noun = scene.items.slice(at + 1, to).find((item) => item.axisNoun && item.word !== 'size');
  const axis = noun && AXIS_NOUNS.get(noun.word)?.axis;
  return axis === 'number' ? undefined : axis;
}

function reading(scene: Scene, at: number, sign: 1 | -1, axis: Axis, left: Group, right: Group): Reading {
  const word = compares(at, axis, sign);
  return { ...wordless(comparison(scene, 'stepping', left, right, word)), at: left.from, from: left.from };
}
