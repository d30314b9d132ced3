/**
 * A size and what it is said to measure, whatever everyday words stand between: "we put a 28 Fr in the fifth space; that is
 * 28 mm of tube", "the one in bed 3 is a 24 Fr. That is very nearly 12 mm of plastic". Read only when one size and one
 * measure are there to be paired, no word between them denies, compares or brings in another thing, and something says that
 * the measure is the size's: a word for what is measured across, a verb that sets them equal, or a number that is a usual slip.
 */
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { withFigures } from '../text/lengths.ts';
import { changed } from '../text/place.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { ACROSS, OWNERS, SETS, SIDES, STUFF } from '../words/gist.ts';
import { carried, FILLS, NUMBERS, TAKES_UP, UNIT } from './carried.ts';
import { asPacked, withCrosses } from './crossed.ts';
import { equate } from './equate.ts';
import { countedAnew } from './equivalence.ts';
import {
  apart,
  CONTRAST,
  kindOf,
  near,
  PART_OF,
  passedBy,
  plausible,
  stops,
  TWO_THREADS,
  tells,
  twoNumbers,
} from './gist-pair.ts';
import { ofStuff, ownedElsewhere, roundAbout } from './measure-owner.ts';
import type { Construction, Reading } from './model.ts';
import { opensTerm } from './set-apart.ts';
import { slip } from './slips.ts';
import { sums } from './sums.ts';

export const gist: Construction = {
  id: 'gist',
  leaning: true,
  needs: () => [
    { holds: ['mixed'] },
    { holds: ['length'] },
    { like: UNIT },
    { sizes: 1, like: TAKES_UP },
    { sizes: 1, like: NUMBERS },
  ],
  read(scene) {
    if (scene.sentence.close === '?' || mended(scene) || sums.read(scene).length > 0) return [];
    const measured = withFigures(scene.items);
    const row = changed(scene, { items: measured.items });
    const own = pairsOf(withCrosses(row.items, groups(row.items)));
    const found = own.length > 0 ? own.flatMap(([a, b]) => readPair(row, a, b)) : carried(row);
    return found.map((reading) => ({
      ...reading,
      at: measured.at[reading.at]!,
      from: measured.at[reading.from]!,
      to: measured.at[reading.to]!,
    }));
  },
};

/** "I had the 5 Fr down as 5 mm. It is 1.67 mm.": the next sentence puts it right. */
function mended(scene: Scene): boolean {
  const next = scene.after[0]?.items;
  return (
    next !== undefined &&
    next.length <= 12 &&
    /^(?:it|that|they|this|make|read|no|correct|in|really|actually)\b/.test(next[0]?.word ?? '') &&
    groups(withFigures(next).items).some((g) => kindOf(g) === 'length') &&
    groups(withFigures(scene.items).items).some((g) => kindOf(g) === 'length')
  );
}

const MOST_PAIRS = 4;

/** The sizes of a sentence in twos, when there is one way to pair them: each with its neighbour, all in the same order. */
function pairsOf(all: readonly Group[]): readonly (readonly [Group, Group])[] {
  const plain = all.filter(({ mentions }) => mentions.length === 1);
  if (plain.length !== all.length || all.length % 2 > 0 || all.length > 2 * MOST_PAIRS) return [];
  const pairs = all.flatMap((a, i) => (i % 2 === 0 ? [[a, all[i + 1]!] as const] : []));
  const [first] = pairs;
  if (!first || !pairs.every(([a, b]) => tells(a, b))) return [];
  const order = ([a, b]: readonly [Group, Group]) => `${kindOf(a)} ${kindOf(b)}`;
  return pairs.every((pair) => order(pair) === order(first)) ? pairs : [];
}

/** Words between, at most. */
const REACH = 26;

/** "If you lay a 30 Fr beside a ruler": how it is measured, no condition. */
const LAID = /^(?:if|when) (?:you|we) (?:lay|hold|measure|put|set|place)$/;

function readPair(scene: Scene, left: Group, right: Group): Reading[] {
  const { items } = scene;
  if (listedBeside(items, left, right))
    return plausible(left, right, items) && !apart(scene, left, right) ? equate(scene, left, right) : [];
  const whole = items.slice(left.to + 1, right.from);
  const resumed = resumedAt(whole);
  const between = whole.slice(resumed);
  if (
    whole.length > REACH ||
    between.some((item, i) => stops(between, i, item) && !excused(left, right, item.word))
  )
    return [];
  const fills = FILLS.test(textOf(between));
  if (resumed > 0 && !keepsTo(items, right, whole.slice(0, resumed), fills)) return [];
  if (passedBy(items, left) || apart(scene, left, right) || !plausible(left, right, items)) return [];
  if (PART_OF.test(textOf(between))) return [];
  if (countedAnew(scene, left, right) || opensTerm(scene, right)) return [];
  const packed = asPacked(scene, left, right) && toldAs(items, between, left, right);
  if (!packed && !twoNumbers(left, right) && ownedElsewhere(items, between, left, right)) return [];
  const told = (packed || speaksFor(items, left, right) ? equate(scene, left, right) : []).map((one) =>
    roundAbout(items, right) && one.claim.kind === 'equivalence'
      ? { ...one, claim: { ...one.claim, axis: 'around' as const } }
      : one,
  );
  // "if you do the sum, you get": no condition.
  return whole.some(({ word }) => word === 'if') || LAID.test(joined(items, 0, 3))
    ? told.map((one) => ({ ...one, unconditional: true }))
    : told;
}

/**
 * "…, and that is", "…, so it measures", "… and you are looking at something", "… still unsure that makes", "…, at": where the
 * thing is taken up again, behind what is said of it.
 */
function resumedAt(between: readonly Item[]): number {
  const last = between.findLastIndex(
    ({ word }, i) =>
      i > 0 &&
      ((/^(?:it|that|this|which|you|something|anything)$/.test(word) &&
        (/^(?:[,;:—–]|and|so|but|or|at|on|with|of|since|because)$/.test(between[i - 1]!.word) ||
          COMES_TO.test(joined(between, i + 1, i + 3)))) ||
        (word === 'at' && between[i - 1]!.word === ',')),
  );
  return Math.max(last + 1, asideOf(between));
}
const COMES_TO = /^(?:makes|gives|comes|works|amounts|converts|translates|equals|measures|boils)\b/;

/** ", being finest of the lot, is": where the clause goes on behind what is said aside. */
function asideOf(between: readonly Item[]): number {
  // "a 4-0 chromic gut, being a step thicker, is".
  const open = between.findIndex(({ word }) => !THREAD.test(word));
  if (between[open]?.word !== ',' || open > 2) return 0;
  const close = between.findIndex(({ word }, i) => i > open + 1 && word === ',');
  return close > 0 &&
    /^(?:is|are|was|measures?|comes?|makes?|equals?|means?)$/.test(between[close + 1]?.word ?? '')
    ? close + 1
    : 0;
}

const THREAD = /^(?:chromic|plain|catgut|gut|silk|nylon|poly[a-z]+)$/;

/** What is passed over may bring in no other thing, unless the measure tells by itself whose it is. */
function keepsTo(items: readonly Item[], right: Group, skipped: readonly Item[], fills: boolean): boolean {
  if (
    skipped.some(
      (item, i) =>
        item.kind === 'size' ||
        (CONTRAST.test(item.word) &&
          stops(skipped, i, item) &&
          !(item.word === 'than' && ALL_OTHERS.test(joined(skipped, i + 1, i + 4)))),
    )
  )
    return false;
  if (ofStuff(items, right)) return true;
  // ", the biggest drain on the tray,": the thing itself.
  const apposed = APPOSED.test(joined(skipped, 0, 3));
  return !skipped.some(
    ({ word, deviceNoun }, i) =>
      (OWNERS.test(word) && !(fills && !isSubject(skipped, i))) ||
      THROUGH.test(word) ||
      (deviceNoun === true && i > 1 && !apposed),
  );
}
/** "a vein that is wide", "the vein is wide": spoken of itself. */
const isSubject = (items: readonly Item[], i: number): boolean =>
  /^(?:is|are|was|were|looks?|has|have)\b/.test(joined(items, i + 1, i + 3).replace(/^(?:that|which) /, ''));
const APPOSED = /^, (?:the|our|my|your|an?) [a-z]+(?:est|st)\b/;
/** "narrower than both": of nothing that could be so wide itself. */
const ALL_OTHERS = /^(?:both|all|any|either|most|them|those|the (?:others?|rest|two|lot))\b/;
/** What stops other pairs and not this one: a length told of two lengths, a list or a line that names one thread twice. */
const excused = (left: Group, right: Group, word: string): boolean =>
  (twoLengths(left, right) && ALONG.test(word)) || (twoNumbers(left, right) && LISTED.test(word));
const LISTED =
  /^(?:into|under|below|above|along|beside|inside|marks?|marked|next|per|up|;|:|margins?|edges?|tips?)$/;

/** An inch and a millimetre may both be told of a length. */
const twoLengths = (left: Group, right: Group): boolean =>
  [left, right].some((g) => kindOf(g) === 'inch') && [left, right].some((g) => kindOf(g) === 'length');
const ALONG = /^(?:long|length)$/;

const THROUGH = /^(?:through|into|inside|over|via|onto|past|takes?|fits?|accepts?)$/;

/** Does something say that the measure is the size's? */
function speaksFor(items: readonly Item[], left: Group, right: Group): boolean {
  const words = near(items, left, right);
  const between = textOf(items.slice(left.to + 1, right.from));
  if (words.some(({ word }) => ACROSS.test(word)) || SIDES.test(textOf(words))) return true;
  const after = joined(items, right.to + 1, right.to + 4).split(' ');
  // "goes in 1 inch, so 40 mm of needle": no two names of one length.
  if (after[0] === 'of' && after.slice(1).some((word) => STUFF.test(word))) return !twoLengths(left, right);
  if (twoLengths(left, right) && toldAgain(items, between, right)) return true;
  if (SETS.test(between) || (AT.test(between) && near3(left, right))) return true;
  return twoNumbers(left, right)
    ? !TWO_THREADS.test(between) && items[right.to + 1]?.deviceNoun !== true
    : slip(left, right);
}

/** "…, labelled 0.5 × 16 mm", "(0.6 × 25 mm)", "needle 21 G, 0.8 × 40 mm": the figures are those of the gauge. */
const toldAs = (items: readonly Item[], between: readonly Item[], left: Group, right: Group): boolean =>
  (between.every(({ word }) => word === ',') && items.some(({ word }) => word === 'needle')) ||
  TOLD_AS.test(textOf(between)) ||
  (CROSS_FIRST.test(textOf(between)) && right.sizes[0]!.system === 'needle-gauge' && left !== right);
const TOLD_AS =
  /(?:^| )(?:as|reads?|says?|labell?ed|marked|printed|listed|called|calls(?: it)?|is|that's|it's|has|shows?|gives?|on it|find|[(:=])(?: an?| the)?$/;
const CROSS_FIRST = /(?:^| )(?:is|means|makes|that's|it's|for|[(=])(?: an?| the| our)?$/;

/** "18 G, pink hub, 1.2 mm: a card that names a needle by its gauge, its colour and its width. */
function listedBeside(items: readonly Item[], left: Group, right: Group): boolean {
  const between = items.slice(left.to + 1, right.from);
  const end = items[right.to + 1];
  return (
    kindOf(left) === 'named' &&
    kindOf(right) === 'length' &&
    between.length <= 7 &&
    /^[,(]$/.test(between[0]?.word ?? '') &&
    between.at(-1)?.word === ',' &&
    between.some(({ colour }) => colour !== undefined) &&
    between.every(({ word, colour }) => colour !== undefined || HUB.test(word)) &&
    (end === undefined || end.kind === 'punctuation' || ACROSS.test(end.word))
  );
}
const HUB =
  /^(?:[,()]|hub|hubbed|hubs|cap|funnel|connector|coded|code|colou?r|coloured|colored|light|dark|pale|deep|bright|the|with|an?|one)$/;

/** "the 1 inch needle, so 25 mm if the box is metric", "the half-inch needle, 13 mm for those who think in metric". */
const toldAgain = (items: readonly Item[], between: string, right: Group): boolean =>
  SO.test(between) ||
  (/(?:^|[a-z] ),$/.test(between) && FOR_METRIC.test(joined(items, right.to + 1, right.to + 6)));
const SO =
  /^(?:long )?(?:[a-z-]+ )?(?:needle|needles|cannula|one|ones|version) , (?:so|or|that is|i\.e|hence|therefore|meaning)(?: (?:about|roughly|around|nearly))?$/;
const FOR_METRIC =
  /^(?:for (?:those|people|anyone|everyone|the|you|us) (?:\S+ ){0,3}metric|for (?:those|people|anyone|everyone) (?:who|in|on|used)|if (?:you|your|the) |in (?:the )?(?:metric|european)|metric|on (?:a|the|your) (?:metric|european))/;

/** "which at 14 mm, ", at 3.6 mm: a measure by the way, of no more than three times what the French makes, or a third. */
const AT =
  /(?:^|[ ,])(?:which|it|that|this|,) ?,? at(?: (?:about|around|roughly|nearly|some|only|just|almost|a|good|full|mere))*$/;
function near3(left: Group, right: Group): boolean {
  const [french, mm] = [left.sizes[0]!, right.sizes[0]!];
  const ratio = (3 * mm.value) / french.value;
  return french.system === 'french' && mm.system === 'millimetre' && ratio > 1 / 3 && ratio < 3.1;
}
