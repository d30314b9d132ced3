/** "Compared with a 6-0, a 4-0 is thick", "next to a 16 G, a 20 G looks slim": a plain word against a neighbour. */
import { measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction } from './model.ts';
import { comparison } from './than.ts';

const OPENS =
  /^(?:(?:when |if )?compared (?:with|to)|in comparison (?:with|to)|next to|beside|alongside|against|set against|relative to)$/;
/** Each way of opening has one of them. */
const CUES = 'compared comparison next beside alongside against relative'.split(' ');
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
    const { items } = scene;
    const [neighbour, subject, ...more] = groups(items).flatMap(singles);
    if (!neighbour || !subject || more.length > 0 || !sameSystem(neighbour, subject)) return [];
    const opener = items.slice(0, neighbour.from).filter((item) => !ARTICLES.has(item.word));
    const comma = items.slice(neighbour.to + 1, subject.from).map((item) => item.word);
    if (sameSizes(neighbour, subject) || !comma.includes(',') || comma.length > 4) return [];
    if (!OPENS.test(opener.map((item) => item.word).join(' '))) return [];
    const word = measuredWords(items).find((m) => m.at > subject.to && m.degree !== 'superlative');
    if (!word || word.axis === 'other' || word.axis === 'number' || word.excess || word.idiom) return [];
    const verb = items.slice(subject.to + 1, word.at);
    if (verb.length > 5 || !verb.some((item) => LOOKS.has(item.word))) return [];
    return [comparison(scene, 'beside', subject, neighbour, word)];
  },
};
