/** Abbreviations of the trade: what each stands for, and the rules that a text may break. Common usage; the style guide for zeros. */
import type { FormulaRow } from './formulas.ts';

const row = (id: string, system: FormulaRow['system'], says: string, holds: string): FormulaRow => ({
  id,
  system,
  says,
  true: false,
  holds,
  standard: 'common practice, no source',
  sources: [],
});

export const ABBREVIATION_RULES: readonly FormulaRow[] = [
  row(
    'short-for-french',
    'french',
    'a short form of French stands for something else',
    'Fr, F, FG and Ch stand for French, which is also called Charrière',
  ),
  row(
    'short-for-gauge',
    'needle-gauge',
    'the G of a needle stands for something else',
    'G behind the number of a needle or cannula stands for gauge',
  ),
  row(
    'short-for-usp',
    'usp',
    'USP stands for something else',
    'USP stands for the United States Pharmacopeia, EP for the European Pharmacopoeia',
  ),
  row(
    'short-for-number',
    'usp',
    'the hash before a suture size stands for something else',
    'The hash before a suture size means number: #2 is size 2, without zeros',
  ),
];

export interface Abbreviation {
  readonly rule: string;
  readonly means: RegExp;
}
const FRENCH: Abbreviation = { rule: 'short-for-french', means: /^(?:french|charri[eè]re)$/ };
const GAUGE: Abbreviation = { rule: 'short-for-gauge', means: /^(?:gauges?|gage)$/ };

export const ABBREVIATIONS: ReadonlyMap<string, Abbreviation> = new Map([
  ...['fr', 'f', 'ch', 'fg'].map((word) => [word, FRENCH] as const),
  ...['g', 'ga'].map((word) => [word, GAUGE] as const),
  ['usp', { rule: 'short-for-usp', means: /^(?:united|states|us|american|america)$/ }],
  ['ep', { rule: 'short-for-usp', means: /^(?:european?|europe)$/ }],
  ['hash', { rule: 'short-for-number', means: /^(?:numbers?|sizes?|no)$/ }],
]);

/** What one of them may be taken for. */
export const EXPANSIONS =
  /^(?:gauges?|gage|grams?|foleys?|fahrenheit|frames?|fine|fractions?|females?|flows?|fluids?|frequency|zeros?|zeroes|noughts?|european|europe|british|american|america|united|states|us|english|french|charri[eè]re|channels?|chest|child|children|circumference|millimet(?:re|er)s?|mm|inch|inches|numbers?|sizes?|length|general|universal|international)$/;
