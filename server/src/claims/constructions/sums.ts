/**
 * Arithmetic worked out in the text: "24 divided by three is six millimetres", "three times four, so 16 Fr", "14/3 = 4.7".
 * Whoever writes it sets a size and a length equal; the sum says which is which.
 */
import type { System } from '../../sizes/model.ts';
import type { EquivalenceClaim, Operand } from '../model.ts';
import { cue, holds } from '../text/cues.ts';
import { type Figure, figureAt } from '../text/figures.ts';
import type { Item } from '../text/items.ts';
import { changed } from '../text/place.ts';
import { remembered } from '../text/remember.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { EMPHASIS } from '../words/asides.ts';
import { NEGATIONS } from '../words/changes.ts';
import { concluded } from './concluded.ts';
import type { Construction, Reading } from './model.ts';

export interface Sum {
  readonly kind: 'over' | 'times';
  /** What is divided, or the factor that is not the scale's. */
  readonly operand: Figure;
  readonly by: number;
  readonly result: Figure;
  readonly from: number;
  readonly to: number;
}

/** One of these stands in every sum. */
const SIGNS =
  /^(?:over|÷|\/|×|\*|x|times|divid\w+|multipl\w+|third|split|\d+\/\d+|(?:doubl|trebl|tripl|halv)\w+|double|treble|triple|twice|thrice)$/;
const SIGN = cue(SIGNS);
const signed = (items: readonly Item[]): boolean => holds(items, SIGN);
const OVER = /^(?:over|÷|\/)$/;
const TIMES = /^(?:×|\*|x|times)$/;
/** What may stand between a sum and its result. */
const LEADS =
  /^(?:is|are|=|equals?|gives?|giving|makes?|making|get|gets|got|leaves?|leaving|comes?|works|out|to|at|so|that|that's|which|and|you|we|have|has|arrive|land|on|your|the|answer|result|,|:|;|—|–|an?|about|roughly|around|or|it|it's|for|ask|take|open|use|need|needs|want|will|'ll|say|call|be|read|just|under|over|→|therefore|hence|in|size)$/;
const REACH = 12;

/** Says what a sum comes to; then whatever means nothing to us may stand beside it. */
const TOLD =
  /^(?:is|are|=|equals?|gives?|giving|makes?|making|gets?|got|leaves?|leaving|comes?|that's|it's|answer|result|→|therefore|hence|tells?|shows?|means?|meaning|yields?|lands?|ends?|produces?|reads?|says?|call|brings?|takes?|turns?|arrive)$/;
const ENDS =
  /^(?:\+|plus|minus|add|[-−]|[.?!(“”"]|than|if|unless|but|while|whereas|though|although|instead|rather|unlike|except|per|each|every|with|without|through|into|inside|between|from|against|beside|over|hole|holes|long|patients?|because|when|once|before|after|until|needs?|needed|fits?|accepts?|admits?|wrong|nearly|almost|another|other|next|\d.*)$/;

function resultAfter(items: readonly Item[], after: number): Figure | undefined {
  let [told, strange] = [false, false];
  for (let i = after + 1; i < items.length && i <= after + REACH; i++) {
    const { word, kind, magnitude } = items[i]!;
    const figure = figureAt(items, i);
    // "an 18": an article is no number; "one" right before a noun counts nothing here.
    if (figure && word !== 'one') return strange && !(told && figure.unit) ? undefined : figure;
    told ||= TOLD.test(word);
    // "…, and for a 6 mm track": of something else; not "ask for a 16 Fr".
    if (word === 'for' && !/^(?:ask|go|opt|reach|call|send|settle|look)/.test(items[i - 1]!.word))
      return undefined;
    if (LEADS.test(word) || stressed(items, i)) continue;
    if (ENDS.test(word) || kind !== 'word' || magnitude || NEGATIONS.has(word)) return undefined;
    strange = true;
  }
  return undefined;
}

/** "is really 6", "is of course 6", "must be 6", "also comes to 9": said with more force, it is the same sum. */
const stressed = (items: readonly Item[], i: number): boolean =>
  EMPHASIS.has(items[i]!.word) ||
  /^(?:also|must|turns|course)$/.test(items[i]!.word) ||
  (items[i]!.word === 'of' && items[i + 1]?.word === 'course');

/** "a 14 Fr, twice seven": the result stands right before the sum, with its unit. */
function resultBefore(
  items: readonly Item[],
  i: number,
  { operand }: Omit<Sum, 'result'>,
): Figure | undefined {
  const mark = items[i - 1]?.word ?? '';
  const figure = /^(?:[,(=:]|is|since|because)$/.test(mark) ? figureAt(items, i - 2) : undefined;
  return figure?.unit && figure.at !== operand.at ? figure : undefined;
}

/** "24 over 3", "4 × 3", "24 divided by three", "three times four". */
function infix(items: readonly Item[], i: number): Omit<Sum, 'result'> | undefined {
  const glued = items[i]?.mention ? null : /^(\d+(?:\.\d+)?)\/([2-9])$/.exec(items[i]?.word ?? '');
  // "1 Fr = 1/3 mm": a part of the unit, nothing that is divided.
  if (glued) return isPart(+glued[1]!, +glued[2]!) ? undefined : gluedOver(i, +glued[1]!, +glued[2]!);
  const left = figureAt(items, i);
  if (!left) return undefined;
  const sign = items[left.to + 1]?.word ?? '';
  const byWord = items[left.to + 2]?.word === 'by';
  const over = OVER.test(sign) || (byWord && /^(?:divided|split)$/.test(sign));
  const times = TIMES.test(sign) || (byWord && sign === 'multiplied');
  if (!over && !times) return undefined;
  const right = figureAt(items, left.to + (byWord ? 3 : 2));
  if (!right) return undefined;
  if (over)
    return right.unit || (!left.unit && isPart(left.value, right.value))
      ? undefined
      : { kind: 'over', operand: left, by: right.value, from: i, to: right.to };
  return product(left, right, i);
}

const isPart = (value: number, by: number): boolean => value < by;

/** "24/3" written as one word. */
const gluedOver = (i: number, value: number, by: number): Omit<Sum, 'result'> => ({
  kind: 'over',
  operand: { at: i, to: i, value, decimals: 0 },
  by,
  from: i,
  to: i,
});

/** The factor that belongs to the scale (3, 25.4) and the one that is measured. */
function product(left: Figure, right: Figure, from: number): Omit<Sum, 'result'> | undefined {
  const scale = [right, left].find(
    (one) => !one.unit && (one.value === 3 || Math.abs(one.value - 25.4) < 0.5),
  );
  const other = scale === right ? left : right;
  const factor = scale ?? (left.unit ? right : right.unit ? left : undefined);
  if (!factor) return undefined;
  return { kind: 'times', operand: factor === right ? left : other, by: factor.value, from, to: right.to };
}

/** "divide 24 by three", "multiply 7 mm by 3", "a third of 36"; "divide by three" of the size named before. */
function prefix(items: readonly Item[], i: number): Omit<Sum, 'result'> | undefined {
  const word = items[i]!.word;
  if (word === 'third' && items[i + 1]?.word === 'of') {
    const operand = figureAt(items, i + 2);
    return operand && { kind: 'over', operand, by: 3, from: i, to: operand.to };
  }
  const fold = foldOf(word);
  if (fold) return folded(items, i, fold);
  const over = /^(?:divid(?:e|ed|ing)|split(?:ting)?)$/.test(word);
  if (!over && !/^(?:multipl(?:y|ied|ying)|times)$/.test(word)) return undefined;
  const own = firstFigure(items, i + 1, 3);
  const by = items.findIndex((item, k) => k > i && k <= (own?.to ?? i) + 3 && item.word === 'by');
  const factor = by > 0 ? figureAt(items, by + 1) : undefined;
  if (!factor || factor.unit) return undefined;
  const operand = own && own.to < by ? own : nearestBefore(items, i, over);
  if (!operand || (items[i - 1] && figureAt(items, i - 1) === operand)) return undefined;
  return {
    kind: over ? 'over' : 'times',
    operand,
    by: factor.value,
    from: Math.min(i, operand.at),
    to: factor.to,
  };
}

interface Fold {
  readonly kind: Sum['kind'];
  readonly by: number;
}

/** "double", "treble it", "twice", "halve". */
const foldOf = (word: string): Fold | undefined =>
  /^(?:doubl(?:e|ed|es|ing)|twice)$/.test(word)
    ? { kind: 'times', by: 2 }
    : /^(?:(?:trebl|tripl)(?:e|ed|es|ing)|thrice)$/.test(word)
      ? { kind: 'times', by: 3 }
      : /^halv(?:e|ed|es|ing)$/.test(word)
        ? { kind: 'over', by: 2 }
        : undefined;

/** "double it", "treble the 6 mm", "twice seven": of the figure right behind, or of the one size named before. */
function folded(items: readonly Item[], i: number, { kind, by }: Fold): Omit<Sum, 'result'> | undefined {
  const named =
    /^(?:(?:it|that|this)|(?:the|its|that) (?:french |millimetre )?(?:number|size|figure|diameter|width|millimetres|french))\b/.exec(
      items
        .slice(i + 1, i + 4)
        .map((item) => item.word)
        .join(' '),
    );
  const own = named ? undefined : firstFigure(items, i + 1, 3);
  if (both(items, i, by)) return undefined;
  // "6 Fr triple: 1.3 and 2 mm": a colon opens a list.
  if ((!own && !named) || items[i + 1]?.word === ':') return undefined;
  const operand = own ?? nearestBefore(items, i, kind === 'over');
  return (
    operand && {
      kind,
      operand,
      by,
      from: Math.min(i, operand.at),
      to: own ? own.to : i + named![0].split(' ').length,
    }
  );
}

/** "Halve the French and you have halved the width too": one follows the other, and neither is worked out of it. */
const both = (items: readonly Item[], i: number, by: number): boolean =>
  items.some(({ word }, k) => k > i && foldOf(word)?.by === by);

function firstFigure(items: readonly Item[], from: number, reach: number): Figure | undefined {
  for (let i = from; i < from + reach && i < items.length; i++) {
    const figure = figureAt(items, i);
    if (figure) return figure;
    if (items[i]!.word === 'by') return undefined;
  }
  return undefined;
}

/** The one size named before: a French to divide, a length to multiply. */
function nearestBefore(items: readonly Item[], i: number, over: boolean): Figure | undefined {
  const found = items.slice(0, i).flatMap((_, k) => figureAt(items, k) ?? []);
  const wanted = found.filter(({ unit }) => unit === 'french' || unit === 'millimetre');
  const [only] = wanted;
  const right = only?.unit === (over ? 'french' : 'millimetre') || (over && givesFrench(items, i));
  return wanted.length === 1 && found.length === 1 && right ? only : undefined;
}

/** "9 mm: divide by three and you have 3 Fr": the sum goes the wrong way. */
const givesFrench = (items: readonly Item[], i: number): boolean =>
  items.slice(i + 1, i + REACH).find((item) => item.mention)?.mention?.sizes[0]?.system === 'french';

const SLASHED = cue(/\//);
/** Sums of a sentence with their results. */
export const sumsIn = remembered((items: readonly Item[]): readonly Sum[] => {
  const found: Sum[] = [];
  if (!signed(items) && !holds(items, SLASHED)) return found;
  for (let i = 0; i < items.length; i++) {
    const sum = infix(items, i) ?? prefix(items, i);
    const result = sum && (resultAfter(items, sum.to) ?? resultBefore(items, i, sum));
    if (!sum || !result) continue;
    found.push({
      ...sum,
      result: concluded(items, result),
      from: Math.min(sum.from, result.at),
      to: Math.max(sum.to, result.to),
    });
    // A result may stand before its sum: never go back.
    i = Math.max(i, sum.to, result.to);
  }
  return found;
});

/** Is this item part of a sum? Then its number is no size by itself. */
export const inSum = (items: readonly Item[], at: number): boolean =>
  sumsIn(items).some((sum) => sum.from <= at && at <= sum.to);

export const sums: Construction = {
  id: 'sums',
  needs: () => [{ like: SIGNS }, { like: FINISHES }],
  leaning: true,
  // The loose readers of measures and of steps ask first whether a sum was read.
  read: remembered((scene: Scene): Reading[] => {
    const before = scene.before.slice(-MOST_BEFORE);
    if (!signed(scene.items) && !before.some(({ items }) => signed(items))) return [];
    if (!scaled(scene.items) && !before.some(({ items }) => scaled(items)) && scene.system !== 'french')
      return [];
    const here = sumsIn(scene.items).flatMap((sum) => {
      const system = systemOf(scene, sum);
      return system ? [reading(scene, sum, system)] : [];
    });
    return here.length > 0 ? here : overSentences(scene);
  }),
};

/** Systems of which sums are told; French may also be spoken of around the sentence. */
const SCALES: ReadonlySet<System | 'usp-zeros' | undefined> = new Set([
  'french',
  'inch',
  'wire-inch',
  'ep-metric',
] as const);
const scaled = remembered((items: readonly Item[]): boolean =>
  items.some(({ system, mention }) => system === 'french' || SCALES.has(mention?.sizes[0]?.system)),
);

/** With which a result is told after the sum's own sentence: "That leaves 9 mm." */
const FINISHES = /^(?:that|which|so|leaves?|gives?|makes?|answer|result|=|comes|get|is)$/;
const FINISHED = cue(FINISHES);
const MOST_BEFORE = 2;

/** "You have a 21 Fr sound. Divide by three. That leaves 7 mm.": a sum in steps, its result in this sentence. */
function overSentences(scene: Scene): Reading[] {
  const before = scene.before.slice(-MOST_BEFORE);
  const own = scene.items;
  if (!signed(own) && !holds(own, FINISHED)) return [];
  if (before.length === 0 || own.length > 30 || scene.sentence.close === '?') return [];
  for (let n = 1; n <= before.length; n++) {
    const lead = before.slice(-n);
    if (lead.some(({ close, items }) => close === '?' || items.length > 30)) return [];
    const earlier = lead.flatMap(({ items }) => items.filter((item) => !/^[.!]$/.test(item.word)));
    if (!signed(own) && !lead.some(({ items }) => signed(items))) continue;
    const whole = changed(scene, { items: [...earlier, ...own] });
    const shift = earlier.length;
    const found = sumsIn(whole.items).flatMap((sum) => {
      const system = sum.result.at >= shift && sum.from < shift ? systemOf(whole, sum) : undefined;
      if (!system) return [];
      const read = reading(whole, sum, system);
      return [{ ...read, at: read.at - shift, from: Math.max(0, read.from - shift), to: read.to - shift }];
    });
    if (found.length > 0) return found;
  }
  return [];
}

const FOREIGN =
  /\b(?:mg|mcg|µg|ml|mls|kg|doses?|days?|hours?|minutes?|weeks?|months?|years?|age|aged|beats?|litres?|drops?|patients?|pounds?|euros?)\b/;

/** The scale the sum is about: French where it is spoken of, inches at 25.4, metric numbers at ten. */
function systemOf(
  scene: Scene,
  { kind, operand, by, result }: Pick<Sum, 'kind' | 'operand' | 'by' | 'result'>,
): System | undefined {
  const text = scene.items
    .map((item) => (item.kind === 'size' ? item.mention!.text.toLowerCase() : item.word))
    .join(' ');
  if (FOREIGN.test(text) || operand.value <= 0) return undefined;
  const length = result.unit === 'millimetre';
  if (kind === 'times' && Math.abs(by - 25.4) < 0.5) {
    const inches = operand.unit ?? scene.items[operand.at]?.mention?.sizes[0]?.system;
    return length && (inches === 'inch' || inches === 'wire-inch') ? inches : undefined;
  }
  if (kind === 'over' && by === 10 && operand.unit === 'ep-metric') return length ? 'ep-metric' : undefined;
  if (!speaksFrench(scene)) return undefined;
  if (turned(scene, { kind, operand, by, result })) return 'french';
  const [french, measure] = kind === 'over' ? [operand, result] : [result, operand];
  if (french.unit !== undefined && french.unit !== 'french') return undefined;
  if (measure.unit !== undefined && measure.unit !== 'millimetre') return undefined;
  if (by === 3) return 'french';
  // Another divisor is a sum of its own unless both ends carry their units.
  const measured =
    measure.unit ??
    scene.items.find(
      (item) =>
        item.mention?.sizes[0]?.system === 'millimetre' && item.mention.sizes[0].value === measure.value,
    );
  const plain =
    kind === 'over' && measure.unit ? /\b(?:tracheal|suction)\b/ : /\b(?:tube|tracheal|suction)\b/;
  return by <= 5 && french.unit && measured && !plain.test(text) ? 'french' : undefined;
}

/** "9 Fr: nine times three, 27 mm", "9 mm: nine divided by three gives 3 Fr": the sum goes the wrong way. */
const turned = (scene: Scene, sum: Pick<Sum, 'kind' | 'operand' | 'by' | 'result'>) =>
  multiplied(scene, sum) || divided(scene, sum);

/** From the length of the sentence to a French. */
const divided = (
  scene: Scene,
  { kind, operand, by, result }: Pick<Sum, 'kind' | 'operand' | 'by' | 'result'>,
) =>
  kind === 'over' &&
  by === 3 &&
  result.unit === 'french' &&
  (operand.unit === 'millimetre' ||
    (operand.unit === undefined &&
      scene.items.some(
        (item) =>
          item.mention?.sizes[0]?.system === 'millimetre' && item.mention.sizes[0].value === operand.value,
      )));

/** From the French of the sentence to a length. */
const multiplied = (
  scene: Scene,
  { kind, operand, by, result }: Pick<Sum, 'kind' | 'operand' | 'by' | 'result'>,
) =>
  kind === 'times' &&
  by === 3 &&
  result.unit === 'millimetre' &&
  operand.unit !== 'millimetre' &&
  scene.items.some(
    (item) => item.mention?.sizes[0]?.system === 'french' && item.mention.sizes[0].value === operand.value,
  );

const speaksFrench = (scene: Scene): boolean =>
  scene.items.some((item) => item.system === 'french' || item.mention?.sizes[0]?.system === 'french') ||
  scene.system === 'french';

const named = (scene: Scene, figure: Figure, system: System): Operand => {
  const [first, last] = [scene.items[figure.at]!, scene.items[figure.to]!];
  return { sizes: [{ system, value: figure.value }], mentions: [], span: spanOf(scene, first, last) };
};

function reading(scene: Scene, sum: Sum, system: System): Reading {
  const { kind, operand, by, result } = sum;
  const scaled = system === 'inch' || system === 'wire-inch';
  const ahead = scaled || (kind === 'over' ? !divided(scene, sum) : multiplied(scene, sum));
  const [size, length] = ahead ? [operand, result] : [result, operand];
  // "6 mm times three is 20 Fr": the length is taken as it stands; only what comes out may be rounded.
  const half =
    length === operand && by === 3 ? (0.5 * 10 ** -result.decimals) / 3 : 0.5 * 10 ** -length.decimals;
  const claim: EquivalenceClaim = {
    kind: 'equivalence',
    construction: 'sums',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[result.at]!, scene.items[result.to]!),
    left: named(scene, size, system),
    right: named(scene, length, 'millimetre'),
    approximate: false,
    axis: 'outer',
    said: { min: length.value - half, max: length.value + half },
  };
  return { claim, at: result.at, from: Math.min(sum.from, result.at), to: result.to };
}
