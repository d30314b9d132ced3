/**
 * A fast look at raw text: can anything in it be a size, or a rule about sizes? Most notes of a course hold
 * neither and skip the parser. It may say yes too often, never no wrongly: tests hold the analysis with and
 * without it equal. The words come from the tables that the reading itself uses.
 */
import { SYSTEM_NOUNS } from '../claims/words/nouns.ts';
import type { Context } from '../mentions/model.ts';
import { DEVICE_WORDS } from '../mentions/words/devices.ts';
import { MATERIAL_WORDS } from '../mentions/words/materials.ts';
import {
  CENTIMETRE_WORDS,
  FRENCH_WORDS,
  GAUGE_WORDS,
  INCH_WORDS,
  MICROMETRE_WORDS,
  MILLIMETRE_WORDS,
} from '../mentions/words/units.ts';
import { mayHoldSizes } from '../notes/index.ts';

/** Words that are not in those tables: table headers, spoken sizes, needle points, deliberate marks. */
const MORE_WORDS = [
  ...['usp', 'ep', 'eur', 'metric', 'decimetric', 'hegar', 'awg', 'swg', 'bwg', 'id', 'od', 'ett'],
  ...['tracheal', 'endotracheal', 'breathing tube', 'cuffed', 'uncuffed', 'double-lumen'],
  ...['o', 'oh', 'ohs', 'aughts', 'oughts', 'noughts', 'thou', 'thousandths'],
  ...[
    'taper',
    'tapered',
    'tapercut',
    'cutting',
    'cutter',
    'cutters',
    'reverse',
    'conventional',
    'depth-seeking',
    'surface-seeking',
    'spatula',
    'diamond',
    'trocar',
    'round-bodied',
    'pencil-point',
    'pencil-points',
    'pencil point',
    'pencil points',
  ],
  ...['wrong on purpose', 'sizes table', 'sizes chart', 'plain number', 'plain numbers'],
];

/** "in" is a word of its own; as a unit it follows a number or stands alone in a header. */
const isWord = (unit: string): boolean => /[a-zà-ÿµμ]{2}/i.test(unit) && unit !== 'in';

const PHRASES: readonly string[] = [
  ...DEVICE_WORDS.flatMap(([, words]) => words),
  ...MATERIAL_WORDS.keys(),
  ...SYSTEM_NOUNS.keys(),
  ...[
    ...GAUGE_WORDS,
    ...FRENCH_WORDS,
    ...MILLIMETRE_WORDS,
    ...CENTIMETRE_WORDS,
    ...MICROMETRE_WORDS,
    ...INCH_WORDS,
  ].filter(isWord),
  ...MORE_WORDS,
].map((phrase) => phrase.toLowerCase());

/** Signs of Markdown that may stand inside what a reader sees as one word, and characters nobody sees. */
const NOISE = '*_~\\\\[\\]\u00ad\u200b-\u200d\u2060\ufeff';

/** What may stand in the source between a number and its unit. */
const BETWEEN = `(?:[${NOISE}\\s>;+"'“”‘’()-]|&#?[a-z0-9]{1,31};|\\]\\([^()\\n]{0,400}\\)|\\]\\[[^\\]\\n]{0,400}\\]|<!--){0,16}`;

const UNIT = `(?:gauged?|gages?|ga|gs?|frs?|chs?|fgs?|fs?|french|mm|cm|[uµμ]m|b&s|in|i\\.?d|[-‐‑‒–—−/⁄]${BETWEEN}[0o]|[mcufi](?=[${NOISE}]))(?![0-9A-Za-zÀ-ÿ])`;

/** A number with a unit, zeros written out, a header that is a unit of length: tried where one of the signs below stands. */
const MARKED = new RegExp(
  [
    `[0-9½¼¾⅛⅜⅝⅞⅓⅔]${BETWEEN}(?:${UNIT}|″)`,
    `[½¼¾⅛⅜⅝⅞⅓⅔]`,
    `[0-9½¼¾⅛⅜⅝⅞⅓⅔][${NOISE}\\s-]{0,8}["”″]`,
    `(?<![0-9A-Za-zÀ-ÿ.,:⁄°$€£/-])#?0[${NOISE}]{0,4}0(?![0-9A-Za-zÀ-ÿ%]{6})`,
    `[(,|]\\s{0,3}(?:in|f|g)\\.?\\s{0,9}[)|\\n]`,
    '″',
  ].join('|'),
  'iy',
);

const BUCKETS = 1 << 16;

/** Values of `LETTERS` that are no letter: the rest ends a word, a noisy sign both ends it and stands inside it. */
const OTHER = 0;
const NOISY = 1;
/** Every letter beyond Latin-1 counts as the same one. */
const FOREIGN = 2;

/** By code unit: the lower-case letter, or one of the above. */
const LETTERS = new Uint8Array(0x10000);
LETTERS.fill(FOREIGN, 0x100, 0x2000).fill(FOREIGN, 0x3000);
for (let code = 0; code < 0x100; code++)
  if (/[a-zà-öø-ÿµ]/i.test(String.fromCharCode(code)))
    LETTERS[code] = String.fromCharCode(code).toLowerCase().charCodeAt(0);
for (const sign of '*_~\\[]\u00ad\u200b\u200c\u200d\u2060\ufeff') LETTERS[sign.charCodeAt(0)] = NOISY;

/** Signs with which one of the above begins: a digit, a zero, another sign, and one that opens a header or a cell. */
const [DIGIT, ZERO, SIGN, OPENS] = [1, 2, 3, 4];
const BEGINS = new Uint8Array(0x10000);
for (const sign of '123456789') BEGINS[sign.charCodeAt(0)] = DIGIT;
for (const sign of '½¼¾⅛⅜⅝⅞⅓⅔#″') BEGINS[sign.charCodeAt(0)] = SIGN;
for (const sign of '(,|') BEGINS[sign.charCodeAt(0)] = OPENS;
BEGINS['0'.charCodeAt(0)] = ZERO;

/** Whether what is marked begins at `at`. What follows the sign is looked at first: mostly it settles that nothing does. */
function markedAt(text: string, at: number, begins: number): boolean {
  let follows = text.charCodeAt(at + 1);
  if (begins === OPENS) {
    for (let i = 1; i <= 3 && follows === SPACE; i++) follows = text.charCodeAt(at + i + 1);
    if (follows < 0x80 && follows > SPACE && !FIRST_OF_UNIT.includes(follows)) return false;
  }
  if (begins <= ZERO && (follows === NIL ? begins === DIGIT : follows > NIL && follows <= NINE)) return false;
  MARKED.lastIndex = at;
  return MARKED.test(text);
}
const [SPACE, NIL, NINE] = [0x20, 0x30, 0x39];
const FIRST_OF_UNIT: readonly number[] = [...'ifgIFG'].map((letter) => letter.charCodeAt(0));

const next = (hash: number, letter: number): number => ((hash << 5) - hash + letter) | 0;
const bucket = (hash: number): number => (hash ^ (hash >>> 15)) & (BUCKETS - 1);

function bucketOf(word: string): number {
  let hash = 0;
  for (let i = 0; i < word.length; i++) hash = next(hash, LETTERS[word.charCodeAt(i)]!);
  return bucket(hash);
}

/** A set of phrases: asked by their first word, then in full. */
interface Cues {
  readonly buckets: Uint8Array;
  /** The phrases of a bucket as one pattern, made when it is first asked for: one of them all takes long to make. */
  readonly whole: (bucket: number) => RegExp;
}

const escaped = (word: string): string => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

function firstWord(phrase: string): string {
  let end = 0;
  while (LETTERS[phrase.charCodeAt(end)]! > NOISY) end++;
  return phrase.slice(0, end);
}

function cuesOf(phrases: readonly string[]): Cues {
  const buckets = new Uint8Array(BUCKETS);
  const own = new Map<number, string[]>();
  for (const phrase of new Set(phrases)) {
    const first = firstWord(phrase);
    for (const at of new Set([first, `${first}s`, `${first}es`].map(bucketOf))) {
      buckets[at] = 1;
      own.set(at, [...(own.get(at) ?? []), phrase]);
    }
  }
  const made = new Map<number, RegExp>();
  const whole = (at: number): RegExp => {
    const pattern = made.get(at) ?? anyOf(own.get(at) ?? []);
    made.set(at, pattern);
    return pattern;
  };
  return { buckets, whole };
}

function anyOf(phrases: readonly string[]): RegExp {
  const forms = phrases
    .toSorted((a, b) => b.length - a.length)
    .map((phrase) => escaped(phrase).replace(/[ -]/g, '[\\s-]{1,3}'));
  return new RegExp(`^(?:${forms.join('|')})(?:s|es)?(?![a-zà-ÿ])`, 'i');
}

const TRADE = cuesOf(PHRASES);

const HIDDEN = new RegExp(`[${NOISE}]`, 'g');

/** Longest phrase and what Markdown may put inside it, characters. */
const WINDOW = 80;

const COUNT =
  /(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|single|double|triple|treble|quadruple)[\s*_~-]+$/i;

/** Whether a phrase of a bucket starts at `at`, seen as a reader sees it. */
function phraseAt(text: string, at: number, { buckets, whole }: Cues, of: number): boolean {
  if (buckets[of] !== 1) return false;
  const seen = text
    .slice(at, at + WINDOW)
    .replace(HIDDEN, '')
    .replace(/\n[\s>]*/g, '\n');
  const word = whole(of).exec(seen)?.[0];
  if (word === undefined) return false;
  if (word.length === 1)
    return (
      !abbreviated(text, at) &&
      (word.toLowerCase() !== 'o' || COUNT.test(text.slice(Math.max(0, at - 16), at)))
    );
  return true;
}

/** The g of "e.g.". */
const abbreviated = (text: string, at: number): boolean =>
  /e\.\s?$/i.test(text.slice(Math.max(0, at - 3), at));

/**
 * One pass over the characters: a hash for each word, asked of the buckets where the word ends. With `marks` what is marked
 * counts too.
 */
function hasCue(text: string, cues: Cues, marks: boolean): boolean {
  const { buckets } = cues;
  const { length } = text;
  for (let i = 0; i < length; ) {
    const code = text.charCodeAt(i);
    let letter = LETTERS[code]!;
    if (letter <= NOISY) {
      const begins = BEGINS[code]!;
      if (begins > 0 && marks && markedAt(text, i, begins)) return true;
      i++;
      continue;
    }
    const start = i;
    let hash = 0;
    do {
      hash = next(hash, letter);
      letter = ++i < length ? LETTERS[text.charCodeAt(i)]! : OTHER;
    } while (letter > NOISY);
    if (buckets[bucket(hash)] === 1 && phraseAt(text, start, cues, bucket(hash))) return true;
    if (letter === NOISY && brokenWord(text, start, cues)) return true;
  }
  return false;
}

/** A word with signs inside, as in "gau*ge*": rare, so it may cost more. */
function brokenWord(text: string, start: number, cues: Cues): boolean {
  let hash = 0;
  for (let i = start; i < Math.min(text.length, start + WINDOW); i++) {
    const letter = LETTERS[text.charCodeAt(i)]!;
    if (letter === OTHER) break;
    if (letter !== NOISY) hash = next(hash, letter);
  }
  return phraseAt(text, start, cues, bucket(hash));
}

/** A local name that stands as a word of Latin letters; others, as "№ 5", may hide in what looks like anything. */
const isSeen = (name: string): boolean => /^[a-zà-öø-ÿµ][\u0000-\u00ff]*$/i.test(name);

const local = new WeakMap<Context, Cues | 'hidden'>();

/** Cues of the names a course has settled. */
function localCues(context: Context): Cues | 'hidden' {
  const known = local.get(context);
  if (known) return known;
  const names = [...Object.keys(context.devices ?? {}), ...Object.keys(context.materials ?? {})];
  const cues = names.every(isSeen) ? cuesOf(names.map((name) => name.toLowerCase())) : 'hidden';
  local.set(context, cues);
  return cues;
}

/** Whether the text may hold a size or a rule about sizes. Linear in its length; never throws. */
export function maySpeakOfSizes(text: string, context: Context = {}): boolean {
  // With a device taken for granted, any number may be a size.
  if (context.device !== undefined) return mayHoldSizes(text);
  if (hasCue(text, TRADE, true)) return true;
  if (!context.devices && !context.materials) return false;
  const names = localCues(context);
  return names === 'hidden' || hasCue(text, names, false);
}
