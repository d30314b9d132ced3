/** Makes the claim that two sizes are one: which of them is the value, what is measured, and how closely. */
import type { EquivalenceClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { type Group, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { isCrossed, ofNeedle } from './crossed.ts';
import type { Reading } from './model.ts';

export const LENGTHS: ReadonlySet<string> = new Set(['millimetre', 'inch', 'wire-inch']);

/** No needle or tube is shorter than this, mm: what is smaller is a diameter. Common practice, no source. */
export const SHORTEST = 3.5;
export const longEnough = ({ system, value }: { system: string; value: number }, shortest = SHORTEST) =>
  (system === 'millimetre' ? value : value * 25.4) >= shortest;

const INNER = /\b(?:inner|inside|internal|internally|bore|lumen|id|i\.d)\b/;
/** "The vein ought to be three times the catheter: 4 mm for the 4 Fr": what another thing must have. */
const wantedFor = (items: readonly Item[], left: Group, right: Group): boolean =>
  /^for (?:an?|the|our|your)$/.test(joined(items, left.to + 1, right.from)) &&
  items.slice(0, left.from).some(({ word }) => VESSELS.test(word));
const VESSELS =
  /^(?:veins?|vessels?|arter(?:y|ies)|holes?|incisions?|nicks?|cuts?|openings?|tunnels?|wounds?|strictures?|urethras?|ureters?)$/;

/** "For 3-0 the needle is 0.6 mm thick": the thread's needle. */
const NEEDLE_IS = /(?:^|[ ,])(?:the|its|our) needles? (?:is|was|measures|has)\b/;
const THREADS: ReadonlySet<string> = new Set(['usp', 'ep-metric']);
const OUTSIDE = /^(?:outside|outer|external|externally|od|o\.d)$/;
const RADIUS = /\b(?:radius|radii)\b/;
const AROUND =
  /\b(?:circumferences?|girth|perimeter|(?:all the way|right|a?round the outside)(?: a?round)?)\b/;

/** What a length measures, by the words between the two sizes, right after them and before the first. */
export function dimensionOf(
  items: readonly Item[],
  left: Group,
  right: Group,
): 'outer' | 'bore' | 'radius' | 'around' | undefined {
  const lead = leadOf(items, left);
  const own = wordsBeside(items, left, right);
  const noun = SUBJECT_OF.exec(lead)?.[1] ?? '';
  const of = FUNCTION_WORD.test(noun) ? '' : noun;
  const opener = OPENER.exec(lead)?.[0] ?? '';
  if (WIRE_FOR.test(lead) || GOES_INTO.test(lead)) return undefined;
  const near = `${of} ${opener} ${own}`;
  if (PART_BETWEEN.test(own) || /\binside (?:the|an?|of|its)\b/.test(own)) return undefined;
  if (of === '' && opener === '' && /(?<!-)\b(?:bore|lumen|inner|internal)\b/.test(lead)) return undefined;
  if (of !== '' && !MEASURED_NOUN.test(of)) return undefined;
  const found = [INNER, RADIUS, AROUND].filter((pattern) => pattern.test(near));
  if (found.length > 1) return undefined;
  return found[0] === INNER
    ? 'bore'
    : found[0] === RADIUS
      ? 'radius'
      : found[0] === AROUND
        ? 'around'
        : 'outer';
}

const LEAD = 9;
/** The words before a size in its clause. */
function leadOf(items: readonly Item[], left: Group): string {
  const before = items.slice(Math.max(0, left.from - LEAD), left.from);
  const cut = before.findLastIndex((item, i) => i < before.length - 2 && /^[;:.(]$/.test(item.word));
  return before
    .slice(cut + 1)
    .map((item) => (item.kind === 'size' ? '#' : item.word))
    .join(' ');
}

/** "The widest wire for an 18 G needle is 0.035 in": it goes through, and is not as wide. */
const WIRE_FOR =
  /\b(?:(?:guide)?wires?|stylets?|bougies?|(?:broncho|fibre|fiber)?scopes?) (?:(?:to|that|which) )?(?:for|through|into?|inside)(?: an?| the| our| your)?$/;

/** "What belongs in a 21 G is the 0.018 in": what goes there, and is not as wide. */
const GOES_INTO =
  /\b(?:what|whatever|the one that|the ones that) (?:\S+ ){1,3}?(?:in|into|inside|through|down|with|over)(?: an?| the| our| your)?$/;

/** "Inside, an 18 G …", "Round the outside a 30 Fr …". */
const OPENER = /^(?:inside|internally|a?round the outside|all the way round)(?: ,)?(?: an?| the)?$/;

/** "the bore of a 21 G", "the hole for the 24 Fr": what the sentence is about when it is not the size itself. */
const SUBJECT_OF =
  /\b((?:[\w-]+ )?[\w-]+) (?:of|for|around|round|on|under|behind)(?: an?| the| our| each| this| that| any| your)?(?: [a-z][\w-]*)?$/;
/** "and for 4-0 it would be …": no noun stands before the preposition. */
const FUNCTION_WORD =
  /(?:^| )(?:and|but|so|or|then|now|that|is|are|was|as|also|only|just|say|go|use|good|right|so|same|call|called|ask|asks|asked|look|looks|looking|reach|reached|send|sent|wait|pay|paid|opt|settle|settled|went|goes)$/;
/** "sits in a hub 6 mm wide": the length is the part's. */
const PART_BETWEEN =
  /\b(?:in|with|has|have|and|under|behind) (?:an? |the |its )?(?:\w+ )?(?:hub|balloon|cuff|tip|wall|walls|eye|eyes|bevel|handle|flange|wings?|holes?|funnel|stylet)\b|\b(?:one|each|every|either|(?:the|an?) (?:other|middle|distal|proximal|larger|smaller|third|second)) (?:channel|lumen|port|limb|arm)\b/;
const MEASURED_NOUN =
  /\b(?:diameter|diameters|width|outside|thickness|size|calib(?:re|er)|bore|lumen|inside|inner|radius|circumference|girth|perimeter|cross-section|shaft|barrel|callipers?|calipers?|micrometers?|micrometres?|rulers?|value|figure|answer|number|entry|conversion|equivalent|result|measurement|reading|think|picture|case|example|sum|od|id|number|ones?|lines?|stents?|sounds?|dilators?|bougies?|piccs?|foleys?|suture|stitch(?:es)?|needles?|cannulas?|catheters?|tubes?|drains?|wires?|guidewires?|k-wires?|pins?|introducers?|threads?|sutures?|sheaths?|packets?|packs?|box(?:es)?|labels?|sleeve|foil|wrapper|carton|lid)$/;

function wordsBeside(items: readonly Item[], left: Group, right: Group): string {
  const next = items.slice(right.to + 1, right.to + 4);
  const stop = next.findIndex((item) => /^(?:and|but|while|[,;:.()])$/.test(item.word));
  return textOf([...items.slice(left.to + 1, right.from), ...(stop < 0 ? next : next.slice(0, stop))]);
}

/** The claim, or nothing when what is measured cannot be told. */
export function equate(scene: Scene, left: Group, right: Group): Reading[] {
  const { items } = scene;
  const axis = dimensionOf(items, left, right);
  // "8 inside, 10.7 outside": each figure has its own side behind it.
  if (NEEDLE_IS.test(joined(items, left.to + 1, right.from)) && THREADS.has(left.sizes[0]!.system)) return [];
  if (wantedFor(items, left, right)) return [];
  if (!axis || (axis === 'bore' && OUTSIDE.test(items[right.to + 1]?.word ?? ''))) return [];
  const length = [...left.mentions, ...right.mentions].some(
    (mention) => mention.length && longEnough(mention.sizes[0]!),
  );
  const approximate =
    APPROXIMATE.test(wordsBeside(items, left, right)) ||
    [...left.mentions, ...right.mentions].some((m) => m.approximate);
  const target = LENGTHS.has(right.sizes[0]!.system) || !LENGTHS.has(left.sizes[0]!.system) ? right : left;
  const said = items[target.from]!.said;
  const claim: EquivalenceClaim = {
    kind: 'equivalence',
    construction: 'equivalence',
    span: sentenceSpan(scene),
    focus: spanOf(scene, items[target.from]!, items[target.to]!),
    left: operand(scene, left),
    right: operand(scene, right),
    approximate,
    axis: length ? 'length' : axis,
    ...(target !== undefined && isCrossed(items, target) && ofNeedle(scene) ? { packed: true as const } : {}),
    ...(said && target.from === target.to ? { said } : {}),
  };
  return [{ claim, at: right.from, from: left.from, to: right.to }];
}

const APPROXIMATE =
  /(?:^| )(?:about|around|roughly|approximately|approx|nearly|almost|≈|~|hair|shade|touch|near|say)(?: |$)/;
