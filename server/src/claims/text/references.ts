/** Numbers that point at a place in a book or a talk: "see page 4", "Slide 7:". They measure nothing and enter no sum. */
import type { Item } from './items.ts';

const POINTS_AT =
  /^(?:pages?|pp?|slides?|fig|figs|chapters?|sections?|footnotes?|appendix|lectures?|handouts?|exercises?|questions?|lessons?)\.?$/;

export const isReference = (items: readonly Item[], at: number): boolean => {
  const before = items[at - 1]?.word === '.' ? items[at - 2] : items[at - 1];
  return /^\d/.test(items[at]!.word) && POINTS_AT.test(before?.word ?? '');
};
