/** What another did, said or wrote, as who marks, checks or answers it tells it. */
import { finds, firstMatch } from '../../notes/patterns.ts';
import type { Reading } from '../constructions/model.ts';
import { lineAt } from '../text/lines.ts';
import type { Scene } from '../text/scene.ts';

/** "a (18 wider than 20) 1; b (20 wider than 18) 0": an answer, with what it earns right behind it. */
export function earnsNothing({ passage, sentence, items }: Scene, { at }: Reading): boolean {
  const from = items[at]?.end ?? sentence.end;
  return NOTHING_EARNED.test(passage.text.slice(from, Math.min(from + 80, sentence.end + 2)));
}
const NOTHING_EARNED = /^[^;.()]{0,60}\)\s*[=:–-]?\s*(?:0|no (?:marks?|points?))\s*(?:[;,.]|$)/;

/** "Candidate 5. Explained that …", "b) Student: …": whatever a learner did and said, as who marks it tells it. */
export function assessed({ passage, sentence }: Scene): boolean {
  const { start } = lineAt(passage, sentence.start);
  const line = passage.text.slice(start, start + 40);
  if (finds(ASSESSED, line)) return true;
  if (finds(CARD, line)) {
    const { end } = lineAt(passage, sentence.start);
    return /\[[^\]\n]{1,80}\]\s*$/.test(passage.text.slice(Math.max(start, end - 90), end));
  }
  const label = firstMatch(LEARNER, line)?.[0].length;
  if (label === undefined) return false;
  // "Student: Is it? Tutor: It is.": another has the word by then.
  return !SPEAKER.test(passage.text.slice(start + label, Math.min(sentence.end, start + LONGEST_TURN)));
}
const ASSESSED =
  /^\W{0,4}(?:candidate|student|trainee|learner|pupil|examinee|resident) (?:no\.? ?)?(?:\d{1,3}|[A-Z])\s?[.:)–—-]/i;
/** "*the 6 of the sheath is its outer diameter* [inner!!]": put right in brackets right behind; "(11/5: other way)". */
export function bracketed({ items, passage, sentence }: Scene, { at }: Reading): boolean {
  const from = items[at]?.end ?? sentence.end;
  return finds(BRACKETED, passage.text.slice(from, Math.min(from + 120, sentence.end + 30)));
}
const BRACKETED =
  /^[^[\]\n]{0,90}\[\s?(?:no|nope|wrong|sic|inner|outer|inside|outside|wider|narrower|thicker|thinner|larger|bigger|smaller|rises|falls|(?:the )?other way(?: round)?|(?:the )?reverse)\W{0,3}\]|^[^()\n]{0,90}\((?:[^()\n]{0,28}[:.,;] ?)?(?:(?:the )?other way\b|wrong\b|not (?:true|so)\b|(?:it|that)(?:['’]s| is) not\b|it isn['’]t\b|[IO]D!|(?:inner|outer|inside|outside)!|sic\))/i;

/** A mail in a block quotation, "> From: …": its words are another's, there to be checked or answered. */
export function mailed({ note, passage }: Scene): boolean {
  if (passage.quote === 0) return false;
  for (let back = 0; back <= MAIL; back++) {
    const above = note.passages[passage.index - back];
    if (!above || above.quote === 0) return false;
    if (/^\W{0,3}from\W{0,3}:/i.test(above.text.slice(0, 12))) return true;
  }
  return false;
}
/** Passages of a mail that are looked through for its head. */
const MAIL = 12;

/** "Card 5. so 9 Fr is 6 mm [3]": a question from the floor, with the answer in brackets. */
const CARD = /^\W{0,4}(?:card|slip|question|q|query) ?\d{1,2}\s?[.:)–—-]/i;
const LEARNER =
  /^\W{0,4}(?:[a-z0-9]{1,2}[).]\W{0,4})?(?:the |a |one |another )?(?:candidate|student|trainee|learner|pupil|class|room|group|back row)(?:['’]?s['’]? (?:own |first )?(?:order|row|answer|version|list|attempt|line|guess)(?: \([^)\n]{1,24}\))?)?\W{0,3}:/i;
const SPEAKER = /\p{Lu}\p{L}+\W{0,2}:/u;
/** No turn of talk is looked through for the next speaker further than so many characters. */
const LONGEST_TURN = 300;
