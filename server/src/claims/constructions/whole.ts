/**
 * USP numbers above 0, which run with the thread: "above 0, the whole numbers go up as the suture gets thicker",
 * "past zero the numbers grow with thicker thread", "whole numbers (1, 2, 3) are thicker than 0".
 */
import type { Item } from '../text/items.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { DOWN, UP } from '../words/changes.ts';
import type { Construction } from './model.ts';
import { directionClaim } from './sides.ts';

export const whole: Construction = {
  id: 'whole',
  needs: () => [{ holds: ['measured', 'numbered'] }],
  leaning: true,
  read(scene) {
    const { items } = scene;
    const from = wholeNumbers(items);
    if (from < 0) return [];
    const words = measuredWords(items).filter((m) => m.at > from && m.degree === 'comparative');
    const number = numberWay(
      items,
      from,
      words.find((m) => m.axis === 'number'),
    );
    const size = words.filter((m) => m.axis === 'outer' || m.axis === 'strength');
    if (!number || size.length !== 1 || size[0]!.idiom || size[0]!.at === number.at) return [];
    const { at, to, axis, sign } = size[0]!;
    return [directionClaim(scene, 0, { ...number, system: 'usp-whole' }, { at, to, axis, sign })];
  },
};

/** "you get to plain nought and above it the numbers go up". */
const beyondIt = (items: readonly Item[], i: number): boolean =>
  BEYOND.test(items[i]!.word) &&
  /^(?:it|that|this|there|here|then)$/.test(items[i + 1]?.word ?? '') &&
  items.slice(Math.max(0, i - 5), i).some(({ word }) => ZERO.test(word));
const BEYOND = /^(?:above|past|beyond|over|from|after)$/;
const ZERO = /^(?:0|zero|nought|naught)$/;

/** Where "above 0", "past zero", "without a zero" or "whole numbers" stands; −1 when the sentence is not about them. */
export function wholeNumbers(items: readonly Item[]): number {
  return items.findIndex(
    (item, i) =>
      (BEYOND.test(item.word) && ZERO.test(items[i + 1]?.word ?? '')) ||
      beyondIt(items, i) ||
      (/^(?:without|no)$/.test(item.word) &&
        items.slice(i + 1, i + 3).some((next) => /^zeros?$|^zeroes$/.test(next.word))) ||
      (/^(?:whole|plain)$/.test(item.word) &&
        /^(?:(?:suture|thread|usp) )?numbers?\b/.test(`${items[i + 1]?.word} ${items[i + 2]?.word}`)),
  );
}

/** Which way the numbers go: a verb of change, a comparing word of number, or "than 0". */
function numberWay(
  items: readonly Item[],
  from: number,
  compared: { readonly at: number; readonly to: number; readonly sign: 1 | -1 } | undefined,
): { at: number; to: number; sign: 1 | -1 } | undefined {
  if (compared) return { at: compared.at, to: compared.to, sign: compared.sign };
  const noun = items.findIndex((item, i) => i >= from && /^(?:numbers?|sizes?|figures?)$/.test(item.word));
  if (noun < 0) return undefined;
  const near = items.slice(noun + 1, noun + 4);
  const verb = near.findIndex((item) => UP.has(item.word) || DOWN.has(item.word));
  if (verb >= 0) {
    const at = noun + 1 + verb;
    return { at, to: at, sign: UP.has(items[at]!.word) ? 1 : -1 };
  }
  // "… get thicker as they rise"
  const as = items.findIndex(
    (item, i) => i > noun && item.word === 'as' && /^(?:they|it)$/.test(items[i + 1]?.word ?? ''),
  );
  const later = as < 0 ? '' : (items[as + 2]?.word ?? '');
  if (UP.has(later) || DOWN.has(later)) return { at: as + 2, to: as + 2, sign: UP.has(later) ? 1 : -1 };
  const than = items.findIndex(
    (item, i) => i > noun && item.word === 'than' && ZERO.test(items[i + 1]?.word ?? ''),
  );
  return than > 0 ? { at: noun, to: noun, sign: 1 } : undefined;
}
