/**
 * Which way a system runs, in whatever words: "a fall in the gauge figure signals a slimmer needle", "take two units off
 * the French and the catheter becomes thicker", "as the number drops so does the width". Each word of change is given to
 * the noun that owns it, a number's or a thing's; what means nothing to us is skipped. In return there must be one number
 * and one thing that change, each in one way, and nothing that turns the sentence.
 */
import type { Size } from '../../sizes/model.ts';
import type { Axis } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { groups, type Scene } from '../text/scene.ts';
import { AXIS_CHANGE, NEGATIONS } from '../words/changes.ts';
import { FALLS, GIVES, RISES, TAKES } from '../words/ways.ts';
import type { Reading } from './model.ts';
import { scaleOfThing, systemNear } from './scale-near.ts';
import { directionClaim, type NumberSide } from './sides.ts';
import { wholeNumbers } from './whole.ts';

type Sign = 1 | -1;
interface Owner {
  readonly at: number;
  readonly about: 'number' | 'size';
  readonly axis: Axis;
  readonly sign: Sign;
}
/** A change of a number or of a thing. */
interface Mark extends Owner {
  readonly word: number;
  readonly plain: boolean;
}

/** What turns, doubts or shares out what a sentence says of its scale. */
const TURNS =
  /^(?:unlike|instead|rather|than|unless|whether|opposite|reverse|reversed|inverse|inversely|contrary|wrong|wrongly|myth|mistake|though|although|whereas|while|but|except|however|yet|may|might|could|either|versus|vs|different|think|thinks|thought|expect|expects|both)$/;

/** "It does not: …": what follows is said by itself. */
const REPLY =
  /^(?:no|(?:it|they) (?:does|do) not|(?:it|they) (?:doesn't|don't)|not so|wrong|not at all)(?: [:,.–—])/;

/** The direction of one part of a sentence, where no closer reader found any. */
export function waysOf(scene: Scene, from: number, to: number): Reading[] {
  const reply = from === 0 ? (joined(scene.items, 0, 10).match(REPLY)?.[0].split(' ').length ?? 0) : from;
  if (reply > from) return waysOf(scene, reply, to);
  const items = from === 0 && to === scene.items.length ? scene.items : scene.items.slice(from, to);
  if (scene.sentence.close === '?' || items.length > 45) return [];
  if (items.some(({ word }) => NEGATIONS.has(word) || TURNS.test(word))) return [];
  if (wholeNumbers(items) >= 0 || items.some(({ word }) => /^(?:past|beyond|above)$/.test(word))) return [];
  const marks = [...marksOf(items), ...ends(items)];
  const named = marks.filter(({ about }) => about === 'number');
  const numbers = named.length > 0 || marks.some(({ word }) => items[word]!.magnitude) ? named : steps(items);
  const sizes = [...marks.filter(({ about }) => about === 'size'), ...follows(items, numbers)];
  const [number, size] = [numbers[0], sizes[0]];
  if (!number || !size || !oneWay(numbers) || !oneWay(sizes) || number.plain !== size.plain) return [];
  const system = systemOf(scene, items, numbers);
  if (!system || system === 'usp' || (named.length > 0 && !bare(items, number))) return [];
  const [near, far] = [Math.min(number.word, size.word), Math.max(number.word, size.word)];
  if (far - near > (number.plain ? 9 : 18) || (number.plain && shared(items, near, far))) return [];
  const side = { at: Math.min(number.at, number.word), to: Math.max(number.at, number.word) };
  return [
    directionClaim(
      scene,
      from,
      { ...side, system, sign: number.sign },
      { at: size.word, to: size.word, axis: size.axis, sign: size.sign },
    ),
  ];
}

const oneWay = (marks: readonly Mark[]) =>
  marks.every((mark) => mark.sign === marks[0]!.sign && mark.plain === marks[0]!.plain);

/** "a high gauge for a fat needle": given for something else. */
const shared = (items: readonly Item[], from: number, to: number): boolean =>
  items
    .slice(from + 1, to)
    .some(({ word, magnitude }) => /^(?:for|from|if|when|or|and)$/.test(word) || magnitude);

/** "as you go from 25 G to 18 G the needle narrows": the number that changes is the sizes' own. */
function steps(items: readonly Item[]): Mark[] {
  const all = groups(items);
  const [first, last] = [all[0]?.sizes[0], all.at(-1)?.sizes.at(-1)];
  const apart =
    all.flatMap(({ sizes }) => sizes).length === 2 &&
    !all.some(({ mentions }) => mentions.some((m) => m.bound));
  if (!first || !last || !apart || first.system !== last.system || first.value === last.value) return [];
  const [from, to] = [all[0]!.from, all.at(-1)!.to];
  const led =
    STEPS.test(joined(items, from - 6, from)) && items.slice(from, to).some(({ word }) => word === 'to');
  if (!led || !STEPPED.has(first.system) || (first.system === 'usp' && (first.value > 0 || last.value > 0)))
    return [];
  const sign = stepFrom(first, last) as Sign;
  return [{ at: from, word: to, about: 'number', axis: 'number', sign, plain: false }];
}
const STEPS =
  /\b(?:as|when|if|going|moving|climbing|stepping|running|walking|counting|working|travelling|passing)\b(?: \S+){0,3} from(?: an?| the)?$/;
const STEPPED = new Set(['needle-gauge', 'french', 'usp']);
/** Which way the figure goes from one size to another: that of a thread counts its zeros. */
const stepFrom = (first: Size, last: Size): number =>
  Math.sign(first.system === 'usp' ? first.value - last.value : last.value - first.value);
const stepped = (item: Item): NumberSide['system'] | undefined => {
  const system = item.mention?.sizes[0]?.system;
  return system === 'usp' ? 'usp-zeros' : system;
};

/** "If the 20 is too big, move up the numbers": the size is where one starts from. */
const TOO =
  /\b(?:if|when|where)\b.*\b(?:is|are|looks?|feels?|seems?|proves?) (?:a bit |far |much |still |just )?too\b/;

/** Sizes named beside the rule may own what is said; only steps along the scale may stand there: "from 18 to 25". */
function bare(items: readonly Item[], number: Mark): boolean {
  const all = groups(items);
  const sizes = all.flatMap((group) => group.sizes);
  if (sizes.length === 0 || TOO.test(joined(items))) return true;
  const [first, last] = [sizes[0]!, sizes.at(-1)!];
  const row =
    all.length <= 2 && sizes.length === 2 && /\bfrom\b/.test(joined(items, all[0]!.from - 3, all[0]!.from));
  return row && first.system === last.system && stepFrom(first, last) === number.sign;
}

function systemOf(
  scene: Scene,
  items: readonly Item[],
  numbers: readonly Mark[],
): NumberSide['system'] | undefined {
  const found = new Set(
    numbers.map(({ at }) => stepped(items[at]!) ?? items[at]!.system ?? systemNear(scene, items, at)),
  );
  if (found.size > 1) return undefined;
  const [own] = [...found];
  const before = scene.before.at(-1);
  const named = new Set((before?.items ?? []).flatMap(({ system }) => system ?? []));
  const [last] = [...named];
  // "Needles go by gauge. With drains a higher number …": another thing, of another scale.
  const thing = scaleOfThing(items);
  return own ?? (named.size === 1 && before?.close !== '?' && (!thing || thing === last) ? last : undefined);
}

function marksOf(items: readonly Item[]): Mark[] {
  const measured = measuredWords(items);
  const taken = new Set<number>();
  const compared = measured.flatMap((word) => {
    const mark = comparedMark(items, word);
    if (mark) for (let i = word.at; i <= word.to; i++) taken.add(i);
    return mark ?? [];
  });
  const changes = items.flatMap((_, i) => (taken.has(i) ? [] : (changeMark(items, i, taken) ?? [])));
  return [...compared, ...changes].sort((a, b) => a.word - b.word);
}

/** "at the high end of the gauge scale", "many zeros": a number that is large or small, like "a high gauge". */
function ends(items: readonly Item[]): Mark[] {
  return items.flatMap(({ word }, i): Mark[] => {
    const sign = HIGH.test(word) ? 1 : LOW.test(word) ? -1 : 0;
    const count = /^(?:many|few)$/.test(word) && items[i + 1]?.system === 'usp-zeros';
    const of = items[i + 1]?.word === 'end' ? i + 2 : i + 1;
    const scale = items[of]?.word === 'of' ? items.slice(of + 1, of + 4).findIndex(numbered) : -1;
    if (!sign || (!count && (scale < 0 || /^(?:many|few)$/.test(word)))) return [];
    return [
      { at: count ? i + 1 : of + 1 + scale, word: i, about: 'number', axis: 'number', sign, plain: true },
    ];
  });
}
const HIGH = /^(?:high|upper|top|large|big|many)$/;
const LOW = /^(?:low|lower|bottom|small|few)$/;
const numbered = ({ system, axisNoun }: Item): boolean => system !== undefined || axisNoun?.axis === 'number';

const SIZES: ReadonlySet<Axis> = new Set(['outer', 'bore', 'flow', 'hole', 'strength']);
const GET = /^(?:get|gets|getting|become|becomes|becoming|grow|grows|go|goes|run|runs|is|are|turn|turns)$/;

function comparedMark(items: readonly Item[], m: Measured): Mark | undefined {
  if (m.idiom || m.degree === 'superlative') return undefined;
  const plain = m.degree === 'plain' && !m.excess;
  // "If it is too wide …": what is wanted is narrower.
  const base = { at: m.to, word: m.at, sign: m.excess ? (-m.sign as Sign) : m.sign, plain };
  if (m.axis === 'number')
    return (plain && m.to === m.at) || lowers(items, m.at)
      ? undefined
      : { ...base, about: 'number', axis: 'number' };
  if (!SIZES.has(m.axis)) return undefined;
  if (plain)
    return m.attributive && m.to >= m.at && thing(items, m)
      ? { ...base, about: 'size', axis: m.axis }
      : undefined;
  // "these get smaller": numbers do, where numbers are what is spoken of.
  const owner =
    GET.test(items[m.at - 1]?.word ?? '') && GENERAL.test(items[m.at]!.word)
      ? ownerBefore(items, m.at - 1)
      : undefined;
  return owner?.about === 'number'
    ? { ...base, at: owner.at, about: 'number', axis: 'number' }
    : { ...base, about: 'size', axis: m.axis };
}
/** "Lower the hub", "then lower it": done to a thing, which is no number. */
const lowers = (items: readonly Item[], at: number): boolean =>
  items[at]!.word === 'lower' &&
  items[at - 1]?.word !== 'the' &&
  (/^(?:it|them)$/.test(items[at + 1]?.word ?? '') ||
    (SMALL.test(items[at + 1]?.word ?? '') && !items.slice(at + 2, at + 5).some(numbered)));
const GENERAL = /^(?:smaller|larger|bigger|greater|lesser)$/;

/** "delicate needles": right before the thing, which is no system's number. */
const thing = (items: readonly Item[], m: Measured): boolean => {
  const next = items[m.at + 1];
  return next?.deviceNoun === true || (next?.axisNoun !== undefined && SIZES.has(next.axisNoun.axis));
};

/** A word of change with the noun it belongs to. */
function changeMark(items: readonly Item[], i: number, taken: ReadonlySet<number>): Mark | undefined {
  const { word, kind } = items[i]!;
  // "If it is too thin …" is no movement.
  if (kind !== 'word' || items[i - 1]?.word === 'too') return undefined;
  const quantity = /^(?:more|extra|additional|another|added)$/.test(word)
    ? 1
    : /^(?:less|fewer)$/.test(word)
      ? -1
      : 0;
  if (quantity) return marked(i, quantity, amountAfter(items, i));
  const gives = GIVES.has(word) ? 1 : TAKES.has(word) ? -1 : 0;
  const object = gives ? ownerAfter(items, i, taken) : undefined;
  // "adds width to the label": to something else.
  const to = object && items[object.at + 1]?.word === 'to' ? items.slice(object.at + 2, object.at + 5) : [];
  if (to.length > 0 && !to.some((item) => item.deviceNoun)) return undefined;
  if (gives && object) return handled(items, i, object) ? undefined : marked(i, gives, object);
  if (gives && lengthAfter(items, i))
    return { at: i, word: i, about: 'size', axis: 'outer', sign: gives, plain: false };
  const each = gives ? eachBefore(items, i) : undefined;
  if (each) return marked(i, gives as Sign, each);
  const own = AXIS_CHANGE.get(word);
  const sign = RISES.has(word) ? 1 : FALLS.has(word) ? -1 : own?.sign;
  if (!sign) return undefined;
  const noun = /^(?:an?|the|every|each|any)$/.test(items[i - 1]?.word ?? '');
  const along = PARTICLE.test(word) && /^(?:in|the|by|on)$/.test(items[i + 1]?.word ?? '');
  const ahead = noun || along || word.endsWith('ing') ? ownerAfter(items, i, taken) : undefined;
  const owner = ahead ?? ownerBefore(items, i) ?? ownerAfter(items, i, taken);
  if (owner) return marked(i, sign, owner);
  return own ? { at: i, word: i, about: 'size', axis: own.axis, sign: own.sign, plain: false } : undefined;
}

/** "take the needle off", "drop the catheter": the thing itself, not its size. */
const handled = (items: readonly Item[], i: number, { at, about }: Owner): boolean =>
  about === 'size' && items[at]!.axisNoun === undefined && !/^(?:reduc|increas)/.test(items[i]!.word);

const PARTICLE = /^(?:up|down|upwards?|downwards?)$/;

const marked = (word: number, sign: Sign, owner: Owner | undefined): Mark | undefined =>
  owner && { ...owner, word, sign: (sign * owner.sign) as Sign, plain: false };

/** "a third of a millimetre", "0.33 mm". */
const lengthAfter = (items: readonly Item[], i: number): boolean =>
  items
    .slice(i + 1, i + 7)
    .some(
      ({ word, mention }) =>
        /^(?:mm|millimet(?:re|er)s?)$/.test(word) || mention?.sizes[0]?.system === 'millimetre',
    );

/** "every number it gains", "each French you add". */
function eachBefore(items: readonly Item[], i: number): Owner | undefined {
  const near = items.slice(Math.max(0, i - 5), i).findLastIndex(({ word }) => /^(?:every|each)$/.test(word));
  const at = near < 0 ? -1 : Math.max(0, i - 5) + near + 1;
  const owner = at < 0 || at >= i ? undefined : nounAt(items, at);
  return owner?.about === 'number' ? owner : undefined;
}

const ENDS = /^(?:[.,;:!)–—]|you|is|in|there|to|we|and|it|on|for)$/;
const STUFF = /^(?:thread|metal|steel|thickness|material|tube|needle|plastic|silk|nylon)$/;

/** "more zeros", "more of them", "less thread". */
function amountAfter(items: readonly Item[], i: number): Owner | undefined {
  const next = items[i + 1];
  if (!next) return undefined;
  if (next.word === 'of' && /^(?:them|those)$/.test(items[i + 2]?.word ?? '')) {
    const at = items.slice(0, i).findLastIndex(({ system }) => system === 'usp-zeros');
    return at < 0 ? undefined : numberAt(at);
  }
  if (
    /^(?:units?|steps?|numbers?|points?)$/.test(next.word) &&
    items.some(({ system }) => system === 'french')
  )
    return numberAt(items.findIndex(({ system }) => system === 'french'));
  if (next.system === 'usp-zeros' || next.system === 'french') return nounAt(items, i + 1);
  if (STUFF.test(next.word) && ENDS.test(items[i + 2]?.word ?? '.'))
    return { at: i + 1, about: 'size', axis: 'outer', sign: 1 };
  // "more room in the vein" is what the size leaves.
  const left = /^(?:room|space|headroom|elbow-room|interior|inside|outside)$/.test(next.word);
  return next.axisNoun && SIZES.has(next.axisNoun.axis) && !left ? nounAt(items, i + 1) : undefined;
}

const BREAKS =
  /^(?:as|when|and|so|if|because|since|while|then|means?|gives?|makes?|once|until|after|before|that|you|we|i|he|she)$/;
const OF = /^(?:of|for|on|in|with|to|inside)$/;
const SMALL = /^(?:the|an?|its|your|their|our|this|these|any|every|each)$/;
const PRONOUN = /^(?:it|they|them|these|those|which)$/;

/** Who rises: the head of the noun phrase before, "the numbers on a needle" for "numbers"; for "it" what was named first. */
function ownerBefore(items: readonly Item[], i: number): Owner | undefined {
  for (let k = i - 1; k >= 0 && k >= i - 7; k--) {
    const { word, kind } = items[k]!;
    if (kind !== 'word' || BREAKS.test(word)) return undefined;
    if (PRONOUN.test(word)) return i - k <= 3 ? antecedent(items, k) : undefined;
    if (SAID.has(word)) return undefined;
    const noun = nounAt(items, k);
    if (!noun) continue;
    const prep = OF.test(items[k - 1]?.word ?? '')
      ? k - 1
      : OF.test(items[k - 2]?.word ?? '') && SMALL.test(items[k - 1]!.word)
        ? k - 2
        : -1;
    return (prep > 0 ? ownerBefore(items, prep) : undefined) ?? noun;
  }
  return undefined;
}
const SAID: ReadonlySet<string> = new Set([...RISES, ...FALLS]);

/** What "it" or "they" stands for: the nearest noun before that a scale's sentence can be about. */
function antecedent(items: readonly Item[], at: number): Owner | undefined {
  const many = /^(?:they|them|these|those)$/.test(items[at]!.word);
  for (let k = at - 1; k >= 0; k--) {
    const noun = nounAt(items, k);
    if (noun && many && noun.about === 'number' && items[k]!.word.endsWith('s')) return noun;
    if (noun && !OF.test(items[k - 1]?.word ?? '') && !OF.test(items[k - 2]?.word ?? '')) return noun;
  }
  return undefined;
}

/** "a drop in the diameter", "falling bore", "take two units off the French number". */
function ownerAfter(items: readonly Item[], i: number, taken: ReadonlySet<number>): Owner | undefined {
  for (let k = i + 1; k < items.length && k <= i + 6; k++) {
    const { kind, word } = items[k]!;
    if (taken.has(k) || kind !== 'word' || BREAKS.test(word) || SAID.has(word)) break;
    const noun = nounAt(items, k);
    if (noun) return noun;
  }
  return undefined;
}

const numberAt = (at: number): Owner => ({ at, about: 'number', axis: 'number', sign: 1 });

/** What may be said to change; "size" by itself is either. */
function nounAt(items: readonly Item[], k: number): Owner | undefined {
  const item = items[k]!;
  if (item.kind !== 'word') return undefined;
  const next = items[k + 1];
  // "gauge number", "needle width": the last of them is spoken of.
  if (next && next.kind === 'word' && (next.axisNoun || (item.system && next.deviceNoun))) {
    if (/^sizes?$/.test(next.word)) return item.system ? numberAt(k) : undefined;
    return undefined;
  }
  if (item.system) return numberAt(k);
  if (/^sizes?$/.test(item.word)) return items[k - 1]?.system ? numberAt(k - 1) : undefined;
  // "the number of patients" is no size's.
  const counted =
    next?.word === 'of'
      ? items.slice(k + 2, k + 5).some((near) => near.deviceNoun || near.system || SMALL.test(near.word))
      : true;
  if (item.axisNoun?.axis === 'number') return counted ? numberAt(k) : undefined;
  if (item.axisNoun && SIZES.has(item.axisNoun.axis))
    return { at: k, about: 'size', axis: item.axisNoun.axis, sign: item.axisNoun.sign };
  return item.deviceNoun && !VAGUE.test(item.word)
    ? { at: k, about: 'size', axis: 'outer', sign: 1 }
    : undefined;
}
const VAGUE =
  /^(?:ones?|kind|sort|end|option|choice|pick|set|lot|box|kit|tray|drawer|two|three|line|lines|access|model|version|product|item)$/;

/** "… so does the width": it goes as the number goes. */
function follows(items: readonly Item[], [number]: readonly Mark[]): Mark[] {
  const at = items.findIndex(
    ({ word }, i) => word === 'so' && /^(?:does|do)$/.test(items[i + 1]?.word ?? ''),
  );
  if (at < 0 || !number || number.plain || number.word > at) return [];
  const owner = ownerAfter(items, at + 1, new Set());
  return owner?.about === 'size'
    ? [{ ...owner, word: at, sign: (number.sign * owner.sign) as Sign, plain: false }]
    : [];
}
