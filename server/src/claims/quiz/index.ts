/** What a key asserts: the claim made by choosing one option of a question. */

import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { Note, Span } from '../../notes/model.ts';
import type { System } from '../../sizes/model.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { Claim, ColourClaim, ComparisonClaim, EquivalenceClaim, Operand, Stance } from '../model.ts';
import type { Item } from '../text/items.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { materialsIn } from '../text/materials.ts';
import { type Group, groups, operand, type Scene } from '../text/scene.ts';
import type { Read } from '../text/scenes.ts';
import type { Sentence } from '../text/sentences.ts';
import { codeOf } from '../words/codes.ts';
import { fateIn } from '../words/fates.ts';
import { PROPERTY_WORDS } from '../words/properties.ts';
import { type Piece, quizzes } from './collect.ts';
import { described } from './described.ts';
import { type Keyed, keyed } from './key.ts';

export interface KeyReading {
  readonly claim: Claim;
  readonly stance: Stance;
}

export function readKeys(note: Note, reads: readonly Read[], scenes: readonly Scene[]): KeyReading[] {
  const choices = keyed(note, reads, quizzes(note, reads)).flatMap((key) => readKey(key, scenes));
  return [
    ...choices,
    ...scenes.flatMap((scene) => answeredPair(scene)),
    ...scenes.flatMap((scene) => answeredShort(scene)),
  ];
}

function readKey(key: Keyed, scenes: readonly Scene[]): KeyReading[] {
  const focus = spanOf(key.at);
  return (
    extreme(key, focus, scenes) ??
    converted(key, focus, scenes) ??
    coloured(key, focus, scenes) ??
    kept(key, focus) ??
    asArray(described(key, focus, spanOf(key.quiz.question), negated(key.quiz.question))) ??
    statement(key, focus, scenes)
  );
}

const asArray = <T>(one: T | undefined): T[] | undefined => (one === undefined ? undefined : [one]);
const spanOf = ({ read, span }: Piece): Span => sourceSpan(read.passage, span);
const textOf = (items: readonly Item[]) => items.map((item) => item.word).join(' ');

function sceneOf(scenes: readonly Scene[], read: Read): Scene | undefined {
  return scenes.find((scene) => scene.passage === read.passage);
}

function operandOf(piece: Piece, scenes: readonly Scene[], question?: Piece): Operand | undefined {
  const all = groups(piece.items);
  const scene = sceneOf(scenes, piece.read);
  if (all.length === 0 && question) return bareOperand(piece, question);
  return scene && all.length === 1 && all[0]!.mentions.length === 1 ? operand(scene, all[0]!) : undefined;
}

const UNITS: readonly (readonly [RegExp, System])[] = [
  [/\b(?:mm|millimet(?:re|er)s?)\b/, 'millimetre'],
  [/\binch(?:es)?\b/, 'inch'],
  [/\bgauges?\b/, 'needle-gauge'],
  [/\b(?:french|charri[eè]re)\b/, 'french'],
];

/** An option that is a bare number takes the one unit that the question asks for. */
function bareOperand({ read, items, span }: Piece, question: Piece): Operand | undefined {
  const written = read.passage.text.slice(span.start, span.end).trim();
  const number = /^\d+(?:\.(\d+))?$/.exec(written);
  const asked = UNITS.filter(([pattern]) =>
    pattern.test(textOf(question.items.filter((item) => item.kind === 'word'))),
  );
  const unit = asked[0]?.[1];
  if (!number || asked.length !== 1 || !unit || items.length === 0) return undefined;
  const source = sourceSpan(read.passage, { start: span.start, end: span.start + written.length });
  const size = { system: unit, value: Number(written) };
  const mention: Mention = {
    passage: read.passage.index,
    span: { start: span.start, end: span.start + written.length },
    source,
    text: written,
    kind: 'size',
    sizes: [size],
    readings: [],
    notation: 'answer-option',
    decimals: number[1]?.length ?? 0,
    evidence: [],
  };
  return { sizes: [size], mentions: [mention], span: source };
}

const NEGATED =
  /\b(?:except|false|wrong|mistaken|inaccurate|incorrect|untrue|least likely|isn't|aren't)\b|\b(?:is|are|does|do|would|should|will) not\b|\bnot (?:true|correct)\b/;
const SHOUTED = /\b(?:NOT|EXCEPT)\b/;

const negated = ({ items, read, span }: Piece): boolean =>
  NEGATED.test(textOf(items)) || SHOUTED.test(read.passage.text.slice(span.start, span.end));

/** "Which is thinnest?": the chosen option against every other. */
function extreme(key: Keyed, focus: Span, scenes: readonly Scene[]): KeyReading[] | undefined {
  const word = askedMagnitude(key.quiz.question.items);
  const chosen = operandOf(key.chosen, scenes, key.quiz.question);
  if (!word || !chosen || negated(key.quiz.question)) return undefined;
  const others = key.quiz.options
    .filter((option) => option !== key.chosen)
    .map((option) => operandOf(option, scenes, key.quiz.question));
  const known = others.filter((other) => other !== undefined);
  if (known.length === 0) return undefined;
  if (groups(key.quiz.question.items).length > 0 && /\bthan\b/.test(textOf(key.quiz.question.items)))
    return undefined;
  return known.map((other) => ({
    claim: compare(chosen, other, word, focus, spanOf(key.quiz.question)),
    stance: 'asserted',
  }));
}

function askedMagnitude(items: readonly Item[]): Measured | undefined {
  const words = measuredWords(items).filter((m) => m.degree !== 'plain' && !m.idiom && m.axis !== 'number');
  return words.length === 1 && words[0]!.axis !== 'other' ? words[0] : undefined;
}

function compare(left: Operand, right: Operand, word: Measured, focus: Span, span: Span): ComparisonClaim {
  return {
    kind: 'comparison',
    construction: 'answer-key',
    span,
    focus,
    left,
    right,
    axis: word.axis,
    relation: word.sign === 1 ? 'more' : 'less',
  };
}

const ASKS_MEASURE =
  /\b(?:how (?:wide|thick|many|big|large|broad)|diameters?|equals?|converts?|mm|millimet(?:re|er)s?|inch(?:es)?|measures?|across|same as|corresponds?|metric|outside|width|french|size of|usp|is|are)\b(?!.*\b(?:takes?|accepts?|fits?|passes|goes through|room for)\b)/;
const MEASURES = new Set(['millimetre', 'inch', 'wire-inch', 'ep-metric']);

/** "What is the diameter of a 12 Fr?" with measures to choose from, or the other way round. */
function converted(key: Keyed, focus: Span, scenes: readonly Scene[]): KeyReading[] | undefined {
  const asked = operandOf(key.quiz.question, scenes);
  const chosen = operandOf(key.chosen, scenes, key.quiz.question);
  if (!asked || !chosen) return undefined;
  const [a, b] = [asked.sizes[0]!.system, chosen.sizes[0]!.system];
  const text = textOf(key.quiz.question.items);
  if (!ASKS_MEASURE.test(text)) return undefined;
  if (a === b || (!MEASURES.has(a) && !MEASURES.has(b)) || /\b(?:than|length|long|deep|depth)\b/.test(text))
    return undefined;
  if (negated(key.quiz.question)) return undefined;
  const inner = /\b(?:inner|inside|internal|bore|lumen)\b/.test(text);
  const claim: EquivalenceClaim = {
    kind: 'equivalence',
    construction: 'answer-key',
    span: spanOf(key.quiz.question),
    focus,
    left: asked,
    right: chosen,
    approximate: /\b(?:about|approximately|roughly|nearest|closest)\b/.test(text),
    axis: inner ? 'bore' : 'outer',
  };
  return [{ claim, stance: 'asserted' }];
}

/** "Which thread must come out?", "Which one dissolves?": the chosen material's fate. */
function kept(key: Keyed, focus: Span): KeyReading[] | undefined {
  const { items } = key.quiz.question;
  const named = materialsIn(key.chosen.items);
  if (named.length !== 1 || materialsIn(items).length > 0 || negated(key.quiz.question)) return undefined;
  const fate = fateIn(textOf(items));
  const asked = fate ? [fate.property] : items.flatMap((item) => propertyOf(item.word));
  if (asked.length === 0) return undefined;
  return [...new Set(asked)].map((property) => ({
    claim: {
      kind: 'property',
      construction: 'answer-key',
      span: spanOf(key.quiz.question),
      focus,
      subject: named[0]!.id,
      of: 'material',
      property,
      has: true,
    },
    stance: 'asserted',
  }));
}

/** "Which is an absorbable monofilament?" asks for both. */
const propertyOf = (word: string): string[] => {
  const row = PROPERTY_WORDS.get(word);
  return row ? [`${row.property}:${row.value}`] : [];
};

/** "Which gauge has the pink hub?", "What colour is a 20 G cannula?" */
function coloured(key: Keyed, focus: Span, scenes: readonly Scene[]): KeyReading[] | undefined {
  const question = key.quiz.question;
  if (negated(question)) return undefined;
  const asked = question.items.filter((item) => item.colour);
  const chosen = key.chosen.items.filter((item) => item.colour);
  const size = operandOf(asked.length === 1 ? key.chosen : question, scenes, question);
  const colour = asked.length === 1 ? asked[0]!.colour : chosen.length === 1 ? chosen[0]!.colour : undefined;
  if (!size || !colour || (asked.length === 1 && chosen.length > 0)) return undefined;
  const device = codeOf(question.items) ?? codeOf(key.chosen.items);
  if (device === 'both') return undefined;
  const claim: ColourClaim = {
    kind: 'colour',
    construction: 'answer-key',
    span: spanOf(question),
    focus,
    size,
    colour,
    same: true,
    ...(device ? { device } : {}),
  };
  return [{ claim, stance: 'asserted' }];
}

/**
 * Whatever else the question says: the stem and the chosen option are read as one sentence ("A pink cannula is" +
 * "18 G"), or the option alone when it is a statement. For "which is false" the option is denied.
 */
function statement(key: Keyed, focus: Span, scenes: readonly Scene[]): KeyReading[] {
  const { question } = key.quiz;
  const scene = sceneOf(scenes, key.chosen.read);
  if (!scene || key.chosen.items.some((item) => item.word === 'not' || item.word === 'never')) return [];
  const stance: Stance = negated(question) ? 'denied' : 'asserted';
  const span = spanOf(question);
  const alone = readItemsAs(scene, key.chosen.items);
  const found =
    alone.length > 0 || stance === 'denied'
      ? alone
      : firstFound(readItemsAs(scene, joined(key)), () => readItemsAs(scene, turned(key)));
  return telling(found).map((claim) => ({ claim: onKey(claim, focus, span), stance }));
}

/** One claim a choice; of a material every property that is asked for must hold. */
const telling = (claims: readonly Claim[]): readonly Claim[] =>
  claims[0]?.kind === 'property' ? claims.filter((claim) => claim.kind === 'property') : claims.slice(0, 1);

const firstFound = (claims: Claim[], other: () => Claim[]): Claim[] => (claims.length > 0 ? claims : other());

/** The option first: "conventional cutting: has its extra edge on the outer curve". */
function turned({ quiz, chosen }: Keyed): Item[] {
  const stem = quiz.question.items.filter(
    (item) => item.word !== '?' && item.word !== 'which' && item.word !== 'what',
  );
  return [...chosen.items, { start: 0, end: 0, word: ':', kind: 'punctuation', capital: false }, ...stem];
}

/** The question without its mark, a colon, the option. */
function joined({ quiz, chosen }: Keyed): Item[] {
  const stem = quiz.question.items.filter((item) => item.word !== '?');
  const last = stem.at(-1);
  const link =
    last && last.word !== 'is' && last.word !== 'are' && last.word !== ':'
      ? [{ ...last, word: ':', kind: 'punctuation' as const }]
      : [];
  return [
    ...stem,
    ...link.map(({ start, end, word, kind }) => ({ start, end, word, kind, capital: false })),
    ...chosen.items,
  ];
}

function readItemsAs(scene: Scene, items: readonly Item[]): Claim[] {
  const sentence = { items, start: 0, end: 0, close: '.' };
  const { next: _, lead: __, ...rest } = scene;
  const own: Scene = { ...rest, items, before: [], after: [], context: [], sentence };
  return CONSTRUCTIONS.flatMap((construction) => construction.read(own).map((reading) => reading.claim));
}

/** The claim moved onto the key. Its word stands elsewhere, so no word is offered for swapping. */
function onKey(claim: Claim, focus: Span, span: Span): Claim {
  const moved = { ...claim, focus, span, construction: 'answer-key' };
  if (moved.kind !== 'comparison') return moved;
  const { word: _, ...rest } = moved;
  return rest;
}

/** The answer that follows a question; a mark alone ("A.") belongs to the sentence after it. */
function answerOf(scene: Scene): Sentence | undefined {
  const first = scene.after[0] ?? scene.next;
  if (first && first.items.length <= 2 && ANSWER.test(first.items[0]?.word ?? '')) return scene.after[1];
  return first;
}

const FIRST = /\b(?:first|former)\b/;
const SECOND = /\b(?:second|latter)\b/;

/** "Which is thinner, a 22 G or a 25 G? (The second.)": a question that names its choices, then its answer. */
function answeredPair(scene: Scene): KeyReading[] {
  if (scene.sentence.close !== '?') return [];
  const word = askedMagnitude(scene.items);
  const here = groups(scene.items).flatMap(singles);
  const listed = here.length === 0 && scene.after[0] ? groups(scene.after[0].items).flatMap(singles) : [];
  const all = listed.length >= 2 ? listed : here;
  const answer = scene.answer ?? (listed.length >= 2 ? undefined : answerOf(scene));
  if (
    !answer ||
    !word ||
    all.length < 2 ||
    /\bthan\b/.test(textOf(scene.items)) ||
    !/\b(?:which|what)\b/.test(textOf(scene.items))
  )
    return [];
  if (all.some((group) => group.sizes[0]!.system !== all[0]!.sizes[0]!.system)) return [];
  const chosen = chosenOf(answer.items, all);
  if (chosen < 0) return [];
  const left = operand(scene, all[chosen]!);
  const focus = sourceSpan(scene.passage, { start: scene.sentence.start, end: scene.sentence.end });
  const near = answer === scene.after[0] || answer === scene.after[1];
  const at =
    scene.answerAt ?? (near ? sourceSpan(scene.passage, { start: answer.start, end: answer.end }) : focus);
  return all
    .filter((_, i) => i !== chosen)
    .map((group) => ({
      claim: compare(left, operand(scene, group), word, at, focus),
      stance: 'asserted' as const,
    }));
}

const singles = (group: Group): Group[] =>
  group.mentions.map((mention) => ({ ...group, mentions: [mention], sizes: mention.sizes }));

/** The choice a short answer names: by size, or as first or second. */
function chosenOf(answer: readonly Item[], all: readonly Group[]): number {
  if (answer.length > 14) return -1;
  const named = groups(answer).flatMap(singles);
  const first = named[0];
  if (first && named.length === 1)
    return all.findIndex(
      (g) =>
        g.sizes.length === 1 &&
        g.sizes[0]!.system === first.sizes[0]!.system &&
        g.sizes[0]!.value === first.sizes[0]!.value,
    );
  const text = textOf(answer);
  if (named.length > 0 || all.length !== 2) return -1;
  return FIRST.test(text) ? 0 : SECOND.test(text) ? 1 : -1;
}

const ANSWER = /^(?:a|ans|answer|key)$/;

/** "Q: What colour is a 20 G cannula? A: Green.": question and marked answer, read as one sentence. */
function answeredShort(scene: Scene): KeyReading[] {
  if (
    scene.sentence.close !== '?' ||
    scene.option ||
    /\b(?:true or false|t \/ f)\b/.test(textOf(scene.items))
  )
    return [];
  if (scene.answer && scene.answerAt) return answeredBy(scene, scene.answer.items, scene.answerAt);
  const answer = scene.after[0] ?? scene.next;
  const opens = answer?.items[0];
  const mark = answer?.items[1]?.word;
  if (opens?.word === 'a' && (mark !== ':' || !/^q/.test(scene.items[0]?.word ?? ''))) return [];
  if (
    !answer ||
    !opens ||
    !ANSWER.test(opens.word) ||
    (mark !== ':' && mark !== '.') ||
    answer.items.length > 16
  )
    return [];
  const own = answer === scene.after[0];
  const focus = own
    ? sourceSpan(scene.passage, { start: answer.start, end: answer.end })
    : sourceSpan(scene.passage, scene.sentence);
  return answeredBy(scene, answer.items.slice(2), focus);
}

/** Question and answer read as one sentence; only what a short answer can say is kept. */
function answeredBy(scene: Scene, answer: readonly Item[], focus: Span): KeyReading[] {
  const body = answer.filter((item, i, all) => !(i === all.length - 1 && item.word === '.'));
  if (body.length > 14 || body.some((item) => item.word === 'not' || item.word === 'no')) return [];
  const stem = scene.items.filter(
    (item) => item.word !== '?' && !/^q\d*$/.test(item.word) && !(item.word === ':' && item.start < 5),
  );
  const colon: Item = { start: 0, end: 0, word: ':', kind: 'punctuation', capital: false };
  const claims = readItemsAs(scene, [...stem, colon, ...body]).filter(
    (claim) => claim.kind === 'colour' || claim.kind === 'equivalence' || claim.kind === 'property',
  );
  return claims
    .slice(0, 1)
    .map((claim) => ({ claim: onKey(claim, focus, focus), stance: 'asserted' as const }));
}
