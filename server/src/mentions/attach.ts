/** What a size is written on, and of what thread: the nearest word that fits its system. */
import type { Span } from '../notes/model.ts';
import type { Device, System } from '../sizes/model.ts';
import type { Hit } from './scene.ts';
import { byNearness, earlier, type Place, wider } from './sense/place.ts';
import { fits } from './sense/systems.ts';

/** Hits from near to far, each part looked for only when those before it do not settle the matter. */
function* ordered<T>(
  place: Place,
  here: readonly Hit<T>[],
  pick: (scene: Place['scene']) => readonly Hit<T>[],
): Generator<Hit<T>> {
  yield* here.length > 1 ? byNearness(here, place.span, place.scene.passage.text) : here;
  yield* earlier(place, pick(place.scene));
  for (const scene of wider(place)) yield* pick(scene).slice(0, 6);
}

/** In the sentence, with no comma or semicolon between it and the size. */
function sharesClause(place: Place, hit: Span): boolean {
  if (hit.start < place.sentence.start || hit.end > place.sentence.end) return false;
  const { text } = place.scene.passage;
  const between =
    hit.start > place.span.end
      ? text.slice(place.span.end, hit.start)
      : text.slice(hit.end, place.span.start);
  return !/[,;:]/.test(between);
}

/** "21 Fr bypass cannula": the thing right behind the size, which its unit makes a catheter, not the one named before. */
function follows(place: Place, hit: Span): boolean {
  if (hit.start < place.span.end) return false;
  const between = place.scene.passage.text.slice(place.span.end, hit.start);
  return /^[\s-](?:[\w-]+\s){0,2}$/.test(between);
}

/** "The catheter's 14 and the drain's 20": whose the size is said to be. */
const owns = (place: Place, hit: Span): boolean =>
  hit.end < place.span.start &&
  place.span.start - hit.end < 8 &&
  /^['’]s\s(?:own\s)?$/.test(place.scene.passage.text.slice(hit.end, place.span.start));

/** Device of a size; the course's own setting decides only what the note leaves open. */
export function deviceOf(place: Place, system: System): Device | undefined {
  if (system === 'french' && place.devices.some((hit) => hit.means === 'cannula' && follows(place, hit)))
    return 'catheter';
  const owner = place.devices.find((hit) => fits(system, hit.means) && owns(place, hit));
  if (owner) return owner.means;
  let general: Device | undefined;
  let behind = false;
  for (const hit of ordered(place, place.devices, (scene) => scene.devices)) {
    if (!fits(system, hit.means) || placeOnly(place, hit)) continue;
    general ??= hit.means;
    if (general !== 'catheter' || system === 'millimetre' || system === 'inch') return general;
    // "an 8 Fr catheter" by a sheath: the thing right behind the size, not what it goes through.
    behind ||= hit.means === 'catheter' && follows(place, hit);
    if (behind && hit.means === 'sheath') continue;
    const here = place.devices.includes(hit);
    if (here && hit.means !== 'catheter' && sharesClause(place, hit)) return hit.means;
  }
  return general ?? courseDevice(place, system);
}

/** "…, for tail veins. Brown is 26 G": a vein of another sentence says where something went, not what a size is on. */
const placeOnly = (place: Place, hit: Hit<Device>): boolean =>
  /^veins?$/.test(hit.word) && !place.devices.includes(hit);

function courseDevice(place: Place, system: System): Device | undefined {
  const device = place.around.context.device;
  return device && fits(system, device) ? device : undefined;
}

/** Generic material id of a thread size. */
export function materialOf(place: Place, system: System): string | undefined {
  if (system !== 'usp' && system !== 'ep-metric' && system !== 'millimetre') return undefined;
  const [hit] = ordered(place, place.materials, (scene) => scene.materials);
  return hit && !leftBehind(place, hit) && !ofOtherRows(place, hit) && !ofBothKinds(place, hit)
    ? hit.means
    : undefined;
}

/** "Front: 3-0 → back: metric 2", and on the next line "Front: metric 2, gut": the material of a later line that has its own size. */
const ofLaterLine = (place: Place, hit: Span): boolean =>
  /\n[^\n]*\d[^\n]*$/.test(place.scene.passage.text.slice(place.span.end, hit.start));

/** "Gut or synthetic: a self-test" over it: both kinds are spoken of. */
const ofBothKinds = (place: Place, hit: Hit<string>): boolean =>
  /gut$/.test(hit.means) &&
  !place.scene.materials.includes(hit) &&
  wider(place).some(
    ({ materials, brief }) => materials.includes(hit) && /\bsynthetics?\b/i.test(brief.slice(0, 120)),
  );

/** In a table of which other rows name a material, one that only stands above the table is not meant in every row. */
function ofOtherRows({ around, scene: { passage } }: Place, { start, end, word }: Hit<string>): boolean {
  const table = passage.cell && around.note.tables[passage.cell.table];
  if (!table || table.rows.length > MOST_ROWS) return false;
  const named = (index: number) => (around.scenes[index]?.materials.length ?? 0) > 0;
  const own = table.rows[passage.cell!.row]!;
  const above = table.rows[0]!;
  const here = [...own, ...above].some((index) =>
    around.scenes[index]?.materials.some(
      (hit) => hit.start === start && hit.end === end && hit.word === word,
    ),
  );
  return !here && table.rows.some((row) => row !== own && row !== above && row.some(named));
}
const MOST_ROWS = 60;

/** "3-0 gut is metric 3, a 3-0 synthetic thread is metric 2": a class of threads takes the place of the material before. */
function leftBehind(place: Place, hit: Hit<string>): boolean {
  if (OTHER_KIND.test(textBefore(place))) return true;
  if (!place.materials.includes(hit)) return KIND_BEHIND.test(textBehind(place)) || answersAsked(place, hit);
  if (hit.start >= place.span.end && ofLaterLine(place, hit)) return true;
  if (hit.start >= place.span.end)
    return TURNED.test(place.scene.passage.text.slice(place.span.end, hit.start));
  if (hit.end > place.span.start) return false;
  const { text } = place.scene.passage;
  return (
    /\bsynthetics?\b/i.test(text.slice(hit.end, place.span.end + ' synthetic'.length)) ||
    KIND_BEHIND.test(textBehind(place))
  );
}

/** "Which synthetic is as thick as 4-0 gut? 3-0": the answer is of the kind that is asked for. */
const answersAsked = ({ scene: { passage }, span }: Place, hit: Span): boolean =>
  passage.text.slice(hit.end, span.start).includes('?') &&
  /\bsynthetics?\b[^.?]{0,60}$/i.test(passage.text.slice(0, hit.start));

/** "a size 0 synthetic", "2-0 absorbable". */
const KIND_BEHIND = /^\s(?:synthetics?|(?:non-?)?absorbable|monofilament|braid|newer|modern)\b/i;
const textBehind = ({ scene, span }: Place): string => scene.passage.text.slice(span.end, span.end + 16);

/** "The synthetic 2-0", "all others: 3-0". */
const OTHER_KIND =
  /\b(?:synthetics? (?:size )?|(?:all|any|the|for|in) (?:the )?others?(?:[:,]| it is| is)? )$/i;
const textBefore = ({ scene, span }: Place): string =>
  scene.passage.text.slice(Math.max(0, span.start - 24), span.start);

/** "3-0 for synthetics but 4-0 for gut", "3-0 is 0.2 mm; that of gut 3-0 …": what follows is of the other kind. */
const TURNED =
  /(?:\bmetric\s[0-9.]+|[0-9]\s?(?:mm|metric))\s*,?\s+and\s+(?:(?:an?|the|in|for|with)\s+)?$|\bsynthetics?\b|[;,]\s*(?:and\s+)?(?:(?:that|those)\s+of\b|(?:as|in|for|with)\s*$)|\b(?:but|while|whereas)\b[^.;]*\d/i;
