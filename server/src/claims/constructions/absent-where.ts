/** Of what it is said that a size does not exist: of threads as such, of hypodermic needles, or of something narrower. */

import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import type { Group, Scene } from '../text/scene.ts';

/** Characters of the passage that are looked at, before the sentence and behind it. */
const [BEFORE, AFTER] = [500, 200];

/** What stands around a sentence, in lower case. */
export const around = remembered((scene: Scene): string =>
  [...scene.headings, scene.lead ? joined(scene.lead.items) : '', nearby(scene)].join('\n'),
);

/** An entry of a numbered list is by itself, in one passage with the others or not. */
function nearby({ passage: { text }, sentence }: Scene): string {
  const line = text.lastIndexOf('\n', sentence.start) + 1;
  const next = text.indexOf('\n', sentence.end);
  const [start, end] = ENTRY.test(text.slice(line, line + 8))
    ? [line, next < 0 ? text.length : next]
    : [0, text.length];
  return text
    .slice(Math.max(start, sentence.start - BEFORE), Math.min(end, sentence.end + AFTER))
    .toLowerCase();
}
const ENTRY = /^\s*(?:[A-Za-z]?\d{1,3}[.):]|[-*•])\s/;

/** Supposed, doubted, told of others, past, with an exception, or said of one place: "here", "in this tray", "for the eye". */
export function narrowed({ items }: Scene): boolean {
  const text = joined(items).replace(TO_JUDGE, '').replace(FOLLOWS, '');
  return NARROWS.test(text) || OPENED.test(text.replace(OF_SCALE, ''));
}
/** Asked of the statement, and no part of it. */
const TO_JUDGE = /\b(?:true or false|right or wrong|t or f)\b/;
/** What follows for whoever meets one: "…, so if a packet says No. 1 it is a misprint". */
const FOLLOWS = / , (?:so|and so|hence) (?:if|when|whenever|should) .*$/;
const NARROWS =
  /\b(?:if|unless|whether|suppose|supposing|imagine|pretend|would|were|was|had|did|could|might|may|perhaps|maybe|probably|possibly|presumably|apparently|allegedly|supposedly|almost|nearly|practically|virtually|hardly|rarely|seldom|common|commonly|usually|usual|generally|mostly|often|normally|typically|routinely?|sometimes|in practice|as far as|think|thinks|believes?|reckons?|to my knowledge|except|excepting|apart from|other than|besides|but for|only for|aside|until|yet|any ?more|any longer|nowadays|today|currently|still|once|game|joke|joking|true|untrue|false|wrong|myth|nonsense|mistake|says?|said|told|claims?|asks?|asked|heard|why|which of|here|we|we're|our|ours|us|my|mine|i|this|these|those|ward|wards|theatre|theatres|tray|trays|kits?|drawers?|shel(?:f|ves)|cupboards?|trolley|stock\w*|hospital|department|clinic|unit|room|country|store|stores|patients?|wounds?|box|boxes|list above|above|below|figure|picture|photo|slide)\b/;
/** "In dentistry, …", "for the eye …", "with gut, …". */
const OPENED =
  /(?:^|[;:.!?—–(] )(?:(?:and|but|so) )?(?:in|on|for|with|at|among|amongst|of|from|by|under|within|inside|as for) /;
/** "At the other end …", "in the USP scale, …". */
const OF_SCALE =
  /\b(?:at the \w+ end|(?:in|on) (?:the )?(?:usp|gauge|needle)(?: (?:scale|system|series|sizes|gauges))?)(?: ,)? /g;

/** A shelf, a stock, a row that was listed, something to do now: then a size is missing there. */
export const shelved = (scene: Scene): boolean => SHELF.test(around(scene));
const SHELF =
  /\b(?:drawers?|trays?|kits?|shel(?:f|ves)|wards?|theatres?|clinics?|cupboards?|trolleys?|carts?|cabinets?|racks?|box(?:es)?|bags?|packs?|packets?|rooms?|units?|hospitals?|departments?|pharmacy|stores?|stock\w*|order\w*|suppl(?:y|ies|iers?)|catalogues?|inventory|deliver\w+|left over|remaining|above|below|listed|figure|picture|photo|slide|patients?|wounds?|opened|tonight|run out|out of|borrow|ring|ask for|hand me|scrub|take|instead|we|our|ours|us)\b/;

/** "There is no 7-0 suture; open a 6-0": what is at hand is spoken of, and what to do without. */
export const missed = (scene: Scene): boolean => WITHOUT.test(around(scene));
const WITHOUT =
  /\b(?:use|uses|used|using|open|opens|choose|pick|get|gets|fetch|reach|grab|swap|substitut\w+|make do|replace\w*|try|needs?|needed|wants?|give|gives|call|send|wait|waiting|missing|(?:you|they|he|she|who) ha(?:ve|s)|bought|buy|brought|bring|gone|packed|lying|laid out|set out|chose|next best|nearest|closest)\b/;

/** The scale is spoken of. */
export const saysOfScale = (scene: Scene, needles: boolean): boolean =>
  (needles
    ? /\b(?:gauges|gauge (?:scale|numbers?|sizes?|system)|needle sizes|iso 9626|twos|even|odd|standard)\b/
    : /\b(?:usp|scale|numbering|suture sizes?|thread sizes?|sizes of (?:sutures?|threads?)|pharmacopoeia|(?:nobody|no one|no-one) makes|exists?)\b/
  ).test(around(scene));

/** A number by itself is a thread's only where threads are spoken of. */
export const saysOfThreads = (scene: Scene): boolean =>
  /\b(?:usp|sutures?|threads?|stitch(?:es)?)\b/.test(around(scene));

/** Threads as such: of no one material, kind or use. */
export const ofThreads = (scene: Scene, { mentions }: Group): boolean =>
  mentions.every(({ material }) => material === undefined) && !KINDS.test(around(scene));
const KINDS =
  /\b(?:(?:cat)?gut|chromic|silk|nylon|poly\w+|polig\w+|steel|wires?|collagen|linen|cotton|monofilaments?|braided|absorbables?|absorbed|barbed|eptfe|japan\w*|metric numbers?)\b/;

/** Hypodermic needles: they are named, and no other needle, cannula or tube with gauges is. */
export function ofNeedles(scene: Scene, said: readonly Item[]): boolean {
  const devices = said.flatMap(({ mention }) => mention?.device ?? []);
  if (devices.some((device) => device !== 'needle')) return false;
  const words = joined(said);
  const near = around(scene);
  if (/\b(?:hypodermic|injection|hollow) needles?\b/.test(words)) return true;
  if (OTHER_NEEDLES.test(near)) return false;
  return /\bneedles?\b/.test(words) || (/\bneedles?\b/.test(near) && !OTHER_GAUGES.test(near));
}
const OTHER_NEEDLES =
  /\b(?:spinals?|epidurals?|tuohy|quincke|lumbar|pencil[- ]points?|biops\w+|fistula|dialysis|trocars?|introducers?|marrow|huber|ports?|dental|insulin|pens?|acupuncture|block needles?|butterfl\w+|winged|vacuum|suture needles?|wire gauges?|birmingham|stubs|awg|swg|bwg)\b/;
const OTHER_GAUGES =
  /\b(?:cannul\w+|catheters?|iv|i\.v\.|intravenous|drips?|venous|lines?|sheaths?|veins?)\b/;

/** Cannulas for veins as such: no other kind, and nobody for whom the finer ones are not meant. */
export const ofCannulas = (scene: Scene, said: readonly Item[]): boolean =>
  said.every(({ mention }) => (mention?.device ?? 'cannula') === 'cannula') &&
  /\bcannula(?:s|e)?\b/.test(joined(said)) &&
  !OTHER_CANNULAS.test(near(scene));
const OTHER_CANNULAS =
  /\b(?:adults?|grown|nasal|arter\w+|ecmo|bypass|perfusion|umbilical|uterine|suction|fillers?|blunt|liposuction|fat|eyes?|ophthal\w+|blood|transfus\w+|contrast|emergenc\w+|trauma)\b/;

/** Guidewires as such, of no vessel. */
export const ofWires = (scene: Scene, said: readonly Item[]): boolean =>
  /\bguide-?wires?\b/.test(joined(said)) && !OTHER_WIRES.test(near(scene));
const OTHER_WIRES =
  /\b(?:coronar\w+|ureter\w*|urolog\w*|biliary|endoscop\w*|central|picc|seldinger|dialysis|k-wires?|neuro\w*|femoral|peripheral)\b/;
/** What stands around a sentence, the other entries of its list too: they may name for whom a size is not meant, or which vessel. */
const near = ({ headings, sentence, passage }: Scene): string =>
  `${headings.join('\n')}\n${passage.text.slice(Math.max(0, sentence.start - BEFORE), sentence.end + AFTER)}`.toLowerCase();
