/** "#1", "size 7", "number two": the thing the number is written on tells the system. */
import type { System } from '../../sizes/model.ts';
import { COUNTED } from '../words/lookalikes.ts';
import { byNearness, earlier, type Place, wider } from './place.ts';
import { plausible, systemOf } from './systems.ts';
import { ask, NOTHING, size, type Verdict } from './verdict.ts';

const NOT_SIZES =
  /^[\s-]*(?:gloves?|blades?|scalpel|laryngoscope|mac\b|miller|priority|airway card|forceps|shoe|font|battery|hook|oropharyngeal|lma\b|laryngeal mask|scrubs|gown|pair|rule|reason|goal|concern|cause|tip|mistake|question|step|on the|sieve)/i;
const BLADE =
  /\b(?:blades?|scalpels?|gloves?|laryngoscopes?|macintosh|oropharyngeal|laryngeal mask|lma|scissors|shoes?)\b/i;

export function numberedSense(place: Place, match: string, values: readonly number[]): Verdict {
  if (NOT_SIZES.test(place.after) || COUNTED.test(place.after)) return NOTHING;
  if (BLADE.test(place.after.slice(0, 40)) || BLADE.test(place.before.slice(-24))) return NOTHING;
  const system = systemNear(place, values);
  if (system) return size(system, 'device-beside', match);
  return tubeQuestion(place, match, values);
}

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
  }
  return undefined;
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

/** "a size 7 tube": tracheal millimetres or French, unless something settles it. */
function tubeQuestion(place: Place, match: string, values: readonly number[]): Verdict {
  if (!place.devices.some((hit) => /^tub/.test(hit.word))) return NOTHING;
  const context = [...earlier(place, place.scene.devices), ...wider(place).flatMap((scene) => scene.devices)];
  const told = context
    .map((hit) => (/^tub/.test(hit.word) ? undefined : systemOf(hit.means)))
    .find((system) => system === 'tube-id' || system === 'french');
  if (told && suits(told, values)) return size(told, 'device-in-context', match);
  const value = values[0]!;
  if (value < 2.5 || value > 12) return NOTHING;
  return ask(
    [
      {
        size: { system: 'tube-id', value },
        words: `${value} mm inner diameter, a tracheal tube`,
        write: `${value} mm ID`,
      },
      { size: { system: 'french', value }, words: `${value} French, outer diameter`, write: `${value} Fr` },
    ],
    'tube-size',
    match,
  );
}
