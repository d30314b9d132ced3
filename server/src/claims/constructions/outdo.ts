/** Verbs that compare by themselves: "the 14 G outruns the 18 G". */
import { finds } from '../../notes/patterns.ts';
import type { Axis } from '../model.ts';
import type { Item } from '../text/items.ts';
import { compares } from '../text/magnitudes.ts';
import { groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

const VERBS: ReadonlyMap<string, { axis: Axis; sign: 1 | -1 }> = new Map(
  (
    [
      ['flow', 1, 'outrun outruns outpace outpaces outflow outflows outstrip outstrips'],
      ['outer', 1, 'dwarf dwarfs'],
    ] as const
  ).flatMap(([axis, sign, words]) => words.split(' ').map((word) => [word, { axis, sign }] as const)),
);
const FLOWS =
  /\b(?:flow|flows|infusions?|fast|faster|speed|litres?|liters?|volume|bags?|drip|ml|minutes?|seconds?|fluids?|blood)\b/;
const TIME = /^(?:before|ahead|sooner|earlier)$/;
const EXCEEDS = /^(?:exceeds?|surpass(?:es)?)$/;
const EMPTIES = /^(?:empt|deliver|finish|drain|run|fill|clear|get)/;

export const outdo: Construction = {
  id: 'outdo',
  needs: () => [
    { sizes: 2, words: VERBS.keys(), like: EXCEEDS },
    { sizes: 2, like: TIME },
    { sizes: 2, like: WINS },
    { sizes: 2, words: ['after', 'compared', 'relative', 'as'] },
  ],
  read(scene) {
    const all = groups(scene.items);
    return scene.items.flatMap((item, at) => {
      const verb =
        VERBS.get(item.word) ??
        exceeds(scene, at) ??
        wins(scene, at) ??
        changes(scene, at) ??
        earlier(scene, at) ??
        breaksBefore(scene, at);
      const left = all.filter((g) => g.to < at && at - g.to <= 8).at(-1);
      const right = all.find((g) => g.from > at && g.from - at <= 5);
      if (!verb || !left || !right || !sameSystem(left, right) || sameSizes(left, right)) return [];
      if (byLength(scene.items)) return [];
      return [reading(scene, at, verb, left, right)];
    });
  },
};

/** "A short 18 G beats a long 16 G lumen": they differ in length as well. */
const byLength = (items: readonly Item[]): boolean =>
  items.some((item) => /^short(?:er)?$/.test(item.word)) &&
  items.some((item) => /^long(?:er)?$/.test(item.word));

/** Verbs of winning, which say nothing of what is won on. */
const WINS =
  /^(?:beats?|outperforms?|outdoes|outranks?|outclasses|tops|trumps|wins|leads|leaves|loses|ahead|superior|inferior|second|edge)$/;
const AGAINST = /^(?:over|against|to|on|of|in|for|behind)$/;

/** "The 14 G beats the 18 G for flow", "wins on bore over the 18 G", "in strength 4-0 loses to 2-0". */
function wins(scene: Scene, at: number): { axis: Axis; sign: 1 | -1 } | undefined {
  const { items } = scene;
  const { word } = items[at]!;
  if (!WINS.test(word)) return undefined;
  const next = items[at + 1]?.word ?? '';
  if (/^(?:wins|leads|ahead|edge)$/.test(word) && !AGAINST.test(next)) return undefined;
  if (/^(?:loses|superior|inferior|second)$/.test(word) && next !== 'to') return undefined;
  if (
    word === 'leaves' &&
    !items.slice(at + 2, at + 8).some((item) => /^(?:behind|standing)$/.test(item.word))
  )
    return undefined;
  const axis = contest(items, at);
  if (!axis) return undefined;
  return {
    axis: axis.axis,
    sign: (/^(?:loses|inferior|second)$/.test(word) ? -axis.sign : axis.sign) as 1 | -1,
  };
}

/** The one quantity its clause speaks of; of things that flow, the flow. */
function contest(all: readonly Item[], at: number): { axis: Axis; sign: 1 | -1 } | undefined {
  const items = clauseOf(all, at);
  const nouns = items.flatMap((item) => (item.kind === 'word' && item.axisNoun ? [item.axisNoun] : []));
  const first = nouns[0];
  if (!first)
    return FLOW.test(items.map((item) => item.word).join(' ')) ? { axis: 'flow', sign: 1 } : undefined;
  const one = nouns.every((noun) => noun.axis === first.axis && noun.sign === first.sign);
  return one && first.axis !== 'number' ? first : undefined;
}
const FLOW =
  /\b(?:flows?|infusions?|transfusions?|fast|faster|rapid|rapidly|speed|litres?|liters?|fluids?|blood|drip|minutes|seconds|resuscitation)\b/;

/** From the comma before to the comma behind; "For flow, …" belongs to what follows. */
function clauseOf(items: readonly Item[], at: number): readonly Item[] {
  const ends = (item: Item) => /^[,;.]$/.test(item.word);
  const comma = items.slice(0, at).findLastIndex(ends);
  const opening = comma > 0 && comma <= 5 && /^(?:for|on|in|when)$/.test(items[0]!.word);
  const stop = items.findIndex((item, i) => i > at && ends(item));
  return items.slice(opening ? 0 : comma + 1, stop < 0 ? items.length : stop);
}

const RAISES = /^(?:increases|raises|boosts|improves)$/;
const LOWERS = /^(?:decreases|reduces|lowers|cuts|limits|restricts)$/;

/** "An 18 G cuts the flow compared with a 16 G." */
function changes({ items }: Scene, at: number): { axis: Axis; sign: 1 | -1 } | undefined {
  const sets = `${items[at]!.word} ${items[at + 1]?.word}`;
  if (!/^(?:compared (?:with|to)|relative to|as against)\b/.test(sets)) return undefined;
  const verb = items
    .slice(Math.max(0, at - 4), at)
    .find((item) => RAISES.test(item.word) || LOWERS.test(item.word));
  const noun = items.slice(Math.max(0, at - 3), at).find((item) => item.axisNoun)?.axisNoun;
  if (!verb || !noun || noun.axis === 'number') return undefined;
  return { axis: noun.axis, sign: (RAISES.test(verb.word) ? noun.sign : -noun.sign) as 1 | -1 };
}

const BREAKS = /^(?:breaks?|snaps?|tears?|fails?|gives?|parts|ruptures?)$/;

/** "The 4-0 gives way before the 2-0 does": first to break is the weaker. */
function breaksBefore({ items }: Scene, at: number): { axis: Axis; sign: 1 | -1 } | undefined {
  const { word } = items[at]!;
  if (word !== 'before' && word !== 'after') return undefined;
  const verb = items[at - 1]?.word === 'way' ? items[at - 2]?.word : items[at - 1]?.word;
  const size = items.findIndex((item, i) => i > at && i <= at + 3 && item.kind === 'size');
  const sized =
    size > 0 && !items.slice(size + 1, size + 3).some((item) => /^(?:if|when|unless)$/.test(item.word));
  return BREAKS.test(verb ?? '') && sized
    ? { axis: 'strength', sign: word === 'before' ? -1 : 1 }
    : undefined;
}

/** "the bore of the 16 G exceeds that of the 18 G": the quantity is the subject. */
function exceeds(scene: Scene, at: number): { axis: Axis; sign: 1 | -1 } | undefined {
  if (!finds(EXCEEDS, scene.items[at]!.word)) return undefined;
  const noun = scene.items.slice(Math.max(0, at - 8), at).find((item) => item.axisNoun)?.axisNoun;
  if (!noun) return bare(scene.items, at) ? { axis: 'outer', sign: 1 } : undefined;
  return noun.axis === 'number' ? undefined : noun;
}

/** "4 Fr exceeds 5 Fr": where number and width grow together, nothing need be said of what is larger. */
function bare(items: readonly Item[], at: number): boolean {
  const after = /^(?:an?|the)$/.test(items[at + 1]?.word ?? '') ? at + 2 : at + 1;
  const both = [items[at - 1], items[after]].every((item) => item?.mention && GROWS.has(systemOf(item)));
  const lead = items.slice(0, at - 1).every((item) => /^(?:as|since|because|an?|the)$/.test(item.word));
  return both && lead && /^[,.;)]?$/.test(items[after + 1]?.word ?? '');
}
const GROWS: ReadonlySet<string> = new Set(['french', 'millimetre', 'tube-id']);
const systemOf = (item: Item): string => item.mention?.sizes[0]?.system ?? '';

/** "the 24 G empties it before the 18 G does": first to be done flows faster. */
function earlier(scene: Scene, at: number): { axis: 'flow'; sign: 1 } | undefined {
  if (!TIME.test(scene.items[at]!.word)) return undefined;
  const verb = scene.items.slice(Math.max(0, at - 5), at).some((item) => EMPTIES.test(item.word));
  const echoed = scene.items
    .slice(at + 1, at + 8)
    .some((item) => /^(?:does|did|do|will|would|is|has|can)$/.test(item.word));
  const race =
    FLOWS.test(scene.items.map((item) => item.word).join(' ')) &&
    EMPTIES.test(scene.items[at - 1]?.word ?? '');
  return verb && (echoed || race) ? { axis: 'flow', sign: 1 } : undefined;
}

function reading(
  scene: Scene,
  at: number,
  verb: { axis: Axis; sign: 1 | -1 },
  left: Parameters<typeof comparison>[2],
  right: Parameters<typeof comparison>[3],
): Reading {
  const word = compares(at, verb.axis, verb.sign);
  return comparison(scene, 'outdo', left, right, word);
}
