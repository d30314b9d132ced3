/**
 * What is taken is said to have no equal: "of 14, 18 and 22 G ask for the 22 G, nothing else on the trolley runs as quick",
 * "use the 28 Fr: none of the others drains faster". It is set against the rest of the set named before it.
 */
import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { both } from './of-two.ts';
import { comparison, withEach, wordless } from './than.ts';

export const unmatched: Construction = {
  id: 'unmatched',
  needs: () => [{ sizes: 1, words: ['nothing', 'none', 'no'], holds: ['measured'] }],
  read(scene) {
    const { items } = scene;
    const none = items.findIndex((_, i) => i > 2 && NONE.test(joined(items, i, i + 3)));
    const word = none < 0 ? undefined : wordAfter(items, none);
    if (!word || scene.sentence.close === '?') return [];
    const all = groups(items).flatMap(single);
    const before = all.filter((g) => g.to < none);
    const chosen = before.at(-1);
    if (!chosen || before.length !== all.length || chosen.sizes.length !== 1) return [];
    if (!TAKEN.test(joined(items, chosen.from - 5, chosen.from)) || cut(items, chosen.to, none)) return [];
    const rest = restOf(scene, chosen, before.slice(0, -1));
    if (rest.length < 2) return [];
    const made = wordless(
      comparison(scene, 'unmatched', chosen, both(rest), word, word.sign === 1 ? 'more' : 'less'),
    );
    return [withEach({ ...made, from: chosen.from, to: word.to, own: true })] satisfies Reading[];
  },
};

const NONE =
  /^(?:nothing|none)(?: (?:else|other|of|here|there|we|in|on|is|runs?|flows?|comes?)\b|$)|^no other\b/;
const TAKEN =
  /\b(?:ask for|asks for|call for|reach for|go for|take|takes|use|pick|choose|open|grab|want|get|fetch|prefer|put in)(?: (?:an?|the|our|your|always|only|in|first))*$/;

/** "runs as quick", "is stronger", with no "than" or with one that points back. */
function wordAfter(items: readonly Item[], none: number): Measured | undefined {
  const [word, ...more] = measuredWords(items).filter((m) => m.at > none);
  if (!word || more.length > 0 || word.at - none > REACH || !decidable(word.axis) || word.idiom)
    return undefined;
  const equal = word.degree === 'plain' && /^(?:as|so|that)$/.test(items[word.at - 1]?.word ?? '');
  if (!equal && word.degree !== 'comparative') return undefined;
  const way = items.slice(none + 1, word.at);
  if (way.some(({ word: own, kind }) => kind === 'punctuation' || OTHER.test(own))) return undefined;
  const after = joined(items, word.to + 1, word.to + 3);
  return /^(?:$|[.,;:!)—–]|as (?:it|that|this)|than (?:it|that|this)|and\b|so\b|there\b|here\b)/.test(
    after,
  ) || word.attributive
    ? word
    : undefined;
}
const REACH = 10;
/** Another subject, or another set than the one named. */
const OTHER = /^(?:can|may|might|should|must|if|when|but|not|for|needs?|children|adults|smaller|larger)$/;

/** A mark between the choice and its ground, and only words of place in the clause of the choice. */
const cut = (items: readonly Item[], to: number, none: number): boolean => {
  const between = items.slice(to + 1, none);
  const mark = between.findIndex(({ word }) => /^(?:[,;:—–(]|because|since|as)$/.test(word));
  return (
    mark < 0 ||
    between.length > 9 ||
    between.some(({ word }) => /^(?:if|unless|but|not|or|than|when|instead|rather)$/.test(word))
  );
};

/** The other sizes of the set: named before in the sentence, or by the sentence before. */
function restOf(scene: Scene, chosen: Group, here: readonly Group[]): readonly Group[] {
  const earlier = scene.before.at(-1);
  const own = here.length > 0 ? here : earlier && earlier.close !== '?' ? groups(earlier.items) : [];
  const set = distinct(own.flatMap(single));
  const plain = set.every((g) => sameSystem(g, chosen) && g.sizes.length === 1);
  return plain && set.some((g) => sameSizes(g, chosen)) ? set.filter((g) => !sameSizes(g, chosen)) : [];
}
