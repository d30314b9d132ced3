/**
 * What the number of a scale measures, in whatever words: "the gauge on the cap says how far the needle will reach", "what a
 * French size gives is the lumen", "it is the length of a needle that its gauge records". Closer readers come first
 * (`scales`); here one scale, one verb of measuring and one quantity must be all there is, and nothing may turn them.
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';
import { type Chunk, indefinite, ofNumber, pick, type Scale, SYSTEMS, scales } from './scales.ts';

type Quantity = 'inner' | 'outer' | 'length' | 'around';

/** What each scale does not measure. */
const WRONG: Readonly<Partial<Record<Scale, Partial<Record<Quantity, string>>>>> = {
  gauge: { inner: 'gauge-is-inner', length: 'gauge-is-length' },
  french: { inner: 'french-is-inner', length: 'french-is-length', around: 'french-is-circumference' },
  tube: { outer: 'tube-is-outer', length: 'tube-is-length' },
  'double-lumen': { inner: 'double-lumen-is-inner' },
  sheath: { outer: 'sheath-is-outer' },
  metric: { length: 'metric-is-other' },
};

const MEASURES =
  /^(?:measures?|measured|measurement|tells?|telling|describes?|describing|refers?|stands|denotes?|means?|represents?|indicates?|expresses|records?|recorded|reports?|says?|states?|statement|gives?|specif(?:y|ies)|reflects?|counts?|counted|quotes?|names?|named|sized|numbered|ordered|graded|labelled|labeled|based|taken|takes|defines?|defined|i\.e)$/;

/** What turns, doubts, compares or hangs on something else. */
const TURNS =
  /^(?:nothing|than|or|but|if|unless|unlike|instead|rather|whether|whereas|while|though|although|depends?|depending|varies|vary|differs?|differ|decides?|determines?|affects?|limits?|allows?|passes|fits?|leaves?|choose|choosing|pick|picking|same|little|only|also|besides|plus|apart|wrongly|mistak.*|confus.*|myth|may|might|could|sometimes|some|once|used|older?|previously|beside|alongside|together|separate|separately|matters?|divided|multiplied|times|third|versus|vs|twice|half|double|most|least|exceeds?|shotguns?|rifles?|guns?|lead|bullets?|rails?|railways?|sheet|earrings?|piercings?)$/;

/** The statement of one scale in a sentence that no closer reader took up. */
export function measures(scene: Scene): Reading[] {
  const { items } = scene;
  if (scene.sentence.close === '?' || items.length > 45) return [];
  const end = drawn(items);
  const said = items.slice(0, end);
  if (
    said.some(
      ({ word, magnitude }) => NEGATIONS.has(word) || TURNS.test(word) || magnitude?.degree === 'comparative',
    )
  )
    return [];
  const scale = pick(scales(said)) ?? ofNumber(scene);
  const wrong = scale && WRONG[scale.what];
  if (!scale || !wrong || indefinite(said, scale)) return [];
  const quantities = quantitiesIn(said);
  const [first] = quantities;
  const formula = first && wrong[first.what];
  if (!formula || quantities.some(({ what }) => what !== first.what)) return [];
  if (said.some(({ kind }, i) => kind === 'size' && i !== scale.from && i !== scale.to)) return [];
  if (!(forward(said, scale, first) || backward(said, scale, first))) return [];
  const claim = ruleClaim(scene, 'measures', SYSTEMS[scale.what], formula, first.from, first.to);
  return [
    { claim, at: first.from, from: Math.min(scale.from, first.from), to: Math.max(scale.to, first.to) },
  ];
}

/** ", so two of them have the same hole": what is drawn from it is another matter. */
function drawn(items: readonly Item[]): number {
  const at = items.findIndex(
    ({ word }, i) =>
      (i > 2 && SET_OFF.test(joined(items, i, i + 7))) ||
      (/^[,;:–—]$/.test(word) &&
        i > 2 &&
        /^(?:so|hence|therefore|thus|which is why|which means|which is how|that is why|that's why|because|since|and so|and that is why|nothing to do|no matter|whatever)\b/.test(
          joined(items, i + 1, i + 5),
        )),
  );
  return at < 0 ? items.length : at;
}

/** "… and not to the outside", "rather than its length": the other side is shut out, and what stands before is said. */
const SET_OFF =
  /^(?:,|and|but)? ?(?:not|never|rather than|instead of|as opposed to)(?: (?:to|by|of|on|at|the|its|their|any|with|from)){0,3} (?:outer|outside|external|inner|inside|internal|lumen|bore|hole|wall|walls|length|outsides)\b/;

/** Scale, verb, quantity. */
function forward(items: readonly Item[], scale: Chunk<Scale>, { from, to }: Chunk<Quantity>): boolean {
  if (scale.to >= from) return false;
  const link = items.findIndex(({ word }, i) => i > scale.to && i < from && MEASURES.test(word));
  const near = items.slice(link + 1, from);
  return link > 0 && from - link <= 9 && near.every(quiet) && closed(items, to) && definite(items, from);
}
/** Quantity, "is what" or "that", scale, verb. */
function backward(items: readonly Item[], scale: Chunk<Scale>, quantity: Chunk<Quantity>): boolean {
  if (quantity.to >= scale.from || !definite(items, quantity.from)) return false;
  const between = joined(items, quantity.to + 1, scale.from);
  const link = items.findIndex(({ word }, i) => i > scale.to && i <= scale.to + 4 && MEASURES.test(word));
  return (
    link > 0 &&
    /\b(?:what|that|which)(?: (?:the|a|an|its|their|any))?$/.test(between) &&
    between.split(' ').length <= 9
  );
}

/** Nothing that begins a clause of its own. */
const quiet = ({ word, kind }: Item): boolean =>
  kind === 'word' && !/^(?:and|where|when|to|who|whose|as|needs?|uses?|use|has|have)$/.test(word);
const definite = (items: readonly Item[], from: number): boolean =>
  !/^(?:an?|enough|some|any|good|wide|large|small|big|more|less|no|another)$/.test(
    items[from - 1]?.word ?? '',
  );
const closed = (items: readonly Item[], to: number): boolean => {
  const next = items[to + 1];
  return (
    !next ||
    next.kind === 'punctuation' ||
    next.deviceNoun === true ||
    next.axisNoun !== undefined ||
    /^(?:of|in|from|down|through|at|across|alone|itself|between|on|that|which|inside|it|the|a|an|will|can|goes|is|into|along|around|tube|urine|measurement|dimension|wall|size)$/.test(
      next.word,
    )
  );
};

/** The quantities named, in order. */
function quantitiesIn(items: readonly Item[]): Chunk<Quantity>[] {
  const found: Chunk<Quantity>[] = [];
  for (let i = 0; i < items.length; i++) {
    const rest = joined(items, i, i + 6);
    const kind = KINDS.find(({ pattern }) => pattern.test(rest));
    if (!kind) continue;
    const to = Math.min(items.length - 1, i + kind.pattern.exec(rest)![0].split(' ').length - 1);
    found.push({ what: kind.what, from: i, to });
    i = to;
  }
  return found;
}
const KINDS: readonly { readonly what: Quantity; readonly pattern: RegExp }[] = [
  {
    what: 'around',
    pattern:
      /^(?:circumferences?|girth|perimeter|how far (?:it is )?(?:a)?round(?: the outside)?|(?:distance|way|length) (?:a)?round(?: the outside)?|round the outside)\b/,
  },
  {
    what: 'length',
    pattern:
      /^(?:lengths?|how long|how far(?! (?:it is )?(?:across|apart|round|around))|how deep|reach|depth)\b/,
  },
  {
    what: 'inner',
    pattern:
      /^(?:inner|inside|internal|lumens?|bore|hole|channel)(?: (?:diameter|width|dimension|calibre|caliber|size|bore|side|wall))?\b/,
  },
  {
    what: 'outer',
    pattern:
      /^(?:outer|outside|external|externally)(?: (?:diameter|width|dimension|calibre|caliber|size|side|wall))?\b/,
  },
];
