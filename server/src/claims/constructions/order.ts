/** Sizes said to run in an order: "thickest first: 18, 20, 22 G", "from fine to stout", "each wider than the last". */
import type { Axis } from '../model.ts';
import { type Item, readItems } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { remembered } from '../text/remember.ts';
import { type Group, groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction, Reading } from './model.ts';
import { requested, toBeSorted } from './to-arrange.ts';

export interface Cue {
  readonly at: number;
  readonly to: number;
  readonly axis: Axis;
  readonly runs: 'up' | 'down';
}

export const order: Construction = {
  id: 'order',
  needs: () => [{ sizes: 3 }],
  read(scene) {
    const cue = orderCue(scene.items) ?? headingCue(scene) ?? previousCue(scene);
    if (!cue) return [];
    if (otherWay(scene.items, cue.at) || backwards(scene.items) || toBeSorted(scene)) return [];
    const run = longestRun(scene.items, cue);
    return count(run) >= 3 &&
      !requested(scene.items, run[0]!) &&
      !ofNumbers(scene.items, run[0]!) &&
      !ofEitherScale(scene, run) &&
      !startsAgain(scene.items, run)
      ? [orderReading(scene, run, cue)]
      : [];
  },
};

/** "Climb in number (0.014, 0.018, 0.035) and you drop in thickness": the brackets show how the numbers run. */
export const ofNumbers = (items: readonly Item[], { from }: Group): boolean =>
  items[from - 1]?.word === '(' && /^(?:numbers?|figures?|gauge|french)$/.test(items[from - 2]?.word ?? '');

/** "From thin to thick is B, D, A, C where A 3-0, B 6-0, …": the letters are in order, the sizes only tell what they stand for. */
const lettersInOrder = (items: readonly Item[], run: readonly Group[]): boolean =>
  /^[a-f]$/.test(items[run[0]!.from - 1]?.word ?? '') &&
  /(?:^| )[a-f] ,? ?[a-f] ,? ?[a-f]\b/.test(
    joined([...items.slice(0, run[0]!.from - 1), ...items.slice(run.at(-1)!.to + 1)]),
  );

/** "0 sits above 2-0, and above 0 you count 1, 2": a row that takes up a size again, and counts on from there; or ends in the first once more. */
export function startsAgain(items: readonly Item[], run: readonly Group[]): boolean {
  const named = run.flatMap(({ sizes }) => sizes.map(({ value }) => value));
  if (lettersInOrder(items, run)) return true;
  if (new Set(named).size === named.length) return false;
  return named.at(-1) === named[0] || items.some(({ word }) => /^(?:above|below)$/.test(word));
}

/** "14 > 16 > 18" where French and gauge are both spoken of: bare numbers of either. */
export const ofEitherScale = ({ items, passage }: Scene, run: readonly Group[]): boolean =>
  run.every((group) => group.mentions.every((mention) => mention.notation === 'bare')) &&
  !items.some((item) => item.kind === 'size' && item.mention?.notation !== 'bare') &&
  /\d ?(?:Fr|Ch)\b/.test(passage.text) &&
  /\d ?G\b/.test(passage.text);

/** "24, 22, 20 G (some wrote it the other way: that is wide to thin)": the words are said of the row that is not there. */
export function otherWay(items: readonly Item[], cue: number): boolean {
  const open = items.slice(0, Math.max(0, cue)).findLastIndex(({ word }) => word === '(');
  const inside = open < 0 ? [] : items.slice(open, cue);
  return inside.some(({ word }, i) => word === 'way' && inside[i - 1]?.word === 'other');
}

/** "Right to left they get thinner": the row as it is written is read from its end. */
export const backwards = (items: readonly Item[]): boolean =>
  /\b(?:right to left|from the right|from right|backwards)\b/.test(joined(items));

/** "then 0, then after 0 it goes 1, 2": a size named twice on the way stands in the row once. */
export function orderReading(scene: Scene, run: readonly Group[], cue: Cue): Reading {
  const first = scene.items[run[0]!.from]!;
  const last = scene.items[run.at(-1)!.to]!;
  return {
    claim: {
      kind: 'order',
      construction: 'order',
      span: sentenceSpan(scene),
      focus: spanOf(scene, first, last),
      items: run
        .flatMap((group) => group.mentions.map((mention) => ({ group, mention })))
        .filter(({ mention }, i, all) => mention.text !== all[i - 1]?.mention.text)
        .map(({ group, mention }) => operand(scene, { ...group, mentions: [mention], sizes: mention.sizes })),
      axis: cue.axis,
      runs: cue.runs,
    },
    at: Math.max(0, cue.at),
    from: Math.max(0, Math.min(cue.at, run[0]!.from)),
    to: Math.max(cue.to, run.at(-1)!.to),
    ...(arranging(scene.items) ? { unconditional: true } : {}),
  };
}

/** "If you line up the three from wide to narrow they go …": the condition is only the arranging. */
const arranging = (items: readonly Item[]): boolean =>
  /^(?:\S+ ){0,3}?(?:if|when|whenever|once) (?:you|we|i|one|they) (?:\S+ ){0,3}?(?:line|arrange|put|rank|lay|write|list|sort|stand|place|hang|set|count|read|go|order|look|name|number)\b/.test(
    joined(items, 0, 12),
  );

/** A bare row of sizes right under a heading that says how it runs. */
function headingCue(scene: Scene): Cue | undefined {
  // Choices under a question are for the key to settle.
  if (scene.option || scene.passage.list?.checked !== undefined) return undefined;
  const heading = scene.headings.at(-1);
  if (!heading || scene.passage.index !== (scene.passage.path.at(-1) ?? -2) + 1) return undefined;
  const bare = scene.items.every((item) => item.kind === 'size' || JOINS.has(item.word) || item.word === '.');
  const cue = bare ? orderCue(readItems(heading, [])) : undefined;
  return cue && { ...cue, at: -1, to: -1 };
}

/** "They run from fattest to thinnest. That makes it 14 G, 16 G, …": the sentence before says how it runs. */
function previousCue(scene: Scene): Cue | undefined {
  const previous = scene.before.at(-1);
  const start = scene.items.findIndex((item) => item.kind === 'size');
  if (!previous || previous.close === '?' || start > 7 || !DRAWN.test(joined(scene.items, 0, start)))
    return undefined;
  if (previous.items.some((item) => item.kind === 'size' || NEGATIONS.has(item.word))) return undefined;
  const cue = orderCue(previous.items) ?? nearest(scene.items, previous.items);
  return cue && { ...cue, at: -1, to: -1 };
}

/** "The thickest stands closest to the door. From the door that makes it …": read from that end. */
function nearest(items: readonly Item[], before: readonly Item[]): Cue | undefined {
  const near = /\b(?:closest|nearest|next) to (?:the|our|my) (\S+)/.exec(joined(before))?.[1];
  const word = measuredWords(before).find((m) => m.degree === 'superlative' && !m.idiom);
  if (!near || !word || word.axis === 'other' || word.axis === 'number') return undefined;
  const from = new RegExp(
    `^(?:so )?(?:(?:starting|reading|counting) )?from (?:the|our|my) ${near.replace(/[^\p{L}-]/gu, '')}\\b`,
    'u',
  );
  return from.test(joined(items)) ? cueOf(word, word.to, word.sign === 1 ? 'down' : 'up') : undefined;
}
const DRAWN =
  /^(?:so |thus |hence |which )?(?:(?:(?:starting|reading|counting) )?from (?:the|our|my) \S+ (?:, )?)?(?:(?:that|this|it|which|they|the (?:order|row|run|list|sequence)) )?(?:(?:therefore|then) )?(?:makes?|gives?|is|are|means|goes|go|runs?|reads?|comes out as)(?: (?:it|us|you|them|for us))?(?: ,| :)?(?: an?| the)?$|^(?:so|thus|hence|that is|i\.e) [,:]?$/;

/** The way the sentence says its list runs, if it says so. */
export const orderCue = remembered((items: readonly Item[]): Cue | undefined => {
  const words = measuredWords(items).filter((m) => m.axis !== 'other' && m.axis !== 'number' && !m.idiom);
  // Without such a word, only a noun of measure or a thing resized says how a row runs.
  if (words.length === 0)
    return items.some((item) => item.axisNoun || RESIZED.test(item.word))
      ? (ranked(items) ?? series(items, words))
      : undefined;
  return (
    fromTo(items, words) ??
    apposed(items, words) ??
    ranked(items) ??
    triple(items, words) ??
    first(items, words) ??
    then(items, words) ??
    series(items, words) ??
    each(items, words)
  );
});

const cueOf = (m: Measured, to: number, runs: 'up' | 'down'): Cue => ({ at: m.at, to, axis: m.axis, runs });

/** "fattest to thinnest", "from thick to thin", "slimmest up to stoutest". */
function fromTo(items: readonly Item[], words: readonly Measured[]): Cue | undefined {
  for (let i = 0; i + 1 < words.length; i++) {
    const [a, b] = [words[i]!, words[i + 1]!];
    const between = items.slice(a.to + 1, b.at).map((item) => item.word);
    const plainPair = a.degree === b.degree && a.sign !== b.sign;
    const near = between.length <= 4 || (between.length <= 8 && between.every((word) => PLACES.has(word)));
    if (!plainPair || !near || !between.some((word) => TO.has(word))) continue;
    return cueOf(a, b.to, a.sign === 1 ? 'down' : 'up');
  }
  return leftOut(items, words);
}

/** "Least resistance to most": the noun is said once. */
function leftOut(items: readonly Item[], words: readonly Measured[]): Cue | undefined {
  const word = words.find(
    (m) =>
      m.to > m.at &&
      TO.has(items[m.to + 1]?.word ?? '') &&
      ENDS.get(items[m.at]!.word) === items[m.to + 2]?.word,
  );
  return word && cueOf(word, word.to + 2, word.sign === 1 ? 'down' : 'up');
}
const ENDS: ReadonlyMap<string, string> = new Map([
  ['least', 'most'],
  ['most', 'least'],
  ['lowest', 'highest'],
  ['highest', 'lowest'],
  ['smallest', 'largest'],
  ['largest', 'smallest'],
  ['less', 'more'],
  ['more', 'less'],
]);
const PLACES: ReadonlySet<string> = new Set(
  'at on in the top bottom left right front back first one end to down up our its of row shelf drawer rack'.split(
    ' ',
  ),
);
const TO = new Set(['to', 'before', 'down', 'up', 'through', '→', 'towards', '-', '–', 'until']);

/** "from 14 Fr through 18 Fr to 22 Fr, the largest": the row ends at that end. */
function apposed(items: readonly Item[], words: readonly Measured[]): Cue | undefined {
  const last = words.find((m) => m.degree === 'superlative');
  if (!last || words.length !== 1 || items[last.at - 1]?.word !== 'the') return undefined;
  const after = items[last.to + 1];
  const ends = !after || /^[.;!)]$/.test(after.word);
  const size = items[last.at - 3];
  return ends && /^[,(]$/.test(items[last.at - 2]?.word ?? '') && size?.kind === 'size'
    ? cueOf(last, last.to, last.sign === 1 ? 'up' : 'down')
    : undefined;
}

/** "Rank them by flow: 14 G first, 18 G second, 22 G last". */
function ranked(items: readonly Item[]): Cue | undefined {
  const at = items.findIndex((item, i) => item.word === 'by' && items[i + 1]?.axisNoun !== undefined);
  const noun = items[at + 1]?.axisNoun;
  const first = items.findIndex((item, i) => item.word === 'first' && items[i - 1]?.kind === 'size');
  const second = items.findIndex((item, i) => item.word === 'second' && items[i - 1]?.kind === 'size');
  if (at < 0 || !noun || noun.axis === 'number' || first < at || second < first) return undefined;
  return { at, to: at + 1, axis: noun.axis, runs: noun.sign === 1 ? 'down' : 'up' };
}

/** "Small, medium, large: 12, 14, 16 Fr". */
function triple(items: readonly Item[], words: readonly Measured[]): Cue | undefined {
  const middle = items.findIndex((item) => /^(?:medium|middle|middling|mid-sized)$/.test(item.word));
  const colon = items.findIndex((item, i) => i > middle && item.word === ':');
  const [a, b] = [words.find((m) => m.to < middle), words.find((m) => m.at > middle && m.at < colon)];
  if (items[colon + 1]?.kind !== 'size') return undefined;
  if (middle < 0 || colon < 0 || colon > 8 || !a || !b || a.degree !== b.degree || a.sign === b.sign)
    return undefined;
  return cueOf(a, b.to, a.sign === 1 ? 'down' : 'up');
}

/** "The thinnest is 22 G, then 20 G, then 18 G". */
function then(items: readonly Item[], words: readonly Measured[]): Cue | undefined {
  const best = words.find((m) => m.degree === 'superlative');
  if (!best) return undefined;
  const size = items.findIndex((item, i) => i > best.to && item.kind === 'size');
  const is = items.slice(best.to + 1, size).some((item) => /^(?:is|are|:|comes)$/.test(item.word));
  const follows =
    /^(?:then|followed|next)$/.test(items[size + 2]?.word ?? '') && items[size + 1]?.word === ',';
  const near = !items.slice(best.to + 1, size).some((item) => /^[,;.]$/.test(item.word));
  return size > 0 && size - best.to <= 8 && near && is && follows
    ? cueOf(best, best.to, best.sign === 1 ? 'down' : 'up')
    : undefined;
}

/** "fattest first". */
function first(items: readonly Item[], words: readonly Measured[]): Cue | undefined {
  for (const word of words) {
    if (word.degree === 'comparative') continue;
    const near = items.slice(word.to + 1, word.to + 6).map((item) => item.word);
    const i = near.findIndex((w) => FIRST.has(w) || LAST_PLACE.has(w) || w === 'down' || w === 'up');
    if (i < 0 || near.slice(0, i).some((w) => w === ',' || w === ':')) continue;
    // "The first is the biggest and the last the smallest": the place belongs to the word after it.
    if (near[i - 1] === 'the' && near[i - 2] === 'and') continue;
    // "the finest first choice" puts nothing in order.
    if (/^(?:choice|line|attempt|option|pass|aid)$/.test(near[i + 1] ?? '')) continue;
    const grows = FIRST.has(near[i]!)
      ? word.sign === -1
      : LAST_PLACE.has(near[i]!)
        ? word.sign === 1
        : undefined;
    // "Smallest up, this is how they hang: …": named is where it begins.
    if (i === 0 && /^[,:]$/.test(near[1] ?? '') && (near[0] === 'up' ? word.sign === -1 : word.sign === 1))
      return cueOf(word, word.to + 1, near[0] === 'up' ? 'up' : 'down');
    if (grows === undefined) continue;
    return cueOf(word, word.to + 1 + i, grows ? 'up' : 'down');
  }
  const starts = items.findIndex((item) =>
    /^(?:start|starting|begin|beginning|starts|begins|from)$/.test(item.word),
  );
  const from = words.find(
    (m) =>
      starts >= 0 &&
      m.at > starts &&
      m.at <= starts + 5 &&
      m.degree === 'superlative' &&
      !items.slice(starts, m.at).some((item) => /^[;.]$/.test(item.word)),
  );
  return from ? cueOf(from, from.to, from.sign === 1 ? 'down' : 'up') : undefined;
}

const FIRST = new Set(['first', 'left', 'top', 'front', 'leftmost', 'start']);
const LAST_PLACE = new Set(['last', 'right', 'bottom', 'back']);

const GROWING = new Set(['increasing', 'ascending', 'rising', 'growing', 'climbing']);
const FALLING = new Set(['decreasing', 'descending', 'falling', 'shrinking', 'diminishing', 'dwindling']);

const RESIZED = /^(up|down)siz/;

/** "in order of increasing diameter", "ascending bore", "getting thinner". */
function series(items: readonly Item[], words: readonly Measured[]): Cue | undefined {
  for (let i = 0; i < items.length; i++) {
    const along = runsAlong(items, i) ?? goesUp(items, i);
    if (along) return along;
    const resized = RESIZED.exec(items[i]!.word);
    if (resized && items.some((item) => /^(?:order|sequence|steps?)$/.test(item.word)))
      return { at: i, to: i, axis: 'outer', runs: resized[1] === 'up' ? 'up' : 'down' };
    const grows = GROWING.has(items[i]!.word) ? 1 : FALLING.has(items[i]!.word) ? -1 : 0;
    if (grows === 0) continue;
    const noun = items
      .slice(i + 1, i + 4)
      .find((item) => item.axisNoun && item.axisNoun.axis !== 'number')?.axisNoun;
    if (!noun) continue;
    return { at: i, to: i + 1, axis: noun.axis, runs: grows * noun.sign === 1 ? 'up' : 'down' };
  }
  if (!words.some((word) => word.degree === 'comparative')) return undefined;
  const getting = items.findIndex(
    (item, i) =>
      item.word === 'getting' ||
      AND_ON.test(item.word) ||
      (GETS.test(item.word) && ROWED.test(joined(items, i + 2, i + 5))) ||
      (GETS.test(item.word) && items.slice(i + 2, i + 5).some((near) => ALONG.test(near.word))),
  );
  const m = words.find(
    (word) => getting >= 0 && word.degree === 'comparative' && word.at > getting && word.at <= getting + 3,
  );
  return m ? cueOf(m, m.to, m.sign === 1 ? 'up' : 'down') : undefined;
}

/** "go up in width". */
function goesUp(items: readonly Item[], i: number): Cue | undefined {
  const way = items[i + 1]?.word;
  const noun = items[i + 3]?.axisNoun;
  if ((way !== 'up' && way !== 'down') || items[i + 2]?.word !== 'in' || !noun || noun.axis === 'number')
    return undefined;
  if (!/^(?:count|counts|go|goes|run|runs|rise|rises|come|comes|step|steps)$/.test(items[i]!.word))
    return undefined;
  const grows = (way === 'up') === (noun.sign === 1);
  return { at: i + 1, to: i + 3, axis: noun.axis, runs: grows ? 'up' : 'down' };
}

/** What brings the row on: "along the row", "like this", "in this order". */
const ROWED =
  /^(?:along|down|across|through|from)\b|^(?:like (?:this|so)|thus|as follows|in (?:this|that) (?:order|way)|this way)\b|^:/;

/** "thickness falls along the row", "thickness climbs like this: …". */
function runsAlong(items: readonly Item[], i: number): Cue | undefined {
  const noun = items[i]!.axisNoun;
  const verb = items[i + 1]?.word ?? '';
  if (!noun || noun.axis === 'number' || !ROWED.test(joined(items, i + 2, i + 5))) return undefined;
  const grows = /^(?:rises|grows|increases|climbs)$/.test(verb)
    ? 1
    : /^(?:falls|shrinks|decreases|drops)$/.test(verb)
      ? -1
      : 0;
  return grows === 0
    ? undefined
    : { at: i + 1, to: i + 1, axis: noun.axis, runs: grows * noun.sign === 1 ? 'up' : 'down' };
}

/** "get thinner as you read along". */
const AND_ON = /^(?:progressively|ever|always|increasingly|gradually|steadily|growing)$/;
const GETS = /^(?:gets?|becomes?|grows?)$/;
const ALONG = /^(?:in|as|along|down|from|through|across|with)$/;

const LAST = /\b(?:the )?(?:last|one before(?: it)?|previous(?: one)?|one above(?: it)?|before it)\b/;

/** "each is thicker than the one before". */
function each(items: readonly Item[], words: readonly Measured[]): Cue | undefined {
  const at = items.findIndex((item) => item.word === 'each' || item.word === 'every');
  const word = words.find((m) => m.at > at && m.degree === 'comparative' && items[m.to + 1]?.word === 'than');
  if (at < 0 || !word) return undefined;
  const rest = items
    .slice(word.to + 2, word.to + 7)
    .map((item) => item.word)
    .join(' ');
  return LAST.test(rest) ? cueOf(word, word.to, word.sign === 1 ? 'up' : 'down') : undefined;
}

const JOINS = new Set([
  ',',
  'and',
  'then',
  '→',
  '>',
  '<',
  '/',
  'or',
  '–',
  '-',
  ':',
  'next',
  'come',
  'comes',
  'finally',
  'lastly',
  '&',
  'down',
  'up',
  'to',
  'a',
  'the',
  '(',
  ')',
  '—',
  'g',
  'fr',
  'through',
  'first',
  'second',
  'third',
  'last',
]);

/** The longest run of sizes with nothing but joining words between, outside the cue. */
function longestRun(items: readonly Item[], cue: Cue): Group[] {
  if (rearranged(items)) return [];
  let best: Group[] = [];
  let run: Group[] = [];
  for (const group of groups(items)) {
    const previous = run.at(-1);
    const joined =
      previous &&
      previous.sizes[0]?.system === group.sizes[0]?.system &&
      group.from - previous.to <= 5 &&
      !(cue.at > previous.to && cue.at < group.from) &&
      items.slice(previous.to + 1, group.from).every((item) => JOINS.has(item.word));
    run = joined ? [...run, group] : [group];
    if (count(run) > count(best)) best = run;
  }
  return count(best) >= 3 ? split(best) : [];
}

/** "27 G, 16 G, 22 G → 16 G, 22 G, 27 G": one arrow among commas leads from the row that was given to the row put in order. */
export function rearranged(items: readonly Item[]): boolean {
  const arrow = items.findIndex(({ word }) => word === '→' || word === '⇒');
  if (arrow < 0) return false;
  const commas = (part: readonly Item[]) => part.filter(({ word }) => word === ',').length;
  return commas(items.slice(0, arrow)) > 1 && commas(items.slice(arrow)) > 1;
}

/** A range counts for both its ends. */
const count = (run: readonly Group[]) => run.reduce((n, group) => n + group.sizes.length, 0);

/** One group a mention, so that each neighbour pair is judged. */
const split = (run: readonly Group[]): Group[] =>
  run.flatMap((group) =>
    group.mentions.map((mention) => ({ ...group, mentions: [mention], sizes: mention.sizes })),
  );
