/**
 * A step in size: "step down from a 5 Fr to a 4 Fr", "the next size up from 14 Fr is 16 Fr", "two sizes smaller than 3-0 is
 * 5-0", "if the 16 Fr leaks, go up a size to 18 Fr", "from 20 G to 18 G is a step up in diameter".
 */
import { direction } from '../../sizes/index.ts';
import type { Axis } from '../model.ts';
import type { Item } from '../text/items.ts';
import { compares, decidable, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { AXIS_NOUNS } from '../words/nouns.ts';
import { exchangeIn } from './exchange.ts';
import type { Construction, Reading } from './model.ts';
import { comparison, wordless } from './than.ts';

/** Where the text says which way the step goes. */
interface Way {
  readonly at: number;
  readonly to: number;
  readonly sign: 1 | -1;
  /** Said by the words themselves; "up" alone may count numbers. */
  readonly axis?: Axis;
}

export const stepping: Construction = {
  id: 'stepping',
  needs: () => [
    { sizes: 2, like: WAY },
    { sizes: 1, words: ['up', 'down', 'drop', 'drops', 'dropped', 'dropping'] },
    { sizes: 2, holds: ['compared'] },
    { sizes: 2, holds: ['axis'], words: ['from'] },
  ],
  read(scene) {
    const all = groups(scene.items);
    if (all.length === 0) return [];
    return [...ways(scene.items).flatMap((way) => stepped(scene, all, way)), ...inQuantity(scene, all)];
  },
};

function stepped(scene: Scene, all: readonly Group[], way: Way): Reading[] {
  const ends = anchoredEnds(scene, all, way) ?? fromFirst(scene, all, way) ?? givenEnds(scene, all, way);
  if (!ends) return [];
  const [from, to] = ends;
  if (!sameSystem(from, to) || sameSizes(from, to) || from.sizes.length + to.sizes.length > 2) return [];
  const axis = way.axis ?? axisIn(scene, way.at, Math.max(from.from, to.from));
  // "Up" in gauge may mean the number or the bore: only with the noun beside it.
  if (!axis && direction(from.sizes[0]!.system) === 'down') return [];
  return [reading(scene, way, axis ?? 'outer', to, from)];
}

const STEPS = /^(?:step|steps|stepping|stepped|sizes?|gauge|notch|upsize|downsize)$/;
const COUNTS = /^(?:one|two|three|next|a|single|half)$/;
const UP = /^(?:up|upwards?|above|larger|bigger|more)$/;
const DOWN = /^(?:down|downwards?|below|smaller|less)$/;
const WAY = new RegExp(
  `${UP.source}|${DOWN.source}|^(?:up|down)siz(?:e|es|ed|ing)$|^(?:drop|drops|dropped|dropping)$`,
);
const MOVES =
  /^(?:go|goes|went|going|work|works|worked|move|moved|come|climb|drop|drops|dropped|dropping|jump|step|back|way)$/;

function ways(items: readonly Item[]): Way[] {
  const found: Way[] = [];
  const words = measuredWords(items);
  for (let at = 0; at < items.length; at++) {
    const { word } = items[at]!;
    const sign = UP.test(word) ? 1 : DOWN.test(word) ? -1 : 0;
    const near = items.slice(Math.max(0, at - 2), at).some((item) => STEPS.test(item.word));
    const resized = /^(up|down)siz(?:e|es|ed|ing)$/.exec(word);
    const counts = items[at - 1]?.word === 'one' && items[at - 2]?.word === 'next';
    if (resized) found.push({ at, to: at, sign: resized[1] === 'up' ? 1 : -1, axis: 'outer' });
    else if (sign !== 0 && (near || counts || moved(items, at)))
      found.push({ at, to: lastOf(items, at), sign });
    else if (/^(?:drop|drops|dropped|dropping)$/.test(word)) {
      if (/^(?:a|one|two) sizes?$/.test(next(items, at))) found.push({ at, to: at + 2, sign: -1 });
      else if (items[at + 1]?.word === 'to') found.push({ at, to: at, sign: -1 });
    }
    const measured = words.find((m) => m.at === at);
    if (measured?.degree !== 'comparative' || !decidable(measured.axis) || measured.idiom) continue;
    const counted = items
      .slice(Math.max(0, at - 3), at)
      .some(
        (item, i, before) => STEPS.test(item.word) || (i === before.length - 1 && /^one$/.test(item.word)),
      );
    const goes = MOVES.test(items[at - 1]?.word ?? '') && items[measured.to + 1]?.word === 'to';
    if ((counted || goes) && measured.axis !== 'flow')
      found.push({ at, to: measured.to, sign: measured.sign, axis: measured.axis });
  }
  // "a size smaller": the word itself says what "smaller" near a step says again.
  return found.filter((way, i) => !found.some((other, k) => other.at === way.at && k > i));
}

const next = (items: readonly Item[], at: number): string =>
  `${items[at + 1]?.word ?? ''} ${items[at + 2]?.word ?? ''}`;

/** "go up a size", "drop down a size", "worked our way up to". */
const moved = (items: readonly Item[], at: number): boolean => {
  const before = items.slice(Math.max(0, at - 3), at).map((item) => item.word);
  if (!before.some((word) => MOVES.test(word)) || !/^(?:up|down)$/.test(items[at]!.word)) return false;
  if (COUNTS.test(items[at + 1]?.word ?? '') && STEPS.test(items[at + 2]?.word ?? '')) return true;
  // "come down from 16 Fr to 14 Fr"; "down from 22 G" alone may count numbers.
  const fromTo = /^(?:from|to)$/.test(items[at + 1]?.word ?? '') && before.at(-1) !== 'back';
  // "move down in size to a 16 G"
  if (items[at + 1]?.word === 'in' && items[at + 2]?.axisNoun) return items[at + 3]?.word === 'to';
  return before.includes('way') || fromTo || /^(?:again|another)$/.test(items[at + 1]?.word ?? '');
};
const lastOf = (items: readonly Item[], at: number): number =>
  COUNTS.test(items[at + 1]?.word ?? '') && STEPS.test(items[at + 2]?.word ?? '') ? at + 2 : at;

const ANCHORS = /^(?:from|than|above|below|after|beyond|past)$/;

/** "up from 14 Fr is 16 Fr", "smaller than 3-0 is 5-0", or the step said of a size before: "10 Fr, one size down from 12 Fr". */
function anchoredEnds(scene: Scene, all: readonly Group[], way: Way): [Group, Group] | undefined {
  const { items } = scene;
  const anchor = items.findIndex((item, i) => i >= way.at && i <= way.to + 4 && ANCHORS.test(item.word));
  const from = anchor < 0 ? undefined : all.find((g) => g.from > anchor && g.from - anchor <= 4);
  if (!from || items.slice(anchor + 1, from.from).some(stops)) return undefined;
  if (from.sizes.length === 2 && items[anchor]!.word === 'from') return [half(from, 0), half(from, 1)];
  const to = all.find((g) => g.from > from.to && g.from - from.to <= 9);
  if (to && !items.slice(from.to + 1, to.from).some(stops) && links(items, from.to, to.from))
    return [from, to];
  const named = all.filter((g) => g.to < way.at).at(-1) ?? fragment(scene, way);
  const said = named && (named.from < 0 || placed(items, named.to, way.at));
  return said ? [from, named] : undefined;
}

/** "From 8 Fr the next one up is 10 Fr." */
function fromFirst({ items }: Scene, all: readonly Group[], way: Way): [Group, Group] | undefined {
  const [from, to, ...more] = all;
  if (!from || !to || more.length > 0 || items[from.from - 1]?.word !== 'from') return undefined;
  const said = items[way.to + 1]?.word === 'is' && to.from - way.to <= 4 && to.from > way.to;
  return said && way.at > from.to && way.at - from.to <= 6 ? [from, to] : undefined;
}

/** "Catheter 10 Fr. Up a size from 8 Fr.": a sentence without a subject goes on about the size before. */
function fragment(scene: Scene, way: Way): Group | undefined {
  const before = scene.before.at(-1);
  const [only, ...more] = before && before.close !== '?' ? distinct(groups(before.items)) : [];
  const opens =
    way.at <= 1 && /^(?:dropped|up|down|went|gone|stepped|moved|one|two|a)$/.test(scene.items[0]?.word ?? '');
  return opens && only && more.length === 0 ? { ...only, from: -1, to: -1 } : undefined;
}

/** "a 12 Fr is the next size up from …": the step is said of the size before. */
const placed = (items: readonly Item[], from: number, at: number): boolean =>
  /^(?:(?:catheter|tube|drain|sheath|needle|cannula|silk|nylon|thread|suture) )?(?:is|,|, (?:which|that|it) is|, (?:that's|it's|being)|—|\() (?:just )?(?:the next|one|a|two) (?:sizes? |steps? |full )*$/.test(
    items
      .slice(from + 1, at)
      .map(({ word }) => `${word} `)
      .join(''),
  );

const stops = (item: Item): boolean => /^[;.!?]$/.test(item.word) || NEGATIONS.has(item.word);
const LINKS = new Set([
  'is',
  'to',
  '=',
  ':',
  'are',
  'gives',
  'becomes',
  'means',
  'hand',
  'ask',
  'take',
  'comes',
  'so',
  'meaning',
  'say',
  'be',
  'at',
]);
const links = (items: readonly Item[], from: number, to: number): boolean =>
  items.slice(from + 1, to).some((item) => LINKS.has(item.word));

const INTO = new Set([
  'to',
  'in',
  'width',
  'bore',
  'thickness',
  'diameter',
  'calibre',
  ',',
  ':',
  'the',
  'a',
  'an',
  'again',
  'is',
  'say',
  'usually',
  'often',
  'perhaps',
  'becomes',
  'size',
  'with',
  '—',
  '(',
  'tube',
  'catheter',
  'sheath',
  'drain',
]);

/** "If the 16 Fr leaks, go up a size to 18 Fr": given up before, chosen after. */
function givenEnds(scene: Scene, all: readonly Group[], way: Way): [Group, Group] | undefined {
  const { items } = scene;
  const near = items.slice(Math.max(0, way.at - 4), way.at);
  // "If a 7 Fr won't go, drop to …": what fails is denied, not what is done.
  const own = near.slice(near.findLastIndex((item) => item.word === ',') + 1);
  if (own.some((item) => NEGATIONS.has(item.word))) return undefined;
  // "A 1 is two steps above a 2-0" places the first; nothing is given up for the second.
  if (/^(?:above|below)$/.test(items[way.at]!.word)) return undefined;
  const after = all.filter((g) => g.from > way.to);
  const before = distinct(all.filter((g) => g.to < way.at));
  const [first, second] = after;
  if (before.length === 0 && first && after.length === 1 && /^(?:up|down)$/.test(items[way.at]!.word)) {
    // "Blocked 12 Fr? Go up a size, to a 14 Fr."
    const earlier = distinct(groups(scene.before.at(-1)?.items ?? []));
    const reached = items.slice(way.to + 1, first.from).every((item) => INTO.has(item.word));
    return earlier.length === 1 && reached ? [earlier[0]!, first] : undefined;
  }
  if (before.length === 1 && first && after.length === 1)
    return items.slice(way.to + 1, first.from).every((item) => INTO.has(item.word))
      ? [before[0]!, first]
      : undefined;
  // "Downsize the sheath: 7 Fr becomes 6 Fr."
  const becomes =
    first && second && items.slice(first.to + 1, second.from).some((item) => item.word === 'becomes');
  return becomes && before.length === 0 && after.length === 2 ? [first, second] : undefined;
}

function axisIn(scene: Scene, at: number, to: number): Axis | undefined {
  // "a size up" may count numbers; "down in size" does not.
  const noun = scene.items
    .slice(at + 1, to)
    .find((item, i, all) => item.axisNoun && (item.word !== 'size' || all[i - 1]?.word === 'in'));
  const axis = noun && AXIS_NOUNS.get(noun.word)?.axis;
  return axis === 'number' ? undefined : axis;
}

/** "From 20 G to 18 G is a step up in diameter", "going from 3-0 to 5-0 you go down in thickness". */
function inQuantity(scene: Scene, all: readonly Group[]): Reading[] {
  const { items } = scene;
  const run = downTo(scene, all);
  if (run) return [run];
  const two = exchangeIn(items) ?? fromTo(items, all);
  if (!two || !sameSystem(two.given, two.chosen) || sameSizes(two.given, two.chosen)) return [];
  const last = Math.max(two.given.to, two.chosen.to);
  const moving = quantityBefore(items, Math.min(two.given.from, two.chosen.from));
  if (moving) return [along(scene, two, moving)];
  const at = items.findIndex((item, i) => i > last && i - last <= 7 && /^(?:up|down)$/.test(item.word));
  const noun = items[at + 2]?.axisNoun ?? items[at + 3]?.axisNoun;
  if (at < 0 || items[at + 1]?.word !== 'in' || !noun || !decidable(noun.axis)) return [];
  const sign = (items[at]!.word === 'up' ? noun.sign : -noun.sign) as 1 | -1;
  return [
    {
      ...wordless(comparison(scene, 'stepping', two.chosen, two.given, compares(at, noun.axis, sign))),
      at,
      to: at + 2,
    },
  ];
}

/** "from 28 down to 36 Fr": on a scale whose numbers rise with the size, the way and the ends must agree. */
function downTo(scene: Scene, all: readonly Group[]): Reading | undefined {
  const { items } = scene;
  const [a, b] = all;
  if (all.length !== 2 || !a || !b || !sameSystem(a, b) || sameSizes(a, b)) return undefined;
  const way = /^(?:all the way |right )?(up|down) to(?: an?| the)?$/.exec(
    items
      .slice(a.to + 1, b.from)
      .map((item) => item.word)
      .join(' '),
  )?.[1];
  if (!way || items[a.from - 1]?.word !== 'from' || direction(a.sizes[0]!.system) !== 'up') return undefined;
  const at = items.findIndex((item, i) => i > a.to && item.word === way);
  const word = compares(at, 'outer', way === 'up' ? 1 : -1);
  return wordless(comparison(scene, 'stepping', b, a, word));
}

/** One end of "18 Fr to 16 Fr". */
const half = (group: Group, i: number): Group => ({
  ...group,
  mentions: [group.mentions[i] ?? group.mentions[0]!],
  sizes: [group.sizes[i]!],
});

interface Moving {
  readonly at: number;
  readonly axis: Axis;
  readonly sign: 1 | -1;
}

const RISES = /^(?:rises?|grows?|increases?|climbs?|improves?)$/;
const FALLS = /^(?:falls?|drops?|decreases?|shrinks?|diminishes|lessens)$/;

/** "Tensile strength rises from 4-0 to 2-0", "resistance climbs as you go from 16 G to 22 G". */
function quantityBefore(items: readonly Item[], first: number): Moving | undefined {
  const from = items.findLastIndex((item, i) => i < first && item.word === 'from');
  for (let at = Math.max(1, from - 9); at < from; at++) {
    const verb = items[at]!.word;
    const noun = items[at - 1]?.axisNoun;
    const sign = RISES.test(verb) ? 1 : FALLS.test(verb) ? -1 : 0;
    if (sign === 0 || !noun || !decidable(noun.axis)) continue;
    const link = items
      .slice(at + 1, from)
      .map((item) => item.word)
      .join(' ');
    if (MOVING.test(link)) return { at, axis: noun.axis, sign: (sign * noun.sign) as 1 | -1 };
  }
  return undefined;
}
const MOVING =
  /^(?:off|away|steadily|sharply)?(?: ?(?:as|when|if|on|by|whenever)(?: (?:you|we|one|they))? (?:go|goes|move|moves|step|steps|change|changes|pass|work|going|moving|changing|stepping|passing)(?: (?:up|down|on|along|over))?)?$/;

const along = (scene: Scene, two: { given: Group; chosen: Group }, { at, axis, sign }: Moving): Reading => ({
  ...wordless(comparison(scene, 'stepping', two.chosen, two.given, compares(at, axis, sign))),
  at,
  from: at,
});

/** "From 20 G to 18 G" without a verb of moving. */
function fromTo(items: readonly Item[], all: readonly Group[]): { given: Group; chosen: Group } | undefined {
  const [only, second] = all;
  if (!only || items[only.from - 1]?.word !== 'from') return undefined;
  if (all.length === 1 && only.sizes.length === 2) return { given: half(only, 0), chosen: half(only, 1) };
  const to = second && items.slice(only.to + 1, second.from).some((item) => item.word === 'to');
  return to && all.length === 2 && second.from - only.to <= 4 ? { given: only, chosen: second } : undefined;
}

function reading(scene: Scene, way: Way, axis: Axis, left: Group, right: Group): Reading {
  const word = compares(way.at, axis, way.sign);
  const made = wordless(comparison(scene, 'stepping', left, right, word));
  const at = Math.max(left.from, way.at);
  return { ...made, at, from: Math.min(at, way.at), to: Math.max(left.to, way.to), own: true };
}
