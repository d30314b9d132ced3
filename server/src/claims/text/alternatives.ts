/** "A 16 G is **wider** / narrower than a 20 G": two words to choose from; the one set in strong type, or not struck, holds. */
import type { Passage } from '../../notes/model.ts';
import type { Item } from './items.ts';
import type { Sentence } from './sentences.ts';

interface Settled {
  readonly sentence: Sentence;
  /** Two words stand side by side and nothing says which of them holds. */
  readonly open: boolean;
}

/** Without a stroke and without struck words nothing is to be chosen from. */
export const offersAlternatives = ({ text, marks }: Passage): boolean =>
  text.includes('/') || marks.some(({ kind }) => kind === 'strike');

export function settleAlternatives(sentence: Sentence, { marks }: Passage): Settled {
  const { items } = sentence;
  const gone = items.findIndex(
    (item, i) => crossed(item, marks) && (opposed(item, items[i + 1]) || opposed(items[i - 1], item)),
  );
  if (gone >= 0) return { sentence: { ...sentence, items: items.filter((_, i) => i !== gone) }, open: false };
  const at = items.findIndex((item, i) => item.word === '/' && opposed(items[i - 1], items[i + 1]));
  if (at < 0) return { sentence, open: items.some((_, i) => colours(items, i)) };
  const [left, right] = [items[at - 1]!, items[at + 1]!];
  const set = (item: Item, kind: 'strong' | 'strike') =>
    marks.some((mark) => mark.kind === kind && mark.start <= item.start && item.end <= mark.end);
  const struck = set(left, 'strike') !== set(right, 'strike');
  const strong = set(left, 'strong') !== set(right, 'strong');
  if (!struck && !strong) return { sentence, open: true };
  const keepLeft = struck ? set(right, 'strike') : set(left, 'strong');
  const dropped = keepLeft ? [items[at]!, right] : [left, items[at]!];
  return { sentence: { ...sentence, items: items.filter((item) => !dropped.includes(item)) }, open: false };
}

const crossed = (item: Item, marks: Passage['marks']): boolean =>
  item.magnitude !== undefined &&
  marks.some((mark) => mark.kind === 'strike' && mark.start <= item.start && item.end <= mark.end);

const opposed = (a: Item | undefined, b: Item | undefined): boolean =>
  a?.magnitude !== undefined &&
  b?.magnitude !== undefined &&
  a.magnitude.degree === b.magnitude.degree &&
  a.magnitude.sign !== b.magnitude.sign;

/** "pink / green / blue": three colours to choose from. */
const colours = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === '/' &&
  items[i + 2]?.word === '/' &&
  [items[i - 1], items[i + 1], items[i + 3]].every((item) => item?.colour !== undefined);
