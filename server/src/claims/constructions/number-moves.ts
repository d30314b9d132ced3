/** The number side of a direction as a movement: "the gauge climbs", "every extra zero", "rising gauge numbers", "climb the scale". */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Measured } from '../text/magnitudes.ts';
import { groups, type Scene } from '../text/scene.ts';
import { DOWN, UP } from '../words/changes.ts';
import { GROWING, SHRINKING } from '../words/ways.ts';
import { systemNear } from './scale-near.ts';
import type { NumberSide } from './sides.ts';

/** "the number before the dash", "the first number", of a thread: it tells how many noughts there are. */
export function countsZeros(items: readonly Item[], to: number): boolean {
  const after = joined(items.slice(to + 1, to + 6));
  const thread = items.some((item) => /^(?:sutures?|threads?|stitch(?:es)?|strands?)$/.test(item.word));
  const zeros = groups(items).some((group) =>
    group.sizes.every(({ system, value }) => system === 'usp' && value < 1),
  );
  return (
    /^(?:before|in front of|left of) the (?:0|zero|nought|oh|o|dash|hyphen|slash)\b/.test(after) ||
    (items.slice(Math.max(0, to - 1), to + 1).some((item) => item.word === 'first') && (thread || zeros))
  );
}

/** "the gauge climbs", "as the French number goes up", "each extra zero". */
export function changing(scene: Scene, items: readonly Item[], words: readonly Measured[]): NumberSide[] {
  for (let i = 0; i < items.length; i++) {
    const item = items[i]!;
    // "A larger gauge needle increases …": the word belongs to the idiom before it.
    if (words.some((word) => word.idiom && word.at < i && i <= word.to)) continue;
    const digit = item.axisNoun?.axis === 'number';
    const counted = digit && countsZeros(items, i) && !item.system;
    const noun = counted ? 'usp-zeros' : (item.system ?? (digit ? systemNear(scene, items, i) : undefined));
    if (!noun || noun === 'usp') continue;
    const zero = noun === 'usp-zeros' && !counted;
    const before = items.slice(Math.max(0, i - 3), i).findLast((near) => ADDED.has(near.word));
    if (zero && before)
      return [{ at: i, to: i, system: noun, sign: takesAway(before, items[i + 1]) ? -1 : 1 }];
    const tail = Math.max(
      i + 1,
      items.findIndex((near, k) => k > i && k < i + 8 && !LED.test(near.word)),
    );
    const reach = tail > i + 1 ? tail + 2 : i + 5;
    const after = i + 1 + items.slice(i + 1, reach).findIndex((_, k) => moves(items, i + 1 + k) !== 0);
    if (after <= i) continue;
    const named = SIZE_WORD.has(items[i + 1]?.word ?? '') ? i + 2 : i + 1;
    if (items.slice(named, after).some((near) => near.axisNoun && near.axisNoun.axis !== 'number')) continue;
    if (
      items
        .slice(i + 1, after)
        .some(
          (near) =>
            near.kind === 'punctuation' ||
            near.kind === 'size' ||
            near.word === 'means' ||
            near.word === 'is',
        )
    )
      continue;
    return [{ at: i, to: after, system: noun, sign: moves(items, after) === 1 ? 1 : -1 }];
  }
  return [];
}
/** "goes up", "has to be lowered": a word of change, or what must be done to a number. */
function moves(items: readonly Item[], i: number): 1 | -1 | 0 {
  const { word } = items[i]!;
  if (UP.has(word)) return 1;
  if (DOWN.has(word)) return -1;
  if (!/^(?:be|being|is|are|gets?)$/.test(items[i - 1]?.word ?? '')) return 0;
  return RAISED.test(word) ? 1 : LOWERED.test(word) ? -1 : 0;
}
const RAISED = /^(?:raised|increased|upped|higher)$/;
const LOWERED = /^(?:lowered|reduced|decreased|lower)$/;
/** Between a number and its change: where it stands, and that it must. */
const LED =
  /^(?:numbers?|figures?|digits?|sizes?|before|in|front|of|the|dash|hyphen|slash|zero|on|label|hub|has|have|must|needs?|should|to|be|come|go|will|get|then|always|also|simply|just)$/;

/** "drop a zero", "every zero fewer". */
const takesAway = (before: Item, next: Item | undefined): boolean =>
  before.word === 'fewer' || before.word === 'drop' || /^(?:fewer|less)$/.test(next?.word ?? '');

/** "As the French size goes up": the word belongs to the name of the scale. */
const SIZE_WORD = new Set(['size', 'sizes', 'scale']);
const ADDED = new Set([
  'extra',
  'more',
  'another',
  'additional',
  'added',
  'add',
  'adding',
  'every',
  'each',
  'fewer',
  'drop',
]);

/** "Rising gauge numbers mean …": a participle before the number. */
export function growing(scene: Scene, items: readonly Item[]): NumberSide[] {
  for (let i = 0; i + 1 < items.length; i++) {
    const { word } = items[i]!;
    const sign = GROWING.has(word) ? 1 : SHRINKING.has(word) ? -1 : step(items, i) || climbs(items, i);
    const k = SKIPPED.has(items[i + 1]!.word) ? i + 2 : i + 1;
    const next = items[k];
    const system =
      next?.system ?? (next?.axisNoun?.axis === 'number' ? systemNear(scene, items, k) : undefined);
    if (sign === 0 || !system || system === 'usp') continue;
    return [{ at: i, to: k, system, sign }];
  }
  return [];
}

const SKIPPED = new Set(['the', 'a', 'in', 'your']);

/** "as you climb the French scale". */
const climbs = (items: readonly Item[], i: number): 1 | -1 | 0 => {
  const scale = /^(?:scale|numbers?|sizes?|ladder|range|figures?|list|chart)$/;
  const named =
    items[i + 1]?.word === 'the' &&
    (items[i + 2]?.system ? scale.test(items[i + 3]?.word ?? '') : items[i + 2]?.axisNoun?.axis === 'number');
  return !named
    ? 0
    : /^(?:climb|ascend|mount)$/.test(items[i]!.word)
      ? 1
      : /^descend$/.test(items[i]!.word)
        ? -1
        : 0;
};

const STEPS =
  /^(?:steps?|jumps?|moves?|sizes?|going|go|moving|stepping|climbing|climb|working|come|coming|get|walk|run|read|reading|count|travel|head|work)$/;

/** "each step up in French", "one size down the gauge". */
function step(items: readonly Item[], i: number): 1 | -1 | 0 {
  const before = items.slice(Math.max(0, i - 2), i).some((item) => STEPS.test(item.word));
  const scale =
    items[i + 1]?.word === 'in' ||
    items[i + 3]?.axisNoun?.axis === 'number' ||
    /^(?:scale|range|ladder|chart)$/.test(items[i + 3]?.word ?? '') ||
    items[i + 2]?.system === 'french';
  if (!before || !scale) return 0;
  return items[i]!.word === 'up' ? 1 : items[i]!.word === 'down' ? -1 : 0;
}
