/** Sizes joined by signs and a named quantity: "in bore, 14 G > 16 G > 18 G", "18 G > 20 G in diameter". */
import { type Group, groups, sameSystem } from '../text/scene.ts';
import type { Construction } from './model.ts';
import { orderReading } from './order.ts';

export const chain: Construction = {
  id: 'chain',
  needs: () => [{ sizes: 2, holds: ['axis'], words: ['<', '>'] }],
  read(scene) {
    const { items } = scene;
    const noun = items.findIndex((item) => item.axisNoun && item.kind === 'word');
    const axis = items[noun]?.axisNoun;
    if (!axis || axis.axis === 'number' || items.filter((item) => item.axisNoun).length > 1) return [];
    const run = runIn(groups(items), (i) => items[i]?.word);
    if (!run) return [];
    const falls = (run.sign === '>') === (axis.sign === 1);
    return [
      orderReading(scene, run.groups, { at: noun, to: noun, axis: axis.axis, runs: falls ? 'down' : 'up' }),
    ];
  },
};

/** Neighbouring sizes with one and the same sign between each two. */
function runIn(all: readonly Group[], word: (i: number) => string | undefined) {
  const signs = all
    .slice(1)
    .map((group, i) => (group.from === all[i]!.to + 2 ? word(group.from - 1) : undefined));
  const sign = signs[0];
  const alike =
    signs.length > 0 && signs.every((one) => one === sign) && all.every((g) => sameSystem(g, all[0]!));
  return alike && (sign === '>' || sign === '<') ? { groups: all, sign } : undefined;
}
