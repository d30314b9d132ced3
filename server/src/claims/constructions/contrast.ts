/**
 * Two sizes set against each other by opposite words: "the 18 is the skinny one, the 24 the fat one", "from 14 (wide) to
 * 24 (narrow)", "at the thin end hangs the 26 G, at the thick end the 14 G", "lowest through the 24 G, highest through the 14 G".
 */
import type { Item } from '../text/items.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

export const contrast: Construction = {
  id: 'contrast',
  needs: () => [{ sizes: 2, holds: ['opposed'] }],
  read(scene) {
    if (scene.items.some((item) => item.word === 'than')) return [];
    const pairOf = twoOf(groups(scene.items));
    if (!pairOf) return extremes(scene);
    if (!sameSystem(...pairOf) || sameSizes(...pairOf)) return [];
    const words = settled(scene.items, measuredWords(scene.items)).filter(
      (m) => m.axis !== 'number' && !m.idiom && !m.excess,
    );
    const [a, b] = pairOf;
    const graded = stepUp(scene.items, words, a, b);
    if (graded) return [comparison(scene, 'contrast', b, a, graded)];
    const bound =
      behind(scene.items, words, a, b) ?? ahead(scene.items, words, a, b) ?? around(scene.items, words, a, b);
    // "Not the thicker 2-0 but the thinner 4-0" turns one down and does not deny what it is.
    const refused = scene.items.slice(0, bound?.[0].at ?? 0).some((item) => item.word === 'not');
    return bound && !refused && opposed(...bound) ? [comparison(scene, 'contrast', a, b, bound[0])] : [];
  },
};

/** "The thickest is the 0, next comes 3-0, and the thinnest is the 5-0": both ends of a longer row. */
function extremes(scene: Scene): Reading[] {
  const words = measuredWords(scene.items).filter((m) => m.degree === 'superlative' && !m.idiom);
  const [first, second] = words;
  if (words.length !== 2 || !first || !second || !opposed(first, second)) return [];
  const all = groups(scene.items);
  const of = (word: Measured, end: number) => {
    const next = all.find((g) => g.from > word.to && g.from < end);
    return next &&
      next.sizes.length === 1 &&
      next.from - word.to <= 5 &&
      clean(scene.items, word.to, next.from, AHEAD)
      ? next
      : undefined;
  };
  const [a, b] = [of(first, second.at), of(second, scene.items.length)];
  return a && b && sameSystem(a, b) && !sameSizes(a, b) ? [comparison(scene, 'contrast', a, b, first)] : [];
}

/** Two groups, or one range whose ends have nothing between them. */
function twoOf(all: readonly Group[]): [Group, Group] | undefined {
  return all.length === 2 ? [all[0]!, all[1]!] : undefined;
}

/** "Flow is lowest through …, highest through …": the second high or low measures what the first does. */
function settled(items: readonly Item[], words: readonly Measured[]): readonly Measured[] {
  const known = words.find((m) => m.degree === 'superlative' && m.axis !== 'number' && m.axis !== 'other');
  return words.map((m) =>
    known && m.axis === 'number' && m.degree === 'superlative' && m.at > known.at && !m.attributive
      ? { ...m, axis: known.axis }
      : known?.axis === 'flow' && m.axis === 'other' && /^(?:worst|poorest)$/.test(items[m.at]!.word)
        ? { ...m, axis: known.axis, sign: -1 }
        : m,
  );
}

const family = (m: Measured) =>
  m.axis === 'outer' || m.axis === 'bore' || m.axis === 'hole' ? 'size' : m.axis;

const opposed = (a: Measured, b: Measured): boolean =>
  a.sign !== b.sign && family(a) === family(b) && family(a) !== 'other' && a.degree === b.degree;

type Bound = readonly [Measured, Measured];

/** Each word stands after its size. */
function behind(items: readonly Item[], words: readonly Measured[], a: Group, b: Group): Bound | undefined {
  const first = owned(words, a, b.from);
  const second = owned(words, b, items.length);
  return first && second && clean(items, a.to, first.at) && clean(items, b.to, second.at)
    ? [first, second]
    : undefined;
}

/** "The 22 G is quick and the 18 G quicker": the same word, raised. */
function stepUp(
  items: readonly Item[],
  words: readonly Measured[],
  a: Group,
  b: Group,
): Measured | undefined {
  const [first, second] = [owned(words, a, b.from), owned(words, b, items.length)];
  if (first?.degree !== 'plain' || second?.degree !== 'comparative') return undefined;
  if (first.sign !== second.sign || first.axis !== second.axis || first.attributive) return undefined;
  const said = items.slice(b.to + 1, second.at).every((item) => item.deviceNoun || STILL.test(item.word));
  return said && clean(items, a.to, first.at) ? second : undefined;
}
const STILL = /^(?:even|still|much|yet|far|is|are|was)$/;

/** Each word stands before its size. */
function ahead(items: readonly Item[], words: readonly Measured[], a: Group, b: Group): Bound | undefined {
  const before = (from: number, group: Group) => {
    const mine = words.filter((m) => m.at > from && m.to < group.from && group.from - m.to <= 7);
    return mine.length === 1 ? mine[0] : undefined;
  };
  const [first, second] = [before(-1, a), before(a.to, b)];
  if (!first || !second || words.some((m) => m.at > b.to)) return undefined;
  return clean(items, first.to, a.from, AHEAD) && clean(items, second.to, b.from, AHEAD)
    ? [first, second]
    : undefined;
}

/** "The smallest we stock is 24 G; 14 G is the biggest": the first word before its size, the second behind. */
function around(items: readonly Item[], words: readonly Measured[], a: Group, b: Group): Bound | undefined {
  const [first, second, ...more] = words;
  if (!first || !second || more.length > 0 || first.degree !== 'superlative') return undefined;
  const placed = first.to < a.from && a.from - first.to <= 7 && second.at > b.to && second.at - b.to <= 6;
  const link = items
    .slice(a.to + 1, b.from)
    .every((item) => /^(?:[,;]|and|while|whereas|the|an?|but|our|needle|cannula|catheter)$/.test(item.word));
  return placed && link && clean(items, first.to, a.from, AHEAD) && clean(items, b.to, second.at)
    ? [first, second]
    : undefined;
}

function owned(words: readonly Measured[], group: Group, limit: number): Measured | undefined {
  const near = words.filter((m) => m.at > group.to && m.at < limit && m.at - group.to <= 6);
  // "the stiff, fat one": stiffness is no size.
  const mine = near.length > 1 ? near.filter((m) => m.axis !== 'other') : near;
  return mine.length === 1 ? mine[0] : undefined;
}

const TIES = new Set(
  'is are was has have the a an one needle cannula catheter wire suture thread as being = : , looks feels ( at end runs flows gives – — most least'.split(
    ' ',
  ),
);
/** Qualities beside the one that counts: "the stiff, fat one". */
const FEEL = /^(?:stiff|soft|floppy|long|short|sharp|flexible|,)$/;
const AHEAD = new Set(
  `is are was the a an one end side of all in on our tube tubes drain drains catheters sheath this pack box tray shelf rack drawer trolley needle cannula catheter wire suture thread
  being = : , through with sits hangs lies comes stands lives you find we have stock size sizes`
    .split(/\s+/)
    .filter(Boolean),
);

const clean = (items: readonly Item[], from: number, to: number, ties = TIES): boolean =>
  items
    .slice(from + 1, to)
    .every(
      (item) =>
        ties.has(item.word) ||
        (ties === TIES && (item.deviceNoun === true || FEEL.test(item.word))) ||
        item.axisNoun,
    );
