/** The number beside an operation: what a rule multiplies or divides by. */
import type { Item } from '../text/items.ts';
import { isReference } from '../text/references.ts';

export const NUMBERS: ReadonlyMap<string, number> = new Map([
  ['two', 2],
  ['three', 3],
  ['four', 4],
  ['five', 5],
  ['ten', 10],
  ['pi', 3.14],
  ['π', 3.14],
  ['2', 2],
  ['3', 3],
  ['4', 4],
  ['5', 5],
  ['10', 10],
  ['3.14', 3.14],
  ['2.5', 2.5],
  ['third', 3],
]);

/** The number beside the operation: "by three", "÷ 3", "three times", "a third of". */
export function factor(items: readonly Item[], at: number): number | undefined {
  const word = items[at]!.word;
  if (/^(?:tripl|thrice|treble|third)/.test(word)) return 3;
  if (word === 'twice' || word.startsWith('doubl') || word.startsWith('hal')) return 2;
  // "three times the diameter": the number that says how many times stands right before it.
  const times = NUMBERS.get(items[at - 1]?.word ?? '');
  if (times !== undefined && TIMES.test(word) && !NUMBERS.has(items[at + 1]?.word ?? '')) return times;
  for (const i of [at + 1, at + 2, at + 3, at + 4, at + 5, at + 6, at + 7, at - 1]) {
    const value = NUMBERS.get(items[i]?.word ?? '');
    if (value !== undefined && !isReference(items, i)) return value;
  }
  return undefined;
}

const TIMES = /^(?:times|×|x|\*)$/;
