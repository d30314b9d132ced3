/** Sentences that are there to be put right, or are no longer to be believed. */

import { matchesOf, sourceSpan } from '../../notes/index.ts';
import type { Note, Passage, Span } from '../../notes/model.ts';
import { finds } from '../../notes/patterns.ts';
import type { Reading } from '../constructions/model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import type { Scene } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';

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
const hasErrors = remembered((items: readonly Item[]): boolean => finds(ERRS, joined(items)));
const ERRS =
  /\b(?:has|have|contains?|had|carries|is full of|with)(?: ,[^,]{1,40},)? (?:an?|one|two|three|four|five|six|seven|eight|nine|ten|several|some|many|\d{1,2}) (?:\w+ )?(?:errors?|mistakes?|slips?|misprints?|typos?)\b/;

/** "The manual has two errors. On page 9 …. On page 40 …": each by its place. */
export const listsByPlace = ({ items, before }: Scene): boolean =>
  finds(
    /^(?:on|in|at) (?:the )?(?:page|slide|line|table|figure|box|chapter|section|p) /,
    joined(items, 0, 4),
  ) && before.some((sentence) => hasErrors(sentence.items));

/** "What is wrong with this line?", "a page of the diary; it contains seven mistakes", above the block quotation. */
export const quotedToMend = ({ note, passage }: Scene): boolean => {
  if (passage.quote === 0) return false;
  let { index } = passage;
  while (note.passages[index]?.quote && passage.index - index < LONGEST_QUOTE) index--;
  const lead = note.passages[index];
  return lead !== undefined && sentToMend(lead);
};
const LONGEST_QUOTE = 40;
const sentToMend = remembered((lead: Passage): boolean => {
  const text = lead.text.slice(-LEAD_IN).toLowerCase();
  return faultAsked(text) || finds(ERRS, text) || FAULTS_SOUGHT.test(text);
});
const LEAD_IN = 400;
const FAULTS_SOUGHT =
  /\b(?:spot|find|mend|correct|hunt|mark|underline|circle|count|list|name) (?:\w+ ){0,3}(?:mistakes?|errors?|slips?|faults?)\b|\b(?:correct|mend|put right|improve|rewrite) (?:it|this|the (?:text|passage|paragraph|page|note|entry|diary|story|letter|e-?mail))\b/;
const faultAsked = (words: string): boolean =>
  /\b(?:what|where|anything|something) (?:is|'s|was)?(?: the)? ?(?:wrong|(?:mistake|error|slip)s?) (?:with|in|here|about)\b/.test(
    words,
  );

/** "Old card (2011), do not use: 22 G purple": what is no longer to be believed. */
export const outOfUse = ({ items }: Scene, { from, at }: Reading): boolean => {
  if (finds(IGNORED, joined(items, 0, 9))) return true;
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

/** "The footnote on … should go.", "The sentence that … comes out.": what a page loses. */
export const toGo = ({ items }: Scene): boolean =>
  finds(PART_OF_A_PAGE, joined(items, 0, 8)) && TO_GO.test(joined(items, Math.max(0, items.length - 7)));
const PART_OF_A_PAGE =
  /\b(?:footnote|sentence|line|remark|paragraph|passage|caption|bit|entry|note|claim|row|bullet|box|clause|slide|legend|half-sentence)\b/;
const TO_GO =
  /\b(?:should|must|has to|have to|had to|needs to|can|is to|to|will) (?:now |also )?(?:go|come out|go out|disappear|be (?:cut|removed|taken out|dropped|left out|scrapped))(?: [.!;])*$|\b(?:comes?|came|goes|went|is|was|has been) (?:now )?(?:out|cut|removed|taken out|dropped|left out|scrapped)(?: [.!;])*$/;
/** "Ignore the laminated one, its right half is glued over the left, hence pink 18": what the page says is of no use. */
const IGNORED =
  /^(?:\S+ [.)] )?(?:please )?(?:ignore|disregard|destroy|bin|discard|scrap|take down|throw (?:out|away)) (?:the|that|this|our|any|all|every)(?: \S+){0,4}? (?:ones?|posters?|cards?|tables?|sheets?|slides?|labels?|charts?|leaflets?|handouts?|pages?|versions?|lists?|cop(?:y|ies)|prints?|notes?)\b/;

/** "Half the squares are nonsense.", above a table or a list. */
export function partlyFalse({ note, passage }: Scene): boolean {
  const { cell, list, index } = passage;
  if (!cell && !list) return false;
  const first = cell ? note.tables[cell.table]?.rows[0]?.[0] : index - (list?.index ?? 0);
  const above = first === undefined ? undefined : note.passages[first - 1];
  return above !== undefined && saysPartlyFalse(above);
}
const saysPartlyFalse = remembered(({ text }: Passage): boolean => PARTLY.test(text.slice(0, 600)));
const PARTLY =
  /\b(?:half|some|one|two|three|four|five|several|a few|many|most|not all)(?: of)?(?: the| these| them| those)?(?: squares| statements| lines| cells| sentences| items| entries| claims| cards| rows)? (?:is|are|will be|was|were) (?:pure |plain |quite |all |deliberate )?(?:nonsense|false|lies|a lie|wrong|untrue|made up|invented|rubbish|bogus|fakes?)\b/i;

/** Below "<details><summary>Wrong answers we got</summary>", up to its end. */
export function foldedMistakes({ note, passage }: Scene): boolean {
  const folds = foldsOf(note);
  if (folds.length === 0) return false;
  const at = sourceSpan(passage, { start: 0, end: 0 }).start;
  return folds.some(({ start, end }) => start <= at && at < end);
}
const foldsOf = remembered(({ text }: Note): readonly Span[] => {
  if (!text.includes('<summary')) return [];
  const found: Span[] = [];
  let start = -1;
  for (const { 0: tag, 1: title, index } of matchesOf(text, FOLD)) {
    if (start < 0 && title !== undefined && OF_MISTAKES.test(title)) start = index;
    if (start < 0 || tag.length !== CLOSED.length) continue;
    found.push({ start, end: index });
    start = -1;
  }
  return start < 0 ? found : [...found, { start, end: text.length }];
});
const CLOSED = '</details>';
const FOLD = /<summary>([^<]{1,120})<\/summary>|<\/details>/gi;
const OF_MISTAKES =
  /\b(?:wrong|false|mistakes?|errors?|myths?|misconceptions?|incorrect|untrue|howlers|nonsense)\b/i;
