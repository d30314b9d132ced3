/** Lists whose sentences are there to be put right. */
import type { Item } from './text/items.ts';
import { joined } from './text/joined.ts';
import { remembered } from './text/remember.ts';

/** "Put right the following sentences.", above a list. */
export const toMend = remembered((items: readonly Item[]): boolean =>
  /^(?:\S+ [.)] )?(?:please )?(?:put right|correct|mend|fix|repair|rewrite|improve) (?:the|these|this|each|all)\b(?: \S+){0,3} (?:sentences?|statements?|lines?|claims?|entries|notes?)\b/.test(
    joined(items, 0, 12),
  ),
);
