/** Where the author has the word again: quotations that are meant to be said, and the end of what somebody else is said to hold. */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { REPORTING_VERBS } from '../words/frames.ts';

/** 'Me: "…"', 'Tutor: "…"', 'New text: "…"': the author stands behind what is quoted, or who teaches has the word. */
export const ownWords = (text: string, quote: number, end: number): boolean => {
  const before = text.slice(Math.max(0, quote - LONGEST_LABEL), quote);
  if (SOMEONE_SAID.test(text.slice(end, end + LONGEST_LABEL))) return false;
  return (
    TEACHER.test(before) ||
    (end - quote < SHORT_ANSWER && ASKED.test(before)) ||
    (toBeSaid(before) && !SET_AS_TASK.test(text.slice(end, end + FAR_BEHIND)))
  );
};
/** '…," said the new starter': whatever stands before it, another has said it. */
const SOMEONE_SAID =
  /^[ ,]*(?:said|says|asked|wrote|claimed|answered|replied|thought|insisted|offered|tried|guessed|whispered|came) (?:the|a|an|one|our|my|some|another)(?! (?:tutor|teacher|lecturer|instructor|trainer|demonstrator|consultant|professor|educator)\b)\b/;
const SHORT_ANSWER = 90;
const LONGEST_LABEL = 70;
const FAR_BEHIND = 160;
/** '"How wide is it?" – "Four millimetres."': who asks and who answers have the word in turn. */
const ASKED = /\?["”][ \t]*[–—-][ \t]*$/;
const TEACHER =
  /(?:^|[\n—–.!?"”*_>|-])[ \t*_]*(?:me|i|my (?:answer|reply)|(?:the )?(?:answer|reply|tutor|teacher|lecturer|instructor|trainer|demonstrator|consultant|professor|educator))[ \t*_]*:[ \t*_]*$/i;

/** 'Read this out: "…"', 'Our rule is short: "…"': words behind a colon that the author wants said. */
function toBeSaid(before: string): boolean {
  const label = LABEL.exec(before)?.[1]?.trim().toLowerCase();
  return label !== undefined && WANTS_SAID.test(label) && !SOMEBODY_ELSE.test(label);
}
const LABEL = /(?:^|[.!?\n)]["”’]?\s)[\s*_>-]*([^.!?\n"“”]{2,64}):[ \t*_]*$/;
const WANTS_SAID =
  /\b(?:new|revised|amended|corrected|final|current) (?:text|wording|line|version|entry|sentence|caption)\b|^(?:(?:so|then|and|now|please|just) )?(?:say|read|write|repeat|learn|put|print|copy|hang|stick|pin|remember|tell|teach|keep|note)\b|^(?:the )?(?:script|wording|motto|take-home)\b|\bscript\b|\b(?:what|all) i (?:always |usually |often )?(?:say|tell|teach|answer|explain)\b|^i (?:always |usually |often |then |simply |just )?(?:say|tell|teach|answer|explain)\b|^(?:our|my|the) (?:\w+ )?(?:rule|motto|mantra|line|sentence|answer|advice|short version|take-home message|message|reminder)\b/;
const SOMEBODY_ELSE =
  /\b(?:not|never|no|don't|doesn't|avoid|stop|wrong|old|used|once|mistakes?|errors?|false|before|instead|discuss|correct|mend|fix|find|spot|patients?|students?|trainees?|learners?|candidates?|people|everyone|they|he|she|somebody|someone|myths?|was|thought|believed|hears?|heard|questions?|exam|quiz)\b/;
/** What is quoted is there to be judged. */
const SET_AS_TASK =
  /\b(?:ask|asks|agree|agrees|wrong|mistakes?|errors?|find|spot|true or false|discuss|correct|corrects|vote|hands up|false|untrue|not so|right\?|myth)\b/i;

/** "People think that …, but the 18 G …", "If anyone tells you …, take the 4-0": behind the reporting verb the author speaks again. */
export const speaksAgain = (items: readonly Item[], verb: number): boolean =>
  items.some((_, i) => i > verb && endsReport(items, i, verb));

function endsReport(items: readonly Item[], i: number, verb: number): boolean {
  const { word } = items[i]!;
  // "has written: silk – absorbed 60 d; …": a row behind a colon is said as a whole.
  if (word === ';') return !items.slice(verb, i).some((item) => item.word === ':');
  if (word === 'but')
    return items[i - 1]?.word === ',' && !items.slice(i + 1).some((item) => REPORTING_VERBS.has(item.word));
  if (word !== ',') return false;
  const next = items[i + 1]?.word ?? '';
  // "says 000, which is …": told of the size by the way.
  if (next === 'which' && items[i - 1]?.kind === 'size' && i - verb <= 3) return true;
  return (
    SUBORDINATE.test(joined(items, Math.max(0, verb - 8), verb)) && MAIN.test(joined(items, i + 1, i + 3))
  );
}
const SUBORDINATE =
  /^(?:(?:and|so) )?(?:if|when|whenever|once|whatever|contrary to|despite|no matter|even if|although|though)\b/;
/** How the main clause begins. */
const MAIN =
  /^(?:take|use|open|try|choose|pick|have|go|give|put|remember|remind|answer|say|you|we|the|an?|it|there|this|that|our|your|size|usp|\d\S*)\b/;
