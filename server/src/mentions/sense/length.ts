/** Is "4.7 mm" a diameter or a needle's length, or a wound, a depth, a distance? */
import { DIAMETER, OTHER_LENGTH } from '../words/lookalikes.ts';
import { type Place, wider } from './place.ts';
import { NOTHING, size, type Verdict } from './verdict.ts';

/** `sized`: the sentence holds a size of another system. */
export function lengthSense(
  place: Place,
  match: string,
  system: 'millimetre' | 'inch',
  sized: boolean,
): Verdict {
  if (system === 'inch' && !inchUnit(place, match)) return NOTHING;
  if (/[x×]\s?$/i.test(place.before) && sized) return size(system, 'gauge-by-length', match);
  const clause = nearby(place);
  const diameter = DIAMETER.test(clause) || headed(place);
  if (OTHER_LENGTH.test(clause) && !/\b(?:diameter|outer|inner|lumen|bore|od|id)\b/i.test(clause))
    return NOTHING;
  if (diameter) return size(system, 'diameter-word', match);
  if (sized || (place.devices.length > 0 && /\b(?:needles?|wires?|guidewires?|threads?)\b/i.test(clause)))
    return size(system, 'size-beside', match);
  return NOTHING;
}

/** The part of the sentence around the number, up to 60 characters each way, cut at ; and sentence marks. */
function nearby(place: Place): string {
  const before = place.before
    .slice(-60)
    .split(/[;]|\.\s/)
    .at(-1)!;
  const after = place.after.slice(0, 60).split(/[;]|\.\s/)[0]!;
  return `${before} ${after}`;
}

const headed = (place: Place): boolean =>
  wider(place)
    .slice(0, 3)
    .some(
      (scene) =>
        scene.passage.text.length < 80 &&
        (DIAMETER.test(scene.passage.text) ||
          (scene.passage.kind === 'cell' && /\blength\b|\bmm\b|\bin\b|inch/i.test(scene.passage.text))),
    );

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
    /^\s?(?:[).,;:|"”]|$|needles?|long|length|wire|blunt|×|or\b|and\b|\()/i.test(place.after) ||
    /[x×]\s?$/i.test(place.before)
  );
}
