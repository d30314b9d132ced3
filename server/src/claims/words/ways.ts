/** Words of change that say nothing of what changes: their owner does. One idea a list. */
import { AXIS_CHANGE, DOWN, UP } from './changes.ts';

const QUANTITIES = /^(?:more|extra|additional|added|another|greater|less|fewer)$/;
const words = (text: string) => text.split(/\s+/).filter(Boolean);

/** "The numbers climb", "a rise in French", "move up the numbers". */
export const RISES: ReadonlySet<string> = new Set([
  ...[...UP].filter((word) => !QUANTITIES.test(word)),
  ...words(
    'growth increment jumps soars soar lengthen upwards rocket rockets mounting escalates doubles triples improve improves improved',
  ),
]);

export const FALLS: ReadonlySet<string> = new Set([
  ...[...DOWN].filter((word) => !QUANTITIES.test(word)),
  ...words(
    'reduction plunges plunge slump dwindling halves recedes dips dip slide slides tumbles tumble suffers suffer worsens worsen deteriorates',
  ),
]);

/** With what is won or lost behind them: "adds width", "takes a third of a millimetre off". */
export const GIVES: ReadonlySet<string> = new Set(
  words(
    'add adds adding gain gains gaining raise raises raising increase increases win wins buy buys boost boosts bump bumps',
  ),
);
export const TAKES: ReadonlySet<string> = new Set(
  words(`take takes taking lose loses losing remove removes removing subtract subtracts drop drops dropping lower lowers lowering
  reduce reduces reducing shave shaves shed sheds cut cuts knock knocks cost costs deduct deducts sacrifice sacrifices`),
);

/** A participle or an arrow before the number: "rising gauge numbers". */
export const GROWING = new Set([
  'raising',
  'rising',
  'increasing',
  'climbing',
  'growing',
  'higher',
  'ascending',
  '↑',
  '⬆',
  '▲',
]);
export const SHRINKING = new Set([
  'lowering',
  'reducing',
  'falling',
  'decreasing',
  'shrinking',
  'dropping',
  'descending',
  'declining',
  '↓',
  '⬇',
  '▼',
]);

/** All words of change. */
export const CHANGES: readonly string[] = [
  AXIS_CHANGE.keys(),
  GROWING,
  SHRINKING,
  UP,
  DOWN,
  RISES,
  FALLS,
  GIVES,
  TAKES,
  ['enlarges', 'expands', 'decreases', 'decrease'],
].flatMap((some) => [...some]);
