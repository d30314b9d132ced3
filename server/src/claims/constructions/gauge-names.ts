/**
 * What a gauge is said to name besides the outside: "a 27 G is named for its bore, and the wall is extra", "gauge also tells you
 * how long the needle is", "gauge is a measure of the hole, not of the outside". "Bore" by itself is said of the width by many: it
 * is read only where the outside or the wall is set against it.
 */
import { firstMatch } from '../../notes/patterns.ts';
import { remembered } from '../text/remember.ts';
import type { Scene } from '../text/scene.ts';
import { wordsOf } from '../text/scene.ts';
import type { Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

/** One of them is what is named. */
export const HOLLOW_WORDS = ['hole', 'bore', 'lumen', 'inside', 'channel', 'length', 'long'] as const;

export function gaugeNames(scene: Scene): Reading[] {
  const { items, sentence } = scene;
  if (sentence.close === '?' || items.length > 45) return [];
  const { text, gauge } = written(items);
  for (const { pattern, formula } of SHAPES) {
    const match = firstMatch(pattern, text);
    if (!match || (match[0].includes('#') && !gauge)) continue;
    const [from, at] = [wordAt(text, match.index), wordAt(text, match.index + match[0].length - 1)];
    return [{ claim: ruleClaim(scene, 'gauge-names', 'needle-gauge', formula, at), at, from, to: at }];
  }
  return [];
}

/** Each item is one word there, a size as well. */
const wordAt = (text: string, offset: number): number => text.slice(0, offset).split(' ').length - 1;

const written = remembered((items: Scene['items']) => ({
  text: wordsOf({ items }),
  gauge: items.every(({ mention }) => !mention || mention.sizes[0]?.system === 'needle-gauge'),
}));

const ADVERB = '(?:(?:also|really|actually|simply|just|always|therefore|thus|indeed|in fact|of course) )?';
const NEEDLE = '(?:needles?|cannulas?|cannulae|one)';
/** The number, or one needle with its size. */
const GAUGE = `(?:(?:the |a )?(?:needle )?gauge(?: number| size)?(?: of an? ${NEEDLE})?)`;
const SIZED = `(?:(?:an?|the|every|any|your) # ?(?:${NEEDLE})?)`;
const THINGS = `(?:${SIZED}|(?:an? |the |every |hypodermic |injection )?${NEEDLE})`;
const NAMES = `(?:${GAUGE} ${ADVERB}(?:is ${ADVERB}(?:an? )?(?:measure(?:ment)? of|named (?:for|by|after)|set by)|measures|stands for|refers to|describes|gives|names|tells you(?: about)?|says|shows(?: you)?)|${THINGS.replaceAll('  ', ' ')} ?(?:is|are) ${ADVERB}(?:named|called|numbered|sized) (?:for|by|after))`;
const WIDTH = '(?:(?:size|width|diameter) of )?';
const HOLLOW = `(?:(?:how (?:wide|big|large) )?${WIDTH}(?:the |its |their )?`;
/** Nothing else may stand behind it that would be what is named. */
const ENDS = '(?= ?$| [.,;:!)—–]| (?:and|so|but|not)\\b| is\\b)';
const AGAINST =
  '(?= (?:, )?(?:and )?not (?:of |for |by |after )?(?:the |its )?(?:outside|outer|wall)|(?: , | ; | : |: |, )?(?:and |so )?(?:with )?(?:the |its )wall (?:is |comes |goes |counts |adds )?(?:extra|on top|added|not counted|separate))';

const OPENS = '(?:^|[,;:.—–(] |\\b(?:and|but|so|because|since|as|yes|remember|note) )(?:, )?';
const shape = (object: string): RegExp => new RegExp(`${OPENS}${NAMES} ${object}`);
const SHAPES: readonly { readonly pattern: RegExp; readonly formula: string }[] = [
  { pattern: shape(`${HOLLOW}(?:bore|channel))${AGAINST}`), formula: 'gauge-is-inner' },
  {
    pattern: shape(
      `${HOLLOW}(?:hole|lumen|inside)(?: (?:in|down|through) the (?:middle|needle|centre|center))?)(?! (?:in|on) (?:the|your) (?:skin|vein|patient))${ENDS}`,
    ),
    formula: 'gauge-is-inner',
  },
  {
    pattern: shape(
      `(?:how long (?:the |an? |your )?(?:needle|cannula|it) (?:is|will be)|(?:the |its )length(?: of (?:the|a|your) (?:needle|cannula))?)${ENDS}`,
    ),
    formula: 'gauge-is-length',
  },
];
