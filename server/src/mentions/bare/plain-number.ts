/** Numbers that are spoken of as numbers, or number something else: "twenty to the inch", "fourteen is fourteen", "1 B". */
import { finds, firstMatch } from '../../notes/patterns.ts';
import { headingsOf, sentenceIndex, within } from '../scene.ts';
import type { Place } from '../sense/place.ts';
import { BLADED } from '../words/counted.ts';
import { isMark } from '../words/marks.ts';
import type { Bare } from './tokens.ts';

/** Is the number no size, whatever is spoken of around it? */
export const isPlainNumber = (place: Place, bare: Bare): boolean =>
  perInch(place) ||
  isItself(place, bare) ||
  ranksNumbers(place, bare) ||
  keysLetter(place, bare) ||
  keysAnswer(place, bare) ||
  keysSpoken(place, bare) ||
  ofAcid(place, bare) ||
  earned(place) ||
  isAdded(place) ||
  countsOrdered(place) ||
  isPronoun(place, bare) ||
  ofBladesBefore(place) ||
  ofBladeNamed(place, bare);

/** "Twenty to the inch", "you would fit twenty" where so many to the inch were spoken of. */
const perInch = (place: Place): boolean =>
  finds(TO_THE_INCH, place.after) || (finds(FITTED, place.before) && INCH_TOLD.test(lately(place)));
const TO_THE_INCH =
  /^\s(?:of\s(?:them|these|those)\s|needles\s|wires\s|tubes\s|strands\s|side\sby\sside\s)?(?:to|in|per|into|within|across)\s(?:the\s|an?\s|one\s|every\s|each\s)?inch\b/i;
const FITTED =
  /\b(?:fits?|fitted|lays?|laid|line|lined|packs?|packed|squeezed?|gets?|got)\s(?:up\s)?(?:about\s|only\s|roughly\s|nearly\s)?$/i;
const INCH_TOLD = /\b(?:to|per|into|in|within)\s(?:the|an?|one|every)\s?inch\b/i;

/** The sentence and the two before it, as far as the number. */
function lately({ scene, span, sentence }: Place): string {
  const first = scene.sentences[Math.max(0, sentenceIndex(scene, span.start) - 2)]!;
  return scene.passage.text.slice(Math.max(first.start, sentence.start - 240), span.start);
}

/** "Fourteen is fourteen": the number is said of itself. */
function isItself({ scene, span, before, after }: Place, { plural }: Bare): boolean {
  if (plural || /\b(?:an?|the)\s$/i.test(before)) return false;
  const word = scene.passage.text.slice(span.start, span.end).toLowerCase();
  const next = firstMatch(SELF_AFTER, after)?.[1];
  const last = firstMatch(SELF_BEFORE, before.slice(-32))?.[1];
  return next?.toLowerCase() === word || last?.toLowerCase() === word;
}
const SELF_AFTER =
  /^\s(?:is|equals|means)\s(?:always\s|still\s|just\s)?([a-z]+(?:-[a-z]+)?|[0-9]{1,2})(?=["”’]?(?:[.,;:!?)]|$))/i;
const SELF_BEFORE =
  /(?:^|[^a-z0-9-])(?<!\b(?:an?|the)\s)([a-z]+(?:-[a-z]+)?|[0-9]{1,2})\s(?:is|equals|means)\s(?:always\s|still\s|just\s)?$/i;

/** "Because twenty is more than sixteen": two numbers in words, and which of them is more. */
const ranksNumbers = ({ before, after }: Place, { spoken, plural }: Bare): boolean =>
  spoken &&
  !plural &&
  ((BECAUSE.test(before) && MORE_AFTER.test(after)) || MORE_BEFORE.test(before) || BEING_MORE.test(after));
const BECAUSE = /\b(?:because|since|as|for)\s$/i;
const MORE = '(?:more|bigger|larger|greater|higher|less|smaller|lower|fewer)';
const NUMBER_WORD = '[a-z]{3,9}(?:-[a-z]{3,5})?';
const MORE_AFTER = new RegExp(`^(?:['’]s|\\sis)\\s${MORE}\\sthan\\s${NUMBER_WORD}(?![a-z-])`, 'i');
/** "…, three being less than four". */
const BEING_MORE = new RegExp(`^\\sbeing\\s${MORE}\\sthan\\s${NUMBER_WORD}(?![a-z-])`, 'i');
const MORE_BEFORE = new RegExp(
  `\\b(?:because|since|as|for)\\s${NUMBER_WORD}(?:['’]s|\\sis)\\s${MORE}\\sthan\\s$`,
  'i',
);

/** "Order 14 G (10), 3.5 Fr (20)": how many of each. */
const countsOrdered = ({ before, after, text }: Place): boolean =>
  /[0-9A-Za-z]\s\($/.test(before.slice(-4)) &&
  /^\)/.test(after) &&
  /\b(?:orders?|ordered|restock|buy|bought|count(?:ed)?|left)\b/i.test(text) &&
  /\([0-9]{1,3}\).*\([0-9]{1,3}\)/.test(text);

/** "add 3½ instead of 4": a part of a sum. */
const isAdded = ({ before }: Place): boolean =>
  /\b(?:adds?|adding|plus|minus|subtract)\s(?:[0-9][0-9½.,]{0,3}\s(?:instead of|rather than|in place of|(?:and )?not)\s)?$/i.test(
    before.slice(-40),
  );

/** "1 B." and on the next line or behind it "2 A.", "3 false.": the number of a question and what answers it. */
function keysLetter({ scene, span }: Place, { value, spoken, decimals }: Bare): boolean {
  if (spoken || decimals > 0) return false;
  const { text } = scene.passage;
  if (!ANSWERED.test(text.slice(span.end, span.end + 12))) return false;
  const before = `\n${text.slice(Math.max(0, span.start - KEY_REACH), span.start)}`;
  if (!RUN_OF_KEYS.test(before.slice(before.lastIndexOf('\n') + 1))) return false;
  const near = before + text.slice(span.start, span.end + KEY_REACH);
  return [value - 1, value + 1].some((next) =>
    new RegExp(`[\\n.;,]\\s*${next}\\s(?:[A-Ea-e]|true|false)(?![a-z])`).test(near),
  );
}
/** From the beginning of the line nothing but numbers and their letters. */
const RUN_OF_KEYS =
  /^\W*(?:(?:key|answers?|solutions?)\W+)?(?:[0-9]{1,2}\s(?:[A-Ea-e]|true|false)[.,;)]?\s+)*$/i;
const ANSWERED = /^\s(?:[A-Ea-e]|true|false)(?:[.,;)]|\s*(?:\n|$))/;
const KEY_REACH = 40;

/** "1 → 6-0; 2 → not; 3 → 4-0": a key that counts from one. */
function keysAnswer({ scene, span, after }: Place, { value, spoken, decimals }: Bare): boolean {
  if (spoken || decimals > 0 || value > MOST_QUESTIONS || !/^\s?(?:→|->)/.test(after)) return false;
  const before = `\n${scene.passage.text.slice(Math.max(0, span.start - 400), span.start)}`;
  if (!/[\n;,|·*:?.]\s*$/.test(before)) return false;
  return value === 1
    ? /[;,|·\n]\s*2\s?(?:→|->)/.test(scene.passage.text.slice(span.end, span.end + 80))
    : /[\n;,|·*:?.]\s*1\s?(?:→|->)/.test(before) &&
        new RegExp(`[\\n;,|·*:?.]\\s*${value - 1}\\s?(?:→|->)`).test(before);
}
const MOST_QUESTIONS = 20;

/** "One, yellow; two, the 10 Fr; five, the 4-0": answers counted in words. */
function keysSpoken({ scene, span, after }: Place, { value, spoken, decimals }: Bare): boolean {
  const last = COUNTED[value - 2];
  if (!spoken || decimals > 0 || last === undefined || !/^,\s/.test(after)) return false;
  const before = scene.passage.text.slice(Math.max(0, span.start - 160), span.start);
  return /[;.:]\s$/.test(before) && new RegExp(`(?:^|[;.:]\\s)${last},\\s[^;.:]*[;.:]\\s$`, 'i').test(before);
}
const COUNTED = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** "Asks for "the one in between"": a pronoun. */
const isPronoun = ({ before, after }: Place, { spoken, value }: Bare): boolean =>
  spoken &&
  value === 1 &&
  /\b(?:the|this|that|each|every|which)\s["“]?$/i.test(before) &&
  ONE_THAT.test(after);
const ONE_THAT =
  /^\s(?:in\s(?:between|the\smiddle)|between|that|which|who|with|without|from|of|next|beside|above|below|at\sthe|on\s(?:the|your|my|its)|you|we|i|he|she|they)\b/i;

/** "It is metric 2 (1)": what the answer earns. */
const earned = ({ around, scene: { passage }, span }: Place): boolean =>
  isMark(passage.text, span, () => headingsOf(around, passage).map((heading) => heading.passage.text));

/** "pH of 5 or under. If it reads 6, ring me": how acid it is. */
const ofAcid = (place: Place, { value, plural }: Bare): boolean =>
  !plural && value < 15 && finds(ACID_READ, place.before) && saysAcid(lately(place));
const saysAcid = (said: string): boolean => {
  const at = said.search(/\bpH\b/);
  return at >= 0 && !/[0-9]\s?(?:Fr|G|mm|French|gauge)\b/.test(said.slice(at));
};
const ACID_READ =
  /\b(?:reads?|shows?|says?|gets?|is|was|comes?\s(?:up|out)\s(?:as|at)|to|or|above|over|under|below|than|between|and)\s(?:an?\s)?$/i;

/** "Blade numbers are shapes, not sizes. A 15 is smaller than a 10": of what the sentence before began with. */
function ofBladesBefore({ scene, span, text, devices, materials }: Place): boolean {
  if (devices.length > 0 || materials.length > 0 || OURS.test(text)) return false;
  const last = scene.sentences[sentenceIndex(scene, span.start) - 1];
  if (!last || last.end - last.start > 160 || within(scene.devices, last).length > 0) return false;
  const said = scene.passage.text.slice(last.start, last.end);
  return finds(BLADES_OPEN, said) && BLADED.test(said) && !OURS.test(said);
}
const BLADES_OPEN =
  /^\W*(?:the\s|our\s|and\s|but\s)?(?:[a-z-]+\s)?(?:blades?|scalpels?|gloves?|masks?|guedels?|laryngoscopes?|shoes?|files?)\b/i;
/** What is said of needles, threads and catheters, and of where they go. */
const OURS =
  /[0-9]\s?(?:G|Fr|F|Ch|mm|French)\b|[0-9]-0\b|\b(?:gau?ge|French|arms?|hands?|veins?|elbows?|drips?|flows?|blood|bore|hubs?)\b/i;

/** "A No. 15 blade is small. The 15 is a shape": the same number was a blade's shortly before. */
function ofBladeNamed(
  { scene, span, text, devices, materials }: Place,
  { value, spoken, plural }: Bare,
): boolean {
  if (spoken || plural || devices.length > 0 || materials.length > 0 || OURS.test(text)) return false;
  const before = scene.passage.text.slice(Math.max(0, span.start - 200), span.start);
  return (
    BLADED.test(before) && new RegExp(`(?<![0-9.])${value}\\s(?:blades?|scalpels?)\\b`, 'i').test(before)
  );
}
