/** Lengths in metric units: "4.7 mm", "0,85 mm", "1.2 cm", "250 µm", "nine tenths of a millimeter". */
import { readNumber, WORD_NUMBER, wordValue } from '../../server/src/mentions/words/numbers.ts';
import {
  alternation,
  CENTIMETRE_WORDS,
  MICROMETRE_WORDS,
  MILLIMETRE_WORDS,
} from '../../server/src/mentions/words/units.ts';
import type { Item, Notation } from './model.ts';
import { AFTER, AFTER_NUMBER, BEFORE, readSeries, series } from './series.ts';

const NUMBER = '(?:[0-9]{1,3}(?:[.,][0-9]{1,4})?|[.][0-9]{1,3})';
/** "12.70 ± 0.02": what follows the sign is no second size. */
const TOLERATED = `${NUMBER}(?:[\\s]?±[\\s]?${NUMBER})?`;
const withoutTolerance = (text: string): string =>
  text.replace(/±[\s]?[0-9.,]+/g, (all) => ' '.repeat(all.length));
const plausible = (value: number): boolean => value > 0;
const scaled = (items: readonly Item[], factor: number): readonly Item[] =>
  items.map((item) => ({
    ...item,
    values: item.values.map((value) => Number((value * factor).toPrecision(9))),
    decimals: factor === 1 ? item.decimals : Math.max(0, item.decimals - Math.round(Math.log10(factor))),
  }));

export const millimetres: Notation = {
  id: 'millimetres',
  title: 'Millimetres',
  about: 'A diameter, bore or needle length in mm; decimal point or comma.',
  system: 'millimetre',
  pattern: `(?<!±)(?<!±[\\s])${BEFORE}(?:${series(TOLERATED, 5)})(?:[\\s]?-?|[\\s]of[\\s]a[\\s](?=millim))(?:${alternation(MILLIMETRE_WORDS)})${AFTER}(?![²³23]|[\\s]?hg)`,
  anyCase: true,
  // "1/3 mm" is a fraction, no list of two.
  read: (text) => (/^1[/⁄][0-9]/.test(text) ? [] : readSeries(withoutTolerance(text), NUMBER, plausible)),
  examples: ['4.7 mm', '0.4 of a millimetre', '0,85 mm', '25mm', '0.20–0.249 mm', '25-mm'],
  counterExamples: ['120 mmHg', '5 mm2'],
};

export const needleProduct: Notation = {
  id: 'needle-product',
  title: 'Diameter by length',
  about: 'Both measures of a needle in millimetres: 0.8 × 40 mm.',
  system: 'millimetre',
  pattern: `${BEFORE}[0-9](?:[.,][0-9]{1,2})?[\\s]?(?:mm[\\s]?)?(?:[x×]|by[\\s])[\\s]?[0-9]{1,3}[\\s]?mm${AFTER}`,
  anyCase: true,
  read: readProduct,
  examples: ['0.8 × 40 mm', '0,5 x 16 mm', '0.8 by 40 mm'],
  counterExamples: ['3 × daily'],
};

export const needleProductBare: Notation = {
  id: 'needle-product-bare',
  title: 'Diameter by length, the unit left out',
  about:
    'Both measures of a needle as its packet prints them, in millimetres: 0.8 × 40. Read only of a needle.',
  system: 'millimetre',
  pattern: `${BEFORE}[0-3][.,][0-9]{1,2}[\\s]?(?:[x×]|by[\\s])[\\s]?[1-9][0-9]{0,2}${AFTER_NUMBER}(?![\\s-]?(?:[x×]|[cm]m|in|m[lg]))`,
  contextual: true,
  anyCase: true,
  read: readProduct,
  examples: ['0.8 × 40', '0,5x16', '0.8 by 40'],
  counterExamples: ['0.9% × 100', '10 × 10', '0.5 x 2 mL'],
};

const MEASURE =
  '(?:outside|inside|outer|inner|across|wide|OD|ID|od|in[\\s]diameter|in[\\s]millimet(?:re|er)s)';
/** "In millimetres it comes to 1.8". */
const UNIT_FIRST =
  "[Ii]n[\\s]millimet(?:re|er)s,?[\\s](?:(?:it|that|this|which)[\\s](?:is|comes[\\s](?:to|out[\\s]at)|makes|works[\\s]out[\\s](?:at|as|to)|would[\\s]be)|that's|it's)[\\s](?:about[\\s]|roughly[\\s]|some[\\s]|just[\\s](?:over[\\s]|under[\\s])?)?";

export const millimetresMeasured: Notation = {
  id: 'millimetres-measured',
  title: 'Diameter without its unit',
  about: 'A decimal that says what it measures, beside a size or millimetres: 0.72 outside, OD 1.27.',
  system: 'millimetre',
  pattern: `${BEFORE}(?:[0-9]{1,2}[.,][0-9]{1,3}(?=[\\s]${MEASURE}(?![0-9A-Za-zÀ-ÿ]))|(?:(?:OD|O\\.D\\.|[Oo]uter[\\s]diameter|[Oo]utside[\\s]diameter|[Ii]nner[\\s]diameter|[Ii]nside[\\s]diameter)[\\s](?:is[\\s]|of[\\s])?|${UNIT_FIRST})[0-9]{1,2}[.,][0-9]{1,3}${AFTER_NUMBER}(?![\\s]?(?:[cm]m|in)))`,
  contextual: true,
  anyCase: false,
  read: (text) => {
    const match = /[0-9]+[.,][0-9]+$/.exec(text)!;
    const { value, decimals } = readNumber(match[0])!;
    return [{ start: match.index, end: text.length, values: [value], decimals }];
  },
  examples: ['OD 1.27', 'outer diameter of 4.7', 'In millimetres it comes to 0.46'],
  counterExamples: ['OD 2 tablets', 'outer diameter 4.7 cm'],
};

function readProduct(text: string): readonly Item[] {
  const items = [...text.matchAll(/[0-9]+(?:[.,][0-9]+)?/g)].map((match) => ({
    at: match.index,
    end: match.index + match[0].length,
    read: readNumber(match[0])!,
  }));
  return items.map(({ at, end, read }, i) => ({
    start: at,
    end: i === items.length - 1 ? text.length : end,
    values: [read.value],
    decimals: read.decimals,
  }));
}

export const needleSlash: Notation = {
  id: 'needle-slash',
  title: 'Length and tenths of a millimetre',
  about:
    'The continental way: length in mm, a slash, diameter in tenths of a millimetre: 21 G 40/8 is 40 mm long and 0.8 mm thick. Read only beside a gauge.',
  system: 'millimetre',
  pattern: `${BEFORE}(?:[1-9][0-9])/(?:[3-9]|1[0-9]|20)${AFTER_NUMBER}(?![\\s]?(?:mm|g[^a-z]|fr|ch))`,
  contextual: true,
  anyCase: true,
  read: (text) => {
    const slash = text.indexOf('/');
    return [
      { start: 0, end: slash, values: [Number(text.slice(0, slash))], decimals: 0 },
      { start: slash + 1, end: text.length, values: [Number(text.slice(slash + 1)) / 10], decimals: 1 },
    ];
  },
  examples: ['40/8', '25/6'],
  counterExamples: ['12/05/24', '20/20/20'],
};

export const centimetres: Notation = {
  id: 'centimetres',
  title: 'Centimetres',
  about: 'A needle length in cm, read in millimetres.',
  system: 'millimetre',
  pattern: `${BEFORE}(?:${series(NUMBER, 5)})[\\s]?-?(?:${alternation(CENTIMETRE_WORDS)})${AFTER}(?![²³23]|[\\s]?h2o)`,
  contextual: true,
  anyCase: true,
  read: (text) => scaled(readSeries(text, NUMBER, plausible), 10),
  examples: ['3.8 cm', '1.2cm'],
  counterExamples: ['30 cmH2O'],
};

export const micrometres: Notation = {
  id: 'micrometres',
  title: 'Micrometres',
  about: 'Fine threads and bores in µm, read in millimetres.',
  system: 'millimetre',
  pattern: `${BEFORE}(?:${series(NUMBER, 5)})[\\s]?-?(?:${alternation(MICROMETRE_WORDS)})${AFTER}`,
  anyCase: true,
  read: (text) => scaled(readSeries(text, NUMBER, plausible), 0.001),
  examples: ['250 µm', '20-29 µm'],
  counterExamples: ['250 umbrellas'],
};

const PARTS: Readonly<Record<string, number>> = { half: 2, third: 3, quarter: 4, tenth: 10, hundredth: 100 };
const UNIT_WORDS = '(?:millimeters?|millimetres?)';

export const millimetresSpoken: Notation = {
  id: 'millimetres-spoken',
  title: 'Millimetres in words',
  about:
    'Three millimeters, one point eight millimeters, nine tenths of a millimeter. A third of a millimetre is the step of a scale, no size.',
  system: 'millimetre',
  pattern: `${BEFORE}(?:(?:a|one)[\\s]${UNIT_WORDS}[\\s]and[\\s]a[\\s](?:half|quarter)|${WORD_NUMBER}(?:[\\s-]point(?:[\\s-](?:oh|${WORD_NUMBER})){1,3})?(?:[\\s-]and[\\s-]a[\\s-](?:half|quarter))?[\\s-]${UNIT_WORDS}(?![\\s](?:is|equals|makes)[\\s](?:three|3)[\\s])|(?:two|three|four|five|six|seven|eight|nine)[\\s-](?:third|quarter|tenth|hundredth)s[\\s]of[\\s]a[\\s]${UNIT_WORDS}|half[\\s]a[\\s]${UNIT_WORDS}(?=[\\s](?:across|wide|thick|in[\\s]diameter))|an?[\\s]${UNIT_WORDS}(?=[\\s](?:across|wide|thick|in[\\s]diameter))|an?[\\s](?:third|quarter|tenth)[\\s]of[\\s]a[\\s]${UNIT_WORDS}(?=[\\s](?:across|wide|thick|in[\\s]diameter))|point[\\s-](?:${WORD_NUMBER})(?:[\\s-](?:${WORD_NUMBER}))?[\\s-]${UNIT_WORDS})${AFTER}`,
  anyCase: true,
  read: readSpokenMillimetres,
  examples: ['three millimeters', 'one point eight millimeters', 'nine tenths of a millimeter'],
  counterExamples: ['millimeters', 'a third of a millimetre', 'half a millimetre'],
};

function readSpokenMillimetres(text: string): readonly Item[] {
  const lower = text.toLowerCase();
  const item = (value: number, decimals: number): readonly Item[] => [
    { start: 0, end: text.length, values: [value], decimals, spoken: true },
  ];
  if (/^half[\s]a/.test(lower)) return item(0.5, 1);
  if (/^an?[\s]mil/.test(lower) && !/\sand\s/.test(lower)) return item(1, 0);
  const part = /^([a-z]+)[\s-](half|third|quarter|tenth|hundredth)s?[\s]of/.exec(lower);
  if (part) {
    const count = /^an?$/.test(part[1]!) ? 1 : wordValue(part[1]!)!;
    return item(Number((count / PARTS[part[2]!]!).toPrecision(6)), part[2] === 'hundredth' ? 2 : 1);
  }
  const more = /^(?:a|one)[\s]millimet(?:er|re)[\s]and[\s]a[\s](half|quarter)$/.exec(lower);
  if (more) return more[1] === 'half' ? item(1.5, 1) : item(1.25, 2);
  const read = readNumber(lower.replace(/^point/, 'zero point').replace(/[\s-]millimet(?:er|re)s?$/, ''));
  return read ? item(read.value, read.decimals) : [];
}
