/** Is "14F" a catheter, an age, a temperature, a tracer? Is "two French" people? */
import { FRENCH_PEOPLE, PATIENT } from '../words/lookalikes.ts';
import { type Place, wider } from './place.ts';
import { systemOf } from './systems.ts';
import { ask, NOTHING, size, type Verdict } from './verdict.ts';

const isFrench = (hits: Place['devices']): boolean => hits.some((hit) => systemOf(hit.means) === 'french');
const inContext = (place: Place): boolean =>
  wider(place).some(
    (scene) => isFrench(scene.devices) || /\b(?:french|fr|charri[eè]re)\b/i.test(scene.passage.text),
  );

export function frenchSense(place: Place, match: string, value: number): Verdict {
  if (/french/i.test(match)) return nationality(place, match) ? NOTHING : size('french', 'unit-word', match);
  if (/[0-9][\s-]?F(?:s|\+)?$/.test(match)) return letterF(place, match, value);
  if (/f$/.test(match)) return isFrench(place.devices) ? size('french', 'catheter-beside', match) : NOTHING;
  if (/^ch/i.test(match)) return chapter(place, match);
  return size('french', 'unit-word', match);
}

function nationality(place: Place, match: string): boolean {
  if (FRENCH_PEOPLE.test(place.after)) return true;
  return /^[a-z]/i.test(match) && !/^french/i.test(match) && !isFrench(place.devices) && !inContext(place);
}

const chapter = (place: Place, match: string): Verdict =>
  isFrench(place.devices) || inContext(place) || /^CH?[0-9]/.test(match)
    ? size('french', 'unit-word', match)
    : NOTHING;

/** A bare F: tracer and dose forms never; age or temperature unless a catheter stands beside it. */
function letterF(place: Place, match: string, value: number): Verdict {
  if (/^[-\]]|^\s?(?:tracer|FDG|labell?ed)/i.test(place.after) || /[/[°]$|gy\s?\/?\s?$/i.test(place.before))
    return NOTHING;
  if (
    /\b(?:temp(?:erature)?s?|fever|febrile|warm|cool|degrees?|room temp|heat|cold|°)\b/i.test(place.text) &&
    value > 34
  )
    return NOTHING;
  const near = isFrench(place.devices);
  const patient = PATIENT.test(place.after) && !/[-–]/.test(match);
  if (!near && !inContext(place)) return NOTHING;
  if (
    patient &&
    !/^\s?[,)]?\s?(?:catheter|foley|sheath|drain|tube)/i.test(place.after) &&
    /(?:^|[*_"“(\s])$/.test(place.before) &&
    place.before.trim().length < 24
  ) {
    return ask(
      [
        {
          size: { system: 'french', value },
          words: `${value} French, a catheter size`,
          write: `${value} Fr`,
        },
        { words: `a ${value}-year-old female patient`, write: `${value}-year-old female` },
      ],
      'age-or-french',
      match,
    );
  }
  return value > 34 && !near
    ? NOTHING
    : size('french', near ? 'catheter-beside' : 'catheter-in-context', match);
}
