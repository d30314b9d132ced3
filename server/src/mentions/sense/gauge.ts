/** Is "18 G" a needle's gauge, a weight, an acceleration? */
import { DOSE, NOT_GAUGE, NOT_GAUGE_BEFORE } from '../words/lookalikes.ts';
import { type Place, wider } from './place.ts';
import { systemOf } from './systems.ts';
import { ask, NOTHING, size, type Verdict } from './verdict.ts';

const isGauge = (place: Place): boolean =>
  place.devices.some((hit) => systemOf(hit.means) === 'needle-gauge');

/** Gauge by unit word or letter, after or before the number. */
export function gaugeSense(place: Place, match: string, value: number): Verdict {
  if (NOT_GAUGE.test(place.after) || NOT_GAUGE_BEFORE.test(place.before)) return NOTHING;
  const wire = place.devices.some((hit) => hit.means === 'steel-wire');
  const system = wire ? 'wire-gauge' : 'needle-gauge';
  if (/gau?ge|calibre|jauge/i.test(match)) return size(system, 'unit-word', match);
  if (/ga\b/i.test(match)) return gestational(place) ? NOTHING : size(system, 'unit-word', match);
  if (/^g/i.test(match)) return letterFirst(place, match);
  if (/G/.test(match))
    return DOSE.test(place.text) && !isGauge(place) && !hasGauge(place)
      ? NOTHING
      : size(system, 'unit-letter', match);
  return smallLetter(place, match, value);
}

const gestational = (place: Place): boolean =>
  /\b(?:gestation|infants?|weeks?|newborns?|bab(?:y|ies)|preterm)\b|\+6d/i.test(place.text) &&
  !isGauge(place);

/** "G18": only beside a needle or cannula, since grid squares and codes look alike. */
function letterFirst(place: Place, match: string): Verdict {
  return isGauge(place) || hasGauge(place) ? size('needle-gauge', 'letter-first', match) : NOTHING;
}

const hasGauge = (place: Place): boolean =>
  /[0-9]\s?-?(?:G\b|ga\b|gauge\b)/.test(place.before + place.after) ||
  wider(place).some((scene) => scene.devices.some((hit) => systemOf(hit.means) === 'needle-gauge'));

/** "18g": gauge beside a needle, grams beside a drug; a question where both stand. */
function smallLetter(place: Place, match: string, value: number): Verdict {
  const dose = DOSE.exec(place.text);
  if (isGauge(place) && !dose) return size('needle-gauge', 'needle-beside', match);
  if (isGauge(place) && /^\s?-?(?:needle|cannula|iv\b|hub|butterfly|spinal)/i.test(place.after))
    return size('needle-gauge', 'needle-follows', match);
  if (!dose)
    return hasGauge(place) && value >= 12 ? size('needle-gauge', 'gauge-in-context', match) : NOTHING;
  if (value < 14 || value > 30 || /[0-9]\s/.test(match) || !hasGauge(place)) return NOTHING;
  return ask(
    [
      {
        size: { system: 'needle-gauge', value },
        words: `${value} gauge, a needle size`,
        write: `${value} G`,
      },
      { words: `${value} grams, a weight`, write: `${value} g of` },
    ],
    'grams-or-gauge',
    match,
  );
}
