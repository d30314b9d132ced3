/** The other side of a comparing word that has no "than": one of two named before, or the one size of the sentence before. */
import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Measured } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { CHOICE_VERBS } from '../words/choices.ts';
import type { Reading } from './model.ts';
import { comparison } from './than.ts';

export function emit(scene: Scene, id: string, left: Group, right: Group, word: Measured): Reading[] {
  const shared = left.sizes.some((a) =>
    right.sizes.some((b) => a.system === b.system && a.value === b.value),
  );
  return shared || !sameSystem(left, right) ? [] : [comparison(scene, id, left, right, word)];
}

/** "Between 2-0 and 3-0, the stouter suture is 2-0", "took the bigger one, the 16": one of the two named before. */
export function ofTwo(scene: Scene, word: Measured): Reading[] | undefined {
  const { items } = scene;
  if (!/^(?:the|our)$/.test(items[word.at - 1]?.word ?? '')) return undefined;
  const all = groups(items);
  const laid = ofTheseTwo(items, word, all);
  if (laid) return emit(scene, 'of-two', laid[0], laid[1], word);
  const own = all.find((g) => g.from > word.to && g.from - word.to <= 8 && g.sizes.length === 1);
  const link = items
    .slice(word.to + 1, own?.from ?? 0)
    .filter((item) => !item.deviceNoun)
    .map((item) => item.word)
    .join(' ');
  if (!own || !APPOSED.test(link)) return undefined;
  // "not the bigger one, the 16, but …"
  if (items.slice(Math.max(0, word.at - 3), word.at).some((item) => NEGATIONS.has(item.word)))
    return undefined;
  const before = distinct(all.filter((g) => g.to < word.at).flatMap(single));
  const two = before.length > 0 ? before : twoBefore(scene);
  const other = two.find((g) => !sameSizes(g, own));
  return two.length === 2 && other && two.some((g) => sameSizes(g, own))
    ? emit(scene, 'of-two', own, other, word)
    : undefined;
}
const APPOSED =
  /^(?:of (?:the (?:two|pair)|them|these|both) ?)?(?:(?:is|was|being|=|:|—|\(|, so|so|, that is|, i\.e|,)(?: is)?(?: ,)?(?: (?:the|an?|our))?)$/;

/** "The stouter of the two, a 3-0 and a 5-0, is the 3-0": both between the word and the one. */
function ofTheseTwo(
  items: readonly Item[],
  word: Measured,
  all: readonly Group[],
): [Group, Group] | undefined {
  const behind = all.flatMap(single).filter((g) => g.from > word.to);
  const [a, b, chosen, ...more] = behind;
  if (!a || !b || !chosen || more.length > 0 || word.degree !== 'comparative') return undefined;
  const [lead, link, is] = [
    joined(items, word.to + 1, a.from),
    joined(items, a.to + 1, b.from),
    joined(items, b.to + 1, chosen.from),
  ];
  const laid =
    /^(?:\S+ )?of (?:the|these|those|our) (?:two|pair)(?: \S+)? ?[,(:—–](?: (?:an?|the))?$/.test(lead) &&
    /^(?:and|,)(?: (?:an?|the))?$/.test(link) &&
    /^[,):—–]? ?(?:is|=|:)(?: (?:the|our|an?))?$/.test(is);
  const other = sameSizes(chosen, a) ? b : sameSizes(chosen, b) ? a : undefined;
  return laid && other ? [chosen, other] : undefined;
}

/** The two sizes that the sentence before names. */
function twoBefore(scene: Scene): Group[] {
  const previous = scene.before.at(-1);
  return previous && previous.close !== '?' ? distinct(groups(previous.items).flatMap(single)) : [];
}

/** "if 25 G won't go, pick a slimmer 22 G", "I tried something slimmer, a 16 G": against the one size named before. */
export function beforeSize(scene: Scene, word: Measured, all: readonly Group[]): Reading[] | undefined {
  const own = all.find((g) => g.from > word.at && g.from <= word.at + 4);
  const before = all.filter((g) => g.to < word.at);
  if (!own || before.length !== 1 || all.length !== 2) return undefined;
  const between = scene.items.slice(word.at + 1, own.from).map((item) => item.word);
  const vague =
    VAGUE.has(scene.items[word.at - 1]?.word ?? '') && between.every((one) => VAGUE_LINKS.has(one));
  if (between.length > 0 && !vague) return undefined;
  const made = emit(scene, 'attributive', own, before[0]!, word);
  // "if the 24 won't go then try something finer, a 22": what to take is told, whatever leads to it.
  const told = CHOICE_VERBS.test(scene.items[word.at - 2]?.word ?? '');
  return vague && told ? made.map((reading) => ({ ...reading, unconditional: true })) : made;
}
const VAGUE = new Set(['something', 'anything', 'one', 'size']);
const VAGUE_LINKS = new Set([
  ',',
  ':',
  '—',
  'a',
  'an',
  'like',
  'say',
  'the',
  'such',
  'as',
  'eg',
  'e.g',
  '.',
  '(',
]);

export function againstPrevious(scene: Scene, subject: Group, word: Measured): Reading[] {
  for (const previous of [...scene.context.slice(-1), ...scene.before.slice(-2)].reverse()) {
    const found = distinct(groups(previous.items).flatMap(single)).filter((g) => sameSystem(g, subject));
    const others = found.filter((g) => !sameSizes(g, subject));
    if (others.length === 1 && found.length <= 2) return emit(scene, 'of-two', subject, others[0]!, word);
    if (others.length === 2 && found.length === 2) return emit(scene, 'of-two', subject, both(others), word);
    // "The 18 G is slim." on the way to the two of them.
    if (others.length > 0) return [];
  }
  return [];
}

/** "A 22 Fr is wider than an 18 Fr, a 28 Fr wider still": than both. */
export const both = (others: readonly Group[]): Group => ({
  from: others[0]!.from,
  to: others[0]!.to,
  mentions: others.flatMap((g) => g.mentions),
  sizes: others.flatMap((g) => g.sizes),
});
