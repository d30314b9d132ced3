/** Is "4.7 mm" a diameter or a needle's length, or a wound, a depth, a distance? */
import type { Scene } from '../scene.ts';
import { sentenceIndex } from '../scene.ts';
import { DIAMETER, ELSEWHERE, OTHER_LENGTH } from '../words/lookalikes.ts';
import { byNearness, type Place, wider } from './place.ts';
import { NOTHING, size, type Verdict } from './verdict.ts';

export type LengthSystem = 'millimetre' | 'inch';

/** What other sizes stand near: in the sentence, or shortly before it. */
export interface Company {
  readonly sentence: boolean;
  readonly before: boolean;
}

/** A gauge right before or after: "21 G × 1½ in", "(22 G, 50 mm)", "50 mm, 20 gauge". */
const GAUGE_BEFORE = /[0-9](?:[\s-]?(?:G|ga|gauge))[,;]?\s?(?:[x×*/]|by|long)?\s?(?:an?\s)?(?:size\s)?$/i;
const GAUGE_AFTER = /^[,]?\s?(?:[x×]\s?)?(?:#?[0-9]{2}[\s-]?(?:G\b|ga\b|gauge))/i;
const TIMES = /[x×]\s?$/i;
const RIGHT_AFTER =
  /^[\s,-]{0,2}(?:\(?in\s)?(?:across|wide|outside|inside|outer|inner|in diameter|diameters?|od\b|id\b|bore|thick|of outer|of outside|lumen|calib(?:er|re)|internal|external|in width|round)\b/i;
const THING_AFTER =
  /^[\s-](?:[a-z-]+\s){0,2}(?:needles?|guidewires?|wires?|sheaths?|drains?|stents?|catheters?|cannula[es]?|k-wires?|taper|reverse|cutting|circle|curve)\b/i;

export function lengthSense(place: Place, match: string, system: LengthSystem, company: Company): Verdict {
  if (system === 'inch' && !inchUnit(place, match)) return NOTHING;
  if (ELSEWHERE.test(place.after)) return NOTHING;
  if (
    GAUGE_BEFORE.test(place.before.slice(-24)) ||
    GAUGE_AFTER.test(place.after) ||
    (TIMES.test(place.before) && company.sentence)
  ) {
    return size(system, 'gauge-by-length', match);
  }
  if (RIGHT_AFTER.test(place.after)) return size(system, 'diameter-word', match);
  const clause = nearby(place);
  const strong = /\b(?:diameters?|outer|inner|lumen|bore|od|id)\b/i.test(clause);
  if (OTHER_LENGTH.test(clause) && !strong) return NOTHING;
  if (DIAMETER.test(clause) || headed(place)) return size(system, 'diameter-word', match);
  if (THING_AFTER.test(place.after)) return size(system, 'thing-follows', match);
  if (company.sentence) return size(system, 'size-beside', match);
  if (place.devices.length > 0 && /\b(?:needles?|wires?|guidewires?|threads?|taper|cutting)\b/i.test(clause))
    return size(system, 'device-beside', match);
  return company.before || needleHeading(place) ? size(system, 'size-before', match) : NOTHING;
}

/** "The 38 mm greens" under a heading of needles. */
function needleHeading(place: Place): boolean {
  if (!/\b(?:the|an?|our|their)\s$/i.test(place.before)) return false;
  return wider(place).some((scene) =>
    scene.devices.some((hit) => hit.means === 'needle' || hit.means === 'suture-needle'),
  );
}

/** The part of the sentence around the number, up to 60 characters each way; what follows a comma belongs elsewhere. */
function nearby(place: Place): string {
  const before = place.before
    .slice(-60)
    .split(/[;]|\.\s/)
    .at(-1)!;
  const after = place.after.slice(0, 60).split(/[;,(]|\.\s/)[0]!;
  return `${before} ${after}`;
}

const headed = (place: Place): boolean => wider(place).slice(0, 3).some(namesLength);

const namesLength = (scene: Scene): boolean => {
  const { text, kind } = scene.passage;
  if (text.length >= 80) return false;
  return DIAMETER.test(text) || (kind === 'cell' && /\blength\b|\bmm\b|\bin\b|inch|needle/i.test(text));
};

/** "in" is the preposition far more often than the unit. */
function inchUnit(place: Place, match: string): boolean {
  if (!/[\s]in\.?$/.test(match)) return true;
  if (
    /^\s(?:the|a|an|each|every|this|that|my|our|your|his|her|its|their|any|all|[0-9]|water|place|and out|one|two|case|order|use|stock|total|line|half|bay|room|adults?|children|series|width and)\b/i.test(
      place.after,
    )
  )
    return false;
  return (
    /[½¼¾⅛⅜⅝⅞⅓⅔./⁄]/.test(match) ||
    /^\s?(?:[).,;:|"”]|$|needles?|long|length|wire|blunt|×|or\b|and\b|\(|one\b|ones\b)/i.test(place.after) ||
    /[x×]\s?$/i.test(place.before)
  );
}

/** How near other sizes stand: same sentence, or the two sentences before in the passage. */
export function companyOf(scene: Scene, at: number, sized: ReadonlySet<number>, before: boolean): Company {
  const index = sentenceIndex(scene, at);
  return { sentence: sized.has(index), before: before || sized.has(index - 1) || sized.has(index - 2) };
}

/** A tube's "7.5 mm": inner diameter when the nearest device is a tracheal tube. */
export function tubeLength(place: Place, values: readonly number[], tubes: boolean): boolean {
  if (!values.every((value) => value >= 2 && value <= 10.5 && (value * 2) % 1 === 0)) return false;
  if (/^\s?(?:outer|outside|od\b|across|wide|thick)/i.test(place.after)) return false;
  const nearest = byNearness(place.devices, place.span, place.scene.passage.text)[0];
  if (nearest?.means === 'tracheal-tube')
    return !/\b(?:outer|outside|suction|catheter)\b/i.test(place.after.slice(0, 30));
  if (nearest && /^tub/.test(nearest.word)) return tubes && /^[\s-](?:[a-z]+\s)?tubes?\b/i.test(place.after);
  return false;
}
