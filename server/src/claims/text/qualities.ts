/** What a thread is said to be, in a word or a phrase: "monofilament", "a single smooth strand", "many fine filaments". */
import { PROPERTY_WORDS, type PropertyRow } from '../words/properties.ts';
import type { Item } from './items.ts';

/** With which such a phrase ends. */
export const STRANDS = /^(?:strands?|filaments?|fib(?:re|er)s?)$/;
const ONE = new Set(['single', 'one', '1', 'solid', 'undivided']);
const MANY = new Set([
  'many',
  'several',
  'multiple',
  'numerous',
  'countless',
  'dozens',
  'hundreds',
  'bundle',
]);

/** The property that the word at `at` names, or the phrase that ends on it. */
export const qualityAt = (items: readonly Item[], at: number): PropertyRow | undefined =>
  ofItsSize(items, at) ? undefined : (PROPERTY_WORDS.get(items[at]!.word) ?? strandsAt(items, at));

/** "its equal is the synthetic 3-0": another thread, known by its size. */
const ofItsSize = (items: readonly Item[], at: number): boolean =>
  items[at]!.word === 'synthetic' &&
  items[at + 1]?.kind === 'size' &&
  !/^an?$/.test(items[at - 1]?.word ?? '');

const BUILD = {
  one: PROPERTY_WORDS.get('monofilament')!,
  many: PROPERTY_WORDS.get('multifilament')!,
};

export function strandsAt(items: readonly Item[], at: number): PropertyRow | undefined {
  const { word } = items[at]!;
  if (!STRANDS.test(word)) return undefined;
  const before = items.slice(Math.max(0, at - 4), at);
  const one = before.findLastIndex((item) => ONE.has(item.word));
  const many = before.findLastIndex((item) => MANY.has(item.word));
  if (word.endsWith('s'))
    return many >= 0 && one < 0 && describes(before.slice(many + 1)) ? BUILD.many : undefined;
  return one >= 0 && many < 0 && describes(before.slice(one + 1)) ? BUILD.one : undefined;
}

/** "smooth", "fine", "of tiny": no verb and no other thing between the count and the strands. */
const describes = (between: readonly Item[]): boolean =>
  between.every((item) =>
    /^(?:of|fine|finer|thin|thinner|tiny|little|small|smaller|smooth|solid|long|continuous|plastic|separate|twisted|braided|woven|single|very|,)$/.test(
      item.word,
    ),
  );
