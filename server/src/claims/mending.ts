/** Sentences that are there to be put right, or are no longer to be believed. */
import type { Reading } from './constructions/model.ts';
import type { Item } from './text/items.ts';
import { joined } from './text/joined.ts';
import { remembered } from './text/remember.ts';
import type { Scene } from './text/scene.ts';
import type { Sentence } from './text/sentences.ts';

/** "Put right the following sentences.", "Slide 5 Spot the mistake (one a line)", above a list. */
export const toMend = remembered(
  (items: readonly Item[]): boolean => PUT_RIGHT.test(joined(items, 0, 12)) || HUNT.test(joined(items, 0, 8)),
);
const PUT_RIGHT =
  /^(?:\S+ [.)] )?(?:please )?(?:put right|correct|mend|fix|repair|rewrite|improve) (?:the|these|this|each|all)\b(?: \S+){0,3} (?:sentences?|statements?|lines?|claims?|entries|notes?)\b/;
const HUNT =
  /^(?:[a-z]+ \d+ (?:[.:)–—-] )?)?(?:spot|find|mend|correct|hunt) (?:the|all|every|each|any) (?:\w+ )?(?:mistakes?|errors?|slips?|faults?)\b/;

/** "Tom made five slips. Find them." */
export const sendsToFind = (items: readonly Item[]): boolean => FIND.test(joined(items, 0, 3));
const FIND = /^(?:find|spot|mend|correct) (?:them|it|all|each) ?\.?$/;

/** "The poster by the lifts has two errors. It prints …": the sentence goes on with what the one before it is about. */
export const listsErrors = ({ items }: Scene, before: Sentence): boolean =>
  /^(?:it|they|one|its|first|the)$/.test(items[0]?.word ?? '') && hasErrors(before.items);
const hasErrors = remembered((items: readonly Item[]): boolean => ERRS.test(joined(items)));
const ERRS =
  /\b(?:has|have|contains?|had|carries|is full of|with) (?:an?|one|two|three|four|five|six|several|some|\d) (?:\w+ )?(?:errors?|mistakes?|slips?|misprints?|typos?)\b/;

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
