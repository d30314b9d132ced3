/** Rows of sizes that are there to be put in order, and rows that have been. */
import type { Reading } from '../constructions/model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';

/** "Put in order, thickest first: …": the row is there to be put in order. */
export function toSort(scene: Scene, { claim }: Reading): boolean {
  if (claim.kind !== 'order') return false;
  return (sorts(scene.items) && !sortedOut(scene.items)) || sortedBelow(scene) || offeredRows(scene.items);
}

/** "Thin to thick is: a) 2-0, 4-0 b) 4-0, 2-0", "Start order 2-0, 6-0, 4-0; end order …": rows to choose from, and the row one starts with. */
function offeredRows(items: readonly Item[]): boolean {
  const labelled = (letter: string) =>
    items.some(
      ({ word }, i) =>
        word === letter && /^[).:]$/.test(items[i + 1]?.word ?? '') && items[i + 2]?.kind === 'size',
    );
  if (labelled('a') && labelled('b')) return true;
  const first = items.findIndex(({ kind }) => kind === 'size');
  return /(?:^| )(?:start|starting|given|initial|old) (?:order|row|sequence)(?: :)?$/.test(
    joined(items, Math.max(0, first - 4), first),
  );
}

/** "From narrow to wide: 20 G, 14 G, 22 G", and on a new line "22 20 14": the same once more, put in order. */
function sortedBelow({ items, after, next, passage }: Scene): boolean {
  const own = numbersIn(items);
  const below = (after[0] ?? next)?.items ?? [];
  if (NUMBERED.test(below[0]?.word ?? '') && rearranged(own, numbersIn(below))) return true;
  const second = items.filter(({ word }) => NUMBERED.test(word))[own.length / 2];
  if (!second || !/\n\W*$/.test(passage.text.slice(second.start - 4, second.start))) return false;
  return rearranged(own.slice(0, own.length / 2), own.slice(own.length / 2));
}
const NUMBERED = /^\d/;
const rearranged = (asked: readonly string[], told: readonly string[]): boolean =>
  asked.length > 2 &&
  asked.length === told.length &&
  asked.join() !== told.join() &&
  asked.toSorted().join() === told.toSorted().join();
const numbersIn = (items: readonly Item[]): string[] =>
  items.flatMap(({ kind, word }) => (kind === 'punctuation' ? [] : (/^\d+/.exec(word)?.slice(0, 1) ?? [])));

/** "…, and you get 18, 16, 14 G", "the ones in the tray go 25, 23, 21 G", "14 G first, 18 G second, 22 G last": the row is the outcome. */
const sortedOut = (items: readonly Item[]): boolean =>
  items.some(
    (item, i) =>
      (/^(?:you|we)$/.test(item.word) && /^(?:get|have|find)$/.test(items[i + 1]?.word ?? '')) ||
      (/^(?:go|goes|run|come|stand|read)$/.test(item.word) && items[i + 1]?.kind === 'size') ||
      (/^(?:second|last)$/.test(item.word) && items[i - 1]?.kind === 'size'),
  );

/** Does the sentence ask for its sizes to be put in order? */
export function sorts(items: readonly Item[]): boolean {
  const words = unlabelled(items).slice(0, 9);
  const verb = words.findIndex((word) => SORTS.has(word));
  const rest = words.slice(verb + 1);
  // "Put them thinnest first: …"
  const first = rest[0] === 'them' && rest[2] === 'first';
  return verb >= 0 && verb <= 2 && (first || rest.some((word) => UNSORTED.has(word)));
}
/** Words of a sentence without the marks it earns: "(6 marks) Put these in order". */
function unlabelled(items: readonly Item[]): string[] {
  const opens = items.slice(0, 3).findIndex((item) => item.word === '(');
  const closes = items.slice(0, 8).findIndex((item) => item.word === ')');
  const rest = opens >= 0 && closes > opens ? items.toSpliced(opens, closes - opens + 1) : items;
  return rest.map((item) => item.word);
}
const SORTS = new Set([
  'line',
  'put',
  'arrange',
  'rank',
  'sort',
  'order',
  'place',
  'list',
  'number',
  'rearrange',
]);
const UNSORTED = new Set(['order', 'these', 'following', 'rank', 'by']);
