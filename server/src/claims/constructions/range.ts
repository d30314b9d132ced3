/** "an 18 Fr is inside that 14–16 window", "14 to 18 Fr, so a 20 is within range". */
import type { Item } from '../text/items.ts';
import { groups, operand, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';

const INSIDE = new Set(['inside', 'within', 'in', 'fits', 'between', 'middle']);
const OUTSIDE = new Set(['outside', 'beyond', 'out']);
const WINDOW = new Set(['group', 'window', 'range', 'bracket', 'band', 'limits', 'span', 'interval']);

const THAT = /^(?:that|this|those)$/;

/** "falls inside that", "in the middle of that". */
const refersBack = (items: readonly Item[], i: number) =>
  THAT.test(items[i]!.word) &&
  /^(?:inside|within|outside|middle|beyond)$/.test(
    items[i - (items[i - 1]?.word === 'of' ? 2 : 1)]?.word ?? '',
  ) &&
  (items[i + 1] === undefined || items[i + 1]!.kind === 'punctuation');

export const range: Construction = {
  id: 'range',
  needs: () => [
    { sizes: 1, words: WINDOW },
    { sizes: 1, like: THAT },
  ],
  read(scene) {
    const { items } = scene;
    const all = groups(items);
    const single = all.find((g) => g.mentions.length === 1 && g.mentions[0]!.kind === 'size');
    const window = single
      ? items.findIndex((item, i) => i > single.to && (WINDOW.has(item.word) || refersBack(items, i)))
      : -1;
    if (!single || window < 0) return [];
    const cue = items.findIndex(
      (item, i) => i > single.to && i < window && (INSIDE.has(item.word) || OUTSIDE.has(item.word)),
    );
    if (cue < 0 || window - single.to > 9) return [];
    if (items.slice(single.to, cue).some((item) => item.word === 'than')) return [];
    const bounds = [
      ...all,
      ...(scene.before.at(-1) ? groups(scene.before.at(-1)!.items) : []),
      ...(scene.context.at(-1) ? groups(scene.context.at(-1)!.items) : []),
    ].filter((g) => g.mentions.length === 1 && g.mentions[0]!.kind === 'range');
    const found = bounds[0];
    if (found?.sizes.length !== 2 || found.sizes[0]!.system !== single.sizes[0]!.system) return [];
    const end = (i: number) => operand(scene, { ...found, sizes: [found.sizes[i]!] });
    return [
      {
        claim: {
          kind: 'range',
          construction: 'range',
          span: sentenceSpan(scene),
          focus: spanOf(scene, items[single.from]!, items[single.to]!),
          size: operand(scene, single),
          low: end(0),
          high: end(1),
          inside: !OUTSIDE.has(items[cue]!.word),
        },
        at: cue,
        from: single.from,
        to: window,
      },
    ] satisfies Reading[];
  },
};
