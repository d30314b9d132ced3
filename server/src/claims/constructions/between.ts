/** "7-0 sits between 5-0 and 6-0": a size placed between two others of its system. */
import { type Group, groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';

const PLACES = new Set([
  'sits',
  'lies',
  'falls',
  'comes',
  'is',
  'slots',
  'ranks',
  'belongs',
  'goes',
  'fits',
  'stands',
  'lands',
  'exactly',
  'right',
  'halfway',
  'midway',
  'in',
  'neatly',
  'just',
  'somewhere',
  'tracheal',
  'endotracheal',
]);

export const between: Construction = {
  id: 'between',
  needs: () => [{ sizes: 3, words: ['between'] }],
  read(scene) {
    const at = scene.items.findIndex((item) => item.word === 'between');
    if (at < 0) return [];
    const all = groups(scene.items);
    const subject = all.filter((g) => g.to < at).at(-1);
    const bounds = boundsAfter(all, at);
    if (subject?.sizes.length !== 1 || !bounds) return [];
    if (subject.sizes[0]!.system !== bounds[0].sizes[0]!.system) return [];
    const verbs = scene.items.slice(subject.to + 1, at);
    if (
      verbs.length === 0 ||
      verbs.length > 4 ||
      !verbs.every((item) => PLACES.has(item.word) || item.deviceNoun)
    )
      return [];
    return [reading(scene, subject, bounds, at)];
  },
};

/** The two ends: a list of two, a range, or two groups joined by "and". */
function boundsAfter(all: readonly Group[], at: number): readonly [Group, Group] | undefined {
  const first = all.find((g) => g.from > at && g.from <= at + 3);
  if (!first) return undefined;
  const one = (i: number): Group => ({ ...first, sizes: [first.sizes[i]!] });
  if (first.sizes.length === 2) return [one(0), one(1)];
  const second = all.find((g) => g.from > first.to && g.from <= first.to + 4);
  return first.sizes.length === 1 && second?.sizes.length === 1 ? [first, second] : undefined;
}

function reading(scene: Scene, subject: Group, [low, high]: readonly [Group, Group], at: number): Reading {
  return {
    claim: {
      kind: 'range',
      construction: 'between',
      span: sentenceSpan(scene),
      focus: spanOf(scene, scene.items[subject.from]!, scene.items[subject.to]!),
      size: operand(scene, subject),
      low: operand(scene, low),
      high: operand(scene, high),
      inside: true,
    },
    at,
    from: subject.from,
    to: at,
  };
}
