/**
 * Sizes of two systems said to be alike: "a 14 Fr and a 14 G are interchangeable", "the 0.018 in wire and the 18 G needle
 * are equally thick", "written as 0.35 mm it is the same wire".
 */
import type { Item } from '../text/items.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import { equate, LENGTHS } from './equate.ts';
import type { Construction, Reading } from './model.ts';

const ALIKE = /^(?:equally|interchangeable|interchangeably|same|identical|equal|alike)$/;

export const alike: Construction = {
  id: 'alike',
  needs: () => [{ sizes: 1, words: ['equally', 'interchangeable', 'interchangeably', 'same', 'identical'] }],
  read(scene) {
    const all = groups(scene.items);
    const pairs = all.slice(1).flatMap((right, i) => readPair(scene, all[i]!, right));
    return pairs.length > 0 ? pairs : referred(scene, all);
  },
};

const text = (items: readonly Item[]) => items.map((item) => item.word).join(' ');
const single = (g: Group) =>
  g.mentions.length === 1 && g.sizes.length === 1 && !g.mentions[0]!.bound && !g.mentions[0]!.length;

/** Read elsewhere as one size in two systems, where "the same size" is meant to be exact. */
const elsewhere = (a: Group, b: Group, word: string) =>
  /^(?:same|identical|equal)$/.test(word) &&
  (LENGTHS.has(a.sizes[0]!.system) || LENGTHS.has(b.sizes[0]!.system) || crossed(a, b));
const crossed = (a: Group, b: Group) => {
  const systems = new Set([a.sizes[0]!.system, b.sizes[0]!.system]);
  return (
    (systems.has('usp') && systems.has('ep-metric')) || (systems.has('french') && systems.has('needle-gauge'))
  );
};

const WIDE = /^(?:thick|wide|broad|big|large|thin|fine|narrow|stout|fat)$/;
const WIDTH = /^(?:width|thickness|diameter|size|calib(?:re|er)|gauge|outside)$/;

function readPair(scene: Scene, left: Group, right: Group): Reading[] {
  const { items } = scene;
  if (!single(left) || !single(right) || left.sizes[0]!.system === right.sizes[0]!.system) return [];
  if (!joined(items.slice(left.to + 1, right.from))) return [];
  const after = items.slice(right.to + 1, right.to + 9);
  const at = after.findIndex((item) => ALIKE.test(item.word));
  if (at < 0 || elsewhere(left, right, after[at]!.word)) return [];
  const verb = text(after.slice(0, at));
  if (
    !/^(?:[\p{L}-]+ ){0,3}(?:are|is|become|count as|can be used)(?: (?:therefore|thus|also|then|exactly|of the|just|the))*$/u.test(
      verb,
    ) ||
    /\b(?:not|hardly|nearly|almost|never)\b/.test(verb)
  )
    return [];
  return said(after.slice(at))
    ? equate(scene, left, right).map((one) => ({ ...one, at: right.to + 1 + at }))
    : [];
}

/** "equally thick", "interchangeable", "the same width". */
function said(rest: readonly Item[]): boolean {
  const [word, next, more] = rest.map((item) => item.word);
  if (word === 'equally') return WIDE.test(next ?? '') && more !== 'spread';
  if (word === 'same' || word === 'identical' || word === 'equal')
    return rest.slice(1, 3).some((item) => WIDTH.test(item.word)) && !/\bas\b/.test(text(rest.slice(1, 5)));
  return /^(?:interchangeabl[ey])$/.test(word ?? '') && (next === undefined || /^[.,;!)]$/.test(next));
}

/** "A and B", "both carry an eighteen, so that wire and an 18 G needle". */
const joined = (between: readonly Item[]): boolean => {
  const words = text(between.filter((item) => !item.deviceNoun));
  return (
    /^(?:tracheal |endotracheal |spinal |[\p{L}-]{3,} )?and(?: (?:an?|the|our|size))?$/u.test(words) ||
    /^, (?:so )?(?:that|this|the) and an?$/.test(words)
  );
};

const REFERS =
  /\b(?:it|this|that) is (?:exactly |just |still |then )?the (?:very )?same (?:wire|size|thing|catheter|needle|tube|thread|guidewire)\b/;

/** "People mean 0.035 in. Written as 0.35 mm it is the same wire." */
function referred(scene: Scene, all: readonly Group[]): Reading[] {
  const previous = scene.before.at(-1);
  const own = all[0];
  if (!previous || all.length !== 1 || !own || !single(own) || !LENGTHS.has(own.sizes[0]!.system)) return [];
  const words = text(scene.items);
  if (!REFERS.test(words) || /\b(?:not|never|if|unless|different)\b/.test(words)) return [];
  const named = onlySize(previous);
  if (!named || named.sizes[0]!.system === own.sizes[0]!.system) return [];
  return equate(scene, named, own).map((one) => ({ ...one, at: own.to, from: own.from }));
}

/** The one size a sentence speaks of, however often. */
function onlySize(sentence: Sentence): Group | undefined {
  const all = groups(sentence.items);
  const [first] = all;
  const same = all.every(
    (g) =>
      single(g) &&
      g.sizes[0]!.system === first!.sizes[0]!.system &&
      g.sizes[0]!.value === first!.sizes[0]!.value,
  );
  return first && same && sentence.close !== '?' ? all.at(-1) : undefined;
}
