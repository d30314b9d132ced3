/**
 * Openings that settle a whole statement: "it is not true that …" denies it, "there is no doubt that …", "nobody denies that
 * …" assert it.
 */

import type { Passage } from '../../notes/model.ts';
import { finds, firstMatch } from '../../notes/patterns.ts';
import type { Reading } from '../constructions/model.ts';
import type { Stance } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { lineAt } from '../text/lines.ts';
import { remembered } from '../text/remember.ts';
import { keysIn, type Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';

const DENIES =
  /^(?:nobody|no one|none of us) (?:would|could|will) (?:ever |seriously )?(?:call|say|claim)(?: that)?$|^(?:and |but |so )?(?:it is|it's|it isn't|that is) (?:simply |just |quite )?(?:not true|not the case|not correct|not right|untrue|false|wrong|incorrect|nonsense|a mistake|an error)(?: to (?:say|think|believe|claim|teach|write|suppose))? that$|^(?:it isn't|it is not) (?:true|right|correct|so) that$/;
const ASSERTS =
  /^(?:and |but |so )?(?:there is|there's|there can be) no (?:doubt|question|denying|dispute|argument)(?: (?:about it|at all))?,? that$|^(?:nobody|no one|none of us|you cannot|you can't|we cannot|one cannot|no one here|nobody here) (?:can |could |would |will )?(?:doubts?|den(?:y|ies)|disputes?|questions?|argues with) (?:it )?(?:that)?$|^(?:it is|it's) (?:not|no) (?:untrue|false|wrong|incorrect|a mistake|mistake|myth|a myth)(?: to say)? that$|^(?:never|don't|do not) forget that$/;

/** To deny that something is always so is not to deny it. */
const UNIVERSAL = /^(?:always|necessarily|invariably|every|all|any|only|just)$/;

/** The stance an opening gives, or undefined where there is none. */
export function framed(scene: Scene, reading: Reading): Stance | undefined {
  const { items } = scene;
  let start = Math.min(reading.from, reading.at);
  while (start > 0 && /^(?:an?|the|our|your|with|in|as)$/.test(items[start - 1]!.word)) start--;
  if (start < 3 || start > 12) return undefined;
  const opening = joined(items, 0, start);
  const denies = DENIES.test(opening);
  if (!denies && !ASSERTS.test(opening)) return undefined;
  const inner = items
    .slice(start, reading.at)
    .some((item) => NEGATIONS.has(item.word) || UNIVERSAL.test(item.word));
  if (inner && !reading.own) return 'hedged';
  return denies === (reading.denied === true) ? 'asserted' : 'denied';
}

/** No line with what it earns is longer. */
const LONGEST = 300;

/** "0 marks: says …", "Called it green: no points": an answer of a learner, with what it earns. */
export function graded({ passage, sentence }: Scene): boolean {
  const { start, end } = lineAt(passage, sentence.start);
  const last = Math.min(end, sentence.end + 24);
  if (last - start >= LONGEST) return false;
  const line = passage.text.slice(start, last);
  return (
    finds(/^\W{0,3}(?:\d|no|half a?|full) (?:marks?|points?)\W/i, line) ||
    /[:–—-]\s*(?:\d|no) (?:marks?|points?)\W*$/i.test(line)
  );
}

/**
 * "Full marks for the candidate who explained that …", "some said …, which is correct": somebody else's words, which the
 * author holds to be right.
 */
export function endorsed({ items }: Scene, { at, to }: Reading): boolean {
  if (items.some((item) => finds(OF_TWO_MINDS, item.word))) return false;
  const earned = firstMatch(EARNED, joined(items, 0, at));
  return (
    (earned !== null && (earned[1]!.match(SAYING) ?? []).length === 1) ||
    finds(HELD_RIGHT, joined(items, Math.max(at, to) + 1)) ||
    finds(AND_THEY_DO, joined(items, Math.max(at, to) + 1)) ||
    finds(AND_RIGHTLY, joined(items, 0, at))
  );
}
const EARNED =
  /^(?:(?:full|one|a|1|two|2|top|extra|bonus) (?:marks?|points?|credit)|credit|i (?:gave|give) (?:the|a|full|one) (?:marks?|points?)|(?:marks?|points?) (?:given|awarded)) (?:also |too |only )?(?:for|to|if)( .*)/;
const SAYING =
  /\b(?:explain(?:s|ed|ing)|said|says?|saying|stat(?:es|ed|ing)|knew|knows|knowing|told|telling|not(?:ed|es|ing)|answered|answering|adds?|added|adding|remember(?:s|ed|ing)|point(?:s|ed|ing) out) (?:\S+ )?(?:that )?/g;
const HELD_RIGHT =
  /^(?:[^,;.]{0,60} )?(?:,|and|, and) (?:which|that|this|they|she|he) (?:is|was|are|were|i \w+ (?:because|as|since) (?:it|that) (?:is|was)) (?:also |quite |perfectly |of course |both )?(?:correct|right|true)(?= [.,;!)]|$| on | here| and )/;
/** "People think that … have the same width, and they do", "many say …, and they are right, it is thicker than …", "…, and I agree". */
const AND_THEY_DO =
  /^(?:[^,;.]{0,40} )?, and (?:(?:they|it|so they|so it) (?:do|does|are|is)|(?:i|we) (?:(?:quite|fully|also) )?agree)(?= [.,;!:]|$)/;
const AND_RIGHTLY =
  /^(?:\S+ ){0,3}?(?:people|many|most|some|they|students|nurses|trainees) (?:think|say|believe|hold|feel|find) [^.;]* , and they (?:are|'re) (?:quite |perfectly )?(?:right|correct) [,:] /;
const OF_TWO_MINDS =
  /^(?:not|no|never|notic(?:ed|es|ing)|spott(?:ed|ing)|spots|seeing|saw|finding|found|correcting|corrected|challeng(?:ed|ing)|question(?:ed|ing)|wrong|wrongly|mistaken|mistakenly|mistake|but|however|though|although|lost|deducted|half|whether|which\?|incorrect|incorrectly|nobody|none)$/;

/** "24 G is wider than 22 G. → 24 G is narrower than 22 G.": the arrow leads to the same sizes, said right. */
export function arrowed({ items, after: [next] }: Scene): boolean {
  if (!ARROW.test(next?.items[0]?.word ?? '')) return false;
  const own = new Set(keysIn(items));
  return keysIn(next!.items).some((size) => own.has(size));
}
const ARROW = /^(?:→|⇒|➜|➔|->|=>)$/;

/** "2-0 is two sizes thicker than 0." "It is one size thinner.": a short reply turns the word round. */
export function turnedBack({ items, after, next: following }: Scene, { at }: Reading): boolean {
  const next = after[0] ?? following;
  const said = items[at]?.magnitude;
  if (!said || !next || next.items.length > 8 || keysIn(next.items).length > 0) return false;
  if (!/^(?:it|they|no|actually)(?:'s)?$/.test(next.items[0]?.word ?? '')) return false;
  const words = next.items.flatMap(({ magnitude }) => (magnitude ? [magnitude] : []));
  const [word] = words;
  return (
    words.length === 1 &&
    word!.degree === 'comparative' &&
    said.degree === 'comparative' &&
    word!.axis === said.axis &&
    word!.sign !== said.sign
  );
}

/** "Ben is right.": two people said two things, and only one of them holds. */
export const disputed = (scene: Scene): boolean =>
  speaks(scene.items) && (settles(scene) || contested(scene));

/** "Gus: 8 Fr is 2.7 mm. Hal: 8 Fr is 24 mm.": two people on one line, each with a measure of the same size. */
function contested({ items, before, after, passage, sentence }: Scene): boolean {
  const own = keysIn(items)[0];
  const line = own === undefined ? undefined : lineAt(passage, sentence.start);
  return [before.at(-1), after[0]].some(
    (other) =>
      line !== undefined &&
      other !== undefined &&
      other.start >= line.start &&
      other.end <= line.end &&
      named(items) &&
      named(other.items) &&
      items[0]!.word !== other.items[0]!.word &&
      keysIn(other.items)[0] === own,
  );
}
const named = ([who, colon]: readonly Item[]): boolean =>
  who?.capital === true && who.kind === 'word' && !who.deviceNoun && !who.colour && colon?.word === ':';

/** "Ann says", "Ben thinks", "Ann:". */
const speaks = (items: readonly Item[]): boolean =>
  items[0]?.capital === true && (SAYS.test(items[1]?.word ?? '') || SAYS.test(items[2]?.word ?? ''));
const SAYS = /^(?:says?|said|thinks?|thought|:|insists?|claims?|reckons?|writes?|wrote|puts?)$/;

function settles({ after, next }: Scene): boolean {
  const following = [...after, ...(next ? [next] : [])];
  return following.some(({ items }) => {
    const [who, verb, how, ...rest] = items[0]?.word === 'only' ? items.slice(1) : items;
    if (who?.capital !== true) return false;
    if (verb?.word === 'wins' && (how ? 1 : 0) + rest.length <= 1) return true;
    // "Dora is.", "Neither.": said of the two who spoke.
    if (/^(?:neither|both|none)$/.test(who.word) && rest.length <= 12) return true;
    if (/^(?:is|was)$/.test(verb?.word ?? '') && !IMPERSONAL.test(who.word) && (!how || how.word === '.'))
      return true;
    const right = /^(?:is|was)$/.test(verb?.word ?? '') && /^(?:right|correct)$/.test(how?.word ?? '');
    return right && !IMPERSONAL.test(who.word) && rest.length <= 2;
  });
}
const IMPERSONAL = /^(?:it|that|this|which|what|all|each|nothing)$/;

/** "Only II is true." below several statements, "Right or wrong?" below one: they are there to be found out. */
export function onlyOne({ note, passage, sentence }: Scene): boolean {
  const { index, text } = passage;
  if (text.length > 1200) return false;
  if (finds(ONLY, text.slice(sentence.end))) return true;
  const next = note.passages[index + 1];
  // As a heading it opens what comes below.
  if (next && next.kind !== 'heading' && asksToJudge(next)) return true;
  for (let at = index + 1; at <= index + 3 && at < note.passages.length; at++)
    if (opensWithOnly(note.passages[at]!)) return true;
  return false;
}
const asksToJudge = remembered((passage: Passage) =>
  finds(
    /^\W*(?:right or wrong|true or false|t or f|yes or no|agree or disagree)\s*\?/i,
    passage.text.slice(0, 40),
  ),
);
const opensWithOnly = remembered((passage: Passage) => finds(ONLY, passage.text.slice(0, 60)));
const ONLY =
  /(?:^|\n|[.!]\s)\W*only (?:i{1,3}|iv|\d|[a-f]|the (?:first|second|third|fourth|last)|(?:statement|number) \w+)(?: and \w+)? (?:is|are|holds?|was) ?(?:true|right|correct)?\s*[.\n]?/i;

/** "Circle the odd one out: 14 G orange, 18 G pink": one of them is wrong, and is there to be found. */
export const oddOneOut = ({ items, before }: Scene): boolean =>
  seeksOdd(items) || seeksOdd(before.at(-1)?.items ?? []);
const seeksOdd = (items: readonly Item[]): boolean => {
  const at = items.findIndex(
    (item) => item.word === 'odd' || item.word === 'match' || item.word === 'belong',
  );
  if (at < 0) return false;
  const words = joined(items, 0, at + 3);
  return /\bodd (?:one|pair|man) out\b|^(?:\W*\d* ?\W*)which\b.{0,40}\b(?:not|doesn't|don't) (?:match|belong)\b/.test(
    words,
  );
};
