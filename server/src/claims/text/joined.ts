/** The words of a sentence as text. Joined once; what many constructions look at are stretches of it. */
import type { Item } from './items.ts';
import { remembered } from './remember.ts';

/** The words of a stretch that is made for one question. Of a whole sentence, or of part of one in place, `joined` is quicker. */
export const textOf = (items: readonly Item[]): string => items.map((item) => item.word).join(' ');

/** The same with sizes as they are written in the text: "4.5", not what an item that holds a size is called. */
export const writtenOf = (items: readonly Item[]): string =>
  items.map((item) => (item.mention ? item.mention.text.toLowerCase() : item.word)).join(' ');

interface Joined {
  readonly text: string;
  /** Where each item starts; behind the last one, where a next would. */
  readonly starts: readonly number[];
}

const joinedOf = remembered((items: readonly Item[]): Joined => {
  const starts = [0];
  let at = 0;
  for (const { word } of items) {
    at += word.length + 1;
    starts.push(at);
  }
  return { text: textOf(items), starts };
});

/** The words from one item up to another, left out, with a space between them. Places outside are no words. */
export function joined(items: readonly Item[], from = 0, to = items.length): string {
  const [first, end] = [Math.max(0, from), Math.min(items.length, to)];
  if (first >= end) return '';
  const { text, starts } = joinedOf(items);
  return end - first === items.length ? text : text.slice(starts[first], starts[end]! - 1);
}

/** The item that holds a character of the joined words. */
export function itemAt(items: readonly Item[], offset: number): number {
  const { starts } = joinedOf(items);
  for (let i = 0; i < items.length; i++) if (starts[i + 1]! - 1 > offset) return i;
  return items.length - 1;
}
