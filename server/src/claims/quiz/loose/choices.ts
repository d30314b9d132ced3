/** Questions which of several is the extreme: each choice is a size, a number, a colour that stands for one. */
import { type ColourCode, gaugesOf } from '../../../sizes/index.ts';
import type { Operand } from '../../model.ts';
import type { Item } from '../../text/items.ts';
import { textOf } from '../../text/joined.ts';
import { decidable, type Measured, measuredWords } from '../../text/magnitudes.ts';
import { codeOf } from '../../words/codes.ts';
import { choiceOperand, FRAIL, negated } from '../choice.ts';
import { compare, eachOnce, limited, sizeKey, sizesOf, spanOf } from '../desk.ts';
import type { Piece } from '../piece.ts';
import type { Told } from './index.ts';
import { figuresIn, numbersIn, operandAt, placeSaid, sizesSaid } from './said.ts';

/** Asked under a condition or about another thing: which is the extreme does not answer it. */
const OTHERWISE =
  /\b(?:than|why|when|where|unless|without|longer|shorter|dearer|cheaper|instead|rather|how (?:many|much|wide|thick|big))\b/;

/** The one thing asked about, in words that agree: "wider, and so faster". */
function askedWord(items: readonly Item[]): Measured | undefined {
  const words = measuredWords(items).filter(({ degree, idiom }) => degree !== 'plain' && !idiom);
  const [first] = words;
  const agree = words.every(({ axis, sign }) => decidable(axis) && sign === first!.sign);
  return first && agree ? first : undefined;
}

/** "You need speed in a bleed: 14 G or 22 G?": nobody small, and nothing but flow is wanted. */
const inNeed = ({ items }: Piece): Pick<Measured, 'axis' | 'sign' | 'degree' | 'to'> | undefined =>
  NEED.test(textOf(items)) && !FRAIL.test(textOf(items))
    ? { axis: 'flow', sign: 1, degree: 'superlative', to: 0 }
    : undefined;
const NEED =
  /\b(?:needs?|wants?|after|for) (?:\w+ ){0,2}(?:speed|flow|fast flow|volume)\b|\b(?:in a hurry|fluids? fast|blood fast|fluids? quickly|as fast as)\b/;

/** The choice against every other. */
export function extreme(told: Told): ReturnType<typeof compare>[] | undefined {
  const { question, head, options, focus } = told;
  const word = askedWord(question.items) ?? inNeed(question);
  const text = textOf(question.items);
  if (!word || OTHERWISE.test(text) || negated(question) || limited(question.items)) return undefined;
  // "the wider 16 G or the 20 G": said of one of the choices already.
  if (word.degree === 'comparative' && question.items[word.to + 1]?.kind === 'size') return undefined;
  const choices = choicesOf(question, options);
  if (choices.length < 2) return undefined;
  const at = chosen(head, choices, options);
  const left = choices[at];
  if (!left) return undefined;
  return choices
    .filter((other) => sizeKey(other) !== sizeKey(left))
    .map((other) => compare(left, other, word, focus, spanOf(question)));
}

/** What there is to choose from, all of one system. */
function choicesOf(question: Piece, options: readonly Piece[]): Operand[] {
  const offered = options.map((option) => choiceOperand(option, question));
  if (options.length > 0)
    return offered.every((one) => one !== undefined) ? ofOneSystem(offered as Operand[]) : [];
  const named = ofOneSystem(sizesOf(question));
  const numbers = named.length === 1 ? beside(question, named[0]!) : [];
  return named.length > 0 ? [...numbers, ...named] : hued(question);
}

function ofOneSystem(all: readonly Operand[]): Operand[] {
  const systems = new Set(all.map(({ sizes }) => sizes[0]!.system));
  return systems.size === 1 ? eachOnce(all) : [];
}

/** "0.018 or 0.035 in": a number joined to a size is of its system. */
function beside(question: Piece, size: Operand): Operand[] {
  const { items } = question;
  const { system } = size.sizes[0]!;
  if (system === 'usp') return [];
  return numbersIn(question)
    .filter(({ item }) => {
      const i = items.indexOf(item);
      return [items[i + 1], items[i - 1]].some((near) => near && /^(?:or|,|\/|and|v|vs)$/.test(near.word));
    })
    .map(({ item, value }) => operandAt(question, item, system, value));
}

/** "the green or the pink cannula": each colour of the one device stands for its gauge. */
function hued(question: Piece): Operand[] {
  const device = codeOf(question.items);
  const code: ColourCode | undefined =
    device === 'needle' ? 'ISO 6009' : device === 'cannula' ? 'ISO 10555-5' : undefined;
  const colours = question.items.filter((item) => item.colour);
  if (!code || colours.length < 2) return [];
  const gauges = colours.map((item) => gaugesOf(code, item.colour!).filter(inUse));
  const sizes = colours.flatMap((item, i) => {
    const gauge = nearestOf(gauges[i]!, gauges.filter((_, j) => j !== i).flat());
    return gauge === undefined ? [] : [operandAt(question, item, 'needle-gauge', gauge)];
  });
  return sizes.length === colours.length ? ofOneSystem(sizes) : [];
}

/** Gauges that anybody asks about by their colour. */
const inUse = (gauge: number): boolean => gauge >= 14 && gauge <= 30;

/** A colour may stand for two gauges: of these the one next to the others, when all others lie on one side of both. */
function nearestOf(own: readonly number[], others: readonly number[]): number | undefined {
  const [least, most] = [Math.min(...own), Math.max(...own)];
  if (own.length === 1) return least;
  if (others.every((other) => other > most)) return most;
  return others.every((other) => other < least) ? least : undefined;
}

/** "Which cannula is quicker, pink or green?": a choice between colours, whatever size the reply adds. */
export const amongColours = (question: Piece): boolean =>
  askedWord(question.items) !== undefined && hued(question).length > 1;

/** Place of the one choice that the reply names, −1 when none or several are. */
function chosen(head: Piece, choices: readonly Operand[], options: readonly Piece[]): number {
  const [size, ...more] = sizesSaid(head);
  if (size) return more.length > 0 ? -1 : choices.findIndex((choice) => sizeKey(choice) === sizeKey(size));
  const numbers = figuresIn(head, choices[0]!.sizes[0]!.system).map(({ value }) => value);
  const placed = placeSaid(head, choices.length);
  if (placed >= 0) return placed;
  if (numbers.length === 1) return choices.findIndex(({ sizes }) => sizes[0]!.value === numbers[0]);
  const colours = head.items.flatMap((item) => item.colour ?? []);
  const hit = options.length === 0 && colours.length === 1 ? colours[0] : undefined;
  return hit ? choices.findIndex(({ mentions }) => mentions[0]!.text.toLowerCase() === hit) : -1;
}
