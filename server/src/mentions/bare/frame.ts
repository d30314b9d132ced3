/** How a bare number stands in its sentence: with an article, handed over, in a run, beside a colour. */
import type { Place } from '../sense/place.ts';
import { CLOSED, COLOUR, DETERMINED, HANDED } from '../words/frames.ts';
import { BLADED, COUNTED, LABELLED, SHARES_UNIT } from '../words/lookalikes.ts';
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
const OPTION = /(?:^|[\s(])[a-eA-E][).:]\s?$/;

/** Undefined when something about the number says it counts or labels another thing. */
export function frameOf(place: Place, bare: Bare): Frame | undefined {
  const text = place.scene.passage.text;
  const before = text.slice(place.sentence.start, Math.min(bare.run.start, place.span.start));
  const after = text.slice(place.span.end, place.sentence.end);
  const afterRun = text.slice(Math.max(bare.run.end, place.span.end), place.sentence.end);
  if (text.trim() === text.slice(place.span.start, place.span.end)) return 'alone';
  if (COUNTED.test(after) || (bare.runLength > 1 && COUNTED.test(afterRun))) return undefined;
  if (
    BLADED.test(place.text) ||
    SHARES_UNIT.test(place.before) ||
    /[+×=÷*]\s$|\b(?:plus|minus|times)\s$/.test(place.before)
  )
    return undefined;
  const coloured = COLOUR_AFTER.test(after) || COLOUR_BEFORE.test(place.before);
  if (coloured) return 'colour';
  if (OPTION.test(place.before)) return 'option';
  if (bare.plural) return 'plural';
  if (LABELLED.test(before)) return undefined;
  if (DETERMINED.test(place.before)) return 'article';
  if (bare.runLength > 1) return 'run';
  if (/:\s?$/.test(place.before)) return 'colon';
  return HANDED.test(place.before) ? 'handed' : 'loose';
}

/** The phrase ends after the number, or goes on in a way a counted noun could not. */
export function isClosed(place: Place, bare: Bare): boolean {
  if (CLOSED.test(place.after)) return true;
  const rest = place.scene.passage.text.slice(place.span.end, place.sentence.end);
  return (
    bare.runLength > 1 &&
    bare.run.end > place.span.end &&
    /^\s?(?:[,/–→><-]|or\b|and\b|to\b|then\b)/.test(rest)
  );
}
