/** How the author stands to a claim: decided clause by clause around the item that carries it. */

import { finds } from '../../notes/patterns.ts';
import { compound } from '../compound.ts';
import type { Reading } from '../constructions/model.ts';
import { onceSaid } from '../corrections/errata.ts';
import type { Stance } from '../model.ts';
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import type { Scene } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import { asksInTalk } from '../text/talk.ts';
import { setsTask } from '../text/tasks.ts';
import { asksTruth, headsTruth } from '../text/truth-keys.ts';
import { type Keyed, keyOf } from '../truth.ts';
import { NEGATIONS } from '../words/changes.ts';
import {
  MISTAKE_WORDS,
  REJECTING_OPENINGS,
  REJECTIONS,
  REPORTED_SPEAKERS,
  REPORTING_VERBS,
  TEACHING_VERBS,
} from '../words/frames.ts';
import { affirmed } from './affirmed.ts';
import { announced, deniedMistake } from './announced.ts';
import { assessed, bracketed, earnsNothing, mailed } from './assessed.ts';
import { conditional } from './conditional.ts';
import { hedged, negated } from './denial.ts';
import { arrowed, disputed, endorsed, framed, graded, oddOneOut, onlyOne, turnedBack } from './framing.ts';
import { hearsay } from './hearsay.ts';
import { outOfUse, toGo } from './mending.ts';
import { ofTheirMistake, saidElsewhere } from './others.ts';
import { ownWords, speaksAgain } from './own-words.ts';
import { outgrown, retold } from './retold.ts';
import { leftOpen, leftUnticked, unearned } from './set-out.ts';
import { tallied } from './tallied.ts';
import { toSort } from './to-sort.ts';
import { named, packed, unreal } from './unreal.ts';

export function stanceOf(scene: Scene, reading: Reading): Stance {
  const keyed = keyOf(scene);
  if (keyed) return underKey(scene, reading, keyed);
  if (scene.erratum)
    return scene.erratum === 'holds' &&
      scene.sentence.close !== '?' &&
      !mended(scene, reading) &&
      !onceSaid(scene.items, Math.min(reading.at, reading.from))
      ? ((reading.own ? undefined : deniedIn(scene, reading)) ?? 'asserted')
      : 'quoted';
  if (scene.reported || struck(scene, reading) || (quoted(scene, reading) && !affirmed(scene)))
    return 'quoted';
  if (scene.option || leftUnticked(scene, reading)) return 'option';
  if (!reading.answered && (asked(scene, reading) || unkeyed(scene) || toSort(scene, reading)))
    return 'asked';
  const frame = framed(scene, reading);
  if (frame)
    return rejected(scene) || announced(scene)
      ? 'quoted'
      : frame === 'denied'
        ? whole(scene, reading)
        : frame;
  const held = endorsed(scene, reading) || affirmed(scene);
  if (
    (!held && graded(scene)) ||
    disputed(scene) ||
    arrowed(scene) ||
    turnedBack(scene, reading) ||
    onlyOne(scene) ||
    oddOneOut(scene)
  )
    return 'quoted';
  if (toldOf(scene, reading)) return 'quoted';
  if (
    rejected(scene) ||
    retold(scene) ||
    outgrown(scene, reading) ||
    outOfUse(scene, reading) ||
    mistake(scene, reading)
  )
    return 'quoted';
  if (!held && reported(scene, reading) && !(named(reading.claim) && packed(scene, reading))) return 'quoted';
  if (!held && (hearsay(scene, reading) || saidElsewhere(scene, reading) || ofTheirMistake(scene)))
    return 'quoted';
  if (
    !named(reading.claim) &&
    !reading.unconditional &&
    !generalRule(scene, reading) &&
    !(reading.claim.kind === 'order' && linedUp(scene.items)) &&
    conditional(scene, reading)
  )
    return 'hypothetical';
  if (named(reading.claim)) return unreal(scene, reading) ? 'hedged' : 'asserted';
  return (
    (reading.own ? undefined : negated(scene, reading)) ??
    (hedged(scene, reading) ? 'hedged' : reading.denied ? 'denied' : 'asserted')
  );
}

/** "A 2-0 is no finer than a 4-0. True.": the statement may deny, and its key says whether that holds. */
function underKey(scene: Scene, reading: Reading, keyed: Keyed): Stance {
  const own = (reading.own ? undefined : negated(scene, reading)) ?? (reading.denied ? 'denied' : undefined);
  if (keyed === 'true') return own ?? 'asserted';
  return own === 'denied' ? 'asserted' : (own ?? whole(scene, reading));
}

/** 'for "nylon is absorbed" read "nylon is not absorbed"': what holds may deny. */
const deniedIn = (scene: Scene, reading: Reading): Stance | undefined =>
  negated(scene, reading) === 'denied' ? 'denied' : undefined;

/** What another did or wrote, what a page loses, how many said what. */
const toldOf = (scene: Scene, reading: Reading): boolean =>
  assessed(scene) ||
  unearned(scene) ||
  mailed(scene) ||
  earnsNothing(scene, reading) ||
  bracketed(scene, reading) ||
  toGo(scene) ||
  tallied(scene);

/** A denial of the whole sentence reaches a claim that is all it says. */
const whole = ({ items }: Scene, { claim }: Reading): Stance =>
  compound(items, claim.kind) || (claim.kind === 'colour' && items.some(({ word }) => ALWAYS.test(word)))
    ? 'hedged'
    : 'denied';
/** "Pink is always 20 G": false because there are other things that are pink. */
const ALWAYS = /^(?:always|necessarily|invariably|only|any|every|all)$/;

/** "If the number is higher the needle is thinner": the condition is part of the rule. */
const generalRule = (scene: Scene, { claim }: Reading): boolean =>
  claim.kind === 'direction' &&
  !scene.items.some((item) => /^(?:suppose|supposing|imagine|pretend|were|would|worked)$/.test(item.word));

/** "If you line up the four from finest to thickest you get …": the row is the outcome. */
const linedUp = (items: readonly Item[]): boolean =>
  /^(?:(?:and|so) )?(?:if|when|once) (?:you|we|i) (?:line|put|lay|set|arrange|sort|rank|write|order|place|count|read|go|stack|hang)\b(?!.*\b(?:would|wouldn't|wrong|mix|mixed)\b)/.test(
    joined(items),
  );

/** A statement to be called true or false whose key stands nowhere. */
const unkeyed = (scene: Scene) =>
  (scene.truthItem && (!scene.passage.cell || asksTruth(scene.passage) || headsTruth(scene.headings))) ||
  leftOpen(scene);

function struck(scene: Scene, { at, from, to }: Reading): boolean {
  const inside = (item: Item | undefined) =>
    item !== undefined &&
    scene.passage.marks.some(
      (mark) => mark.kind === 'strike' && mark.start <= item.start && item.end <= mark.end,
    );
  return [at, from, to].some((i) => inside(scene.items[i]));
}

/** 'Replace "thicker" with "thinner" in "…"': the first quotation is what holds, the next what is mended. */
function mended(scene: Scene, { at }: Reading): boolean {
  const own = scene.quotes.filter(([start]) => start >= scene.sentence.start && start < scene.sentence.end);
  const place = scene.items[at]?.start ?? 0;
  return own.slice(1).some(([start, end]) => start < place && place < end);
}

/** Inside a pair of quotation marks of the passage. An unclosed mark quotes nothing (it is an inch mark). */
function quoted(scene: Scene, { claim, at, from }: Reading): boolean {
  const { text } = scene.passage;
  const quoteOf = (item: Item | undefined) =>
    item &&
    scene.quotes.find(([start, end]) => start < item.start && item.end <= end && !ownWords(text, start, end));
  const own = quoteOf(scene.items[at]);
  if (own === undefined) return false;
  // 'a, b, c are "getting thicker from a to c"': the order is somebody's words.
  if (claim.kind === 'order' && own[1] - own[0] > LONG_WORD) return true;
  return quoteOf(scene.items[from]) !== undefined || isClause(text, own) || tookFor(text, own);
}
const LONG_WORD = 18;

/** 'opened because it was "the thinner one"': whole words of who took it so. */
const tookFor = (text: string, [start, end]: readonly [number, number]): boolean =>
  /\b(?:was|were|as|being|been|for|called|considered)\s*$/i.test(
    text.slice(Math.max(0, start - 14), start),
  ) && /^\W*(?:the|an?|one|two|three) [a-z]+ [a-z]+\W*$/i.test(text.slice(start, end));

/** 'took a 5 Fr "because it is finer"': somebody's reason; not 'is "wider" than'. */
const isClause = (text: string, [start, end]: readonly [number, number]): boolean =>
  end - start < 200 &&
  /^\W*(?:(?:because|since|as|it|they|that|so|for)\s+\S+\s+\S|(?:has|have|lies|sits|goes|lasts|dissolves|holds)(?:\s+\S+){4})/i.test(
    text.slice(start, end),
  );

/** The clause ends in a question mark, or opens like a question. A tag ("…, right?") still asks. */
function asked(scene: Scene, { at }: Reading): boolean {
  if (asksInTalk(scene.note, scene.passage) || setsTask(scene.items) || asksInCell(scene)) return true;
  if (afterQ(scene.items, at) || putToVote(scene)) return true;
  if (scene.sentence.close !== '?') return false;
  return scene.items.slice(at).some((item) => item.word === '?');
}

/** "Cutting needle on the aorta. Yes or no." */
const putToVote = ({ after }: Scene): boolean =>
  after[0] !== undefined &&
  after[0].items.length <= 5 &&
  /^(?:yes or no|true or false|right or wrong|agree or (?:not|disagree))\b/.test(joined(after[0].items));

/** "Q silk resorbed – (yes); Q point for palate …": in notes of what was asked and answered. */
function afterQ(items: readonly Item[], at: number): boolean {
  const opens = items.findLastIndex(({ word }, i) => i < at && /^[;:.]$/.test(word)) + 1;
  return items[opens]?.word === 'q' && items[opens + 1]?.kind !== 'punctuation' && opens < at;
}

/** "is silk absorbed", in a row whose other cells answer: no mark of a question is set there. */
const asksInCell = ({ passage, items }: Scene): boolean =>
  passage.cell !== undefined &&
  /^(?:is|are|does|do|can|will|which|what|how|where) (?!(?:is|are)\b)/.test(joined(items, 0, 2)) &&
  items.length > 2;

/** The next sentence says no to this one. */
function rejected(scene: Scene): boolean {
  const next = scene.after[0] ?? scene.next;
  return next !== undefined && (rejects(next) || challenges(scene.items, next));
}

/** "With the edge on the inside." "Inside?", "Sure?": asked back in a word or two, the answer does not stand. */
export function challenges(said: readonly Item[], next: Sentence): boolean {
  const words = next.close === '?' ? spoken(next).filter((word) => !INTERJECTIONS.test(word)) : [];
  if (words.length === 0 || words.length > 3) return false;
  return (
    /^(?:are you )?(?:sure|certain|really)$/.test(words.join(' ')) ||
    (words.length <= 2 && words.every((word) => said.some((item) => item.word === word)))
  );
}

/** Does the sentence say no to what was said before it? */
export const rejects = remembered((sentence: Sentence): boolean => {
  const said = spoken(sentence);
  const words = withoutSigh(said.slice(said.findIndex((word) => !INTERJECTIONS.test(word))));
  const first = words[0];
  if (first === undefined) return false;
  const text = words.slice(0, 8).join(' ');
  if (finds(CALLED_WRONG, text) || finds(REFUSED, text) || finds(ELSEWHERE, text) || text === 'the reverse')
    return true;
  if (words.length < sentence.items.length - 1 && finds(TOO_MUCH, text) && speaks(sentence)) return true;
  if (finds(GIVEN_UP, words.slice(0, 16).join(' ')) || (words.length <= 8 && finds(SWAPPED, text)))
    return true;
  if (finds(PUT_TO_TEST, words.slice(0, 20).join(' '))) return true;
  const opening = REJECTING_OPENINGS.find((one) => text.startsWith(one));
  // "It is not true that …" opens a statement of its own; "It is not." rejects.
  if (opening) return words.length <= opening.split(' ').length + 4 || !/^it\b/.test(opening);
  // "Taper: no edges": none of them.
  if (
    first === 'no' &&
    /^(?:edges?|points?|zeros?|lumen|removal|sizes?|needles?|sutures?)$/.test(words[1] ?? '')
  )
    return false;
  // "Skin: reverse cutting": a needle.
  if (first === 'reverse' && /^cutt/.test(words[1] ?? '')) return false;
  return REJECTIONS.has(first) && (words.length <= 3 || stopsAfterFirst(sentence));
});
/** "Well, it doesn't." */
const INTERJECTIONS = /^(?:well|oh|er|erm|uh|um|hmm?|wait|sorry|but|and|actually|alas|honestly)$/;
/** "Still no.", "Ah, no.": what comes before the word that counts. */
const withoutSigh = (words: string[]): string[] =>
  words.length <= 4 && SIGH.test(words[0] ?? '') && REJECTIONS.has(words[1]!) ? words.slice(1) : words;
const SIGH = /^(?:still|again|ah|um|also|god|sadly|afraid)$/;
/** "Tutor: Too big.": another speaker turns down what the last one would take. */
const TOO_MUCH =
  /^(?:(?:that is|that's|it is|it's) )?(?:(?:much|far|way|a bit|a little|rather|still|slightly|still) )?(?:too \w+|(?:a bit|a little|a touch|rather) \w+)\b/;
const speaks = ({ items }: Sentence): boolean => items[1]?.word === ':' || items[2]?.word === ':';
/** "Somebody swapped them.", "They should be the other way round.", "It should say 18.", "Should have been 4 mm." (the size is no word). */
const SWAPPED =
  /^swap(?: them| these| those| it| the two| round| over)*$|^(?:somebody|someone|they|these|those|the (?:two|colours|numbers|rows|columns|lines))(?: (?:have|has|had|are|were|got|must have))?(?: been)? (?:swapped|mixed|confused|transposed|interchanged|reversed)\b|^(?:it|that|this|they|these) (?:should|ought to) (?:say|read|have (?:said|read)|be the other way)\b|^(?:(?:it|that|this|they|these) )?(?:should|ought to) (?:be|read|say|have (?:been|read|said))$|^make (?:that|it|them)$/;
/** "That is a tidy idea, but it is mistaken." */
const GIVEN_UP =
  /^(?:that|this|it) (?:is|was|sounds|looks|seems) (?:\S+ ){1,8}?(?:but|yet|and) (?:(?:it|that|this) )?(?:is|was|isn't) (?:quite |simply |plainly |also |still )?(?:wrong|false|mistaken|incorrect|untrue|backwards|nonsense|a (?:myth|mistake)|not (?:true|so|right|correct|the case))\b/;
/** "Try it on a 30 G and you are out by double." */
const PUT_TO_TEST =
  /^(?:now )?(?:try|test|check|put) (?:it|that|this|them) (?:out )?(?:on|with|against|for|to|in|beside)\b.*\b(?:fails?|falls? (?:apart|over|down|flat)|breaks? down|collapses?|crumbles?|laugh|(?:is|are|be|you're|it's|it is) (?:\w+ )?(?:out|off|wrong|nowhere|nonsense|lost)|doesn't (?:work|hold)|does not (?:work|hold)|won't (?:work|hold))\b/;
/** "They would not.", "It doesn't." */
const REFUSED =
  /^(?:they|it|that|this|these|those|he|she|we|you) (?:does|do|did|is|are|was|were|would|will|could|can|should|has|had)(?: not|n't)$/;
/** "But yellow is 20!" "On needles, yes." */
const ELSEWHERE = /^(?:on|for|with|in|of|among) (?:\S+ ){1,3}(?:yes|yeah|perhaps|maybe|it is|they are)$/;
/** "That quotation is wrong." */
const CALLED_WRONG =
  /^(?:that|this|the) (?:last |whole )?(?:quotation|quote|sentence|statement|line|claim|answer|rule|table|list|chart|poster|website|site|page|book|slide|card) is (?:wrong|false|incorrect|mistaken|untrue|not (?:true|right|correct)|a (?:myth|mistake))\b|^(?:that|this|it) is (?:mistaken|untrue|incorrect)\b|^(?:both|all|all three)(?: of (?:them|these|those|it))?(?: (?:words?|statements?|sentences?|answers?|claims?|things))?(?: (?:is|are|was|were))? (?:wrong|false|incorrect|mistaken|untrue)\b|^(?:neither|none)(?: of (?:them|these|those|it))?(?: (?:words?|statements?|sentences?|answers?|claims?|things))? (?:is|are|was|were) (?:right|true|correct|so)\b|^(?:they|these|those) (?:should|ought to) (?:be|have been|read)(?: (?:and|not|respectively|the other way)\b|$)|^(?:how many|which|where are the|find the|what are the) (?:errors|mistakes|slips)\b|^no (?:it|that|they|this|he|she) (?:is|are|does|do|was|did)(?: not|n't)\b/;

/** "No, …", "Wrong: …": a mark right after the first spoken word. */
function stopsAfterFirst({ items }: Sentence): boolean {
  const first = items.findIndex((item, i) => item.kind === 'word' && REJECTIONS.has(item.word) && i <= 3);
  const mark = items[first + 1];
  // A full stop inside the sentence is that of "No. 15".
  return first >= 0 && mark?.kind === 'punctuation' && (mark.word !== '.' || first + 2 >= items.length);
}

/** Words of a sentence without a speaker's name in front. */
function spoken(sentence: Sentence): string[] {
  const items = sentence.items;
  // "No: 5 Fr is the thicker tube." has no speaker.
  if (items[1]?.word === ':' && REJECTIONS.has(items[0]!.word)) return wordsOf(items);
  const colon = items[1]?.word === ':' ? 2 : items[2]?.word === ':' ? 3 : 0;
  return wordsOf(items.slice(colon));
}
const wordsOf = (items: readonly Item[]): string[] =>
  items.filter((item) => item.kind === 'word').map((item) => item.word);

/** A word for a mistake before the claim or soon after it, or opening the sentence before. */
function mistake(scene: Scene, reading: Reading): boolean {
  const last = Math.max(reading.to, reading.at);
  const here =
    holds(scene.items, MISTAKEN) &&
    scene.items.some(
      (item, i) =>
        (MISTAKE_WORDS.has(item.word) || slips(scene.items, i)) &&
        (i <= last + 9 || ofWhich(scene.items, i)) &&
        !deniedMistake(scene.items, i) &&
        !goesWrong(scene.items, i) &&
        !runsWrong(scene.items, i) &&
        !consequence(scene.items, i, reading),
    );
  return here || exercise(scene, reading) || announced(scene) || finds(NOT_TRUE, joined(scene.items, 0, 8));
}
/** "…, both of which are mistaken", however much was said. */
const ofWhich = (items: readonly Item[], i: number): boolean =>
  /\b(?:both|all|each|none|neither|either) of which (?:is|are|was|were)(?: \w+)?$/.test(
    joined(items, i - 6, i),
  );
/** "Not true at any point: …", "known issue: …", "fixed: …" in a list of changes. */
const NOT_TRUE =
  /^(?:not|never) (?:true|right|correct)\b[^:]{0,30}:|^(?:(?:also|and) )?(?:fixed|solved|known|closed|reported) (?:known )?(?:issues?|bugs?|defects?|regressions?)\b|^(?:fixed|regressions?|issues?|bugs?) :/;

const SLIPS = /^(?:slips?|faults?)$/;
const MISTAKEN = cue(MISTAKE_WORDS, SLIPS);

/** "Common slips were …"; a wire that slips is none. */
const slips = (items: readonly Item[], i: number): boolean =>
  SLIPS.test(items[i]!.word) &&
  /^(?:common|commonest|usual|typical|frequent|classic|worst|favourite|favorite|other|another|first|this|these)$/.test(
    items[i - 1]?.word ?? '',
  );

/** "Correct the sentence: …": what follows the colon is there to be mended. */
function exercise(scene: Scene, { from, at }: Reading): boolean {
  const first = Math.min(from, at);
  const last = scene.items.slice(0, first).findLastIndex((item) => item.word === ':');
  if (finds(SET_TO_MEND, joined(scene.items, last - 8, last))) return true;
  const colon = scene.items.findIndex((item) => item.word === ':');
  if (colon < 2 || colon > 7 || first < colon) return false;
  const lead = scene.items.slice(0, colon).map((item) => item.word);
  if (/^(?:put right|unscramble|unjumble)\b/.test(lead.join(' '))) return true;
  return (
    EXERCISES.has(lead[0]!) &&
    lead.some((word) => /^(?:sentence|statement|line|claim|note|entry|text)s?$/.test(word))
  );
}
/** Behind any opening: "Now, correct the sentence: …". */
const SET_TO_MEND =
  /\b(?:correct|fix|mend|repair|rewrite|amend|improve|discuss) (?:the|this|these|that|those|each|every|a|one) (?:(?!correct\b)\S+ )?(?:sentence|statement|line|claim|note|entry|text)s?$/;
const EXERCISES = new Set(['correct', 'fix', 'mend', 'repair', 'rewrite', 'amend', 'improve', 'discuss']);

/** "Remember this, because it is the first thing that goes wrong: …": what is to be remembered follows. */
const goesWrong = (items: readonly Item[], i: number) =>
  items[i]!.word === 'wrong' &&
  /^(?:remember|learn|note|keep|know|mind)$/.test(items[0]!.word) &&
  /^(?:goes|go|gets|get)$/.test(items[i - 1]?.word ?? '') &&
  items[i + 1]?.word === ':';

/** "gauge runs the wrong way round": said of the scale. */
const runsWrong = (items: readonly Item[], i: number) =>
  items[i]!.word === 'wrong' &&
  items[i + 1]?.word === 'way' &&
  /^(?:runs?|goes|go|counts?|works?)$/.test(items[i - 2]?.word ?? '');

/** "pick the wrong needle", "the wrong box": an attribute of a thing, not a judgement of the statement. */
const consequence = (items: readonly Item[], i: number, reading: Reading) => {
  const next = items[i + 1];
  return (
    (items[i]!.word === 'wrong' &&
      (PLACES.test(next?.word ?? '') ||
        ((next?.deviceNoun === true || next?.kind === 'size') && i > reading.to))) ||
    (/^(?:mistakes?|errors?|confusion|mix-ups?|mixups?|blunders?)$/.test(items[i]!.word) &&
      (AVOIDED.test(joined(items, i - 4, i)) || COSTS.test(joined(items, i + 1, i + 4))))
  );
};
const PLACES =
  /^(?:box|boxes|drawer|drawers|shelf|tray|trays|packet|packets|pack|bag|trolley|cupboard|door|room|bed|patient|arm|leg|hand|day|time|ward|tin|bin|hook|rack)$/;
/** "to avoid mistakes", "so that no error slips in", "an error here costs a vein". */
const AVOIDED =
  /\b(?:avoid|avoids|avoiding|prevent|prevents|preventing|against|save you from|spare you)(?: (?:any|all|such|this|the|a|an|common|silly|this kind of))*$/;
const COSTS = /^(?:here |there |with it )?(?:costs?|loses|matters?|is expensive|is costly|hurts?)\b/;

/** "Students often say …", "the old handout said …": reported before the claim, in the same clause group. */
function reported(scene: Scene, { claim, from, at }: Reading): boolean {
  // A rule takes in its whole sentence, the one who says it as well.
  const last = /^(?:formula|direction)$/.test(claim.kind) ? Math.max(at, from) : from;
  const before = scene.items.slice(0, last + 1);
  const verb = before.findLastIndex((item) => REPORTING_VERBS.has(item.word));
  if (verb < 0 || ordered(before, verb) || ENDORSED.has(before[verb - 1]?.word ?? '')) return false;
  const believes = BELIEVES.test(before[verb]!.word);
  const subject = before
    .slice(0, verb)
    .some(({ word }) => REPORTED_SPEAKERS.has(word) || (believes && /^(?:they|he|she)$/.test(word)));
  const forbidding =
    TEACHING_VERBS.has(before[verb]!.word) &&
    before.slice(Math.max(0, verb - 2), verb).some((item) => NEGATIONS.has(item.word));
  return (subject && !speaksAgain(scene.items.slice(0, at + 1), verb)) || forbidding;
}

/** "You are told to put in two", "those who think in inches", "I want you to say", "so write it in:": an order, not a report. */
const ordered = (items: readonly Item[], verb: number): boolean =>
  (items[verb]!.word === 'told' && items[verb + 1]?.word === 'to') ||
  /^thinks? in (?:inch|mm|millimet|cm|centimet|metric|imperial)/.test(joined(items, verb, verb + 3)) ||
  /^(?:want|expect|need|like) you to$/.test(joined(items, verb - 3, verb)) ||
  (/^(?:write|read|say|print|tell|imagine|use|show)$/.test(items[verb]!.word) &&
    /^(?:so|please|then|,|:|;|must|should)$/.test(items[verb - 1]?.word ?? '') &&
    !NEGATIONS.has(items[verb - 2]?.word ?? ''));

/** What is in somebody's head: "they see the number go up and think it is getting bigger". */
const BELIEVES =
  /^(?:thinks?|thought|believes?|believed|assumes?|assumed|imagines?|guess(?:es|ed)?|reckons?|reckoned)$/;

/** "The poster rightly says": the author stands behind what is reported. */
const ENDORSED = new Set(['rightly', 'correctly', 'truly', 'truthfully']);
