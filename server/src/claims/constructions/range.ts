/** "an 18 Fr is inside that 14–16 window", "14 to 18 Fr, so a 20 is within range", "a 9 Fr is one of the sizes from 10 to 14 Fr". */
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import {
  type Group,
  groups,
  operand,
  type Scene,
  sameSystem,
  sentenceSpan,
  spanOf,
  together,
} from '../text/scene.ts';
import {
  AMONG,
  AMONG_AFTER,
  BOX_FIRST,
  CONCLUDES,
  COUNTED,
  COVERS,
  FOUND_IN,
  HELD,
  IN_IT,
  IN_THERE,
  INSIDE,
  KEEPS_TO,
  LET_IN,
  LETS_IN,
  OPENS_RANGE,
  OUTSIDE,
  PLACED,
  POINTS_BACK,
  SOUGHT,
  SUCH_AS,
  UNSETTLED,
  WINDOW,
  WITH,
  YOU_KEEP,
} from '../words/windows.ts';
import type { Construction, Reading } from './model.ts';

export const range: Construction = {
  id: 'range',
  needs: () => [
    { sizes: 1, words: WINDOW },
    { sizes: 1, words: POINTS_BACK },
    { sizes: 1, like: LETS_IN },
    { sizes: 1, words: ['inside', 'within'] },
    { sizes: 3, words: INSIDE },
    { sizes: 3, words: OUTSIDE },
    {
      sizes: 3,
      words: [
        'one',
        'which',
        'and',
        'counts',
        'qualifies',
        'included',
        'such',
        'example',
        'instance',
        'including',
        'among',
        'like',
        'e.g',
      ],
    },
  ],
  read(scene) {
    if (!bounded(scene.items) && !bounded(near(scene))) return [];
    const all = groups(scene.items).flatMap(apart);
    const single = all.find((g) => g.mentions.length === 1 && g.mentions[0]!.kind === 'size');
    if (!single || single.mentions[0]!.bound || together(scene.items, single)) return [];
    const place =
      placeOf(scene.items, single) ??
      windowOf(scene.items, single) ??
      direct(scene.items, single, all) ??
      ruledBy(scene.items, single) ??
      heldIn(scene, single) ??
      letIn(scene, single) ??
      insideAlone(scene, single) ??
      covered(scene.items, single, all);
    const found = place && boundsOf(scene, all, single, place);
    return found ? [reading(scene, single, found, place)] : [];
  },
};

/** A range, or the "between" of its ends: without one here or nearby there is nothing to lie in. */
const bounded = (items: readonly Item[]) =>
  items.some(
    (item, i) =>
      item.mention?.kind === 'range' ||
      item.word === 'between' ||
      (item.word === 'or' && items[i - 1]?.kind === 'size'),
  );

/** "12 to 18 Fr, 22 Fr being one of them": a range and a size behind it are two. */
const apart = (group: Group): Group[] =>
  group.mentions.length === 2 && group.mentions[0]!.kind === 'range' && group.mentions[1]!.kind === 'size'
    ? group.mentions.map((mention, i) => {
        const at = i === 0 ? group.from : group.to;
        return { from: at, to: at, mentions: [mention], sizes: mention.sizes };
      })
    : [group];

/** Where it is said that the size lies, and whether inside. */
interface Place {
  /** The words carry their own "not". */
  readonly own?: true;
  readonly at: number;
  readonly to: number;
  readonly inside: boolean;
  /** A rule is kept to: it may also name two sizes, "14 or 16 G". */
  readonly rule?: true;
}

/** "A 20 gauge in the elbow fulfils it", "with a 22 gauge in each arm you have fulfilled it". */
function ruledBy(items: readonly Item[], single: Group): Place | undefined {
  const opens = items.slice(0, single.from);
  if (opens.length > 6 || opens.some(({ word }, i) => SUPPOSED.test(word) && opens[i - 1]?.word !== 'put'))
    return undefined;
  if (WITH.test(joined(items, 0, single.from)) && YOU_KEEP.test(joined(items, single.to + 1, single.to + 16)))
    return { at: single.to, to: single.to, inside: true, rule: true };
  for (let at = single.to + 1; at <= single.to + 5 && at < items.length; at++) {
    if (!KEEPS_TO.test(joined(items, at, at + 8))) continue;
    const between = textOf(items.slice(single.to + 1, at).filter((item) => !item.deviceNoun));
    return IN_PLACE.test(between) || TAKEN.test(between)
      ? { at, to: at, inside: true, rule: true }
      : undefined;
  }
  return undefined;
}

/** "Permitted sizes: 14 G to 18 G. Hence a 20 G is permitted." */
function letIn(scene: Scene, single: Group): Place | undefined {
  const { items } = scene;
  const word = LET_IN.exec(joined(items, single.to + 1, single.to + 7))?.[1];
  if (word === undefined || items.some((item) => SUPPOSED.test(item.word))) return undefined;
  if (!LEADS.test(joined(items, 0, single.from))) return undefined;
  const rule = joined(near(scene));
  return LETS_IN.exec(rule)?.[1] === word && !/\b(?:in|for|when|unless|by)\b/.test(rule)
    ? { at: single.to + 1, to: single.to + 2, inside: true }
    : undefined;
}
const LEADS = /^(?:(?:so|hence|thus|therefore|and|accordingly|,|then) ?)*(?:an?|the|my|our|size)?(?: size)?$/;
const SUPPOSED = /^(?:if|when|where|for|in|unless|after|should|once)$/;
const IN_PLACE =
  /^(?:(?:also|therefore|thus|still|too|then|hence|mm|id) ?)*(?:(?:in|on) (?:(?:the|his|her|my|each|one|an?|this|that) )?[a-z]+)?$/;

/** "The wires in the hand set range from 0.9 to 1.5 mm. You'll find the 2.0 mm in it, then." */
function heldIn(scene: Scene, single: Group): Place | undefined {
  const { items } = scene;
  const opens = joined(items, 0, single.from);
  const after = joined(items, single.to + 1, single.to + 10);
  const boxed = BOX_FIRST.test(opens) && /^(?:[a-z-]+ )?(?:[.;!]|$)/.test(after);
  if (!boxed && !(IN_THERE.test(after) && SOUGHT.test(opens))) return undefined;
  const before = near(scene);
  const things = [
    ...items.slice(Math.max(0, single.from - 3), single.from),
    ...items.slice(single.to + 1, single.to + 3),
  ];
  // "The kit holds 4 to 6 Fr dilators. The 8 Fr sheath is in it": another thing.
  if (!things.every((item) => !item.deviceNoun || spokenIn(before, item.word))) return undefined;
  const held = groups(before).find((g) => endsOf(before, g));
  return held && HELD.test(joined(before, 0, held.from))
    ? { at: single.to, to: single.to, inside: true }
    : undefined;
}

const spokenIn = (items: readonly Item[], word: string): boolean => {
  const stem = word.replace(/^k-/, '').replace(/s$/, '');
  return items.some((item) => item.word.includes(stem));
};

/** "falls inside that", "in the middle of that". */
const refersBack = (items: readonly Item[], i: number) =>
  /^(?:that|this|those|it)$/.test(items[i]!.word) &&
  /^(?:inside|within|outside|middle|beyond)$/.test(
    items[i - (items[i - 1]?.word === 'of' ? 2 : 1)]?.word ?? '',
  ) &&
  (items[i + 1] === undefined || /^[.,;!)]$/.test(items[i + 1]!.word));

/** "The range is 21 to 25 gauge. 27 gauge is inside." */
function insideAlone(scene: Scene, { to }: Group): Place | undefined {
  return INSIDE_ALONE.test(joined(scene.items, to + 1, to + 7)) &&
    near(scene).some(({ word }) => WINDOW.has(word))
    ? { at: to + 1, to: to + 1, inside: true }
    : undefined;
}
const INSIDE_ALONE =
  /^(?:therefore |thus |also )?(?:is|lies|falls|stays) (?:therefore |thus |also |still |well )?(?:inside|within)(?: [.,;!)]|$)/;

/** "inside", "out of": not the "out" of "turns out to be". */
const lies = (items: readonly Item[], i: number): boolean =>
  INSIDE.has(items[i]!.word) ||
  (OUTSIDE.has(items[i]!.word) && !(items[i]!.word === 'out' && TURN.test(items[i - 1]?.word ?? '')));
const TURN = /^turn(?:s|ed|ing)?$/;

/** "in his arm is outside that range": where the size is, before the verb that says where it lies. */
function holder(items: readonly Item[], at: number, window: number): boolean {
  if (!/^in$/.test(items[at]!.word)) return false;
  const verb = items.findIndex((item, i) => i > at && i < window && SAYS.test(item.word));
  return verb > at + 1 && items.some((_, i) => i > verb && i < window && lies(items, i));
}
const SAYS = /^(?:is|are|was|lies|falls|sits|stays|comes|goes|would|will)$/;

/** A word of place, then a window: "within the range", "inside that". */
function windowOf(items: readonly Item[], single: Group): Place | undefined {
  const window = items.findIndex(
    (item, i) => i > single.to && (WINDOW.has(item.word) || refersBack(items, i)),
  );
  const at = items.findIndex(
    (_, i) => i > single.to && i < window && lies(items, i) && !holder(items, i, window),
  );
  // "You may see a 20 G offered for children, and that also sits between those limits."
  const resumed = items
    .slice(single.to, at)
    .some((item, i, near) => item.word === 'and' && /^(?:that|it)$/.test(near[i + 1]?.word ?? ''));
  const another =
    /^(?:another|other|different)$/.test(items[window - 1]?.word ?? '') || items[window + 1]?.word === 'than';
  if (another || window < 0 || at < 0 || window - single.to > (resumed ? 16 : 9)) return undefined;
  if (items.slice(single.to, at).some((item) => item.word === 'than')) return undefined;
  return { at, to: window, inside: !OUTSIDE.has(items[at]!.word) };
}

/** "belongs to that group", "is covered by that", "is among them", "sits between those limits". */
function placeOf(items: readonly Item[], single: Group): Place | undefined {
  for (let at = single.to + 1; at <= single.to + 5 && at < items.length; at++) {
    const phrase = joined(items, at, at + 8);
    const row = PLACED.find((one) => one.pattern.test(phrase));
    const match = row?.pattern.exec(phrase);
    if (!row || !match) continue;
    const between = items.slice(single.to + 1, at);
    if (!between.every((item) => item.deviceNoun || STEADY.test(item.word)) && !TAKEN.test(textOf(between)))
      return undefined;
    const to = at + match[0].split(' ').length - 1;
    // "the protocol of urology" is another one.
    return /^(?:of|for|at|from|about)$/.test(items[to + 1]?.word ?? '')
      ? undefined
      : { at, to, inside: row.inside };
  }
  return undefined;
}
/** "the 6-0 nylon I open". */
const TAKEN =
  /^(?:[a-z]+ )?(?:that )?(?:i|we|you) (?:open|use|take|have|hold|want|choose|chose|took|used|opened|put in|placed|stock)(?: here| today)?$/;
const STEADY = /^(?:also|therefore|thus|still|too|in|on|bed|tray|[0-9]|box|then|would|does|hence)$/;

/** "a 25 G is within 21–23 G", "a 9 Fr is one of the sizes from 10 to 14 Fr". */
function direct(items: readonly Item[], single: Group, all: readonly Group[]): Place | undefined {
  const bounds = all.find((g) => g.from > single.to && g.mentions[0]!.kind === 'range');
  if (!bounds || bounds.from - single.to > 9) return undefined;
  const between = textOf(items.slice(single.to + 1, bounds.from));
  const match = DIRECT.exec(between) ?? NOT_OUTSIDE.exec(between);
  if (!match) return undefined;
  const denies = between.includes('not');
  return { at: single.to + 1, to: bounds.to, inside: !match[1], ...(denies ? { own: true } : {}) };
}
const NOT_OUTSIDE =
  /^(?:is not|isn't|does not fall|doesn't fall|does not lie|doesn't lie) (?:outside|beyond)(?: the| our| a)?$/;

/** "The range is 16 to 20 Fr, which covers an 18 Fr." */
function covered(items: readonly Item[], single: Group, all: readonly Group[]): Place | undefined {
  const bounds = all.find((g) => g.to < single.from && endsOf(items, g));
  if (!bounds || single.from - bounds.to > 16) return undefined;
  const between = textOf(items.slice(bounds.to + 1, single.from));
  const among = AMONG_AFTER.test(between) && IN_IT.test(joined(items, single.to + 1, single.to + 6));
  const found = items[bounds.from - 1]?.word === 'between' && bounds.from <= 2 && FOUND_IN.test(between);
  return COVERS.test(between) ||
    AMONG.test(between) ||
    SUCH_AS.test(between) ||
    among ||
    found ||
    drawn(items, bounds, single, between)
    ? { at: single.from - 1, to: single.to, inside: true }
    : undefined;
}

/** "Anything from 20 to 28 Fr, so a 32 Fr would be one of them": said to follow from the range. */
const drawn = (items: readonly Item[], bounds: Group, single: Group, between: string): boolean =>
  CONCLUDES.test(between) &&
  OPENS_RANGE.test(joined(items, Math.max(0, bounds.from - 4), bounds.from)) &&
  COUNTED.test(joined(items, single.to + 1, single.to + 9));
const DIRECT =
  /^(?:is|lies|falls|sits|comes|stays|belongs) (?:also |therefore |still |well |just )?(?:within|inside|(outside|beyond)|(?:part of|in|within|inside|to|into) (?:our|the|an?|this|that) (?:[a-z]+ )?(?:range|bracket|band|window|span)(?: ?[,:(])?(?: of| from)?|one of (?:the |our )?(?:sizes?|numbers?|gauges?|needles|catheters|drains|tubes)(?: (?:from|between|in|of))?)(?: the| our| a)?$/;

/** The sentence before, or the one before the passage; over one that names no size, the one before that. */
function near(scene: Scene): readonly Item[] {
  const [last, further] = [scene.before.at(-1) ?? scene.context.at(-1), scene.before.at(-2)];
  const sized = last?.items.some((item) => item.kind === 'size');
  return (sized === false && further && further.close !== '?' ? further : last)?.items ?? [];
}

/** The only range of the sentence, else the only one of the sentence before or of the passage before. */
function boundsOf(scene: Scene, all: readonly Group[], single: Group, place: Place): Group | undefined {
  const nearby = [scene.items, near(scene)];
  for (const items of nearby) {
    const own = (items === scene.items ? all : groups(items)).filter((g) => endsOf(items, g));
    const two = place.rule && own.length === 0 && items !== scene.items ? eitherOf(items, single) : undefined;
    const found = own[0] ?? two;
    if (found === undefined) continue;
    const ends = two?.sizes ?? endsOf(items, found)!;
    if (own.length > 1 || found.sizes[0]!.system !== single.sizes[0]!.system) return undefined;
    if (found.from <= single.from && found.to >= single.to && items === scene.items) return undefined;
    const open = items.some((item) => UNSETTLED.test(item.word) && !(place.own && item.word === 'not'));
    return open ? undefined : { ...found, sizes: ends };
  }
  return undefined;
}

/** Both ends of a range, or of "between 14 and 18 G". */
function endsOf(items: readonly Item[], g: Group): Group['sizes'] | undefined {
  if (g.mentions.length === 1 && g.mentions[0]!.kind === 'range') return g.sizes;
  return g.mentions.length === 2 && g.sizes.length === 2 && items[g.from - 1]?.word === 'between'
    ? g.sizes
    : undefined;
}

/** "14 or 16 G", the only sizes of their sentence; a wider one than either may well serve. */
function eitherOf(items: readonly Item[], single: Group): Group | undefined {
  const [g, ...more] = groups(items);
  const two = g && more.length === 0 && g.sizes.length === 2 && g.mentions.length === 2;
  if (!two || items[g.from + 1]?.word !== 'or' || !sameSystem(g, single)) return undefined;
  const [a, b] = g.sizes.map(({ value }) => value) as [number, number];
  const { system, value } = single.sizes[0]!;
  const beyond = system === 'needle-gauge' ? value > Math.max(a, b) : value < Math.min(a, b);
  return beyond || (value >= Math.min(a, b) && value <= Math.max(a, b)) ? g : undefined;
}

function reading(scene: Scene, single: Group, found: Group, { at, to, inside, own }: Place): Reading {
  const end = (i: number) => operand(scene, { ...found, sizes: [found.sizes[i]!] });
  return {
    claim: {
      kind: 'range',
      construction: 'range',
      span: sentenceSpan(scene),
      focus: spanOf(scene, scene.items[single.from]!, scene.items[single.to]!),
      size: operand(scene, single),
      low: end(0),
      high: end(1),
      inside,
    },
    at,
    from: single.from,
    to,
    ...(own ? { own } : {}),
  };
}
