/**
 * What the number of a scale measures: "gauge tells you the length of the needle", "tracheal tubes are sized in French",
 * "the number on a double-lumen tube is its inner diameter". A sentence is read as scale, link, measure or unit, in
 * that order, with nothing but small words between; the table below says which of those statements hold.
 */
import type { System } from '../../sizes/model.ts';
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

type Scale = 'gauge' | 'french' | 'metric' | 'tube' | 'double-lumen' | 'sheath' | 'wire';
type Measure =
  | 'outer'
  | 'inner'
  | 'length'
  | 'reach'
  | 'plain'
  | 'mm'
  | 'whole-mm'
  | 'tenths-mm'
  | 'hundredths-mm'
  | 'thousandths-mm'
  | 'inches'
  | 'thousandths-inch'
  | 'french'
  | 'gauge';

export const SYSTEMS: Readonly<Record<Scale, System>> = {
  gauge: 'needle-gauge',
  french: 'french',
  metric: 'ep-metric',
  tube: 'tube-id',
  'double-lumen': 'french',
  sheath: 'french',
  wire: 'wire-inch',
};

/** Which statements of a scale and what it measures are read, and as which rule. What texts differ on is left out. */
const RULES: Readonly<Record<Scale, Partial<Record<Measure, string>>>> = {
  gauge: {
    inner: 'gauge-is-inner',
    length: 'gauge-is-length',
    reach: 'gauge-is-length',
    mm: 'gauge-is-measure',
    'whole-mm': 'gauge-is-measure',
    'tenths-mm': 'gauge-is-measure',
    'hundredths-mm': 'gauge-is-measure',
    'thousandths-mm': 'gauge-is-measure',
    'thousandths-inch': 'gauge-is-measure',
    inches: 'gauge-is-measure',
  },
  french: { inner: 'french-is-inner', length: 'french-is-length', 'whole-mm': 'french-is-diameter-mm' },
  metric: {
    length: 'metric-is-other',
    mm: 'metric-is-other',
    'whole-mm': 'metric-is-other',
    'tenths-mm': 'metric-is-tenths',
    'hundredths-mm': 'metric-is-other',
    'thousandths-mm': 'metric-is-other',
    inches: 'metric-is-other',
    'thousandths-inch': 'metric-is-other',
  },
  tube: {
    outer: 'tube-is-outer',
    inner: 'tube-is-inner',
    length: 'tube-is-length',
    french: 'tube-in-french',
    gauge: 'tube-in-french',
  },
  'double-lumen': { inner: 'double-lumen-is-inner', outer: 'double-lumen-is-outer' },
  sheath: { outer: 'sheath-is-outer', inner: 'sheath-is-inner' },
  wire: {
    mm: 'wire-inches-as-mm',
    'tenths-mm': 'wire-inches-as-mm',
    'hundredths-mm': 'wire-inches-as-mm',
    'thousandths-mm': 'wire-inches-as-mm',
    inches: 'wire-in-inches',
    'thousandths-inch': 'wire-in-inches',
    french: 'wire-in-other',
    gauge: 'wire-in-other',
  },
};

interface Chunk<T> {
  readonly what: T;
  readonly from: number;
  readonly to: number;
}

function word(items: readonly Item[], i: number): string {
  const item = items[i];
  return item === undefined || item.kind === 'size' ? '' : bare(item.word);
}
const bare = (said: string): string => (said.endsWith("'s") ? said.slice(0, -2) : said);

/** "French", "the metric number", "the number on a tracheal tube", "guidewires". */
function scales(items: readonly Item[]): Chunk<Scale>[] {
  return items.flatMap((item, i): Chunk<Scale>[] => {
    const at = (what: Scale, to = i): Chunk<Scale>[] => [{ what, from: i, to }];
    const [here, next] = [word(items, i), word(items, i + 1)];
    if (/^double-lumen$/.test(here) && /^(?:endobronchial|tubes?|packets?|packs?|ones?)$/.test(next))
      return at('double-lumen', i + 1);
    if (/^(?:breathing|airway)$/.test(here) && /^tubes?$/.test(next)) return at('tube', i + 1);
    if (/^(?:endotracheal|tracheal|et|ett)$/.test(here) && word(items, i - 1) !== 'double-lumen')
      return /^tubes?$/.test(next) || here === 'ett' ? at('tube', here === 'ett' ? i : i + 1) : [];
    if (/^(?:sheaths?|introducers?)$/.test(here)) return at('sheath');
    if (/^(?:guidewires?|guide-wires?)$/.test(here)) return at('wire');
    if (item.mention?.sizes[0]?.system === 'wire-inch') return at('wire');
    const third = word(items, i + 2);
    if (/^(?:metric|european)$/.test(here) && /^(?:sutures?|threads?)$/.test(next) && NUMBERS.test(third))
      return at('metric', i + 2);
    if (here === 'european' && NUMBERS.test(next) && ofThreads(items)) return at('metric', i + 1);
    const far =
      /^(?:metric|european)$/.test(here) && /^(?:sutures?|threads?)$/.test(next) ? numberAfter(items, i) : -1;
    if (far > 0) return at('metric', far);
    if (item.system === 'needle-gauge' && /^(?:gauges?|gage)$/.test(here)) return at('gauge');
    if (item.system === 'french' && here.length > 1) return at('french');
    return item.system === 'ep-metric' || (here === 'metric' && /^(?:numbers?|sizes?|figures?)$/.test(next))
      ? at('metric', i + 1)
      : [];
  });
}

const NUMBERS = /^(?:numbers?|sizes?|figures?)$/;
/** European numbers of threads are metric. */
const ofThreads = (items: readonly Item[]): boolean =>
  items.some(({ word: one }) => /^(?:sutures?|threads?|silk|nylon|stitch(?:es)?)$/.test(one));

/** "with metric sutures the number …". */
const numberAfter = (items: readonly Item[], i: number): number =>
  items.findIndex((item, k) => k > i && k <= i + 4 && /^(?:numbers?|figures?)$/.test(item.word));

/** Verbs that say what a number measures. */
const LINK =
  /^(?:is|are|means?|measures?|tells?|gives?|shows?|describes?|stands|counts?|measured|sized|listed|stocked|numbered|labelled|labeled|named|called|graded|given|expressed|quoted|marked|printed|reads?|records?|refers?|goes|go|carry|carries|bears?|sold|ordered|specifies|denotes|reports?|indicates?|comes|=)$/;
const SMALL =
  /^(?:the|a|an|of|by|in|from|for|to|its|their|your|you|us|on|across|along|at|how|many|much|simply|just|really|basically|literally|actually|essentially|only|number|count|figure|figures|nothing|but|more|directly|always|after|as|with|it|this|that|size|sizes|sized|needle|needles|cannula|cannulas|catheter|catheters|tube|tubes|thread|suture|sutures|wire|wires|is|are|was|long|wide|thick|measured|given|all|about|because|same|each|every|any|true|taken|round|french)$/;
const REACH = 8;

/** "Read the metric number as millimetres", "take gauge as tenths of an inch". */
const TAKEN = /\b(?:read|take|treat|count|understand|think of)(?: (?:the|an?|any|your|every))?$/;
const LINKS = cue(new RegExp(`${LINK.source}|^as$`));

/** With these a measure begins. */
const OPENS_MEASURE =
  /^(?:inner|inside|internal|outer|outside|external|lumen|hole|bore|channel|lengths?|long|how|(?:ten|hundred|thousand)ths?|whole|full|diameters?|widths?|size|measurement|side|opening|dimension|calib(?:er|re)|thickness|wide|thick|across|mm|millimet(?:re|er)s?|inch(?:es)?|french|charri[eè]re|gauge)$/;
const MEASURES = cue((said) => OPENS_MEASURE.test(bare(said)));

/** A measure or a unit at item `i`, longest reading first. */
function measureAt(items: readonly Item[], i: number): Chunk<Measure> | undefined {
  const [here, next, third, fourth] = [0, 1, 2, 3].map((k) => word(items, i + k)) as [
    string,
    string,
    string,
    string,
  ];
  if (!OPENS_MEASURE.test(here)) return undefined;
  const noun = /^(?:diameters?|widths?|bore|size|measurement|side|opening|dimension|calib(?:er|re))$/;
  const chunk = (what: Measure, to = i): Chunk<Measure> => ({ what, from: i, to });
  if (/^(?:inner|inside|internal)$/.test(here)) return chunk('inner', noun.test(next) ? i + 1 : i);
  if (/^(?:outer|outside|external)$/.test(here)) return chunk('outer', noun.test(next) ? i + 1 : i);
  if (here === 'lumen' || hollow(items, i)) return chunk('inner');
  if (/^(?:length|lengths)$/.test(here) || (here === 'long' && word(items, i - 1) === 'how'))
    return chunk('length');
  const reach = here === 'how' && /^(?:far|deep)$/.test(next) ? reachEnd(items, i) : -1;
  if (reach > 0) return chunk('reach', reach);
  const part = /^(tenths?|hundredths?|thousandths?)$/.exec(here)?.[1];
  const unit = part && next === 'of' ? unitOf(/^(?:an?|one)$/.test(third) ? fourth : third) : undefined;
  if (part && unit)
    return unit === 'mm' ? chunk(`${stem(part)}s-mm` as Measure, i + 3) : chunk('thousandths-inch', i + 3);
  if (/^(?:whole|full)$/.test(here) && unitOf(next) === 'mm') return chunk('whole-mm', i + 1);
  if (noun.test(here) || /^(?:thickness|wide|thick|across)$/.test(here)) return chunk('plain');
  if (unitOf(here)) return /^(?:long|in length)/.test(next) ? chunk('length', i + 1) : chunk(unitOf(here)!);
  return /^(?:french|charri[eè]re)$/.test(here) && next !== 'of'
    ? chunk('french')
    : here === 'gauge'
      ? chunk('gauge')
      : undefined;
}

/** "how far the needle will reach", "how deep it goes": a length, of a needle. */
const reachEnd = (items: readonly Item[], i: number): number =>
  items.findIndex((item, k) => k > i + 1 && k <= i + 6 && REACHES.test(item.word));
const REACHES = /^(?:reach|reaches|go|goes|gets?|is|penetrates?|sits?)$/;

/** "the hole down the middle", "the bore rather than the outside": by itself "bore" may be said of the width. */
const hollow = (items: readonly Item[], i: number): boolean => {
  const after = joined(items, i + 1, i + 8);
  return (
    (items[i]!.word === 'hole' &&
      /^(?:down|through|inside|in|along|running) (?:\S+ ){0,2}(?:middle|needle|centre|center|tube|catheter|inside)\b/.test(
        after,
      )) ||
    (/^(?:bore|channel|hole)$/.test(items[i]!.word) &&
      /^(?:rather than|, ?(?:and )?not|and not|not|instead of|as opposed to) (?:by )?(?:the |its )?(?:outside|outer|external|wall)\b/.test(
        after,
      ))
  );
};

const stem = (part: string): string => part.replace(/s$/, '');
const unitOf = (text: string): 'mm' | 'inches' | undefined =>
  /^(?:mm|millimet(?:re|er)s?)$/.test(text) ? 'mm' : /^inch(?:es)?$/.test(text) ? 'inches' : undefined;

/** Words after which the measure is of something else or only partly so. */
const TURNS =
  /\b(?:unless|except|only if|only when|sometimes|often|roughly|(?<!\btells? (?:us|you) |\bspeaks? )about|approximately|near(?:ly)?|times|divided|multiplied|third)\b/;

/** "a gauge that …", "each French size which …", "a 12 gauge takes …": one of them, not the scale. */
const indefinite = (items: readonly Item[], { from, to }: Chunk<Scale>): boolean =>
  /^[0-9]+$/.test(items[from - 1]?.word ?? '') ||
  (/^(?:an?|each|any|every|this|which|what|right|your)$/.test(items[from - 1]?.word ?? '') &&
    /^(?:that|which|with|for)$/.test(items[to + 1]?.word ?? ''));

/** The statement of one scale in the sentence, when it is read as a whole. */
export function scaleRule(scene: Scene): Reading[] {
  const { items } = scene;
  if (items.length > 40 || !holds(items, LINKS) || !holds(items, MEASURES)) return [];
  const scale = pick(scales(items)) ?? ofNumber(scene);
  if (!scale || indefinite(items, scale) || TURNS.test(joined(items))) return [];
  const given = exampleAt(items, scale.to);
  const start = given < 0 ? asideEnd(items, scale.to) : scale.to;
  const so = items.findIndex((item, i) => i > scale.to && item.word === ',' && hence(items, i));
  const end = so < 0 ? items.length : so;
  if (items.some((item, i) => item.kind === 'size' && i < end && i !== scale.from && i !== given)) return [];
  const taken = TAKEN.test(joined(items, scale.from - 3, scale.from));
  const link = items.findIndex(
    (item, i) => i > start && i <= start + 7 && (LINK.test(item.word) || (taken && item.word === 'as')),
  );
  if (
    link < 0 ||
    !items
      .slice(given < 0 ? start + 1 : given + 1, link)
      .every((item) => quiet(item) || (given >= 0 && /^(?:,|say|\))$/.test(item.word)))
  )
    return [];
  const measure = measureAfter(items, link);
  const formula = measure && RULES[scale.what][measure.what];
  if (!measure || !formula || foreign(items, scale, measure)) return [];
  // "the inner diameter, not the outer one": what is denied comes after what is said.
  const apart = items.slice(measure.to + 1, measure.to + 3).some((item) => /^(?:not|never)$/.test(item.word));
  const said = apart ? items.slice(0, measure.to + 1) : items;
  if (said.some((item) => NEGATIONS.has(item.word) && !(apart && item.word === 'rather'))) return [];
  // "Nothing but the length" tells of it; "nothing of the length" does not.
  if (said.some(({ word: one }, i) => one === 'nothing' && /^(?:of|about|on)$/.test(said[i + 1]?.word ?? '')))
    return [];
  return [reading(scene, scale, measure, formula)];
}

/** ", so that's how you know the 10 will reach": what is drawn from it. */
const hence = (items: readonly Item[], comma: number): boolean =>
  /^(?:so|hence|therefore|thus|for instance|for example|e\.g|say|that's why|which is why|which is how|that is why)\b/.test(
    joined(items, comma + 1, comma + 4),
  );

/** "The number on the packet, 37 say, is …". */
const exampleAt = (items: readonly Item[], after: number): number =>
  /^[,(]$/.test(items[after + 1]?.word ?? '') && items[after + 2]?.kind === 'size' ? after + 2 : -1;

/** "Gauge, by the way, is …": where the remark between commas ends. */
function asideEnd(items: readonly Item[], after: number): number {
  if (items[after + 1]?.word !== ',') return after;
  const end = items.findIndex((item, i) => i > after + 1 && i <= after + 8 && item.word === ',');
  const aside =
    end < 0
      ? ''
      : items
          .slice(after + 2, end)
          .map((item) => item.word)
          .join(' ');
  return ASIDE.test(aside) ? end : after;
}
const ASIDE =
  /^(?:by the way|incidentally|of course|for the record|remember|don't forget|in case you (?:forgot|wondered|were wondering|didn't know|need it)|again|to be clear|simply put|in short|as you know|mind you|for what it's worth|as ever|after all|then|in other words)$/;

/** "What the number describes is …" where one scale alone is spoken of. */
function ofNumber(scene: Scene): Chunk<Scale> | undefined {
  const { items, system } = scene;
  const scale = SPOKEN_OF[lastNamed(scene.before) ?? system ?? ''];
  const at = items.findIndex((item) => /^(?:number|figure|size)$/.test(item.word));
  const before = items.slice(0, Math.max(at, 0)).map((item) => item.word);
  return scale &&
    at >= 0 &&
    before.every((one) => /^(?:what|so|and|the|this|that|its|all|printed|here|,)$/.test(one)) &&
    // "The number is millimetres across the inside, nothing to do with the outside": a tube's, whatever is near.
    !(scale === 'gauge' && ACROSS_INSIDE.test(joined(items, at)))
    ? { what: scale, from: at, to: at }
    : undefined;
}

/** The one scale whose sizes the sentence before names. */
function lastNamed(before: Scene['before']): System | undefined {
  const named = new Set((before.at(-1)?.items ?? []).flatMap((item) => item.mention?.sizes[0]?.system ?? []));
  return named.size === 1 && named.has('tube-id') ? 'tube-id' : undefined;
}
const SPOKEN_OF: Readonly<Partial<Record<string, Scale>>> = {
  'needle-gauge': 'gauge',
  french: 'french',
  'tube-id': 'tube',
};

const ACROSS_INSIDE = /\bmillimet(?:re|er)s? (?:\S+ ){0,2}(?:inside|internally)\b/;

/** One scale, or a scale and the device whose number it is: "the French of a sheath". */
function pick(named: readonly Chunk<Scale>[]): Chunk<Scale> | undefined {
  const [first, second] = named;
  if (!first) return undefined;
  if (named.every(({ what }) => what === first.what)) return first;
  const device = second && /^(?:sheath|double-lumen|tube)$/.test(second.what) && first.what === 'french';
  // "A tracheal tube is sized in French": the second is what is said of the first.
  const said = second && second.what === 'french' && /^(?:tube|wire)$/.test(first.what);
  if (named.length !== 2) return undefined;
  return device ? { ...second, from: first.from } : said ? first : undefined;
}

const quiet = (item: Item): boolean =>
  item.kind === 'word' &&
  (SMALL.test(item.word) ||
    item.deviceNoun === true ||
    /^(?:number|printed|marked|stamped|written|moulded|molded|scale|system|hub|cap|sleeve|wrapper|package|packet|box|label|standard|hollow|hypodermic|ordinary|french|size)$/.test(
      item.word,
    ));

/** The first measure after the link, small words between; a unit after "diameter in" is what counts. */
function measureAfter(items: readonly Item[], link: number): Chunk<Measure> | undefined {
  let found: Chunk<Measure> | undefined;
  for (let i = link + 1; i < items.length && i <= link + REACH + (found ? 4 : 0); i++) {
    const measure = measureAt(items, i);
    if (measure && (!found || found.what === 'plain')) {
      found = measure;
      i = measure.to;
      if (measure.what !== 'plain') return measure;
      continue;
    }
    const item = items[i]!;
    if (item.kind !== 'word' || !(SMALL.test(item.word) || LINK.test(item.word))) break;
  }
  return found;
}

/** A gauge in millimetres that only shares its sentence: "by the gauge or in mm"; a length after "and". */
function foreign(items: readonly Item[], scale: Chunk<Scale>, measure: Chunk<Measure>): boolean {
  // Packets of guidewires give millimetres too; the digits of "0.035" never do.
  if (scale.what === 'wire' && measure.what === 'mm' && items[scale.from]!.kind !== 'size') return true;
  const between = items.slice(scale.to + 1, measure.from).map((item) => item.word);
  if (between.some((one) => /^(?:and|or|than|while|whereas|unlike|from|to)$/.test(one) && one !== 'to'))
    return true;
  const after = items.slice(measure.to + 1, measure.to + 4).map((item) => item.word);
  // "the outside [the inside]": put right in square brackets.
  return (
    /^(?:or|if|when|per|for|\[)$/.test(after[0] ?? '') || /^(?:bevel|vein|wound|skin)$/.test(after[2] ?? '')
  );
}

function reading(scene: Scene, scale: Chunk<Scale>, measure: Chunk<Measure>, formula: string): Reading {
  const claim = ruleClaim(
    scene,
    'scales',
    SYSTEMS[scale.what],
    formula,
    measure.from,
    Math.min(measure.to, scene.items.length - 1),
  );
  return { claim, at: measure.from, from: scale.from, to: measure.to };
}
