/**
 * What is said of the size turned to: "if there is no 2-0, take 3-0; it is the next size up", "out of 18 G? Reach for
 * the 20 G, it is wider still", "use the 10 Fr if the 12 Fr blocks, since that is the next one up".
 */
import { direction } from '../../sizes/index.ts';
import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { compares, decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { type Exchange, exchangeIn } from './exchange.ts';
import type { Construction } from './model.ts';
import { comparison, wordless } from './than.ts';

export const chosen: Construction = {
  id: 'chosen',
  needs: () => [
    { sizes: 2, like: SUBJECT, also: WAY },
    { sizes: 2, words: ['is', 'be'], also: WAY },
    { sizes: 2, holds: ['compared'], like: SUBJECT },
    { sizes: 1, holds: ['answers'], like: SUBJECT, also: WAY },
  ],
  read(scene) {
    const { items } = scene;
    if (items.some((item) => item.word === 'than' || item.word === 'not')) return [];
    const exchange = exchangeOf(scene);
    if (!exchange || exchange.negates) return [];
    const { given, chosen: taken } = exchange;
    if (!sameSystem(given, taken) || sameSizes(given, taken)) return [];
    if (given.sizes.length + taken.sizes.length > 2) return [];
    const word = saidOf(scene, Math.max(taken.to, given.to), taken);
    return word
      ? [{ ...wordless(comparison(scene, 'chosen', taken, given, word)), own: true, unconditional: true }]
      : [];
  },
};

/** The pronoun that takes up the size chosen. */
const SUBJECT = /^(?:it|that|this|which|it's|that's|they|these|those|being)$/;
const WAY = /^(?:up|down|bigger|smaller|larger|thinner|thicker|finer|wider|narrower|step|next)$/;

function exchangeOf(scene: Scene): Exchange | undefined {
  const all = groups(scene.items);
  const here = exchangeIn(scene.items);
  if (here) return here;
  // "Out of 18 G? Reach for the 20 G, it is …"
  const before = scene.before.at(-1);
  if (all.length !== 1 || before?.close !== '?' || before.items.length > 9) return undefined;
  const earlier = distinct(groups(before.items).flatMap(single));
  const verb = scene.items.slice(0, all[0]!.from).some((item) => TAKES.test(item.word));
  return earlier.length === 1 && verb ? { given: earlier[0]!, chosen: all[0]! } : undefined;
}
const TAKES = /^(?:reach|take|use|try|go|grab|pick|open|choose|pass|then)$/;

const LINK =
  /^(?:(?:needle|cannula|catheter|tube|drain|sheath|wire|thread|suture|silk|nylon|one|instead|first|(?:for|in|on|at) (?:(?:the|an?|our|your|this) )?\S+) )*(?:[,;:—–(.-]|and|because|since|as)(?: ?,)?(?: (?:and|because|since|as|but|for|so))? (?:it|that|this|which|they|these|those|being)(?:'s| is| will be| would be| are| has| gives| runs| flows| holds)?(?: (?:an?|the|just|simply|also|even|only|still|much|far|in fact|quite|actually|one|two|half|sizes?|steps?|usually|always))*$/;

/** Said of the size itself: "a 10 Ch would be the next one up". */
const IS =
  /^(?:needle |cannula |catheter |tube |drain |thread |suture |one )?(?:is|would be|will be|should be|is then)(?: (?:the|an?|one|just|even|much|still))*$/;

/** The predicate about the pronoun: a comparing word by itself, or a step up or down. */
function saidOf({ items }: Scene, after: number, taken: Group): Measured | undefined {
  for (let at = after + 2; at < items.length && at <= after + 13; at++) {
    const measured = measuredWords(items).find((m) => m.at === at);
    if (measured?.degree === 'comparative' && decidable(measured.axis) && !measured.idiom)
      return said(linkText(items, after, at)) && ends(items, measured.to) ? measured : undefined;
    const step = stepAt(items, at);
    if (!step) continue;
    if (!said(linkText(items, after, step.from))) return undefined;
    // "Up" in gauge may mean the number or the bore.
    if (direction(taken.sizes[0]!.system) === 'down') return undefined;
    return compares(at, 'outer', step.sign);
  }
  return undefined;
}

const said = (link: string): boolean => LINK.test(link) || IS.test(link);
const linkText = (items: readonly Item[], after: number, to: number): string => {
  const between = items.slice(after + 1, to);
  return between.some((item) => NEGATIONS.has(item.word) || item.kind === 'size') ? '' : textOf(between);
};

const ends = (items: readonly Item[], at: number): boolean => {
  const next = items[at + 1];
  return (
    !next ||
    next.kind === 'punctuation' ||
    /^(?:still|again|yet|and|size|one|so|thread|needle|tube|catheter|of|in|by|for|cannula|bore)$/.test(
      next.word,
    )
  );
};

/** "the next size up", "a size down", "one step down", "going up": the way of a step, and where its words begin. */
function stepAt(items: readonly Item[], at: number): { from: number; sign: 1 | -1 } | undefined {
  const sign = items[at]!.word === 'up' ? 1 : items[at]!.word === 'down' ? -1 : undefined;
  if (!sign || /^(?:to|from|with|the)$/.test(items[at + 1]?.word ?? '')) return undefined;
  const words = textOf(items.slice(Math.max(0, at - 3), at));
  const step = /(?:^| )((?:next )?(?:size|sizes|one|step|steps)|next)$/.exec(words)?.[1];
  return step ? { from: at - step.split(' ').length, sign } : undefined;
}
