/** "1-0 and 0 are the same size", "as thick as", "two-aught is another way to say number two". */
import type { Item, Magnitude } from '../text/items.ts';
import { compares, decidable, type Measured } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem, together } from '../text/scene.ts';
import { asThread } from './as-thread.ts';
import type { Construction, Reading } from './model.ts';
import { ofOwners } from './of-owners.ts';
import { comparison, wordless } from './than.ts';

const SAME = new Set([
  'same',
  'identical',
  'equal',
  'equals',
  'interchangeable',
  'synonym',
  'synonyms',
  'synonymous',
  '=',
  'equivalent',
  'nicknames',
  'alias',
  'nickname',
  'alike',
]);
const SAY =
  /\b(?:another name for|(?:way|ways) (?:to|of) (?:say|saying|write|writing)|short for|shorthand for|stands? for|also (?:called|written|known as)(?! (?:for|on|in|by|to|at) )|no different from|one and the same|i\.e)\b/;
/** Each of those ways of saying it has one. */
const SAY_CUE = /\b(?:another|ways?|short|stand|also|different|i\.e)/;
const SIZE_WORDS = new Set([
  'size',
  'diameter',
  'thickness',
  'calibre',
  'caliber',
  'bore',
  'thread',
  'needle',
  'suture',
  'strand',
  'thing',
  'gauge',
  'wire',
  'catheter',
  'tube',
  'width',
]);

export const equative: Construction = {
  id: 'equative',
  needs: () => [
    { sizes: 2, words: [...SAME, 'as', 'different', 'equally', 'difference'] },
    { sizes: 2, holds: ['mixed'], words: ['thickness', 'width', 'diameter'] },
    { sizes: 2, like: SAY_CUE },
  ],
  read(scene) {
    const written = apart(groups(scene.items));
    const two = twoSpellings(scene, written);
    if (two) return [two];
    if (ofOwners(scene.items)) return [];
    const thread = asThread(scene);
    if (thread.length > 0) return thread;
    const all = distinct(written);
    if (all.length !== 2 || !sameSystem(all[0]!, all[1]!)) return asAs(scene, all);
    if (together(scene.items, all[0]!) !== together(scene.items, all[1]!)) return [];
    const at = sameWord(scene, all[0]!, all[1]!);
    const other = at < 0 ? differentWord(scene, all[0]!, all[1]!) : -1;
    if (other >= 0) return [{ ...reading(scene, other, all[0]!, all[1]!), denied: true, own: true }];
    if (at < 0) return asAs(scene, all);
    const none = scene.items[at]!.word === 'difference';
    return [{ ...reading(scene, at, all[0]!, all[1]!), ...(none ? { own: true } : {}) }];
  },
};

/** "2/0 and 2-0 are different threads": one size in two spellings. */
function twoSpellings(scene: Scene, [a, b, ...more]: readonly Group[]): Reading | undefined {
  if (!a || !b || more.length > 0 || a.sizes.length !== 1 || !sameSizes(a, b)) return undefined;
  if (a.mentions[0]!.text === b.mentions[0]!.text) return undefined;
  const at = differentWord(scene, a, b);
  if (at >= 0) return { ...reading(scene, at, a, b), denied: true, own: true };
  const same = sameWord(scene, a, b);
  return same < 0 ? undefined : reading(scene, same, a, b);
}

/** "1-0 is a different size from 0", "2/0 and 2-0 are different threads". */
function differentWord({ items }: Scene, a: Group, b: Group): number {
  const later = items.findIndex((item, i) => i > b.to && item.word === 'different');
  const link = items
    .slice(b.to + 1, Math.max(later, 0))
    .filter((item) => !item.deviceNoun)
    .map((item) => item.word)
    .join(' ');
  if (
    later > 0 &&
    /^(?:on \w+ )?(?:, )?(?:they )?are (?:two |quite )?$/.test(`${link} `) &&
    THINGS.test(items[later + 1]?.word ?? '')
  )
    return later;
  const at = items.findIndex((item, i) => i > a.to && i < b.from && item.word === 'different');
  const sized = items.slice(at + 1, at + 3).some((item) => SIZE_WORDS.has(item.word));
  return at >= 0 &&
    sized &&
    items.slice(at + 1, b.from).some((item) => item.word === 'from' || item.word === 'to')
    ? at
    : -1;
}

/** "Pratt 24 = Hegar 8": a bare number before a number with its scale is one of another scale. */
const ofOther = (a: Group, b: Group): boolean =>
  a.sizes[0]!.system === 'hegar' && a.mentions[0]!.notation === 'bare' && b.mentions[0]!.notation !== 'bare';

/** "1-0 and 0 are the same size": a group of two that is set equal. */
function apart(all: readonly Group[]): Group[] {
  const only = all[0];
  if (all.length !== 1 || only?.mentions.length !== 2 || only.to !== only.from + 2) return [...all];
  return only.mentions.map((mention, i) => {
    const at = i === 0 ? only.from : only.to;
    return { from: at, to: at, mentions: [mention], sizes: mention.sizes };
  });
}

const THINGS = /^(?:sizes|threads|sutures|strands|things|diameters|thicknesses|stitches|gauges)$/;

function reading(
  scene: Scene,
  at: number,
  left: Group,
  right: Group,
  axis: Measured['axis'] = 'outer',
): Reading {
  const word: Measured = {
    at,
    to: at,
    axis,
    sign: 1,
    degree: 'plain',
    excess: false,
    idiom: false,
    attributive: false,
  };
  return comparison(scene, 'equative', left, right, word, 'same');
}

function sameWord(scene: Scene, a: Group, b: Group): number {
  const { items } = scene;
  const between = items.slice(a.to + 1, b.from);
  if (OTHER_SAME.test(wordsIn(items, a.from - 5, a.from))) return -1;
  if (A_PART.test(wordsIn(items, a.from - 3, a.from))) return -1;
  const text = between.map((item) => item.word).join(' ');
  // "5-0 stands for five of them and is finer than 2-0": what it stands for is said, and then something else.
  if (between.length <= 12 && SAY.test(text))
    return /\bthan\b|\b(?:and|but|so) (?:is|are|was)\b|\bfor \S+ (?:zeros?|zeroes|noughts?|aughts?|ohs?)\b/.test(
      text,
    )
      ? -1
      : b.from - 1;
  // "two sizes thinner than 2-0 = 4-0": what equals is the whole phrase.
  if (between.length === 1 && between[0]!.word === '=')
    return ofOther(a, b) || items[a.from - 1]?.word === 'than' || reckoned(items, a, b) || countsZeros(items)
      ? -1
      : a.to + 1;
  const at = items.findIndex(
    (item, i) => SAME.has(item.word) && item.word !== '=' && i > a.to && nearSizeWord(items, i),
  );
  if (at < 0) return alike(items, a, b);
  // "…, length and pressure being equal": under which conditions.
  if (items[at - 1]?.word === 'being' && at > b.to) return -1;
  // "with a 20 G and a 22 G alike": with both.
  if (items[at]!.word === 'alike' && items[at - 1]?.kind === 'size') return -1;
  // "2 and 2-0 look alike on the shelf": how they look in print.
  if (LOOKS.test(wordsIn(items, at - 3, at)) && !SIZE_WORDS.has(items[at + 1]?.word ?? '')) return -1;
  if (at > b.to + 6 && !(at <= b.to + 18 && OF_THE_TWO.test(wordsIn(items, at - 6, at)))) return -1;
  // "for 22 G and 24 G alike": what is said holds for both.
  if (items[at]!.word === 'alike' && FOR_BOTH.test(items[a.from - 1]?.word ?? '')) return -1;
  // "000 is the same as 3-0 and thicker than 0000": what is the same stands before the other size.
  if (items.slice(at + 1, b.from).some((item) => item.kind === 'size')) return -1;
  if (OTHER_SAME.test(wordsIn(items, at + 1, at + 5))) return -1;
  return items.slice(a.to + 1, at).some((item) => ITEM_STOPS.has(item.word)) ? -1 : at;
}

const LOOKS = /\b(?:looks?|sounds?|reads?|seems?|appears?|printed|written)\b/;

/** "…, and the two packets hold the same thickness": both are taken up again. */
const OF_THE_TWO =
  /(?:^|[,;] )(?:and |yet |but |so )?(?:the two|both|they|these two)(?: (?:packets|boxes|packs|threads|sutures|drawers|needles|catheters|tubes|sizes|of them))? (?:hold|contain|have|are|carry|give|measure)(?: (?:exactly|just|much))? the$/;

const FOR_BOTH = /^(?:for|in|with|to|on|of|by|from|through)$/;

/** "Count zeros: 2-0 = 2, 4-0 = 4": how many there are. */
const countsZeros = (items: readonly Item[]): boolean =>
  items.some(
    (item, i) =>
      /^count(?:s|ing)?$/.test(item.word) &&
      items.slice(i, i + 4).some(({ system }) => system === 'usp-zeros'),
  );

/** "4 × 6 Fr = 24 Fr", "36 Fr − 9 Fr = 27 Fr": a sum. */
const reckoned = (items: readonly Item[], a: Group, b: Group): boolean =>
  [...items.slice(Math.max(0, a.from - 1), a.to), items[b.to + 1]].some((item) =>
    SUM.test(item?.word ?? ''),
  ) || a.mentions.some((mention) => /[+−×]/.test(mention.text));
const SUM = /^[+−–×*÷/x-]$/;

/** "are equally thick", "no difference in thickness between a 2-0 and a 4-0". */
function alike(items: readonly Item[], a: Group, b: Group): number {
  const equally = items.findIndex((item, i) => i > b.to && i - b.to <= 5 && item.word === 'equally');
  const magnitude = items[equally + 1]?.magnitude;
  if (equally > 0 && magnitude?.degree === 'plain' && decidable(magnitude.axis)) return equally;
  const none = items.findIndex((item, i) => item.word === 'difference' && items[i - 1]?.word === 'no');
  const noun = items[none + 2]?.axisNoun;
  const between = items[none + 3]?.word === 'between' && a.from - none <= 6;
  return none > 0 && noun && decidable(noun.axis) && between ? none : -1;
}

const wordsIn = (items: readonly Item[], from: number, to: number): string =>
  items
    .slice(Math.max(0, from), Math.max(0, to))
    .map((item) => item.word)
    .join(' ');

/** "of equal length", "in the trial 20 G = 18 G": alike in something else. */
const OTHER_SAME =
  /\b(?:lengths?|prices?|costs?|age|colou?r|maker|make|make-up|weight|pressure|trials?|study|studies|rates?|outcomes?|quality|risks?|pain|comfort|success|scars?|results?|safety|speed|stock)\b/;
/** "Half a 24 Fr equals a 12 Fr". */
const A_PART = /\b(?:half|twice|double|third|quarter|times)(?: of)?(?: an?| the)?$/;
const ITEM_STOPS = new Set([';', 'but', 'than', 'from', 'with', 'through', 'for']);
const nearSizeWord = (items: readonly Item[], i: number) =>
  items[i]!.word !== 'same' ||
  (items[i + 1]?.word === 'as' && items.slice(i + 2, i + 4).some((item) => item.kind === 'size')) ||
  items
    .slice(Math.max(0, i - 3), i)
    .map((item) => item.word)
    .join(' ') === 'one and the' ||
  items.slice(i + 1, i + 3).some((item) => SIZE_WORDS.has(item.word));

/** "two thirds as wide as", "80 % as wide as". */
const PART = /^(?:thirds?|quarters?|fifths?|tenths?|%|per cent|percent|cent)$/;

const FACTOR = /^(?:twice|half|times|double|thrice)$/;

/** Degrees that make "as … as" say less than "the same". */
const NEARLY = new Set([
  'twice',
  'half',
  'times',
  'nearly',
  'almost',
  'nowhere',
  'anything',
  'something',
  'nothing',
  'size',
]);
const NOT = /^(?:not|never|hardly|neither|nor|nowhere|.+n't)$/;

/** "Blood runs as fast through a 16 G as through a 22 G": each size behind its own "as". */
function spread(scene: Scene, all: readonly Group[]): Reading[] {
  const { items } = scene;
  const at = items.findIndex((item, i) => item.word === 'as' && WAY.test(items[i + 2]?.word ?? ''));
  const magnitude = items[at + 1]?.magnitude;
  const [left, right] = all.filter((g) => g.from > at);
  if (
    at < 0 ||
    !left ||
    !right ||
    all.length !== 2 ||
    magnitude?.degree !== 'plain' ||
    magnitude.axis !== 'flow'
  )
    return [];
  const link = items
    .slice(left.to + 1, right.from)
    .map((item) => item.word)
    .join(' ');
  if (
    !sameSystem(left, right) ||
    left.from - at > 4 ||
    !/^as(?: (?:through|down|via|with|by))?(?: (?:an?|the))?$/.test(link)
  )
    return [];
  if (items.some((item) => RUN.test(item.word)) || NEARLY.has(items[at - 1]?.word ?? '')) return [];
  const denied = items.slice(Math.max(0, at - 5), at).some((item) => NOT.test(item.word));
  return [denied ? below(scene, at + 1, left, right, magnitude) : reading(scene, at + 1, left, right)];
}
const WAY = /^(?:through|down|via|with|by)$/;

/** "A is as thick as B"; "A is not as thick as B" puts A below; "at least as thick" denies that it is thinner. */
function asAs(scene: Scene, all: readonly Group[]): Reading[] {
  const { items } = scene;
  for (let i = 0; i + 2 < items.length; i++) {
    if ((items[i]!.word !== 'as' && items[i]!.word !== 'so') || items[i + 2]!.word !== 'as') continue;
    const magnitude = flowsWell(items, i + 1) ?? items[i + 1]!.magnitude;
    if (magnitude?.degree !== 'plain' || !decidable(magnitude.axis)) continue;
    // "They come as thin as 2 Fr and as thick as 7 Fr": two ends, not one like the other.
    if (items[i - 1]?.word === 'and' && items.slice(0, i - 1).filter(({ word }) => word === 'as').length > 1)
      continue;
    // "A thin-wall 18 G has a bore as wide as …".
    if (items.some((item) => WALL.test(item.word))) continue;
    // "A short 18 G runs as fast as a long 16 G": the length matters too; so may what a trial found.
    if (magnitude.axis === 'flow' && items.some((item) => RUN.test(item.word))) continue;
    const before = all.filter((g) => g.to < i);
    const right = all.find((g) => g.from > i + 2 && g.from <= i + 6);
    const left = before.at(-1);
    if (!left || !right || !sameSystem(left, right)) continue;
    if (together(items, left) !== together(items, right)) continue;
    // "take the 22 G; nothing runs as quick as a 14 G": said of no size named.
    if (items.slice(left.to + 1, i).some(({ word }) => /^(?:nothing|nobody|none)$/.test(word))) continue;
    const degree = items[i - 1]?.word ?? '';
    // "is not twice as wide as" may still be wider.
    if (FACTOR.test(degree) || PART.test(degree)) continue;
    if (isDenied(items, i, left))
      return [below(scene, i + 1, neither(items, before, left, i), right, magnitude)];
    if (items[i]!.word === 'so' || NEARLY.has(degree)) continue;
    if (degree === 'least' && items[i - 2]?.word === 'at')
      return [notUnder(scene, i + 1, left, right, magnitude)];
    return [reading(scene, i + 1, left, right, magnitude.axis === 'strength' ? 'strength' : 'outer')];
  }
  return spread(scene, all);
}

const WALL = /^(?:(?:ultra-?|extra-?)?thin-wall(?:ed)?|walls?|walled)$/;
const RUN =
  /^(?:trials?|study|studies|randomi[sz]ed|series|short|shorter|long|longer|lumens?|pressure|pressurised|pressurized)$/;

/** "does not flow as well as". */
const flowsWell = (items: readonly Item[], at: number): Magnitude | undefined =>
  items[at]!.word === 'well' &&
  items
    .slice(Math.max(0, at - 4), at)
    .some((item) => /^(?:flows?|runs?|drains?|drips?|infuses?)$/.test(item.word)) &&
  // "drains air as well as": how good it is at that.
  !items
    .slice(Math.max(0, at - 4), at)
    .some((item) => /^(?:air|pus|it|effusions?|abscess(?:es)?)$/.test(item.word))
    ? { axis: 'flow', sign: 1, degree: 'plain' }
    : undefined;

/** A negation between the size and its "as". */
const isDenied = (items: readonly Item[], i: number, left: Group): boolean => {
  const between = items.slice(left.to + 1, i).slice(-5);
  const stop = between.findLastIndex((item) => item.kind === 'punctuation');
  return (
    between.slice(stop + 1).some((item) => NOT.test(item.word)) ||
    items[left.from - 1]?.word === 'no' ||
    items
      .slice(Math.max(0, left.from - 5), left.from)
      .some((item) => item.word === 'neither' || item.word === 'nor')
  );
};

/** "Neither the 18 G nor the 20 G": both are meant. */
function neither(items: readonly Item[], before: readonly Group[], left: Group, at: number): Group {
  const first = before.at(-2);
  if (!first || !sameSystem(first, left)) return left;
  if (!items.slice(0, at).some((item) => item.word === 'neither')) return left;
  return {
    from: first.from,
    to: left.to,
    mentions: [...first.mentions, ...left.mentions],
    sizes: [...first.sizes, ...left.sizes],
  };
}

const worded = (at: number, { axis, sign }: Magnitude): Measured => compares(at, axis, sign);

/** "not as wide as": less of what the word measures. */
function below(scene: Scene, at: number, left: Group, right: Group, magnitude: Magnitude): Reading {
  const word = worded(at, magnitude);
  const relation = magnitude.sign === 1 ? 'less' : 'more';
  return { ...wordless(comparison(scene, 'equative', left, right, word, relation)), own: true };
}

/** "at least as thick as": that it is thinner is denied. */
function notUnder(scene: Scene, at: number, left: Group, right: Group, magnitude: Magnitude): Reading {
  return { ...below(scene, at, left, right, magnitude), denied: true };
}
