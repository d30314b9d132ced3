/** "If 21 G is too narrow, the next one up is the 22": what is too small is given up for something bigger. */

import type { ComparisonClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

export const next: Construction = {
  id: 'next',
  needs: () => [
    { sizes: 2, holds: ['excess'] },
    { sizes: 2, holds: ['compared'], words: STEP, also: ANCHOR },
    { sizes: 1, words: PUT },
  ],
  read(scene) {
    const all = groups(scene.items);
    if (all.length === 1 && !excessBefore(scene)) return [];
    const words = measuredWords(scene.items).filter(
      (m) => m.axis !== 'other' && m.axis !== 'number' && !m.idiom,
    );
    const excess = words.find((m) => m.excess);
    if (excess) return latterToo(scene, excess, all) ?? tooMuch(scene, excess, all);
    return all.length === 1 ? afterwards(scene, all[0]!) : stepped(scene, words, all);
  },
};

/** "too narrow a 21 G" or "21 G is too narrow", then the size to take instead. */
function tooMuch(scene: Scene, excess: Measured, all: readonly Group[]): Reading[] {
  const through = all.find((g) => g.from > excess.to && g.from - excess.to <= 4);
  const before = all.filter((g) => g.to < excess.at && excess.at - g.to <= 6).at(-1);
  const within =
    through && /^(?:through|down|via|with|in)$/.test(scene.items[excess.to + 1]?.word ?? '')
      ? through
      : undefined;
  const given = before ?? within;
  const after = all.find((g) => g.from > Math.max(excess.to, given?.to ?? 0));
  if (given && !after) return instead(scene, excess, given, all);
  const chosen = after;
  if (!given || !chosen || !sameSystem(given, chosen) || sameSizes(given, chosen)) return [];
  // "Too tight" is said of the way as much as of the tube; "anything above 20 G" is no size to give up.
  if (/^(?:tight|snug)$/.test(scene.items[excess.at]!.word) || bounded(scene.items, given)) return [];
  const between = scene.items.slice(Math.max(excess.to, given.to) + 1, chosen.from);
  if (
    between.length > 16 ||
    !(between.some((item) => CHOOSES.has(item.word)) || answers(scene.items, chosen)) ||
    between.some((item) => STOPS.has(item.word))
  )
    return [];
  return [chooses(scene, excess, chosen, given)];
}

/** What is asserted is the choice, not the condition that leads to it. */
function chooses(scene: Scene, excess: Measured, chosen: Group, given: Group): Reading {
  const reading = comparison(scene, 'too-much', chosen, given, excess, excess.sign === 1 ? 'less' : 'more');
  const focus = spanOf(scene, scene.items[chosen.from]!, scene.items[chosen.to]!);
  const { word: _, ...claim } = reading.claim as ComparisonClaim;
  return { claim: { ...claim, focus }, at: chosen.from, from: chosen.from, to: chosen.to };
}

/** "4-0 is preferred to 2-0, for the latter is too fine": what is too much is the second of them. */
function latterToo(scene: Scene, excess: Measured, all: readonly Group[]): Reading[] | undefined {
  const { items } = scene;
  const [chosen, given, ...more] = all.filter((g) => g.to < excess.at);
  if (!chosen || !given || more.length > 0 || !sameSystem(given, chosen) || sameSizes(given, chosen))
    return undefined;
  if (excess.at - given.to > 10 || /^(?:tight|snug)$/.test(items[excess.at]!.word)) return undefined;
  const ground = joined(items, given.to + 1, excess.at);
  if (!LATTER.test(ground) || !OVER.test(joined(items, chosen.from - 3, given.from))) return undefined;
  return [chooses(scene, excess, chosen, given)];
}
const LATTER =
  /^(?:\S+ )?(?:[,;:(—–] )?(?:(?:(?:for|because|since|as) )?(?:the (?:latter|second)|that (?:one|size))|which) (?:is|was|being|would be|proves|proved|seems|seemed) (?:much |far |always |usually |often |simply )?too$/;
const OVER =
  /\b(?:(?:preferred|better|chosen|used|taken|picked|choose|chose|prefer|opt for|used|use|take|took)\b.* (?:to|than|over|not|rather than|instead of)|over)(?: (?:an?|the|our))?$/;

/** "Take a 24 G: the 20 G is too thick": the choice first, then the ground. */
function instead(scene: Scene, excess: Measured, given: Group, all: readonly Group[]): Reading[] {
  const chosen = all.filter((g) => g.to < given.from).at(-1);
  if (!chosen || !sameSystem(given, chosen) || sameSizes(given, chosen) || bounded(scene.items, given))
    return [];
  if (/^(?:tight|snug)$/.test(scene.items[excess.at]!.word)) return [];
  const verb = scene.items
    .slice(Math.max(0, chosen.from - 4), chosen.from)
    .some((item) => TAKES.test(item.word));
  const link = scene.items.slice(chosen.to + 1, given.from).some((item) => GROUND.test(item.word));
  if (!verb || !link || given.from - chosen.to > 9) return [];
  return [chooses(scene, excess, chosen, given)];
}
const TAKES =
  /^(?:take|use|choose|pick|open|try|prefer|want|get|have|keep|bring|draw|fetch|ready|spare|was|is|kept|had|change|go)$/;
const GROUND = /^(?:[:;—]|because|since|as|case|if|when|should)$/;

const bounded = (items: readonly Item[], given: Group) =>
  given.mentions.some((m) => m.bound) ||
  /^(?:above|below|beyond|over|under|past)$/.test(items[given.from - 1]?.word ?? '');

/** "…, a 5-0 is the answer", "a 14 Fr will do". */
const answers = (items: readonly Item[], chosen: Group): boolean =>
  /^(?:is (?:the|your|our) (?:answer|one|choice|size|cure|remedy|way)|is (?:what|better|next|right)|(?:will|would|should) (?:do|serve|pass|go|work|fit)|does|works|goes)\b/.test(
    items
      .slice(chosen.to + 1, chosen.to + 6)
      .filter((item) => !item.deviceNoun)
      .map((item) => item.word)
      .join(' '),
  );

const CHOOSES = new Set(
  'next go use take try pick choose reach grab switch change move drop step swap is upsize downsize open fetch get replace replaced replaces changed swapped moved went opened used took chose'.split(
    ' ',
  ),
);
const STOPS = new Set(['not', 'never', "don't", 'no', '.', ';', 'from']);

const PUT = new Set(
  'put went used tried chose took placed inserted passed opened changed switched moved worked did fitted replaced picked use try take choose pick put open pass place insert'.split(
    ' ',
  ),
);
const PUTS =
  /^(?:so |then |instead |and )?(?:,? ?(?:we|i|she|he|they|you) )?(?:(?:then|therefore|so|instead) )?(?:put(?: in)?|used|tried|chose|took|placed|inserted|passed|opened|(?:changed|switched|moved) (?:it )?(?:to|for)|went (?:for|to)|picked|use|try|take|choose|pick|open|pass|place|insert)(?: (?:in|up|down|out))?(?: (?:an?|the|our))?$/;
const WENT =
  /^(?:went in|went|worked|did(?: it| the job| well| nicely)?|fitted|passed|was (?:put in|used|placed|passed|inserted|just right|right|chosen)|took its place|replaced it)(?: (?:instead|easily|well|nicely|without trouble))? ?(?:[.!]|$)/;

/** What there was too much of in the sentence before. */
function excessBefore({ before }: Scene): Measured | undefined {
  const previous = before.at(-1);
  return previous && previous.close !== '?' ? measuredWords(previous.items).find(tooBig) : undefined;
}
const tooBig = (m: Measured): boolean => m.excess && m.axis !== 'other' && m.axis !== 'number' && !m.idiom;

/** "The 14 Fr was too wide for him. A 12 Fr went in.": what was too much in the sentence before is given up. */
function afterwards(scene: Scene, chosen: Group): Reading[] {
  const previous = scene.before.at(-1);
  const excess = excessBefore(scene);
  if (!previous || !excess || chosen.sizes.length !== 1 || scene.items.length > 14) return [];
  if (scene.items.some((item) => STOPS.has(item.word) && item.word !== '.' && item.word !== ';')) return [];
  const text = (items: readonly Item[]) =>
    items
      .filter((item) => !item.deviceNoun)
      .map((item) => item.word)
      .join(' ');
  const before = text(scene.items.slice(0, chosen.from));
  const after = text(scene.items.slice(chosen.to + 1));
  if (!PUTS.test(before) && !(/^(?:so |then )?(?:an?|the|our)$/.test(before) && WENT.test(after))) return [];
  if (PUTS.test(before) && !/^(?:instead|in|next|then|in its place)? ?(?:[.!]|$)/.test(after)) return [];
  const given = distinct(groups(previous.items));
  const [only] = given;
  if (given.length !== 1 || !only || !sameSystem(only, chosen) || sameSizes(only, chosen)) return [];
  // "Too tight" is said of the way as much as of the tube.
  if (/^(?:tight|snug)$/.test(previous.items[excess.at]!.word) || bounded(previous.items, only)) return [];
  if (previous.items.some((item) => item.word === 'not' || item.word === 'or' || item.word === 'if'))
    return [];
  if (
    excess.at < only.to ||
    !/^(?:was|is|looked|proved|looks|turned|seemed)$/.test(
      previous.items.slice(only.to + 1, excess.at).find((item) => !item.deviceNoun)?.word ?? '',
    )
  )
    return [];
  const word = { ...excess, at: chosen.from, to: chosen.to };
  const reading = comparison(scene, 'too-much', chosen, only, word, excess.sign === 1 ? 'less' : 'more');
  const { word: _, ...claim } = reading.claim as ComparisonClaim;
  return [{ claim, at: chosen.from, from: chosen.from, to: chosen.to }];
}

const STEP = new Set(['next', 'up', 'down']);

/** "the next thicker size after 2-0 is 0", "one size thinner than": an ordinal step with both ends named. */
function stepped(scene: Scene, words: readonly Measured[], all: readonly Group[]): Reading[] {
  const pairs = distinct(all);
  if (pairs.length !== 2 || !sameSystem(pairs[0]!, pairs[1]!)) return [];
  const word = words.find((m) => m.degree === 'comparative' && nearStep(scene.items, m));
  const [a, b] = pairs as [Group, Group];
  if (!word || scene.items.some((item) => item.word === 'than')) return [];
  const anchored = scene.items.slice(word.to + 1, a.from).some((item) => ANCHOR.has(item.word));
  if (word.at < a.from && anchored && a.from - word.to <= 6) return [comparison(scene, 'step', b, a, word)];
  const before = scene.items.slice(Math.max(0, a.from - 3), a.from).some((item) => ANCHOR.has(item.word));
  // "Number 1 is the next thicker size after 0": the anchor stands last.
  const last = scene.items.slice(word.to + 1, b.from).some((item) => ANCHOR.has(item.word));
  if (last && word.at > a.to && b.from - word.to <= 6) return [comparison(scene, 'step', a, b, word)];
  return before && word.at > a.to && word.at < b.from ? [comparison(scene, 'step', b, a, word)] : [];
}

const nearStep = (items: readonly Item[], m: Measured) =>
  items.slice(Math.max(0, m.at - 3), m.at).some((item) => STEP.has(item.word));
const ANCHOR = new Set(['after', 'from', 'above', 'below', 'beyond', 'past']);
