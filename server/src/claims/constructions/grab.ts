/** "22-gauge cannula. Grab the pink one.": a colour to reach for, said of the one size of the sentence before. */
import type { ColourClaim } from '../model.ts';
import { groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { codeOf } from '../words/codes.ts';
import type { Construction, Reading } from './model.ts';

const REACH = new Set([
  'grab',
  'take',
  'pick',
  'fetch',
  'open',
  'use',
  'get',
  'pull',
  'choose',
  "that's",
  'means',
]);
const NOUNS = new Set(['one', 'hub', 'ones', 'cannula', 'needle']);

export const grab: Construction = {
  id: 'grab',
  read(scene) {
    if (groups(scene.items).length > 0 || scene.items.length > 12) return [];
    const at = scene.items.findIndex((item, i) => item.colour !== undefined && reached(scene, i));
    const before = scene.before.at(-1);
    const sized =
      before && before.close !== '?'
        ? groups(before.items).filter((g) => g.sizes[0]!.system === 'needle-gauge')
        : [];
    const subject = sized[0];
    if (
      at < 0 ||
      sized.length !== 1 ||
      !subject ||
      subject.sizes.length !== 1 ||
      before!.items.some((item) => item.colour)
    )
      return [];
    const device = codeOf(scene.items) ?? codeOf(before!.items) ?? subject.mentions[0]!.device;
    if (device === 'both') return [];
    const claim: ColourClaim = {
      kind: 'colour',
      construction: 'grab',
      span: sentenceSpan(scene),
      focus: spanOf(scene, scene.items[at]!),
      size: operand(scene, subject),
      colour: scene.items[at]!.colour!,
      same: true,
      ...(device ? { device } : {}),
    };
    return [{ claim, at, from: at, to: at }] satisfies Reading[];
  },
};

/** "grab the pink one": a verb of reaching right before, a hub or "one" right after. */
function reached(scene: Scene, i: number): boolean {
  const before = scene.items.slice(Math.max(0, i - 3), i).map((item) => item.word);
  return before.some((word) => REACH.has(word)) && NOUNS.has(scene.items[i + 1]?.word ?? '');
}
