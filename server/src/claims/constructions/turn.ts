/**
 * A size turned to: "start with 4-0; if it cuts through, change to a thicker thread such as 3-0",
 * "if a 16 Fr will not pass, try something narrower, like a 12 Fr", "the scalp takes 3-0, the eyelid the finer 6-0".
 */

import { finds } from '../../notes/patterns.ts';
import { sentencesBefore } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { exchangeIn } from './exchange.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

const TURNS =
  /^(?:try|trying|change|changing|changed|switched|moved|stepped|dropped|reached|turned|picked|preferred|swapped|replaced|asked|needed|wanted|gave|handed|fetched|inserted|placed|gets|got|takes|needs|wants|has|go|going|move|moving|switch|switching|step|stepping|drop|dropping|reach|turn|use|take|pick|choose|prefer|swap|swapping|replace|trade|ask|open|want|need|so|went|chose|opened|took|used|tried|passed|pass|put|insert|place|give|hand|fetch|upsize|goes|moves|steps|drops|reaches|turns|switches|takes|picks|chooses|opens|tries|uses)$/;
const RESIZES = /^(?:up|down)siz(?:e|es|ed|ing)$/;
const NAMES = new Set(
  'thing something one ones thread suture needle cannula catheter tube drain size such as like , say e.g i.e for example instance namely usually often a an the perhaps : ( yet still again which would be that will of . to is meaning'.split(
    ' ',
  ),
);

export const turn: Construction = {
  id: 'turn',
  needs: () => [
    { sizes: 1, holds: ['compared'] },
    { sizes: 1, like: RESIZES },
  ],
  read(scene) {
    const { items } = scene;
    const resize = resized(scene);
    if (resize) return [resize];
    const [given, chosen, ...more] = distinct(groups(items));
    if (given && !chosen) return turnedFrom(scene, given);
    if (!given || !chosen || more.length > 0 || !sameSystem(given, chosen)) return [];
    const wish = wished(scene, given, chosen);
    if (wish) return [wish];
    if (given.sizes.length + chosen.sizes.length > 2 || items.some((item) => item.word === 'than')) return [];
    if (gapped(items, chosen)) return [];
    const word = measuredWords(items).find(
      (m) => m.at > given.to && m.at < chosen.from && m.degree === 'comparative' && !m.idiom,
    );
    if (!word || word.axis === 'other' || word.axis === 'number') return [];
    if (
      !turned(items, word, given, chosen) &&
      !named(items, word, chosen) &&
      !inPlace(items, word, given, chosen)
    )
      return [];
    // "If your 24 G won't go then try something finer": what to take is told, whatever leads to it.
    const fails = items
      .slice(given.to + 1, word.at)
      .some((item) => item.word === 'then' || NEGATIONS.has(item.word));
    return [{ ...reading(scene, word, given, chosen), ...(fails ? { unconditional: true } : {}) }];
  },
};

/** "The 21 G has to be the chunkier needle, the 27 G the slimmer": each size has its word, and nobody turns to the second. */
const gapped = (items: readonly Item[], { to }: Group): boolean =>
  items[to + 1]?.word === 'the' && items[to + 2]?.magnitude?.degree === 'comparative';

/** "Leaks around a 14 Fr? Upsize to a 16 Fr.": the verb says which way. */
function resized(scene: Scene): Reading | undefined {
  const { items } = scene;
  const at = items.findIndex((item) => RESIZES.test(item.word));
  const chosen = at < 0 ? undefined : groups(items).find((g) => g.from > at && g.from - at <= 4);
  if (!chosen || !items.slice(at + 1, chosen.from).some((item) => item.word === 'to')) return undefined;
  const here = distinct(groups(items.slice(0, at)));
  const earlier = here.length > 0 ? here : distinct(groups((scene.before.at(-1) ?? { items: [] }).items));
  const given = earlier[0];
  if (!given || earlier.length > 1 || !sameSystem(given, chosen) || sameSizes(given, chosen))
    return undefined;
  const sign = items[at]!.word.startsWith('up') ? 1 : -1;
  const word: Measured = {
    at,
    to: at,
    axis: 'outer',
    sign,
    degree: 'comparative',
    excess: false,
    idiom: false,
    attributive: false,
  };
  const reading = comparison(scene, 'turn', chosen, given, word);
  return { ...reading, from: at, to: chosen.to, own: true };
}

/** "Between the 25 G and the 27 G, pick the 27 G if you want the finer needle." */
function wished(scene: Scene, a: Group, b: Group): Reading | undefined {
  const { items } = scene;
  const picked = groups(items).at(-1)!;
  const verb = items.slice(Math.max(0, picked.from - 2), picked.from).some((item) => finds(TURNS, item.word));
  const word = measuredWords(items).find((m) => m.at > picked.to && m.degree === 'comparative' && !m.idiom);
  if (!verb || !word || word.axis === 'other' || word.axis === 'number') return undefined;
  const exchange = items[0]?.word === 'between' ? undefined : exchangeIn(items);
  if (items[0]?.word !== 'between' && (!exchange || !sameSizes(exchange.chosen, picked))) return undefined;
  const wish = items
    .slice(picked.to + 1, word.at)
    .map((item) => item.word)
    .join(' ');
  if (!/^(?:if|when|where) (?:you|we|they) (?:want|need|prefer|like) (?:the|an?)$/.test(wish))
    return undefined;
  const other = [a, b].find((g) => !sameSizes(g, picked));
  return other && { ...comparison(scene, 'turn', picked, other, word), from: picked.from };
}

/** "change to a thicker thread such as", "try something narrower, like". */
function turned(items: readonly Item[], word: Measured, given: Group, chosen: Group): boolean {
  const swap = swapped(items, given, word);
  const start = swap ? Math.max(0, given.from - 3) : Math.max(given.to + 1, word.at - 7);
  const verb = start + items.slice(start, word.at).findLastIndex((item) => finds(TURNS, item.word));
  const denied = items.slice(Math.max(0, verb - 2), word.at).some((item) => NEGATIONS.has(item.word));
  const between = items.slice(word.at + 1, chosen.from);
  return (
    verb >= start &&
    !denied &&
    between.length <= 6 &&
    between.every((item) => NAMES.has(item.word) || item.deviceNoun === true)
  );
}

/** "Swap the 4-0 for something stronger, such as 2-0": the verb stands before both. */
const swapped = (items: readonly Item[], given: Group, word: Measured): boolean =>
  items.slice(Math.max(0, given.from - 3), given.from).some((item) => SWAPS.test(item.word)) &&
  items.slice(given.to + 1, word.at).some((item) => /^(?:for|by|with)$/.test(item.word)) &&
  word.at - given.to <= 5;
const SWAPS = /^(?:swap|swapping|replace|trade|change|changing)$/;

/** "I close with 5-0. If that cuts through, change to something less fine, a 4-0.": given up in the sentence before. */
function turnedFrom(scene: Scene, chosen: Group): Reading[] {
  const { items } = scene;
  const [last, earlier] = sentencesBefore(scene);
  // "8 Fr pigtail in the tray. It is about 2.7 mm outside. If …": the sentence between says more of the same thing.
  const between = /^its?$/.test(last?.items[0]?.word ?? '') && last?.close !== '?';
  const previous =
    between && !groups(last!.items).some((g) => sameSystem(g, chosen)) ? (earlier ?? last) : last;
  const given = previous ? distinct(groups(previous.items)).filter((g) => sameSystem(g, chosen)) : [];
  if (given.length === 0 || given.some((g) => sameSizes(g, chosen)) || chosen.sizes.length > 1) return [];
  if (items.some((item) => item.word === 'than') || previous!.close === '?') return [];
  const word = measuredWords(items).find(
    (m) => m.at < chosen.from && m.degree === 'comparative' && !m.idiom && decidable(m.axis),
  );
  if (!word || !indefinite(items, word)) return [];
  const nowhere: Group = { ...chosen, from: -1, to: -1 };
  if (!turned(items, word, nowhere, chosen) && !suchAs(items, word, chosen)) return [];
  const all: Group = {
    from: -1,
    to: -1,
    mentions: given.flatMap((g) => g.mentions),
    sizes: given.flatMap((g) => g.sizes),
  };
  const made = reading(scene, word, all, chosen);
  return [{ ...made, from: word.at, to: chosen.to, unconditional: true }];
}

/** "A finer thread such as 6-0 is kinder": the sentence opens with the wish. */
const suchAs = (items: readonly Item[], word: Measured, chosen: Group): boolean =>
  word.at === 1 &&
  /^(?:such as|like|[,(—–] (?:say|e\.g|i\.e|namely|that is(?: to say)?|meaning|for (?:example|instance))[,.]? ?,?)(?: ?\b(?:an?|the|our))?$/.test(
    items
      .slice(word.at + 2, chosen.from)
      .map((item) => item.word)
      .join(' '),
  );

/** "something stronger", "a narrower one": measured against what was spoken of before. */
const indefinite = (items: readonly Item[], word: Measured): boolean => {
  const [before, earlier] = [items[word.at - 1]?.word ?? '', items[word.at - 2]?.word ?? ''];
  const after = items[word.to + 1];
  return (
    /^(?:something|anything)$/.test(before) ||
    (/^(?:less|more)$/.test(before) && earlier === 'something') ||
    (/^an?$/.test(before) && after?.deviceNoun === true)
  );
};

/** "Instead of 4-0, something stronger like 3-0 can be used." */
const inPlace = (items: readonly Item[], word: Measured, given: Group, chosen: Group): boolean =>
  given.from <= 4 &&
  /(?:^| )(?:instead of|in place of|rather than)(?: an?| the| our)?$/.test(joined(items, 0, given.from)) &&
  indefinite(items, word) &&
  /^(?:\S+ )?(?:like|such as)(?: an?| the)?$/.test(joined(items, word.to + 1, chosen.from));

/** "the much finer 6-0": a definite phrase around the size itself. */
function named(items: readonly Item[], word: Measured, chosen: Group): boolean {
  const article = [items[word.at - 1]?.word, items[word.at - 2]?.word];
  const degree = /^(?:much|far|slightly|even|rather)$/.test(article[0] ?? '');
  return chosen.from === word.at + 1 && (degree ? article[1] === 'the' : article[0] === 'the');
}

/** A negation before the advice ("if it will not pass") does not reach it. */
const reading = (scene: Scene, word: Measured, given: Group, chosen: Group): Reading => ({
  ...comparison(scene, 'turn', chosen, given, word),
  from: word.at,
  own: true,
});
