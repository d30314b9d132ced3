/** USP sizes with zeros: "2-0", "3/0", "#2-0", "4-O", "00", "three-oh", "double zero". */
import { wordValue } from '../../server/src/mentions/words/numbers.ts';
import type { Item, Notation } from './model.ts';
import { AFTER, AFTER_NUMBER, BEFORE, readSeries, series } from './series.ts';

const DASH = '[-‐‑‒–−/⁄]';
const one = (text: string, rank: number, decimals = 0, spoken = false): readonly Item[] => [
  { start: 0, end: text.length, values: [rank], decimals, ...(spoken ? { spoken: true } : {}) },
];

export const uspDashed: Notation = {
  id: 'usp-dashed',
  title: 'USP number and zero',
  about: 'The number of zeros, a dash or slash, a zero: 3-0 is 000. 1-0 is written for 0.',
  system: 'usp',
  pattern: `(?<![0-9A-Za-zÀ-ÿ.,:⁄°$€£_−-])#?(?:9/10|(?:1[0-9]|20|[1-9])(?:[.][0-9])?)(?:${DASH}|[\\s][-–][\\s])(?:0(?![0-9A-Za-rt-zÀ-ÿ_]|s[A-Za-z]|[.,:][0-9]|[-‐‑–][0-9]|[/][1-9](?![-/]0(?![0-9])))(?:['’]?s(?![A-Za-z]))?|[Oo](?![0-9A-Za-zÀ-ÿ_]|[-‐‑–/][0-9A-Za-z]|-))`,
  anyCase: false,
  read: (text) => {
    const zeros = /9\/10/.test(text) ? '10' : /[0-9]+(?:[.][0-9])?/.exec(text)![0];
    return one(text, Number((1 - Number(zeros)).toPrecision(6)), zeros.includes('.') ? 1 : 0);
  },
  examples: ['2-0', '3/0', '#2-0', '4-O', '10-0', '2–0', '4-0s'],
  counterExamples: ['12-05', '0,1-0,5', '3-0-1', '21-0'],
};

export const uspWritten: Notation = {
  id: 'usp-zeros',
  title: 'USP zeros written out',
  about: 'Zeros written out: 00 is 2-0, 000 is 3-0.',
  system: 'usp',
  pattern: `(?<![0-9A-Za-zÀ-ÿ.,:⁄°$€£_/-])#?0{2,7}(?![0-9A-Za-zÀ-ÿ_%]|[.,:/-][0-9])`,
  contextual: true,
  anyCase: false,
  read: (text) => one(text, 1 - text.replace('#', '').length),
  examples: ['00', '000', '#000'],
  counterExamples: ['007', '0.00', '10:00'],
};

export const uspHyphened: Notation = {
  id: 'usp-hyphened',
  title: 'USP number hyphened to its thread',
  about: 'A whole number, a hyphen and the thread: 0-silk, 1-nylon; read only in talk of sewing.',
  system: 'usp',
  pattern: `(?<![0-9A-Za-zÀ-ÿ.,:/⁄°$€£_#−-])#?[0-2]-[A-Za-z]{3,20}(?![A-Za-z])`,
  contextual: true,
  anyCase: false,
  read: (text) => {
    const number = text.split('-')[0]!;
    return one(number, Number(number.replace('#', '')));
  },
  examples: ['0-silk', '1-nylon', '#2-polyester'],
  counterExamples: ['3-0', '10-nylon', '2-D'],
};

const COUNT = 'two|three|four|five|six|seven|eight|nine|ten|eleven|twelve';
const TIMES: Readonly<Record<string, number>> = { single: 1, double: 2, triple: 3, treble: 3, quadruple: 4 };

export const uspSpoken: Notation = {
  id: 'usp-spoken',
  title: 'USP sizes as spoken',
  about: 'Three-oh, two-aught, four nought; double zero, triple zero.',
  system: 'usp',
  pattern: `${BEFORE}(?:one[\\s-](?:oh|o)|(?:${COUNT})[\\s-](?:oh|aught|ought|nought|zero|o)|[2-9]-(?:oh|aught|nought)|(?:double|triple|treble|quadruple)[\\s-](?:zero|oh|aught|ought|nought|o))${AFTER}(?!-[a-z]|['’]\\s?clock)`,
  anyCase: true,
  read: (text) => {
    const first = text.toLowerCase().split(/[\s-]/)[0]!;
    const zeros = TIMES[first] ?? wordValue(first) ?? Number(first);
    return one(text, 1 - zeros, 0, true);
  },
  examples: ['three-oh', 'two aught', 'four nought', 'double zero', 'triple zero', 'two zero'],
  counterExamples: ['oh-three-five', 'clip two-oh-one', 'it has four zeros', "six o'clock"],
};

const WHOLE = '(?:0(?!0)|[1-9][0-9]?)';

export const uspNamed: Notation = {
  id: 'usp-named',
  title: 'USP before the size',
  about: 'USP said before a whole number: USP 5, USP 1 and 2.',
  system: 'usp',
  pattern: `${BEFORE}USP[\\s](?:sizes?[\\s])?(?:${series(WHOLE, 4)})${AFTER_NUMBER}`,
  anyCase: false,
  // "USP 4-0" is a count of zeros, not a range from 4 to 0.
  read: (text) => (/[-–/]0$/.test(text) ? [] : readSeries(text, WHOLE, (value) => value <= 10, 'before')),
  examples: ['USP 5', 'USP size 1', 'USP 1 or 2'],
  counterExamples: ['USP 861', 'USP 3-0'],
};

export const uspSlip: Notation = {
  id: 'usp-decimal-slip',
  title: 'USP with a decimal point',
  about: 'A point typed for the dash: 4.0 silk. Read as 4-0 only beside a thread.',
  system: 'usp',
  pattern: '(?<![0-9A-Za-zÀ-ÿ.,:/⁄°$€£_-])#?(?:1[0-2]|[2-9])[.]0(?![0-9A-Za-zÀ-ÿ_%]|[.,:/-][0-9])',
  contextual: true,
  anyCase: false,
  read: (text) => one(text, 1 - Number(/[0-9]+/.exec(text)![0])),
  examples: ['4.0', '2.0'],
  counterExamples: ['4.05', '14.0.1'],
};
