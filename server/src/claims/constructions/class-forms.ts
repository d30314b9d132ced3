/** The words of a sentence that name a class, and the row of the tables they mean for a size. */
import type { Item } from '../text/items.ts';
import type { Group } from '../text/scene.ts';
import { CATEGORIES, type CategoryRow } from '../words/categories.ts';

/** A class word of the tables, where it stands. */
export interface Form {
  readonly at: number;
  readonly to: number;
  readonly text: string;
}

const FORMS = new Set(CATEGORIES.flatMap((row) => row.forms));
/** What a sentence with a class word holds. */
export const FIRST_WORDS = () => [...FORMS].map((form) => form.split(' ')[0]!);

/** Class words of a sentence or a heading. */
export function formsIn(items: readonly Item[]): Form[] {
  return items.flatMap((item, at) => {
    if (FORMS.has(item.word)) return [{ at, to: at, text: item.word }];
    const two = `${item.word} ${items[at + 1]?.word}`;
    return FORMS.has(two) ? [{ at, to: at + 1, text: two }] : [];
  });
}

/** The class that the words mean for such a size. */
export function rowFor(form: Form, group: Pick<Group, 'sizes' | 'mentions'>): CategoryRow | undefined {
  const system = group.sizes[0]!.system;
  const device = group.mentions.find((m) => m.device)?.device;
  return CATEGORIES.find(
    (row) =>
      row.system === system &&
      row.forms.includes(form.text) &&
      (!row.devices || (device !== undefined && row.devices.includes(device))),
  );
}
