/**
 * "More 16s please" on a board, "gave him an 18 this time" in a letter, "the spare 12 goes with her" in a list: a message that
 * says a size and never of what.
 */
import type { Passage, Span } from '../../notes/model.ts';
import type { Mention } from '../model.ts';
import { within } from '../scene.ts';
import { factsOf } from '../sense/note-facts.ts';
import type { Place } from '../sense/place.ts';
import type { Verdict } from '../sense/verdict.ts';
import { counts, LABELLED } from '../words/counted.ts';
import { openSystem, whichSystem } from './ask.ts';
import { type Board, mentionsIn } from './board.ts';
import { ofSupplies, SIZE_TALK } from './supply.ts';
import type { Bare } from './tokens.ts';

/** How far a message reaches on either side of its number. */
const REACH = 160;

/** Where messages stand, and how they come. */
const MEDIUM =
  /\b(?:boards?|whiteboard|blackboard|cards?|notes?|lists?|letters?|messages?|texts?|emails?|e-mails?|stickers?|labels?|slips?|sheets?|lines?|charts?|voicemails?|post-its?|logs?|diary|entry|entries|forms?|orders?|tags?|handovers?|pagers?|bleeps?|pinned|stuck|taped|scribbled|scrawled|wrote|written|writes|reads?|says?|said|shouts?|shouted|called|yelled|rang|phoned|texted|messaged|bleeped|asks?|asked|through the door)\b[^.!?"“”]{0,48}$/i;

/** "The card says: keep a 16 here." */
const ANNOUNCED =
  /\b(?:board|whiteboard|card|note|list|letter|message|text|email|sticker|label|slip|sheet|voicemail|diary|entry|form|tag)\b[^.!?:"“”]{0,40}\b(?:says?|said|reads?|saying):\s$/i;

/** The text of the message around a number: what stands in quotation marks, or behind the colon of an announcement. */
function messageOf({ scene, span, sentence, before, after }: Place): Span | undefined {
  const { text } = scene.passage;
  const from = Math.max(0, span.start - REACH);
  const left = text.slice(from, span.start);
  const open = opening(left);
  if (open >= 0) {
    const close = text.slice(span.end, span.end + REACH).search(/["”]/);
    const lead = left.slice(0, open);
    return close >= 0 && (MEDIUM.test(lead) || /^\W*(?:[A-Z]\w{0,14}:\W*)?$/.test(text.slice(0, from) + lead))
      ? { start: from + open + 1, end: span.end + close }
      : undefined;
  }
  const colon = before.lastIndexOf(': ');
  if (colon >= 0 && ANNOUNCED.test(before.slice(0, colon + 2)) && !/["“”]/.test(before + after))
    return { start: sentence.start + colon + 2, end: sentence.end };
  return undefined;
}

/** Longer lines of a list explain something. */
const JOTTING = 80;

/** "- size 8, the long one": a short line of a list, as on a scrap of paper. */
const isJotting = ({ list, text }: Passage): boolean =>
  list !== undefined &&
  text.length <= JOTTING &&
  !/[?"“”=]/.test(text) &&
  (ofSupplies(text) || /\bsize [5-9]\b/i.test(text));

/** Where the quotation begins that is still open at the end; -1 when none is. */
function opening(left: string): number {
  const curly = left.lastIndexOf('“');
  if (curly >= 0) return left.lastIndexOf('”') > curly ? -1 : curly;
  let open = -1;
  for (let at = left.indexOf('"'); at >= 0; at = left.indexOf('"', at + 1)) {
    if (open >= 0) open = -1;
    else if (!/[0-9]/.test(left.charAt(at - 1))) open = at;
  }
  return open;
}

/** One of them, with an article or the like. */
const ONE =
  /(?:^|[\s(])(?:an?|another|one|the|size|new|old|long|short|last|its|their|our|spare|second|first|more|out of|no|any|some|of|for|needs?|needed|wants?|wanted|changed to|swapped for)\s$/i;
const ONE_AFTER =
  /^s?(?:$|[,.;!?)]|\s(?:in|out|on|at|wanted|needed|please|quick|quickly|long|short|blocked|again|this|next|last|here|there|for|then|now|today|tomorrow|tonight|round|over|up|down|back|and|placed|removed|changed|leaking|gone|goes|not|looks|needs|missing|without|to|with|from|before|after|as|by|if|when|ready|put|went|came|will|would|should|did|is|was)\b)/i;
/** The number opens the message or a part of it. */
const OPENS = /(?:^|[,;:]\s)(?:and\s)?$/;
const OPENS_AFTER =
  /^s?(?:\s(?:wanted|needed|please|long|short|blocked|missing|leaking|placed|removed|changed|left side|right side|in (?:the )?(?:left|right)|(?:in|out)(?=[,;.!]|$|\s(?:mon|tues|wednes|thurs|fri|satur|sun)day|\sagain|\stonight|\stomorrow))\b|,\s(?:please|quick|urgent|one|now|asap)\b)/i;

/** A date, an age, a score, a page: what else may stand so in a message. */
const ELSE_BEFORE =
  /(?:\b(?:on|by|until|till|since|from|before|after) the|\bI['’]m|\b(?:is|am|are|aged?|turned|turns|at|bed|room|bay|until|till|by|page|number|no\.?|line|part)|[0-9]\s(?:out\s)?of|\b(?:is|are|was)(?:\s(?:always|never|usually|often))?\san?)\s$/i;
const ELSE_AFTER =
  /^(?:st|nd|rd|th)\b|^\s(?:out of|of (?:them|us|january|february|march|april|may|june|july|august|september|october|november|december)|january|february|march|april|june|july|august|september|october|november|december|in (?:all|total|today))\b/i;

const stands = (before: string, after: string): boolean =>
  !ELSE_BEFORE.test(before) &&
  !ELSE_AFTER.test(after) &&
  !LABELLED.test(before.replace(/\b(?:out of|box of)\s$/i, '')) &&
  ((ONE.test(before) && ONE_AFTER.test(after)) || (OPENS.test(before) && OPENS_AFTER.test(after)));

/** Asked where nothing in the message, nor in the sentence around it, says what the number is of. */
export const messageQuestion = (
  place: Place,
  bare: Bare,
  board: Board,
  known: readonly Mention[],
): Verdict | undefined =>
  fits(place, bare) ? asked(place, bare, board, known, messageOf(place)) : undefined;

/** The same of a line in a list; whether more than the line tells of what it is has to be seen before. */
export const jottingQuestion = (
  place: Place,
  bare: Bare,
  board: Board,
  known: readonly Mention[],
): Verdict | undefined => {
  const { passage } = place.scene;
  return fits(place, bare) && isJotting(passage)
    ? asked(place, bare, board, known, { start: 0, end: passage.text.length })
    : undefined;
};

/** "size 8": so small a number is one of a thing only when it says so. */
const SIZED = /\bsize\s$/i;

const fits = (place: Place, bare: Bare): boolean =>
  !bare.spoken &&
  bare.decimals === 0 &&
  bare.value >= (SIZED.test(place.before) ? 5 : 10) &&
  bare.value <= 26 &&
  alone(place, bare) &&
  place.devices.length === 0 &&
  !counts(place.after);

function asked(
  place: Place,
  bare: Bare,
  board: Board,
  known: readonly Mention[],
  message: Span | undefined,
): Verdict | undefined {
  if (
    !message ||
    SAID_LACKING.test(place.text) ||
    mentionsIn(known, message).length > 0 ||
    within(place.scene.materials, message).length > 0
  )
    return undefined;
  const { text } = place.scene.passage;
  if (SIZE_TALK.test(text.slice(message.start, message.end).replace(OF_ANYTHING, ''))) return undefined;
  const own = [text.slice(message.start, place.span.start), text.slice(place.span.end, message.end)] as const;
  return stands(...own) && ofTrade(board) && openSystem(bare, board)
    ? whichSystem(place, bare, board)
    : undefined;
}

/** '"The 16."' in a note that names no size, nor anything that has one: a day, a bus, a house. */
function ofTrade({ around, settled }: Board): boolean {
  const { gauge, needles, french, thread, things } = factsOf(around);
  return gauge || needles || french || thread || things || settled.some((mentions) => mentions.length > 0);
}

/** The lack of the unit is what is told. */
const SAID_LACKING = /\b(?:without (?:any|an?|the|its|their)|no|never a|lacks? (?:any|an?|the)) units?\b/i;

/** In no run of numbers; "bed 22, 12 out" is none, since the first is the bed's. */
const alone = ({ scene, span }: Place, { run }: Bare): boolean =>
  run.values.length === 1 ||
  (run.values.length === 2 &&
    run.end === span.end &&
    LABELLED.test(scene.passage.text.slice(Math.max(0, run.start - 24), run.start)));

/** What may be said of anything, and of how somebody is. */
const OF_ANYTHING = /\b(?:is|was|be|felt|all)\sfine\b|\busual\b/gi;
