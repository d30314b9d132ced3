/** What a question asserts together with its reply in free words: "Is a 22 G wider than an 18 G? No.", "And 24 Fr? Eight." */

import type { Span } from '../../notes/model.ts';
import { compound } from '../compound.ts';
import { orderCue } from '../constructions/order.ts';
import type { Claim, OrderClaim, Stance } from '../model.ts';
import { sorts } from '../stance/to-sort.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { groups, operand } from '../text/scene.ts';
import { HEDGES, NEGATIONS } from '../words/changes.ts';
import { byName, hueOrder } from './by-name.ts';
import { coloured, converted, joined, kept, negated, threaded, worked } from './choice.ts';
import type { Quiz } from './collect.ts';
import {
  askedMagnitude,
  compare,
  type Desk,
  type KeyReading,
  limited,
  mark,
  onKey,
  readAs,
  sceneOf,
  singles,
  sizeKey,
  sizesOf,
  spanOf,
} from './desk.ts';
import { elliptic } from './ellipsis.ts';
import { fitting } from './fitting.ts';
import { chosenIn, filled } from './gap.ts';
import type { Keyed } from './key.ts';
import { type Pair, replySpan } from './pairs.ts';
import { AGREED_TO, NO, QUALIFIED, WITH, YES } from './yes.ts';

const LONGEST = 16;

export function readReply(pair: Pair, desk: Desk): KeyReading[] {
  const { question, reply } = pair;
  if (reply.items.length === 0 || reply.items.length > LONGEST || question.items.length > 60) return [];
  const named = byName(pair, desk);
  if (named && named.length > 0) return named.map((claim) => ({ claim, stance: 'asserted' }));
  // "Who said it?" asks for a person.
  if (/^(?:who|whose)$/.test(question.items[0]?.word ?? '')) return [];
  if (reply.items.some((item) => HEDGES.has(item.word) || item.word === '?')) return [];
  if (unitMended(pair)) return [];
  const goes = fitting(pair, desk);
  if (goes) return asserted([goes], pair);
  // "Can someone explain why I had the yellow one?" "My neighbour had a fourteen.": no size was asked for.
  if (question.items.some(({ word }) => word === 'why')) return polar(pair, desk) ?? [];
  return (
    gap(pair, desk) ??
    either(pair, desk) ??
    eitherWord(pair, desk) ??
    sequence(pair) ??
    elliptic(pair, desk) ??
    polar(pair, desk) ??
    told(pair, desk) ??
    []
  );
}

/** "The tube 8 is 8 French?" "8 mm, and inside.": the reply puts the unit right, and sets nothing equal. */
function unitMended({ question, reply }: Pair): boolean {
  const asked = question.items.findLast((item) => item.kind === 'size')?.mention?.sizes[0];
  const said = reply.items[0]?.mention?.sizes[0];
  return (
    asked !== undefined &&
    said !== undefined &&
    asked.value === said.value &&
    asked.system !== said.system &&
    !question.items.some((item) =>
      /^(?:how|what|which|in|mm|millimetres?|and|=|wide|thick|across)$/.test(item.word),
    ) &&
    question.items.some((item) => item.word === 'is')
  );
}

const asserted = (claims: readonly Claim[], pair: Pair, stance: Stance = 'asserted'): KeyReading[] =>
  worked(claims)
    .slice(0, 1)
    .map((claim) => ({
      claim: onKey(claim, replySpan(pair), spanOf(pair.question)),
      stance,
    }));

/** The question with its gap filled is a statement. */
function gap(pair: Pair, desk: Desk): KeyReading[] | undefined {
  // "Put in order, thick to thin: 4-0, 2-0, 0. ____": the line is for a sequence.
  if (sorts(pair.question.items)) return undefined;
  const items =
    filled(pair.question, pair.reply) ?? (pair.marked ? chosenIn(pair.question, pair.reply) : undefined);
  const scene = sceneOf(desk, pair.question);
  if (!items) return undefined;
  if (!scene || (!pair.marked && pair.reply.items.length > 5)) return [];
  // Whether a writing exists is read from one passage, never from two put together.
  const told = readAs(scene, items).filter((claim) => claim.kind !== 'existence');
  // "1 Fr is half a millimetre": the rule, not one size and its width.
  return asserted([...told.filter(({ kind }) => kind === 'formula'), ...told], pair);
}

/** "Is a 16 G wider or narrower than a 20 G? Wider.", "is (wider / narrower) than": the word chosen takes the place of both. */
function either(pair: Pair, desk: Desk): KeyReading[] | undefined {
  const { items } = pair.question;
  const words = measuredWords(items);
  const first = words.findIndex(
    (word, i) =>
      words[i + 1] !== undefined &&
      words[i + 1]!.sign !== word.sign &&
      words[i + 1]!.at - word.to <= 3 &&
      items.slice(word.to + 1, words[i + 1]!.at).some((item) => item.word === 'or' || item.word === '/'),
  );
  const [a, b] = [words[first], words[first + 1]];
  if (first < 0 || !a || !b) return undefined;
  const said = measuredWords(pair.reply.items).filter((word) => word.degree === a.degree);
  const scene = sceneOf(desk, pair.question);
  const opening = pair.reply.items.find((item) => item.kind === 'word');
  if (said.length !== 1 || !scene || NEGATIONS.has(opening?.word ?? '')) return [];
  const left = stripped(items.slice(0, a.at));
  const right = items.slice(b.to + 1).filter((item) => item.word !== ')' && item.word !== '?');
  const chosen = said[0]!.sign === a.sign ? items.slice(a.at, a.to + 1) : items.slice(b.at, b.to + 1);
  return asserted(readAs(scene, [...left, ...chosen, ...right]), pair);
}

/** "Third edge of reverse cutting: inner or outer curve? Inner.", "Is silk braided or a monofilament? Braided." */
function eitherWord(pair: Pair, desk: Desk): KeyReading[] | undefined {
  const items = withoutMark(pair.question.items);
  const said = pair.reply.items.filter((item) => item.kind !== 'punctuation' && !ARTICLE.test(item.word));
  const or = items.findIndex((item) => item.word === 'or');
  const [word, ...more] = said;
  if (or < 1 || !word || more.length > 2 || items[or - 1]!.kind === 'size' || items[or - 1]!.magnitude)
    return undefined;
  let right = or + 1;
  while (ARTICLE.test(items[right]?.word ?? '')) right++;
  if (items[right]?.kind !== 'word') return undefined;
  const [a, b] = [items[or - 1]!.word, items[right]!.word];
  // "True or false? …": the verdict is no part of the statement.
  if ((word.word !== a && word.word !== b) || VERDICT.test(word.word)) return undefined;
  const chosen =
    word.word === a
      ? [...items.slice(0, or), ...items.slice(right + 1)]
      : [...items.slice(0, leftOf(items, or)), ...items.slice(right)];
  const scene = sceneOf(desk, pair.question);
  if (!scene || !pair.marked || (b === 'not' && word.word === b)) return undefined;
  const rest = chosen.filter((item) => item.word !== 'not');
  const first = rest.findIndex((item) => item.kind !== 'punctuation');
  const body = POLAR.test(rest[first]?.word ?? '') ? rest.slice(first + 1).map(inflected) : rest;
  const stated = POLAR.test(rest[first]?.word ?? '') ? turned(items, or, rest, first) : linked(body);
  const told = [...readAs(scene, body), ...readAs(scene, rest), ...readAs(scene, stated)];
  const claims = told.filter(({ kind }) => AGREED_TO.has(kind) && kind !== 'comparison');
  return claims.length > 0 ? asserted(claims, pair) : undefined;
}
const VERDICT = /^(?:true|false|right|wrong|correct|incorrect|fact|fiction|myth)$/;
const ARTICLE = /^(?:an?|the|on|at|along|in|it|is|its)$/;
/** "Is silk | a monofilament": the verb behind its subject. */
const turned = (items: readonly Item[], or: number, rest: readonly Item[], first: number): Item[] => {
  const at = leftOf(items, or);
  return [...rest.slice(first + 1, at), rest[first]!, ...rest.slice(at)];
};
/** "silk: braided": the subject, its verb left out. */
const linked = (items: readonly Item[]): Item[] =>
  items.map((item) => (item.word === ':' || item.word === ',' ? mark('is') : item));
/** Where the first of two alternatives begins, its article with it. */
const leftOf = (items: readonly Item[], or: number): number => {
  let at = or - 1;
  while (at > 0 && ARTICLE.test(items[at - 1]!.word) && items[at - 1]!.word !== 'is') at--;
  return at;
};

const stripped = (items: readonly Item[]) => items.filter((item) => item.word !== '(');

/** "Sort by bore, smallest first: 18 G, 14 G, 22 G. Answer: 22 G, 18 G, 14 G." */
function sequence(pair: Pair): KeyReading[] | undefined {
  const cue = orderCue(pair.question.items);
  if (!cue) return undefined;
  const items = sizesOf(pair.reply);
  const words = pair.reply.items.filter(
    (item) =>
      item.kind === 'word' &&
      !/^(?:then|and|to|it|they|goes|go|runs?|is|would|be|it's|that's|you|get|so|well|easy)$/.test(item.word),
  );
  const focus = replySpan(pair);
  const hues = pair.marked ? hueOrder(pair, { axis: cue.axis, runs: cue.runs }, focus) : undefined;
  if (hues) return [{ claim: hues, stance: 'asserted' }];
  if (!pair.marked || items.length < 2 || words.length > 0) return [];
  const claim: OrderClaim = {
    kind: 'order',
    construction: 'answer-key',
    span: spanOf(pair.question),
    focus,
    items,
    axis: cue.axis,
    runs: cue.runs,
  };
  return [{ claim, stance: 'asserted' }];
}

const POLAR = /^(?:is|are|does|do|was|were|would|will|can|could)$/;
const OPEN =
  /\b(?:or|if|when|unless|not|always|ever|every|all|any|only|just|much|exactly|really|enough|too|safe|better|still|most|usually)\b|n't\b/;
/** "Does silk dissolve?": whether it is absorbed. */
const FATED = /^(?:absorb|dissolve|resorb|disappear)s?$/;
const DOES = /^(?:does|do)$/;
/** "Does silk absorb" asks whether silk absorbs. */
const inflected = (item: Item): Item =>
  /^(?:absorb|dissolve|resorb|flow|run|measure|melt|hydrolyse|disappear|need|carry|deliver)$/.test(item.word)
    ? { ...item, word: item.word === 'carry' ? 'carries' : `${item.word}s` }
    : item;
/** "Do you remember whether …": asked of somebody. */
const PERSONAL = /^(?:you|we|they|i|he|she|people|students?|anyone|anybody|there)$/;

/** "Is a 22 G wider than an 18 G? No." */
function polar(pair: Pair, desk: Desk): KeyReading[] | undefined {
  const items = pair.question.items.filter((item) => item.kind !== 'punctuation' || item.word !== '?');
  const first = items.findIndex((item) => item.kind !== 'punctuation');
  const scene = sceneOf(desk, pair.question);
  const said = textOf(pair.reply.items);
  const yes = YES.test(said);
  if (!yes && !NO.test(said)) return undefined;
  if (yes && QUALIFIED.test(said)) return [];
  if (!POLAR.test(items[first]?.word ?? '')) return yes ? agreed(pair, desk) : undefined;
  if (!scene || OPEN.test(textOf(items))) return [];
  if (PERSONAL.test(items[first + 1]?.word ?? '')) return [];
  const body = items.slice(first + 1).map((item) => (DOES.test(items[first]!.word) ? inflected(item) : item));
  const fated = FATED.test(body.at(-1)?.word ?? '')
    ? [...body.slice(0, -1), mark('is'), mark('absorbed')]
    : [];
  const claims = readAs(scene, body).concat(
    readAs(scene, items),
    fated.length > 2 ? readAs(scene, fated) : [],
  );
  const claim = claims.find(
    (one) => AGREED_TO.has(one.kind) || (yes && one.kind === 'fit' && !WITH.test(said)),
  );
  if (!claim) return [];
  // "Is an 18 G 1.2 mm? No, 1.27." refines and does not deny.
  if (claim.kind === 'equivalence' && !yes && /\d/.test(said)) return [];
  if (!yes && (compound(items, claim.kind) || ofOneNumber(claim))) return [];
  return asserted([claim], pair, yes ? 'asserted' : 'denied');
}

/** "Is a 22 ga wire the same as a 22 G needle?" "No.": they share a number, and differ in what it counts. */
const ofOneNumber = (claim: Claim): boolean =>
  claim.kind === 'comparison' &&
  claim.relation === 'same' &&
  claim.left.sizes[0]?.value === claim.right.sizes[0]?.value &&
  claim.left.sizes[0]?.system !== 'usp';

/** "So the 16 Fr is the wider one, isn't it?" "Yes.": a statement put as a question, and agreed to. */
function agreed(pair: Pair, desk: Desk): KeyReading[] | undefined {
  const words = pair.question.items.filter((item) => item.word !== '?');
  const tag = words.findIndex((item, i) => item.word === ',' && TAG.test(textOf(words.slice(i + 1))));
  const start = words.findIndex((item) => item.kind !== 'punctuation' && !LINKING.test(item.word));
  const items = words.slice(Math.max(0, start), tag < 0 ? words.length : tag);
  const scene = sceneOf(desk, pair.question);
  if (BUT.test(textOf(pair.reply.items))) return [];
  if (ASKING.test(textOf(items)) || OPEN.test(textOf(items))) return undefined;
  const claim = scene && readAs(scene, aboutThat(items) ?? items).find((one) => AGREED_TO.has(one.kind));
  return claim ? asserted([claim], pair) : undefined;
}

const thing = ({ mention }: Item): Item[] =>
  mention?.sizes[0]?.system === 'tube-id' ? [mark('tracheal'), mark('tube')] : [];

/** "The tube has a 7.0 printed on it, is that the outside?": what is asked of that number, as a statement. */
function aboutThat(items: readonly Item[]): Item[] | undefined {
  const at = items.findIndex(
    (item, i) =>
      item.word === ',' &&
      /^is$/.test(items[i + 1]?.word ?? '') &&
      /^(?:that|it|this)$/.test(items[i + 2]?.word ?? ''),
  );
  const sizes = items.slice(0, Math.max(0, at)).filter((item) => item.kind === 'size');
  return sizes.length === 1 && items.length - at < 10
    ? [mark('that'), sizes[0]!, ...thing(sizes[0]!), mark('is'), ...items.slice(at + 3)]
    : undefined;
}
const TAG =
  /^(?:(?:is|are|does|do|was|would|will)n't (?:it|they|that)|right|yes|correct|no|then|i take it|is that right)$/;
const LINKING = /^(?:so|and|but|then|now|well|ok|okay|right|hang|on|wait|hence)$/;
/** "Exactly the other way", "right idea, wrong sum": agreed to in part. */
const BUT =
  /\b(?:other|others|wrong|but|not|no|idea|except|reverse|opposite|almost|nearly|question|unless|if|only|though|until|track|way)\b/;
const ASKING = /\b(?:which|what|who|why|how|when|where)\b/;

/** A choice named, a measure, a colour, a fate. */
function told(pair: Pair, desk: Desk): KeyReading[] | undefined {
  if (mends(pair)) return [];
  const said = pair.reply.items.filter((item) => item.word !== '.');
  if (said.some((item) => NEGATIONS.has(item.word)) || negated(pair.question)) return undefined;
  const chosen = picked(pair);
  if (chosen) return chosen;
  if (oneOfTwo(pair)) return [];
  if (!pair.marked && said.length > 6) return [];
  const quiz: Quiz = { question: pair.question, number: 0, options: [], end: 0, last: 0 };
  const key = { quiz, chosen: pair.reply };
  const focus = replySpan(pair);
  return (
    converted(key, focus) ??
    anyCode(coloured(key, focus)) ??
    materialNamed(pair, key, focus) ??
    happens(pair, desk) ??
    sentence(pair, desk)
  );
}

/** "16 French or 16 gauge?" "The French.": one of the two, and no measure of the other. */
function oneOfTwo({ question, reply }: Pair): boolean {
  const offered = sizesOf(question).map(sizeKey);
  if (offered.length !== 2 || question.items.some(({ colour }) => colour)) return false;
  return sizesOf(reply).some((size) => offered.includes(sizeKey(size)));
}

/** "Which suture needs no removal? Nylon.", "Name a monofilament. Silk.": a material and little else. */
function materialNamed(
  pair: Pair,
  key: Pick<Keyed, 'quiz' | 'chosen'>,
  focus: Span,
): KeyReading[] | undefined {
  const text = textOf(pair.question.items);
  const words = pair.reply.items.filter((item) => item.kind === 'word');
  return /\b(?:which|what|name|give|state)\b/.test(text) && words.length <= 3 && !EXCHANGES.test(text)
    ? kept(key, focus)
    : undefined;
}
const EXCHANGES = /\b(?:for|than|instead|replaces?|swap|rather|before|after|like|as|from|with|did|except)\b/;

/** "What happens to the bore as the gauge number climbs? It grows.": the clause and what is said to happen. */
function happens(pair: Pair, desk: Desk): KeyReading[] | undefined {
  const { items } = pair.question;
  const match =
    /\bwhat (?:happens|does happen|becomes) (?:to|of) (?:the )?((?:\S+ ){1,3}?)(if|when|as|once|with)\b/.exec(
      textOf(items),
    );
  const from = match ? items.findIndex((item) => item.word === match[2] && item.kind === 'word') : -1;
  const scene = sceneOf(desk, pair.question);
  if (!match || from < 0 || !scene) return undefined;
  const noun = items
    .slice(0, from)
    .findLastIndex((item) => item.axisNoun !== undefined || item.magnitude !== undefined);
  const said = pair.reply.items.filter((item) => !/^(?:it|they|that|the|\.)$/.test(item.word));
  if (noun < 0 || said.length === 0 || said.length > 3) return [];
  const clause = items.slice(from).filter((item) => item.word !== '?');
  return asserted(readAs(scene, [...clause, mark(','), mark('the'), items[noun]!, ...said]), pair);
}

/** A whole statement with a size of its own after another statement mends it: the two are not one sentence. */
function mends({ question, reply }: Pair): boolean {
  if (suggests(question.items) && (reply.items.some((item) => item.colour) || /\d/.test(textOf(reply.items))))
    return true;
  const asks = question.items.some((item) => item.word === '?' || item.word === ':');
  const { text } = question.read.passage;
  const closed = /[.!]["”’*_)]*$/.test(text.slice(question.span.start, question.span.end).trimEnd());
  return !asks && closed && groups(reply.items).length > 1;
}

/** "Then a pink cannula is an 18?": a size and its colour, put forward; a reply with another of either mends it. */
const suggests = (items: readonly Item[]): boolean =>
  items.at(-1)?.word === '?' &&
  items.some((item) => item.colour) &&
  groups(items).length === 1 &&
  !WHICH.test(textOf(items));
const WHICH = /\b(?:which|what|how|where|who|name|or)\b/;

/** In talk the thing in the hand may be any: without a device named the colour must be wrong in every code. */
function anyCode(found: KeyReading[] | undefined): KeyReading[] | undefined {
  return found?.map(({ claim, stance }) => {
    if (claim.kind !== 'colour' || claim.device) return { claim, stance };
    const { device: _, ...size } = claim.size;
    return { claim: { ...claim, size }, stance };
  });
}

const TELLING: ReadonlySet<Claim['kind']> = new Set([
  'colour',
  'equivalence',
  'property',
  'direction',
  'formula',
]);

function sentence(pair: Pair, desk: Desk): KeyReading[] {
  const scene = sceneOf(desk, pair.question);
  if (!scene || !(pair.marked || namesOnly(pair))) return [];
  const items = joined(pair.question, pair.reply).filter((item) => item.word !== '.');
  const asked = readAs(scene, withoutMark(pair.question.items)).map(placeOf);
  const told = readAs(scene, items).filter((claim) => !asked.includes(placeOf(claim)));
  return asserted(
    told.filter((claim) => TELLING.has(claim.kind) && !threaded(pair.question, claim)),
    pair,
  );
}

/** "What does the F stand for? Flow.": a word for an abbreviation. */
const namesOnly = ({ question, reply }: Pair): boolean =>
  /\bstand for\b/.test(textOf(question.items)) && reply.items.length <= 3;

const withoutMark = (items: readonly Item[]) => items.filter((item) => item.word !== '?');

/** What the question says by itself the reply does not add. */
const placeOf = ({ kind, focus }: Claim): string => `${kind} ${focus.start}`;

const FIRST = /\b(?:first|former)\b/;
const SECOND = /\b(?:second|latter)\b/;

/** "Which is thinner, a 22 G or a 25 G? The second.": the choice against the others that the question names. */
function picked(pair: Pair): KeyReading[] | undefined {
  const { question } = pair;
  const word = askedMagnitude(question.items);
  const all = groups(question.items)
    .flatMap(singles)
    .filter((group) => group.sizes.length === 1);
  // "the wider 16 G or the 20 G": said of one of the choices already.
  if (word && word.degree === 'comparative' && question.items[word.to + 1]?.kind === 'size') return [];
  if (!word || all.length < 2 || /\bthan\b/.test(textOf(question.items))) return undefined;
  if (all.some((group) => group.sizes[0]!.system !== all[0]!.sizes[0]!.system)) return [];
  const asks = /\b(?:which|what)\b/.test(textOf(question.items)) || word.at <= 2;
  const at = chosenOf(pair, all);
  if (at < 0 || !asks || limited(question.items)) return [];
  const left = operand(question.read, all[at]!);
  return all
    .filter((group) => group.sizes[0]!.value !== all[at]!.sizes[0]!.value)
    .map((group) => ({
      claim: compare(left, operand(question.read, group), word, replySpan(pair), spanOf(question)),
      stance: 'asserted' as const,
    }));
}

/** Place of the choice that a short answer names, by size or as first or second. */
function chosenOf({ reply }: Pair, all: ReturnType<typeof singles>): number {
  const named = groups(reply.items).flatMap(singles);
  const first = named[0]?.sizes[0];
  if (first && named.length === 1 && named[0]!.sizes.length === 1)
    return all.findIndex(({ sizes }) => sizes[0]!.system === first.system && sizes[0]!.value === first.value);
  const text = textOf(reply.items);
  if (named.length > 0) return -1;
  if (all.length === 2 && FIRST.test(text)) return 0;
  if (all.length === 2 && SECOND.test(text)) return 1;
  return bareChoice(text, all);
}

/** "The 14." where the question offers "the 14 or the 18 G". */
function bareChoice(text: string, all: ReturnType<typeof singles>): number {
  const number = /^(?:the |a |an )?(\d{1,2}(?:\.\d)?)(?: \.)?$/.exec(text);
  return number ? all.findIndex(({ sizes }) => sizes[0]!.value === Number(number[1])) : -1;
}
