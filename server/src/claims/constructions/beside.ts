/**
 * A plain word against a neighbour: "compared with a 6-0, a 4-0 is thick", "unlike the 20 G, the 14 G is a wide cannula",
 * "a 20 G looks slim next to a 16 G", "the 14 G is wide, not so the 24 G".
 */
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

const OPENS =
  /^(?:(?:when |if )?compared (?:with|to)|in (?:comparison|contrast) (?:with|to)|next to|beside|alongside|against|set against|relative to|unlike|as opposed to)$/;
/** Behind the word, with the article of the neighbour. */
const BEHIND =
  /^(?:[,;–—] )?(?:and |but )?(?:when |if )?(?:compared (?:with|to)|in (?:comparison|contrast) (?:with|to)|next to|beside|alongside|set against|relative to|unlike|as opposed to|not so|not)(?: (?:an?|the|your|our))?$/;
/** Each way of opening has one of them. */
const CUES = 'compared comparison contrast next beside alongside against relative unlike opposed not'.split(
  ' ',
);
/** "Compared with 6-0, 4-0 …": the comma joins nothing here. */
const singles = (group: Group): Group[] =>
  group.mentions.map((mention) => {
    const at = group.from + 2 * group.mentions.indexOf(mention);
    return { from: at, to: at, mentions: [mention], sizes: mention.sizes };
  });

const LOOKS = new Set(['is', 'are', 'looks', 'seems', 'feels', 'appears', 'runs', 'was']);
const ARTICLES = new Set(['a', 'an', 'the', 'your', 'our']);

export const beside: Construction = {
  id: 'beside',
  needs: () => [{ sizes: 2, holds: ['measured'], words: CUES }],
  read(scene) {
    const [a, b, ...more] = groups(scene.items).flatMap(singles);
    if (!a || !b || more.length > 0 || !sameSystem(a, b) || sameSizes(a, b)) return [];
    return ahead(scene, a, b) ?? behind(scene, a, b) ?? [];
  },
};

/** "Unlike the 20 G, the 14 G is wide": the neighbour opens the sentence. */
function ahead(scene: Scene, neighbour: Group, subject: Group): Reading[] | undefined {
  const { items } = scene;
  const opener = items.slice(0, neighbour.from).filter((item) => !ARTICLES.has(item.word));
  const comma = items.slice(neighbour.to + 1, subject.from).map((item) => item.word);
  if (!comma.includes(',') || comma.length > 6 || comma.indexOf(',') > 4 || !OPENS.test(textOf(opener)))
    return undefined;
  const word = measuredWords(items).find((m) => m.at > subject.to && m.degree !== 'superlative');
  if (!word || !said(items, subject, word)) return undefined;
  return [comparison(scene, 'beside', subject, neighbour, word)];
}

/** "The 14 G is wide, unlike the 20 G": the neighbour ends it. */
function behind(scene: Scene, subject: Group, neighbour: Group): Reading[] | undefined {
  const { items } = scene;
  const word = measuredWords(items).find((m) => m.at > subject.to && m.to < neighbour.from);
  // "is slim, unlike the 14" tells them apart; "is the slimmer compared with" sets one against the other.
  const against = /^compared /.test(joined(items, (word?.to ?? 0) + 1, neighbour.from));
  if (
    !word ||
    !(word.degree === 'plain' || (word.degree === 'comparative' && against)) ||
    !said(items, subject, word)
  )
    return undefined;
  const between = items.slice(word.to + 1, neighbour.from);
  const rest = between.findIndex((item) => !item.deviceNoun);
  if (rest > 1 || !BEHIND.test(textOf(between.slice(Math.max(rest, 0))))) return undefined;
  const end = items.slice(neighbour.to + 1).find((item) => !item.deviceNoun);
  return !end || end.kind === 'punctuation'
    ? [comparison(scene, 'beside', subject, neighbour, word)]
    : undefined;
}

/** The word is said of the subject by a verb of being or looking. */
function said(items: readonly Item[], subject: Group, word: Measured): boolean {
  if (word.axis === 'other' || word.axis === 'number' || word.excess || word.idiom) return false;
  // "A 20 G is fine" praises it.
  if (items[word.at]!.word === 'fine' && !word.attributive) return false;
  const verb = items.slice(subject.to + 1, word.at);
  return verb.length <= 5 && verb.some((item) => LOOKS.has(item.word));
}
