/**
 * The numbers of a sentence and what is done with them: "six quarters make 1.5, plus 4, hence 5.5", "doubled six, got twelve".
 * Everyday words between them are passed over; what denies, compares or counts other things ends the sum.
 */
import { wordValue } from '../../mentions/words/numbers.ts';
import type { Item } from './items.ts';
import { joined } from './joined.ts';
import { isReference } from './references.ts';

/** A number as written. */
export interface Figure {
  readonly at: number;
  readonly to: number;
  readonly value: number;
  /** Half of its last digit. */
  readonly half: number;
  readonly unit?: string;
}

/** A result told, what the steps before it come to, and the steps as a reader writes them. */
export interface Told {
  readonly result: Figure;
  readonly value: number;
  readonly steps: string;
  readonly from: number;
  /** Doubled only: what is taken may be the next size below. */
  readonly doubled: boolean;
  /** "and one below, 10": a step of size after the sum. */
  readonly onward?: 'below' | 'above';
}

type Step = 'over' | 'times' | 'plus' | 'minus';
const SIGNS: Readonly<Record<Step, string>> = { over: '÷', times: '×', plus: '+', minus: '−' };

type Token =
  | { readonly kind: 'number'; readonly figure: Figure; readonly many?: true }
  | { readonly kind: 'step'; readonly step: Step; readonly to: number }
  /** Of the number behind it, or of what has come out so far: "twice seven", "halve it". */
  | { readonly kind: 'fold'; readonly step: Step; readonly by: number; readonly to: number }
  | { readonly kind: 'onward'; readonly way: 'below' | 'above'; readonly to: number }
  | { readonly kind: 'result' | 'pass' | 'word' | 'stop'; readonly to: number };

const STEPS: ReadonlyMap<string, Step> = new Map([
  ...['over', '÷', 'divided', 'divide', 'dividing', '/'].map((word) => [word, 'over'] as const),
  ...['times', '×', 'x', '*', 'multiplied', 'multiply', 'multiplying'].map(
    (word) => [word, 'times'] as const,
  ),
  ...['plus', '+', 'add', 'adds', 'adding', 'added'].map((word) => [word, 'plus'] as const),
  ...['minus', '−', 'subtract', 'subtracting'].map((word) => [word, 'minus'] as const),
]);
const FOLDS: ReadonlyMap<string, readonly [Step, number]> = new Map<string, readonly [Step, number]>([
  ...['twice', 'double', 'doubled', 'doubling', 'doubles'].map((word) => [word, ['times', 2]] as const),
  ...['treble', 'trebled', 'triple', 'tripled', 'tripling', 'thrice'].map(
    (word) => [word, ['times', 3]] as const,
  ),
  ...['halve', 'halved', 'halving'].map((word) => [word, ['over', 2]] as const),
]);
/** "six quarters"; "three fours" is a number of its own. */
const PARTS: ReadonlyMap<string, number> = new Map([
  ['quarters', 4],
  ['halves', 2],
  ['thirds', 3],
]);
const RESULTS =
  /^(?:=|→|is|are|makes?|making|made|gives?|giving|gave|equals?|so|hence|therefore|thus|gets?|got|have|that's|leaves?|comes?|lands?|reach|reaches|answer|result|:)$/;
const PASSED =
  /^(?:,|—|–|-|an?|the|and|then|to|at|out|up|on|of|you|we|it|that|this|which|its|your|his|her|their|in|mm|millimet(?:re|er)s?|fr|french|ch|about|roughly|exactly|just|again|years?|size|sizes|tube|number|by|yourself|together|first|now|\(|\)|us|me|i|for|with|as)$/;
const STOPS =
  /^(?:[;.!?"“”]|not|never|no|nor|than|if|unless|instead|rather|but|or|without|less|more|most|least|under|below|above|between|per|each|every|half|cannot|\w+n't|mg|mcg|ml|mls|kg|dose|doses|drops?|litres?|hours?|minutes?|days?|weeks?|months?|%|percent|beats|units?|inch|inches|in\.|old|wide|long|patients?|boxes|pairs?)$/;
/** A divisor or a factor is small, or a constant of the trade. */
const FACTOR = (value: number): boolean =>
  (value >= 2 && value <= 12 && Number.isInteger(value)) ||
  value === 3.14 ||
  value === Math.PI ||
  value === 25.4 ||
  value === 2.54;

const MOST_WORDS = 4;

function tokenAt(items: readonly Item[], i: number): Token {
  const { word, mention } = items[i]!;
  const figure = figureAt(items, i);
  if (figure) return figure.part ? { kind: 'number', figure, many: true } : { kind: 'number', figure };
  if (mention) return { kind: 'stop', to: i };
  const fold = FOLDS.get(word);
  if (fold) return { kind: 'fold', step: fold[0], by: fold[1], to: i };
  if (
    /^(?:one|next|size|a size)$/.test(word) ||
    /^(?:go|went|going|goes|stepp?(?:ed|ing)?|take|took|pick)$/.test(word)
  ) {
    const onward = onwardAt(items, i);
    if (onward) return onward;
  }
  const step = STEPS.get(word);
  if (step) return { kind: behindDifference(items, i) ? 'stop' : 'step', step, to: i };
  if (RESULTS.test(word)) return { kind: 'result', to: i };
  if (PASSED.test(word)) return { kind: 'pass', to: i };
  return { kind: STOPS.test(word) ? 'stop' : 'word', to: i };
}

/** "(8 – 2) × 2": what is multiplied is the difference, whose dash may be a range elsewhere. */
function behindDifference(items: readonly Item[], i: number): boolean {
  if (items[i - 1]?.word !== ')') return false;
  const near = items.slice(Math.max(0, i - 7), i - 1);
  const opens = near.findLastIndex(({ word }) => word === '(');
  return near.slice(opens + 1).some(({ word }) => /^[–—-]$/.test(word));
}

const BELOW = /^(?:down|below|under|smaller|lower|less|beneath)$/;
const ABOVE = /^(?:up|above|over|larger|bigger|higher)$/;
const TAKEN_UP = /^(?:pick|picks|took|take) up (?:an?|the|your|our|\d)/;
/** "one down", "the next size below", "went one below". */
function onwardAt(items: readonly Item[], i: number): Token | undefined {
  // "and you pick up a 12": taken, not gone up.
  if (TAKEN_UP.test(joined(items, i, i + 3))) return undefined;
  for (let k = i; k <= i + 3; k++) {
    const word = items[k]?.word ?? '';
    if (BELOW.test(word)) return { kind: 'onward', way: 'below', to: k };
    if (ABOVE.test(word)) return { kind: 'onward', way: 'above', to: k };
    if (
      !/^(?:go|went|going|goes|step(?:ped|ping)?|take|took|pick|the|a|one|next|size|catheter|french)$/.test(
        word,
      )
    )
      return undefined;
  }
  return undefined;
}

type Read = Figure & { readonly part?: number };

/** The number at item `i`: digits, a word, a size, an age. */
function figureAt(items: readonly Item[], i: number): Read | undefined {
  const { word, mention, kind } = items[i]!;
  if (isReference(items, i)) return undefined;
  const size = mention?.sizes[0];
  const bare = mention && /^\d{1,3}(?:[.,]\d{1,2})?$/.test(mention.text);
  if (mention && !(bare && mention.kind === 'ambiguous')) {
    if (!size || mention.sizes.length > 1 || mention.bound || !UNITS.has(size.system)) return undefined;
    return {
      at: i,
      to: i,
      value: size.value,
      half: 0.5 * 10 ** -mention.decimals,
      ...(bare ? {} : { unit: size.system }),
    };
  }
  if (kind !== 'word' && !bare) return undefined;
  const mixed = mixedAt(items, i);
  if (mixed) return mixed;
  const age = /^([a-z]+|\d{1,2})-(?:year|yr)s?-olds?$/.exec(word)?.[1];
  const digits = /^\d{1,3}(?:[.,]\d{1,4})?$/.exec(age ?? word);
  const plural = digits
    ? undefined
    : /^(twos|threes|fours|fives|sixes|sevens|eights|nines|tens)$/.exec(word)?.[1];
  const value = digits
    ? Number(digits[0].replace(',', '.'))
    : /^(?:pi|π)$/.test(word)
      ? Math.PI
      : wordValue(age ?? (plural ? plural.replace(/(?:(six)es|s)$/, '$1') : word));
  if (value === undefined || Number.isNaN(value) || /^(?:one|zero)$/.test(word)) return undefined;
  const decimals = (digits?.[0].split(/[.,]/)[1] ?? '').length;
  return {
    at: i,
    to: i,
    value,
    half: 0.5 * 10 ** -decimals,
    ...(plural ? { part: 1 } : {}),
  };
}

/** "one and a half", "two and a quarter". */
function mixedAt(items: readonly Item[], i: number): Read | undefined {
  const whole = wordValue(items[i]!.word);
  const tail = [1, 2, 3].map((k) => items[i + k]?.word).join(' ');
  const part = tail === 'and a half' ? 0.5 : tail === 'and a quarter' ? 0.25 : undefined;
  return whole === undefined || part === undefined
    ? undefined
    : { at: i, to: i + 3, value: whole + part, half: 0.05 };
}
const UNITS: ReadonlySet<string> = new Set(['french', 'millimetre', 'tube-id', 'wire-inch']);

/** What has come out so far. */
interface Sum {
  value: number;
  steps: string;
  count: number;
  from: number;
  doubled: boolean;
  /** The last number told is what came out: nothing is owed. */
  settled: boolean;
}

const APPLY: Readonly<Record<Step, (a: number, b: number) => number>> = {
  over: (a, b) => a / b,
  times: (a, b) => a * b,
  plus: (a, b) => a + b,
  minus: (a, b) => a - b,
};

/** Every result that is told behind a sum. */
export function resultsIn(items: readonly Item[]): readonly Told[] {
  const row = new Row();
  for (let i = 0; i < items.length; i++) i = row.take(items, i);
  return row.found;
}

/** A row of numbers read from left to right. */
class Row {
  readonly found: Told[] = [];
  #sum: Sum | undefined;
  #step: Step | undefined;
  /** "divide 27 by three": the step stands before both numbers. */
  #ahead: Step | undefined;
  #fold: readonly [Step, number] | undefined;
  #telling = false;
  #onward: 'below' | 'above' | undefined;
  /** A step of something that is no number: "age over four plus four". */
  #blocked = false;
  #words = 0;

  /** Takes the item at `i`; returns the last one taken. */
  take(items: readonly Item[], i: number): number {
    const glued = gluedAt(items, i);
    if (glued) {
      this.#clear();
      this.#sum = stepped(begun({ at: i, to: i, value: glued[0], half: 0 }), 'over', glued[1]);
      return i;
    }
    const token = tokenAt(items, i);
    if (token.kind === 'number') return this.#number(items, token.figure, token.many === true);
    if (token.kind === 'stop') this.#clear();
    else if (token.kind === 'word') this.#word();
    else if (token.kind === 'result') this.#result();
    else if (token.kind === 'step')
      this.#stepTo(token.step, /^(?:divid(?:e|ing)|multiply(?:ing)?)$/.test(items[i]!.word));
    else if (token.kind === 'fold') return this.#folded(items, token.step, token.by, token.to);
    else if (token.kind === 'onward' && this.#sum && this.#sum.count > 0) {
      this.#onward = token.way;
      this.#telling = true;
    }
    return token.to;
  }

  #clear(): void {
    this.#sum = undefined;
    this.#step = undefined;
    this.#ahead = undefined;
    this.#fold = undefined;
    this.#telling = false;
    this.#onward = undefined;
    this.#blocked = false;
    this.#words = 0;
  }

  #word(): void {
    this.#fold = undefined;
    if (++this.#words > MOST_WORDS || this.#step) {
      const blocked = this.#blocked || this.#step !== undefined;
      this.#clear();
      this.#blocked = blocked;
    }
  }

  #result(): void {
    this.#fold = undefined;
    this.#ahead = undefined;
    this.#blocked = false;
    this.#telling = true;
  }

  #stepTo(step: Step, verb: boolean): void {
    this.#telling = false;
    if (verb && (!this.#sum || this.#sum.count === 0)) this.#ahead = step;
    else if (this.#sum) this.#step = step;
    else this.#blocked = true;
  }

  #folded(items: readonly Item[], step: Step, by: number, to: number): number {
    this.#telling = false;
    if (!/^(?:it|that|this)$/.test(items[to + 1]?.word ?? '')) {
      this.#fold = [step, by];
      return to;
    }
    if (this.#sum) this.#sum = stepped(this.#sum, step, by);
    else this.#blocked = true;
    return to + 1;
  }

  #number(items: readonly Item[], figure: Figure, many: boolean): number {
    this.#words = 0;
    this.#counted(items, figure, many);
    const part = PARTS.get(items[figure.to + 1]?.word ?? '');
    if (!part || !this.#sum) return figure.to;
    // "two thirds of the bore": a part of something that has no number.
    if (
      items[figure.to + 2]?.word === 'of' &&
      /^(?:the|its|an?|that)$/.test(items[figure.to + 3]?.word ?? '')
    ) {
      this.#clear();
      return figure.to + 2;
    }
    this.#sum = stepped(this.#sum, 'over', part);
    return figure.to + 1;
  }

  #counted(items: readonly Item[], figure: Figure, many: boolean): void {
    const sum = this.#sum;
    if (this.#blocked) return;
    if (this.#ahead && items.slice(figure.to + 1, figure.to + 4).some(({ word }) => word === 'by')) {
      [this.#sum, this.#step, this.#ahead] = [begun(figure), this.#ahead, undefined];
      return;
    }
    const step = this.#step ?? this.#ahead;
    [this.#step, this.#ahead] = [undefined, undefined];
    if (this.#fold) {
      this.#sum = stepped(begun(figure), ...this.#fold);
      [this.#fold, this.#telling] = [undefined, false];
    } else if (sum && step) {
      this.#sum = allowed(step, sum.value, figure) ? stepped(sum, step, figure.value) : begun(figure);
    } else if (step) this.#blocked = true;
    else if (sum && many) this.#sum = stepped(sum, 'times', figure.value);
    else if (sum && sum.count > 0 && this.#telling) this.#tell(sum, figure);
    else this.#sum = begun(figure);
  }

  #tell(sum: Sum, result: Figure): void {
    const onward = this.#onward;
    const { value, steps, from, doubled } = sum;
    if (!sum.settled || onward)
      this.found.push({ result, value, steps, from, doubled, ...(onward ? { onward } : {}) });
    this.#sum = {
      ...sum,
      value: result.value,
      steps: `${Number(result.value.toPrecision(4))}`,
      settled: true,
    };
    [this.#telling, this.#onward] = [false, undefined];
  }
}

const begun = ({ value, at }: Figure): Sum => ({
  value,
  steps: `${Number(value.toPrecision(4))}`,
  count: 0,
  from: at,
  doubled: false,
  settled: false,
});

const stepped = (sum: Sum, step: Step, by: number): Sum => ({
  value: APPLY[step](sum.value, by),
  steps: `${sum.steps} ${SIGNS[step]} ${Number(by.toPrecision(4))}`,
  count: sum.count + 1,
  from: sum.from,
  doubled: step === 'times' && by === 2,
  settled: false,
});

/** Divisors and factors are plain numbers; what is added is small. */
const allowed = (step: Step, value: number, by: Figure): boolean =>
  step === 'over' || step === 'times'
    ? (by.unit === undefined && FACTOR(by.value)) || (step === 'times' && FACTOR(value))
    : by.value <= 12;

/** "22/3 Drain: ordered 10 Fr": a day and its month before what happened then. */
const dated = (items: readonly Item[], i: number): boolean =>
  i === 0 && items[1]?.kind === 'word' && items[1].capital;

/** "8/4" written as one word, or with its sign apart from nothing. */
function gluedAt(items: readonly Item[], i: number): readonly [number, number] | undefined {
  const match = items[i]!.mention ? null : /^(\d{1,2})\/([2-6])$/.exec(items[i]!.word);
  const [above, below] = [Number(match?.[1]), Number(match?.[2])];
  return match &&
    above >= below &&
    !dated(items, i) &&
    !/^(?:inch|in|of|circle|mm|")$/.test(items[i + 1]?.word ?? '')
    ? [above, below]
    : undefined;
}
