/**
 * Words that say how big something is: one row a word, with its opposite (used when a fix swaps the word).
 * `axis` is what the word measures when nothing beside it says otherwise; `sign` +1 is the big end.
 * Comparatives and superlatives are formed by rule unless a row names them.
 */
import type { Axis } from '../model.ts';

export type Degree = 'plain' | 'comparative' | 'superlative';

export interface MagnitudeRow {
  readonly word: string;
  readonly axis: Axis;
  readonly sign: 1 | -1;
  /** Word of the other sign that can stand in its place. */
  readonly opposite: string;
  readonly comparative?: string;
  readonly superlative?: string;
  /** The plain word is too common elsewhere ("light", "short") to be read without a comparing ending. */
  readonly comparedOnly?: boolean;
}

const row = (axis: Axis, sign: 1 | -1, opposite: string, words: string): MagnitudeRow[] =>
  words.split(' ').map((word) => ({ word, axis, sign, opposite }));

/** Regular words, by axis and sign. */
const REGULAR: readonly MagnitudeRow[] = [
  ...row('outer', 1, 'thin', 'thick fat stout coarse beefy chunky burly plump portly tubby meaty'),
  ...row('outer', 1, 'fine', 'hefty bulky heavy brawny husky'),
  ...row('outer', 1, 'small', 'big large huge great'),
  ...row('outer', 1, 'narrow', 'wide broad'),
  ...row('bore', 1, 'tight', 'roomy generous spacious capacious'),
  ...row(
    'outer',
    -1,
    'thick',
    'thin fine slim slender skinny slight spindly wispy lean hair-thin hair-fine hair-like hairlike thread-like',
  ),
  ...row('outer', -1, 'thick', 'delicate dainty svelte petite'),
  ...row('outer', -1, 'large', 'small tiny little minute wee teeny'),
  ...row('outer', -1, 'wide', 'narrow'),
  ...row('bore', -1, 'roomy', 'tight cramped snug'),
  ...row('flow', 1, 'slow', 'fast quick swift rapid brisk speedy'),
  ...row('flow', -1, 'fast', 'slow sluggish'),
  ...row('strength', 1, 'weak', 'strong sturdy robust tough hardy'),
  ...row('strength', -1, 'strong', 'weak flimsy frail feeble'),
  ...row('number', 1, 'low', 'high'),
  ...row('number', -1, 'high', 'low'),
];

/** Verbs that say how fast it flows. */
function flowing(sign: 1 | -1, opposite: string, words: string): MagnitudeRow[] {
  return words.split(' ').map((word) => ({ word, axis: 'flow', sign, opposite }));
}

const IRREGULAR: readonly MagnitudeRow[] = [
  { word: 'light', axis: 'outer', sign: -1, opposite: 'heavy', comparedOnly: true },
  ...flowing(1, 'trickles', 'pours gushes races rushes'),
  ...flowing(-1, 'pours', 'trickles dribbles crawls seeps'),
  { word: 'substantial', axis: 'outer', sign: 1, opposite: 'slender', comparative: 'more substantial' },
];

export const MAGNITUDES: readonly MagnitudeRow[] = [...REGULAR, ...IRREGULAR];

/** Qualities that a size does not decide. A comparison on one of these is left alone. */
export const OTHER_QUALITIES: readonly string[] =
  `long short cheap pricey dear costly expensive old young new soft hard sharp blunt stiff flexible bendy deep
  shallow comfortable painful kind gentle safe common rare popular easy difficult quiet poor loud clean warm cold hot
  heavy-handed likely early late hungry happy smooth rough slippery visible sterile bright dark pale good bad
  useful reliable steady simple modern frequent near far close tall springy supple floppy rigid durable patient
  pliable elastic knotty secure tidy neat`
    .split(/\s+/)
    .filter(Boolean);

/** Irregular forms of the qualities above. */
export const OTHER_COMPARED: readonly string[] =
  'better worse best worst further farther sooner later longest shortest oftener'.split(' ');

const isVowel = (letter: string | undefined) => letter !== undefined && 'aeiou'.includes(letter);

/** "thin" → "thinner": the regular English spelling. */
export function comparativeOf(word: string): string {
  return `${stem(word)}er`;
}

/** "thin" → "thinnest". */
export function superlativeOf(word: string): string {
  return `${stem(word)}est`;
}

function stem(word: string): string {
  const last = word.at(-1);
  if (last === 'e') return word.slice(0, -1);
  if (last === 'y' && !isVowel(word.at(-2))) return `${word.slice(0, -1)}i`;
  const doubles =
    /^[a-z]{2,5}$/.test(word) && !isVowel(last) && isVowel(word.at(-2)) && !isVowel(word.at(-3));
  return doubles && last !== 'w' && last !== 'x' && last !== 'y' ? word + last : word;
}
