/** Sentences that are there to be put right, or are no longer to be believed. */
import type { Reading } from './constructions/model.ts';
import type { Item } from './text/items.ts';
import { joined } from './text/joined.ts';
import { remembered } from './text/remember.ts';
import type { Scene } from './text/scene.ts';

/** "Put right the following sentences.", above a list. */
export const toMend = remembered((items: readonly Item[]): boolean =>
  /^(?:\S+ [.)] )?(?:please )?(?:put right|correct|mend|fix|repair|rewrite|improve) (?:the|these|this|each|all)\b(?: \S+){0,3} (?:sentences?|statements?|lines?|claims?|entries|notes?)\b/.test(
    joined(items, 0, 12),
  ),
);

/** "What is wrong with this line?", above a block quotation. */
export const quotedToMend = ({ passage, context }: Scene): boolean =>
  passage.quote > 0 && faultAsked(joined(context.at(-1)?.items ?? [], 0, 16));
const faultAsked = (words: string): boolean =>
  /\b(?:what|where|anything|something) (?:is|'s|was)?(?: the)? ?(?:wrong|(?:mistake|error|slip)s?) (?:with|in|here|about)\b/.test(
    words,
  );

/** "Old card (2011), do not use: 22 G purple": what is no longer to be believed. */
export const outOfUse = ({ items }: Scene, { from, at }: Reading): boolean => {
  const colon = items.findIndex((item) => item.word === ':');
  return (
    colon > 1 &&
    colon <= 14 &&
    colon < Math.min(from, at) &&
    /\b(?:(?:do not|don't|not to be) (?:use|used|copy|copied)|withdrawn|superseded|outdated|out of (?:date|use))\b/.test(
      joined(items, 0, colon),
    )
  );
};
