/** Numbers as words and as typeset digits: "twenty-two", "one point eight", "1½", "0,85". */

const SMALL: Readonly<Record<string, number>> = {
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
};

/** A word of the text may be the name of something that every object has. */
const own = (table: Readonly<Record<string, number>>, word: string): number | undefined =>
  Object.hasOwn(table, word) ? table[word] : undefined;

const TENS: Readonly<Record<string, number>> = { twenty: 20, thirty: 30, forty: 40, fifty: 50, sixty: 60 };

/** Typeset fractions. */
const FRACTIONS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅙': 1 / 6,
};

const alternatives = (words: Readonly<Record<string, unknown>>): string =>
  Object.keys(words)
    .sort((a, b) => b.length - a.length)
    .join('|');

const ONES = 'one|two|three|four|five|six|seven|eight|nine';

/** One number said in words, 0 to 69. */
export const WORD_NUMBER = `(?:(?:${alternatives(TENS)})(?:[-\\s](?:${ONES})(?![a-z]))?|${alternatives(SMALL)})`;

/** Digits with an optional decimal part, point or comma. */
export const DIGITS = '[0-9]{1,3}(?:[.,][0-9]{1,3})?';

/** A length in inches: "1½", "1 1/2", "5/8", ".035", "0.5". */
export const INCHES = `(?:[0-9]{1,2}[-\\s]?[½¼¾⅛⅜⅝⅞⅓⅔]|[½¼¾⅛⅜⅝⅞⅓⅔]|(?:[0-9]{1,2}(?:[-\\s]|[\\s]and[\\s]))?[0-9]{1,2}[/⁄][0-9]{1,2}|[0-9]{0,2}[.,][0-9]{1,5}|[0-9]{1,2})`;

/** A number read: its value and how many decimals were written. */
export interface Read {
  readonly value: number;
  readonly decimals: number;
  readonly spoken: boolean;
}

const HALVES: Readonly<Record<string, number>> = { half: 0.5, quarter: 0.25 };

/** Reads digits, a fraction or words. Undefined when the text is no number. */
export function readNumber(text: string): Read | undefined {
  const clean = text.trim().toLowerCase();
  return readDigits(clean) ?? readFraction(clean) ?? readWords(clean);
}

function readDigits(text: string): Read | undefined {
  const match = /^([0-9]*)(?:[.,]([0-9]+))?$/.exec(text);
  if (!match || text === '') return undefined;
  return {
    value: Number(`${match[1] || '0'}.${match[2] ?? '0'}`),
    decimals: match[2]?.length ?? 0,
    spoken: false,
  };
}

function readFraction(text: string): Read | undefined {
  const typeset = /^([0-9]*)[-\s]?([½¼¾⅛⅜⅝⅞⅓⅔⅙])$/.exec(text);
  if (typeset) return fraction(Number(typeset[1] || 0) + FRACTIONS[typeset[2]!]!);
  const plain = /^(?:([0-9]+)(?:[-\s]|\sand\s))?([0-9]+)[/⁄]([0-9]+)$/.exec(text);
  if (!plain || Number(plain[3]) === 0) return undefined;
  const lost = plain[1] === undefined ? withoutSpace(plain[2]!, plain[3]!) : undefined;
  if (lost !== undefined) return fraction(lost);
  return fraction(Number(plain[1] ?? 0) + Number(plain[2]) / Number(plain[3]));
}

/** "11/2" is 1 1/2 with its space lost: nobody counts inches in halves up to eleven. */
function withoutSpace(above: string, below: string): number | undefined {
  const [whole, part] = [Number(above[0]), Number(above.slice(1))];
  return above.length === 2 && /^[248]$/.test(below) && part > 0 && part < Number(below)
    ? whole + part / Number(below)
    : undefined;
}

const fraction = (value: number): Read => ({ value, decimals: decimalsOf(value), spoken: false });
const decimalsOf = (value: number): number => (String(value).split('.')[1] ?? '').length;

function readWords(text: string): Read | undefined {
  const half = /^(.+?)[-\s]and[-\s]a[-\s](half|quarter)$/.exec(text);
  if (half) return add(readWords(half[1]!), HALVES[half[2]!]!);
  const point = /^(.+?)[-\s]point[-\s](.+)$/.exec(text);
  if (point) return decimal(point[1]!, point[2]!);
  const value = wordValue(text);
  return value === undefined ? undefined : { value, decimals: 0, spoken: true };
}

function add(base: Read | undefined, more: number): Read | undefined {
  return base && { value: base.value + more, decimals: decimalsOf(more), spoken: true };
}

const DIGIT = new RegExp(`(?:${alternatives(TENS)})[-\\s](?:${ONES})|[a-z]+`, 'g');

/** "point two five" and "point twenty-five" are both .25. */
function decimal(whole: string, digits: string): Read | undefined {
  const left = wordValue(whole);
  const right = digits.match(DIGIT)?.map((word) => (word === 'oh' ? 0 : wordValue(word)));
  if (left === undefined || !right || right.some((value) => value === undefined)) return undefined;
  const written = right.join('');
  return { value: Number(`${left}.${written}`), decimals: written.length, spoken: true };
}

/** Value of "twenty two", "seven". */
export function wordValue(text: string): number | undefined {
  const [first, second, ...rest] = text
    .trim()
    .toLowerCase()
    .split(/[-\s]+/) as [string, ...string[]];
  if (rest.length > 0) return undefined;
  const tens = own(TENS, first);
  if (tens === undefined) return second === undefined ? own(SMALL, first) : undefined;
  if (second === undefined) return tens;
  const ones = own(SMALL, second);
  return ones !== undefined && ones > 0 && ones < 10 ? tens + ones : undefined;
}
