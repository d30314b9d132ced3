/**
 * How many times the cross-section, or by the law of narrow pipes the flow: "the cross-section of the 21 Fr is three times
 * that of the 7 Fr", "by the law the 6.0 carries eight times the flow of the 3.0". The sizes give the ratio, its square or
 * its fourth power the number.
 */
import { wordValue } from '../../mentions/words/numbers.ts';
import type { FormulaClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import {
  distinct,
  type Group,
  groups,
  type Scene,
  sameSizes,
  sameSystem,
  sentenceSpan,
  spanOf,
} from '../text/scene.ts';
import type { Reading } from './model.ts';

const FOLDS: ReadonlyMap<string, number> = new Map([
  ['twice', 2],
  ['double', 2],
  ['triple', 3],
  ['half', 1 / 2],
  ['quarter', 1 / 4],
  ['third', 1 / 3],
]);

/** Readings of a sentence that says how many times. */
export function powers(scene: Scene): Reading[] {
  const { items } = scene;
  if (items.some(({ word }) => OPEN.test(word))) return [];
  const plain = items.flatMap((_, at) => widths(scene, at));
  if (plain.length > 0 || !items.some(({ word }) => MEASURES.test(word))) return plain;
  if (/(?<!\b(?:one|same|equal|given|any|constant)) pressure\b/.test(textOf(items))) return [];
  return items.flatMap((_, at) => {
    const fold = foldAt(items, at);
    const power = fold && powerOf(scene, fold);
    const pair = power && sidesOf(scene, fold);
    return fold && power && pair ? [reading(scene, fold, power, pair)] : [];
  });
}
const MEASURES = /^(?:areas?|cross-sections?|cross-sectional|flows?|resistance)$/;

/** Left open, bounded, or a length or a pressure that changes too. */
const OPEN =
  /^(?:not|never|no|than|least|most|if|over|under|nearly|almost|up|only|longer|shorter|measured|bench|practice|\?)$/;

interface Fold {
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

/** "half as wide as", "three times the diameter of": the sizes themselves give it, where they are diameters. */
function widths(scene: Scene, at: number): Reading[] {
  const { items } = scene;
  const fold = foldAt(items, at);
  if (!fold || !AS_WIDE.test(textOf(items.slice(fold.to + 1, fold.to + 6)))) return [];
  if (
    items.some(({ word }) => INSIDE.test(word) || MEASURES.test(word)) ||
    !/^(?:is|was|are|a|of|:|,|exactly|about|just|roughly|therefore|then|only|has|with|be|fully|one|measures)$/.test(
      items[fold.from - 1]?.word ?? '',
    )
  )
    return [];
  const all = groups(items);
  const nearest = all.filter((g) => g.to < fold.from && fold.from - g.to <= 6).at(-1);
  // "half as wide as a 20 Fr, and a third as wide as a 30 Fr": still said of the first.
  const standard =
    nearest && items.slice(Math.max(0, nearest.from - 2), nearest.from).some(({ word }) => word === 'as');
  const left = standard ? all.filter((g) => g.to < nearest.from).at(-1) : nearest;
  const its = ITS.test(textOf(items.slice(fold.to + 1, fold.to + 6)));
  const right = its ? otherOf(scene, left) : all.find((g) => g.from > fold.to && g.from - fold.to <= 8);
  if (!left || !right || !linear(left) || !linear(right)) return [];
  if (!sameSystem(left, right) || sameSizes(left, right)) return [];
  // Said loosely, or the wrong way round, which is read as a comparison.
  const worked = left.sizes[0]!.value / right.sizes[0]!.value;
  if (worked > 1 !== fold.value > 1) return [];
  return [reading(scene, fold, 1, [left, right])];
}
/** "The 6 Fr is half its width": of the other of two just named. */
function otherOf({ items, before }: Scene, left: Group | undefined): Group | undefined {
  const named = left ? groups(items).filter((g) => g.to < left.from) : [];
  const earlier = named.length > 0 ? named : before.at(-1) ? groups(before.at(-1)!.items) : [];
  const others = left ? distinct(earlier).filter((g) => !sameSizes(g, left)) : [];
  return others.length === 1 && distinct(earlier).length <= 2 ? others[0] : undefined;
}
const ITS = /^(?:of )?(?:its|the other's|that) (?:outer |outside )?(?:width|diameter|thickness)\b/;
const AS_WIDE =
  /^(?:(?:of )?(?:its|the other's|that) (?:outer |outside )?(?:width|diameter|thickness)|as (?:wide|thick|broad|fat) (?:across )?as|(?:of )?the (?:outer |outside |external )?(?:width|diameter|thickness) of|(?:of )?(?:that|the one) of)\b/;
const INSIDE =
  /^(?:bore|inner|inside|internal|lumens?|room|flow|about|roughly|almost|around|approximately|hair|wall|walls|area|balloon)$/;
/** French, guidewires, Hegar dilators and the bore of a tube are diameters. */
const linear = ({ mentions, sizes }: Group): boolean =>
  mentions.length === 1 &&
  sizes.length === 1 &&
  /^(?:french|tube-id|wire-inch|hegar)$/.test(sizes[0]!.system);

/** "nine times", "16 times", "twice", "a quarter of". */
function foldAt(items: readonly Item[], at: number): Fold | undefined {
  const { word } = items[at]!;
  if (word !== 'times') {
    const value = FOLDS.get(word);
    return value === undefined ? undefined : { value, from: at, to: at };
  }
  const before = items[at - 1];
  const value = before && (/^\d{1,3}$/.test(before.word) ? Number(before.word) : wordValue(before.word));
  return value ? { value, from: at - 1, to: at } : undefined;
}

/** The square for an area; the fourth power for flow, less than nothing for resistance, where the law is spoken of. */
function powerOf(scene: Scene, { from, to }: Fold): number | undefined {
  const { items } = scene;
  const near = textOf(items.slice(Math.max(0, from - 12), to + 6));
  if (/\b(?:areas?|cross-sections?|cross-sectional)\b/.test(near))
    return /\bflows?\b/.test(near) ? undefined : 2;
  const after = textOf(items.slice(to + 1, to + 5));
  const what = /^(?:the |of the |as much |more )?(flow|resistance)\b/.exec(after)?.[1];
  const lawful = /\b(?:law|poiseuille(?:'s)?|fourth power)\b/;
  const told = [items, ...scene.before.slice(-2).map((sentence) => sentence.items)];
  if (!what || !told.some((words) => lawful.test(textOf(words)))) return undefined;
  return what === 'flow' ? 4 : -4;
}

/** What is measured, right before, and what against: named behind, or the other one of two spoken of. */
function sidesOf(scene: Scene, { from, to }: Fold): readonly [Group, Group] | undefined {
  const all = groups(scene.items);
  const left = all.filter((g) => g.to < from && from - g.to <= 6).at(-1);
  if (!left || !exact(left) || foldedBefore(scene.items, left, from)) return undefined;
  const behind = all.find((g) => g.from > to && g.from - to <= 7);
  const spoken = distinct([
    ...all.filter((g) => g.to < left.from),
    ...(scene.before.at(-1) ? groups(scene.before.at(-1)!.items) : []),
  ]).filter((g) => exact(g) && sameSystem(g, left) && !sameSizes(g, left));
  const right = behind ?? (spoken.length === 1 ? spoken[0] : undefined);
  return right && exact(right) && sameSystem(left, right) && !sameSizes(left, right)
    ? [left, right]
    : undefined;
}

/** "twice the 12 Fr in width and four times in area": still said of what the first was said of. */
const foldedBefore = (items: readonly Item[], left: Group, from: number): boolean =>
  items.slice(left.to + 1, from).some(({ word }) => word === 'and') &&
  items
    .slice(Math.max(0, left.from - 3), left.from)
    .some((_, i) => foldAt(items, Math.max(0, left.from - 3) + i));

/** French and the bore of a tube go by the diameter itself. */
const exact = ({ mentions, sizes }: Group): boolean =>
  mentions.length === 1 && sizes.length === 1 && /^(?:french|tube-id)$/.test(sizes[0]!.system);

/** How far from the worked-out number a told one may be. */
const SLACK = 0.2;
const LOOSE = 0.3;

function reading(scene: Scene, fold: Fold, power: number, [left, right]: readonly [Group, Group]): Reading {
  const [a, b] = [left.sizes[0]!.value, right.sizes[0]!.value];
  const worked = (a / b) ** power;
  const holds = Math.abs(fold.value / worked - 1) <= (power === 1 ? LOOSE : SLACK);
  const [top, bottom] = power > 0 ? [a, b] : [b, a];
  const sign = power === 1 ? '' : Math.abs(power) === 2 ? '²' : '⁴';
  const named = power === 1 ? 'widths' : Math.abs(power) === 2 ? 'area-squared' : 'flow-to-fourth';
  const focus = spanOf(scene, scene.items[fold.from]!, scene.items[fold.to]!);
  const claim: FormulaClaim = {
    kind: 'formula',
    construction: 'powers',
    span: sentenceSpan(scene),
    focus,
    system: left.sizes[0]!.system,
    formula: `${named}${holds ? '' : '-wrong'}`,
    sum: `(${top} ÷ ${bottom})${sign} = ${Number(worked.toPrecision(3))}`,
  };
  return { claim, at: fold.from, from: left.from, to: fold.to };
}
