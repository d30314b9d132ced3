/** Is "3-0" a thread, a score, a tracheostomy tube? Is "4.0" silk or a number? */
import { SCORE } from '../words/lookalikes.ts';
import { byNearness, earlier, type Place, wider } from './place.ts';
import { NOTHING, size, type Verdict } from './verdict.ts';

const WORD =
  /\b(?:USP|sutur\w*|stitch\w*|thread\w*|strand\w*|lig\w+|knots?|sew\w*|aught|ought|nought|oh silk|absorbable|monofilament\w*|braided|multifilament|needle holder|skin clos\w+|fascia\w*|closure|zeros?|noughts?|hand tie\w*|purse-?string)\b/i;

/** Does a scene speak of thread? */
const ofThread = (scene: Place['scene']): boolean =>
  scene.materials.length > 0 ||
  scene.devices.some((hit) => hit.means === 'suture' || hit.means === 'suture-needle') ||
  WORD.test(scene.passage.text.slice(0, 2000));

export const threadHere = (place: Place): boolean =>
  place.materials.length > 0 ||
  place.devices.some((hit) => hit.means === 'suture' || hit.means === 'suture-needle') ||
  WORD.test(place.text);

export const threadAround = (place: Place): boolean => wider(place).some(ofThread) || ofThread(place.scene);
/** Anything in the note about thread. */
const threadAnywhere = (place: Place): boolean => place.around.scenes.some(ofThread);

const memo = new WeakMap<object, boolean>();
function threadInNote(place: Place): boolean {
  const known = memo.get(place.around);
  if (known !== undefined) return known;
  const found = threadAnywhere(place);
  memo.set(place.around, found);
  return found;
}

/** "3-0", "000", "three-oh". */
export function threadSense(place: Place, match: string, values: readonly number[]): Verdict {
  const tube = trachTube(place, match);
  if (tube) return tube;
  if (SCORE.test(place.text) && !threadHere(place)) return NOTHING;
  if (/[0-9]\s$/.test(place.before) && /^0/.test(match)) return NOTHING;
  if (threadHere(place)) return size('usp', 'thread-beside', match, values);
  if (threadAround(place)) return size('usp', 'thread-in-context', match, values);
  return /^[0-9]+[-–/]0$/.test(match) && threadInNote(place)
    ? size('usp', 'thread-in-note', match, values)
    : NOTHING;
}

/** "8-0 tracheostomy tube": whole millimetres with a decimal nought, not thread. */
function trachTube(place: Place, match: string): Verdict | undefined {
  const number = Number(/^#?([0-9]+)-0$/.exec(match)?.[1] ?? 0);
  if (number < 5 || number > 10) return undefined;
  const nearest = byNearness(place.devices, place.span, place.scene.passage.text)[0];
  if (nearest?.means !== 'tracheal-tube' || place.materials.length > 0) return undefined;
  return size('tube-id', 'tracheal-tube-beside', match, [number]);
}

/** "4.0 silk": a slip only right beside a thread. */
export function slipSense(place: Place, match: string, values: readonly number[]): Verdict {
  if (/^\s?(?:mm|cm|mg|ml|mcg|kg|g\b|%|l\b|hours?|days?|mmol|to|-|×|x\b|in\b)/i.test(place.after))
    return NOTHING;
  const follows = [...place.materials, ...place.devices.filter((hit) => hit.means === 'suture')].some(
    (hit) => hit.start >= place.span.end && hit.start - place.span.end < 24,
  );
  return follows ? size('usp', 'thread-follows', match, values) : NOTHING;
}

/** Metric numbers need thread near by, since the word has many uses. */
export function metricSense(place: Place, match: string): Verdict {
  if (/^\s?(?:tons?|tonnes?|units?|system|ruler|mm)\b/i.test(place.after)) return NOTHING;
  return threadHere(place) || threadAround(place) || earlier(place, place.scene.materials).length > 0
    ? size('ep-metric', 'thread-in-context', match)
    : NOTHING;
}
