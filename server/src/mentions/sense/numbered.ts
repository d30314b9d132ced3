/** "#1", "size 7", "number two": the thing the number is written on tells the system. */

import type { System } from '../../sizes/model.ts';
import { phrase } from '../../texts/index.ts';
import { reading } from '../reading.ts';
import { headingsOf } from '../scene.ts';
import { READING } from '../texts/readings.ts';
import { BLADED, counts, GROUP_BEFORE, NOT_SIZES, otherBefore } from '../words/counted.ts';
import { factsOf, largeTube } from './note-facts.ts';
import { byNearness, earlier, type Place, wider } from './place.ts';
import { THICKNESS } from './suture.ts';
import { plausible, systemOf } from './systems.ts';
import { ofOtherTrade } from './trade.ts';
import { ask, NOTHING, size, type Verdict } from './verdict.ts';

export function numberedSense(place: Place, match: string, values: readonly number[]): Verdict {
  if (isIssue(place, match) || GROUP_BEFORE.test(place.before)) return NOTHING;
  if (NOT_SIZES.test(place.after) || counts(place.after) || ofOtherTrade(place)) return NOTHING;
  if (BLADED.test(place.after.slice(0, 40)) || otherBefore(place.before)) return NOTHING;
  // "Guedel size 2 is green, size 3 orange": the sentence names nothing else that size could be of.
  const nothingNamed = place.devices.length + place.materials.length === 0;
  if (BLADED.test(place.text) && nothingNamed && !/absorbable\b/i.test(place.text)) return NOTHING;
  if (nothingNamed && underBlades(place)) return NOTHING;
  if (/^,?\s?[0-9.]+[\s-]?(?:Fr|French|F|G|gauge)\b/.test(place.after)) return NOTHING;
  // "Metric counts in tenths, so number 3 there is …"
  if (
    /\bmetric\b(?!\s[0-9])/i.test(place.before) &&
    !/\bUSP\b|\bmetric (?:number|figure|size)/i.test(place.text)
  )
    return NOTHING;
  const whole = values.every(Number.isInteger) && !/[.,]/.test(match);
  if (TUBE_AFTER.test(place.after) && whole) {
    const tube = tubeQuestion(place, match, values);
    if (tube.is !== 'nothing') return tube;
  }
  const system =
    (match.startsWith('#') && suits('usp', values) && SEWN_WITH.test(place.before) ? 'usp' : undefined) ??
    systemNear(place, values) ??
    threadNumber(place, values) ??
    (match.startsWith('#') ? hashedThread(place, values) : undefined) ??
    (/^sizes?\b/i.test(match) || (/^nu?m?/i.test(match) && THICKNESS.test(place.text))
      ? systemAround(place, values)
      : undefined);
  if (system) return size(system, 'device-beside', match);
  const tube = tubeQuestion(place, match, values);
  return tube.is === 'nothing' ? thingQuestion(place, match, values) : tube;
}

/** "Size 2" under the heading "Laryngeal mask": the nearest heading is about masks and blades alone. */
function underBlades({ around, scene }: Place): boolean {
  const [over] = headingsOf(around, scene.passage);
  return over !== undefined && over.devices.length === 0 && BLADED.test(over.passage.text.slice(0, 80));
}

/** "Fix #3", "(#29, #30)": the number of a report in a list of changes. */
const isIssue = (place: Place, match: string): boolean =>
  match.startsWith('#') &&
  (PLACE_BEFORE.test(place.before) ||
    /\b(?:fix(?:es|ed)?|clos(?:e|es|ed)|resolv(?:e|es|ed)|issues?|pr|pull request|bugs?|tickets?|refs?|merge)\s$/i.test(
      place.before,
    ) ||
    (/\($/.test(place.before) && /^\)/.test(place.after)));

/** "IV pump #14", "bed #12": one of many alike. */
const PLACE_BEFORE =
  /\b(?:pumps?|monitors?|scanners?|machines?|ventilators?|beds?|rooms?|bays?|wards?|theat(?:re|er)s?|trolleys?|carts?|lockers?|cabinets?|drawers?|shelf|bins?|stations?|patients?|subjects?|cases?|charts?|visits?|orders?|lots?|items?|questions?|cards?|slides?|figures?|tables?|steps?|attempts?|notes?|chapters?|lessons?|days?|rules?|tips?)\s$/i;

/** The system of the nearest thing whose sizes can have this value. */
function systemNear(place: Place, values: readonly number[]): System | undefined {
  const text = place.scene.passage.text;
  const near = byNearness(
    [...place.materials.map((hit) => ({ ...hit, means: 'suture' as const })), ...place.devices],
    place.span,
    text,
  );
  for (const hit of near) {
    if (hit.means === 'catheter' && /^tub/.test(hit.word)) continue;
    const system = systemOf(hit.means);
    if (system && suits(system, values)) return system;
    if (system && values.every((value) => largeTube(place.around, system, value))) return system;
  }
  return undefined;
}

/** "Size 0" with the thread or the catheter named a sentence, a lead-in or a heading before. */
function systemAround(place: Place, values: readonly number[]): System | undefined {
  const threads = earlier(place, place.scene.materials).length > 0 ? (['usp'] as const) : [];
  const near = [
    ...threads,
    ...earlier(place, place.scene.devices).flatMap((hit) => systemOf(hit.means) ?? []),
  ];
  const far = wider(place).map((scene) => [
    ...(scene.materials.length > 0 ? (['usp'] as const) : []),
    ...[...scene.kinds].filter((kind) => kind !== 'catheter').flatMap((kind) => systemOf(kind) ?? []),
  ]);
  for (const group of [near, ...far]) {
    const systems = new Set(group.filter((system) => suits(system, values)));
    if (systems.size > 0) return systems.size === 1 ? [...systems][0] : undefined;
  }
  return undefined;
}

/** "Suture the catheter to the skin using #3": what it is sewn with. */
const SEWN_WITH =
  /\b(?:sutur(?:e|es|ed|ing)|sewn?|sew|stitch(?:es|ed)?|clos(?:e|es|ed|ing)|ligat(?:e|es|ed|ing)|tied?)\b[^.;:#0-9]{0,60}\b(?:using|with|by)\s(?:an?\s)?$/i;

/** "three-oh, or number three?": a thread size in the same sentence. */
function threadNumber(place: Place, values: readonly number[]): System | undefined {
  return /[0-9]-0\b|-(?:oh|aught|nought)\b|\bmetric (?:number|figure|size)/i.test(
    place.before + place.after,
  ) && suits('usp', values)
    ? 'usp'
    : undefined;
}

/** "#3 is finer than 0", "It's #5, nonabsorbable": in a note of threads, with words of thickness or thread near. */
function hashedThread(place: Place, values: readonly number[]): System | undefined {
  if (!factsOf(place.around).thread || !suits('usp', values)) return undefined;
  const near =
    THICKNESS.test(place.text) ||
    /\b(?:non-?)?absorbable\b|\b(?:suture|thread|stitch|spool|reel|strand)s?\b/i.test(place.text) ||
    earlier(place, place.scene.materials).length > 0;
  const others = place.devices.some(
    (hit) => systemOf(hit.means) !== undefined && systemOf(hit.means) !== 'usp',
  );
  return near && !others ? 'usp' : undefined;
}

/** Values that a bare number can have: whole gauges from 14, threads to 5, French from 3. */
function suits(system: System, values: readonly number[]): boolean {
  const whole = values.every(Number.isInteger);
  if (system === 'usp') return whole && values.every((value) => value >= 0 && value <= 7);
  if (system === 'needle-gauge') return whole && values.every((value) => value >= 14 && value <= 34);
  if (system === 'french') return values.every((value) => value >= 3 && value <= 40);
  if (system === 'wire-gauge') return whole && values.every((value) => value >= 14);
  return (
    system !== 'wire-inch' && system !== 'ep-metric' && values.every((value) => plausible(system, value))
  );
}

const TUBE_AFTER = /^[\s-](?:[a-z-]+\s){0,2}tubes?\b/i;
/** "Four collection tubes": so many of them. */
const TUBES_COUNTED = /^[\s-](?:[a-z-]+\s){0,2}tubes\b/i;
const TUBE_SETTLED =
  /\b(?:tracheal|endotracheal|ett|intubat\w+|trach\w*|cuff\w*|uncuffed|nasogastric|ng|feeding|chest|sump|suction tube|gastrostomy)\b/i;

/** "a size 7 tube", "a 6 tube": tracheal millimetres or French, unless something settles it. */
export function tubeQuestion(place: Place, match: string, values: readonly number[]): Verdict {
  const value = values[0]!;
  if (!TUBE_AFTER.test(place.after) || value < 2.5 || value > 12) return NOTHING;
  if (!/^(?:sizes?|#|no|num)/i.test(match) && TUBES_COUNTED.test(place.after)) return NOTHING;
  const told = settledTube(place);
  if (told) return size(told, 'device-in-context', match);
  return ask(
    [
      reading(phrase(READING.tube, { value }), `${value} mm ID`, { system: 'tube-id', value }),
      reading(phrase(READING.outer, { value }), `${value} Fr`, { system: 'french', value }),
    ],
    'tube-size',
    match,
  );
}

/** Systems in which a bare "size 7" may be meant, each with its words and its writing. */
const NAMED_BY_SIZE = [
  { system: 'french', words: READING.outer, write: (n: number) => `${n} Fr` },
  { system: 'tube-id', words: READING.inner, write: (n: number) => `${n} mm ID` },
  { system: 'usp', words: READING.thread, write: (n: number) => `USP ${n}` },
] as const;

/** "Send the size 7 over from the trolley", "size 3, one box": the size of what? */
function thingQuestion(place: Place, match: string, values: readonly number[]): Verdict {
  const [value] = values;
  if (value === undefined || values.length > 1 || !/^size\s[0-9]/i.test(match)) return NOTHING;
  const asked = THING_ASKED.test(place.before) && THING_CLOSED.test(place.after);
  const listed = /^\W*an?\s$/i.test(place.before) && ON_LIST.test(place.after);
  if (place.devices.length > 0 || !(asked || listed)) return NOTHING;
  const notes = factsOf(place.around);
  const dealt = { french: notes.french, 'tube-id': notes.tracheal, usp: notes.thread };
  const readings = NAMED_BY_SIZE.filter(({ system }) => dealt[system] && suits(system, values)).map(
    ({ system, words, write }) => reading(phrase(words, { value }), write(value), { system, value }),
  );
  const glove =
    value >= 6 && value <= 9 ? [reading(phrase(READING.glove, { value }), `glove size ${value}`)] : [];
  return readings.length > 0 && readings.length + glove.length > 1
    ? ask([...readings, ...glove], 'no-system', match)
    : NOTHING;
}
const ON_LIST =
  /^\s(?:is|was)\s(?:on (?:the|our|her|his) (?:list|board|sheet|card|form|order)|wanted|needed|asked for|missing|ordered)\b/i;
const THING_ASKED =
  /\b(?:send|bring|fetch|pass|hand|get|give|grab|leave|put|need|want|order(?:ed)?|open|ask(?:ed)? for|call(?:ed|s)? for|ring for)\s(?:me\s|us\s|up\s|out\s)?["“]?(?:the|an?|another|one)\s["“]?$/i;
const THING_CLOSED = /^["”]?(?:[.,;!?"”]|$|\s(?:over|from|for|please|to|out|up|back|and|in|on|by)\b)/i;

/** The note itself says that nobody could tell. */
const UNSURE =
  /\b(?:nobody (?:wrote|said|knew|knows)|had to (?:ring|call|phone|ask)|rang to ask|could(?:n't| not) (?:say|tell)|is all (?:the|it|he|she|they)|and nothing else|which (?:it|one) (?:meant|was))\b/i;

/** "a size 8 tube is 8 mm inside": the sentence says what the number measures. */
const INSIDE = /\bmm\s(?:inside|internally|inner|internal|i\.?d\b)|\b(?:inner|internal|inside)\sdiameter\b/i;

/** "Tube: an 8, an 8.5 and a 9": tubes are counted in halves. */
const HALF_TUBE = /\btubes?\b[^.;]{0,60}\b[3-9]\.5(?!\s?(?:Fr|F|cm|mL|kg)\b)/i;

/** Said in this sentence, or of this very number before it: a "size 6 tube" far from a "3.5 tube" stays open. */
function halves({ scene, span, text }: Place): boolean {
  if (HALF_TUBE.test(text)) return true;
  const number = /[0-9]{1,2}/.exec(scene.passage.text.slice(span.start, span.end))?.[0];
  return (
    number !== undefined &&
    HALF_TUBE.test(scene.brief) &&
    new RegExp(`\\b(?:an?|the)\\s${number}(?![.0-9])`).test(scene.brief)
  );
}

/** One kind of tube named in the sentence, or the only kind the whole note deals in. */
function settledTube(place: Place): 'tube-id' | 'french' | undefined {
  if (UNSURE.test(place.text)) return undefined;
  if (INSIDE.test(place.text) || halves(place)) return 'tube-id';
  const notes = factsOf(place.around);
  if (notes.tracheal && !notes.french) return 'tube-id';
  const named = place.devices.filter((hit) => TUBE_SETTLED.test(hit.word));
  const systems = new Set(named.map((hit) => systemOf(hit.means)));
  const [only] = systems;
  return systems.size === 1 && (only === 'tube-id' || only === 'french') ? only : undefined;
}
