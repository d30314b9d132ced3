/** Builds the mention that a verdict on a candidate stands for. */
import { sourceSpan } from '../notes/index.ts';
import { heldOnce, oneForAll } from '../notes/once.ts';
import type { Device, Size } from '../sizes/model.ts';
import { deviceOf, materialOf } from './attach.ts';
import type { Evidence, Mention } from './model.ts';
import type { Candidate } from './scan.ts';
import { largeTube } from './sense/note-facts.ts';
import type { Place } from './sense/place.ts';
import { plausible } from './sense/systems.ts';
import type { Verdict } from './sense/verdict.ts';
import { approximate, boundOf } from './words/bounds.ts';

/** Builds the mention a verdict stands for. */
export function mentionOf(place: Place, candidate: Candidate, verdict: Verdict): Mention | undefined {
  if (verdict.is === 'nothing') return undefined;
  const { passage } = place.scene;
  const { span, item, notation } = candidate;
  const built: Built = {
    passage: passage.index,
    span,
    source: sourceSpan(passage, span),
    text: oneText(passage.text.slice(span.start, span.end)),
    notation: notation.id,
    decimals: item.decimals,
    evidence: evidenceOf(verdict.evidence),
  };
  if (item.spoken) built.spoken = true;
  if (verdict.is === 'ambiguous') {
    built.kind = 'ambiguous';
    built.sizes = [];
    built.readings = verdict.readings;
    return built as Mention;
  }
  const { system } = verdict;
  const values = verdict.values ?? item.values;
  if (!values.every((value) => plausible(system, value) || largeTube(place.around, system, value)))
    return undefined;
  const device = deviceOf(place, verdict.evidence.rule === 'gauge-by-length' ? 'needle-gauge' : system);
  const material = materialOf(place, system);
  const bound = boundOf(place.before, place.after, built.text);
  built.kind = values.length > 1 ? 'range' : 'size';
  built.sizes =
    values.length === 1 ? oneSize(system, values[0]!) : values.map((value) => ({ system, value }));
  built.readings = NONE;
  if (device) built.device = device;
  if (material) built.material = material;
  if (bound) built.bound = bound;
  if (approximate(place.before, system)) built.approximate = true;
  if (isLength(place, verdict.evidence.rule, { system, value: values[0]! }, device)) built.length = true;
  return built as Mention;
}

/** Most texts name a few sizes, in a few ways, many times: what is the same of them is held once. */
const MOST = 2000;
const oneText = oneForAll(MOST);
const sizes = heldOnce<readonly Size[]>(MOST);
const oneSize = (system: Size['system'], value: number): readonly Size[] =>
  sizes(`${system} ${value}`, () => [{ system, value }]);
const grounds = heldOnce<readonly Evidence[]>(MOST);
const evidenceOf = (seen: Evidence): readonly Evidence[] =>
  seen.span
    ? [seen]
    : grounds(`${seen.rule}\0${seen.saw}`, () => [{ rule: seen.rule, saw: oneText(seen.saw) }]);
const NONE: readonly never[] = [];

/** A mention under way. Its parts are set one by one: spreading them together takes longer than finding them. */
type Built = { -readonly [Part in keyof Mention]?: Mention[Part] } & Pick<Mention, 'text'>;

/** Thickest needle, mm: what is longer is a length. */
const THICKEST_NEEDLE = 4;
/** Shortest needle, mm: pen needles begin at 4. */
const SHORTEST_NEEDLE = 3.5;
const DIAMETER_AFTER = /^[\s,-]{0,2}(?:\(?in\s)?(?:across|wide|diameters?|od\b|bore|thick|outer|outside)\b/i;
const NEEDLES: ReadonlySet<Device | undefined> = new Set<Device | undefined>([
  'needle',
  'suture-needle',
  'winged-set',
  'cannula',
]);

/** G × length, "1½ in long", 40 mm on a needle: how far it reaches, not how thick it is. */
function isLength(place: Place, rule: string, size: Size, device: Device | undefined): boolean {
  const { system, value } = size;
  if (system !== 'millimetre' && system !== 'inch') return false;
  if (system === 'millimetre' && value < SHORTEST_NEEDLE) return false;
  if (rule === 'gauge-by-length' || /^[\s-]?(?:long|length|in length)\b/i.test(place.after)) return true;
  if (DIAMETER_AFTER.test(place.after)) return false;
  if (device && !NEEDLES.has(device)) return false;
  return system === 'inch' ? value >= 0.15 : device !== undefined && value >= THICKEST_NEEDLE;
}
