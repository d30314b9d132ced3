/** Questions for a value: how many millimetres, which French, which gauge, the metric number, the size one step up. */
import type { Span } from '../../../notes/model.ts';
import type { System } from '../../../sizes/model.ts';
import type { Claim, ComparisonClaim, EquivalenceClaim, Operand, Stance } from '../../model.ts';
import type { Item } from '../../text/items.ts';
import { textOf } from '../../text/joined.ts';
import { decidable, type Measured, measuredWords } from '../../text/magnitudes.ts';
import { negated } from '../choice.ts';
import { compare, sizeKey, sizesOf, spanOf } from '../desk.ts';
import type { Piece } from '../piece.ts';
import type { Told } from './index.ts';
import { figuresIn, numbersIn, operandAt, sizesSaid } from './said.ts';

const UNITS: readonly (readonly [RegExp, System])[] = [
  [/\b(?:mm|mils|millimet(?:re|er)s?)\b/, 'millimetre'],
  [/\b(?:inch(?:es)?|thou)\b/, 'inch'],
  [/\b(?:gauges?|g)\b/, 'needle-gauge'],
  [/\b(?:french|charri[eè]re|fr|ch|f)\b/, 'french'],
  [/\b(?:metric|ep|european)\b/, 'ep-metric'],
];
export const LENGTHS: ReadonlySet<System> = new Set(['millimetre', 'inch', 'ep-metric']);
const WIDTH =
  /\b(?:how (?:wide|thick|broad|big|large|fat|stout)|diameters?|widths?|across|thickness|od|measures?)\b/;

/** Another number than the width of the thing named, or the width of another thing. */
export const OTHER_NUMBER =
  /\b(?:than|length|long|longer|deep|depth|far|fits?|accepts?|takes?|through|passes|into|inside of|room|hold|holds|balloon|ml|volume|weigh\w*|kg|age|aged|old|child|suction|sheath|introducer|guid\w+|wires?|vessel|veins?|artery|around|circumference|radius|area|times|double|twice|half|why|steps?|apart|between|difference|many sizes|radiograph|bigger|wider|larger|smaller|up|down|next)\b/;

/** "A 24 Fr catheter is how wide?" "12": the one size of the question and the number of the reply. */
export function converted({ question, head, focus }: Told): EquivalenceClaim[] | undefined {
  const asked = sizesOf(question);
  const text = textOf(question.items.filter(({ kind }) => kind === 'word'));
  const [given, ...more] = asked;
  if (!given || more.length > 0 || OTHER_NUMBER.test(text) || negated(question)) return undefined;
  const from = given.sizes[0]!.system;
  if (from === 'tube-id' || from === 'wire-inch') return undefined;
  const value = numberSaid(head, given, unitAsked(text, from));
  if (!value || ASIDE.test(textOf(head.items)) || !ASKS.test(textOf(question.items))) return undefined;
  const to = value.sizes[0]!.system;
  if (from === to || (!LENGTHS.has(from) && !LENGTHS.has(to))) return undefined;
  return [equal(given, value, text, focus, spanOf(question))];
}

/** The size that was asked about measures what the reply says. */
export const equal = (
  left: Operand,
  right: Operand,
  text: string,
  focus: Span,
  span: Span,
): EquivalenceClaim => ({
  kind: 'equivalence',
  construction: 'answer-key',
  span,
  focus,
  left,
  right,
  approximate: /\b(?:about|approximately|roughly|nearest|closest|nearly)\b/.test(text),
  axis: /\b(?:inner|inside|internal|bore|lumen)\b/.test(text) ? 'bore' : 'outer',
});

/** Of another thing than the one asked about. */
const ASIDE = /\b(?:of|deep|long|away|apart|from|off|enough|longer|past)\b/;
const ASKS =
  /[?:=]|\b(?:to|in|into) (?:mm|millimet\w+|french|inch(?:es)?)(?= ?$| \.)|\b(?:how|what|which|convert|turn|change|express|state|give|name|say|tell|work out|calculate|find|diameter|width|metric)\b/;

export function unitAsked(text: string, from: System): System | undefined {
  const units = UNITS.filter(([pattern, system]) => system !== from && pattern.test(text));
  if (units.length === 1) return units[0]![1];
  return units.length === 0 && WIDTH.test(text) && from !== 'millimetre' ? 'millimetre' : undefined;
}

/** The one number of the reply that is not the size asked about, in the unit that was asked for. */
function numberSaid(head: Told['head'], given: Operand, unit: System | undefined): Operand | undefined {
  const [size, ...more] = sizesSaid(head).filter((one) => sizeKey(one) !== sizeKey(given));
  const numbers = numbersIn(head);
  if (size) {
    const [own] = size.sizes;
    const fits = own!.system === unit || (unit === undefined && LENGTHS.has(own!.system));
    return more.length === 0 && fits ? size : undefined;
  }
  const [number, ...others] = numbers;
  return unit && number && others.length === 0 && plain(head.items, number.item)
    ? operandAt(head, number.item, unit, number.value)
    : undefined;
}

/** "12", "about twelve", "metric 3": a number and nothing that makes it another. */
const plain = (items: readonly Item[], number: Item): boolean =>
  items.every(
    (item) =>
      item === number ||
      item.kind === 'punctuation' ||
      /^(?:it|is|it's|the|a|an|about|roughly|around|size|metric|number|gauge|french|fr|mm|would|be|that|that's|answer|one)$/.test(
        item.word,
      ),
  );

/** "You want one size thicker than 3-0. What do you ask for?" "4-0": the one named is to be on that side. */
export function beyond({ question, head, options, focus }: Told): ComparisonClaim[] | undefined {
  const [base, ...more] = sizesOf(question).filter((size) => !offers(options, size));
  const [size, ...others] = sizesSaid(head);
  if (!base || more.length > 1 || others.length > 0 || negated(question)) return undefined;
  const own = size ?? bareLike(head, base);
  if (!own || [base, ...more].some((one) => one.sizes[0]!.system !== own.sizes[0]!.system)) return undefined;
  if ([base, ...more].some((one) => one.sizes[0]!.value === own.sizes[0]!.value)) return undefined;
  if (more.length > 0) return withinBounds(question, own, [base, more[0]!], focus);
  const word = sideAsked(question.items, base.sizes[0]!.system, options.length > 1);
  return word && [compare(own, base, word, focus, spanOf(question))];
}

/** "Which is NOT wider than 18 G: 14 G, 16 G or 20 G?" "20 G.": of the choice it is denied. */
export function excepted({
  question,
  head,
  options,
  focus,
}: Told): { claim: Claim; stance: Stance }[] | undefined {
  if (options.length > 0 || !negated(question)) return undefined;
  const words = measuredWords(question.items).filter(({ degree }) => degree === 'comparative');
  const [word, ...more] = words;
  if (!word || more.length > 0 || !decidable(word.axis) || question.items[word.to + 1]?.word !== 'than')
    return undefined;
  const than = question.items[word.to + 1]!.start;
  const all = sizesOf(question);
  const base = all.find(({ mentions: [mention] }) => mention!.span.start > than);
  const [own, ...others] = sizesSaid(head);
  const choices = all.filter((one) => one !== base).map(sizeKey);
  if (!base || !own || others.length > 0 || choices.length < 2 || !choices.includes(sizeKey(own)))
    return undefined;
  if (own.sizes[0]!.value === base.sizes[0]!.value) return [];
  return [{ claim: compare(own, base, word, focus, spanOf(question)), stance: 'denied' }];
}

/** A choice that stands on the line of its question. */
const offers = (options: readonly Piece[], { span }: Operand): boolean =>
  options.some((option) => {
    const own = spanOf(option);
    return own.start <= span.start && span.end <= own.end;
  });

/** "Name a size thinner than 3-0 but thicker than 5-0", "between 3-0 and 5-0": what is named keeps within both. */
function withinBounds(
  question: Piece,
  own: Operand,
  [a, b]: readonly [Operand, Operand],
  focus: Span,
): ComparisonClaim[] | undefined {
  const text = textOf(question.items);
  if (!ASKS_SIZE.test(text) || NOT_BETWEEN.test(text)) return undefined;
  const words = measuredWords(question.items).filter(({ degree }) => degree === 'comparative');
  const [first, second] = words;
  const said = (word: Pick<Measured, 'axis' | 'sign'>, other: Operand) =>
    compare(own, other, word, focus, spanOf(question));
  if (first && second && words.length === 2 && first.sign !== second.sign) {
    const than = words.every(({ to }) => question.items[to + 1]?.word === 'than');
    return than && words.every(({ axis }) => decidable(axis)) ? [said(first, a), said(second, b)] : undefined;
  }
  if (words.length > 0 || !/\bbetween (?:an? |the |usp )*\d/.test(text)) return undefined;
  const grows = a.sizes[0]!.value < b.sizes[0]!.value !== (a.sizes[0]!.system === 'needle-gauge');
  const [thin, thick] = grows ? [a, b] : [b, a];
  return [said({ axis: 'outer', sign: 1 }, thin), said({ axis: 'outer', sign: -1 }, thick)];
}
const NOT_BETWEEN =
  /\b(?:difference|steps?|why|how|or|not|choose|which of (?:the two|these)|relation\w*|ratio|compare|same)\b/;

/** "Name the USP size that is the same as 1-0." "1." */
export function same({ question, head, focus }: Told): ComparisonClaim[] | undefined {
  const text = textOf(question.items);
  const [given, ...more] = sizesOf(question);
  const size = given && (sizesSaid(head)[0] ?? bareLike(head, given));
  const others = sizesSaid(head).slice(1);
  if (!given || !size || more.length > 0 || others.length > 0) return undefined;
  if (!SAME.test(text) || /\b(?:not|nearly|almost|than|colou?r)\b/.test(text)) return undefined;
  if (given.sizes[0]!.system !== size.sizes[0]!.system) return undefined;
  if (given.sizes[0]!.value === size.sizes[0]!.value) return [];
  const claim = compare(given, size, { axis: 'outer', sign: 1 }, focus, spanOf(question));
  return [{ ...claim, relation: 'same' }];
}
const SAME =
  /\b(?:same (?:size |thread |thickness )?as|equal to|equals|another (?:name|way|writing)|other name|also (?:written|called)|equivalent|modern way|written (?:today|now)|identical)\b/;

function bareLike(head: Told['head'], base: Operand): Operand | undefined {
  const { system } = base.sizes[0]!;
  const [number, ...more] = figuresIn(head, system);
  return number && more.length === 0 && plain(head.items, number.item)
    ? operandAt(head, number.item, system, number.value)
    : undefined;
}

const ASKS_SIZE = /\b(?:which|what|name|give|reach|ask|next|one)\b/;
const NOT_NEXT =
  /\b(?:why|how|if|unless|without|longer|shorter|much|many|times|does|is it|true|false|should|would you rather|instead of|or)\b/;
const NEXT = /\b(?:next|one (?:size|step|up|down)|a (?:size|step)|just|slightly|than)\b/;
/** Scales whose numbers grow with the thing: one up is one wider. */
const ASCENDING: ReadonlySet<System> = new Set(['french', 'tube-id', 'millimetre', 'ep-metric', 'wire-inch']);

const UP = /\b(?:sizes?|steps?|one|next|french) up\b/;
const DOWN = /\b(?:sizes?|steps?|one|next|french) down\b/;

/** The one comparing word of a question that asks for a size on one side of another; on some scales "up" and "down" say it. */
function sideAsked(
  items: readonly Item[],
  system: System,
  choosing: boolean,
): Pick<Measured, 'axis' | 'sign'> | undefined {
  const text = textOf(items);
  if (!(choosing || ASKS_SIZE.test(text)) || NOT_NEXT.test(text) || !NEXT.test(text)) return undefined;
  // "Single best answer": of the answers.
  const words = measuredWords(items).filter(
    ({ degree, axis }) => degree === 'comparative' || (degree === 'superlative' && axis !== 'other'),
  );
  const [word, ...more] = words;
  const [up, down] = [UP.test(text), DOWN.test(text)];
  if (!word) return up !== down && ASCENDING.has(system) ? { axis: 'outer', sign: up ? 1 : -1 } : undefined;
  const fits = more.length === 0 && word.degree === 'comparative' && decidable(word.axis);
  return fits && !up && !down ? word : undefined;
}
