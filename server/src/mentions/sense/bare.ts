/** Which system a bare number has, if anything settles it; and when a reader would have to ask. */
import type { System } from '../../sizes/model.ts';
import type { Frame } from '../bare.ts';
import type { Mention } from '../model.ts';
import { headingsOf, labelsOf } from '../scene.ts';
import { COLOUR, SETTING } from '../words/frames.ts';
import { earlier, type Place } from './place.ts';
import { systemOf } from './systems.ts';
import { ask, type Verdict } from './verdict.ts';

/** Values a bare number of a system can have. */
export function suitsBare(system: System, value: number): boolean {
  const whole = Number.isInteger(value);
  switch (system) {
    case 'needle-gauge':
    case 'wire-gauge':
      return whole && value >= 12 && value <= 34;
    case 'usp':
      return whole && value >= 0 && value <= 5;
    case 'french':
      return value >= 3 && value <= 40;
    case 'tube-id':
      return value >= 2.5 && value <= 11;
    case 'ep-metric':
      return value > 0 && value <= 8;
    default:
      return false;
  }
}

const COLOURED = new RegExp(`^\\s?(?:is\\s|=\\s?|,?\\s)?(?:the\\s)?${COLOUR}\\b`, 'i');

/** The nearest thing that settles it, or undefined. */
export function settledSystem(
  place: Place,
  value: number,
  known: readonly Mention[],
  settled: readonly (readonly Mention[])[],
  frame: Frame,
): System | undefined {
  const fit = (system: System | undefined): System | undefined =>
    system && suitsBare(system, value) ? system : undefined;
  const direct = place.devices.find((hit) => hit.start >= place.span.end && hit.start - place.span.end < 14);
  const follows = direct && fit(systemOf(direct.means));
  if (follows && follows !== 'usp') return follows;
  const inSentence = systemAmong(
    known.filter((one) => inside(one, place)),
    value,
  );
  if (inSentence && (inSentence !== 'usp' || value <= 1)) return inSentence;
  if (frame === 'loose' && !COLOURED.test(place.after) && !colon(place)) return undefined;
  const before = systemAmong(
    known
      .filter((one) => one.span.end <= place.span.start)
      .slice(-4)
      .reverse(),
    value,
  );
  if (before && before !== 'usp') return before;
  const hit = place.devices
    .map((one) => fit(systemOf(one.means)))
    .find((system) => system && system !== 'usp');
  if (hit && frame !== 'loose') return hit;
  return fit(fromSetting(place)) ?? fromPassages(place, value, settled, frame);
}

const inside = (mention: Mention, place: Place): boolean =>
  mention.span.start >= place.sentence.start && mention.span.end <= place.sentence.end;
const colon = (place: Place): boolean =>
  /:\s?$/.test(place.before) || /:\s?[0-9]{1,2}(?:\sor\s|,\s|\sto\s|-|–)$/.test(place.before);

/** The one system of some mentions that this value suits; lengths do not count. */
function systemAmong(mentions: readonly Mention[], value: number): System | undefined {
  const systems = new Set(
    mentions
      .flatMap((one) => one.sizes.map((size) => size.system))
      .filter((system) => suitsBare(system, value)),
  );
  return systems.size === 1 ? [...systems][0] : undefined;
}

/** A system set by earlier sentences, list lead-in or heading. */
function fromSetting(place: Place): System | undefined {
  const { around, scene } = place;
  const at = (index: number | undefined) =>
    index === undefined || index < 0 ? undefined : around.scenes[index];
  const { header, row } = labelsOf(around, scene.passage);
  const texts = [
    row,
    header,
    at(scene.passage.list?.parent),
    at(scene.passage.list?.leadIn),
    ...headingsOf(around, scene.passage).slice(0, 2),
  ];
  const earlierHit = earlier(place, scene.devices)
    .map((hit) => systemOf(hit.means))
    .find((system) => system !== undefined && system !== 'usp');
  for (const text of texts) {
    const set =
      text && SETTING.filter(([, pattern]) => pattern.test(text.passage.text)).map(([system]) => system);
    if (set?.length === 1) return set[0];
    const devices = new Set(text?.devices.flatMap((hit) => systemOf(hit.means) ?? []));
    if (devices.size === 1 && text) return [...devices][0];
  }
  return earlierHit;
}

/** Colours carry on from the passage before: "Same code: twenty-two blue". */
function fromPassages(
  place: Place,
  value: number,
  settled: readonly (readonly Mention[])[],
  frame: Frame,
): System | undefined {
  if (place.scene.passage.list || (frame === 'handed' && !COLOURED.test(place.after))) return undefined;
  const index = place.scene.passage.index;
  const before = [...(settled[index - 1] ?? []), ...(settled[index - 2] ?? [])];
  const samePath = place.around.scenes[index - 1]?.passage.path.join() === place.scene.passage.path.join();
  return samePath ? systemAmong(before, value) : undefined;
}

/** "pass a 2", "three nylon": a bare thread number above 1 is its size or that many zeros. */
export function bareQuestion(place: Place, value: number, known: readonly Mention[]): Verdict | undefined {
  if (!Number.isInteger(value) || value < 0 || value > 7) return undefined;
  const material = place.materials.find(
    (hit) => hit.start >= place.span.end && hit.start - place.span.end <= 2,
  );
  const follows = material !== undefined && !counted(place, material.end);
  const tied =
    /\b(?:pass|tie|tied|ties|use|with|hand|close|stitch)\b[a-z\s]{0,30}\san?\s["“]?$/i.test(place.before) &&
    place.devices.concat().some((hit) => hit.means === 'suture') &&
    /^\s?(?:[.,;!?"”]|$)/.test(place.after);
  if (!follows && !tied) return undefined;
  if (known.some((one) => one.span.start === place.span.start)) return undefined;
  if (value <= 1)
    return follows
      ? { is: 'size', system: 'usp', evidence: { rule: 'material-follows', saw: material.word } }
      : undefined;
  return ask(
    [
      { size: { system: 'usp', value }, words: `size ${value}, a thick thread`, write: `#${value}` },
      { size: { system: 'usp', value: 1 - value }, words: `${value}-0, a fine thread`, write: `${value}-0` },
    ],
    'bare-thread-number',
    place.text.slice(0, 60).trim(),
  );
}

const counted = (place: Place, from: number): boolean =>
  /^\s?(?:mesh|sheets?|sutures|stitches|ties|strands|threads|knots|patch(?:es)?|clips|packs?|packets?|ligatures|loops|slings?|tapes?|grafts?|lines|wires|rings|plugs?|films|loads|[0-9])/i.test(
    place.scene.passage.text.slice(from, from + 24),
  );
