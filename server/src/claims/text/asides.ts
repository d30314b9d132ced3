/**
 * A sentence without what changes nothing in it. Such words stand anywhere and stop a reader whose parts have to stand next
 * to each other. Only what is known to change nothing is left out, and nothing that names or compares anything.
 */

import {
  ADVICE,
  AT,
  BEAR_IN_MIND,
  BINDING,
  BY_THE_WAY,
  COPULAS,
  DAYS,
  DETERMINERS,
  EMPHASIS,
  LEFT_THERE,
  OF_PREDICATE,
  OPENERS,
  ORDINARY,
  PERSONS,
  PLACES,
  SPANS_OF_TIME,
  TAILS,
  TAKES,
  TELLING,
  WEIGHING,
  WHICH_PLACE,
  WHICH_TIME,
} from '../words/asides.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Item } from './items.ts';

type Items = readonly Item[];

/** Where a stretch that is left out, or said in one word, ends. */
interface Stretch {
  readonly past: number;
  readonly instead?: readonly Item[];
}

type Find = (items: Items, at: number) => Stretch | number | undefined;

/** Without stress and things said by the way, and with one word for "turns out to be". Nothing where nothing changes. */
export const plainly = (items: Items): Items | undefined =>
  without(items, [saidAt, takenAt, beingAt, stressAt, ordinaryAt, ownedAt]);

/** The same for one who asks whether a statement stands without them: there, more of the same is no matter. */
export const quietly = (items: Items): Items | undefined =>
  without(items, [saidAt, takenAt, beingAt, stressAt, alsoAt, ordinaryAt, ownedAt]);

const alsoAt: Find = (items, at) =>
  items[at]!.word === 'also' && !BINDING.has(items[at - 1]?.word ?? '') ? at + 1 : undefined;

/** Without what says where and when, and without the parts around the statement that name nothing of ours. */
export const barely = (items: Items): Items | undefined =>
  without(items, [
    saidAt,
    takenAt,
    beingAt,
    stressAt,
    ordinaryAt,
    openerAt,
    tailAt,
    mindedAt,
    leftAt,
    placeAt,
    timeAt,
  ]);

function without(items: Items, finds: readonly Find[]): Items | undefined {
  const kept: Item[] = [];
  let changed = false;
  for (let i = 0; i < items.length; ) {
    const found = firstOf(finds, items, i);
    if (found === undefined) {
      kept.push(items[i++]!);
      continue;
    }
    changed = true;
    if (found.instead) kept.push(...found.instead);
    i = found.instead ? found.past : closed(items, found.past, kept);
  }
  return changed && kept.length > 0 ? kept : undefined;
}

function firstOf(finds: readonly Find[], items: Items, at: number): Stretch | undefined {
  for (const find of finds) {
    const found = find(items, at);
    if (found !== undefined) return typeof found === 'number' ? { past: found } : found;
  }
  return undefined;
}

const BE = new Set(
  `is are was be has have means gives lets flows carries runs takes passes goes comes holds delivers needs makes leaves fits
  measures drains pours costs wears admits`.split(/\s+/),
);

/** The commas around what is left out go with it: both where they part a verb from its own, else the closing one. */
function closed(items: Items, past: number, kept: Item[]): number {
  if (items[past]?.word !== ',') return past;
  if (kept.length === 0) return past + 1;
  if (kept.at(-1)!.word !== ',') return past;
  if (BE.has(kept.at(-2)?.word ?? '') || BE.has(items[past + 1]?.word ?? '')) kept.pop();
  return past + 1;
}

const plain = (item: Item | undefined): item is Item =>
  item?.kind === 'word' &&
  !item.magnitude &&
  !item.axisNoun &&
  !item.deviceNoun &&
  !item.system &&
  !item.colour;

/** Phrases by their first word. */
function phrases(all: readonly string[]): (items: Items, at: number) => number | undefined {
  const known = new Map<string, string[][]>();
  for (const said of all) {
    const words = said.split(' ');
    known.set(words[0]!, [...(known.get(words[0]!) ?? []), words]);
  }
  return (items, at) => {
    const found = known
      .get(items[at]!.word)
      ?.find((words) => words.every((word, i) => items[at + i]?.word === word));
    return found && at + found.length;
  };
}

const saidAt: Find = phrases(BY_THE_WAY);

/** "3-0 nylon, to take the one in your hand, is …", "…, for example, …": between commas, which of many is spoken of. */
const takenAt: Find = (items, at) => {
  const behind = at + 2;
  if (items[at]!.word === 'for' && items[at - 1]?.word === ',' && items[behind]?.word === ',')
    return /^(?:example|instance)$/.test(items[at + 1]!.word) ? behind : undefined;
  if (items[at]!.word !== 'to' || items[at - 1]?.word !== ',' || !TAKES.has(items[at + 1]?.word ?? ''))
    return undefined;
  const past = items.findIndex(({ word }, i) => i > at && word === ',');
  const said = items.slice(at + 2, past);
  const quiet = (item: Item) => item.deviceNoun || (plain(item) && !WEIGHING.has(item.word));
  return past > at + 2 && past - at <= LONGEST && said.every(quiet) ? past : undefined;
};

/** "really", "therefore": not where it is denied, asked or compared. */
const stressAt: Find = (items, at) =>
  EMPHASIS.has(items[at]!.word) &&
  !BINDING.has(items[at - 1]?.word ?? '') &&
  !NEGATIONS.has(items[at - 2]?.word ?? '') &&
  items[at + 1] !== undefined &&
  !BINDING.has(items[at + 1]!.word) &&
  !furtherAt(items, at)
    ? at + 1
    : undefined;

/** "but a 28 Fr is narrower still": compared with what came before. */
const furtherAt = (items: Items, at: number): boolean =>
  items[at - 1]?.magnitude?.degree === 'comparative' && FURTHER.test(items[at]!.word);
const FURTHER = /^(?:still|again)$/;

const copula = phrases(COPULAS);

/** "turns out to be", "will be"; "the needle's thinner than …". */
const beingAt: Find = (items, at) => {
  const past = copula(items, at);
  if (past !== undefined && predicate(items, past))
    return { past, instead: [isFrom(items[at]!.start, items[past - 1]!.end)] };
  return contracted(items, at);
};

/** A word that says "is". */
const isFrom = (start: number, end: number): Item => ({
  start,
  end,
  word: 'is',
  kind: 'word',
  capital: false,
  mention: undefined,
  magnitude: undefined,
  axisNoun: undefined,
  deviceNoun: undefined,
  system: undefined,
  colour: undefined,
});

/** What is said of a thing: a size, a colour, a quality that stands alone. */
function predicate(items: Items, at: number): boolean {
  const item = items[at];
  if (!item) return false;
  if (item.kind === 'size' || item.colour || OF_PREDICATE.has(item.word)) return true;
  return item.magnitude !== undefined;
}

const CONTRACTION = "'s";

function contracted(items: Items, at: number): Stretch | undefined {
  const item = items[at]!;
  // "this one's thicker": of the last that was named, or of the one in the hand.
  if (!item.word.endsWith(CONTRACTION) || item.word === "one's") return undefined;
  if (!item.deviceNoun && !item.system) return undefined;
  const next = items[at + 1];
  const alone =
    next?.magnitude &&
    (!items[at + 2] || items[at + 2]!.word === 'than' || items[at + 2]!.kind === 'punctuation');
  if (!alone && !(next && (OF_PREDICATE.has(next.word) || next.kind === 'size'))) return undefined;
  const end = item.end - CONTRACTION.length;
  const thing = { ...item, word: item.word.slice(0, -CONTRACTION.length), end };
  return { past: at + 1, instead: [thing, isFrom(end, item.end)] };
}

/** "an ordinary 22 G". */
const ordinaryAt: Find = (items, at) => {
  const next = items[at + 1];
  const before = items[at - 1]?.word ?? '';
  return ORDINARY.has(items[at]!.word) &&
    DETERMINERS.has(before) &&
    (next?.kind === 'size' || next?.deviceNoun)
    ? at + 1
    : undefined;
};

/** "on the lower hook", "in the back of the hand". */
const placeAt: Find = (items, at) => placePast(items, at);

function placePast(items: Items, at: number): number | undefined {
  // "thinnest at the front": the place begins a row.
  if (!AT.has(items[at]?.word ?? '') || items[at - 1]?.magnitude?.degree === 'superlative') return undefined;
  const past = placed(items, at + 1);
  const whole = past !== undefined && items[past]?.word === 'of' ? placed(items, past + 1) : past;
  // "in a packet 80 mm wide": the place is what has the size.
  return whole !== undefined && items[whole]?.kind === 'size' ? undefined : whole;
}

const ofPlace = (item: Item | undefined): boolean =>
  item !== undefined && (WHICH_PLACE.has(item.word) || (plain(item) && !TELLING.has(item.word)));

/** Words between a determiner and the place, at most. */
const BETWEEN = 2;

function placed(items: Items, at: number): number | undefined {
  if (!DETERMINERS.has(items[at]?.word ?? '')) return undefined;
  for (let i = at + 1; i <= at + 1 + BETWEEN && ofPlace(items[i]); i++)
    if (PLACES.has(items[i]!.word) && !PLACES.has(items[i + 1]?.word ?? '')) return i + 1;
  return undefined;
}

/** "printed on the front", "that we keep on the top shelf", "which hangs by the door". */
const leftAt: Find = (items, at) => {
  const { word } = items[at]!;
  if (LEFT_THERE.has(word) && !IS.has(items[at - 1]?.word ?? '')) return placePast(items, at + 1);
  const related = word === 'that' || word === 'which';
  const by = related ? at + 1 : at;
  if (!PERSONS.has(items[by]?.word ?? '')) return related ? placeBehind(items, at + 1) : undefined;
  const owned = items[at - 1]?.kind === 'size' || items[at - 1]?.deviceNoun;
  return related || owned ? placeBehind(items, by + 1) : undefined;
};

/** "the 24 G that we keep on the trolley", "the 28 Fr, which hangs by the door": said of a size, it chooses nothing. */
const ownedAt: Find = (items, at) => {
  const owner = items[items[at - 1]?.word === ',' ? at - 2 : at - 1];
  return owner?.kind === 'size' || owner?.deviceNoun ? leftAt(items, at) : undefined;
};

const IS = new Set('is are was were be been being has have had gets get it they that'.split(' '));

/** A verb of one or two words and its place or time. */
function placeBehind(items: Items, at: number): number | undefined {
  if (!plain(items[at])) return undefined;
  const past = (from: number) => placePast(items, from) ?? timePast(items, from);
  return past(at + 1) ?? (plain(items[at + 1]) ? past(at + 2) : undefined);
}

/** "on Wednesday", "last night". */
const timeAt: Find = (items, at) => timePast(items, at);

function timePast(items: Items, at: number): number | undefined {
  const [word = '', next = ''] = [items[at]?.word, items[at + 1]?.word];
  if (word === 'on' && DAYS.has(next)) return at + 2;
  return WHICH_TIME.has(word) && SPANS_OF_TIME.has(next) && items[at + 2]?.word !== ',' ? at + 2 : undefined;
}

/** The longest part of a sentence that is left out, words. */
const LONGEST = 12;

const empty = (item: Item): boolean => plain(item) && !WEIGHING.has(item.word);

/** "lay out the long clamp and remember that": the instruction names nothing of ours. */
const mindedAt: Find = (items, at) => {
  if (at > 0 && items[at - 1]!.word !== ',') return undefined;
  for (let i = at; i < at + LONGEST && plain(items[i]); i++)
    if (BEAR_IN_MIND.has(items[i]!.word) && items[i + 1]?.word === 'that')
      return i > at + 1 && items[i - 1]!.word === 'and' ? i + 2 : undefined;
  return undefined;
};

/** "While you wait, …": up to the comma. */
const openerAt: Find = (items, at) => {
  if (at > 0 || !OPENERS.has(items[0]!.word)) return undefined;
  const comma = items.findIndex(({ word }) => word === ',');
  return comma > 0 && comma <= LONGEST && items.slice(0, comma).every(empty) ? comma : undefined;
};

/** "…, so check the box before you open it": from the comma to the end. */
const tailAt: Find = (items, at) => {
  if (at === 0 || !/^[,;–—-]$/.test(items[at]!.word)) return undefined;
  const past = items.at(-1)!.kind === 'punctuation' ? items.length - 1 : items.length;
  const tail = items.slice(at + 1, past);
  if (tail.length < 2 || tail.length > LONGEST) return undefined;
  const opens = TAILS.has(tail[0]!.word);
  if (items[at]!.word === ',' && !opens) return undefined;
  if (tail[0]!.word === 'so' && ADVICE.has(tail[1]!.word) && tail.every(plain)) return past;
  return tail.slice(opens ? 1 : 0).every(empty) ? past : undefined;
};
