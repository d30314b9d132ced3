/**
 * The sizes of a range or between two limits, laid out one by one: "any from 18 to 22 will do; that leaves you the 18, the 20
 * and the 22", "between 2-0 and 4-0 there is one size, the 3-0", "the drains above 14 and below 20 Fr are the 16 and the 18".
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Group, groups, placeOf, type Scene, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { rangeClaim } from './range-claim.ts';

export const laidOut: Construction = {
  id: 'laid-out',
  needs: () => [
    { sizes: 2, holds: ['range'] },
    { sizes: 2, like: /between|above|over/ },
    { sizes: 2, like: new RegExp(`^(?:${HENCE_WORDS})\\b`) },
  ],
  read(scene) {
    const all = groups(scene.items);
    const told = carried(scene, all);
    if (told.length > 0) return told;
    if (all.length < 2 || TURNS.test(joined(scene.items).replace(/\bbut (?=below|under)/, 'and '))) return [];
    const found = boundsOf(scene.items, all);
    if (!found) return [];
    const { low, high, rest, strict } = found;
    const [first] = rest;
    if (!first || !rest.every((g) => sameSystem(g, low) && g.mentions.every(({ kind }) => kind === 'size')))
      return [];
    const between = joined(scene.items, high.to + 1, first.from);
    // "Drains from 10 to 14 Fr are small-bore; the large ones are …": another subject.
    if (ELSE.test(between)) return [];
    const sides = between.split(/[,;.]/).length;
    if (!LAYS_OUT.test(between) || (sides > 1 && !LEAVES.test(between))) return [];
    const listed = runFrom(scene.items, rest);
    // One size alone needs words that say there is no other.
    if (listed.length === 1 && listed[0]!.sizes.length === 1 && !ALONE.test(between)) return [];
    const each = listed.flatMap(singles).map((g) => placedIn(scene.items, g));
    // A row of which nothing lies in the range is a row of other sizes.
    const [min, max] = [low.sizes[0]!.value, high.sizes[0]!.value].sort((a, b) => a - b);
    if (each.length > 1 && !each.some((g) => g.sizes[0]!.value >= min! && g.sizes[0]!.value <= max!))
      return [];
    return each.map((g) => reading(scene, g, low, high, strict));
  },
};

/** "22 to 25 gauge needles. Hence I leave in the tray the 22, the 23 and the 20 only": the range stands in the sentence before. */
function carried(scene: Scene, rest: readonly Group[]): Reading[] {
  const { items } = scene;
  const before = scene.before.at(-1);
  const [first] = rest;
  if (!first || !before || before.close === '?' || !HENCE.test(joined(items, 0, first.from))) return [];
  const [range, ...more] = groups(before.items);
  if (!range || more.length > 0 || range.mentions[0]!.kind !== 'range' || range.sizes.length !== 2) return [];
  if (TURNS.test(joined(items)) || TURNS.test(joined(before.items))) return [];
  const listed = runFrom(items, rest);
  if (!CLOSED.test(joined(items, listed.at(-1)!.to + 1)) || listed.length < rest.length) return [];
  const each = listed.flatMap(singles).map((g) => placedIn(items, g));
  const [low, high] = [part(range, 0), part(range, 1)];
  if (each.length < 2 || !rest.every((g) => sameSystem(g, low))) return [];
  const [min, max] = [low.sizes[0]!.value, high.sizes[0]!.value].sort((a, b) => a - b);
  if (!each.some((g) => g.sizes[0]!.value >= min! && g.sizes[0]!.value <= max!)) return [];
  return each.map((g) => ({
    ...reading(scene, g, low, high, false),
    from: g.from,
  }));
}
const HENCE_WORDS = 'so|hence|therefore|thus|accordingly|consequently';
const HENCE = new RegExp(
  `^(?:${HENCE_WORDS})\\b(?: ,)?(?: (?:i|we|you|there|only|just|in|on|the|this|our|my|that|these|tray|drawer|shelf|cupboard|trolley|box|bag|kit|store|basket|case|ward|leave|leaves|keep|keeps|stay|stays|stock|have|has|are|is|find|get|remain|remains|carry|put|lie|lies|order|a|an))*$`,
);
const CLOSED =
  /^(?:(?:needles?|cannula[es]?|catheters?|drains?|tubes?|sutures?|fr|french|g|gauge|only|alone|there|and nothing else|in (?:it|the [a-z]+)|on the [a-z]+) ?)*[.;!]?$/;

const TURNS =
  /\b(?:not|never|no|none|nor|neither|than|but|except|unless|outside|instead|rather|if|otherwise|without|whereas|unlike|wrong|missing|lacks?|skips?|beyond|too|\w+n't)\b|\?/;
/** Verbs that lay the sizes out, with nothing but small words behind them. */
const LAYS_OUT =
  /(?:\b(?:leav(?:es|ing)|are|is|there's|means?|meaning|comprises?|includes?|including|holds?|contains?|gives?|remains?|lies|sits|comes|(?:you|we|i) (?:have|find|get|keep|stock|see|can use|may use|may take|can take)|namely|left)|[:—–])(?: ?(?:us|you|me|only|just|exactly|size|sizes|the|one|two|three|single|a|an|our|and|both|left|in between|all|of|them|possible|choices?|options?|numbers?|gauges?|still|then|there|with|here|,|:|—|–|namely|that|which|it) ?)*$/;
/** For somebody or something else. */
const ELSE = /\bfor (?!example\b|instance\b|this\b|that\b|it\b|you\b|us\b)/;
const LEAVES =
  /\b(?:leav(?:es|ing)|namely|meaning|that is|which (?:means|is|are)|so (?:you|we) (?:have|can)|(?:you|we) (?:have|find|get|can (?:use|take)|may (?:use|take)))\b|:/;
const ALONE = /\b(?:only|just|one|single|alone|leav(?:es|ing)|left|remains?|nothing but)\b/;

interface Bounds {
  readonly low: Group;
  readonly high: Group;
  readonly rest: readonly Group[];
  readonly strict: boolean;
}

const part = (g: Group, i: number): Group => ({ ...g, sizes: [g.sizes[i]!] });

function boundsOf(items: readonly Item[], all: readonly Group[]): Bounds | undefined {
  const [first, second, ...more] = all as [Group, Group, ...Group[]];
  const strict =
    /\bbetween\b.*\b(?:one|single|only|just|two|left)\b/.test(joined(items)) &&
    items[first.from - 1]?.word === 'between';
  if (first.mentions[0]!.bound || second.mentions[0]!.bound) return undefined;
  if (first.sizes.length === 2) {
    const ranged = first.mentions[0]!.kind === 'range' || items[first.from - 1]?.word === 'between';
    return ranged
      ? { low: part(first, 0), high: part(first, 1), rest: [second, ...more], strict }
      : undefined;
  }
  if (first.sizes.length > 1 || second.sizes.length > 1 || !sameSystem(first, second)) return undefined;
  const [before, link] = [
    joined(items, first.from - 2, first.from),
    joined(items, first.to + 1, second.from),
  ];
  const open =
    /\b(?:above|over)(?: an?| the)?$/.test(before) &&
    /^(?:fr |french )?(?:and|yet|but) (?:below|under)(?: an?| the)?$/.test(link);
  const shut = /\bbetween(?: an?| the)?$/.test(before) && /^and(?: an?| the)?$/.test(link);
  return (open && first.sizes[0]!.system === 'french') || shut
    ? { low: first, high: second, rest: more, strict: open || strict }
    : undefined;
}

/** "the 18, the 16 and the 22": sizes joined by nothing but commas, links and articles. */
function runFrom(items: readonly Item[], all: readonly Group[]): Group[] {
  const run = [all[0]!];
  for (const g of all.slice(1)) {
    const gap = joined(items, run.at(-1)!.to + 1, g.from);
    if (!/^(?:(?:,|and|or|as well as|an?|the) ?)+$/.test(gap)) break;
    run.push(g);
  }
  return run;
}

const singles = (g: Group): Group[] =>
  g.mentions.length === 1
    ? [g]
    : g.sizes.map((size, i) => ({ ...g, mentions: [g.mentions[i] ?? g.mentions[0]!], sizes: [size] }));

/** Each of a group where it stands. */
const placedIn = (items: readonly Item[], g: Group): Group => {
  const at = placeOf(items, g);
  return at < 0 || g.mentions.length > 1 ? g : { ...g, from: at, to: at };
};

function reading(scene: Scene, g: Group, low: Group, high: Group, strict: boolean): Reading {
  const claim = rangeClaim(scene, 'laid-out', g, [low, high], strict);
  return { claim, at: g.from, from: low.from, to: g.to };
}
