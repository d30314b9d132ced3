/** Where mistakes are announced: a sentence, a lead-in or a heading says that what follows is wrong, in part or as a whole. */

import type { Passage } from '../../notes/model.ts';
import { finds } from '../../notes/patterns.ts';
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import type { Scene } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import { NEGATIONS } from '../words/changes.ts';
import { MISTAKE_WORDS } from '../words/frames.ts';
import {
  foldedMistakes,
  listsByPlace,
  listsErrors,
  partlyFalse,
  quotedToMend,
  sendsToFind,
  toMend,
} from './mending.ts';

/** The sentence before, the lead-in or a heading says that mistakes follow. */
export function announced(scene: Scene): boolean {
  if (
    withLie(scene.items) ||
    (scene.before[0] && withLie(scene.before[0].items)) ||
    scene.before.some(oneWrong)
  )
    return true;
  const before = scene.before.at(-1) ?? (scene.lead && scene.passage.list ? scene.lead : undefined);
  if (before && (announces(before) || sendsToFind(before.items) || listsErrors(scene, before))) return true;
  if ((scene.passage.list && scene.lead && toMend(scene.lead.items)) || quotedToMend(scene)) return true;
  if (
    (scene.passage.list || labelledLines(scene.passage)) &&
    scene.context.some(({ items }) => allWrong(items) || someWrong(items))
  )
    return true;
  return (
    listsByPlace(scene) ||
    partlyFalse(scene) ||
    foldedMistakes(scene) ||
    (ofMistakes(scene.headings) && !advises(scene))
  );
}

/** A heading announces mistakes below it. */
const ofMistakes = remembered(
  (headings: readonly string[]) =>
    finds(UNTRUE, headings.at(-1) ?? '') ||
    headings.some(
      (heading, i) =>
        !(i < headings.length - 1 && SEVERAL_PARTS.test(heading)) &&
        finds(
          /\b(?:myths?|mistakes|misconceptions|false friends|(?:wall|hall|book|slide) of shame|howlers|bloopers|clangers|gaffes|blunders|should have (?:been|said|read)|pitfalls|truths and a lie|(?:wrong|false|errors?|mistakes?|slips?|planted)\b.{0,20}\bon purpose|why (?:it|each|this|they|these) (?:is|are) (?:false|wrong)|wrong (?:answers|statements|claims|beliefs|ideas|sentences)|what not to say|(?:gets?|getting|got|goes?|going) (?:it |this |them )?wrong|(?:do not|don't|never) (?:say|write|chart|teach)|(?:common|typical|frequent|usual|classic) (?:errors?|slips?|pitfalls))\b|\b(?:spot|find|mend|correct|fix|hunt)\b.{0,20}\b(?:errors?|slips?|sentences?|statements?|lines?)\b/,
          heading,
        ),
    ),
);

/** "3. Tying too hard. If 5-0 snaps, change to 4-0, which is thicker.": the mistake has its name, and the item ends in advice. */
const advises = ({ passage, headings, before: [name], items, after, next }: Scene): boolean =>
  /\b(?:mistakes|errors|slips|pitfalls)\b/.test(headings.at(-1) ?? '') &&
  passage.list !== undefined &&
  name !== undefined &&
  name.close === '.' &&
  after.length === 0 &&
  DOING.test(name.items[0]?.word ?? '') &&
  !(next && finds(/^(?:no|wrong|not)\b/, joined(next.items, 0, 1))) &&
  finds(ADVICE, joined(items));
/** What hands do. What heads do, and what is read or written, may be told in the next sentence. */
const DOING =
  /^(?:putting|bending|pulling|cutting|tying|grabbing|leaving|storing|opening|pushing|forcing|holding|gripping|crushing|clamping|rushing|drawing|jerking|tugging|knotting|twisting|kinking)$/;
const ADVICE =
  /(?:^|[,;:—–] )(?:so |and so |then |and |please )*(?:be (?:gentle|careful|kind|patient)|(?:change|switch|go (?:up|down)|move|step) to|use|take|choose|pick|handle|treat|go (?:easy|gently|slowly))\b/;

/** "Sizes: questions, model answers, common errors": the title of what has several parts, each with a heading of its own. */
const SEVERAL_PARTS = /^[^,]+,[^,]+(?:,| and )[^,]+$/;

const UNTRUE = /^\W*(?:false|untrue|incorrect)(?: (?:statements?|heap|box|column|ones|claims?))?\W*$/;

/** "Every line below is wrong. Mend it.", above a list. */
const allWrong = remembered((items: readonly Item[]): boolean =>
  /^(?:every|each|all|these|the)\b.{0,40}\b(?:is|are|has|have|contains?) (?:\w+ )?(?:wrong|false|incorrect|untrue|mistakes?|errors?)\b/.test(
    joined(items, 0, 14),
  ),
);

/** "Four are misprinted.", "one lie allowed a round:", above statements that are there to be told apart. */
const someWrong = remembered((items: readonly Item[]): boolean =>
  /^(?:only |exactly )?(?:one|two|three|four|five|six|some|several|a few|\d+)(?: of (?:them|these|the \w+))? (?:is|are|contains?|has|have) (?:\w+ )?(?:wrong|false|misprint(?:ed|s)?|mistakes?|errors?|untrue|incorrect|not true|invented)\b|\b(?:one|a|two|each with a) lies?\b(?! (?:in it|between|beside|under|on)\b)/.test(
    joined(items, 0, 24),
  ),
);
/** "One of the three is wrong.", "Spot the lie.", "All but one are right.", and behind it the statements on one line. */
const oneWrong = remembered(({ items }: Sentence): boolean =>
  finds(
    /^(?:only |exactly )?(?:one|1) of (?:the|these|those|them|my|our)(?: \w+){0,2} is (?:\w+ )?(?:wrong|false|untrue|incorrect|not true|a lie|invented)\b|^(?:now )?(?:spot|find|catch|name|which is|where is) the (?:lie|fib|liar|untruth|(?:false|wrong|untrue) (?:one|statement|claim|sentence))\b|^(?:which|what)(?: \w+)? (?:is|are|was|were) (?:swapped|out of (?:place|order|line)|in the wrong place|misplaced|the intruder)\b|^all but (?:one|two) (?:\w+ ){0,2}(?:is|are|hold) (?:right|true|correct)\b/,
    joined(items, 0, 12),
  ),
);
/** "Three truths, one lie: …; …; …". */
const withLie = remembered((items: readonly Item[]): boolean =>
  finds(
    /^(?:\w+ )?truths?(?: ,)?(?: and)? (?:one|a|two) lies? :|^(?:half|partly|only half) (?:right|true) :|^cross out the (?:lie|wrong|false)\b|\b(?:cards|pairs|those) that (?:do not|don't)(?: fit| match| belong)? :|^no (?:snap|pair|match) :|^\w+ (?:of (?:them|these) )?(?:is|are) (?:true|right|correct) (?:, )?(?:and|but) (?:one|two|the (?:other|third|last|rest)) (?:is|are) (?:not|false|wrong|a lie)\b|\b(?:one|a|two) (?:pairs?|cards?|of them) (?:(?:is|are|were) )?swapped\b/,
    joined(items, 0, 12),
  ),
);

/** "Sheet 1: …", "Sheet 2: …", "Sheet 3: …", a line each in one paragraph. */
const labelledLines = remembered(({ text }: Passage): boolean => LABELLED_LINES.test(text.slice(0, 400)));
const LABELLED_LINES = /^\s*([A-Za-z]{0,12} ?)1[.:)][^\n]*\n\s*\1?2[.:)][^\n]*\n\s*\1?3[.:)]/;

/** "Common mistake:", "Myth." alone, or "Here is what they get wrong:". */
function announces({ items }: Sentence): boolean {
  if (!holds(items, MISTAKEN)) return false;
  const short = items.filter((item) => item.kind === 'word').length <= 8;
  const colon = items.at(-1)?.word === ':';
  return (
    (short || colon) &&
    items.some(
      (item, i) =>
        MISTAKE_WORDS.has(item.word) && !deniedMistake(items, i) && (colon || !easilyTaken(items, i)),
    )
  );
}
const MISTAKEN = cue(MISTAKE_WORDS);

/** "Perfectly legal, easy to misread.": how it is taken, and no mistake that follows. */
const easilyTaken = (items: readonly Item[], i: number): boolean =>
  /^mis(?:read|heard|taken)$/.test(items[i]!.word) &&
  /^(?:to|be|been|is|are|was|were|gets?|easily|often|sometimes|commonly|never)$/.test(
    items[i - 1]?.word ?? '',
  );

/** "no mistake", "not wrong", "right unless crossed out": the word is itself denied. */
export const deniedMistake = (items: readonly Item[], i: number) =>
  items.slice(Math.max(0, i - 2), i).some((item) => NEGATIONS.has(item.word) || item.word === 'unless');
