/** Hub colours: "18 G pink, 20 G yellow", "the deep green hub is the 23 G", "black tells you it is a 25 G". */
import { colourCodeOf, colourOf } from '../../sizes/index.ts';
import type { ColourClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { type Group, groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { codeOf } from '../words/codes.ts';
import {
  AS_IS,
  COMES,
  EXPECTED,
  ITS_COLOUR,
  KNOWN,
  LOOSE_CAP,
  OTHER_MAKE,
  OWN_HUB,
  PLACED,
  POINTED,
  PUT,
  TIES,
  TOLD_BY,
  WANTED,
} from './colour-links.ts';
import { onEither } from './either-hub.ts';
import { type Colour, deviceOf, intoVein } from './hub-code.ts';
import { toldLoosely } from './hub-loose.ts';
import { ofTopic } from './hub-topic.ts';
import { coloursIn, inARow, otherThing, SHADES, tallied } from './hub-words.ts';
import type { Construction, Reading } from './model.ts';
import { onBoth } from './on-both.ts';

export const colour: Construction = {
  id: 'colour',
  needs: () => [
    { holds: ['colour'] },
    {
      sizes: 1,
      like: /^(?:it|it's|that|that's|this|these|those|they|needles?|cannulas?|cannulae|hypodermics?)$/,
    },
  ],
  read(scene) {
    const colours = coloursIn(scene.items);
    const sizes = groups(scene.items).filter(
      (g) =>
        g.mentions.length === 1 && g.sizes.length === 1 && coded(g) && !otherThing(scene.items[g.to + 1]),
    );
    if (colours.length === 0) {
      const told = ofTopic(scene);
      return told.length > 0 ? told : toldLoosely(scene);
    }
    // Blunt and filter needles, dental and intraosseous ones, and the lumens of a central line, carry their makers' own colours.
    if (
      scene.items.some((item) => OWN_CODE.test(item.word)) ||
      CENTRAL.test(textOf(scene.items.slice(0, colours.at(-1)!.at)))
    )
      return [];
    if (tallied(scene) || inARow(scene.items, colours, sizes)) return [];
    const ordered = inOrder(scene.items, colours);
    if (ordered.length === 0 && sizes.length === 0) return toldLoosely(scene);
    const alike = onEither(scene, colours, sizes);
    if (alike.length > 0) return alike;
    const pairs = ordered.length > 0 ? ordered : pairUp(scene.items, meant(scene.items, colours), sizes);
    if (pairs.length > 0) return otherwise(scene, pairs) ? [] : pairs.map(([c, g]) => reading(scene, c, g));
    return toldLoosely(scene);
  },
};

const OWN_CODE =
  /^(?:blunt|filter|fill|blunt-fill|filter-needle|dental|dentistry|io|ios|intraosseous|osseous|cvcs?|cvls?|distal|proximal|medial|lumens?|midlines?|fistula|huber)$/;

/** Ports of a central line, and what a thing is wrapped in. */
const CENTRAL =
  /\bcentral (?:lines?|venous)\b.*\bports?\b|\bports?\b.*\bcentral (?:lines?|venous)\b|\bwrap(?:ped|s)?\b|\bwr(?:ites?|ote|itten|iting) .* in(?: \w+)?$/;

const coded = (group: Group) =>
  group.sizes[0]!.system === 'needle-gauge' || group.sizes[0]!.system === 'french';

/** "not blue but pink": the first of the two is set aside. */
const meant = (items: readonly Item[], colours: readonly Colour[]): readonly Colour[] =>
  colours.filter((c) => !setAside(items, c));
const setAside = (items: readonly Item[], c: Colour): boolean =>
  /^(?:not|never|nor|neither)$/.test(items[c.at - 1]?.word ?? '') &&
  (items.slice(c.to + 1, c.to + 3).some((item) => item.word === 'but') ||
    // "Not pink, not blue: 14 G."
    (/^[:,—–]$/.test(items[c.to + 1]?.word ?? '') &&
      !items.slice(0, c.at).some((item) => item.kind === 'size')));

/** "Pink and green cannulas are 20 G and 18 G respectively." */
function inOrder(items: readonly Item[], colours: readonly Colour[]): [Colour, Group][] {
  if (!items.some((item) => item.word === 'respectively')) return [];
  const all = groups(items).filter((g) => g.sizes.length === g.mentions.length);
  const [list] = all;
  if (all.length !== 1 || !list || list.sizes.length !== colours.length || colours.length < 2) return [];
  return colours.map((c, i): [Colour, Group] => {
    const mention = list.mentions[i]!;
    const at = items.findIndex((item) => item.mention === mention);
    return [c, { from: at, to: at, mentions: [mention], sizes: mention.sizes }];
  });
}

/**
 * Several pairs that all fit another code than the one told from afar: they are of that code.
 * "The grey 16 G runs faster than the green 18 G" speaks of cannulas, whatever the list above was about.
 */
function otherwise(scene: Scene, pairs: readonly [Colour, Group][]): boolean {
  if (pairs.length < 2 || codeOf(scene.items)) return false;
  return (['needle', 'cannula'] as const).some((device) =>
    pairs.every(([c, g]) => {
      const code = colourCodeOf(device);
      const row =
        code && g.sizes[0]!.system === 'needle-gauge' ? colourOf(code, g.sizes[0]!.value) : undefined;
      return row?.families.includes(c.family) === true;
    }),
  );
}

/** Colours and sizes that alternate are paired in order; anything less regular is not read. */
function pairUp(
  items: readonly Item[],
  colours: readonly Colour[],
  sizes: readonly Group[],
): [Colour, Group][] {
  const clauses = split(items);
  return clauses.flatMap(([from, to]) => {
    const cs = colours.filter((c) => c.at >= from && c.to < to);
    const gs = sizes.filter((g) => g.from >= from && g.to < to);
    if (cs.length === gs.length && alternate(cs, gs))
      return cs.map((c, i): [Colour, Group] => [c, gs[i]!]).filter(([c, g]) => tied(items, c, g));
    if (cs.length === gs.length && cs.length > 1) return touching(items, cs, gs);
    if (gs.length === 1 && cs.length >= 2 && onBoth(items, cs.slice(-2)))
      return cs.slice(-2).map((c): [Colour, Group] => [c, gs[0]!]);
    if (gs.length === 1 && cs.length === 2 && likewise(items, cs, gs[0]!))
      return cs.map((c): [Colour, Group] => [c, gs[0]!]);
    if (gs.length > 1 && cs.length > gs.length) return nearest(items, cs, gs);
    const one =
      gs.length === 1 && cs.length > 1
        ? cs.filter((c) => tied(items, c, gs[0]!) && !(c.at > gs[0]!.to && likened(items, c)))
        : [];
    if (one.length === 1) return [[one[0]!, gs[0]!]];
    if (
      cs.length === 1 &&
      gs.length === 2 &&
      cs[0]!.to < gs[0]!.from &&
      !afresh(items, cs[0]!, gs[0]!, gs[1]!)
    )
      return gs.map((g): [Colour, Group] => [cs[0]!, g]).filter(([c, g]) => g !== gs[0] || tied(items, c, g));
    return [];
  });
}

/** "…, the same as the orange cannula": another thing that has its colour too. */
const likened = (items: readonly Item[], c: Colour): boolean =>
  /\b(?:same (?:colour |color )?as|like|unlike|as (?:with|for|on))(?: (?:the|an?|our|your))?$/.test(
    textOf(items.slice(Math.max(0, c.at - 4), c.at)),
  );

/** "a 14 Fr with the orange connector, next to the green 16 Fr": each colour touches a size of its own. */
function touching(
  items: readonly Item[],
  colours: readonly Colour[],
  sizes: readonly Group[],
): [Colour, Group][] {
  const pairs = colours.flatMap((c): [Colour, Group][] => {
    const after = sizes.find((g) => g.from === c.to + 1);
    const before = sizes.find(
      (g) =>
        g.to < c.at &&
        /^(?:with|in|has|have|:|=|\() ?(?:an?|the|its|their)?$/.test(textOf(items.slice(g.to + 1, c.at))) &&
        HUBS.has(items[c.to + 1]?.word ?? ''),
    );
    const [one, ...more] = [after, before].filter((g) => g !== undefined);
    return one && more.length === 0 ? [[c, one]] : [];
  });
  return new Set(pairs.map(([, g]) => g)).size === colours.length ? pairs : [];
}

/** "If the orange hubs have run out, take the brown: brown is the 25 G and the grey is the 26 G": each size has its own colour just before it. */
function nearest(
  items: readonly Item[],
  colours: readonly Colour[],
  sizes: readonly Group[],
): [Colour, Group][] {
  const pairs = sizes.flatMap((g, i): [Colour, Group][] => {
    const c = colours.findLast((one) => one.to < g.from && (i === 0 || one.at > sizes[i - 1]!.to));
    return c && g.from - c.to <= 5 && tied(items, c, g) ? [[c, g]] : [];
  });
  const last = colours.at(-1)!;
  return pairs.length === sizes.length && last.to < sizes.at(-1)!.from ? pairs : [];
}

/** "An orange needle is 25 G, as is the orange cannula." */
const likewise = (items: readonly Item[], [a, b]: readonly Colour[], g: Group): boolean =>
  a!.family === b!.family &&
  a!.to < g.from &&
  b!.at > g.to &&
  AS_IS.test(textOf(items.slice(g.to + 1, b!.at))) &&
  tied(items, a!, g);

/** "an orange 25 G, or with a 30 G", "the pink 20 G blew, so he tried a 22 G": the second size is another thing. */
const afresh = (items: readonly Item[], c: Colour, a: Group, b: Group): boolean =>
  items.slice(a.to + 1, b.from).some(
    (item) =>
      // "the green 18 G and a 20 G"
      (c.to + 1 === a.from && /^(?:an?|the)$/.test(item.word)) ||
      /^(?:with|by|use|take|then|else|otherwise|instead)$/.test(item.word) ||
      !(ties(item) || ALSO.test(item.word)),
  );
const ALSO = /^(?:and|or|but|while|whereas|not|if|,|\(|\))$/;

function split(items: readonly Item[]): [number, number][] {
  const cuts: [number, number][] = [];
  let from = 0;
  for (let i = 0; i < items.length; i++) {
    if ((items[i]!.word !== ';' && items[i]!.word !== '.') || pointsBack(items, i)) continue;
    // "i.e. a 24 G"
    if (items[i - 1]?.word === 'i.e') continue;
    cuts.push([from, i]);
    from = i + 1;
  }
  cuts.push([from, items.length]);
  return cuts;
}

/** "A 16 G; that is the blue hub": the pronoun goes on about the size before. */
const pointsBack = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === ';' &&
  /^(?:and )?(?:that's|it's|(?:that|this|it|these|its)(?: one)?(?: is| comes| has| will| are| wears| hub| colour)\b)/.test(
    textOf(items.slice(i + 1, i + 4)),
  );

/** Either every colour comes before its size or every one after it. */
function alternate(colours: readonly Colour[], sizes: readonly Group[]): boolean {
  const before = colours.every((c, i) => c.to < sizes[i]!.from && (i === 0 || c.at > sizes[i - 1]!.to));
  const after = colours.every(
    (c, i) => c.at > sizes[i]!.to && (i + 1 >= sizes.length || c.to < sizes[i + 1]!.from),
  );
  return before || after;
}

/** "her lips were blue", "the arm with the 20 G was blue": the colour of a patient. */
const BODY =
  /^(?:arms?|hands?|lips?|skin|legs?|foot|feet|fingers?|toes?|face|nails?|sites?|wounds?|bruises?)$/;

/** The body is what is coloured, unless a hub stands before it: not "the cannula in her foot is yellow", "hand me". */
const ofPatient = (items: readonly Item[], from: number, to: number): boolean =>
  items
    .slice(from, to)
    .some(
      (item, i) =>
        BODY.test(item.word) &&
        !/^(?:me|him|her|us|over|them|up|you)$/.test(items[from + i + 1]?.word ?? '') &&
        !items
          .slice(0, from + i)
          .some((thing, k) => HUBS.has(thing.word) && /^(?:in|on|into|at)$/.test(items[k + 1]?.word ?? '')),
    );

/** Only tying words may stand between a colour and its size, and not many. */
function tied(items: readonly Item[], c: Colour, g: Group): boolean {
  const [from, to] = c.to < g.from ? [c.to, g.from] : [g.to, c.at];
  // "25 orange 18 pink": it belongs to the bare number before it.
  if (c.to < g.from && /^(?:[12]\d|3[0-4])$/.test(items[c.at - 1]?.word ?? '')) return false;
  if (ofPatient(items, Math.max(0, Math.min(c.at, g.from) - 5), c.at)) return false;
  const between = unbracketed(items.slice(from + 1, to).filter((_, i, all) => !dropped(all, i)));
  if (between.length > 14 || (c.to < g.from && afterComma(items, between, g))) return false;
  const said = textOf(between);
  if (PUT.test(said) || PART_OF.test(textOf(items.slice(Math.max(0, g.from - 3), g.from)))) return false;
  if (MISTAKEN.test(textOf(items.slice(Math.max(0, c.at - 3), c.at))) && /\bfor(?: (?:an?|the))?$/.test(said))
    return false;
  if (ANOTHER.test(said) || (c.to < g.from && /\bconnectors? to (?:an?|the)$/.test(said))) return false;
  if (g.to < c.at && (LOOSE_CAP.test(said) || OTHER_MAKE.test(textOf(items.slice(c.to + 1, c.to + 6)))))
    return false;
  const next = items[c.to + 1]?.word ?? '.';
  if (
    g.to < c.at &&
    ((ITS_COLOUR.test(said) && /^is its (?:colou?r|code)\b/.test(textOf(items.slice(c.to + 1, c.to + 5)))) ||
      ((OWN_HUB.test(said) || COMES.test(said)) && /^[.,;)!]$/.test(next)) ||
      ((POINTED.test(said) || TOLD_BY.test(said)) && HUBS.has(next)))
  )
    return true;
  if (between.every(ties)) return true;
  if (
    c.to < g.from &&
    (WANTED.test(said) || KNOWN.test(said) || PLACED.test(said) || apposed(items, between, g))
  )
    return true;
  if (c.to < g.from && HUBS.has(between[0]?.word ?? '') && EXPECTED.test(said) && between.every(plain))
    return true;
  if (c.to < g.from && /^(?:is|are|was|were) .* at(?: an?| the)?$/.test(said) && between.every(plain))
    return true;
  // A noun phrase may stand before the verb: "the brown hub in the tray is a 26 G".
  const verb = between.findIndex((item) => VERBS.has(item.word));
  const hub =
    c.to < g.from
      ? between.slice(0, 3).some((item) => HUBS.has(item.word))
      : HUBS.has(items[c.to + 1]?.word ?? '');
  return hub && verb > 0 && between.slice(verb + 1).every(ties) && between.slice(0, verb).every(plain);
}

/** "the clip of the 20 G is grey": no part that has the code. */
const PART_OF =
  /\b(?:clip|plunger|button|guard|bung|stopper|sheath|sleeve|barrel) of(?: (?:an?|the|this|that|our|your))?$/;

/** "took the blue one for the 20 G": one thing for another. */
const MISTAKEN = /\b(?:took|taken|mistook|mistaken?|mistaking)(?: (?:an?|the|that|his|her))?$/;

/** "The 21 G is on the tray and the pink hub …", "pink, and a 22 G", "a green and a 20 G": another thing. */
const ANOTHER =
  /^(?!.*\b(?:has|have|with|comes?)\b).*(?:is|are|was|,)\b.* and (?:an?|the)$|^, and an?$|^and (?:an?|the)$/;

/** "not blue but" before the colour that is meant. */
const dropped = (all: readonly Item[], i: number): boolean => {
  const not = all.findIndex((item) => item.word === 'not');
  const but = all.findIndex((item) => item.word === 'but');
  return (
    not >= 0 && but > not && but - not <= 3 && i >= not && i <= but && all[not + 1]?.colour !== undefined
  );
};

/** ", on my old truck," or ", which you will handle most," between commas. */
function unbracketed(between: readonly Item[]): readonly Item[] {
  const first = between.findIndex((item) => item.word === ',');
  const last = between.findLastIndex((item) => item.word === ',');
  const inside = between.slice(first + 1, last);
  const aside =
    first >= 0 &&
    last > first + 1 &&
    inside.length <= 6 &&
    inside.every((item) => plain(item) && !VERBS.has(item.word));
  const told =
    first >= 0 &&
    last > first + 2 &&
    inside.length <= 14 &&
    /^(?:which|that|the)$/.test(inside[0]!.word) &&
    inside.every((item) => item.kind !== 'size' && !item.colour && !/^[;.:(]$/.test(item.word)) &&
    VERBS.has(between[last + 1]?.word ?? '');
  return told ||
    (aside &&
      (/^(?:on|in|at|from|of|for|with|by)$/.test(inside[0]!.word) ||
        inside.some((item) => item.magnitude !== undefined)))
    ? [...between.slice(0, first), ...between.slice(last + 1)]
    : between;
}

/** "an orange cannula, a 22 G and tape", "a blue catheter and a 16 Ch", "the grey one, a 22 G is …": a comma and an article open another thing. */
function afterComma(items: readonly Item[], between: readonly Item[], g: Group): boolean {
  const [last, mark] = [between.at(-1)?.word ?? '', between.at(-2)?.word];
  if (/^(?:an?|the)$/.test(last) && mark === 'and' && between[0]!.deviceNoun) return true;
  if (!/^an?$/.test(last) || mark !== ',') return false;
  const next = items[g.to + 1]?.deviceNoun ? items[g.to + 2] : items[g.to + 1];
  return /^(?:and|or|is|are|was|were|has|will|lies|sits|goes)$/.test(next?.word ?? '');
}

/** "the grey cannula is the largest we stock, a 14 G": a name and, last, the size it has. A list goes on after it. */
function apposed(items: readonly Item[], between: readonly Item[], g: Group): boolean {
  const last = between.at(-1)?.word ?? '';
  if (!/^an?$/.test(last) || between.at(-2)?.word !== ',' || between.length > 12) return false;
  if (
    !HUBS.has(between[0]?.word ?? '') ||
    !between.slice(0, -2).every((item) => plain(item) && item.word !== ',')
  )
    return false;
  const [mark, next] = [items[g.to + 1]?.word ?? '.', items[g.to + 2]?.word ?? ''];
  return (
    mark === '.' ||
    mark === ';' ||
    (mark === ',' &&
      /^(?:and|which|so|because)$/.test(next) &&
      !/^(?:an?|the|one|two|\d+)$/.test(items[g.to + 3]?.word ?? ''))
  );
}

const ties = (item: Item) =>
  TIES.has(item.word) || item.deviceNoun === true || CODE_WORDS.has(item.word) || SHADES.has(item.word);
const VERBS = new Set([
  'identifies',
  'denotes',
  'indicates',
  'stands',
  'is',
  'are',
  'means',
  'marks',
  'wears',
  'has',
  'carries',
  'tells',
]);
const HUBS = new Set([
  'over-the-needle',
  'ring',
  'band',
  'connector',
  'hub',
  'hubs',
  'one',
  'cap',
  'funnel',
  'wing',
  'wings',
  'valve',
  'needle',
  'needles',
  'cannula',
  'catheter',
]);
const STOPS = new Set([
  'not',
  'than',
  'and',
  'or',
  'but',
  'if',
  'unless',
  'when',
  'never',
  'while',
  'beside',
  'without',
]);
const plain = (item: Item) =>
  !STOPS.has(item.word) && item.word !== ';' && item.word !== '.' && item.kind !== 'size' && !item.colour;
const CODE_WORDS = new Set([
  'international',
  '6009',
  '10555-5',
  '10555',
  'colour-code',
  'same',
  'needles',
  'cannulas',
  'universal',
]);

function reading(scene: Scene, c: Colour, g: Group): Reading {
  const device = deviceOf(scene, c, g);
  const focus = spanOf(scene, scene.items[c.at]!, scene.items[c.to]!);
  const claim: ColourClaim = {
    kind: 'colour',
    construction: 'colour',
    span: sentenceSpan(scene),
    focus,
    size: operand(scene, g),
    colour: c.family,
    same: true,
    ...(device ? { device } : intoVein(scene.items) ? { code: 'any' as const } : {}),
  };
  return { claim, at: Math.max(c.to, g.to), from: Math.min(c.at, g.from), to: Math.max(c.to, g.to) };
}
