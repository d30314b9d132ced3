/** Number sides of a direction said in passing: "a longer row of zeros", "from a lower number to a higher one", "go up in number". */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { NumberSide, SizeSide } from './sides.ts';

type System = NumberSide['system'];

/** "a longer row of zeros". */
export function rowOfZeros(items: readonly Item[]): NumberSide | undefined {
  const at = items.findIndex(
    (item, i) =>
      /^(?:longer|shorter)$/.test(item.word) &&
      /^(?:row|string|line|run|tail)$/.test(items[i + 1]?.word ?? '') &&
      items[i + 2]?.word === 'of' &&
      items[i + 3]?.system === 'usp-zeros',
  );
  if (at < 0) return undefined;
  return { at, to: at + 3, system: 'usp-zeros', sign: items[at]!.word === 'longer' ? 1 : -1 };
}

/** "Take a zero away", "remove a nought". */
export function zeroTaken(items: readonly Item[]): NumberSide | undefined {
  const zero = items.findIndex((item) => item.system === 'usp-zeros');
  if (zero < 1) return undefined;
  const verb = items.slice(Math.max(0, zero - 3), zero).map((item) => item.word);
  const away =
    /^(?:away|off)$/.test(items[zero + 1]?.word ?? '') || verb.includes('away') || verb.includes('off');
  const takes = verb.some((word) => /^(?:take|taking|takes)$/.test(word)) && away;
  const loses = verb.some((word) => /^(?:remove|removing|lose|losing|strip|subtract|knock)$/.test(word));
  return takes || loses ? { at: zero, to: zero, system: 'usp-zeros', sign: -1 } : undefined;
}

/** "from a lower gauge number to a higher one": the number goes from the first to the second. */
export function fromNumber(items: readonly Item[], sides: readonly NumberSide[]): NumberSide | undefined {
  const first = sides[0];
  if (!first) return undefined;
  const to = items.findIndex((item, i) => i > first.to && item.word === 'to');
  const from = items.slice(Math.max(0, first.at - 2), first.at).some((item) => item.word === 'from');
  const second = items[to + 2]?.magnitude ?? items[to + 1]?.magnitude;
  if (!from || to < 0 || to - first.to > 3 || !second || second.axis === 'flow' || second.axis === 'strength')
    return undefined;
  return second.sign === first.sign ? undefined : { ...first, to: to + 2, sign: second.sign };
}

/** "every number is narrower than the one below it": each against the last. */
export function eachAfterLast(
  items: readonly Item[],
  sentence: readonly Item[],
  systemAt: (i: number) => System | undefined,
): NumberSide | undefined {
  const at = items.findIndex(({ word }) => /^(?:every|each)$/.test(word));
  const unit = items.findIndex(
    (item, i) => i > at && i <= at + 3 && (item.system !== undefined || item.axisNoun?.axis === 'number'),
  );
  if (at < 0 || unit < 0 || !/\bthan the (?:one|number|size|figure|last|previous)\b/.test(joined(sentence)))
    return undefined;
  const system = items[unit]!.system ?? systemAt(unit);
  return system && system !== 'usp' && system !== 'usp-zeros' ? { at, to: unit, system, sign: 1 } : undefined;
}

/** "Count the noughts: every one of them …". */
export function eachOfThem(items: readonly Item[]): NumberSide | undefined {
  const at = items.findIndex((_, i) => /^(?:every|each)(?: one)? of them\b/.test(joined(items, i, i + 4)));
  const zeros = items.findIndex(({ system }) => system === 'usp-zeros');
  return at > zeros && zeros >= 0 ? { at, to: at, system: 'usp-zeros', sign: 1 } : undefined;
}

/** "every French you add", "each number more", "one more on the French scale". */
export function oneMore(
  items: readonly Item[],
  systemAt: (i: number) => System | undefined,
): NumberSide | undefined {
  for (let i = 0; i < items.length; i++) {
    if (!/^(?:every|each|one|two|three|four|few)$/.test(items[i]!.word)) continue;
    const near = items.slice(i + 1, i + 6);
    const unit = near.findIndex(
      (item) =>
        item.system === 'french' ||
        item.axisNoun?.axis === 'number' ||
        (/^(?:units?|points?)$/.test(item.word) && items.some(({ system }) => system === 'french')),
    );
    const adds = near.findIndex((item) => /^(?:more|extra|add|added|further|up)$/.test(item.word));
    // "two units more", not "two French nurses more".
    if (/^(?:two|three|four|few)$/.test(items[i]!.word) && adds !== unit + 1) continue;
    if (unit < 0 || adds < 0 || near.some((item) => item.kind === 'size' || item.word === ',')) continue;
    const system =
      near[unit]!.system ?? (near[unit]!.axisNoun ? systemAt(i + 1 + unit) : ('french' as const));
    if (system !== 'french' && system !== 'needle-gauge') continue;
    return { at: i, to: i + 1 + Math.max(unit, adds), system, sign: 1 };
  }
  return undefined;
}

/** Nothing follows that would make a noun of two words: "more French lessons". */
const stops = (item: Item | undefined): boolean =>
  item === undefined || item.kind === 'punctuation' || /^(?:means?|is|gives?|and|so)$/.test(item.word);

/** "more French, less tube". */
export function moreFrench(items: readonly Item[]): NumberSide | undefined {
  const at = items.findIndex(
    (item, i) => /^(?:more|less)$/.test(item.word) && items[i + 1]?.system === 'french',
  );
  return at < 0 || !stops(items[at + 2])
    ? undefined
    : { at, to: at + 1, system: 'french', sign: items[at]!.word === 'more' ? 1 : -1 };
}

/** "In gauge, bigger is smaller": the first is the number, the second the thing. */
export function biggerIs(
  items: readonly Item[],
  systemAt: (i: number) => System | undefined,
): NumberSide | undefined {
  const at = items.findIndex(
    (item, i) =>
      GENERAL.test(item.word) &&
      /^(?:is|means|equals|=|→)$/.test(items[i + 1]?.word ?? '') &&
      items[i + 2]?.magnitude?.degree === 'comparative',
  );
  if (at < 0 || at > 6 || items.slice(0, at).some((item) => item.magnitude || item.axisNoun))
    return undefined;
  const system = systemAt(at);
  return system && system !== 'usp'
    ? { at, to: at, system, sign: /^(?:bigger|larger|higher|more)$/.test(items[at]!.word) ? 1 : -1 }
    : undefined;
}
const GENERAL = /^(?:bigger|larger|higher|more|smaller|lower|less)$/;

const WAY = /^(?:up|down|climb|rise|drop|fall|ascend|descend)$/;
const UPWARD = /^(?:up|upwards?|climb|rise|ascend)$/;

/** "go up in number", "climb in gauge". */
export function inNumber(
  items: readonly Item[],
  systemAt: (i: number) => System | undefined,
): NumberSide | undefined {
  const at = items.findIndex(
    (item, i) =>
      WAY.test(item.word) &&
      items[i + 1]?.word === 'in' &&
      (items[i + 2]?.axisNoun?.axis === 'number' || items[i + 2]?.system !== undefined) &&
      items[i + 3]?.word !== 'of',
  );
  const system = at < 0 ? undefined : (items[at + 2]!.system ?? systemAt(at + 2));
  return system && system !== 'usp'
    ? { at, to: at + 2, system, sign: UPWARD.test(items[at]!.word) ? 1 : -1 }
    : undefined;
}

/** "count up in width" counts no numbers. */
const widthAfter = (items: readonly Item[], i: number): boolean =>
  items[i + 1]?.word === 'in' &&
  items[i + 2]?.axisNoun !== undefined &&
  items[i + 2]?.axisNoun?.axis !== 'number';

/** "as you count up", "count down in gauge". */
export function counting(
  items: readonly Item[],
  systemAt: (i: number) => System | undefined,
): NumberSide | undefined {
  const at = items.findIndex(
    (item, i) =>
      /^(?:up|down)$/.test(item.word) &&
      !widthAfter(items, i) &&
      /^(?:count|counting|counted)$/.test(items[i - 1]?.word ?? ''),
  );
  const system = at < 0 ? undefined : systemAt(at);
  return system && system !== 'usp'
    ? { at: at - 1, to: at, system, sign: items[at]!.word === 'up' ? 1 : -1 }
    : undefined;
}

/** "go up in width". */
export function inSize(items: readonly Item[]): SizeSide | undefined {
  const at = items.findIndex((item, i) => {
    const axis = items[i + 2]?.axisNoun?.axis;
    return (
      (WAY.test(item.word) || /^(?:up|down)wards?$/.test(item.word)) &&
      items[i + 1]?.word === 'in' &&
      axis !== undefined &&
      axis !== 'number'
    );
  });
  if (at < 0) return withAxis(items);
  const noun = items[at + 2]!.axisNoun!;
  return {
    at,
    to: at + 2,
    axis: noun.axis,
    sign: (UPWARD.test(items[at]!.word) ? noun.sign : -noun.sign) as 1 | -1,
  };
}

/** "gauge falls with the width", "the numbers climb along with the diameter": what it goes with is taken to grow. */
function withAxis(items: readonly Item[]): SizeSide | undefined {
  const at = items.findIndex(
    (item, i) =>
      item.word === 'with' && CHANGES.test(items[i - (items[i - 1]?.word === 'along' ? 2 : 1)]?.word ?? ''),
  );
  const k = at < 0 ? -1 : /^(?:the|its|their)$/.test(items[at + 1]?.word ?? '') ? at + 2 : at + 1;
  const noun = items[k]?.axisNoun;
  const end = items[k + 1];
  const alone = end === undefined || end.kind === 'punctuation' || end.word === 'of';
  return noun && noun.axis !== 'number' && alone
    ? { at: k, to: k, axis: noun.axis, sign: noun.sign }
    : undefined;
}
const CHANGES = /^(?:rises?|climbs?|grows?|increases?|falls?|drops?|decreases?|shrinks?|up|down)$/;

/** "Zeros count upwards in thickness", "gauge runs down in width": the number is taken as it goes on. */
export function runsOn(items: readonly Item[]): NumberSide | undefined {
  const at = items.findIndex(
    (item, i) =>
      COUNTS.test(item.word) &&
      /^(?:up|down)(?:wards?)?$/.test(items[i + 1]?.word ?? '') &&
      items[i + 2]?.word === 'in',
  );
  if (at < 1 || items[at + 3]?.axisNoun === undefined || items[at + 3]!.axisNoun!.axis === 'number')
    return undefined;
  const subject = items.slice(Math.max(0, at - 3), at);
  const named = subject.findLast((item) => item.system);
  const only = subject.every(
    (item) => item.system || item.axisNoun?.axis === 'number' || /^(?:the|sizes?|scale)$/.test(item.word),
  );
  return named?.system && only && named.system !== 'usp'
    ? { at, to: at, system: named.system, sign: 1 }
    : undefined;
}
const COUNTS = /^(?:counts?|runs?|goes|go)$/;

const THING = /^(?:tube|needle|thread|catheter|metal|steel|cannula|suture|width|girth|strand)$/;

/** "more French, less tube", "you lose a third of a millimetre". */
export function amount(items: readonly Item[], taken: (at: number) => boolean): SizeSide | undefined {
  for (let i = 0; i + 1 < items.length; i++) {
    const { word } = items[i]!;
    if (taken(i)) continue;
    const less = word === 'less' || word === 'lose' || word === 'loses';
    const more = word === 'more' || word === 'gain' || word === 'gains';
    if (!less && !more) continue;
    const thing = THING.test(items[i + 1]!.word) && stops(items[i + 2]);
    const length = /^(?:lose|loses|gain|gains)$/.test(word) && measure(items.slice(i + 1, i + 6));
    const after =
      i > 1 && measure(items.slice(Math.max(0, i - 5), i)) && items[i + 1]!.kind === 'punctuation';
    if (thing || length || after) return { at: i, to: i, axis: 'outer', sign: less ? -1 : 1 };
  }
  return undefined;
}

/** "a third of a millimetre", "0.33 mm". */
const measure = (near: readonly Item[]): boolean =>
  near.some(
    (item) =>
      /^(?:millimetre|millimeter|mm)$/.test(item.word) ||
      (item.kind === 'size' && /m(?:m|illi)/.test(item.word)),
  );
