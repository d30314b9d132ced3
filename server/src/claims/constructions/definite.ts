/**
 * A comparing word said of one of two sizes without "than": "the thicker wire of the pair", "whose larger bore", "the 25 G is
 * the one that punches the wider hole", "an 18 G slows it; a 22 G is slower still".
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Measured } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes } from '../text/scene.ts';
import { callsByZero } from './by-zero.ts';
import type { Reading } from './model.ts';
import { againstPrevious, beforeSize, both, emit, ofTwo } from './of-two.ts';
import { groundAfter } from './reason.ts';

/** "the thicker wire of the pair", "whose larger bore", "the 25 G is the one that punches the wider hole". */
export function definite(scene: Scene, word: Measured, all: readonly Group[]): Reading[] {
  const { items } = scene;
  if (callsByZero(items) || turnedTo(items, word) || ofPlace(items, word) || gives(items, word)) return [];
  const article = items[word.at - (items[word.at - 1]?.word === 'next' && !word.attributive ? 2 : 1)]?.word;
  const whose = items.slice(Math.max(0, word.at - 2), word.at).some((item) => item.word === 'whose');
  const still =
    items.slice(word.at, word.at + 4).some((item) => STILL.has(item.word)) || STILL.has(article ?? '');
  const ofSet = items.slice(word.to + 1, word.to + 5).some((item) => OF_SET.has(item.word));
  const behind = appended(items, word);
  const ahead = all.filter((g) => g.to < word.at).at(-1);
  if (behind)
    return ahead ? emit(scene, 'definite', behind, ahead, word) : againstPrevious(scene, behind, word);
  const chosen = ofTwo(scene, word) ?? beforeSize(scene, word, all);
  if (chosen) return chosen;
  const turned = inverted(items, word);
  if (turned) return againstPrevious(scene, turned, word);
  const nearest = groups(items)
    .filter((g) => g.to < word.at)
    .at(-1);
  if (!nearest || hasForeignSubject(scene, word) || saidOfNext(items, word) || grounded(items, nearest, word))
    return [];
  if (replaced(items, nearest) || byColour(items, nearest, word)) return [];
  if (outdoneAgain(items, word) || namedAgain(items, nearest, word)) return [];
  if (setBeside(items, nearest) || owned(items, nearest, word) || firstOf(items, nearest, word)) return [];
  if (still && all.length === 1) return againstPrevious(scene, nearest, word);
  if (still && all.length === 3 && nearest.from === all[2]!.from)
    return emit(scene, 'of-three', nearest, both(all.slice(0, 2)), word);
  const flows = word.axis === 'flow' && items.slice(nearest.to + 1, word.at).some(flowing);
  const again = resumed(items, nearest, word, all) || found(items, nearest, word);
  if (!flows && !again && !predicates(items, nearest.to, word.at, whose)) return [];
  const marked =
    article === 'the' ||
    whose ||
    ofSet ||
    still ||
    flows ||
    again ||
    setApart(items, nearest, word) ||
    theOne(items, word);
  return amongSet(scene, nearest, word, all, marked);
}

/** "4-0 is the finer one, and 5-0 is finer again": finer than what was spoken of before. */
const outdoneAgain = (items: readonly Item[], { to, at }: Measured): boolean =>
  items.some(
    (item, i) =>
      i > to && item.word === items[at]!.word && /^(?:again|still|yet)$/.test(items[i + 1]?.word ?? ''),
  );

/** "Spinal needles are 25 G, epidural needles 16 G, so the spinal needle must be …": said of a kind by its name. */
const namedAgain = (items: readonly Item[], { from, to }: Group, { at }: Measured): boolean =>
  items.slice(to + 1, at).some((item, i, between) => {
    const kind = between[i + 1];
    if (item.word !== 'the' || kind?.kind !== 'word' || kind.magnitude || !between[i + 2]?.deviceNoun)
      return false;
    return items.slice(0, from).some(({ word }) => word === kind.word);
  });

/** "pink is 18 and green is 21, so that the pink one is the bigger": the colour says which of them. */
const byColour = (items: readonly Item[], { to }: Group, { at }: Measured): boolean =>
  items.some(
    (item, i) =>
      i > to + 1 && i < at && item.colour !== undefined && /^(?:the|that|this)$/.test(items[i - 1]!.word),
  );

export const BE = new Set([
  'is',
  'are',
  'has',
  'gives',
  'offers',
  'being',
  'was',
  'stays',
  'runs',
  'flows',
  'be',
  'leaves',
  'makes',
  'looks',
  'feels',
]);

const PEOPLE = new Set(
  'patient patients vein veins vessel vessels skin wound child children student students nurse blood fluid drug tissue urethra nostril nose arm hand drug baby'.split(
    ' ',
  ),
);

/** "the next finer in the box is the 4-0". */
const nextIs = (items: readonly Item[], word: Measured): boolean => {
  const is = items.findIndex(
    (item, i) => i > word.to && i <= word.to + 7 && /^(?:is|=|:|would)$/.test(item.word),
  );
  return (
    items.slice(Math.max(0, word.at - 2), word.at).some((item) => item.word === 'next') &&
    is > 0 &&
    items.slice(is + 1, is + 4).some((item) => item.kind === 'size')
  );
};

/** "and so a litre runs in faster through the 14 G": the size behind the word is what it is said of. */
const saidOfNext = (items: readonly Item[], word: Measured): boolean =>
  nextIs(items, word) ||
  (word.axis === 'flow' &&
    /^(?:quickly |slowly |rapidly |easily |freely |still )?(?:through|down|up|along|past|with|via|in|by|on|from)(?: |$)/.test(
      joined(items, word.to + 1, word.to + 3),
    ) &&
    items.slice(word.to + 2, word.to + 5).some((item) => item.kind === 'size')) ||
  (/^(?:the|is|=|:)$/.test(items[word.to + 1]?.word ?? '') &&
    items.slice(word.to + 2, word.to + 4).some((item) => item.kind === 'size') &&
    (items[word.at - 1]?.word === 'the' || items[word.at - 1]?.word === 'next') &&
    items.slice(Math.max(0, word.at - 3), word.at).some((item) => item.kind === 'punctuation'));

/** "and the patient is bigger", "the left one runs slower": the comparing word is about somebody else. */
export function hasForeignSubject(scene: Scene, word: Measured): boolean {
  const before = scene.items.slice(Math.max(0, word.at - 4), word.at);
  const one = before.findIndex((item) => item.word === 'one');
  if (one > 0 && PLACED.has(before[one - 1]!.word)) return true;
  const flowing = (item: Item) => word.axis === 'flow' && /^(?:blood|fluid)$/.test(item.word);
  const other = before.some((item) => PEOPLE.has(item.word) && !flowing(item));
  return other && before.some((item) => BE.has(item.word));
}

/** "Mare 24 Fr, gelding 22 Fr, so the mare's is the wider": said of whose it is. */
const owned = (items: readonly Item[], nearest: Group, word: Measured): boolean =>
  items.slice(nearest.to + 1, word.at).some(
    (item, i, all) =>
      /^(?:hers|his|mine|yours|theirs|ours)$|^(?!it's|that's|what's|there's|here's)\w+['’]s$/.test(
        item.word,
      ) &&
      (/^(?:is|was)$/.test(all[i + 1]?.word ?? '') ||
        // "for a man an 8.0, the man's being …": whose the nearest size is.
        (all[i + 1]?.word === 'being' &&
          !items
            .slice(Math.max(0, nearest.from - 3), nearest.from)
            .some((near) => near.word === item.word.slice(0, -2)))),
  );

/** "6 Fr before 8 Fr: the first is the wider": not the one that stands nearest. */
const firstOf = (items: readonly Item[], nearest: Group, word: Measured): boolean =>
  items.slice(nearest.to + 1, word.at).some((item) => /^(?:first|former|second)$/.test(item.word));

const PLACED = new Set(['left', 'right', 'first', 'second', 'other', 'upper', 'lower', 'top', 'bottom']);

const OF_SET = new Set(['two', 'pair', 'three', 'lot', 'set', 'bunch', 'trio']);

/** The size the word is said of, against the other one of its set. */
function amongSet(
  scene: Scene,
  nearest: Group,
  word: Measured,
  all: readonly Group[],
  marked: boolean,
): Reading[] {
  const { items } = scene;
  const before = all.filter((g) => g.to < word.at);
  const named = groups(items).find(
    (g) => g.to < nearest.from && g.mentions.length === 2 && g.sizes.length === 2,
  );
  const member =
    named?.sizes.findIndex(
      (one) => one.value === nearest.sizes[0]?.value && one.system === nearest.sizes[0]?.system,
    ) ?? -1;
  if (named && member >= 0 && nearest.sizes.length === 1 && marked)
    return emit(
      scene,
      'of-set',
      nearest,
      { ...named, mentions: [named.mentions[1 - member]!], sizes: [named.sizes[1 - member]!] },
      word,
    );
  if (before.length === 2 && (marked || bare(items, nearest, word))) {
    const other = before.find((g) => !sameSizes(g, nearest));
    return other ? emit(scene, 'definite', nearest, other, word) : [];
  }
  if (all.length === 2 && before.length === 1 && marked) {
    const other = all.find((g) => !sameSizes(g, nearest));
    return other ? emit(scene, 'definite', nearest, other, word) : [];
  }
  return all.length === 1 && (marked || bare(items, nearest, word))
    ? againstPrevious(scene, nearest, word)
    : [];
}

/** "A 16 G went into the elbow; that one is wider": taken up again by a pronoun, with no other size to stand for. */
function resumed(items: readonly Item[], nearest: Group, word: Measured, all: readonly Group[]): boolean {
  const between = items.slice(nearest.to + 1, word.at);
  const mark = between.findLastIndex((item) => item.kind === 'punctuation' || item.word === 'and');
  const said = between.slice(mark + 1).map((item) => item.word);
  const pronoun = /^(?:that|this) one (?:is|was|runs|flows)\b/.test(said.join(' '));
  const it =
    all.length === 1 && /^(?:it|this|that|they) (?:is|was|are|runs|flows)\b|^it's\b/.test(said.join(' '));
  const depends = between.slice(0, Math.max(0, mark)).some((item) => DEPENDS.has(item.word));
  return mark >= 0 && between.length <= 12 && said.length <= 5 && !depends && (pronoun || it);
}

/** "Blood will run through a 22 G if that is all you have; it is slower": what has to be put up with is measured by no other size. */
const DEPENDS = new Set(['if', 'when', 'unless', 'although', 'though', 'while', 'until']);

/** "and you find the 18 G wider", "which makes the 18 G wider". */
const found = (items: readonly Item[], nearest: Group, word: Measured): boolean =>
  word.at === nearest.to + 1 &&
  !word.attributive &&
  items
    .slice(Math.max(0, nearest.from - 3), nearest.from)
    .some((item) => /^(?:finds?|found|sees?|saw|makes|call)$/.test(item.word));

/** "the 18 G or, bigger still, the 16 G": said of the size that follows. */
function appended(items: readonly Item[], word: Measured): Group | undefined {
  const after = groups(items).find((g) => g.from > word.to);
  return after &&
    /^(?:or|and)? ?[,(—–]$/.test(joined(items, word.at - 2, word.at)) &&
    /^(?:still|yet|again) [,—–)](?: (?:an?|the|our))?$/.test(joined(items, word.to + 1, after.from))
    ? after
    : undefined;
}

/** "Wider still is the 16 G", "slightly smaller is a 14 Fr": the size stands behind its verb. */
function inverted(items: readonly Item[], word: Measured): Group | undefined {
  const after = groups(items).find((g) => g.from > word.to);
  if (!after || word.at > 2 || word.to !== word.at || after.sizes.length !== 1) return undefined;
  const opens = items
    .slice(0, word.at)
    .every((item) => /^(?:slightly|even|much|far|and|but|a|bit|rather)$/.test(item.word));
  const between = items
    .slice(word.to + 1, after.from)
    .map((item) => item.word)
    .join(' ');
  return opens && /^(?:still |again |yet )?(?:is|are|comes)(?: (?:the|an?|our))?$/.test(between)
    ? after
    : undefined;
}

/** "When a 22 G keeps failing, go smaller still, to a 24 G": what is turned to, not what failed. */
const turnedTo = (items: readonly Item[], word: Measured): boolean =>
  /^(?:go|goes|going|went|try|tries|tried|move|moves|moved|choose|pick|buy)$/.test(
    items[word.at - 1]?.word ?? '',
  );

/** "the bigger twin had a 24 G, the smaller one a 26 G": somebody, and what he has. */
const gives = (items: readonly Item[], word: Measured): boolean =>
  /^(?:one|twin|child|dog|cat|baby|boy|girl|sister|brother|patient)$/.test(items[word.at + 1]?.word ?? '') &&
  /^(?:an?|the|our|his|her)$/.test(items[word.at + 2]?.word ?? '') &&
  items[word.at + 3]?.kind === 'size';

/** "On the larger side the 24 Fr": the word is of the place. */
const ofPlace = (items: readonly Item[], word: Measured): boolean =>
  /^(?:side|end|half|drawer|shelf|row|column|box)$/.test(items[word.to + 1]?.word ?? '');

/** "2-0 for 3-0 is thicker": said of the one that takes the other's place. */
const replaced = (items: readonly Item[], nearest: Group): boolean =>
  items[nearest.from - 2]?.kind === 'size' && items[nearest.from - 1]!.word === 'for';

/** "the 16 G, wider than the 18 G, flows faster": the size after "than" is not what the clause is about. */
const setBeside = (items: readonly Item[], nearest: Group) =>
  items.slice(Math.max(0, nearest.from - 2), nearest.from).some((item) => item.word === 'than') &&
  items[nearest.to + 1]?.word === ',' &&
  items[nearest.to + 2]?.word !== 'which';

/** "the 21 is the one that looks skinnier". */
const theOne = (items: readonly Item[], word: Measured) =>
  items
    .slice(Math.max(0, word.at - 5), word.at)
    .some((item, i, near) => item.word === 'one' && near[i - 1]?.word === 'the');

/** "…than a 23 G, because its bore is larger": the ground is said of the first size and read by `reason`. */
function grounded(items: readonly Item[], nearest: Group, word: Measured): boolean {
  const ground = groundAfter(items, nearest.to);
  const than = items.slice(Math.max(0, nearest.from - 4), nearest.from);
  return ground >= 0 && ground < word.at && than.some((item) => item.word === 'than');
}

/** "3-0 …, go up to 2-0, which is stronger", "an 18 G slows it; a 22 G is slower still", "between the two, the 18 G is wider". */
function setApart(items: readonly Item[], nearest: Group, word: Measured): boolean {
  const next = items.slice(nearest.to + 1, nearest.to + 4).map((item) => item.word);
  if (next[0] === ',' && next[1] === 'which') return true;
  if (next[0] === ',' && /^an?$/.test(next[1] ?? '') && word.attributive && word.at - nearest.to <= 4)
    return true;
  if (items[0]?.word === 'between') return true;
  const apart = items
    .slice(Math.max(0, nearest.from - 4), nearest.from)
    .some(
      (item) => item.word === ';' || item.word === 'but' || item.word === 'while' || item.word === 'whereas',
    );
  return apart && bare(items, nearest, word);
}

/** "a 22 G is thinner": nothing but being and degree between the size and the word. */
const bare = (items: readonly Item[], subject: Group, word: Measured) =>
  !word.attributive &&
  items
    .slice(subject.to + 1, word.at)
    .every((item) => BE.has(item.word) || DEGREE.has(item.word) || item.deviceNoun) &&
  items.slice(subject.to + 1, word.at).some((item) => BE.has(item.word));

const DEGREE = new Set([
  'followed',
  'came',
  'next',
  'after',
  'afterwards',
  'later',
  'used',
  'much',
  'slightly',
  'far',
  'a',
  'bit',
  'clearly',
  'noticeably',
  'always',
  'even',
  'will',
  'be',
  'that',
  'would',
  'size',
  'step',
  'whole',
  'full',
]);

/** "empties", "runs", "lets blood through". */
const flowing = ({ word }: Item, i: number, near: readonly Item[]): boolean =>
  FLOWS.test(word) ||
  (/^(?:lets|passes|carries|moves|gets)$/.test(word) &&
    /^(?:blood|fluids?|saline|gas|air|urine|pus)$/.test(near[i + 1]?.word ?? ''));

const FLOWS = /^(?:empt|deliver|run|drain|drip|flow|infus|fill|clear|pour)/;

const STILL = new Set(['still', 'even', 'yet', 'again']);

/** "…, but the lower number is the wider needle": another subject than the size. */
const startsAnew = (item: Item) =>
  item.axisNoun?.axis === 'number' || item.word === 'but' || item.word === 'because' || item.word === ';';

/** The nearest size must be what the phrase is about: a verb of being, an apposition, or "whose". */
function predicates(items: readonly Item[], from: number, to: number, whose: boolean): boolean {
  if (whose) return to - from <= 8;
  const between = items.slice(from + 1, to);
  if (between.length > 9 || between.some(startsAnew) || renames(between) || unclear(items, from, between))
    return false;
  return (
    between.some((item) => BE.has(item.word)) ||
    (between.length <= 4 && between.some((item) => item.word === ','))
  );
}

/** "Look at the 12 Fr next to the 16 Fr: it is …": the pronoun may stand for either. */
const unclear = (items: readonly Item[], from: number, between: readonly Item[]): boolean =>
  between.some((item, i) => item.word === 'it' && /^[:;,]$/.test(between[i - 1]?.word ?? '')) &&
  items
    .slice(Math.max(0, from - 4), from)
    .some((item) => /^(?:to|beside|against|with|alongside)$/.test(item.word));

/** "…, so the spinal needle is the thinner one": a thing named anew is the subject, whatever size stands nearest. */
function renames(between: readonly Item[]): boolean {
  const be = between.findLastIndex((item) => BE.has(item.word));
  const noun = between[be - 1];
  // "needle A is 19 G and needle B 25 G, so A is the wider"
  if (noun?.capital && /^[a-z]$/.test(noun.word)) return true;
  // "venous line 14 G, the arterial one being the larger": told by its name, which may stand by another size.
  const name = between[be - 2];
  if (
    /^ones?$/.test(noun?.word ?? '') &&
    between[be - 3]?.word === 'the' &&
    name?.kind === 'word' &&
    !name.magnitude &&
    !/^(?:latter|last|same|right|only)$/.test(name.word)
  )
    return true;
  const article = between.slice(Math.max(0, be - 4), be - 1).findLastIndex((item) => item.word === 'the');
  return (
    noun?.deviceNoun === true && !/^ones?$/.test(noun.word) && article >= 0 && between[be - 2]?.word !== 'the'
  );
}
