/**
 * Number and size said to run together or apart: "gauge is inversely related to bore", "French runs backwards", "gauge number
 * and diameter go hand in hand", "gauge and French run in opposite directions".
 */
import type { Item } from '../text/items.ts';
import type { Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Reading } from './model.ts';
import { directionClaim, type NumberSide, type SizeSide } from './sides.ts';

export const INVERSE = new Set([
  'inverse',
  'inversely',
  'opposite',
  'backwards',
  'backward',
  'reverse',
  'reversed',
  'upside-down',
  'contrary',
  'inverted',
]);
export const STRAIGHT = new Set([
  'direct',
  'straight',
  'directly',
  'proportional',
  'proportionally',
  'proportionate',
  'same',
  'similar',
  'ordinary',
  'normal',
  'natural',
  'sensible',
  'logical',
  'intuitive',
  'forwards',
]);

/** "works the same way", "run in opposite directions". */
const runsLike = (items: readonly Item[], cue: number) =>
  items
    .slice(Math.max(0, cue - 4), cue)
    .some((item) => /^(?:runs?|works?|goes|go|counts?|reads?|behaves?)$/.test(item.word));

/** "go hand in hand", "rise and fall together". */
const handInHand = (items: readonly Item[]): number =>
  items.findIndex(
    (item, i) =>
      (item.word === 'hand' && items[i + 1]?.word === 'in' && items[i + 2]?.word === 'hand') ||
      (item.word === 'together' && items.slice(Math.max(0, i - 3), i).some((near) => MOVES.test(near.word))),
  );
const MOVES = /^(?:go|goes|rise|rises|fall|falls|grow|grows|move|moves|run|runs|climb)$/;

const PLAIN_WAY = /^(?:ordinary|normal|natural|sensible|logical|intuitive|forwards)$/;

/** "French runs backwards, like gauge": said of the first. */
function likened(items: readonly Item[], cue: number): Exclude<Item['system'], undefined> | undefined {
  const named = [...new Set(items.slice(0, cue).flatMap(({ system }) => system ?? []))];
  const like = items.slice(cue + 1, cue + 5).some(({ word }) => /^(?:like|unlike|as)$/.test(word));
  const way = /^(?:backwards?|forwards|upside-down|inverted|reversed)$/.test(items[cue]!.word);
  return named.length === 1 && like && way && items.slice(cue).some(({ system }) => system)
    ? named[0]
    : undefined;
}

/** Verbs of a scale that runs. */
export const RUNS = /^(?:runs?|goes|go|moves?|works?|counts?)$/;

/** "gauge runs against the bore", "the French number moves with the width": a scale, a verb, and the measure itself. */
function runsBeside(items: readonly Item[]): { number: NumberSide; size: SizeSide } | undefined {
  const at = items.findIndex(
    ({ word }, i) =>
      (word === 'against' && RUNS.test(items[i - 1]?.word ?? '')) ||
      (word === 'with' && /^(?:runs?|moves?)$/.test(items[i - 1]?.word ?? '')),
  );
  const noun = /^(?:the|its|their)$/.test(items[at + 1]?.word ?? '') ? at + 2 : at + 1;
  const measure = items[noun]?.axisNoun;
  const systems = new Set(items.slice(0, Math.max(0, at)).flatMap(({ system }) => system ?? []));
  const [system, ...more] = [...systems];
  if (at < 1 || !measure || measure.axis === 'number' || !system || system === 'usp' || more.length > 0)
    return undefined;
  if (at - items.findLastIndex((item, i) => i < at && item.system !== undefined) > 8) return undefined;
  if (items.slice(0, at).some(({ word, kind }) => kind === 'size' || TURNED.test(word))) return undefined;
  if (items.slice(at).some(({ word }) => /^(?:not|old|japan|japanese|once)$/.test(word))) return undefined;
  if (!/^(?:[.,;:!)—–-]|of|and|so|just|as|here|but|$)/.test(items[noun + 1]?.word ?? '')) return undefined;
  const sign = ((items[at]!.word === 'with' ? 1 : -1) * measure.sign) as 1 | -1;
  return {
    number: { at, to: at, system, sign: 1 },
    size: { at, to: at, axis: measure.axis, sign },
  };
}
const TURNED = /^(?:if|unless|unlike|than|whether|when|neither|or|not|may|might|could|would)$/;

/** Verbs by which a measure follows a number upwards; what falls "with" a number may fall when it does. */
export const RISES = /^(?:grows?|rises?|increases?|climbs?|widens?|thickens?)$/;

/** "the bore grows with the gauge number": the measure, a verb, and the number. "A larger gauge" by itself may be the wider. */
function growsWith(items: readonly Item[]): { number: NumberSide; size: SizeSide } | undefined {
  const at = items.findIndex(({ word }, i) => word === 'with' && RISES.test(items[i - 1]?.word ?? ''));
  const noun = /^(?:the|its|their)$/.test(items[at + 1]?.word ?? '') ? at + 2 : at + 1;
  const system = items[noun]?.system;
  const end = /^(?:numbers?|figures?)$/.test(items[noun + 1]?.word ?? '') ? noun + 1 : noun;
  if (at < 1 || !system || system === 'usp' || (end === noun && system === 'needle-gauge')) return undefined;
  const measures = items.slice(Math.max(0, at - 6), at - 1).flatMap(({ axisNoun }) => axisNoun ?? []);
  const [measure, ...more] = measures;
  if (!measure || more.length > 0 || !/^(?:outer|bore|flow)$/.test(measure.axis)) return undefined;
  if (items.slice(0, end).some(({ word, kind }) => kind === 'size' || TURNED.test(word))) return undefined;
  if (items.slice(0, at).some(({ word }) => NEGATIONS.has(word)) || items.slice(at).some(lessens))
    return undefined;
  if (!/^(?:[.,;:!)—–-]|and|so|just|as|here|but|$)/.test(items[end + 1]?.word ?? '')) return undefined;
  return {
    number: { at, to: at, system, sign: 1 },
    size: { at, to: at, axis: measure.axis, sign: measure.sign },
  };
}
const lessens = ({ word }: Item): boolean => /^(?:not|falling|decreasing|lower|smaller)$/.test(word);

/** "gauge is inversely related to bore", "French runs backwards". */
export function inverseIn(scene: Scene, items: readonly Item[], from: number): Reading[] {
  const beside = runsBeside(items) ?? growsWith(items);
  if (beside) return [directionClaim(scene, from, beside.number, beside.size)];
  const at = items.findIndex((item) => INVERSE.has(item.word));
  const together = at < 0 ? handInHand(items) : -1;
  const straight =
    together >= 0
      ? together
      : at < 0
        ? items.findIndex(
            (item, i) =>
              item.word === 'proportional' ||
              (item.word === 'forwards' && runsLike(items, i + 1)) ||
              (STRAIGHT.has(item.word) &&
                /^(?:proportional|proportion|directions?|ways?|relation|relationship|correlation|link|related|linked|correlated|with)$/.test(
                  items[i + 1]?.word ?? '',
                )),
          )
        : -1;
  const cue = at >= 0 ? at : straight;
  if (cue < 0) return [];
  const systems = [...new Set(items.flatMap((item) => (item.system ? [item.system] : [])))].filter(
    (s) => s !== 'usp',
  );
  const sized = items.some((item) => item.axisNoun && item.axisNoun.axis !== 'number');
  const related =
    sized ||
    (/^(?:scale|system|series|way|numbering|order)$/.test(items[cue + 1]?.word ?? '') &&
      /^(?:an?|the)$/.test(items[cue - 1]?.word ?? '') &&
      /^(?:is|are|has|have)$/.test(items[cue - 2]?.word ?? '')) ||
    (together < 0 && /^(?:runs?|works?|goes|go|counts?|reads?)$/.test(items[cue - 1]?.word ?? '')) ||
    (at < 0 && PLAIN_WAY.test(items[cue]!.word) && runsLike(items, cue));
  const like = likened(items, cue);
  const first = like ?? systems[0];
  if (
    like === undefined &&
    systems.length === 2 &&
    systems.includes('needle-gauge') &&
    systems.includes('french') &&
    runsLike(items, cue)
  ) {
    // French runs up: what runs the same way as French is said to run up too.
    const gauge: NumberSide = { at: cue, to: cue, system: 'needle-gauge', sign: 1 };
    return [directionClaim(scene, from, gauge, { at: cue, to: cue, axis: 'outer', sign: at >= 0 ? -1 : 1 })];
  }
  if ((systems.length !== 1 && !like) || !first || !related) return [];
  const other =
    items.some((item) => item.word === 'scale' || item.word === 'system') &&
    items.some((item) => item.word === 'of' && items[items.indexOf(item) - 1]?.word === 'opposite');
  if (other) return [];
  const side: NumberSide = { at: cue, to: cue, system: first, sign: 1 };
  return [directionClaim(scene, from, side, { at: cue, to: cue, axis: 'outer', sign: at >= 0 ? -1 : 1 })];
}
