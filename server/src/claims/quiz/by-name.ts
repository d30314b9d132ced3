/**
 * Sizes that a reply names by what they were told of: "the radial is a 20 G, the femoral an 18 G. Which is fatter?" "The radial.",
 * "Order: green 18, grey 16, blue 22." "blue, green, grey".
 */
import type { ComparisonClaim, Operand, OrderClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { type Group, groups, operand } from '../text/scene.ts';
import type { Read } from '../text/scenes.ts';
import { askedMagnitude, compare, type Desk, limited, singles, sizeKey, spanOf } from './desk.ts';
import { type Pair, replySpan } from './pairs.ts';

const LONGEST_REPLY = 7;
const LONGEST_QUESTION = 12;
/** How many sentences back things are named. */
const BACK = 3;
/** Words that name nothing by themselves. */
const SMALL =
  /^(?:the|an?|one|ones|is|it|it's|its|his|her|their|that|this|and|or|of|in|on|at|with|has|have|holds?|gets?|was|were|are|,|:|;|\(|\)|"|“|”|\.|-|–|—|=|answer|needle|needles|cannula|cannulas|catheter|catheters|tube|tubes|thread|threads|suture|sutures|drain|drains|size|gauge|french|g|fr|ch|mm|wider|narrower|thicker|thinner|finer|fatter|larger|smaller)$/;

/** "the smaller of the worries". */
const OF_ELSE =
  /\bof (?:the|our|my|your|his|her|their) (?!two|three|four|pair|lot|drains?|tubes?|lines?|cannula|needle|catheter|thread|suture)/;

interface Named {
  readonly size: Operand;
  readonly names: ReadonlySet<string>;
}

/** "Which is the fatter cannula?" "The radial one.": the one of that name against the others. */
export function byName(pair: Pair, desk: Desk): ComparisonClaim[] | undefined {
  const { question, reply } = pair;
  const word = askedMagnitude(question.items);
  if (!word || question.items.length > LONGEST_QUESTION || reply.items.length > LONGEST_REPLY)
    return undefined;
  if ([question, reply].some(({ items }) => groups(items).length > 0) || limited(question.items))
    return undefined;
  if (OF_ELSE.test(textOf(question.items))) return undefined;
  if (
    reply.items.some(({ word: said }) =>
      /^(?:not|no|never|both|neither|first|second|former|latter|last)$/.test(said),
    )
  )
    return undefined;
  const things = namedBefore(pair, desk);
  const [chosen, ...more] = calledBy(reply.items, things);
  if (!chosen || more.length > 0) return undefined;
  return things
    .filter((thing) => thing !== chosen && sizeKey(thing.size) !== sizeKey(chosen.size))
    .map((other) => compare(chosen.size, other.size, word, replySpan(pair), spanOf(question)));
}

/** Those of the things that one word of a reply names, and that word no other. */
const calledBy = (items: readonly Item[], things: readonly Named[]): Named[] => [
  ...new Set(
    items.flatMap(({ word }) => {
      const hits = SMALL.test(word) ? [] : things.filter(({ names }) => names.has(word));
      return hits.length === 1 ? hits : [];
    }),
  ),
];

/** The sizes of the sentences before a question, each behind its own name; none where one has no name in front. */
function namedBefore({ question }: Pair, { reads }: Desk): Named[] {
  const { read } = question;
  const at = read.sentences.findIndex(
    ({ start, end }) => start <= question.span.start && question.span.start < end,
  );
  const near = read.sentences.slice(Math.max(0, at - BACK), Math.max(0, at));
  const above = near.length > 0 ? undefined : reads[read.passage.index - 1];
  const from = above && !above.passage.cell && above.passage.kind !== 'heading' ? above : read;
  const told = from === read ? near : from.sentences.slice(-BACK);
  const things = told.flatMap((sentence) => namesIn(from, sentence.items));
  const systems = new Set(things.map(({ size }) => size.sizes[0]!.system));
  return systems.size === 1 && things.length >= 2 && things.every(({ names }) => names.size > 0)
    ? things
    : [];
}

/** Each size of a sentence with the words between the size before and it. */
function namesIn({ passage }: Read, items: readonly Item[]): Named[] {
  let from = 0;
  return groups(items).flatMap((group: Group) => {
    if (group.mentions.length > 1)
      return singles(group).map((one) => ({ size: operand({ passage }, one), names: new Set<string>() }));
    const words = items.slice(from, group.from).filter(({ word }) => !SMALL.test(word));
    from = group.to + 1;
    return [{ size: operand({ passage }, group), names: new Set(words.map(({ word }) => word)) }];
  });
}

const FEWEST = 3;

/** A row of colours, each the size it stands beside in the question. */
export function hueOrder(
  { question, reply }: Pair,
  cue: Pick<OrderClaim, 'axis' | 'runs'>,
  focus: OrderClaim['focus'],
): OrderClaim | undefined {
  const said = reply.items.filter(({ kind }) => kind !== 'punctuation');
  const colours = said.flatMap(({ colour }) => colour ?? []);
  if (colours.length < FEWEST || said.length > colours.length + 2 || groups(reply.items).length > 0)
    return undefined;
  const beside = huesIn(question.read, question.items);
  const items = colours.map((colour) => beside.get(colour));
  if (new Set(colours).size < colours.length || items.some((item) => item === undefined)) return undefined;
  return {
    kind: 'order',
    construction: 'answer-key',
    span: spanOf(question),
    focus,
    items: items as Operand[],
    ...cue,
  };
}

/** "green 18, yellow 24": each colour with the size right behind it, or right in front of it. */
function huesIn(read: Read, items: readonly Item[]): ReadonlyMap<string, Operand> {
  const found = new Map<string, Operand>();
  const all = groups(items).flatMap(singles);
  const at = ({ mentions: [mention] }: Group) => items.findIndex((item) => item.mention === mention);
  const places = all.map(at);
  const before = places.every((place) => items[place - 1]?.colour);
  const behind = places.every((place) => items[place + 1]?.colour);
  if (before === behind) return found;
  all.forEach((group, i) => {
    const colour = items[places[i]! + (before ? -1 : 1)]!.colour!;
    found.set(colour, operand(read, group));
  });
  return found.size === all.length ? found : new Map();
}
