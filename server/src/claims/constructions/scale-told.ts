/**
 * What the number of a scale measures, in free words, where no tighter reading was found: "what the gauge tells you is how
 * long the needle is", "we order our tracheal tubes by what they measure across the outside", "French is taken with a tape
 * round the outside". One scale, one thing measured, a word that ties them, and nothing that turns it round.
 */
import type { System } from '../../sizes/model.ts';
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { groups, type Scene } from '../text/scene.ts';
import type { Reading } from './model.ts';
import { ofSheaths } from './of-sheaths.ts';
import { ruleClaim } from './rule-claim.ts';
import { SYSTEMS as SCALES } from './scales.ts';

type Scale = 'gauge' | 'french' | 'tube' | 'double-lumen' | 'sheath' | 'wire' | 'needle' | 'drain';
type Measured = 'inner' | 'outer' | 'length' | 'around' | 'in-gauge' | 'in-french';

const RULES: Readonly<Record<Scale, Partial<Record<Measured, string>>>> = {
  gauge: { inner: 'gauge-is-inner', length: 'gauge-is-length' },
  french: { inner: 'french-is-inner', length: 'french-is-length', around: 'french-is-circumference' },
  tube: {
    outer: 'tube-is-outer',
    length: 'tube-is-length',
    'in-french': 'tube-in-french',
    'in-gauge': 'tube-in-french',
  },
  'double-lumen': { inner: 'double-lumen-is-inner' },
  sheath: { outer: 'sheath-is-outer' },
  wire: { 'in-gauge': 'wire-in-other', 'in-french': 'wire-in-other' },
  needle: { 'in-french': 'needles-in-french' },
  drain: { 'in-gauge': 'catheters-in-gauge' },
};
const SYSTEMS: Readonly<Record<Scale, System>> = { ...SCALES, needle: 'needle-gauge', drain: 'french' };

interface Found<T> {
  readonly what: T;
  readonly at: number;
}

/** What turns a statement round, or leaves it open. */
const OPERATORS =
  /^(?:not|never|no|nothing|nor|neither|cannot|can't|doesn't|don't|isn't|aren't|won't|if|unless|whether|than|or|unlike|little|hardly|depends?|vary|varies|differs?|some|sometimes|often|may|might|could|would|should|either|both|also|instead|rather|except|without|convert|converted|calculate|estimate|given|add|plus|minus|roughly|about|exceptions?|opposite|confused?|mistake)$/;
const LINKS =
  /\b(?:measur(?:es?|ed|ing|ement)|tells?|gives?|means?|stands? for|refers? to|describes?|names?|named|shows?|denotes?|states?|taken|takes|goes by|go by|ordered?|sized?|sizes|numbered|graded|called|labelled|labeled|marked|quoted|read|reads|records?|counts?|what|expresses|specif(?:y|ies)|indicates?|reflects?|is (?:the|its|really|just|simply|literally|how|a (?:measure|measurement|statement|record|report|description) (?:of|about|on))|are (?:the|their))\b/;

/** "French size (1 Fr = 0.33 mm), body length": a name, nothing that is said of it. */
const SIZE_OF_SCALE = /\b(french|gauge|tube|sheath|catheter|needle) size\b/g;

/** Other gauges; a size to be chosen; what is printed beside it. */
const ELSEWHERE =
  /^(?:shotguns?|rifles?|bullets?|choose|choosing|pick|after|beside|up|down|rises?|falls?|drops?|climbs?|grows?|shrinks?)$/;

const GOES_ELSEWHERE = cue(ELSEWHERE);

/** "the hole down the middle" is no step down. */
const elsewhere = (items: readonly Item[], i: number): boolean =>
  ELSEWHERE.test(items[i]!.word) &&
  !(items[i]!.word === 'down' && /^(?:hole|channel|bore)$/.test(items[i - 1]?.word ?? ''));

/** Where the number stands, not what it tells. */
const WRITTEN_ON = /\b(?:printed|marked|written|stamped|shown|found|stands) (?:on|along|upon) the outside\b/;

export function scaleTold(scene: Scene): Reading[] {
  if (scene.items.length > 60 || scene.sentence.close === '?' || !mayMeasure(scene.items)) return [];
  if (WRITTEN_ON.test(joined(scene.items))) return [];
  if (holds(scene.items, GOES_ELSEWHERE) && scene.items.some((_, i) => elsewhere(scene.items, i))) return [];
  const places = withoutAsides(scene.items);
  const items = places.map((i) => scene.items[i]!);
  return parts(items, scalesIn(scene, items)).flatMap(([scale, from, to]) => {
    const read = readPart(items, scale, from, to);
    if (!read) return [];
    const [at, formula] = [places[read.at]!, read.formula];
    if (formula === 'french-is-inner' && ofSheaths(scene)) return [];
    const claim = ruleClaim(scene, 'scale-told', SYSTEMS[scale.what], formula, at);
    return [{ claim, at, from: Math.min(places[scale.at]!, at), to: Math.max(places[scale.at]!, at) }];
  });
}

/** "… takes its number from the inside, and a double-lumen one from the outside": a second scale in the sentence. */
export function anotherScale(scene: Scene, read: readonly Reading[]): Reading[] {
  const known = new Set(
    read.map(({ claim }) => (claim.kind === 'formula' ? claim.formula.split('-is-')[0] : '')),
  );
  return scaleTold(scene).filter(
    ({ claim }) =>
      claim.kind === 'formula' &&
      !known.has(claim.formula.split('-is-')[0]!) &&
      read.every(({ claim: { focus } }) => focus.start !== claim.focus.start),
  );
}

/** Places of the items without ", unlike needles," and ", say 7.5,". */
function withoutAsides(items: readonly Item[]): number[] {
  const left: number[] = [];
  for (let i = 0; i < items.length; i++) {
    const end = /^[,(]$/.test(items[i]!.word) ? asideEnd(items, i) : -1;
    if (end > 0) i = end;
    else left.push(i);
  }
  return left;
}
function asideEnd(items: readonly Item[], at: number): number {
  const end = items.findIndex((item, k) => k > at && k <= at + 8 && /^[,)]$/.test(item.word));
  if (end < 0) return -1;
  const inside = items.slice(at + 1, end);
  const example = inside.some((item) => item.kind === 'size') && inside.length <= 4;
  return example || /^(?:unlike|like|as you|remember|by the way|of course)\b/.test(joined(items, at + 1, end))
    ? end
    : -1;
}

/** Each scale with the stretch in which its measure is told: "a tracheal tube … the inner, and a double-lumen one … the outer". */
function parts(items: readonly Item[], scales: readonly Found<Scale>[]): [Found<Scale>, number, number][] {
  const firsts = scales.filter((scale, i) => i === 0 || scale.what !== scales[i - 1]!.what);
  if (firsts.length > 2) return [];
  return firsts
    .map((scale, i): [Found<Scale>, number, number] => {
      const next = firsts[i + 1];
      const cut = next
        ? items.findLastIndex(
            (item, k) => k > scale.at && k < next.at && /^(?:[,;]|and|but|while|whereas)$/.test(item.word),
          )
        : items.length;
      const before = firsts[i - 1];
      const from = before
        ? items.findLastIndex(
            (item, k) => k > before.at && k < scale.at && /^(?:[,;]|and|but|while|whereas)$/.test(item.word),
          ) + 1
        : 0;
      return [scale, from, cut];
    })
    .filter(([, from, to]) => from < to && to > 0);
}

/** The one measure told of a scale in its stretch. */
function readPart(
  items: readonly Item[],
  scale: Found<Scale>,
  start: number,
  stop: number,
): { readonly at: number; readonly formula: string } | undefined {
  const end = Math.min(stop, clauseEnd(items, scale.at));
  const found = measuresIn(items, start, end).filter(
    ({ at }) => at > scale.at || !anothersMeasure(items.slice(at, scale.at)),
  );
  const [measure] = found;
  if (!measure || found.some((one) => one.what !== measure.what)) return undefined;
  const formula = RULES[scale.what][measure.what];
  if (!formula || Math.abs(measure.at - scale.at) > 16) return undefined;
  if (measure.what.startsWith('in-') && measure.at < scale.at) return undefined;
  const [from, to] = [Math.min(scale.at, measure.at), Math.max(scale.at, measure.at)];
  const turned = items.some(
    (item, i) => i >= start && i < end && OPERATORS.test(item.word) && !spared(items, i),
  );
  const between = items.slice(from, to);
  if (turned || between.some((item) => item.kind === 'size') || anotherThing(between)) return undefined;
  // "A lower gauge means a larger internal diameter" tells which way the numbers run.
  if (items.slice(start, measure.at + 2).some((item) => item.magnitude?.degree === 'comparative'))
    return undefined;
  return LINKS.test(joined(items, Math.max(start, from - 5), to + 1).replace(SIZE_OF_SCALE, '$1'))
    ? { at: measure.at, formula }
    : undefined;
}

/** "IVs are gauge, breathing tubes are the inside": after a comma another thing is spoken of. */
const anotherThing = (between: readonly Item[]): boolean => {
  const comma = between.findIndex((item) => item.word === ',');
  return comma >= 0 && between.slice(comma).some((item) => item.deviceNoun);
};

/** "… takes its number from the inner diameter, and a double-lumen one …": told before, of what was named before. */
const anothersMeasure = (between: readonly Item[]): boolean =>
  between.some(
    ({ word }, i) =>
      /^(?:[,;]|and|but|while|whereas)$/.test(word) &&
      /^(?:and|but|while|whereas|an?|the)$/.test(between[i + 1]?.word ?? ''),
  );

/** "what it tells you about": the word belongs to the telling. */
const spared = (items: readonly Item[], i: number): boolean =>
  (items[i]!.word === 'about' && /^(?:you|us|speak|speaks|all|statement)$/.test(items[i - 1]?.word ?? '')) ||
  (items[i]!.word === 'given' && /^(?:is|are)$/.test(items[i - 1]?.word ?? '')) ||
  // "rather than the outside": set aside with what follows it.
  (/^(?:not|rather|instead|than)$/.test(items[i]!.word) && setAside(items, i));

const setAside = (items: readonly Item[], i: number): boolean =>
  /^(?:(?:, )?(?:and )?not|rather than|than|instead of) (?:by |on |from |of )?(?:the |its |their |how )?(?:outside|outer|external|wall|inside|inner|internal|bore|lumen|length|width|diameter|thick|wide|long)\b/.test(
    joined(items, i, i + 5),
  );

/** The clause that the scale stands in: up to what is drawn from it, or set against it. */
function clauseEnd(items: readonly Item[], at: number): number {
  for (let i = at + 1; i < items.length; i++) {
    const { word } = items[i]!;
    if (/^(?:;|while|whereas|but|although|though|because|since)$/.test(word)) return i;
    if (
      word === ',' &&
      /^(?:so|which|and|hence|therefore|thus|as|that)$/.test(items[i + 1]?.word ?? '') &&
      !/^(?:that is|and (?:it|it's|they|they're|is|are|that))\b/.test(joined(items, i + 1, i + 3))
    )
      return i;
  }
  return items.length;
}

/** The scales spoken of: by name, by the thing whose number it is, or by the only sizes there are. */
function scalesIn(scene: Scene, items: readonly Item[]): Found<Scale>[] {
  const found = items.flatMap((item, at): Found<Scale>[] => {
    if (item.kind === 'size') return [];
    const word = item.word.replace(/'s$/, '');
    const next = items[at + 1]?.word ?? '';
    if (word === 'double-lumen') return [{ what: 'double-lumen', at }];
    if (/^(?:endotracheal|tracheal|ett)$/.test(word) && (word === 'ett' || /^tubes?$/.test(next)))
      return [{ what: 'tube', at }];
    if (/^(?:sheaths?|introducers?)$/.test(word)) return [{ what: 'sheath', at }];
    if (/^guide-?wires?$/.test(word)) return [{ what: 'wire', at }];
    if (unitAt(items, at)) return [];
    if (item.system === 'french' && word.length > 1) return [{ what: 'french', at }];
    return item.system === 'needle-gauge' && word.length > 1 ? [{ what: 'gauge', at }] : [];
  });
  const units = items.findIndex((_, at) => unitAt(items, at) !== undefined);
  if (found.length === 0 && units > 0) return sizedThings(items, units);
  const things = found.filter(({ what }) => what !== 'french');
  // "the French of a sheath", "a tracheal tube takes its French from …".
  if (things.some(({ what }) => what === 'sheath' || what === 'double-lumen'))
    return things.some(({ what }) => what === 'double-lumen')
      ? things.filter(({ what }) => what !== 'tube')
      : things;
  if (found.length > 0) return found;
  return byNumber(scene, items);
}

const NUMBER_ON =
  /\b(?:number|figure|size) (?:on|of|stamped on|printed on|written on|moulded on|marked on) (?:an?|the|your|any|every|each)(?: \w+)? (?:(needle|cannula|hub)|(foley|urinary catheter|drain|nasogastric tube))/;
const MEASURED_IS =
  /^(?:so )?what (?:is (?:being )?measured|it measures|the number (?:means|gives|measures|tells))/;

const SIZED =
  'measured|sized|labelled|labeled|graded|numbered|marked|ordered|sold|given|named|printed|comes?|goe?s?|are|is|listed|catalogued|described';
const SIZED_IN = new RegExp(`\\b(?:${SIZED}) (?:all |always |usually )?(?:in|by|on|with|using)(?: the)?$`);
const IS_SIZED = cue(new RegExp(`\\b(?:${SIZED})$`));

/** "in gauge", "by French", after a verb of sizing: the unit, not the scale spoken of. */
function unitAt(items: readonly Item[], at: number): Measured | undefined {
  const { system, word } = items[at]!;
  if ((system !== 'needle-gauge' && system !== 'french') || word.length < 2) return undefined;
  return SIZED_IN.test(joined(items, at - 4, at))
    ? system === 'french'
      ? 'in-french'
      : 'in-gauge'
    : undefined;
}

/** "Spinal needles are sized in French": what is sized, right before its verb. */
function sizedThings(items: readonly Item[], unit: number): Found<Scale>[] {
  const text = joined(items, 0, unit);
  if (/\b(?:suture|cutting|taper|round|curved|drainage|pen)\b/.test(text)) return [];
  const needle =
    /\b(?:(?:hypodermic|spinal|epidural|dental|injection|vaccine|butterfly|fistula) needles?|needles|iv cannula[es]?|venous cannula[es]?|peripheral cannula[es]?)\b/.test(
      text,
    );
  const drain =
    /\b(?:foleys?|foley catheters?|urinary catheters?|urethral catheters?|chest drains?|chest tubes?|nasogastric tubes?|feeding tubes?|suction catheters?|ng tubes?)\b/.test(
      text,
    );
  return needle === drain ? [] : [{ what: needle ? 'needle' : 'drain', at: 0 }];
}

function byNumber({ system, before }: Scene, items: readonly Item[]): Found<Scale>[] {
  const text = joined(items);
  const on = NUMBER_ON.exec(text);
  if (on) return [{ what: on[1] ? 'gauge' : 'french', at: 0 }];
  if (!MEASURED_IS.test(text)) return [];
  const sizes = new Set(groups(items).flatMap((group) => group.sizes.map((size) => size.system)));
  const named = new Set((before.at(-1)?.items ?? []).flatMap((item) => (item.system ? [item.system] : [])));
  const only = sizes.size === 1 ? [...sizes][0] : named.size === 1 ? [...named][0] : system;
  return only === 'needle-gauge'
    ? [{ what: 'gauge', at: 0 }]
    : only === 'french'
      ? [{ what: 'french', at: 0 }]
      : [];
}

const NOUN =
  /^(?:diameters?|widths?|measurements?|measure|dimensions?|size|walls?|calib(?:re|er)|bore|side|opening|one|part)$/;

function measuresIn(items: readonly Item[], start: number, end: number): Found<Measured>[] {
  const found: Found<Measured>[] = [];
  for (let at = start; at < end; at++) {
    const what = unitAt(items, at) ?? measureAt(items, at, end);
    if (what && !asideBefore(items, at)) found.push({ what, at });
  }
  return found;
}

/** "not the inside", "rather than its length". */
const asideBefore = (items: readonly Item[], at: number): boolean =>
  /\b(?:not|rather than|instead of|and not|never|than)(?: (?:by|on|from|of|the|its|their|how|an?))*$/.test(
    joined(items, at - 4, at),
  );

/** Words that name what is measured. */
const MEASURE =
  /^(?:inner|internal|inside|lumens?|hole|channel|passage|bore|circumference|perimeter|circumferential|round|around|outer|external|outside|length|long|far|deep)$/;
const NAMES_MEASURE = cue(MEASURE);

/** With none of these words and no unit by which something is sized, nothing is said to be measured. */
const mayMeasure = (items: readonly Item[]): boolean =>
  holds(items, NAMES_MEASURE) || (holds(items, IS_SIZED) && items.some(({ system }) => system !== undefined));

function measureAt(items: readonly Item[], at: number, end: number): Measured | undefined {
  const { word } = items[at]!;
  if (!MEASURE.test(word)) return undefined;
  const next = items[at + 1]?.word ?? '';
  const after = joined(items, at + 1, Math.min(end, at + 8));
  const ends = next === '' || at + 1 >= end || /^(?:[.,;!]|and|or)$/.test(next);
  if (/^(?:inner|internal)$/.test(word) && (NOUN.test(next) || ends)) return 'inner';
  if (
    /^(?:inside|internal)$/.test(word) &&
    (NOUN.test(next) || /^(?:of|$)/.test(after) || /^the$/.test(items[at - 1]?.word ?? ''))
  )
    return 'inner';
  // "the gauge of each lumen": whose number it is.
  if (/^(?:lumen|lumens)$/.test(word))
    return /\b(?:gauge|french|number) of (?:the|each|every|a|its)$/.test(joined(items, at - 4, at))
      ? undefined
      : 'inner';
  if (
    /^(?:hole|channel|passage)$/.test(word) &&
    /^(?:down|through|inside|in|along|running|that|the|it|fluid|for|urine|blood|which)\b/.test(after)
  )
    return 'inner';
  if (
    /^(?:bore|hole|channel)$/.test(word) &&
    /\b(?:diameter|width|size|measure|calib(?:re|er)) of (?:the |its )?$/.test(
      `${joined(items, at - 4, at)} `,
    )
  )
    return 'inner';
  if (/^(?:circumference|perimeter|circumferential)$/.test(word)) return 'around';
  if (
    /^(?:round|around)$/.test(word) &&
    /^(?:the |its )?(?:outside|tube|catheter|edge|whole|middle|wall|waist)\b/.test(after)
  ) {
    return /\b(?:far|tape|way|all|right|distance|string|measured|goes|length)\b/.test(
      joined(items, at - 7, at),
    )
      ? 'around'
      : undefined;
  }
  if (/^(?:outer|external)$/.test(word) && (NOUN.test(next) || ends)) return 'outer';
  if (
    word === 'outside' &&
    !/^(?:round|around)$/.test(items[at - 2]?.word ?? '') &&
    !/^(?:round|around)$/.test(items[at - 1]?.word ?? '')
  )
    return 'outer';
  if (word === 'length' || (word === 'long' && items[at - 1]?.word === 'how')) return 'length';
  if (
    /^(?:far|deep)$/.test(word) &&
    items[at - 1]?.word === 'how' &&
    /^(?:the |it |your |a )?(?:needle |tip )?(?:will |can |may )?(?:reach|reaches|go|goes|gets?|penetrates?)\b/.test(
      after,
    )
  )
    return 'length';
  return undefined;
}
