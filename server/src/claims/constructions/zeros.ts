/** The noughts of a suture size, counted: "2-0 is written with two zeros", "four-oh has four noughts". */
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { groups } from '../text/scene.ts';
import type { Construction } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

const COUNTS = new Map(
  'one two three four five six seven eight nine ten eleven twelve'
    .split(' ')
    .flatMap((word, i) => [[word, i + 1] as const, [String(i + 1), i + 1] as const]),
);
COUNTS.set('twenty', 20);
const NOUGHTS = new Set('zeros zeroes zero noughts nought naughts oughts aughts'.split(' '));
const SAYS = new Set('means mean has have carries is are stands with contains counts as : = says'.split(' '));

export const zeros: Construction = {
  id: 'zeros',
  needs: () => [{ sizes: 1, words: NOUGHTS }],
  read(scene) {
    const { items } = scene;
    const all = groups(items);
    return items.flatMap((item, at) => {
      const noun = NOUGHTS.has(item.word);
      const count = noun ? COUNTS.get(items[at - 1]?.word ?? '') : elliptic(items, at);
      if (count === undefined) return [];
      const before = all.findLast((g) => g.to < at);
      const after = all.find((g) => g.from > at);
      const size =
        before && said(items.slice(before.to + 1, noun ? at - 1 : at))
          ? before
          : after && spells(items.slice(at + 1, after.from))
            ? after
            : undefined;
      if (!size || size.sizes.length > 1 || size.sizes[0]!.system !== 'usp') return [];
      const written = 1 - size.sizes[0]!.value;
      if (written < 1) return [];
      const claim = ruleClaim(
        scene,
        'zeros',
        'usp',
        count === written ? 'zeros-as-written' : 'zeros-miscounted',
        at - 1,
      );
      return [{ claim, at: at - 1, from: Math.min(size.from, at - 1), to: at }];
    });
  },
};

/** "… counts zeros, so 5-0 has four": the noun was said before. */
const elliptic = (items: readonly Item[], at: number): number | undefined =>
  /^(?:has|have|carries|holds|counts|contains)$/.test(items[at - 1]?.word ?? '') &&
  (items[at + 1]?.kind ?? 'punctuation') === 'punctuation' &&
  items.slice(0, at).some(({ word }) => NOUGHTS.has(word))
    ? COUNTS.get(items[at]!.word)
    : undefined;

const said = (between: readonly Item[]) =>
  between.length <= 7 &&
  between.some((item) => SAYS.has(item.word)) &&
  !between.some(
    (item) => item.word === 'more' || item.word === 'than' || item.kind === 'size' || item.word === ';',
  );

/** "Three noughts on the silk means 3-0", "five zeros is 5-0". */
const spells = (between: readonly Item[]) =>
  /^(?:in a row |on (?:the|a|an|old|its) (?:\w+ )?(?:silk|nylon|packet|label|box|suture|card) )?(?:means?|is|are|=|stands? for|spells?|makes?|gives?)(?: (?:a|an|size|the))?$/.test(
    textOf(between),
  ) ||
  /^(?:in a row )?(?:on (?:the|a|an|old|its) (?:\w+ )?(?:silk|nylon|packet|label|box|suture|card) )?, (?:(?:you|we) (?:are holding|hold|have)|it is|it's|that is|that's|this is|ask for|take|open|fetch|hand over|pass)(?: (?:an?|the|size))?$/.test(
    textOf(between),
  );
