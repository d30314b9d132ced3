/**
 * What follows from a comparison: "the 22 G has a smaller bore than the 18 G. So the bag empties slower through the
 * 22 G.", "because a 27 G is thinner than a 22 G it leaves a smaller hole". The consequence is said of one of the two.
 */
import { lastSpoken } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

export const hence: Construction = {
  id: 'hence',
  needs: () => [{ holds: ['compared'], like: LINKS }],
  leaning: true,
  read(scene) {
    const at = connective(scene.items);
    if (at < 0) return [];
    const word = measuredWords(scene.items).find(
      (m) => m.at > at && m.at - at <= 14 && m.degree === 'comparative' && decidable(m.axis) && !m.idiom,
    );
    if (!word || thanAfter(scene.items, word)) return [];
    const own = groups(scene.items);
    const tied = described(scene, own, word, at);
    if (tied) return [reading(scene, tied[0], tied[1], word, at)];
    const two = pairBefore(scene, own, at);
    if (!two) return [];
    const subject = subjectOf(scene.items, own, word, at);
    const left = subject === 'it' ? two[0] : two.find((g) => subject && sameSizes(g, subject));
    const right = two.find((g) => left && !sameSizes(g, left));
    return left && right ? [reading(scene, left, right, word, at)] : [];
  },
};

/** With one of these every link opens. */
const LINKS = /^(?:so|therefore|hence|thus|consequently|accordingly|because|since|as|for|that|that's|this)$/;
const THEREFORE = /^(?:so|therefore|hence|thus|consequently|accordingly)$/;
const OPENS = /^(?:because|since|as)$/;

/** Place of "so", "therefore", "for that reason", or of the "it" that ends an opening "because …". */
function connective(items: readonly Item[]): number {
  const so = items.findIndex((item, i) => THEREFORE.test(item.word) && following(items, i));
  if (so >= 0) return so;
  const opening = items
    .slice(0, 8)
    .map((item) => item.word)
    .join(' ');
  if (/^(?:for (?:that|this) reason|that is why|that's why|this is why|as a result)\b/.test(opening))
    return 2;
  if (!OPENS.test(items[0]?.word ?? '')) return -1;
  const sized = items.findIndex((item) => item.kind === 'size');
  const second = items.findIndex((item, i) => i > sized && item.kind === 'size');
  const it = items.findIndex((item, i) => i > second && item.word === 'it' && i - second <= 3);
  return second > 0 ? it : -1;
}

/** "so" that draws a conclusion, not "so wide" or "so as to". */
const following = (items: readonly Item[], i: number): boolean =>
  items[i]!.word !== 'so' ||
  (!items[i + 1]?.magnitude && !/^(?:as|that|much|far|many|long|called)$/.test(items[i + 1]?.word ?? ''));

/** The word has a "than" of its own: other constructions read it. */
const thanAfter = (items: readonly Item[], word: Measured): boolean =>
  items.slice(word.to + 1, word.to + 9).some((item) => item.word === 'than');

/** The two sizes compared before the connective, in this sentence or the one before. */
function pairBefore(scene: Scene, own: readonly Group[], at: number): readonly [Group, Group] | undefined {
  const before = own.filter((g) => g.to < at);
  if (before.length > 0) return compared(scene.items.slice(0, at), distinct(before));
  const previous = at <= 3 ? scene.before.at(-1) : undefined;
  if (!previous || previous.close === '?') return undefined;
  return compared(previous.items, distinct(groups(previous.items)));
}

/** "The left lumen is 16 G; the right is 18 G and therefore of larger bore": the last size against the one before it. */
function described(
  scene: Scene,
  own: readonly Group[],
  word: Measured,
  at: number,
): readonly [Group, Group] | undefined {
  const { items } = scene;
  const last = own.at(-1);
  if (!last || last.to > at || own.length > 2) return undefined;
  if (!/^(?:is|are|was|were|a|an|has|,)$/.test(items[last.from - 1]?.word ?? '')) return undefined;
  const before = items.slice(last.to + 1, at).filter((item) => !item.deviceNoun);
  if (!/^(?:, )?(?:and)?$/.test(textOf(before))) return undefined;
  if (
    !/^(?:of |has |with |is )?(?:an? |the )?(?:much |far |slightly |somewhat )?$/.test(
      spaced(items, at + 1, word.at),
    )
  )
    return undefined;
  const first = own.length === 2 ? own[0] : lastSpoken(scene);
  return first && sameSystem(first, last) && !sameSizes(first, last) ? [last, first] : undefined;
}
const spaced = (items: readonly Item[], from: number, to: number): string =>
  from < to ? `${joined(items, from, to)} ` : '';

/** Two single sizes of one system with a comparison between them. */
function compared(items: readonly Item[], two: readonly Group[]): readonly [Group, Group] | undefined {
  const [a, b] = two;
  if (two.length !== 2 || !a || !b || !sameSystem(a, b) || sameSizes(a, b)) return undefined;
  if (a.sizes.length + b.sizes.length > 2) return undefined;
  const than = items.some((item, i) => item.word === 'than' && i > a.to && i < b.from);
  return than ? [a, b] : undefined;
}

const THROUGH = new Set(['through', 'with', 'via', 'in', 'by', 'using', 'down', 'from']);
const IT = new Set(['it', 'its', "it's"]);

/** The size the consequence is said of: "through the 22 G", "the 22 G empties", or "it". */
function subjectOf(
  items: readonly Item[],
  own: readonly Group[],
  word: Measured,
  at: number,
): Group | 'it' | undefined {
  const after = own.filter((g) => g.from > word.to && g.from - word.to <= 9);
  const before = own.filter((g) => g.from > at && g.to < word.at);
  if (after.length + before.length > 1) return undefined;
  const through = after[0];
  if (through)
    return items.slice(word.to + 1, through.from).some((item) => THROUGH.has(item.word))
      ? through
      : undefined;
  if (before[0]) return before[0].sizes.length === 1 ? before[0] : undefined;
  // "So it is …", "it is therefore …".
  return items.slice(Math.max(0, at - 3), word.at).some((item) => IT.has(item.word)) ? 'it' : undefined;
}

function reading(scene: Scene, left: Group, right: Group, word: Measured, at: number): Reading {
  const made = comparison(scene, 'hence', left, right, word);
  return { ...made, from: at, to: word.to };
}
