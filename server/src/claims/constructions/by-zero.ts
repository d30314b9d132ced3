/** One of two threads called by its writing: "No. 2 and 2-0: the one with the zero is the finer", "the one without the dash". */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSystem } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Reading } from './model.ts';
import { comparison } from './than.ts';

const NAMED =
  /\bthe (?:one|thread|size|suture|packet|silk|nylon)(?: (?:that is |that's |which is )?(?:written|printed|marked|spelled|labelled|carrying))? (with|without|that has|which has|lacking|having)(?: (?:the|an?|its|no))? (?:zero|nought|naught|dash|hyphen|slash|stroke|oh)\b/;

/** "the one with the higher number" of 3-0 and 5-0. */
const BY_NUMBER =
  /\bthe (?:one|thread|size|suture) with the (higher|larger|bigger|greater|lower|smaller) (?:number|figure|digit)\b/;

/** Does the sentence call a thread by its zero? */
export const callsByZero = (items: readonly Item[]): boolean =>
  items.some(({ word }) => /^(?:with|without|has|lacking|having)$/.test(word)) &&
  (NAMED.test(joined(items)) || (BY_NUMBER.test(joined(items)) && groups(items).length !== 1));

/** The comparison that the sentence makes of the thread called by its zero, or by its number. */
export function byZero(scene: Scene): Reading[] {
  const { items } = scene;
  const text = joined(items);
  const zero = NAMED.exec(text);
  const match = zero ?? BY_NUMBER.exec(text);
  if (!match || scene.sentence.close === '?' || items.some(turned)) return [];
  const two = twoSpokenOf(scene);
  const left = two && (zero ? ofZero(zero, two) : ofNumber(match[1]!, two));
  const start = text.slice(0, match.index).split(' ').length - 1;
  const end = start + match[0].split(' ').length;
  const word = measuredWords(items).find((one) => one.at >= end && one.degree === 'comparative');
  if (!left || word?.axis !== 'outer' || word.idiom || word.excess) return [];
  // "has the thicker needle".
  if (items.slice(word.at + 1, word.to + 3).some((item) => OF_OTHERS.test(item.word))) return [];
  const right = left === two[0] ? two[1] : two[0];
  return [{ ...comparison(scene, 'by-zero', left, right, word), from: Math.max(0, start) }];
}

const OF_OTHERS = /^(?:needles?|packets?|packs?|box(?:es)?|labels?|lids?|foils?|spools?|reels?|scars?)$/;

const turned = ({ word }: Item): boolean => NEGATIONS.has(word) && word !== 'without' && word !== 'no';

/** Two threads of this sentence, or of the one before. */
function twoSpokenOf({ items, before }: Scene): readonly [Group, Group] | undefined {
  const own = distinct(groups(items).flatMap(singles));
  const previous = before.at(-1);
  const spoken = previous && previous.close !== '?' ? previous.items : [];
  const [a, b, ...more] = own.length > 0 ? own : distinct(groups(spoken).flatMap(singles));
  const threads = a && b && more.length === 0 && sameSystem(a, b) && a.sizes[0]!.system === 'usp';
  return threads ? [a, b] : undefined;
}

function ofZero(match: RegExpExecArray, [a, b]: readonly [Group, Group]): Group | undefined {
  if (zeroed(a) === zeroed(b)) return undefined;
  const without = /^(?:without|lacking)$/.test(match[1]!) || / no \w+$/.test(match[0]);
  return zeroed(a) === !without ? a : b;
}

/** Of two threads with zeros the higher figure is the lower size. */
function ofNumber(way: string, [a, b]: readonly [Group, Group]): Group | undefined {
  if (!zeroed(a) || !zeroed(b)) return undefined;
  const [low, high] = a.sizes[0]!.value < b.sizes[0]!.value ? [a, b] : [b, a];
  return /^(?:lower|smaller)$/.test(way) ? high : low;
}

const singles = (group: Group): Group[] =>
  group.mentions.length === group.sizes.length
    ? group.mentions.map((mention) => ({ ...group, mentions: [mention], sizes: mention.sizes }))
    : [group];

/** "2-0", and not "2". */
const zeroed = ({ mentions }: Group): boolean => /^\d{1,2}\s?[-/–]\s?[0Oo]$/.test(mentions[0]!.text);
