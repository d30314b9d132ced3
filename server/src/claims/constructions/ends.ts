/**
 * The ends of a row, one of them named for what it is: "the range starts at 6 Fr, the narrowest, and ends at 12 Fr", "at one
 * end is the 24 G, the finest, and at the other the 14 G", "the 24 G heads the list as the narrowest; the 14 G closes it".
 */
import type { Item } from '../text/items.ts';
import { decidable, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, sameSizes, sameSystem, spanOf } from '../text/scene.ts';
import type { Construction } from './model.ts';
import { comparison, wordless } from './than.ts';

export const ends: Construction = {
  id: 'ends',
  needs: () => [{ sizes: 2, holds: ['superlative'], like: ROW }],
  read(scene) {
    const { items } = scene;
    const [a, b, ...more] = groups(items);
    const words = measuredWords(items).filter((m) => m.degree === 'superlative' && !m.idiom);
    const [word] = words;
    if (!a || !b || more.length > 0 || words.length !== 1 || !word || !decidable(word.axis)) return [];
    if (a.sizes.length + b.sizes.length > 2 || !sameSystem(a, b) || sameSizes(a, b)) return [];
    if (!items.some((item) => ROW.test(item.word)) || items.some((item) => LEFT_OPEN.test(item.word)))
      return [];
    const own = [a, b].find((g) => named(items, g, word.at, word.to));
    if (!own) return [];
    const other = own === a ? b : a;
    const made = wordless(comparison(scene, 'ends', own, other, word));
    if (made.claim.kind !== 'comparison') return [];
    const focus = spanOf(scene, items[word.at]!);
    return [{ ...made, claim: { ...made.claim, focus } }];
  },
};

const ROW = /^(?:ends?|starts?|begins?|heads|closes|opens|finishes|everything|range|ranges|row|runs?)$/;
const LEFT_OPEN = /^(?:not|no|never|than|if|for|in|except|but|another)$/;

/** "…, the finest", "… (the finest)", "… as the finest", "… the widest". */
function named(items: readonly Item[], g: Group, at: number, to: number): boolean {
  const link = items
    .slice(g.to + 1, at)
    .map((item) => item.word)
    .join(' ');
  const after = items[to + 1];
  const stops = !after || after.kind === 'punctuation' || /^(?:and|of|up|down|to|on)$/.test(after.word);
  return (
    at > g.to &&
    stops &&
    /^(?:(?:, |\( |[–—] )(?:its |our )?the|(?:heads|opens|closes|starts|ends|finishes|begins)(?: (?:the|our) (?:list|row|range|line))? as the)$/.test(
      link,
    )
  );
}
