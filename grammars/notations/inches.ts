/** Lengths in inches: "1½ in", "5/8 inch", "0.5\"", "¼–½ in", "an inch and a half". */
import { INCHES, readNumber, WORD_NUMBER, wordValue } from '../../server/src/mentions/words/numbers.ts';
import { alternation, INCH_WORDS } from '../../server/src/mentions/words/units.ts';
import type { Item, Notation } from './model.ts';
import { AFTER, BEFORE, readSeries } from './series.ts';

const plausible = (value: number): boolean => value > 0 && value < 100;
const JOIN = '(?:[\\s]?[‐‑‒–—−-][\\s]?|-?[\\s](?:to|or|and)[\\s](?:an?[\\s])?|,[\\s])';

export const inches: Notation = {
  id: 'inches',
  title: 'Inches',
  about: 'A needle length or a diameter in inches: decimal, fraction, mixed number.',
  system: 'inch',
  pattern: `(?<!["“])${BEFORE}(?:${INCHES})(?:${JOIN}(?:${INCHES})){0,4}(?:[\\s]?-?|-[\\s](?=inch)|[\\s]of[\\s]an[\\s](?=inch))(?:${alternation(INCH_WORDS)})\\.?${AFTER}(?![²³]|[\\s](?:milli|centi)met|[ ](?:mm|French)(?![A-Za-z-]))`,
  anyCase: true,
  read: (text) => afterList(readSeries(text, INCHES, plausible), text).map((item) => trimmed(item, text)),
  examples: ['1½ in', '5/8 inch', '0.5 in', '¼–½ in', '1 1/2 in', '1½″', '1.5-inch'],
  counterExamples: ['18 inside', '1.8 in millimetres', '3 in mm'],
};

/** "an 18 or 20, 1 inch": a list that "or" has closed goes on no further; what follows its comma stands alone. */
function afterList(items: readonly Item[], text: string): readonly Item[] {
  const closed = /\s(?:or|and)\s[^,]*,\s(?=[^,]*$)/.exec(text);
  const from = closed ? closed.index + closed[0].length : 0;
  return items.filter(({ start }) => start >= from);
}

/** A full stop after "in" ends the sentence more often than it abbreviates. */
function trimmed(item: Item, text: string): Item {
  return item.end === text.length && text.endsWith('.') ? { ...item, end: item.end - 1 } : item;
}

const AND_HALF = '(?:half|quarter|three[\\s-]quarters)';

export const inchesSpoken: Notation = {
  id: 'inches-spoken',
  title: 'Inches in words',
  about: 'An inch and a half, five eighths of an inch, half an inch, two inches.',
  system: 'inch',
  pattern: `${BEFORE}(?:inch[\\s-]and[\\s-]a[\\s-]${AND_HALF}|half[\\s]an[\\s]inch|half[\\s-]inch|(?:one|a|three|five|seven)[\\s-](?:quarter|eighth|half)s?[\\s](?:of[\\s]an[\\s])?inch(?:es)?|${WORD_NUMBER}(?:[\\s]and[\\s]a[\\s]${AND_HALF})?[\\s-]inch(?:es)?)${AFTER}`,
  anyCase: true,
  read: readSpokenInches,
  examples: ['inch and a half', 'five eighths of an inch', 'half an inch', 'two inches'],
  counterExamples: ['every inch'],
};

const FRACTION: Readonly<Record<string, number>> = {
  half: 0.5,
  quarter: 0.25,
  'three-quarters': 0.75,
  eighth: 0.125,
};

function readSpokenInches(text: string): readonly Item[] {
  const value = spokenInches(text.toLowerCase().replace(/[\s-]+/g, ' '));
  return value === undefined
    ? []
    : [
        {
          start: 0,
          end: text.length,
          values: [value],
          decimals: (String(value).split('.')[1] ?? '').length,
          spoken: true,
        },
      ];
}

function spokenInches(text: string): number | undefined {
  const more = /^inch and a (half|quarter|three[ -]quarters)$/.exec(text);
  if (more) return 1 + FRACTION[more[1]!.replace(' ', '-')]!;
  if (/^half[ -](?:an )?inch$/.test(text)) return 0.5;
  const part = /^([a-z]+)[ -](quarter|eighth|half)s? /.exec(text);
  if (part) return (part[1] === 'a' ? 1 : wordValue(part[1]!)!) * FRACTION[part[2]!]!;
  return readNumber(text.replace(/[ -]inch(?:es)?$/, ''))?.value;
}

export const inchFraction: Notation = {
  id: 'inch-fraction',
  title: 'Fraction of an inch beside a gauge',
  about:
    'The length of a needle as a fraction right after its gauge, the inch left out: 25 G 5/8, 21 G × 1½.',
  system: 'inch',
  pattern: `${BEFORE}(?:(?:[0-9][-\\s])?(?:1/2|1/4|3/4|[1357]/8|5/16|3/16|5/32)|[0-9]?[½¼¾⅛⅜⅝⅞])(?![0-9A-Za-zÀ-ÿ/⁄%°])(?![\\s-]?(?:circle|hour|tablet|h[\\s]|day|way|full))`,
  contextual: true,
  anyCase: true,
  read: (text) => readSeries(text, INCHES, plausible),
  examples: ['5/8', '1½', '1 1/2'],
  counterExamples: ['3/8 circle', '1/2 tablet'],
};
