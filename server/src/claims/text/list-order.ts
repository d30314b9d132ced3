/** Which of several numbered lists of a note a key further down belongs to: the last one above it that counts as far. */
import type { Note, Passage } from '../../notes/model.ts';
import { remembered } from './remember.ts';

interface Numbered {
  readonly list: number;
  readonly from: number;
  count: number;
}

/** Outermost numbered lists, in their order. */
const numberedLists = remembered((note: Note): readonly Numbered[] => {
  const found = new Map<number, Numbered>();
  for (const { list, index, cell } of note.passages) {
    if (!list?.ordered || list.depth > 0 || cell) continue;
    const known = found.get(list.list);
    if (known) known.count = Math.max(known.count, list.index + 1);
    else found.set(list.list, { list: list.list, from: index, count: list.index + 1 });
  }
  return [...found.values()];
});

/** Another numbered list that counts as far stands between this passage's own, or its table, and the key. */
export function otherListNearer(
  note: Note,
  { list, cell, index }: Passage,
  number: number,
  key: number,
): boolean {
  if (!cell && (!list?.ordered || list.depth > 0)) return false;
  const lists = numberedLists(note);
  // The list that the key itself is an item of is no other list.
  const own = note.passages[key]?.list?.list;
  const last = lists.findLast((one) => one.from < key && one.count >= number && one.list !== own);
  return last !== undefined && last.from > index && last.list !== list?.list;
}
