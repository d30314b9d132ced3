/** The noughts of a suture size, counted: "2-0 is written with two zeros", "four-oh has four noughts". */
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
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
  needs: () => [
    { sizes: 1, words: NOUGHTS },
    { sizes: 1, like: ELSE },
  ],
  read(scene) {
    const { items } = scene;
    const all = groups(items);
    const other = countsElse(scene, all);
    if (other.length > 0) return other;
    return items.flatMap((item, at) => {
      const noun = NOUGHTS.has(item.word);
      const count = noun ? COUNTS.get(items[at - 1]?.word ?? '') : elliptic(items, at);
      // "one zero more than 4-0": counted against another.
      if (count === undefined || /^(?:more|less|fewer)$/.test(items[at + 1]?.word ?? '')) return [];
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

/** What the figure of a thread is taken to count. */
const ELSE =
  /^(?:strands?|filaments?|plies|ply|fibres?|fibers?|tenths?|hundredths?|thousandths?|millimet(?:re|er)s?|mm|inch(?:es)?|centimet(?:re|er)s?|needles?|length|layers?|throws?|knots?|weeks?)$/;
const COUNTED = /^(\d{1,2})[-/]0$/;

/** "In 3/0 nylon the three counts the strands", "the 4 of a 4-0 thread is the number of filaments". */
function countsElse(scene: Scene, all: readonly Group[]): Reading[] {
  const { items, sentence } = scene;
  const [size] = all.filter((g) => COUNTED.test(g.mentions[0]!.text));
  const count = size && COUNTED.exec(size.mentions[0]!.text)?.[1];
  if (!count || all.length > 2 || sentence.close === '?') return [];
  const words = items.map((item) =>
    item === items[size.from] ? '#' : (item.mention?.text ?? item.word).toLowerCase(),
  );
  const text = words.join(' ');
  const match = COUNTS_ELSE.exec(text);
  if (!match || TURNED.test(text)) return [];
  const figure = COUNTS.get(match[1] ?? match[2]!);
  if (figure !== undefined && figure !== Number(count)) return [];
  const at = words.length - 1 - [...words].reverse().findIndex((word) => ELSE.test(word));
  const claim = ruleClaim(scene, 'zeros', 'usp', 'zeros-miscounted', at);
  return [{ claim, at, from: Math.min(size.from, at), to: at }];
}
const FIGURE = `(figure|number|digit|numeral|${[...COUNTS.keys()].join('|')})`;
const COUNTS_ELSE = new RegExp(
  `(?:\\b(?:in|with|on|for|of) (?:an? |the |your )?# (?:[a-z]+ ){0,2}(?:, )?the (?:first )?${FIGURE}|\\bthe (?:first )?${FIGURE} (?:in front )?(?:in|of|on|before|from) (?:an? |the |your )?#(?: [a-z]+){0,2}) (?:counts?|is|gives?|means|stands for|tells (?:you|us)|shows|measures|refers to|denotes|describes|says) (?:(?!zero|nought|oh)[a-z-]+ ){0,6}?${ELSE.source.slice(1, -1)}(?= |$)`,
);
const TURNED =
  /\b(?:not|never|no|nor|neither|\w+n't|if|unless|zeros?|zeroes|noughts?|than|or|some|many|students?|think|thinks|believe|say|mistake|wrong|myth)\b/;

/** "… counts zeros, so 5-0 has four: the noun was said before. */
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
