/** Is "4.7 mm" a diameter or a needle's length, or a wound, a depth, a distance? */
import type { Device } from '../../sizes/model.ts';
import type { Scene } from '../scene.ts';
import { labelsOf, sentenceIndex } from '../scene.ts';
import {
  BODY_CELL,
  BODY_IS,
  BODY_MEASURED,
  BODY_NAMED,
  DEFINES_AFTER,
  DIAMETER,
  ELSEWHERE,
  FELLOW_INCH,
  FILTERED,
  IN_METRIC,
  OTHER_LENGTH,
  STEP_OF_A_SCALE,
  TWIN_MM,
} from '../words/lengths.ts';
import { earlier, type Place, wider } from './place.ts';
import { ofOtherTrade } from './trade.ts';
import { NOTHING, size, type Verdict } from './verdict.ts';

export type LengthSystem = 'millimetre' | 'inch';

/** What other sizes stand near: in the sentence, or shortly before it. */
export interface Company {
  readonly sentence: boolean;
  readonly before: boolean;
  /** A length of the sentence, or of the one before, was a size. */
  readonly fellow: boolean;
}

/** A gauge right before or after: "21 G × 1½ in", "(22 G, 50 mm)", "50 mm, 20 gauge". */
const SIZE_BEFORE =
  /[0-9](?:[\s-]?(?:G|ga|gauge|Fr|French|Ch))[,;]?\s?(?:[x×*/(]|by|of|long)?\s?(?:an?\s)?(?:size\s)?$/i;
const GAUGE_AFTER = /^[,]?\s?(?:[x×]\s?)?(?:(?:[a-z]+\s){0,2})(?:#?[0-9]{2}[\s-]?(?:G\b|ga\b|gauge))/i;
/** Things given as width by length whose length is no size. */
const BALLOON = /\b(?:balloons?|stents?|grafts?|mesh|patch(?:es)?)\b/i;
const TIMES = /[x×]\s?$/i;
/** "a 5 Fr line is 1.67 mm": said to be the same. */
const EQUATED =
  /(?:(?:\bG|\bga|gauge|Fr|French|Ch|-0|\.[0-9]{2,4}\s?in|[0-9]\s?inch)\b|[0-9]["″])(?:[a-z\s-]{0,30}|,\s(?:which|that)|,\s[^,;:.0-9]{3,50},)(?:\s(?:is(?: to say)?|are|at|equals|measures?|makes|gives|(?:(?:comes?|works?) (?:to|out (?:at|as|to))|(?:starts?|begins?|ends?|stops?) (?:at|with)))\s|\s?=\s?)(?:(?:about|roughly|around|nearly|just|only|really|exactly|close to|up to|more like|something like|(?:a\s(?:bit|shade|little)\s|well\s|just\s)?(?:over|under)|(?:bigg|larg|wid|small|narrow)er than|(?:more|less) than)\s){0,2}$/i;
const RIGHT_AFTER =
  /^[\s,-]{0,2}(?:\(?in\s)?(?:across|wide|outside|inside|outer|inner|in diameter|diameters?|od\b|id\b|bore|thick|of outer|of outside|lumen|calib(?:er|re)|internal|external|in width|round)\b/i;
const THING_AFTER =
  /^,?\s(?:half|three[\s-]eighths|five[\s-]eighths|1\/2|3\/8|5\/8|½|⅜|⅝)[\s-]circle\b|^[\s-](?:[a-z-]+\s){0,2}(?:needles?|guidewires?|wires?|sheaths?|drains?|catheters?|cannula[es]?|k-wires?|trocars?|ports?|sleeves?|taper|reverse|cutting|circle|curve|three-eighths|half[- ]circle|round-bodied|channel|scope|[a-z]+oscopes?)\b/i;
/** "2-0 and 2 are far apart, one being 0.3 mm and the other 0.5 mm": of the two sizes. */
const ONE_OF_TWO =
  /\b(?:one|the (?:one|other|first|second|former|latter)|each)\s(?:(?:being|is|measures?|measuring)\s)?(?:(?:about|some|nearly|only)\s)?$/i;
/** A tube that is no tracheal one: that is called by its number, or by none. */
const TUBE_AFTER =
  /^[\s-](?!(?:of|in|on|for|from|with|at|down|into|through|past)\b)(?:[a-z-]+\s){0,2}(?:tubes?|tubing)\b/i;
/** "Tube of 30 mm for a warmblood", "a catheter at 4 mm": the thing right before. */
const THING_BEFORE =
  /\b(?:half|three[\s-]eighths|five[\s-]eighths|quarter|1\/2|3\/8|5\/8|½|⅜|⅝)[\s-]circle,?\s$|\b(?:tub(?:e|es|ing)|catheters?|needles?|guidewires?|wires?|drains?|cannula[es]?|sheaths?|trocars?|dilators?|stents?|hose|pins?)\s(?:of|at|measuring|measures?)\s(?:(?:about|around|only|just|roughly|up to|at least)\s)?$/i;
/** "1.2 mm for it", "that is 4 mm", "it comes to 2 mm": of what was just spoken of. */
const TAKEN_UP =
  /\b(?:it|that|this|which|one)(?:['’]s|\s(?:is|was|makes|gives|measures|comes? (?:to|out (?:at|as))|works? out (?:at|as|to)))\s(?:(?:about|roughly|around|nearly|just|only|exactly)\s)?$|\b(?:gave|gives|makes?|says?|get|got)\s(?:(?:about|roughly|around|me|us)\s)?$/i;
const OF_IT = /^\s(?:for|from|out of) it\b/i;
/** "A 26 mm half circle for the bowel, a 40 mm for the fascia": another needle of the same sentence. */
const FELLOW =
  /[0-9]\smm\s(?:[a-z-]+\s){0,2}(?:needles?|half[- ]circle|round-bodied|taper|cutting|curve)\b.{0,60}[,;]?\s(?:and\s)?an?\s$/i;

/** "trocars greater than 5 mm", "ports of 10 mm". */
const PORT_BEFORE =
  /\b(?:trocars?|ports?)(?:\s(?:sites?|sizes?))?\s(?:(?:of|are|is|that are|at least)\s)?(?:(?:(?:great|larg|bigg|wid|small)er|more|less)\sthan(?:\sor equal to)?\s|over\s|above\s|under\s|up to\s|[≥>≤<]\s?)?(?:[0-9]{1,2}\s?mm\s(?:and|or)\s)?$/i;
/** "trocar set (10 mm, 5 mm)". */
const PORTS_LISTED =
  /\b(?:trocars?|ports?)(?:\s(?:sizes?|sets?|kits?))?\s\((?:[0-9]{1,2}\s?mm(?:,\s|\s(?:and|or)\s)){0,3}$/i;
/** "1 inch (25 mm) needle": the same length in the other unit, between it and its thing. */
const TWIN_AFTER = /^\s?\([0-9.,/½¼¾⅛⅜⅝⅞\s-]{1,9}(?:mm|cm|in|inch|inches|["″”])\)(?=\s)/i;
/** "26 mm and 30 mm tubes": the thing stands behind the last of them. */
const FELLOWS_AFTER = /^(?:(?:\s(?:and|or|to)\s|,\s(?:and\s|or\s)?)(?:an?\s)?[0-9.]{1,5}\s?mm){1,5}(?=\s)/;
/** "about the length of that needle, but 16 mm is usual". */
const LENGTH_OF_NEEDLE =
  /\b(?:lengths? of (?:the|that|this|an?|our|these|those) (?:[a-z]+ )?needles?|needle lengths?)\b[^.;:0-9]{0,24}$/i;
const NEEDLE = /\b(?:needles?|blunt ones?|round-bodied|wires?|guidewires?|threads?|taper|cutting)\b/i;

/** One test of the ladder: its evidence when it holds. */
type Test = (place: Place, company: Company, clause: string) => string | undefined;
const when = (holds: boolean, rule: string): string | undefined => (holds ? rule : undefined);

/** Said to be what a size right before it measures. */
export const equated = (place: Place): boolean => EQUATED.test(place.before.slice(-60));

/** "The tail is 8 Fr, so roughly 2.7 mm": a third of the French number right before. */
function thirdOfFrench({ before, scene, span }: Place): boolean {
  const french = FRENCH_BEFORE.exec(before.slice(-40))?.[1];
  const mm = Number.parseFloat(scene.passage.text.slice(span.start, span.end).replace(',', '.'));
  return french !== undefined && Math.abs(Number(french) / 3 - mm) < 0.12;
}
const FRENCH_BEFORE =
  /(?<![0-9.])([0-9]{1,2}(?:\.5)?)\s?(?:Fr|French|Ch|F)\b[,;:(]?\s?(?:(?:so|or|and|that|which|it|is|are|makes?|means?|about|roughly|around|nearly|just|only|over|under|say|call it)[,:]?\s){0,5}$/;

/** Asked in order; `stop` ends the matter. */
const LADDER: readonly Test[] = [
  (place) => when(thirdOfFrench(place), 'equated'),
  (place) =>
    when(
      PORT_BEFORE.test(place.before.slice(-60)) ||
        (PORTS_LISTED.test(place.before.slice(-60)) && /^\s?[,)]/.test(place.after)),
      'port-before',
    ),
  (place) =>
    when(
      ELSEWHERE.test(place.after) ||
        ofBody(place) ||
        (/mm\s?[x×]\s?$/i.test(place.before) && BALLOON.test(place.text)),
      'stop',
    ),
  (place, company) =>
    when(
      SIZE_BEFORE.test(place.before.slice(-24)) ||
        GAUGE_AFTER.test(place.after) ||
        (TIMES.test(place.before) && company.sentence),
      'gauge-by-length',
    ),
  (place) =>
    when(
      BODY_MEASURED.test(
        place.before
          .slice(-64)
          .split(/[.;]\s/)
          .at(-1)!,
      ),
      'stop',
    ),
  (place) => when(LENGTH_OF_NEEDLE.test(place.before.slice(-70)), 'needle-length'),
  (place) => when(RIGHT_AFTER.test(place.after), 'diameter-word'),
  (place) =>
    when(
      /^\slong\b/.test(place.after) && place.devices.length > 0 && !OTHER_LENGTH.test(place.before),
      'thing-long',
    ),
  (place, company) => when(equated(place) || (company.sentence && ONE_OF_TWO.test(place.before)), 'equated'),
  (place) =>
    when(
      FELLOW.test(place.before) && /^\s(?:for|on|in)\s(?:the|an?|fascia|skin|bowel)\b/.test(place.after),
      'fellow-needle',
    ),
  (place) =>
    when(THING_AFTER.test(place.after.replace(TWIN_AFTER, '').replace(FELLOWS_AFTER, '')), 'thing-follows'),
  (place) =>
    when(
      TUBE_AFTER.test(place.after.replace(FELLOWS_AFTER, '')) &&
        !place.devices.some((hit) => hit.means === 'tracheal-tube'),
      'thing-follows',
    ),
  (place) => when(THING_BEFORE.test(place.before.slice(-60)), 'thing-before'),
  (_, __, clause) =>
    when(
      OTHER_LENGTH.test(clause) && !/\b(?:diameters?|outer|inner|lumen|bore|od|id)\b/i.test(clause),
      'stop',
    ),
  (place, company, clause) =>
    when(
      /\b(?:lengths?|long)\b/i.test(clause) && (company.sentence || needleSpokenOf(place)),
      'needle-length',
    ),
  (place, _, clause) => when(DIAMETER.test(clause) || headed(place), 'diameter-word'),
  (place) => when(threadThin(place), 'thread-thin'),
  (_, company) => when(company.sentence, 'size-beside'),
  (place, _, clause) => when(place.devices.length > 0 && NEEDLE.test(clause), 'device-beside'),
  (place, company) => when(company.before || needleHeading(place) || rowOfWires(place), 'size-before'),
  (_, company) => when(company.fellow, 'length-beside'),
  (place) => when(wiresBefore(place), 'wires-before'),
  (place) => when(lengthsBefore(place), 'needle-length'),
  (place) => when(twinOfNeedle(place), 'needle-length'),
];

/** "The short one is ¾ inch, about 19 mm", in talk of needles. */
const twinOfNeedle = ({ scene, after }: Place): boolean => scene.kinds.has('needle') && TWIN_MM.test(after);

export function lengthSense(place: Place, match: string, system: LengthSystem, beside: Company): Verdict {
  const company = system === 'inch' ? { ...beside, fellow: false } : beside;
  if (system === 'inch' && !inchUnit(place, match)) return NOTHING;
  if (/cm$/i.test(match) && !needleLength(place)) return NOTHING;
  if (defines(place, match) || SPEED.test(place.after) || ofOtherTrade(place)) return NOTHING;
  if (/[µμu]m$|micro/i.test(match) && FILTERED.test(`${place.before.slice(-24)} ${place.after.slice(0, 24)}`))
    return NOTHING;
  const clause = nearby(place);
  for (const test of LADDER) {
    const rule = test(place, company, clause);
    if (rule) return rule === 'stop' ? NOTHING : size(system, rule, match);
  }
  return system === 'millimetre' && takenUp(place) ? size(system, 'size-before', match) : NOTHING;
}

/** "10 mm/s", "2 mm a year". */
const SPEED =
  /^\s?(?:\/\s?|per\s|an?\s)(?:s|secs?|seconds?|min|minutes?|h|hrs?|hours?|days?|weeks?|months?|years?|yrs?)\b/i;

/** Right after a gauge, with or without a times sign. */
export const afterGauge = (place: Place): boolean =>
  /[0-9](?:[\s-]?(?:G|ga|gauge))[,;]?\s?(?:[x×]|by)?\s?(?:an?\s)?$/i.test(place.before.slice(-20));

/** "One inch is 25.4 mm", "each French is 0.33 mm": units, not things. */
function defines(place: Place, match: string): boolean {
  if (/^25[.,]4\s?mm$/i.test(match) && /\binch\b/i.test(place.text) && !/\bneedles?\b/i.test(place.text))
    return true;
  if (/^0?[.,]3+\s?mm$/i.test(match) && STEP_OF_A_SCALE.test(place.before)) return true;
  if (
    /^(?:one|1)\s?(?:mm|millimet)/i.test(match) &&
    /\bthree\s(?:French|steps?)\b[^0-9.;]{0,30}$/i.test(place.before)
  )
    return true;
  return (
    (/^(?:one|1|an?)?\s?inch$/i.test(match) && DEFINES_AFTER.test(place.after)) ||
    (/^1\s?in\.?$/i.test(match) &&
      !FELLOW_INCH.test(place.before) &&
      IN_METRIC.test(place.scene.passage.text.slice(place.span.end, place.span.end + 12)))
  );
}

/** A gauge within a few words on either side. */
export const besideGauge = (place: Place): boolean =>
  /[0-9][\s-]?(?:G|gauge)\b[^.;]{0,16}$/.test(place.before.slice(-28)) ||
  /^[^.;]{0,12}\b[0-9]{2}[\s-]?(?:G|gauge)\b/.test(place.after);

/** A size, millimetres or a thing with a size in the sentence, in the row, or over the table. */
export const sizedBeside = (place: Place): boolean =>
  place.devices.length > 0 ||
  [
    place.text,
    ...wider(place)
      .slice(0, 3)
      .map((scene) => scene.brief),
  ].some((text) => SIZE_OR_MM.test(text));
const SIZE_OR_MM = /[0-9][\s-]?(?:G|Fr|F|Ch|gauge|French)\b|[0-9]-0\b|\bmm\b|gauge|French/;

/** A needle or a gauge in the sentence, or needles in what stands over it. */
export const ofNeedle = (place: Place): boolean =>
  /[0-9][\s-]?(?:G|gauge)\b/.test(place.text) ||
  [
    ...place.devices,
    ...earlier(place, place.scene.devices),
    ...wider(place).flatMap((scene) => scene.devices),
  ].some((hit) => POINTED.has(hit.means));
const POINTED: ReadonlySet<Device> = new Set<Device>([
  'needle',
  'suture-needle',
  'winged-set',
  'cannula',
  'k-wire',
]);

/** Centimetres measure wounds and depths; a needle must stand right beside. */
const needleLength = (place: Place): boolean =>
  afterGauge(place) ||
  GAUGE_AFTER.test(place.after) ||
  /^[\s-](?:[a-z-]+\s){0,2}needles?\b/i.test(place.after) ||
  (/^\sin\s(?:length|diameter)\b/i.test(place.after) && /\bneedles?\b/i.test(place.text));

/** "Kirschner wires are by diameter. Ours go 0.9 mm, 1.1 mm, 1.6 mm.": wires and how wide they are in the sentence before. */
const wiresBefore = (place: Place): boolean =>
  earlier(place, place.scene.devices).some((hit) => hit.means === 'k-wire' || hit.means === 'guidewire') &&
  DIAMETER_OR_MM.test(
    place.scene.passage.text.slice(Math.max(0, place.sentence.start - 160), place.sentence.start),
  );
const DIAMETER_OR_MM = new RegExp(`${DIAMETER.source}|\\bin (?:mm|millimet(?:re|er)s)\\b`, 'i');

/** "Needle length is printed too. Most of ours are 19 mm": the needles' lengths were just spoken of. */
function lengthsBefore({ scene, sentence, before }: Place): boolean {
  if (!/\b(?:ours|ones?|they|those|these|most|it|usual\w*)\b/i.test(before.slice(-40))) return false;
  const last = scene.passage.text.slice(Math.max(0, sentence.start - 120), sentence.start);
  return /\bneedles?['’]?s? lengths?\b|\blengths? of (?:the |a )?needles?\b|\bneedles? (?:are|is|come|comes) (?:by|in) lengths?\b/i.test(
    last,
  );
}

/** A pronoun takes up the size with which the passage before ended. */
function takenUp(place: Place): boolean {
  if (!TAKEN_UP.test(place.before) && !OF_IT.test(place.after)) return false;
  const { index, path } = place.scene.passage;
  const last = place.around.scenes[index - 1]?.passage;
  return last !== undefined && last.path.join() === path.join() && SIZE_OR_MM.test(last.text.slice(-240));
}

/** "The 38 mm greens", "ordinary length is 90 mm" under a heading of needles. */
function needleHeading(place: Place): boolean {
  if (!/\b(?:the|an?|our|their)\s$|\blength\s(?:is|of)\s$/i.test(place.before)) return false;
  return wider(place).some((scene) => scene.kinds.has('needle') || scene.kinds.has('suture-needle'));
}

/** A cell in a row of bone wires, which are called by their millimetres. */
const rowOfWires = ({ around, scene }: Place): boolean =>
  scene.passage.cell !== undefined && labelsOf(around, scene.passage).row?.kinds.has('k-wire') === true;

/** A needle in the passage so far, or over it. */
function needleSpokenOf(place: Place): boolean {
  const { scene } = place;
  const near = scene.passage.text.slice(Math.max(0, place.sentence.start - 160), place.sentence.end);
  if (/\b(?:circle|round-bodied|reverse cutting|needles?)\b/i.test(near)) return true;
  return wider(place)
    .slice(0, 4)
    .some((one) => one.kinds.has('needle') || one.kinds.has('suture-needle'));
}

/** "The vein is 4 mm wide"; a row of a table of wounds. */
function ofBody(place: Place): boolean {
  if (BODY_NAMED.test(place.before) && BODY_IS.test(place.before)) return true;
  if (!place.scene.passage.cell) return false;
  const { header, corner } = labelsOf(place.around, place.scene.passage);
  return [header, corner].some((scene) => scene && BODY_CELL.test(scene.passage.text.slice(0, 60)));
}

/** The part of the sentence around the number, up to 60 characters each way; what follows a comma belongs elsewhere. */
function nearby(place: Place): string {
  const before = place.before
    .slice(-60)
    .split(/[;\n]|\.\s/)
    .at(-1)!
    .replace(CAPTION, '')
    .replace(MARKS, '');
  const after = place.after.slice(0, 60).split(/[;,(\n]|\.\s/)[0]!;
  return `${before} ${after}`;
}

/** "Full marks for 0.2 mm": what an answer earns is no mark on a tube. */
const MARKS = /\b(?:full|half|no|zero|one|two|bonus|all the)\smarks?\b/i;

/** "ON SCREEN: 5-0 = 0.1 mm": where it is shown, in capitals. */
const CAPTION = /^\W*[A-Z]{2,}(?:\s[A-Z]{2,}){0,3}:\s/;

/** Under a millimetre beside a thread: nothing else about it is so small. */
const threadThin = (place: Place): boolean =>
  /^0?[.,][0-9]/.test(place.scene.passage.text.slice(place.span.start, place.span.end)) &&
  (place.materials.length > 0 || place.devices.some((hit) => hit.means === 'suture'));

const headed = (place: Place): boolean => wider(place).slice(0, 3).some(namesLength);

const namesLength = (scene: Scene): boolean => {
  const { text, kind } = scene.passage;
  if (text.length >= 80) return false;
  return DIAMETER.test(text) || (kind === 'cell' && /\blength\b|\bmm\b|\bin\b|inch|needle/i.test(text));
};

/** An opening quotation mark stands before, so this mark closes it. Outside a quotation a mark after digits is inches. */
function closesQuote(before: string): boolean {
  let open = false;
  for (const { index } of before.matchAll(/"/g))
    if (open || !/[0-9½¼¾⅛⅜⅝⅞]/.test(before[index - 1] ?? '')) open = !open;
  return open || before.lastIndexOf('“') > before.lastIndexOf('”');
}

/** "put a 16 in": the verb takes the word. */
const PUT_IN =
  /(?:\b(?:you|we|they|I|he|she|who)['’](?:ve|d|s)|\b(?:put|puts|get|gets|got|have|has|had|leave|left|keep|slip|slid|pop|popped|stick|stuck|went|goes|with))\s(?:[a-z]+\s){0,2}(?:an?|the)\s$/i;

/** "¾ in for most, 1 in if the port sits deep", "A. 22 G, 1 in  B. 25 G, ⅝ in": a length like the other of its sentence. */
const FRACTION_BESIDE = /[½¼¾⅛⅜⅝⅞]\s?in\b/;
const GOES_ON = /^(?:\s(?:if|when|where|for|unless)\b|\s{1,4}[B-E][.)])/;

/** "in" is the preposition far more often than the unit. */
function inchUnit(place: Place, match: string): boolean {
  if (/["”]\.?$/.test(match) && closesQuote(place.before))
    return /[½¼¾⅛⅜⅝⅞/]/.test(match) && afterGauge(place);
  // A sentence that begins with "In" after the number of a section.
  if (/\sIn$/.test(match)) return false;
  if (!/[\s]in\.?$/.test(match)) return true;
  if (
    /^[0-9]+\sin\.?$/.test(match) &&
    (/\b(?:new|old|fresh|second)\s$/i.test(place.before) || /[0-9]\sout\b/.test(place.text))
  )
    return false;
  if (PUT_IN.test(place.before) && /^[0-9]+(?:\.[05])?\sin/.test(match)) return false;
  if (/[½¼¾⅛⅜⅝⅞⅓⅔]/.test(match) && !/^\s(?:the|an?|each|every)\b/i.test(place.after)) return true;
  if (
    /^\s(?:the|a|an|each|every|this|that|my|our|your|his|her|its|their|any|all|[0-9]|water|place|and out|one|two|case|order|use|stock|total|line|half|bay|room|adults?|children|series|width and|both|either|neither|which|(?:wo)?men|patients?|humans?|groups?|general|terms|vitro|vivo|favou?r|comparison|contrast|addition|relation|response)\b/i.test(
      place.after,
    )
  )
    return false;
  return (
    /[½¼¾⅛⅜⅝⅞⅓⅔./⁄]/.test(match) ||
    (FRACTION_BESIDE.test(place.text) && GOES_ON.test(place.after)) ||
    (TWIN_MM.test(place.after) && !/\b(?:an?|the)\s$/i.test(place.before)) ||
    /^\s?(?:[).,;:|"”]|$|needles?|long|length|wire|blunt|×|or\b|and\b|\(|one\b|ones\b)/i.test(place.after) ||
    /[x×]\s?$/i.test(place.before)
  );
}

/** Longest label before an answer: "A12. ". */
const LABEL = 5;

/** How near other sizes stand: same sentence, or the two sentences before in the passage. */
export function companyOf(scene: Scene, at: number, { sized, measured }: Beside, before: boolean): Company {
  const index = sentenceIndex(scene, at);
  const last = scene.sentences[index - 1];
  // "9 Fr in mm? …… A2. 3 mm.": the number of an answer is no sentence.
  const far = last && last.end - last.start <= LABEL ? 3 : 2;
  return {
    sentence: sized.has(index),
    before: before || [1, 2, far].some((back) => sized.has(index - back)),
    fellow: measured.has(index) || measured.has(index - 1),
  };
}

/** Sentences of a passage by what they hold. */
export interface Beside {
  /** A size that is no length. */
  readonly sized: ReadonlySet<number>;
  /** A length that is a size. */
  readonly measured: ReadonlySet<number>;
}
