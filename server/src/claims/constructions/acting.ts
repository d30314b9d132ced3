/** Verbs that make a quantity larger or smaller: "decreases the diameter", "gains a little width". */
import type { Item } from '../text/items.ts';

export const ACTS: ReadonlyMap<string, 1 | -1> = new Map([
  ...[
    'gain',
    'gains',
    'increases',
    'increase',
    'raises',
    'enlarges',
    'widens',
    'expands',
    'add',
    'adds',
    'buys',
  ].map((word) => [word, 1] as const),
  ...[
    'lose',
    'loses',
    'decreases',
    'decrease',
    'reduces',
    'reduce',
    'lowers',
    'narrows',
    'shrinks',
    'costs',
    'cost',
  ].map((word) => [word, -1] as const),
]);

/** "decreases the diameter": a verb with the quantity as its object. */
export function actedOn(items: readonly Item[], i: number): { at: number; sign: 1 | -1 } | undefined {
  for (const at of [i - 1, i - 2, i - 3]) {
    const sign = ACTS.get(items[at]?.word ?? '');
    // "adds width to the label": to something else.
    if (items[i + 1]?.word === 'to' && !items.slice(i + 2, i + 5).some((item) => item.deviceNoun)) continue;
    if (
      sign &&
      items
        .slice(at + 1, i)
        .every((item) =>
          /^(?:the|its|some|you|us|a|bit|of|little|in|outer|inner|outside|inside)$/.test(item.word),
        )
    )
      return { at, sign };
  }
  return undefined;
}
