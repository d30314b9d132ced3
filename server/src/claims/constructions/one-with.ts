/**
 * One of two sizes told by what it has more or less of: "18 G and 23 G are in the tray. The one with more steel in it is the
 * 23 G", "the one that has the smaller hole is the 16 Fr".
 */
import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { compares, decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, twoSizes } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

export const oneWith: Construction = {
  id: 'one-with',
  needs: () => [
    { sizes: 1, words: ['more', 'less', 'most', 'least'], also: /^(?:with|has|having|holds)$/ },
    { sizes: 1, holds: ['compared'], words: ['with', 'has', 'having'] },
  ],
  read(scene) {
    const { items } = scene;
    const one = items.findIndex((_, i) => ONE.test(joined(items, i, i + 4)));
    if (one < 0 || scene.sentence.close === '?') return [];
    const word = stuffAt(items, one) ?? said(items, one);
    const own = groups(items).flatMap(single);
    const chosen = own.find((g) => word !== undefined && g.from > word.to);
    if (!word || !chosen || chosen !== own.at(-1)) return [];
    if (!IS.test(joined(items, word.to + 1, chosen.from))) return [];
    if (items.slice(0, chosen.from).some(({ word: own }) => NEGATIONS.has(own) || own === 'than')) return [];
    // How much of it there is may be told by its length.
    if (LONG.test(`${joined(scene.before.at(-1)?.items ?? [])} ${joined(items)}`)) return [];
    const other = otherOf(
      scene,
      own.filter((g) => g.to < one),
      chosen,
    );
    return other ? ([comparison(scene, 'one-with', chosen, other, word)] satisfies Reading[]) : [];
  },
};

const LONG = /\b(?:packets?|packs?|boxe?s?|reels?|cm|length|longe?r?|short(?:er)?|metres?|inch(?:es)?)\b/;
const ONE =
  /^the (?:one|thread|suture|needle|tube|cannula|catheter|drain|wire) (?:with|having|that has|which has)\b/;
/** "in it is the", ": the". */
const IS =
  /^(?:(?:in|to|inside|about|across|round|on) (?:it|its \w+)|inside|overall)?(?: ,)? ?(?:is|being|will be|=|:)(?: (?:then|always|of course|surely))?(?: (?:the|your|our|an?))?$/;

/** "more thread", "less steel": what the thing is made of. */
function stuffAt(items: readonly Item[], one: number): Measured | undefined {
  const at = items.findIndex(
    ({ word }, i) =>
      i > one &&
      i <= one + 6 &&
      /^(?:more|less|most|least)$/.test(word) &&
      STUFF.test(items[i + 1]?.word ?? ''),
  );
  return at < 0 ? undefined : { ...compares(at, 'outer', /^mo/.test(items[at]!.word) ? 1 : -1), to: at + 1 };
}
const STUFF =
  /^(?:thread|steel|metal|plastic|silicone|rubber|material|fibre|fiber|nylon|silk|gut|substance|stuff|meat|body)$/;

/** "the smaller hole", "more room": a comparing word right behind. */
const said = (items: readonly Item[], one: number): Measured | undefined =>
  measuredWords(items).find(
    (m) =>
      m.at > one + 1 &&
      m.at <= one + 5 &&
      m.degree !== 'plain' &&
      m.to > m.at &&
      decidable(m.axis) &&
      !m.idiom &&
      m.axis !== 'strength',
  );

/** The other of two named before, in the sentence or the one before it. */
function otherOf(scene: Scene, here: readonly Group[], chosen: Group): Group | undefined {
  const previous = scene.before.at(-1);
  const all = here.length > 0 ? here : previous && previous.close !== '?' ? groups(previous.items) : [];
  const two = distinct(all.flatMap(single));
  const other = two.find((g) => !sameSizes(g, chosen));
  return two.length === 2 && other && two.some((g) => sameSizes(g, chosen)) && twoSizes(other, chosen)
    ? other
    : undefined;
}
