/** How a bare number stands in its sentence: with an article, handed over, in a run, beside a colour. */
import type { Place } from '../sense/place.ts';
import { BLADED, counts, IN_A_SUM, LABELLED, otherBefore, POURED, SHARES_UNIT } from '../words/counted.ts';
import { CLOSED, COLOUR, DETERMINED, HANDED } from '../words/frames.ts';
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
  `(?:^|[\\s(,;:])${COLOUR}\\s?(?:(?:is|are|for|means|hub|cannula)\\s(?:the\\s)?|[=:–—→-]\\s?|\\s)$`,
  'i',
);
const OPTION = /(?:^|[\s(])(?:[a-eA-E][).:]\s?|[B-E]\s)$/;

/** Undefined when something about the number says it counts or labels another thing. */
export function frameOf(place: Place, bare: Bare): Frame | undefined {
  const text = place.scene.passage.text;
  if (text.trim() === text.slice(place.span.start, place.span.end)) return 'alone';
  if (elsewhere(place, bare)) return undefined;
  if (COLOUR_AFTER.test(place.after) || COLOUR_BEFORE.test(place.before)) return 'colour';
  if (OPTION.test(place.before)) return 'option';
  const before = text.slice(place.sentence.start, Math.min(bare.run.start, place.span.start));
  if (bare.value === 0 && /\b(?:after|before)\s$/i.test(place.before)) return 'handed';
  if (POURED.test(before)) return undefined;
  if (LABELLED.test(before) && (bare.decimals === 0 || LABELLED.test(place.before))) return undefined;
  if (bare.plural) return /\b(?:over|under)[\s-]$/i.test(place.before) ? undefined : 'plural';
  if (DETERMINED.test(place.before) || compared(place)) return 'article';
  if (bare.run.values.length > 1) return 'run';
  if (/:\s?$/.test(place.before)) return 'colon';
  return HANDED.test(place.before) ? 'handed' : 'loose';
}

/** Counted, summed, enumerated, or on a blade. */
function elsewhere(place: Place, bare: Bare): boolean {
  const text = place.scene.passage.text;
  const after = text.slice(place.span.end, place.sentence.end);
  const afterRun = text.slice(Math.max(bare.run.end, place.span.end), place.sentence.end);
  return (
    counts(after) ||
    (bare.run.values.length > 1 && counts(afterRun)) ||
    BLADED.test(place.text) ||
    otherBefore(place.before) ||
    SHARES_UNIT.test(place.before) ||
    IN_A_SUM.test(place.before) ||
    (/^[.)]\s/.test(after) &&
      /(?:^|\n)[*_\s]*$/.test(
        place.scene.passage.text.slice(Math.max(0, place.span.start - 6), place.span.start),
      )) ||
    spacedZero(place, bare, after) ||
    (after.startsWith(')') && !place.before.slice(-40).includes('('))
  );
}

/** "5 0 silk": the dash of a thread size got lost, so neither number stands alone. */
const spacedZero = (place: Place, { value }: Bare, after: string): boolean =>
  (value === 0 && /[0-9]\s$/.test(place.before)) || /^\s0(?![0-9.,])/.test(after);

const MAGNITUDE =
  '(?:thick|thinn?|fin|narrow|wid|bigg|larg|small|slimm?|fatt?|stout|heavi|light|strong|weak|coars|fast|slow)er';
const COMPARED_AFTER = new RegExp(
  `^\\s(?:is|are|was|runs|looks|flows)\\s(?:(?:too|very|quite|rather|much|far|still|already|plenty)\\s)?(?:${MAGNITUDE}|thick|thin|fine|narrow|wide|big|small|stout)\\b`,
  'i',
);
const COMPARED_BEFORE = new RegExp(`\\b${MAGNITUDE}\\sthan\\s$`, 'i');

/** "30 is thinner than 27". */
const compared = (place: Place): boolean =>
  COMPARED_AFTER.test(place.after) || COMPARED_BEFORE.test(place.before);

/** The phrase ends after the number, or goes on in a way a counted noun could not. */
export function isClosed(place: Place, bare: Bare): boolean {
  if (CLOSED.test(place.after)) return true;
  if (/(?:^|[\s"“‘'(])an?\s["“‘']?$/i.test(place.before) && /^\s[a-z]+(?:s|ed)\b/.test(place.after))
    return true;
  const rest = place.scene.passage.text.slice(place.span.end, place.sentence.end);
  return (
    bare.run.values.length > 1 &&
    bare.run.end > place.span.end &&
    /^\s?(?:[,/–→><-]|or\b|and\b|to\b|then\b)/.test(rest)
  );
}
