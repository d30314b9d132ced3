/**
 * A comparison with its ground: "an 18 G draws up faster than a 23 G, because its bore is larger",
 * "3-0 holds more than 5-0, being the thicker of the two". The ground is said of the first size.
 */
import type { Item } from '../text/items.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { groups, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction } from './model.ts';
import { comparison } from './than.ts';

export const reason: Construction = {
  id: 'reason',
  needs: () => [{ sizes: 2, holds: ['compared'], words: ['than'] }],
  read(scene) {
    const { items } = scene;
    const [left, right, ...more] = groups(items);
    const than = items.findIndex((item) => item.word === 'than');
    if (!left || !right || more.length > 0 || than < left.to || than > right.from) return [];
    if (!sameSystem(left, right) || sameSizes(left, right) || left.sizes.length + right.sizes.length > 2)
      return [];
    const ground = groundAfter(items, right.to);
    const word = measuredWords(items).find(
      (m) =>
        m.at > ground && m.degree === 'comparative' && m.axis !== 'other' && m.axis !== 'number' && !m.idiom,
    );
    if (ground < 0 || !word || word.at - ground > 7) return [];
    return [comparison(scene, 'reason', left, right, word)];
  },
};

const SUBJECT = new Set(['it', 'its', "it's"]);

/** Place of "being", or of "because it(s)", after the second size; −1 when the ground is about something else. */
export function groundAfter(items: readonly Item[], from: number): number {
  for (let i = from + 1; i < items.length && i <= from + 8; i++) {
    const { word } = items[i]!;
    if (word === 'being' && items[i - 1]!.word === ',') return i;
    if (/^(?:because|since|as|so)$/.test(word) && SUBJECT.has(items[i + 1]?.word ?? '')) return i + 1;
    // "because the hole is smaller": what the first one leaves or has.
    if (/^(?:because|since|as)$/.test(word) && items[i + 1]?.word === 'the' && items[i + 2]?.axisNoun)
      return i + 2;
  }
  return -1;
}
