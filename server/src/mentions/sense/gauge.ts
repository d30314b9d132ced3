/** Is "18 G" a needle's gauge, a weight, an acceleration? */
import { finds } from '../../notes/patterns.ts';
import { phrase } from '../../texts/index.ts';
import { reading } from '../reading.ts';
import { READING } from '../texts/readings.ts';
import { ROOM_BEFORE } from '../words/rooms.ts';
import {
  DRUG_BEFORE,
  MEASURED_OUT,
  NOT_GAUGE,
  NOT_GAUGE_BEFORE,
  OF_SUBSTANCE,
  SPUN,
  WEIGHED,
} from '../words/weights.ts';
import { factsOf } from './note-facts.ts';
import { type Place, wider } from './place.ts';
import { systemOf } from './systems.ts';
import { ofOtherTrade } from './trade.ts';
import { ask, NOTHING, size, type Verdict } from './verdict.ts';

const GAUGED = ['needle', 'winged-set', 'cannula'] as const;

const isGauge = (place: Place): boolean =>
  place.devices.some((hit) => systemOf(hit.means) === 'needle-gauge');

/** "18 gauge wire": a wire's own gauge, whatever it is for. */
const WIRE_AFTER =
  /^[\s-](?:(?:solid|stranded|copper|steel|stainless|surgical|dental|orthopa?edic|soft|malleable|monofilament)\s){0,2}wires?\b/i;

const gaugeNear = (place: Place): boolean =>
  /[0-9]\s?-?(?:G\b|ga\b|gauge\b)/.test(place.before + place.after) ||
  wider(place).some((scene) => GAUGED.some((device) => scene.kinds.has(device)));

/** "Q-26G", "(P)-25 G" beside needles; "Wi-Fi-5G" and "REF-20G" are none. */
const hyphened = (place: Place, match: string, value: number): boolean =>
  value <= 34 &&
  /^[0-9]{2}\s?(?:G|Gauge|gauge)$/.test(match) &&
  !/[A-Z]{3}-$/.test(place.before) &&
  (isGauge(place) || place.scene.kinds.has('needle'));

/** Gauge by unit word or letter, after or before the number. */
export function gaugeSense(place: Place, match: string, value: number): Verdict {
  if (NOT_GAUGE.test(place.after) || NOT_GAUGE_BEFORE.test(place.before)) return NOTHING;
  if (ofOtherTrade(place) || ROOM_BEFORE.test(place.before)) return NOTHING;
  if (/[A-Za-z)]-$/.test(place.before) && !hyphened(place, match, value)) return NOTHING;
  if (SPUN.test(place.text) && !isGauge(place)) return NOTHING;
  if (
    /^gau?ge/i.test(match) &&
    /\b(?:pressure|fuel|tyre|tire|steam|rain|rail\w*|strain|depth|film)\s$/i.test(place.before)
  )
    return NOTHING;
  const wire = place.devices.some((hit) => hit.means === 'steel-wire') || finds(WIRE_AFTER, place.after);
  const system = wire ? 'wire-gauge' : 'needle-gauge';
  if (value > 40 && !(isGauge(place) || /^[\s-]?(?:catheter|cannula|needle|iv)/i.test(place.after)))
    return NOTHING;
  if (value > 40 && /ga$/i.test(match)) return NOTHING;
  if (/^gau?ge/i.test(match) && /\bFrench\s$/.test(place.before)) return size('french', 'unit-word', match);
  if (/gau?ge|guage|calibre|jauge/i.test(match)) return size(system, 'unit-word', match);
  if (/ga\b/i.test(match)) return gestational(place) ? NOTHING : size(system, 'unit-word', match);
  if (/^g/i.test(match)) return letterFirst(place, match);
  if (/G/.test(match)) return capital(place, match, value, system);
  return smallLetter(place, match, value);
}

const gestational = (place: Place): boolean =>
  /\b(?:gestation|infants?|weeks?|newborns?|bab(?:y|ies)|preterm)\b|\+6d/i.test(place.text) &&
  !isGauge(place);

/** A capital G is gauge unless a drug stands beside it in a note without needles. */
function capital(place: Place, match: string, value: number, system: 'needle-gauge' | 'wire-gauge'): Verdict {
  // The long patterns are asked last: with a needle about, they decide nothing.
  if (isGauge(place) || (value >= 10 && factsOf(place.around).needles))
    return size(system, 'unit-letter', match);
  if (value < 10)
    return gaugeNear(place) || besideFrench(place, value) ? size(system, 'gauge-near', match) : NOTHING;
  const measured = DRUG_BEFORE.test(place.before) || OF_SUBSTANCE.test(place.after);
  return measured ? NOTHING : size(system, 'unit-letter', match);
}

/** "8 Fr is not 8 G": one number on both scales. */
const besideFrench = (place: Place, value: number): boolean =>
  new RegExp(`(?<![0-9.])${value}\\s?(?:Fr|Ch|French)\\b`).test(place.before + place.after);

/** "G18": only beside a needle or cannula, since grid squares and rooms look alike. */
function letterFirst(place: Place, match: string): Verdict {
  if (/\b(?:desk|seat|row|grid|square|shelf)\s$/i.test(place.before)) return NOTHING;
  return isGauge(place) || gaugeNear(place) ? size('needle-gauge', 'letter-first', match) : NOTHING;
}

/** "18g": gauge beside a needle, grams of a drug; a question in a note of needles when neither stands by. */
function smallLetter(place: Place, match: string, value: number): Verdict {
  // "Vitamin K is given with a 25g": what it is given with is no dose.
  const grams =
    (DRUG_BEFORE.test(place.before) && !GIVEN_WITH.test(place.before)) || MEASURED_OUT.test(place.after);
  const follows =
    /^[\s-]{0,2}(?:[a-z-]+\s){0,2}(?:needles?|cannula\w*|iv\b|ivs\b|hubs?|butterfl|spinal|introducer|catheter|biopsy|pencil|cutting|pvc|picc)/i.test(
      place.after,
    );
  if (follows && !grams) return size('needle-gauge', 'needle-follows', match);
  if (!grams && isGauge(place) && OR_WIDER.test(place.after))
    return size('needle-gauge', 'needle-beside', match);
  const weighed = grams || WEIGHED.test(place.text);
  if (!weighed && needleClose(place)) return size('needle-gauge', 'needle-beside', match);
  const notes = factsOf(place.around);
  if (grams || !notes.gauge || value < 14 || value > 30 || !Number.isInteger(value)) return NOTHING;
  if (weighed && /[0-9]\s/.test(match)) return NOTHING;
  if (/\bmeant by\b/i.test(place.scene.brief)) return NOTHING;
  if (notes.smallLetterGauge && !weighed) return size('needle-gauge', 'own-style', match);
  if (!weighed && !WRITTEN.test(place.before) && !GIVEN_WITH.test(place.before) && besideOwnGauge(place))
    return size('needle-gauge', 'gauge-near', match);
  return ask(
    [
      reading(phrase(READING.needle, { value }), `${value} G`, { system: 'needle-gauge', value }),
      reading(phrase(READING.grams, { value }), `${value} g of`),
    ],
    'grams-or-gauge',
    match,
  );
}

/** "16g or larger": a dose would be more or less. */
const OR_WIDER = /^\s(?:or|and)\s(?:larg|bigg|small|wid|fin|narrow)er\b/i;

/** A needle or cannula a few words before or after, in the same clause. */
const needleClose = (place: Place): boolean =>
  place.devices.some((hit) => {
    if (systemOf(hit.means) !== 'needle-gauge' || !POINTED.test(hit.word)) return false;
    const { text } = place.scene.passage;
    const between =
      hit.start >= place.span.end
        ? text.slice(place.span.end, hit.start)
        : text.slice(hit.end, place.span.start);
    return between.length <= CLOSE && !/[.;]\s|,\s(?:and|but|then)\s/.test(between);
  });
const CLOSE = 40;
/** Words for the thing itself, not for what is done with it. */
const POINTED =
  /needle|cannul|butterfl|winged|hypodermic|kanüle|nadel|aiguille|aguja|cánula|hub|\bivs?\b|pivc|peripheral|intravenous|over-/i;

const GIVEN_WITH =
  /\b(?:given|injected|drawn up|goes in|administered)\b[^.;]{0,40}\b(?:with|using|through) an? $/i;

/** The whole of what somebody wrote: the sentences around it were not there to be read. */
const WRITTEN =
  /\b(?:marked|labell?ed|wrote|written|write|writes|scribbled)\s(?:only\s|just\s|down\s)?["“]?$|["“](?:more|another|one|an?|get|need|needs|some|two|three)\s$|\b(?:wrote|written|writes|says?|said|reads?|scribbled|scrawled|put|has)(?:\s(?:just|only|simply|down))?:?,?\s["“]$/i;

/** Needles and gauges with their unit elsewhere in the passage. */
const besideOwnGauge = ({ scene }: Place): boolean =>
  /[0-9]\s?-?(?:G\b|ga\b|gauge\b)/.test(scene.brief) &&
  (GAUGED.some((device) => scene.kinds.has(device)) || scene.kinds.has('central-line'));
