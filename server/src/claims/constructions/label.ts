/**
 * A size spoken of by what goes with it: "18 G in the left arm, 14 G in the right: the left one runs slower", "the catheter
 * is 4 mm across, the 14 G needle 2.1 mm, so the catheter is the wider", "the blue is 23 G, the orange 25 G; the blue is thicker".
 */

import { sentencesBefore, single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

export const label: Construction = {
  id: 'label',
  needs: () => [{ holds: ['compared'] }, { holds: ['superlative'] }],
  leaning: true,
  read(scene) {
    const word = measuredWords(scene.items).find(
      (m) => m.degree === 'comparative' && decidable(m.axis) && !m.idiom && !m.excess,
    );
    if (!word) return labelledEnd(scene);
    if (scene.items.slice(word.to, word.to + 9).some((item) => item.word === 'than'))
      return against(scene, word);
    const name = subjectBefore(scene.items, word);
    if (!name) return [];
    const own = groups(scene.items.slice(0, name.from));
    const home = own.length > 0 ? scene.items.slice(0, name.from) : scene.before.at(-1)?.items;
    const two = home ? groups(home) : [];
    if (!home || two.length !== 2 || distinct(two).length !== 2 || two.some((g) => g.sizes.length > 1))
      return [];
    const [a, b] = two as [Group, Group];
    const named = bearer(home, a, b, name.word);
    return named && !sameSizes(a, b) ? [reading(scene, named, named === a ? b : a, word, name.from)] : [];
  },
};

interface Name {
  readonly from: number;
  readonly word: string;
}

const BE =
  /^(?:is|are|was|runs|flows|gives|leaves|makes|has|drips|looks|feels|being|will|must|clearly|the|a|be|far|much|obviously)$/;
const NOUNS = /^(?:one|ones|needle|cannula|catheter|line|tube|drain|thread|suture|wire|lumen)$/;
const PLACES =
  /^(?:left|right|upper|lower|top|bottom|inner|distal|proximal|single|double|triple|old|new|medial|lateral|front|back|first|second)$/;
const THINGS =
  /^(?:needle|cannula|catheter|tube|drain|wire|thread|suture|sheath|stent|tracheostomy|guidewire|dilator|introducer)$/;

/** "the left one is", "the needle is", "the blue is": nothing else between article and comparing word. */
function subjectBefore(items: readonly Item[], word: Measured): Name | undefined {
  let i = word.at - 1;
  while (i >= 0 && BE.test(items[i]!.word) && !nameable(items, i)) i--;
  if (i < 1 || i === word.at - 1) return undefined;
  // "the one on the left is".
  if (PLACES.test(items[i]!.word) && /^(?:on|in) the$/.test(`${items[i - 2]?.word} ${items[i - 1]?.word}`))
    return items[i - 3]?.word === 'one' ? { from: i - 4, word: items[i]!.word } : undefined;
  const noun = NOUNS.test(items[i]!.word) && labels(items[i - 1]) ? i - 1 : i;
  const item = items[noun]!;
  if (!labels(item) && !THINGS.test(item.word)) return undefined;
  return items[noun - 1]?.word === 'the' ? { from: noun - 1, word: item.word } : undefined;
}

const nameable = (items: readonly Item[], i: number): boolean => labels(items[i]);
const labels = (item: Item | undefined): boolean =>
  item !== undefined && (PLACES.test(item.word) || (item.colour !== undefined && item.kind === 'word'));

const REACH = 5;

/** Which of the two the name stands beside; undefined when it stands beside both or neither. */
function bearer(items: readonly Item[], a: Group, b: Group, name: string): Group | undefined {
  const places = items.flatMap((item, i) => (item.word === name ? [i] : []));
  const near = (group: Group) =>
    Math.min(
      ...places.map((i) => (i < group.from ? group.from - i : i - group.to)),
      Number.POSITIVE_INFINITY,
    );
  const [x, y] = [near(a), near(b)];
  if (x === y || Math.min(x, y) > REACH) return undefined;
  const clear = places.length === 1 || Math.abs(x - y) >= 2;
  const chosen = x < y ? a : b;
  return clear && !crossed(items, chosen, places, chosen === a ? b : a) ? chosen : undefined;
}

/** A comma or "and" between a size and its name, with the other size on the name's side. */
function crossed(items: readonly Item[], own: Group, places: readonly number[], other: Group): boolean {
  const at = places.toSorted((p, q) => gap(own, p) - gap(own, q))[0]!;
  const between = at < own.from ? items.slice(at + 1, own.from) : items.slice(own.to + 1, at);
  const inside =
    at < own.from ? other.from > at && other.to < own.from : other.from > own.to && other.to < at;
  return inside || between.some((item) => /^(?:,|;|and|but|while|:)$/.test(item.word));
}
const gap = (group: Group, at: number): number => (at < group.from ? group.from - at : at - group.to);

function reading(scene: Scene, left: Group, right: Group, word: Measured, from: number): Reading {
  return { ...comparison(scene, 'label', left, right, word), from: Math.max(0, from), to: word.to };
}

/** Home of a name: the size it stands right beside, in one of the sentences before, and the others there. */
function homeOf(scene: Scene, name: string): { own: Group; others: readonly Group[] } | undefined {
  for (const sentence of sentencesBefore(scene).slice(0, 3)) {
    const all = distinct(groups(sentence.items).flatMap(single));
    const beside = all.filter((g) => touches(sentence.items, g, name));
    if (beside.length > 1) return undefined;
    const own = beside[0];
    if (own) return { own, others: all.filter((g) => g !== own && sameSystem(g, own)) };
  }
  return undefined;
}

/** "orange 25 G", "Distal is 16 G", "4 Fr single". */
const touches = (items: readonly Item[], { from, to }: Group, name: string): boolean =>
  items[from - 1]?.word === name ||
  (items[from - 2]?.word === name && /^(?:is|:|=|one)$/.test(items[from - 1]?.word ?? '')) ||
  items[to + 1]?.word === name;

/** "The green needle is thicker than the orange": both ends by name. */
function against(scene: Scene, word: Measured): Reading[] {
  const { items } = scene;
  const than = items.findIndex((item, i) => i > word.at && item.word === 'than');
  const subject = subjectBefore(items, word);
  const object = items[than + 2];
  if (subject?.from !== 0 || than - word.to > 2 || items[than + 1]?.word !== 'the' || !labels(object))
    return [];
  if (groups(items).length > 0) return [];
  const [left, right] = [homeOf(scene, subject.word), homeOf(scene, object!.word)];
  if (!left || !right || sameSizes(left.own, right.own) || !sameSystem(left.own, right.own)) return [];
  return [reading(scene, left.own, right.own, word, 0)];
}

/** "And the single is the thickest": one of several by name. */
function labelledEnd(scene: Scene): Reading[] {
  const { items } = scene;
  const word = measuredWords(items).find((m) => m.degree === 'superlative' && decidable(m.axis) && !m.idiom);
  if (!word || groups(items).length > 0 || items[word.at - 1]?.word !== 'the') return [];
  const subject = subjectBefore(items, { ...word, at: word.at - 1 });
  const after = items[word.to + 1];
  if (!subject || subject.from > 1 || (after && after.kind !== 'punctuation' && after.word !== 'of'))
    return [];
  const home = homeOf(scene, subject.word);
  if (!home || home.others.length === 0) return [];
  const rest: Group = {
    from: word.at,
    to: word.to,
    mentions: home.others.flatMap((g) => g.mentions),
    sizes: home.others.flatMap((g) => g.sizes),
  };
  const made = reading(scene, home.own, rest, word, 0);
  return made.claim.kind === 'comparison' ? [{ ...made, claim: { ...made.claim, each: true } }] : [];
}
