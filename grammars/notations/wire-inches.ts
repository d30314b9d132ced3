/** Guidewires by diameter in inches: ".035", "0.035-in", "035 wire", "oh-three-five", "thirty-five thousandths of an inch". */
import { readNumber, WORD_NUMBER, wordValue } from '../../server/src/mentions/words/numbers.ts';
import { alternation, INCH_WORDS } from '../../server/src/mentions/words/units.ts';
import type { Item, Notation } from './model.ts';
import { AFTER, BEFORE, readSeries } from './series.ts';

const NUMBER = '0?[.,]0[0-9]{2}';
const JOIN = '(?:[\\s]?[‐‑‒–—−/-][\\s]?|-?,[\\s](?:(?:and|or)[\\s])?|-?[\\s](?:to|or|and)[\\s](?:an?[\\s])?)';
/** "0.035 in the drawer": where it is, no unit. */
const NO_PLACE =
  '(?![\\s]in[\\s](?:the(?![\\s][a-z]{2,12}est(?![a-z]))|our|my|your|his|her|their|its|this|that|these|those|both|each|every|all|any|one|which|an?)(?![A-Za-z]))';
const plausible = (value: number): boolean => value >= 0.008 && value <= 0.1;

export const wireInches: Notation = {
  id: 'wire-inches',
  title: 'Guidewire diameter in inches',
  about:
    'Guidewires carry their diameter in inches: 0.035 in, .018", 0.014-inch; the unit is often left out.',
  system: 'wire-inch',
  pattern: `(?<![0-9A-Za-zÀ-ÿ.,$€£=<>_±-])(?<![0-9]/)${NUMBER}(?:${JOIN}${NUMBER}){0,5}(?:${NO_PLACE}[\\s]?-?(?:${alternation(INCH_WORDS)})\\.?|s(?![A-Za-z]))?(?![0-9A-Za-zÀ-ÿ%_²³]|[\\s]?(?:%|mm|cm|mg|ml|percent|per|(?:in|sq)[²³]))`,
  anyCase: true,
  // Two wires with a comma between are a list: the values are too peculiar for anything else.
  read: (text) => readSeries(text.replace(/\.$/, ''), NUMBER, plausible, 'after', 'list'),
  examples: ['.035', '0.035 in', '0.035-inch', '0.018"', '0.014, 0.018 and 0.035 in'],
  counterExamples: ['0.025%', 'p=0.014', '0.035 mm'],
};

export const wireDigits: Notation = {
  id: 'wire-digits',
  title: 'Guidewire by its digits',
  about: '035, 018, 014: the thousandths as said, without point or unit; read only beside a wire.',
  system: 'wire-inch',
  pattern: `(?<![0-9A-Za-zÀ-ÿ.,:/$€£=<>_#+-])0(?:10|14|16|18|21|25|28|32|35|38)(?![0-9A-Za-zÀ-ÿ_%]|[.,:/-][0-9])`,
  contextual: true,
  anyCase: false,
  read: (text) => [{ start: 0, end: text.length, values: [Number(text) / 1000], decimals: 3 }],
  examples: ['035', '018', '014'],
  counterExamples: ['0350', '1.035'],
};

export const wireShort: Notation = {
  id: 'wire-short',
  title: 'Guidewire by its last digits',
  about:
    'A 35 wire, an 18 wire: the thousandths of an inch, the noughts left out; only right before the wire.',
  system: 'wire-inch',
  pattern: `${BEFORE}(?:14|18|21|25|32|35|38|fourteen|eighteen|twenty[\\s-]five|thirty[\\s-](?:five|eight))(?=[\\s-](?:(?:stiff|floppy|hydrophilic|j-tip|j|straight|soft)[\\s-])?(?:guide[\\s-]?)?wires?${AFTER})`,
  contextual: true,
  anyCase: true,
  read: (text) => {
    const { value, spoken } = readNumber(text)!;
    const item = { start: 0, end: text.length, values: [value / 1000], decimals: 3 };
    return [spoken ? { ...item, spoken } : item];
  },
  examples: ['35', 'thirty-five'],
  counterExamples: ['18 gauge wire'],
};

const ONE = 'one|two|three|four|five|six|seven|eight|nine|zero|oh';

export const wireSpoken: Notation = {
  id: 'wire-spoken',
  title: 'Guidewire as spoken',
  about:
    'Oh-three-five, oh-one-eight, point oh three five; thirty-five thousandths of an inch; thirty-five thou.',
  system: 'wire-inch',
  pattern: `${BEFORE}(?:(?:(?:zero|oh)[\\s-])?(?:point[\\s-])?(?:oh|zero|o)[\\s-](?:one|two|three)[\\s-](?:${ONE})|(?:(?:zero|oh)[\\s-])?(?:point[\\s-])?(?:oh|zero|o)[\\s-](?:fourteen|eighteen|twenty[\\s-]five|thirty[\\s-](?:two|five|eight))|(?:${WORD_NUMBER}|[0-9]{2})[\\s-](?:thousandths(?:[\\s]of[\\s]an[\\s]inch)?|thou))(?!-?[a-z0-9])`,
  anyCase: true,
  read: readSpokenWire,
  examples: [
    'oh-three-five',
    'oh-one-eight',
    'point oh three five',
    'thirty-five thousandths of an inch',
    '35 thou',
  ],
  counterExamples: ['oh-three-fives-x'],
};

function readSpokenWire(text: string): readonly Item[] {
  const value = spokenWire(text.toLowerCase());
  return plausible(value) ? [{ start: 0, end: text.length, values: [value], decimals: 3, spoken: true }] : [];
}

/** Inches. What the pattern lets through is a number of words, one of them at least a digit. */
function spokenWire(text: string): number {
  const thousandths = /^(.+?)[\s-](?:thousandths|thou)/.exec(text);
  if (thousandths) return readNumber(thousandths[1]!)!.value / 1000;
  const words = text.split(/[\s-]/);
  const [first, last] = words.slice(-2).map((word) => wordValue(word) ?? 0) as [number, number];
  if (last >= 10) return last / 1000;
  const tens = wordValue(words.slice(-2).join('-'));
  return (tens ?? first * 10 + last) / 1000;
}
