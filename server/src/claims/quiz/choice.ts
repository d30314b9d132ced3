/** What a key asserts by choosing one option of a question. */
import type { Span } from '../../notes/model.ts';
import { orderCue } from '../constructions/order.ts';
import type { Claim, EquivalenceClaim, Operand, OrderClaim, Stance } from '../model.ts';
import { sorts } from '../stance/to-sort.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import type { Measured } from '../text/magnitudes.ts';
import { materialsIn } from '../text/materials.ts';
import { groups, operand } from '../text/scene.ts';
import { codeOf } from '../words/codes.ts';
import { fateIn } from '../words/fates.ts';
import { PROPERTY_WORDS } from '../words/properties.ts';
import { described } from './described.ts';
import {
  askedMagnitude,
  bareOperand,
  compare,
  type Desk,
  type KeyReading,
  limited,
  mark,
  materialIs,
  onKey,
  readAs,
  sceneOf,
  sizeIs,
  spanOf,
} from './desk.ts';
import type { Keyed } from './key.ts';
import { type Piece, piece, written } from './piece.ts';
import { placed } from './placed.ts';

export function readChoice(key: Keyed, desk: Desk): KeyReading[] {
  const focus = spanOf(key.at);
  return (
    called(key, focus, desk) ??
    sequenced(key, focus) ??
    extreme(key, focus) ??
    converted(key, focus) ??
    coloured(key, focus) ??
    kept(key, focus) ??
    between(key, focus) ??
    asArray(described(key, focus, spanOf(key.quiz.question), negated(key.quiz.question))) ??
    statement(key, focus, desk)
  );
}

/** "10 Fr is wider than 12 Fr. A. True  B. False": the key says which of the two the statement is. */
function called(
  { quiz: { question, options }, chosen }: Keyed,
  focus: Span,
  desk: Desk,
): KeyReading[] | undefined {
  const said = verdictOf(chosen);
  if (!said || options.length !== 2 || !options.every(verdictOf)) return undefined;
  const scene = sceneOf(desk, chosen) ?? sceneOf(desk, question);
  // Two readers may read one statement.
  const claims = scene ? readAs(scene, question.items).slice(0, 1) : [];
  return claims.map((claim) => ({ claim: onKey(claim, focus, spanOf(question)), stance: said }));
}

/** A choice that is nothing but "true" or "false". */
function verdictOf(option: Piece): 'asserted' | 'denied' | undefined {
  const words = textOf(option.items.filter(({ kind }) => kind !== 'punctuation'));
  if (/^(?:it is |that is )?(?:true|right|correct|yes|agree|richtig)$/.test(words)) return 'asserted';
  return /^(?:it is |that is )?(?:false|wrong|incorrect|untrue|no|disagree|falsch)$/.test(words)
    ? 'denied'
    : undefined;
}

const asArray = <T>(one: T | undefined): T[] | undefined => (one === undefined ? undefined : [one]);

/** The one size of a choice, or the number that the question makes one. */
export function choiceOperand(piece: Piece, question?: Piece): Operand | undefined {
  const all = groups(piece.items);
  if (all.length === 0 && question) return bareOperand(piece, question);
  return all.length === 1 && all[0]!.mentions.length === 1 ? operand(piece.read, all[0]!) : undefined;
}

/** "Which lies between 16 and 20 Fr?": not where it asks for the one that does not. */
function between({ quiz: { question }, chosen }: Keyed, focus: Span): KeyReading[] | undefined {
  const claim = negated(question) ? undefined : placed(question, choiceOperand(chosen, question), focus);
  return claim && [{ claim, stance: 'asserted' }];
}

const NEGATED =
  /\b(?:except|all but one|odd one(?: out)?|false|wrong|mistaken|inaccurate|incorrect|untrue|least likely|neither|none of|isn't|aren't)\b|\b(?:is|are|does|do|would|should|will) not\b|\bnot (?:true|correct)\b|^(?:\d{1,2} [.)] )?not (?:an? )?(?:absorbable|absorbed|braided|monofilament|multifilament|synthetic|natural)\b/;
const SHOUTED = /\b(?:NOT|EXCEPT)\b/;

/** "The false one is c" under a stem that does not ask for it. */
const CALLED_FALSE = /\b(?:wrong|false|odd|lie|incorrect|untrue)\b[^\n]{0,20}$/i;
const calledFalse = ({ at }: Keyed): boolean =>
  CALLED_FALSE.test(at.read.passage.text.slice(Math.max(0, at.span.start - 30), at.span.start));

export const negated = (piece: Piece): boolean =>
  NEGATED.test(textOf(piece.items)) || SHOUTED.test(written(piece));

/** "Put in order, thinnest first": the sequence of the key, once for all its letters. */
function sequenced({ quiz, chosen, sequence }: Keyed, focus: Span): KeyReading[] | undefined {
  const cue = orderCue(quiz.question.items);
  if (!cue || !sequence) return undefined;
  const items = sequence.map((piece) => choiceOperand(piece));
  if (chosen !== sequence[0] || items.length < 2 || items.some((item) => item === undefined)) return [];
  const claim: OrderClaim = {
    kind: 'order',
    construction: 'answer-key',
    span: spanOf(quiz.question),
    focus,
    items: items as Operand[],
    axis: cue.axis,
    runs: cue.runs,
  };
  return [{ claim, stance: 'asserted' }];
}

/** "Which cannula to give blood fast?": of several the one that lets most through, where nobody small or frail is spoken of. */
function inHaste({ items }: Piece): Pick<Measured, 'axis' | 'sign'> | undefined {
  const text = textOf(items);
  return HASTE.test(text) && /\bwhich\b/.test(text) && !FRAIL.test(text)
    ? { axis: 'flow', sign: 1 }
    : undefined;
}
const HASTE =
  /\b(?:(?:fluids?|blood|volume|litres?|bags?|transfus\w+|infus\w+|resuscitat\w+|give|giving|run|running|pour|flow)\b.{0,40}\b(?:fast|quickly|rapidly|in a hurry|as fast as possible)|rapid (?:transfusion|infusion|volume|fluids?|resuscitation)|massive (?:transfusion|haemorrhage|hemorrhage|bleed\w*))\b/;
export const FRAIL =
  /\b(?:child|children|baby|babies|infants?|neonat\w*|toddlers?|elderly|frail|old|small|tiny|little|thin|poor|difficult|kg|weighs?|dogs?|cats?|wires?|line|lumens?|central|picc|not|least|except|slow\w*)\b/;

/** "Which is thinnest?": the chosen option against every other. */
function extreme(key: Keyed, focus: Span): KeyReading[] | undefined {
  const { question } = key.quiz;
  const word = askedMagnitude(question.items) ?? inHaste(question);
  const chosen = choiceOperand(key.chosen, question);
  if (!word || !chosen || negated(question) || tells(question)) return undefined;
  if (THAN_ELSE.test(textOf(question.items))) return undefined;
  if (key.several) return [];
  const others = key.quiz.options
    .filter((option) => option !== key.chosen)
    .map((option) => choiceOperand(option, question));
  const known = others.filter((other) => other !== undefined);
  if (known.length === 0) return undefined;
  if (limited(question.items)) return [];
  return known.map((other) => ({
    claim: compare(chosen, other, word, focus, spanOf(question)),
    stance: 'asserted',
  }));
}

/** "wider than an 18 G", "wider than you thought": more than something else than the other choices. */
const THAN_ELSE = /\bthan (?!(?:the |all |any |all the )*(?:others?|rest|two|three)\b)/;

/** "As they grow the cannula gets wider.", above boxes to tick: a sentence that compares and asks nothing. */
const tells = (question: Piece): boolean =>
  /\.\W*$/.test(written(question)) &&
  !/[?_]|\b(?:which|what|choose|pick|select|tick|mark|circle|underline|name|identify|find|put|give|most|\w+est)\b/i.test(
    written(question),
  );

const ASKS_MEASURE =
  /\b(?:how (?:wide|thick|many|big|large|broad)|diameters?|equals?|converts?|mm|millimet(?:re|er)s?|inch(?:es)?|measures?|across|same as|corresponds?|metric|outside|width|french|size of|usp|is|are)\b(?!.*\b(?:takes?|accepts?|fits?|passes|goes through|room for)\b)/;
const MEASURES = new Set(['millimetre', 'inch', 'wire-inch', 'ep-metric']);

/** "Which will take a 0.035 wire?": what goes into it, not how wide it is. */
const PASSES = /\b(?:will|can|does|to|must) (?:take|accept|fit|pass|admit)\b/;

/** "Which wire is made for a 21 G needle?": it belongs to it or goes through it, and is not as wide. */
const goesWith = (text: string, systems: readonly string[]): boolean =>
  GOES_WITH.test(text) ||
  (/\bwires?\b/.test(text) && systems.some((system) => /gauge|french|tube/.test(system)));
const GOES_WITH =
  /\bwhich (?:guide)?(?:wire|needle|catheter|sheath|dilator|tube|cannula|stylet|bougie)\b.*\b(?:for|with|into|in|down|to)\b/;

/** "What is the diameter of a 12 Fr?" with measures to choose from, or the other way round. */
export function converted(key: Pick<Keyed, 'quiz' | 'chosen'>, focus: Span): KeyReading[] | undefined {
  const { question } = key.quiz;
  const asked = choiceOperand(question);
  const chosen = choiceOperand(key.chosen, question);
  if (!asked || !chosen) return undefined;
  const [a, b] = [asked.sizes[0]!.system, chosen.sizes[0]!.system];
  const text = textOf(question.items);
  if (!ASKS_MEASURE.test(text)) return undefined;
  if (
    a === b ||
    (!MEASURES.has(a) && !MEASURES.has(b)) ||
    /\b(?:than|length|long|deep|depth|suction\w*)\b/.test(text)
  )
    return undefined;
  if (negated(question) || PASSES.test(text) || goesWith(text, [a, b])) return undefined;
  const inner = /\b(?:inner|inside|internal|bore|lumen)\b/.test(text);
  const claim: EquivalenceClaim = {
    kind: 'equivalence',
    construction: 'answer-key',
    span: spanOf(question),
    focus,
    left: asked,
    right: chosen,
    approximate: /\b(?:about|approximately|roughly|nearest|closest)\b/.test(text),
    axis: inner ? 'bore' : 'outer',
  };
  return [{ claim, stance: 'asserted' }];
}

/** "Which thread must come out?", "Which one dissolves?": the chosen material's fate. */
export function kept(key: Pick<Keyed, 'quiz' | 'chosen'>, focus: Span): KeyReading[] | undefined {
  const { items } = key.quiz.question;
  const named = materialsIn(key.chosen.items);
  if (named.length !== 1 || materialsIn(items).length > 0 || negated(key.quiz.question)) return undefined;
  const fate = fateIn(textOf(items));
  const asked = fate ? [fate.property] : items.flatMap((item) => propertyOf(item.word));
  if (asked.length === 0) return undefined;
  return [...new Set(asked)].map((property) => ({
    claim: materialIs(named[0]!.id, property, focus, spanOf(key.quiz.question)),
    stance: 'asserted',
  }));
}

/** "Which is an absorbable monofilament?" asks for both. */
const propertyOf = (word: string): string[] => {
  const row = PROPERTY_WORDS.get(word);
  return row ? [`${row.property}:${row.value}`] : [];
};

/** "Which gauge has the pink hub?", "What colour is a 20 G cannula?" */
export function coloured(key: Pick<Keyed, 'quiz' | 'chosen'>, focus: Span): KeyReading[] | undefined {
  const question = key.quiz.question;
  if (negated(question)) return undefined;
  const asked = question.items.filter((item) => item.colour);
  const chosen = key.chosen.items.filter((item) => item.colour);
  const size = choiceOperand(asked.length === 1 ? key.chosen : question, question);
  const colour = asked.length === 1 ? asked[0]!.colour : chosen.length === 1 ? chosen[0]!.colour : undefined;
  if (!size || !colour || (asked.length === 1 && chosen.length > 0)) return undefined;
  // "Eighteen?" "Pink is 20 G.": the colour belongs to the size that the reply names.
  if (asked.length === 0 && groups(key.chosen.items).length > 0 && groups(question.items).length > 0)
    return undefined;
  const device = codeOf(question.items) ?? codeOf(key.chosen.items) ?? codeBefore(question, size);
  if (device === 'both') return undefined;
  return [{ claim: sizeIs(size, colour, device, focus, spanOf(question)), stance: 'asserted' }];
}

/** "Which Foley funnel is green? Which is red?": in French the device named before is meant on. */
export function codeBefore({ read, span }: Piece, { sizes }: Operand): ReturnType<typeof codeOf> {
  if (sizes[0]?.system !== 'french') return undefined;
  return codeOf(piece(read, Math.max(0, span.start - REACH), span.start).items);
}
const REACH = 240;

const TURNS_DOWN =
  /^(?:that )?(?:s?he|they|it|this|that|the \w+) (?:is|are|was|were) (?:wrong|mistaken|incorrect|false|not right)\b/;

/**
 * Whatever else the question says: the stem and the chosen option are read as one sentence ("A pink cannula is" +
 * "18 G"), or the option alone when it is a statement. For "which is false" the option is denied.
 */
function statement(key: Keyed, focus: Span, desk: Desk): KeyReading[] {
  const { question } = key.quiz;
  const scene = sceneOf(desk, key.chosen) ?? sceneOf(desk, question);
  if (!scene || key.chosen.items.some((item) => item.word === 'not' || item.word === 'never')) return [];
  const stance: Stance = negated(question) || calledFalse(key) ? 'denied' : 'asserted';
  const alone = readAs(scene, key.chosen.items);
  // "A colleague says that … You tell her" "that she is wrong": the stem is what is turned down.
  if (TURNS_DOWN.test(textOf(key.chosen.items))) return [];
  const found =
    alone.length > 0
      ? alone
      : stance === 'denied'
        ? readAs(scene, applied(key))
        : key.several
          ? firstFound(readAs(scene, applied(key)), () => readAs(scene, joined(question, key.chosen)))
          : firstFound(readAs(scene, joined(question, key.chosen)), () => readAs(scene, turned(key)));
  return telling(
    found.filter((claim) => !threaded(question, claim) && !(claim.kind === 'order' && sorts(question.items))),
  ).map((claim) => ({
    claim: onKey(claim, focus, spanOf(question)),
    stance,
  }));
}

/** "Which wire for a 21 G needle?", "Which takes a 0.035 wire?": the one goes through the other. */
export function threaded(question: Piece, claim: Claim): boolean {
  if (claim.kind !== 'equivalence') return false;
  const systems = [claim.left, claim.right].map((side) => side.sizes[0]?.system);
  const wire =
    systems.some((one) => one === 'wire-inch' || one === 'inch') && systems.includes('needle-gauge');
  return (
    (wire && question.items.some((item) => /^wires?$/.test(item.word))) || PASSES.test(textOf(question.items))
  );
}

/** One claim a choice; of a material every property that is asked for must hold. */
const telling = (all: readonly Claim[]): readonly Claim[] => {
  const claims = worked(all).filter((claim) => claim.kind !== 'comparison' || alike(claim.left, claim.right));
  return claims[0]?.kind === 'property'
    ? claims.filter((claim) => claim.kind === 'property')
    : claims.slice(0, 1);
};
/** A question that states a rule asks what it gives: the sum is said, not the rule. */
export function worked(claims: readonly Claim[]): readonly Claim[] {
  const sums = claims.filter((claim) => claim.kind === 'formula' && claim.sum !== undefined);
  return sums.length > 0 ? sums : claims;
}

/** No question sets a thread against a needle. */
const alike = (left: Operand, right: Operand): boolean =>
  (left.sizes[0]?.system === 'usp') === (right.sizes[0]?.system === 'usp') ||
  [left, right].some(({ sizes }) => /^(?:millimetre|inch|ep-metric)$/.test(sizes[0]?.system ?? ''));

const firstFound = (claims: Claim[], other: () => Claim[]): Claim[] => (claims.length > 0 ? claims : other());

/** The option first: "conventional cutting: has its extra edge on the outer curve". */
function turned({ quiz, chosen }: Pick<Keyed, 'quiz' | 'chosen'>): Item[] {
  return [...chosen.items, mark(':'), ...quiz.question.items.filter((item) => !ASKING.has(item.word))];
}
const ASKING = new Set(['?', 'which', 'what']);

/** "All are thinner than a 3-0 EXCEPT", "Tick all that are wider than an 18 G": the predicate, said of the choice. */
function applied({ quiz, chosen }: Keyed): Item[] {
  const stem = quiz.question.items.filter((item) => !EXCEPTING.has(item.word));
  const verb = stem.findIndex((item) => /^(?:is|are|has|have|measures?)$/.test(item.word));
  const word = stem.findIndex((item) => item.magnitude?.degree === 'comparative');
  const rest = verb >= 0 ? stem.slice(verb + 1) : word >= 0 ? stem.slice(word) : [];
  return rest.length === 0 ? [] : [...chosen.items, mark('is'), ...rest];
}
const EXCEPTING = new Set(['?', ':', ',', '.', 'except', 'not', 'for']);

const DOES = /^(?:does|do)$/;
const MEASURING = /^(?:measure|mean|describe|give|show|indicate|count|denote)$/;

/** The question without its mark, a colon, the option. */
export function joined(question: Piece, chosen: Piece): Item[] {
  const stem = question.items.filter((item) => item.word !== '?');
  const last = stem.at(-1);
  // "What does gauge measure?" "The length.": gauge measures the length.
  if (stem[0]?.word === 'what' && DOES.test(stem[1]?.word ?? '') && MEASURING.test(last!.word))
    return [...stem.slice(2, -1), { ...last!, word: `${last!.word}s` }, ...chosen.items];
  const stands = stem.findIndex(({ word }, i) => word === 'stand' && stem[i + 1]?.word === 'for');
  if (stem[0]?.word === 'what' && DOES.test(stem[1]?.word ?? '') && stands > 2)
    return [...stem.slice(2, stands), { ...stem[stands]!, word: 'stands' }, mark('for'), ...chosen.items];
  const link = last && last.word !== 'is' && last.word !== 'are' && last.word !== ':' ? [mark(':')] : [];
  return [...stem, ...link, ...chosen.items];
}
