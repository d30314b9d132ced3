/** A size and a length side by side: which kinds tell each other, what parts them, and whether one could measure the other. */
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import type { Group, Scene } from '../text/scene.ts';
import { ACROSS, OPERATORS } from '../words/gist.ts';
import { longEnough } from './equate.ts';
import { tail } from './measure-owner.ts';
import { crossedLength, second } from './set-apart.ts';
import { sumsIn } from './sums.ts';

export type Kind = 'length' | 'hegar' | 'inch' | 'wire-inch' | 'metric' | 'usp' | 'named';
const KINDS: ReadonlyMap<string, Kind> = new Map([
  ['millimetre', 'length'],
  ['inch', 'inch'],
  ['hegar', 'hegar'],
  ['wire-inch', 'wire-inch'],
  ['ep-metric', 'metric'],
  ['usp', 'usp'],
  ['french', 'named'],
  ['needle-gauge', 'named'],
] as const);
export const kindOf = (group: Group): Kind | undefined => KINDS.get(group.sizes[0]!.system);

/** Kinds of which one tells the other. */
const TELLS: ReadonlySet<string> = new Set([
  'named length',
  'usp length',
  'metric length',
  'wire-inch length',
  'inch length',
  'usp metric',
  'named inch',
  'hegar named',
]);
export const tells = (a: Group, b: Group): boolean => {
  const [x, y] = [kindOf(a), kindOf(b)];
  return TELLS.has(`${x} ${y}`) || TELLS.has(`${y} ${x}`);
};

export const LENGTHS: ReadonlySet<Kind> = new Set(['length', 'inch', 'wire-inch'] as const);

/** The two numbers of one thread, and words between them that bring in another. */
export const twoNumbers = (left: Group, right: Group): boolean =>
  [left, right].some((g) => kindOf(g) === 'metric') && [left, right].some((g) => kindOf(g) === 'usp');
export const TWO_THREADS =
  /\b(?:and|or|then|first|from|to|for)\b(?! (?:it|that|underneath|below|on) )|(?:^|,)(?: the| an?| our)$|^,$/;

export const CONTRAST = /^(?:not|never|no|than|unlike|instead|rather|if|unless|without|\w+n't)$/;

const joinedTwo = (between: readonly Item[], i: number): string =>
  `${between[i + 1]?.word} ${between[i + 2]?.word}`;

/** "just over 6 mm", "comes up to"? No: an operator right where it only rounds is none. */
export function stops(between: readonly Item[], i: number, { word, magnitude }: Item): boolean {
  if (magnitude?.degree === 'comparative' || magnitude?.degree === 'superlative') return true;
  if (word === 'and')
    return !/^(?:that|it|this|is|measures|comes|works|which|so|underneath|below|under|on|you|,|then|both|therefore|would|gives|makes|means|the|what|found|finds|find|got|read|reads|saw|it's|that's)$/.test(
      between[i + 1]?.word ?? '',
    );
  if (/^[;:—–]$/.test(word))
    return (
      !/^(?:that|it|this|which|so|about|roughly|call|say|around|nearly|you|,|in)$/.test(
        between[i + 1]?.word ?? '',
      ) && i < between.length - 1
    );
  if (word === 'if')
    return !/^(?:you|we) (?:do|work|want|like|measure|care|ask|reckon|count)$/.test(joinedTwo(between, i));
  if (word === 'other') return between[i + 1]?.word !== 'words';
  if (/^(?:beside|against|along|next)$/.test(word))
    return !/^(?:to )?(?:an?|the|your|my) (?:ruler|calipers?|callipers?|scale|tape)\b/.test(
      textOf(between.slice(i + 1, i + 5)),
    );
  if (word === 'down') return between[i + 1]?.word === 'as';
  if (word === 'dilator') return !/^(?:that|this)$/.test(between[i - 1]?.word ?? '');
  // "takes up 5 mm".
  if (/^takes?$/.test(word) && between[i + 1]?.word === 'up') return false;
  if (word === 'up' && /^takes?$/.test(between[i - 1]?.word ?? '')) return false;
  if (word === 'or') return i < between.length - 3;
  if (word === '.') return false;
  return OPERATORS.test(word);
}

/** "through a 12 Fr", "wider than a 12 Fr": the size is not what is measured. */
export const passedBy = (items: readonly Item[], left: Group): boolean =>
  STEPPED.test(joined(items, Math.max(0, left.from - 6), left.from)) ||
  items
    .slice(Math.max(0, left.from - 2), left.from)
    .some(({ word }) =>
      /^(?:than|unlike|through|into|inside|via|onto|past|fits?|takes|accepts|passes|like|to)$/.test(word),
    );

/** "a good fifth of a millimetre": a part of what stands there. */
export const PART_OF = /\b(?:half|thirds?|quarters?|fifths?|tenths?|hundredths?|fraction|part) of$/;
const STEPPED = /\b(?:steps?|difference|each|every|gap|per)\b[^,]*$/;

/** Sums, pairs of a cross and lengths along are told elsewhere. */
export const apart = ({ items }: Scene, left: Group, right: Group): boolean =>
  second(items, left) ||
  [left, right].some((g) => crossedLength(items, g) || dividedOddly(items, g.from)) ||
  /^(?:long|length|deep|apart|above|below|from the|away|high|tall|proximal|distal|mark|per|every|a (?:day|week)|\/)$/.test(
    items[right.to + 1]?.word ?? '',
  ) ||
  items.some(({ word }) => WIRES.test(word));
/** "16 / 3.33 = 4.8 mm": by the way around, as some have it. */
const dividedOddly = (items: readonly Item[], at: number): boolean =>
  sumsIn(items).some(({ from, to, by }) => from <= at && at <= to && !Number.isInteger(by));
const WIRES = /^(?:k-wires?|cerclage|kirschner|files?|reamers?|sheaths?|introducers?|guiding)$/;

/** Longest of threads across, mm; what is thicker is its needle's length. */
const THICKEST = 1.5;

/** Is the length one that a diameter could be taken for? */
export function plausible(left: Group, right: Group, items: readonly Item[]): boolean {
  const pair = [left, right];
  if (pair.some(({ sizes, mentions }) => sizes.length !== 1 || mentions[0]!.bound)) return sized(left, right);
  const length = pair.find((g) => kindOf(g) === 'length' || kindOf(g) === 'inch');
  const named = pair.find((g) => g !== length)!;
  if (!length) return true;
  const across = near(items, left, right).some(({ word }) => ACROSS.test(word));
  if (/\bcm\b|cent/i.test(length.mentions[0]!.text) && !across) return false;
  const mm = length.sizes[0]!.value * (kindOf(length) === 'inch' ? 25.4 : 1);
  if (pair.every((g) => kindOf(g) === 'length' || kindOf(g) === 'inch')) return true;
  if (named.sizes[0]!.system === 'usp' || named.sizes[0]!.system === 'ep-metric')
    return mm <= THICKEST || across;
  if (named.sizes[0]!.system === 'needle-gauge') return !longEnough(length.sizes[0]!) || (across && mm < 8);
  // A wall or a tip is thinner than any slip with the number makes of it.
  return mm < 40 && mm >= 0.09 * named.sizes[0]!.value;
}

/** A range of sizes and a range of lengths. */
const sized = (left: Group, right: Group): boolean =>
  left.sizes.length === 2 && right.sizes.length === 2 && ![left, right].some((g) => g.mentions[0]!.bound);

/** The words of the pair and a few around it. */
export const near = (items: readonly Item[], left: Group, right: Group): readonly Item[] => [
  ...items.slice(Math.max(0, left.from - 4), left.from),
  ...items.slice(left.to + 1, right.from),
  ...tail(items, right),
];
