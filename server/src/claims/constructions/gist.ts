/**
 * A size and what it is said to measure, whatever everyday words stand between: "we put a 28 Fr in the fifth space; that is
 * 28 mm of tube", "the one in bed 3 is a 24 Fr. That is very nearly 12 mm of plastic". Read only when one size and one
 * measure are there to be paired, no word between them denies, compares or brings in another thing, and something says that
 * the measure is the size's: a word for what is measured across, a verb that sets them equal, or a number that is a usual slip.
 */
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { withFigures } from '../text/lengths.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { changed } from '../text/place.ts';
import { distinct, type Group, groups, type Scene, sameSizes } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import { ACROSS, OPERATORS, OWNERS, SETS, SIDES, STUFF } from '../words/gist.ts';
import { equate, longEnough } from './equate.ts';
import { countedAnew, opensTerm } from './equivalence.ts';
import {
  closes,
  LIGHT,
  neutral,
  ofStuff,
  ownedElsewhere,
  roundAbout,
  subjectOf,
  tail,
} from './measure-owner.ts';
import type { Construction, Reading } from './model.ts';
import { asOne } from './resumed.ts';
import { crossedLength, second } from './set-apart.ts';
import { slip } from './slips.ts';
import { sums, sumsIn } from './sums.ts';

export const gist: Construction = {
  id: 'gist',
  leaning: true,
  needs: () => [{ holds: ['mixed'] }, { holds: ['length'] }, { like: UNIT }, { sizes: 1, like: TAKES_UP }],
  read(scene) {
    if (scene.sentence.close === '?' || mended(scene) || sums.read(scene).length > 0) return [];
    const measured = withFigures(scene.items);
    const row = changed(scene, { items: measured.items });
    const own = pairsOf(groups(row.items));
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

/** A length that is written out. */
const UNIT = /^(?:\d+(?:[.,]\d+)?)?(?:[mc]m|(?:mill|cent)imet(?:re|er)s?)$/;
/** Takes up what was measured in the sentence before. */
const TAKES_UP = /^(?:makes?|call|so|therefore|hence|sold|labelled|order|french|ask|write|that's|it's)$/;

type Kind = 'length' | 'inch' | 'wire-inch' | 'metric' | 'usp' | 'named';
const KINDS: ReadonlyMap<string, Kind> = new Map([
  ['millimetre', 'length'],
  ['inch', 'inch'],
  ['wire-inch', 'wire-inch'],
  ['ep-metric', 'metric'],
  ['usp', 'usp'],
  ['french', 'named'],
  ['needle-gauge', 'named'],
] as const);
const kindOf = (group: Group): Kind | undefined => KINDS.get(group.sizes[0]!.system);

/** Kinds of which one tells the other. */
const TELLS: ReadonlySet<string> = new Set([
  'named length',
  'usp length',
  'metric length',
  'wire-inch length',
  'inch length',
  'usp metric',
  'named inch',
]);
const tells = (a: Group, b: Group): boolean => {
  const [x, y] = [kindOf(a), kindOf(b)];
  return TELLS.has(`${x} ${y}`) || TELLS.has(`${y} ${x}`);
};

const LENGTHS: ReadonlySet<Kind> = new Set(['length', 'inch', 'wire-inch'] as const);

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
  const whole = items.slice(left.to + 1, right.from);
  const resumed = resumedAt(whole);
  const between = whole.slice(resumed);
  if (
    whole.length > REACH ||
    between.some((item, i) => stops(between, i, item) && !excused(left, right, item.word))
  )
    return [];
  if (resumed > 0 && !keepsTo(items, right, whole.slice(0, resumed))) return [];
  if (passedBy(items, left) || apart(scene, left, right) || !plausible(left, right, items)) return [];
  if (PART_OF.test(textOf(between))) return [];
  if (countedAnew(scene, left, right) || opensTerm(scene, right)) return [];
  if (!twoNumbers(left, right) && ownedElsewhere(items, between, left, right)) return [];
  const told = (speaksFor(items, left, right) ? equate(scene, left, right) : []).map((one) =>
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
        (/^(?:[,;:—–]|and|so|but|or|at|on|with|of)$/.test(between[i - 1]!.word) ||
          COMES_TO.test(joined(between, i + 1, i + 3)))) ||
        (word === 'at' && between[i - 1]!.word === ',')),
  );
  return Math.max(last + 1, asideOf(between));
}
const COMES_TO = /^(?:makes|gives|comes|works|amounts|converts|translates|equals|measures|boils)\b/;

/** ", being finest of the lot, is": where the clause goes on behind what is said aside. */
function asideOf(between: readonly Item[]): number {
  if (between[0]?.word !== ',') return 0;
  const close = between.findIndex(({ word }, i) => i > 1 && word === ',');
  return close > 0 &&
    /^(?:is|are|was|measures?|comes?|makes?|equals?|means?)$/.test(between[close + 1]?.word ?? '')
    ? close + 1
    : 0;
}

const joinedTwo = (between: readonly Item[], i: number): string =>
  `${between[i + 1]?.word} ${between[i + 2]?.word}`;

/** What is passed over may bring in no other thing, unless the measure tells by itself whose it is. */
function keepsTo(items: readonly Item[], right: Group, skipped: readonly Item[]): boolean {
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
      OWNERS.test(word) || THROUGH.test(word) || (deviceNoun === true && i > 1 && !apposed),
  );
}
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

const CONTRAST = /^(?:not|never|no|than|unlike|instead|rather|if|unless|without|\w+n't)$/;
const THROUGH = /^(?:through|into|inside|over|via|onto|past|takes?|fits?|accepts?)$/;

/** "just over 6 mm", "comes up to"? No: an operator right where it only rounds is none. */
function stops(between: readonly Item[], i: number, { word, magnitude }: Item): boolean {
  if (magnitude?.degree === 'comparative' || magnitude?.degree === 'superlative') return true;
  if (word === 'and')
    return !/^(?:that|it|this|is|measures|comes|works|which|so|underneath|below|under|on|you|,|then|both|therefore|would|gives|makes|means|the|what|found|finds|find|got|read|reads)$/.test(
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
  if (word === 'or') return i < between.length - 3;
  if (word === '.') return false;
  return OPERATORS.test(word);
}

/** "through a 12 Fr", "wider than a 12 Fr": the size is not what is measured. */
const passedBy = (items: readonly Item[], left: Group): boolean =>
  STEPPED.test(joined(items, Math.max(0, left.from - 6), left.from)) ||
  items
    .slice(Math.max(0, left.from - 2), left.from)
    .some(({ word }) =>
      /^(?:than|unlike|through|into|inside|via|onto|past|fits?|takes|accepts|passes|like|to)$/.test(word),
    );

/** "a good fifth of a millimetre": a part of what stands there. */
const PART_OF = /\b(?:half|thirds?|quarters?|fifths?|tenths?|hundredths?|fraction|part) of$/;
const STEPPED = /\b(?:steps?|difference|each|every|gap|per)\b[^,]*$/;

/** Sums, pairs of a cross and lengths along are told elsewhere. */
const apart = ({ items }: Scene, left: Group, right: Group): boolean =>
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
function plausible(left: Group, right: Group, items: readonly Item[]): boolean {
  const pair = [left, right];
  if (pair.some(({ sizes, mentions }) => sizes.length !== 1 || mentions[0]!.bound)) return sized(left, right);
  const length = pair.find((g) => kindOf(g) === 'length' || kindOf(g) === 'inch');
  const named = pair.find((g) => g !== length)!;
  if (!length) return true;
  const across = near(items, left, right).some(({ word }) => ACROSS.test(word));
  if (/\bcm\b|cent/i.test(length.mentions[0]!.text) && !across) return false;
  const mm = length.sizes[0]!.value * (kindOf(length) === 'inch' ? 25.4 : 1);
  if (kindOf(named) === 'inch') return true;
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
const near = (items: readonly Item[], left: Group, right: Group): readonly Item[] => [
  ...items.slice(Math.max(0, left.from - 4), left.from),
  ...items.slice(left.to + 1, right.from),
  ...tail(items, right),
];

/** Does something say that the measure is the size's? */
function speaksFor(items: readonly Item[], left: Group, right: Group): boolean {
  const words = near(items, left, right);
  const between = textOf(items.slice(left.to + 1, right.from));
  if (words.some(({ word }) => ACROSS.test(word)) || SIDES.test(textOf(words))) return true;
  const after = joined(items, right.to + 1, right.to + 4).split(' ');
  if (after[0] === 'of' && after.slice(1).some((word) => STUFF.test(word))) return true;
  if (SETS.test(between) || (AT.test(between) && near3(left, right))) return true;
  return twoNumbers(left, right)
    ? !TWO_THREADS.test(between) && items[right.to + 1]?.deviceNoun !== true
    : slip(left, right);
}

/** "which at 14 mm", ", at 3.6 mm": a measure by the way, of no more than three times what the French makes, or a third. */
const AT =
  /(?:^|[ ,])(?:which|it|that|this|,) ?,? at(?: (?:about|around|roughly|nearly|some|only|just|almost|a|good|full|mere))*$/;
function near3(left: Group, right: Group): boolean {
  const [french, mm] = [left.sizes[0]!, right.sizes[0]!];
  const ratio = (3 * mm.value) / french.value;
  return french.system === 'french' && mm.system === 'millimetre' && ratio > 1 / 3 && ratio < 3.1;
}

/** The two numbers of one thread, and words between them that bring in another. */
const twoNumbers = (left: Group, right: Group): boolean =>
  [left, right].some((g) => kindOf(g) === 'metric') && [left, right].some((g) => kindOf(g) === 'usp');
const TWO_THREADS =
  /\b(?:and|or|then|first|from|to|for)\b(?! (?:it|that|underneath|below|on) )|(?:^|,)(?: the| an?| our)$|^,$/;

const BACK = 2;
/** The measure of the one size spoken of before, or the size that the measure told before comes to. */
function carried(scene: Scene): Reading[] {
  const { items } = scene;
  const [right, ...more] = groups(items);
  if (!right || more.length > 0 || right.mentions.length > 1 || right.sizes.length > 1) return [];
  const kind = kindOf(right);
  if (!kind || !takesUp(items, right)) return [];
  // A size after its measure is told by a word for that: "the catheter is a 15 Fr" begins anew.
  if (!LENGTHS.has(kind) && !items.some(({ word }) => TAKES_UP.test(word) || UNIT.test(word))) return [];
  for (const previous of earlier(scene)) {
    const held = withFigures(previous.items).items;
    const all = distinct(groups(held));
    if (all.length === 0) continue;
    const fits = all.filter((g) => tells(g, right) || sameSizes(g, right));
    const left = fits[0] && endOf(fits[0], items, right);
    if (
      fits.length !== 1 ||
      !left ||
      !tells(left, right) ||
      left.mentions.length > 1 ||
      left.sizes.length > 1
    )
      return [];
    if (all.some((g) => g !== fits[0] && g.sizes[0]!.system === left.sizes[0]!.system)) return [];
    return joinedPair(scene, previous, held, left, right);
  }
  return [];
}

/** "8 to 12 Fr. The narrowest of them is …": the end that is meant of a range or a list. */
function endOf(group: Group, items: readonly Item[], right: Group): Group {
  const words = measuredWords(items).filter(({ degree, at }) => degree === 'superlative' && at < right.from);
  const [word] = words;
  if (!word || words.length > 1 || word.axis !== 'outer' || group.sizes[0]!.system !== 'french') return group;
  const sorted = group.sizes.toSorted((a, b) => word.sign * (b.value - a.value));
  return { ...group, sizes: sorted.slice(0, 1), mentions: group.mentions.slice(0, 1) };
}

/** Sentences before, nearest first; for the first of a passage the one that leads to it. */
const earlier = (scene: Scene): readonly Sentence[] =>
  (scene.before.length > 0 ? scene.before.slice(-BACK) : scene.context.slice(-1)).toReversed();

/** The sentence speaks of what was spoken of: a pronoun or the bare device before the size, or nothing but its measure. */
function takesUp(items: readonly Item[], right: Group): boolean {
  const lead = items.slice(0, right.from);
  const from = lead.findLastIndex(({ word }) => /^(?:it|that|this|which)$/.test(word));
  const words = lead.slice(Math.max(0, from)).filter(({ kind }) => kind === 'word');
  const end = ONE_END.test(textOf(words));
  if (words.some((item, i) => (stops(words, i, item) && !(end && i === 1)) || OWNERS.test(item.word)))
    return false;
  if (words.length > 12) return false;
  const text = ` ${textOf(words)} `;
  return (
    end ||
    PRONOUN.test(text) ||
    CONCLUDES.test(text) ||
    words.every(
      ({ word }) => LIGHT.test(word) || /^(?:so|and|then|yes|right|that|is|in|millimetres|a|an)$/.test(word),
    )
  );
}
/** "The narrowest of them", "the widest one". */
const ONE_END =
  /^the [a-z]+est (?:(?:one|ones|tube|catheter|drain|size|line|pigtail|stent|sound|dilator)s? )?(?:(?:of|among|in|on) (?:them|these|those|the|that|this|our) (?:\w+ )?)?(?:is|are|measures?|comes|works|has|makes)\b/;
const CONCLUDES =
  /^ (?:so|then|therefore|hence|which) .*(?:order|ordered|ask|asked|write|wrote|call|called|chart|charted|book|booked|label|labelled|makes?|need|want|have|is|sold|go|went) /;
const PRONOUN =
  / (?:it|that|this|which|that's|it's|its|that'll|it'll|(?:the|that|this) (?:tube|catheter|drain|line|needle|cannula|wire|thread|suture|thing|same|lot|latter|outside|diameter|width|one)) /;

function joinedPair(
  scene: Scene,
  previous: Sentence,
  held: readonly Item[],
  left: Group,
  right: Group,
): Reading[] {
  const { items } = scene;
  if (!plausible(left, right, items) || right.mentions[0]!.bound) return [];
  const lead = textOf(items.slice(0, right.from));
  const length = kindOf(right) === 'length' || kindOf(right) === 'inch';
  const after = tail(items, right);
  const measured =
    [...items.slice(0, right.from), ...after].some(({ word }) => ACROSS.test(word)) ||
    SIDES.test(textOf(after)) ||
    (after[0]?.word === 'of' && after.some(({ word }) => STUFF.test(word)));
  const told = length
    ? measured || SETS.test(lead) || slip(left, right)
    : SETS.test(lead) || CONCLUDES.test(` ${lead} `);
  if (
    !told ||
    (items[right.to + 1] && !closes(items, right)) ||
    (!ofStuff(items, right) && after.some(({ word }) => OWNERS.test(word)))
  )
    return [];
  if (previous.close === '?' && length && right.from > 4) return [];
  const subject = subjectOf(items.slice(0, right.from));
  if (subject && !neutral(subject)) return [];
  if (!length && !previousMeasures(held, left)) return [];
  return passedBy(held, left) ? [] : asOne(scene, held, left, right, apart);
}

/** The length of the sentence before is a thing's width. */
const previousMeasures = (held: readonly Item[], left: Group): boolean => {
  const words = [...held.slice(Math.max(0, left.from - 6), left.from), ...tail(held, left)];
  return words.some(({ word }) => ACROSS.test(word)) && !words.some(({ word }) => OWNERS.test(word));
};
