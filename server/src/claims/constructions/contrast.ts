/** Two sizes set against each other by opposite words: "the 18 is the skinny one, the 24 the fat one". */
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction } from './model.ts';
import { comparison } from './than.ts';

export const contrast: Construction = {
  id: 'contrast',
  read(scene) {
    if (scene.items.some((item) => item.word === 'than')) return [];
    const all = groups(scene.items);
    if (all.length !== 2 || !sameSystem(all[0]!, all[1]!) || sameSizes(all[0]!, all[1]!)) return [];
    const words = measuredWords(scene.items).filter((m) => m.axis !== 'number' && !m.idiom && !m.excess);
    const [a, b] = all as [Group, Group];
    const first = owned(words, a, b.from);
    const second = owned(words, b, scene.items.length);
    if (!first || !second || first.sign === second.sign || family(first) !== family(second)) return [];
    return family(first) === 'other' || !clean(scene, a, first) || !clean(scene, b, second)
      ? []
      : [comparison(scene, 'contrast', a, b, first)];
  },
};

const family = (m: Measured) =>
  m.axis === 'outer' || m.axis === 'bore' || m.axis === 'hole' ? 'size' : m.axis;

function owned(words: readonly Measured[], group: Group, limit: number): Measured | undefined {
  const mine = words.filter((m) => m.at > group.to && m.at < limit && m.at - group.to <= 6);
  return mine.length === 1 ? mine[0] : undefined;
}

const TIES = new Set(
  'is are was the a an one needle cannula catheter wire suture thread as being = : , looks feels'.split(' '),
);

function clean(scene: Scene, group: Group, word: Measured): boolean {
  return scene.items.slice(group.to + 1, word.at).every((item) => TIES.has(item.word) || item.deviceNoun);
}
