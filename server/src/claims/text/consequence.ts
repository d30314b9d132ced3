/** A sentence without what follows from it: "the 18 G is the wider one, so start with the 18 G on the wrist". */
import { NEGATIONS } from '../words/changes.ts';
import type { Item } from './items.ts';
import { joined } from './joined.ts';

type Items = readonly Item[];

/**
 * What stands before ", so …" where the consequence compares nothing and names no size that was not named before: then it only
 * says what is done. Undefined where there is no such consequence.
 */
export function withoutConsequence(items: Items): Items | undefined {
  const at = items.findIndex((_, i) => begins(items, i));
  if (at < 3) return undefined;
  const [said, done] = [items.slice(0, at), items.slice(at)];
  const named = said.filter(({ kind }) => kind === 'size').map(sizeOf);
  const close = done.at(-1)!.kind === 'punctuation' ? [done.at(-1)!] : [];
  return named.length > 0 && done.every((item) => isPlain(item, named)) ? [...said, ...close] : undefined;
}

const sizeOf = ({ mention }: Item): string =>
  (mention?.sizes ?? []).map(({ system, value }) => `${system} ${value}`).join();

/** ", so", ", and so", ", which is why". */
function begins(items: Items, at: number): boolean {
  return items[at]!.word === ',' && BEGINS.test(joined(items, at + 1, at + 4));
}
const BEGINS = /^(?:and )?so(?: (?!(?:that|is|are|does|do|did)(?: |$))|$)|^which is why$/;

/** Compares, colours and denies nothing, and names only what was named. */
function isPlain(item: Item, named: readonly string[]): boolean {
  if (item.kind === 'size') return named.includes(sizeOf(item));
  const { word, magnitude, axisNoun, colour } = item;
  return !magnitude && !axisNoun && !colour && !NEGATIONS.has(word) && !TURNS.test(word);
}

const TURNS =
  /^(?:other|others|opposite|reverse|instead|rather|than|if|unless|but|though|although|because|since|would|should|wrong|mistake|\?|;|:|\()$/;
