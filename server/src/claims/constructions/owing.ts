/**
 * A ground or a place given before its size: "owing to its larger bore, the 18 G is preferred to the 22 G", "its larger bore
 * makes the 18 G better than the 22 G", "as the bigger of the two, the 18 G goes in for blood and the 22 G for the drip",
 * "below 4-0 in thickness comes 5-0".
 */
import { single } from '../text/focus.ts';
import { textOf } from '../text/joined.ts';
import { compares, decidable, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison, wordless } from './than.ts';

export const owing: Construction = {
  id: 'owing',
  needs: () => [
    { sizes: 2, holds: ['compared'], words: ['its', 'the'] },
    { sizes: 2, holds: ['axis'], words: ['above', 'below', 'beneath', 'under', 'over', 'beyond'] },
  ],
  read(scene) {
    const all = groups(scene.items).flatMap(single);
    const [a, b, ...more] = all;
    if (!a || !b || !sameSystem(a, b) || sameSizes(a, b) || a.sizes.length + b.sizes.length > 2) return [];
    const below = placed(scene, a, all.slice(1));
    if (below) return below;
    return more.length === 0 ? grounded(scene, a, b) : [];
  },
};

const OWING =
  /^(?:owing to|because of|thanks to|with|due to|given|by virtue of|on account of|for)? ?its(?: (?:much|far|slightly|rather))?$/;
const OF_TWO = /^(?:as|being) the(?: (?:much|clearly|slightly))?$/;
const OVER =
  /\b(?:preferred to|better than|chosen over|ahead of|rather than|instead of|beats|over|the choice over|superior to|faster than|more useful than|before)(?: (?:an?|the))?$/;

/** "Owing to its larger bore, A is preferred to B": the first size is what it is said of. */
function grounded(scene: Scene, a: Group, b: Group): Reading[] {
  const { items } = scene;
  const word = measuredWords(items).find((m) => m.degree === 'comparative' && m.to < a.from);
  if (!word || !decidable(word.axis) || word.idiom || word.at > 6) return [];
  const opening = textOf(items.slice(0, word.at));
  const link = textOf(items.slice(word.to + 1, a.from));
  const own = OWING.test(opening) && /^(?:, |makes |gives |puts )(?:an? |the )?$/.test(`${link} `);
  const two =
    OF_TWO.test(opening) &&
    /^(?:(?:\w+ )?of the (?:two|pair)|one|sibling) , (?:an? |the )?$/.test(`${link} `);
  if (!own && !two) return [];
  if (own && !OVER.test(textOf(items.slice(a.to + 1, b.from)))) return [];
  return [{ ...comparison(scene, 'owing', a, b, word), own: true }];
}

const WAYS: ReadonlyMap<string, 1 | -1> = new Map([
  ['above', 1],
  ['over', 1],
  ['beyond', 1],
  ['below', -1],
  ['beneath', -1],
  ['under', -1],
]);

/** "Below 4-0 in thickness come 5-0 and 6-0". */
function placed(scene: Scene, anchor: Group, rest: readonly Group[]): Reading[] | undefined {
  const { items } = scene;
  const at = /^(?:an?|the)$/.test(items[anchor.from - 1]?.word ?? '') ? anchor.from - 2 : anchor.from - 1;
  const sign = WAYS.get(items[at]?.word ?? '');
  const noun = items[anchor.to + 1]?.word === 'in' ? items[anchor.to + 2]?.axisNoun : undefined;
  const [first] = rest;
  if (!sign || at > 3 || !noun || !decidable(noun.axis) || !first) return undefined;
  const link = textOf(items.slice(anchor.to + 3, first.from));
  if (!/^(?:comes?|is|are|lies|lie|sits?|stands?|follows?)(?: (?:an?|the))?$/.test(link)) return undefined;
  const others: Group = {
    from: first.from,
    to: rest.at(-1)!.to,
    mentions: rest.flatMap((g) => g.mentions),
    sizes: rest.flatMap((g) => g.sizes),
  };
  const word = compares(at, noun.axis, (sign * noun.sign) as 1 | -1);
  return [wordless(comparison(scene, 'owing', others, anchor, word))];
}
