/** Is "3-0" a thread, a score, a tracheostomy tube? Is "4.0" silk or a number? */

import { counts } from '../words/counted.ts';
import { wordValue } from '../words/numbers.ts';
import { wholeWords } from '../words/pattern.ts';
import { ROOM_BEFORE } from '../words/rooms.ts';
import { PLAYED, RESULT_AFTER, RESULT_BEFORE, SCORE } from '../words/scores.ts';
import { factsOf } from './note-facts.ts';
import { byNearness, type Place, wider } from './place.ts';
import { NOTHING, size, type Verdict } from './verdict.ts';

const WORD =
  /\b(?:USP|sutur\w*|stitch\w*|thread\w*|strand\w*|lig\w+|knots?|sew\w*|aught|ought|nought|oh silk|absorbable|monofilament\w*|braided|multifilament|needle holder|skin clos\w+|fascia\w*|closure|zeros?|noughts?|hand tie\w*|purse-?string)\b/i;

/** Words of thickness beside "3-0": nothing but thread is written so and said to be fine or coarse. */
export const THICKNESS = wholeWords([
  'thick(?:er|est|ness)',
  'thinn(?:er|est)',
  'fine(?:r|st)',
  'coarse(?:r|st)',
  'skinn(?:ier|iest)',
  'fat(?:ter|test)',
  'heav(?:ier|iest)',
  'stout(?:er|est)',
  'chunk(?:ier|iest)',
  'thick to thin',
  'thin to thick',
]);
/** Another size of the kind right beside: a row of them is no score. */
const DASHED_TOO = /(?<![0-9-])[1-9]-0\b/;
const SPOKEN_TOO = /\b(?:two|three|four|five|six|eight|nine|ten)-oh\b/i;
const DASHED = /^[0-9]+[-–/]0$/;

/** Does a scene speak of thread? */
const ofThread = (scene: Place['scene']): boolean =>
  scene.materials.length > 0 ||
  scene.kinds.has('suture') ||
  scene.kinds.has('suture-needle') ||
  WORD.test(scene.brief);

export const threadHere = (place: Place): boolean =>
  place.materials.length > 0 ||
  place.devices.some((hit) => hit.means === 'suture' || hit.means === 'suture-needle') ||
  WORD.test(place.text);

export const threadAround = (place: Place): boolean => wider(place).some(ofThread) || ofThread(place.scene);
/** "3-0", "000", "three-oh". */
export function threadSense(place: Place, match: string, values: readonly number[]): Verdict {
  const tube = trachTube(place, match);
  if (tube) return tube;
  const rivals = beatsAnother(place, match);
  if (!rivals && (RESULT_BEFORE.test(place.before) || RESULT_AFTER.test(place.after))) return NOTHING;
  if (
    SCORE.test(place.text) &&
    !rivals &&
    !threadHere(place) &&
    !ofThreadNote(place, match) &&
    !inThreadTalk(place)
  )
    return NOTHING;
  if (ROOM_BEFORE.test(place.before)) return NOTHING;
  if (/[0-9]\s$/.test(place.before) && /^0/.test(match)) return NOTHING;
  if (threadHere(place)) return size('usp', 'thread-beside', match, values);
  if (threadAround(place) || threadBefore(place)) return size('usp', 'thread-in-context', match, values);
  if (sewn(place, match)) return size('usp', 'sewing-words', match, values);
  if (
    DASHED.test(match) &&
    /\bsizes?\b/i.test(place.text) &&
    DASHED_TOO.test(place.before.slice(-24) + place.after.slice(0, 24))
  )
    return size('usp', 'sizes-beside', match, values);
  if (/^0+$|-0$|\/0$/.test(match) && THICKNESS.test(place.scene.brief))
    return size('usp', 'thickness-beside', match, values);
  if (DASHED.test(match) && (AS_THIN.test(place.after) || METRIC_BESIDE.test(place.text)))
    return size('usp', 'thinness-beside', match, values);
  if (/-oh$/i.test(match) && SPOKEN_TOO.test(`${place.before}#${place.after}`) && !tubeTalk(place))
    return size('usp', 'sizes-beside', match, values);
  return DASHED.test(match) && factsOf(place.around).thread
    ? size('usp', 'thread-in-note', match, values)
    : NOTHING;
}

/** "4-0 beats 2-0", in a note of threads: no team is called so. */
const beatsAnother = (place: Place, match: string): boolean =>
  DASHED.test(match) &&
  factsOf(place.around).thread &&
  (/[0-9][-–/]0\sbeats?\s(?:an?\s|the\s)?$/i.test(place.before) ||
    /^\sbeats?\s(?:an?\s|the\s)?[0-9]+[-–/]0\b/i.test(place.after));

/** "4-0 = 0.15 to 0.199 mm": nothing else that is written so is measured so. */
const AS_THIN =
  /^\s?(?:=|is|measures)\s(?:about\s)?0?\.[0-9]{1,3}(?:\s?(?:to|[-–])\s?0?\.[0-9]{1,3})?\s?mm\b/;

/** "metric 2 is 3-0": the two numbers of one thread. */
const METRIC_BESIDE =
  /\b[Ii]n metric\b|\b[Mm]etric (?:numbers?|figures?|sizes?)\b|\b(?:metric|EP)\s[0-9](?:\.5)?(?![0-9.])|(?<![0-9.])[0-9](?:\.5)?\smetric\b(?!\s(?:tons?|tonnes?))/;

/** "swap the 4-0 for a 5-0", "10-0 is metric 0.2": said of a thing, in a note of threads, whatever game is mentioned. */
const ofThreadNote = (place: Place, match: string): boolean =>
  DASHED.test(match) &&
  factsOf(place.around).thread &&
  (/\b(?:the|an?|for|use|with)\s$/i.test(place.before) ||
    /^\s(?:is|=)\s(?:metric|about\s)?[0-9. ]*(?:mm)?/.test(place.after)) &&
  !/^\s(?:win|loss|defeat|draw|lead|score|victory|up|down)\b/i.test(place.after);

/** "it is so fine that you lose it", in talk of threads: no game is spoken of. */
const inThreadTalk = (place: Place): boolean =>
  !PLAYED.test(place.text) && (threadAround(place) || threadBefore(place));

/** In talk, the thread was named a few turns ago under the same heading. */
function threadBefore(place: Place): boolean {
  const { index, path } = place.scene.passage;
  for (let back = 1; back <= 6; back++) {
    const scene = place.around.scenes[index - back];
    if (!scene || scene.passage.path.join() !== path.join()) return false;
    if (ofThread(scene)) return true;
  }
  return false;
}

/** "8-0 tracheostomy tube": whole millimetres with a decimal nought, not thread. */
function trachTube(place: Place, match: string): Verdict | undefined {
  const number = Number(
    /^#?([0-9]+)-0$/.exec(match)?.[1] ?? wordValue(/^([a-z]+)-(?:oh|zero)$/i.exec(match)?.[1] ?? '') ?? 0,
  );
  if (number < 3 || number > 10 || place.materials.length > 0) return undefined;
  const nearest = byNearness(place.devices, place.span, place.scene.passage.text)[0];
  const tube =
    nearest?.means === 'tracheal-tube' ||
    (/oh$/i.test(match) && !threadHere(place) && tubeTalk(place)) ||
    /^\s(?:[a-z-]+\s)?tubes?\b/i.test(place.after);
  if (!tube) return undefined;
  return size('tube-id', 'tracheal-tube-beside', match, [number]);
}

/** Tracheal tubes are spoken of: the nearest passage that names tubes or thread names tubes. */
function tubeTalk(place: Place): boolean {
  const { index } = place.scene.passage;
  for (let back = 0; back <= 4; back++) {
    const scene = place.around.scenes[index - back];
    if (!scene) return false;
    if (scene.kinds.has('tracheal-tube')) return scene.materials.length === 0;
    if (ofThread(scene)) return false;
  }
  return false;
}

/** "using 2-0 …" in a sentence that closes or anchors something. */
const sewn = (place: Place, match: string): boolean =>
  /^(?:[2-9]|1[01])-0$/.test(match) &&
  /\b(?:using|with|of|interrupted|running|continuous)\s$/i.test(place.before) &&
  SEWN.test(place.text);
const SEWN =
  /\b(?:secured|repair\w*|tacked|closed|closure|anastomos\w+|ligated|mesh|fascia|skin|oversewn|approximated|anchored)\b/i;

/** "0-silk", "2-nylon": the thread right after the hyphen, or a name in talk of sewing. */
export function hyphenSense(place: Place, match: string, value: number): Verdict {
  const after = place.scene.passage.text.slice(place.span.end, place.span.end + 60);
  if (counts(after)) return NOTHING;
  if (place.materials.some((hit) => hit.start === place.span.end + 1))
    return size('usp', 'thread-follows', match, [value]);
  const named =
    value === 0 ? /^-[A-Z][A-Za-z]{2}/ : /^-[A-Z][A-Za-z]{2,}\s(?:[A-Za-z]+\s)?(?:sutur|stitch|ties?\b|loop)/;
  const spoken = place.devices.some((hit) => hit.means === 'suture' || hit.means === 'suture-needle');
  return named.test(after) &&
    (spoken || (factsOf(place.around).thread && (threadHere(place) || SEWN.test(place.text))))
    ? size('usp', 'thread-beside', match, [value])
    : NOTHING;
}

/** "4.0 silk": a slip only right beside a thread. */
export function slipSense(place: Place, match: string, values: readonly number[]): Verdict {
  if (/^\s?(?:mm|cm|mg|ml|mcg|kg|g\b|%|l\b|hours?|days?|mmol|to|-|×|x\b|in\b)/i.test(place.after))
    return NOTHING;
  if (/^\s(?:(?:tracheal|endotracheal|cuffed|uncuffed|ET|ett)\s)?(?:tubes?|ett|trach)\b/i.test(place.after))
    return NOTHING;
  const follows = [...place.materials, ...place.devices.filter((hit) => hit.means === 'suture')].some(
    (hit) => hit.start >= place.span.end && hit.start - place.span.end < 24,
  );
  return follows ? size('usp', 'thread-follows', match, values) : NOTHING;
}

/** Metric numbers need thread near by, since the word has many uses. */
export function metricSense(place: Place, match: string): Verdict {
  if (/^\s?(?:tons?|tonnes?|units?|system|ruler|mm)\b/i.test(place.after)) return NOTHING;
  return threadHere(place) ||
    threadAround(place) ||
    THICKNESS.test(place.text) ||
    DASHED_TOO.test(place.text) ||
    (factsOf(place.around).thread && !/\s(?:tons?|system)\b/i.test(place.text))
    ? size('ep-metric', 'thread-in-context', match)
    : NOTHING;
}
