/** How a bare number stands in its sentence: with an article, handed over, in a run, beside a colour. */

import { matchesOf } from '../../notes/index.ts';
import { finds } from '../../notes/patterns.ts';
import type { Place } from '../sense/place.ts';
import {
  BLADED,
  CITED_AFTER,
  CITED_BEFORE,
  COUNT_OF,
  counts,
  FIELD_OF_OTHER,
  GROUP_BEFORE,
  IN_A_SUM,
  LABELLED,
  NUMBERED,
  otherBefore,
  PART_OF_NAME,
  POURED,
  RANGE_COUNTED,
  SHARES_UNIT,
} from '../words/counted.ts';
import { CLOSED, COLOUR, DETERMINED, HANDED } from '../words/frames.ts';
import { amountsToNothing, namesNought, ONE_NOUGHT_IS } from './nought.ts';
import type { Bare } from './tokens.ts';

export type Frame =
  | 'article'
  | 'plural'
  | 'colour'
  | 'option'
  | 'run'
  | 'handed'
  | 'colon'
  | 'alone'
  | 'loose';

const COLOUR_AFTER = new RegExp(`^\\s?(?:(?:is|are)\\s|[=:–—→-]\\s?|,?\\s|\\()?(?:the\\s)?${COLOUR}\\b`, 'i');
const COLOUR_BEFORE = new RegExp(
  `(?:^|[\\s(,;:])${COLOUR}(?:\\sones?)?\\s?(?:,\\s|(?:is|are|for|means|hub|cannula)\\s(?:the\\s)?|[=:–—→-]\\s?|\\s)$`,
  'i',
);
const OPTION = /(?:^|[\s(])(?:[a-eA-E][).:]\s?|[B-E]\s|(?<=[,;]\s)[b-e]\s|\(?i{1,3}v?\)\s)$/;
/** "metric: A 2  B 3.5": a first choice without a mark, when a second follows. */
const FIRST_CHOICE = /[:?]\sA\s$/;

/** "2-0 = 2, 4-0 = 4": how many zeros there are. */
const ZEROS_OF = /[0-9]-0\s?=\s?$/;

/** Undefined when something about the number says it counts or labels another thing. */
export function frameOf(place: Place, bare: Bare): Frame | undefined {
  const text = place.scene.passage.text;
  // "22s" in a cell is a gauge of laboratory syringes with a bore of its own, no plural.
  if (text.trim() === text.slice(place.span.start, place.span.end))
    return bare.plural && place.scene.passage.kind === 'cell' ? undefined : 'alone';
  if (elsewhere(place, bare)) return undefined;
  if (bare.value === 0 && amountsToNothing(place)) return undefined;
  if (finds(COLOUR_AFTER, place.after) || finds(COLOUR_BEFORE, place.before))
    return NUMBERED.test(place.before) || countsColoured(place) ? undefined : 'colour';
  if (repliesTo(text, place.span.start)) return 'option';
  if (
    finds(OPTION, place.before) ||
    (FIRST_CHOICE.test(text.slice(Math.max(0, place.span.start - 6), place.span.start)) &&
      /\sB[\s).]/.test(place.after))
  )
    return 'option';
  const before = text.slice(place.sentence.start, Math.min(bare.run.start, place.span.start));
  if (bare.value === 0 && /\b(?:after|before)\s$/i.test(place.before)) return 'handed';
  if (finds(POURED, before) || carriesUnit(place, bare)) return undefined;
  if (isRanked(place)) return 'article';
  const about = bare.decimals > 0 && finds(WORKED_OUT, place.before);
  if (
    !about &&
    !asksWhich(place, bare) &&
    finds(LABELLED, before) &&
    !(finds(SINCE, before) && RANKED_AFTER.test(place.after)) &&
    !isTaken(before, bare) &&
    !(bare.plural && /\b(?:box|pack|bag|tray|drawer)(?:es|s)? of\s$/i.test(before)) &&
    (bare.decimals === 0 || finds(LABELLED, place.before))
  )
    return plainThread(place, bare) ||
      boxed(place) ||
      ranOut(place) ||
      inSize(place, bare) ||
      ((inThread(place) || /\bof\s$/.test(place.before)) && namesNought(place, bare))
      ? 'handed'
      : undefined;
  if (bare.plural) return /\b(?:over|under)[\s-]$|[<>≤≥]\s?$/i.test(place.before) ? undefined : 'plural';
  if (DETERMINED.test(place.before) || compared(place) || finds(RATED, place.after)) return 'article';
  if (bare.run.values.length > 1) return 'run';
  if (namesNought(place, bare)) return 'article';
  if (FIELD_OF_OTHER.test(place.before)) return undefined;
  if (/[:=]\s?$/.test(place.before)) return ZEROS_OF.test(place.before.slice(-12)) ? undefined : 'colon';
  if (finds(HANDED, place.before)) return 'handed';
  return isReference(place, bare) ? undefined : 'loose';
}

/** "12 G if you want it fast, since 12 is the wider": which of them, and no time of day. */
const SINCE = /\b(?:since|because)\s$/i;
const RANKED_AFTER =
  /^\s(?:is|was)\s(?:the\s)?(?:wid|thick|thinn|narrow|fin|bigg|small|larg|stout)(?:er|est)\b/i;

/** "for the chest drain take 28": only "Take 2" at the head of a line is a scene. */
const isTaken = (before: string, { value, decimals }: Bare): boolean =>
  /\btake\s$/i.test(before) && (decimals > 0 || value >= 10 || !/^\W*take\s$/i.test(before));

/** "a purse-string in 1 holds better than 3-0": sewn in that size, in talk of thread. */
const inSize = (place: Place, { value, spoken }: Bare): boolean =>
  !spoken &&
  value <= 2 &&
  inThread(place) &&
  finds(SEWN_IN, place.before.slice(-48)) &&
  /^\s?(?:[,.;:]|$|(?:holds?|is|was|or|and|will|would|does|for|on|at|because)\b)/.test(place.after);
const SEWN_IN =
  /\b(?:purse-?strings?|stitch(?:es)?|sutures?|ties?|ligatures?|closed?|closure|layers?|runs?|running|continuous|interrupted|sewn|repair(?:ed)?|tied)\s(?:[a-z]+\s){0,2}in\s$/i;

/** "Q 22 or 18, which pours faster?": the letter announces a question, it counts nothing. */
const asksWhich = ({ scene, before }: Place, { run }: Bare): boolean =>
  run.values.length > 1 &&
  /(?:^|[\s*_])Q[*_]{0,2}[\s:]{1,2}(?:[0-9]{1,2}\s(?:or|and)\s)?$/.test(before) &&
  /^\s?[,:–—]\s?(?:which|what)\b/i.test(scene.passage.text.slice(run.end, run.end + 16));

/** "A six year old works out at 5.5": a sum's result, no time of day. */
const WORKED_OUT =
  /\b(?:about|(?:works?|worked|comes?|came|ends?)\s(?:out|up)\s(?:at|to|as|on)(?:\san?)?|start(?:s|ed|ing)?\s(?:(?:off|out)\s)?at)\s$/i;

/** "Q 24 Fr in millimeters? A 8.": the letter announces the answer. */
const repliesTo = (text: string, at: number): boolean =>
  /\?\W{1,4}A\s$/.test(text.slice(Math.max(0, at - 8), at)) &&
  /(?:^|\n)\W{0,3}Q\s+[A-Z0-9]/.test(text.slice(Math.max(0, at - 160), at));

/** "20 blue cannulas per box", "14 blue, 16 pink and 18 green cannulas"; "cannulas left: grey 12, pink 18". */
const countsColoured = (place: Place): boolean =>
  finds(COLOURED_THINGS, place.after) || IN_STOCK.test(place.before);
const COLOURED_THINGS = new RegExp(
  `^\\s${COLOUR}(?:,?\\s(?:and\\s)?[0-9]{1,3}\\s${COLOUR}){0,6}\\s(?:cannulas|cannulae|needles|catheters|butterflies|ones)\\b`,
  'i',
);
const IN_STOCK = /\b(?:left|used|wasted|opened|counted|ordered|needed)\b[^:.;]{0,20}:\s[^:.;]*$/i;

/** "closed in 0 nylon": nobody counts none of a thread. */
const plainThread = (place: Place, { value, spoken }: Bare): boolean =>
  value === 0 && !spoken && place.materials.some((hit) => hit.start === place.span.end + 1);

/** "one box 2 silk": so many boxes, and of which thread. */
const boxed = (place: Place): boolean =>
  /\b(?:one|two|three|four|five|six|a|[0-9]{1,2})\sbox(?:es)?\s$/i.test(place.before) &&
  place.materials.some((hit) => hit.start === place.span.end + 1);

/** Thread is named in the sentence. */
const inThread = ({ materials, devices }: Place): boolean =>
  materials.length > 0 || devices.some((hit) => hit.means === 'suture');

/** "If the tray runs out of 1": no score. */
const ranOut = (place: Place): boolean => /\b(?:runs?|ran|running|are|is)\sout\sof\s$/i.test(place.before);

/** "contrast: 15; screening time: 6": figures of a report. */
const MEASURED_OTHERWISE =
  /\b(?:contrast|(?:fluoro\w*|screening|operating) ?time|dose|volume|age|weight|blood loss|qty|quantity):\s?$/i;

/** Counted, summed, enumerated, or on a blade. */
function elsewhere(place: Place, bare: Bare): boolean {
  const text = place.scene.passage.text;
  const after = text.slice(place.span.end, place.sentence.end);
  const afterRun = text.slice(Math.max(bare.run.end, place.span.end), place.sentence.end);
  return (
    counts(after) ||
    (bare.spoken && AFTER_UNIT.test(place.before)) ||
    (!bare.spoken && /^:\s(?:[0-9]{1,2}-0\b)/.test(after)) ||
    finds(MEASURED_OTHERWISE, place.before.slice(-32)) ||
    (LEFT_OVER.test(after) && !/\b(?:no|any|an?|the|more)\s$/i.test(place.before)) ||
    (bare.run.values.length > 1 && counts(afterRun) && !(bare.decimals > 0 && UP_TO.test(after))) ||
    (BLADED.test(place.text) &&
      !ofTube(place, bare) &&
      !place.materials.some((hit) => hit.start === place.span.end + 1) &&
      !(
        bare.value >= 16 &&
        DETERMINED.test(place.before) &&
        !/\b(?:blades?|scalpels?)\b/i.test(place.text)
      )) ||
    otherBefore(place.before) ||
    GROUP_BEFORE.test(place.before.slice(-32)) ||
    afterBlade(place) ||
    SHARES_UNIT.test(place.before) ||
    IN_A_SUM.test(place.before) ||
    COUNT_OF.test(place.before) ||
    finds(IN_FORMULA, place.before.slice(-40)) ||
    (bare.decimals === 0 && finds(CHILD_OF, place.before)) ||
    finds(TEETH, place.text) ||
    RANGE_COUNTED.test(after) ||
    PART_OF_NAME.test(after) ||
    (CITED_AFTER.test(after) && CITED_BEFORE.test(place.before) && !answersIn(place, bare)) ||
    MATCHED.test(after) ||
    (bare.spoken && bare.decimals > 0 && ON_OUTSIDE.test(after)) ||
    countsThings(place, bare) ||
    countsMany(place, bare) ||
    enumerates(place, bare) ||
    numbersSection(place, bare) ||
    (/^[.)]\s/.test(after) &&
      /(?:^|\n)[*_\s]*$/.test(
        place.scene.passage.text.slice(Math.max(0, place.span.start - 6), place.span.start),
      )) ||
    spacedZero(place, bare) ||
    (after.startsWith(')') && !place.before.slice(-40).includes('('))
  );
}

/** "Finer needle: 18 or 21 G [21]": the answer, in brackets at the end of its line. */
function answersIn({ scene, span, after }: Place, { value }: Bare): boolean {
  const before = scene.passage.text.slice(Math.max(0, span.start - 120), span.start - 1);
  return /^\](?:\s*$|\s*\n)/.test(after) && / or |[?:]/.test(before) && before.includes(` ${value}`);
}
/** "The cuffed formula has 3.5 at the end", "and not 4": a part of the formula. */
const IN_FORMULA =
  /\bformula\s(?:[a-z]+\s)?(?:has|adds|uses|takes|ends\s(?:in|with)|starts\s(?:from|with))\s(?:[0-9.]+\s(?:at the end\s)?(?:and|but)\snot\s)?$/i;
/** "Girl, 5, burns.": how old. */
const CHILD_OF = /(?:^|[.*\n]\s?)(?:girl|boy|child|baby|toddler|lad)[,:]\s$/i;
/** Teeth are numbered too. */
const TEETH = /\b(?:(?:tooth|teeth) number\w*|wisdoms|wisdom teeth|molars?|premolars?|incisors?)\b/i;
/** "a 3.0 to 2 kg": up to what weight or age. */
const UP_TO = /^\s(?:to|for|until|under|below)\s[0-9.]{1,4}\s?(?:kg|kilos?|years?|months?|weeks?)\b/;
/** "4 goes with E": a question and its answer. */
const MATCHED = /^\s(?:goes with|belongs to|matches|pairs with|with)\s[A-H](?![A-Za-z])/;
/** "seven and a half on the outside": so many millimetres. */
const ON_OUTSIDE = /^\s(?:on the |at the )?(?:outside|inside|across)\b/i;

/** "Blade? I like the 3.": the sentence before names it and no more. */
function afterBlade({ scene, sentence }: Place): boolean {
  const before = scene.passage.text.slice(Math.max(0, sentence.start - 28), sentence.start);
  return finds(/(?:^|[.!?:*\n])\W*(?:and\s)?(?:the\s|your\s)?(?:blades?|gloves?)\W+$/i, before);
}

/** "30 left": what is in stock; "18 left ACF" is an arm. */
const LEFT_OVER = /^ left(?= ?(?:$|[.,;:)\n]|over\b))/;

/** "We did 14 cannulas and 3 drains": so many of them. */
const countsThings = (place: Place, { run, plural, span, decimals }: Bare): boolean =>
  !plural &&
  decimals === 0 &&
  run.values.length === 1 &&
  !finds(DETERMINED, place.before) &&
  place.devices.some((hit) => hit.start === span.end + 1 && /(?:s|ae)$/.test(hit.word));

/** "a Guedel 3 beside the 7.5 tube". */
const ofTube = (place: Place, { decimals }: Bare): boolean =>
  decimals > 0 &&
  (/^(?:\smm)?\s(?:cuffed\s|uncuffed\s)?(?:tubes?|ETTs?|trach\w*|endotracheal)\b/i.test(place.after) ||
    (TUBE_BEFORE.test(place.before) && !HALF_SIZED.test(place.text)));
/** "A 7.5 tube for most women, an 8.0 for most men, and size 3 blades": blades have no halves. */
const TUBE_BEFORE = /\b(?:tubes?|ETTs?)\b[^.;]{0,40}\b(?:an?|the)\s$/i;
const HALF_SIZED = /\b(?:gloves?|shoes?|masks?|lma|laryngeal|guedel|oropharyngeal|airways?)\b/i;

/** "a 5 Fr needs ten minutes and an 8 Fr twenty": a word right behind a unit counts something else. */
const AFTER_UNIT = /[0-9]\s?(?:fr|french|ch|g|gauge|mm)\s$/i;

/** "4 failed, 14 were resited": so many did. */
const countsMany = (place: Place, { run, plural, spoken }: Bare): boolean =>
  !plural &&
  !spoken &&
  run.values.length === 1 &&
  !finds(DETERMINED, place.before) &&
  /^\s(?:were|have)\s/i.test(place.after);

/** "5 0 silk": the dash of a thread size got lost, so its nought does not stand alone. */
const spacedZero = (place: Place, { value }: Bare): boolean => value === 0 && /[0-9]\s$/.test(place.before);

/** "… is reasonable 3", "… after surgery) 5": the number of a reference at the very end. */
const isReference = (place: Place, bare: Bare): boolean =>
  !bare.spoken &&
  bare.decimals === 0 &&
  place.scene.passage.kind !== 'cell' &&
  /^\s*$/.test(place.scene.passage.text.slice(place.span.end)) &&
  /(?:[a-z]{4}[).]?|mm)\s$/.test(place.before) &&
  !finds(
    /\b(?:gau?ge|french|size|number|usp|metric|needle|cannula|catheter|tube|drain|sheath|wire|silk|nylon)\w*\s$/i,
    place.before,
  );

/** "5 Drains" as a heading; "1 needles, 2 drains, 3 tubes": the number of a section. */
function numbersSection(place: Place, { value, decimals, spoken }: Bare): boolean {
  const { text, kind } = place.scene.passage;
  if (place.materials.some((hit) => hit.start === place.span.end + 1)) return false;
  if (spoken || !/^\s[A-Za-z]/.test(text.slice(place.span.end, place.span.end + 2))) return false;
  if (kind === 'heading') return place.span.start === 0 && /^\s[A-Z]/.test(text.slice(place.span.end));
  if (decimals > 0) return false;
  const before = text.slice(Math.max(0, place.span.start - 60), place.span.start);
  return new RegExp(`(?:^|[,:;]\\s)${value - 1}\\s[a-zA-Z]{3}[^0-9,;]*[,;]\\s$`).test(before);
}

/** "6. Skin barrier 7. Tape 8. Syringe": items numbered within a line. */
function enumerates(place: Place, bare: Bare): boolean {
  const text = place.scene.passage.text;
  if (numbersLine(text, bare)) return true;
  if (bare.decimals > 0 || !/^\.\s[A-Z(0-9]/.test(text.slice(place.span.end, place.span.end + 3)))
    return false;
  const near = text.slice(Math.max(0, place.span.start - 160), place.span.end + 160);
  return [bare.value - 1, bare.value + 1].some((next) => near.includes(` ${next}. `));
}

/** "11: 11 Fr", and on the next line "12: 0.018 in": each line opens with its number. */
function numbersLine(text: string, { span, value, decimals }: Bare): boolean {
  const sign = decimals > 0 ? undefined : /^ ?[:.)=]/.exec(text.slice(span.end, span.end + 2))?.[0];
  if (sign === undefined || (span.start > 0 && text.charAt(span.start - 1) !== '\n')) return false;
  const before = `\n${text.slice(Math.max(0, span.start - 160), span.start)}`;
  const after = text.slice(span.end, span.end + 160);
  return before.includes(`\n${value - 1}${sign}`) || after.includes(`\n${value + 1}${sign}`);
}

const MAGNITUDE =
  '(?:thick|thinn?|skinni|chunki|slender|fin|narrow|wid|bigg|larg|small|slimm?|fatt?|stout|heavi|light|strong|weak|coars|fast|slow)er';
/** "18 good, 16 better, 14 best": so it is judged, and nothing counted. */
const RATED = /^\s(?:better|best|good|fine|ideal|ok|okay)(?=[,.;:!]|$|\s(?:if|for|still|again)\b)/i;
const COMPARED_AFTER = new RegExp(
  `^\\s(?:is|are|was|runs|looks|flows)\\s(?:(?:an?|the|too|very|quite|rather|much|far|still|already|plenty)\\s)?(?:${MAGNITUDE}|${MAGNITUDE.replace(/er$/, 'est')}|thick|thin|fine|narrow|wide|big|small|stout)\\b`,
  'i',
);
const COMPARED_BEFORE = new RegExp(`\\b${MAGNITUDE}\\sthan\\s$`, 'i');

/** "because 27 is the higher number". */
const isRanked = (place: Place): boolean =>
  finds(
    /^\s(?:is|was)\s(?:the|a)\s(?:high|low|larg|small|bigg)(?:er|est)\s(?:number|figure|gauge|one)\b/i,
    place.after,
  );

/** "face 5 days, scalp 7, trunk 10 to 14": the unit said once holds for the items after it. */
function carriesUnit(place: Place, { run, plural }: Bare): boolean {
  if (plural || DETERMINED.test(place.before)) return false;
  const text = place.scene.passage.text.slice(place.sentence.start, run.start);
  const unit = matchesOf(text, OTHER_UNIT).at(-1);
  if (!unit) return false;
  const [first, ...items] = text.slice(unit.index + unit[0].length).split(/[,;]\s/);
  if (items.length === 1 && items[0] === '') return FOR_WHAT.test(first!) && FOR_WHAT.test(place.after);
  return first?.trim() === '' && items.length > 0 && items.every((item) => ITEM.test(item));
}
/** "5 mL for a small one, 30 after surgery". */
const FOR_WHAT = /^\s(?:for|after|before|in|if|when|on)\s[a-z\s-]{1,40}/i;
const OTHER_UNIT =
  /[0-9]\s?(?:days?|weeks?|months?|years?|hours?|min(?:ute)?s?|m[lL]|mg|mcg|kg|cm|%|°C?|bar|atm|kPa)\b/g;
const ITEM = /^(?:(?:and|or)\s)?(?:[A-Za-z]+\s){1,6}(?:[0-9]{1,3}(?:\s?(?:to|or|–|-)\s?[0-9]{1,3})?)?$/;

/** "30 is thinner than 27". */
const compared = (place: Place): boolean =>
  finds(COMPARED_AFTER, place.after) || finds(COMPARED_BEFORE, place.before);

/** "the 25s bend", "our 23s do not". */
const VERB_AFTER =
  /^\s(?:do|don't|bend|kink|clot|block|flow|run|go|come|stay|hold|snap|break|tear|give|let|take|drip|leak|fit|slide|bleed|flush|work|fail|blow|tissue|last|float|cut)\b/i;

/** "a 0 or a 1 loop": a thread that is looped. */
const LOOPED = /^\sloop(?:ed)?\b/i;

const pointed = (place: Place): boolean =>
  DETERMINED.test(place.before) || finds(COLOUR_BEFORE, place.before);

/** The phrase ends after the number, or goes on in a way a counted noun could not. */
export function isClosed(place: Place, bare: Bare): boolean {
  if (bare.value === 0 && !bare.spoken && ONE_NOUGHT_IS.test(place.before.slice(-24))) return true;
  if (CLOSED.test(place.after) || (/^\s\(/.test(place.after) && finds(COLOUR_AFTER, place.after)))
    return true;
  if ((bare.value === 0 || pointed(place)) && LOOPED.test(place.after)) return true;
  if (bare.plural && !bare.spoken && finds(VERB_AFTER, place.after)) return true;
  if (/^\s(?:\(|an?\s)/.test(place.after) && (bare.run.values.length > 1 || pointed(place))) return true;
  if (
    /(?:^|[\s"“‘'(])an?\s["“‘']?$/i.test(place.before) &&
    /^\s(?:[a-z]+(?:s|ed)|written|drawn|taken|given|chosen)\b/.test(place.after)
  )
    return true;
  const rest = place.scene.passage.text.slice(place.span.end, place.sentence.end);
  return (
    bare.run.values.length > 1 &&
    bare.run.end > place.span.end &&
    /^\s?(?:[/<-]|(?:et|ou|bis|und|oder)\b|à\s)/.test(rest)
  );
}
