/** What a key asserts: the claim made by choosing one option of a question. */
import { sourceSpan } from '../../notes/index.ts';
import type { Note, Span } from '../../notes/model.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { Claim, ColourClaim, ComparisonClaim, EquivalenceClaim, Operand, Stance } from '../model.ts';
import type { Item } from '../text/items.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, operand, type Scene } from '../text/scene.ts';
import type { Read } from '../text/scenes.ts';
import { codeOf } from '../words/codes.ts';
import { type Piece, quizzes } from './collect.ts';
import { type Keyed, keyed } from './key.ts';

export interface KeyReading {
  readonly claim: Claim;
  readonly stance: Stance;
}

export function readKeys(note: Note, reads: readonly Read[], scenes: readonly Scene[]): KeyReading[] {
  const choices = keyed(note, reads, quizzes(note, reads)).flatMap((key) => readKey(key, scenes));
  return [...choices, ...scenes.flatMap((scene) => answeredPair(scene))];
}

function readKey(key: Keyed, scenes: readonly Scene[]): KeyReading[] {
  const focus = spanOf(key.at);
  const asked = key.quiz.question.items;
  const found =
    extreme(key, focus, scenes) ??
    converted(key, focus, scenes) ??
    coloured(key, focus, scenes) ??
    statement(key, focus, asked, scenes);
  return found ?? [];
}

const spanOf = ({ read, span }: Piece): Span => sourceSpan(read.passage, span);
const textOf = (items: readonly Item[]) => items.map((item) => item.word).join(' ');

function sceneOf(scenes: readonly Scene[], read: Read): Scene | undefined {
  return scenes.find((scene) => scene.passage === read.passage);
}

function operandOf(piece: Piece, scenes: readonly Scene[]): Operand | undefined {
  const all = groups(piece.items);
  const scene = sceneOf(scenes, piece.read);
  return scene && all.length === 1 && all[0]!.mentions.length === 1 ? operand(scene, all[0]!) : undefined;
}

const NEGATED = /\b(?:not|except|false|incorrect|untrue|wrong|least likely|isn't)\b/;

/** "Which is thinnest?": the chosen option against every other. */
function extreme(key: Keyed, focus: Span, scenes: readonly Scene[]): KeyReading[] | undefined {
  const word = askedMagnitude(key.quiz.question.items);
  const chosen = operandOf(key.chosen, scenes);
  if (!word || !chosen || NEGATED.test(textOf(key.quiz.question.items))) return undefined;
  const others = key.quiz.options
    .filter((option) => option !== key.chosen)
    .map((option) => operandOf(option, scenes));
  if (others.some((other) => other === undefined)) return undefined;
  if (groups(key.quiz.question.items).length > 0 && /\bthan\b/.test(textOf(key.quiz.question.items)))
    return undefined;
  return others.map((other) => ({
    claim: compare(chosen, other!, word, focus, spanOf(key.quiz.question)),
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

const MEASURES = new Set(['millimetre', 'inch', 'wire-inch', 'ep-metric']);

/** "What is the diameter of a 12 Fr?" with measures to choose from, or the other way round. */
function converted(key: Keyed, focus: Span, scenes: readonly Scene[]): KeyReading[] | undefined {
  const asked = operandOf(key.quiz.question, scenes);
  const chosen = operandOf(key.chosen, scenes);
  if (!asked || !chosen) return undefined;
  const [a, b] = [asked.sizes[0]!.system, chosen.sizes[0]!.system];
  const text = textOf(key.quiz.question.items);
  if (a === b || (!MEASURES.has(a) && !MEASURES.has(b)) || /\b(?:than|length|long|deep|depth)\b/.test(text))
    return undefined;
  if (NEGATED.test(text)) return undefined;
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

/** "Which gauge has the pink hub?", "What colour is a 20 G cannula?" */
function coloured(key: Keyed, focus: Span, scenes: readonly Scene[]): KeyReading[] | undefined {
  const question = key.quiz.question;
  if (NEGATED.test(textOf(question.items))) return undefined;
  const asked = question.items.filter((item) => item.colour);
  const chosen = key.chosen.items.filter((item) => item.colour);
  const size = operandOf(asked.length === 1 ? key.chosen : question, scenes);
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

const STATEMENTS =
  /\b(?:which|what|select|choose|pick|tick|circle|mark)\b.*\b(?:statements?|true|correct|right|holds|false|incorrect|wrong|not)\b|\bcomplete\b|\bfinish\b/;

/** "Which statement is true?": the chosen option asserts what it says; for "which is false" it is denied. */
function statement(
  key: Keyed,
  focus: Span,
  asked: readonly Item[],
  scenes: readonly Scene[],
): KeyReading[] | undefined {
  const text = textOf(asked);
  const scene = sceneOf(scenes, key.chosen.read);
  if (!scene || !STATEMENTS.test(text)) return undefined;
  const stance: Stance = NEGATED.test(text) ? 'denied' : 'asserted';
  const items = key.chosen.items;
  const own: Scene = {
    ...scene,
    items,
    before: [],
    after: [],
    context: [],
    sentence: { items, start: key.chosen.span.start, end: key.chosen.span.end, close: '.' },
  };
  if (items.some((item) => item.word === 'not' || item.word === 'never')) return undefined;
  const claims = CONSTRUCTIONS.flatMap((construction) =>
    construction.read(own).map((reading) => reading.claim),
  );
  return claims
    .slice(0, 1)
    .map((claim) => ({ claim: { ...claim, focus, construction: 'answer-key' }, stance }));
}

const FIRST = /\b(?:first|former)\b/;
const SECOND = /\b(?:second|latter)\b/;

/** "Which is thinner, a 22 G or a 25 G? (The second.)": a question that names its choices, then its answer. */
function answeredPair(scene: Scene): KeyReading[] {
  if (scene.sentence.close !== '?') return [];
  const answer = scene.after[0] ?? scene.next;
  const word = askedMagnitude(scene.items);
  const all = groups(scene.items).flatMap(singles);
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
  const at =
    answer === scene.after[0] ? sourceSpan(scene.passage, { start: answer.start, end: answer.end }) : focus;
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
