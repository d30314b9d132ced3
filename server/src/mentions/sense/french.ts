/** Is "14F" a catheter, an age, a temperature, a tracer? Is "two French" people? */
import { phrase } from '../../texts/index.ts';
import { reading } from '../reading.ts';
import { labelsOf } from '../scene.ts';
import { READING } from '../texts/readings.ts';
import { ASKED_FOR, FETCHED, WANTED } from '../words/frames.ts';
import { FRENCH_PEOPLE, PATIENT, PATIENT_WORDS, PERSON_BEFORE } from '../words/people.ts';
import { factsOf } from './note-facts.ts';
import { type Place, wider } from './place.ts';
import { systemOf } from './systems.ts';
import { ask, NOTHING, size, type Verdict } from './verdict.ts';

const isFrench = (hits: Place['devices']): boolean => hits.some((hit) => systemOf(hit.means) === 'french');
const CUE =
  /\b(?:arter(?:y|ies|ial)|arteriotomy|puncture|percutaneous|ureteroscopes?|cystoscopes?|nephroscopes?|scopes?|channels?|introducer|bougies?|lumens?)\b/i;
/** The sentence measures something. */
const MEASURED = /\b(?:mm|millimet\w+|gauge|diameter|across|sizes?)\b/i;
/** Any catheter or tube word, however general. */
const CUED = /\b(?:cath\w*|tubes?|sheaths?|drains?|lumens?)\b/i;
const inContext = (place: Place): boolean =>
  wider(place).some(
    (scene) =>
      [...scene.kinds].some((device) => systemOf(device) === 'french') ||
      /\b(?:French|Fr|[Cc]harri[eè]re)\b/.test(scene.brief),
  );

export function frenchSense(place: Place, match: string, value: number): Verdict {
  // "10: French", and the next line of the key begins with its own number.
  if (/^\s(?:more|less|up|down)\b/i.test(place.after) && value <= 4) return NOTHING;
  if (/^french\s*\n/i.test(match) || countsHeading(place, match, value) || isMargin(place, match))
    return NOTHING;
  if (/french/i.test(match)) return nationality(place, match) ? NOTHING : size('french', 'unit-word', match);
  if (opensEntry(place, match, value)) return NOTHING;
  if (/[0-9][\s-]?F(?:s|\+)?$/.test(match)) return letterF(place, match, value);
  if (/f$/.test(match)) return isFrench(place.devices) ? size('french', 'catheter-beside', match) : NOTHING;
  if (/^ch/i.test(match)) return chapter(place, match);
  return size('french', 'unit-word', match);
}

/** "48F, abscess, 12 Fr": an age no catheter has, first in a line that names its catheter further on. */
const opensEntry = (place: Place, match: string, value: number): boolean =>
  value > 34 &&
  /[0-9]F$/.test(match) &&
  /(?:^|\n)[\s*•-]*$/.test(place.before) &&
  /^,.*[0-9]\s?Fr?\b/.test(place.after);

/** "## 3 FRENCH", where the headings are counted: the third part. */
function countsHeading({ around, scene }: Place, match: string, value: number): boolean {
  const { kind, text, index } = scene.passage;
  if (kind !== 'heading' || text.trim() !== match.trim()) return false;
  const before = around.note.passages.findLast(
    (one) => one.index < index && one.kind === 'heading' && /^\d/.test(one.text),
  );
  return Number(/^\d{1,2}(?=[.)]?\s)/.exec(before?.text ?? '')?.[0]) === value - 1;
}

/** "Allow about two French", "with the two French to spare": how much, said in words, is no size. */
const isMargin = (place: Place, match: string): boolean =>
  /^(?:one|two|three|four)\b/i.test(match) &&
  (/^\s(?:to spare|of room|of play|bigger|larger|wider|thicker|smaller|narrower|thinner|over|extra)\b/i.test(
    place.after,
  ) ||
    /\b(?:allow|add|adds|take|takes off|by|loses?|gains?)\s(?:(?:about|roughly|some|another|around|at least)\s)?$/i.test(
      place.before,
    ));

/** "two French grandmothers"; a spoken number needs catheters in the note. */
function nationality(place: Place, match: string): boolean {
  if (FRENCH_PEOPLE.test(place.after)) return true;
  if (!/^[a-z]/i.test(match) || /^french/i.test(match)) return false;
  if (MEASURED.test(place.text)) return false;
  return !isFrench(place.devices) && !inContext(place) && !factsOf(place.around).french;
}

/** "see Ch 4", "in Ch. 4": what stands before a chapter. */
const POINTED_AT = /(?:\b(?:see|in|from|of|read|cf\.?|voir|siehe|v[ée]ase)|[(§])\s?$/i;

/** "Ch 14 of the ward handbook", "Ch 3, pages 60 to 71": a chapter whatever stands beside it. */
const OF_BOOK =
  /^[,;]?\s(?:of|in)\s(?:the|our|your|this|that|my)\s(?:[a-z]+\s){0,2}(?:handbook|book|textbook|workbook|manual|guide|guidelines?|reader|atlas|edition)\b|^,?\s(?:pp?\.|pages?\s[0-9])/i;

const chapter = (place: Place, match: string): Verdict =>
  !OF_BOOK.test(place.after) &&
  (isFrench(place.devices) ||
    inContext(place) ||
    /^CH?[0-9]/.test(match) ||
    (factsOf(place.around).charriere && !POINTED_AT.test(place.before)) ||
    (factsOf(place.around).french && /[0-9]\s?[-–]\s?[0-9]/.test(match)))
    ? size('french', 'unit-word', match)
    : NOTHING;

/** A bare F: tracer and dose forms never; a temperature above 34; else catheter, or a question. */
function letterF(place: Place, match: string, value: number): Verdict {
  if (
    /^(?:-(?![0-9])|\])|^\s?(?:tracer|FDG|labell?ed)/i.test(place.after) ||
    /[[°]$|(?:gy|[0-9])\s?\/?\s?$/i.test(place.before)
  )
    return NOTHING;
  if (/\b(?:temp(?:erature)?s?|fever|febrile|warm|degrees?|heat|cold)\b|°/i.test(place.text) && value > 34)
    return NOTHING;
  if (person(place, value) || value < 1) return NOTHING;
  if (underFrench(place)) return size('french', 'table-label', match);
  if (/^\s?[x×]\s?[0-9]|^,\s[0-9.]{1,4}\s?cm\b/.test(place.after)) return size('french', 'by-length', match);
  if (follows(place)) return size('french', 'catheter-follows', match);
  if (!Number.isInteger(value) && value <= 34) return size('french', 'decimal', match);
  if (/[0-9][\s]?[-–][\s]?[0-9]/.test(match) && value <= 34 && rangedFrench(place))
    return size('french', 'range', match);
  if (/^\s?=\s?(?:1\/3|⅓|[0-9.,]+)\s?(?:mm|millimet|in\b|inch)/i.test(place.after))
    return size('french', 'equated', match);
  if (/mm\s?\($/.test(place.before)) return size('french', 'length-beside', match);
  if (UNIT_NEAR.test(place.before.slice(-60)) || UNIT_NEAR.test(place.after.slice(0, 60)))
    return size('french', 'unit-beside', match);
  if (ROOM.test(place.scene.passage.text.slice(place.sentence.start, place.span.start))) {
    // "Bay 6 – 14F": the first number is the bay's.
    const last = /[0-9]\s[-–—]\s([0-9]{1,2})F$/.exec(match)?.[1];
    return last === undefined ? NOTHING : unclear(place, match, Number(last), false);
  }
  if ((keyed(place) && factsOf(place.around).trueFalse) || inKeyRow(place, value)) return NOTHING;
  const near = isFrench(place.devices) || CUE.test(place.text) || fellow(place) || inRowOfFrench(place);
  if (near && !aside(place)) return size('french', 'catheter-beside', match);
  if (onCard(place) && USUAL.has(value) && factsOf(place.around).gauge && value >= 10)
    return unclear(place, match, value, true);
  return unclear(place, match, value, near);
}

/** "sizes 12–14F": a range of ages is no one's age, so catheters anywhere in the passage settle it. */
const rangedFrench = (place: Place): boolean =>
  CUED.test(place.text) ||
  ([...place.scene.kinds].some((device) => systemOf(device) === 'french') &&
    /\b(?:sizes?|French|Fr|lumens?|catheters?)\b/.test(place.scene.brief));

/** A cell under "French size". */
function underFrench({ around, scene }: Place): boolean {
  const header = scene.passage.cell && labelsOf(around, scene.passage).header?.passage.text;
  return header !== undefined && header.length < 60 && /\b(?:French|Fr|[Cc]harri[eè]re)\b/.test(header);
}

/** "| Introducer sheath | long | 7F, 11 cm |": another cell of the row names what has the size. */
function inRowOfFrench({ around, scene }: Place): boolean {
  const { cell } = scene.passage;
  const row = (cell && around.note.tables[cell.table]?.rows[cell.row]) ?? [];
  return row.slice(0, WIDEST_ROW).some((index) => isFrench(around.scenes[index]?.devices ?? []));
}
const WIDEST_ROW = 12;

/** "a card that said “14F, 2 pm”", "a note reading “16F”": written somewhere, and nothing else. */
const onCard = (place: Place): boolean =>
  /\b(?:cards?|notes?|stickers?|labels?|slips?|tags?|whiteboard|board|page|message|text)\b[^."“]{0,24}\b(?:says?|said|reads?|reading|read|written|marked|saying)\s["“]$/i.test(
    place.before,
  );

/** French written out a few words away. */
const UNIT_NEAR = /[0-9][\s-]?(?:Fr|FR|French|Ch)\b/;

const ROOM =
  /\b(?:rooms?|bays?|wards?|seats?|gates?|labs?|rows?|lockers?|flats?|suites?|theat(?:re|er)s?|stations?|corridors?|floors?|levels?|blocks?|buildings?|units?|halls?|offices?|desks?|shel(?:f|ves)|cupboards?|drawers?|box(?:es)?|lots?|batch(?:es)?|ref|items?|codes?|forms?|tables?|aisles?|beds?|slots?|bins?|cabinets?)\s$/i;

/** "14 F." at the head of a line: the answer to question 14. */
const keyed = (place: Place): boolean =>
  /(?:^|\n)$/.test(place.scene.passage.text.slice(Math.max(0, place.span.start - 1), place.span.start)) &&
  /^(?:[.,:;\s]|$)/.test(place.after);

/** "1 F, 2 T, 3 F": numbers that go up by one, each with its letter, and not all of them F. */
function inKeyRow({ scene: { passage }, span, before, after }: Place, value: number): boolean {
  const next = /^[,;.]?\s([0-9]{1,2})[-.):\s]{0,2}[TF]\b/.exec(after)?.[1];
  const last = /\b([0-9]{1,2})[-.):\s]{0,2}[TF][,;.]?\s$/.exec(before.slice(-10))?.[1];
  if (Number(next) !== value + 1 && Number(last) !== value - 1) return false;
  return /[0-9][-.):\s]{0,2}T\b/.test(passage.text.slice(Math.max(0, span.start - 80), span.end + 80));
}

/** Another F number in the sentence, in a note of French sizes. */
const fellow = (place: Place): boolean =>
  /[0-9][\s-]?F\b/.test(place.before + place.after) && (inContext(place) || factsOf(place.around).french);

/** "14F Foley", "7F long sheath": the thing right after. */
const follows = (place: Place): boolean =>
  place.devices.some(
    (hit) =>
      systemOf(hit.means) === 'french' &&
      hit.start >= place.span.end &&
      /^[\s)-](?:[a-z-]+\s){0,2}$/i.test(
        place.scene.passage.text.slice(place.span.end, Math.min(hit.start, place.span.end + 24)),
      ),
  );

/** The sentence says outright that it is somebody's age. */
const person = (place: Place, value: number): boolean =>
  PERSON_BEFORE.test(place.before) ||
  new RegExp(`\\b${value}[- ]year|\\b${value} ?y/?o`, 'i').test(place.text);

/** "14F, retention since noon": at the start of a phrase, what follows could be a complaint. */
const aside = (place: Place): boolean =>
  PATIENT.test(place.after) &&
  (/(?:^|[*_"“‘(]|["“‘][A-Za-z0-9]{1,12},?\s|[.;:,]\s)$/.test(place.before) || BOOKED.test(place.before));
/** "12:00 room 1, a 16F, drain check": a line of a list of patients. */
const BOOKED = /\b(?:rooms?|bays?|beds?|theat(?:re|er)s?|slots?|chairs?)\s[0-9]{1,2}[a-z]?,\san?\s$/i;

/** "leave a 14F at the desk", "asked me for a 14F": a thing is asked for, or somebody is. */
const requested = (place: Place): boolean =>
  FETCHED.test(place.before) ||
  WANTED.test(place.before) ||
  ASKED_FOR.test(place.before) ||
  FOR_ONE.test(place.before);
const FOR_ONE =
  /\b(?:ask|asks|asked|rang|rings|phoned|called|calls|bleeped|waiting|looking|holding)\s(?:\w+\s){0,2}for\san?\s["“]?$/i;

/** French sizes as they are stocked; other whole numbers with an F are ages. */
const USUAL: ReadonlySet<number> = new Set([4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16, 18, 20, 22, 24, 26, 28]);

/** No catheter beside it: the note's own style decides, else a reader would ask. */
function unclear(place: Place, match: string, value: number, near: boolean): Verdict {
  const notes = factsOf(place.around);
  if (/[0-9]\s-?F/.test(match) && !near) return NOTHING;
  if (
    value > 34 ||
    (!near && !USUAL.has(value) && Number.isInteger(value)) ||
    !(near || inContext(place) || notes.french || (requested(place) && notes.gauge))
  )
    return NOTHING;
  if (PATIENT_WORDS.test(place.text) && !near && !requested(place)) return NOTHING;
  if (notes.letterFrench && !aside(place)) return size('french', 'own-style', match);
  return ask(
    [
      reading(phrase(READING.catheter, { value }), `${value} Fr`, { system: 'french', value }),
      reading(phrase(READING.patient, { value }), `${value}-year-old female`),
    ],
    'age-or-french',
    match,
  );
}
