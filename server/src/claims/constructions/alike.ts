/**
 * Sizes of two systems said to be alike: "a 14 Fr and a 14 G are interchangeable", "the 0.018 in wire and the 18 G needle
 * are equally thick", "written as 0.35 mm it is the same wire".
 */
import type { EquivalenceClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { type Group, groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import { equate, LENGTHS } from './equate.ts';
import type { Construction, Reading } from './model.ts';

const ALIKE = /^(?:equally|interchangeable|interchangeably|same|identical|equal|alike)$/;

export const alike: Construction = {
  id: 'alike',
  needs: () => [{ words: ['equally', 'interchangeable', 'interchangeably', 'same', 'identical', 'equal'] }],
  leaning: true,
  read(scene) {
    const all = groups(scene.items);
    const pairs = all.slice(1).flatMap((right, i) => readPair(scene, all[i]!, right));
    if (pairs.length > 0) return pairs;
    return all.length === 0 ? asked(scene) : [...referred(scene, all), ...pointed(scene, all)];
  },
};

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
  if (!sideBySide(items.slice(left.to + 1, right.from))) return [];
  const swapped = /^for /.test(
    textOf(items.slice(left.to + 1, right.from).filter((item) => !item.deviceNoun)),
  );
  const rest = items.slice(right.to + 1, right.to + 12);
  const they = rest.findIndex((item) => item.word === 'they');
  // "swap a 12 Fr for a 12 G, since they are equally wide"
  if (swapped && !/^(?:\S+ )?, (?:since|because|as|for|so)$/.test(textOf(rest.slice(0, Math.max(they, 0)))))
    return [];
  const skipped = swapped ? they + 1 : 0;
  const after = rest.slice(skipped, skipped + 8);
  const at = after.findIndex((item) => ALIKE.test(item.word));
  const verb = textOf(after.slice(0, Math.max(0, at)));
  const possessed = swapped || /\b(?:have|has)\b/.test(verb);
  if (at < 0 || (!possessed && elsewhere(left, right, after[at]!.word))) return [];
  if (
    !/^(?:[\p{L}-]+ ){0,3}(?:are|is|have|has|become|(?:come|work|end|turn) (?:out|up)(?: (?:at|as|to be))?|measure|count as|can be used)(?: (?:therefore|thus|also|then|exactly|of the|just|the))*$/u.test(
      verb,
    ) ||
    /\b(?:not|nowhere|near|hardly|nearly|almost|never)\b/.test(verb)
  )
    return [];
  return said(after.slice(at))
    ? equate(scene, left, right).map((one) => ({ ...one, at: right.to + 1 + skipped + at }))
    : [];
}

/** "equally thick", "interchangeable", "the same width". */
function said(rest: readonly Item[]): boolean {
  const [word, next, more] = rest.map((item) => item.word);
  if (word === 'equally') return WIDE.test(next ?? '') && more !== 'spread';
  if (word === 'same' || word === 'identical' || word === 'equal')
    return rest.slice(1, 3).some((item) => WIDTH.test(item.word)) && !/\bas\b/.test(textOf(rest.slice(1, 5)));
  return /^(?:interchangeabl[ey])$/.test(word ?? '') && (next === undefined || /^[.,;!)]$/.test(next));
}

/** "A and B", "both carry an eighteen, so that wire and an 18 G needle". */
const sideBySide = (between: readonly Item[]): boolean => {
  const words = textOf(between.filter((item) => !item.deviceNoun));
  return (
    /^for (?:an?|the|one)?$/.test(words) ||
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
  const words = joined(scene.items);
  if (!REFERS.test(words) || /\b(?:not|never|if|unless|different)\b/.test(words)) return [];
  const named = onlySize(previous);
  if (!named || named.sizes[0]!.system === own.sizes[0]!.system) return [];
  return [across(scene, named, own, own.to)];
}

/** "Is a 14 G as wide as a 14 Fr? Yes, they are the same width." */
function asked(scene: Scene): Reading[] {
  const question = scene.before.at(-1);
  const words = joined(scene.items);
  const match = THEY.exec(words);
  if (question?.close !== '?' || !match || /\b(?:no|not|never|if|unless|neither|hardly)\b/.test(words))
    return [];
  const all = groups(question.items);
  const [left, right] = all;
  if (all.length !== 2 || !left || !right || !single(left) || !single(right)) return [];
  if (left.sizes[0]!.system === right.sizes[0]!.system) return [];
  const at = scene.items.findIndex((item) => ALIKE.test(item.word));
  return [across(scene, left, right, at)];
}
const THEY =
  /\bthey are (?:both |all |of )?(?:exactly |just )?(?:(?:the )?same (?:width|size|thickness|diameter|calib(?:re|er))|equally (?:thick|wide|broad))\b(?! as)/;

const SYSTEM_OF: readonly (readonly [RegExp, string])[] = [
  [/^(?:guide)?wire$/, 'wire-inch'],
  [/^(?:catheter|tube|drain|sheath)$/, 'french'],
  [/^(?:needle|cannula)$/, 'needle-gauge'],
];

/** "Our wire is 0.018 in. That wire and an 18 G needle are equally thick." */
function pointed(scene: Scene, all: readonly Group[]): Reading[] {
  const { items } = scene;
  const own = all.at(-1)!;
  const before = items.slice(Math.max(0, own.from - 4), own.from);
  const [pointer, noun, and, article] = before.map((item) => item.word);
  const system = SYSTEM_OF.find(([pattern]) => pattern.test(noun ?? ''))?.[1];
  if (!/^(?:that|this)$/.test(pointer ?? '') || and !== 'and' || !/^(?:an?|the|our)$/.test(article ?? ''))
    return [];
  const named = groups(scene.before.at(-1)?.items ?? []).filter(
    (g) => g.sizes[0]!.system === system && single(g),
  );
  const after = items.slice(own.to + 1, own.to + 6);
  const at = after.findIndex((item) => ALIKE.test(item.word));
  const verb = textOf(after.slice(0, Math.max(at, 0)));
  if (named.length !== 1 || !single(own) || own.sizes[0]!.system === system || at < 0) return [];
  return /^(?:\S+ )?(?:are|have)(?: (?:the|exactly))*$/.test(verb) && said(after.slice(at))
    ? [across(scene, named[0]!, own, own.to + 1 + at)]
    : [];
}

/** A claim about a size of the sentence before: nothing but the two sizes is known. */
function across(scene: Scene, left: Group, right: Group, at: number): Reading {
  const own = groups(scene.items).includes(right);
  const [from, to] = own ? [right.from, right.to] : [at, at];
  const claim: EquivalenceClaim = {
    kind: 'equivalence',
    construction: 'alike',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[from]!, scene.items[to]!),
    left: operand(scene, left),
    right: operand(scene, right),
    approximate: false,
    axis: 'outer',
  };
  return { claim, at, from: Math.min(at, from), to: Math.max(at, to) };
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
