/** What every reader of keys needs: the scene of a passage, a row of items read as if it were one sentence, spans and operands. */
import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { Note, Span } from '../../notes/model.ts';
import type { Device, System } from '../../sizes/model.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { Reading } from '../constructions/model.ts';
import type { Axis, Claim, ColourClaim, ComparisonClaim, Operand, PropertyClaim, Stance } from '../model.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { changed } from '../text/place.ts';
import { type FirstScenes, type Group, groups, operand, type Scene } from '../text/scene.ts';
import type { Read } from '../text/scenes.ts';
import { type Piece, written } from './piece.ts';

export interface KeyReading {
  readonly claim: Claim;
  readonly stance: Stance;
}

export interface Desk {
  readonly note: Note;
  readonly reads: readonly Read[];
  readonly scenes: FirstScenes;
}

export const spanOf = ({ read, span }: Piece): Span => sourceSpan(read.passage, span);

export const sceneOf = (desk: Desk, { read }: Piece): Scene | undefined => desk.scenes.get(read.passage);

/** A mark of our own between two pieces read as one sentence. */
export const mark = (word: string): Item => ({
  start: 0,
  end: 0,
  word,
  kind: /\w/.test(word) ? 'word' : 'punctuation',
  capital: false,
});

/** Everything the grammar reads in a row of items taken as one sentence that stands alone. */
export function readingsIn(scene: Scene, items: readonly Item[]): { scene: Scene; readings: Reading[] } {
  const sentence = { items, start: 0, end: 0, close: '.' };
  const apart = { before: [], after: [], context: [], next: undefined, lead: undefined };
  const own = changed(scene, { ...apart, items, sentence });
  return { scene: own, readings: CONSTRUCTIONS.flatMap((construction) => construction.read(own)) };
}

export const readAs = (scene: Scene, items: readonly Item[]): Claim[] =>
  readingsIn(scene, items).readings.map((reading) => reading.claim);

/** The claim moved onto the key. Its word stands elsewhere, so no word is offered for swapping. */
export function onKey(claim: Claim, focus: Span, span: Span): Claim {
  const moved = { ...claim, focus, span, construction: 'answer-key' };
  if (moved.kind !== 'comparison') return moved;
  const { word: _, ...rest } = moved;
  return rest;
}

export function compare(
  left: Operand,
  right: Operand,
  word: Pick<Measured, 'axis' | 'sign'>,
  focus: Span,
  span: Span,
): ComparisonClaim {
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

/** "Silk is braided": a material has the property asked for. */
export const materialIs = (subject: string, property: string, focus: Span, span: Span): PropertyClaim => ({
  kind: 'property',
  construction: 'answer-key',
  span,
  focus,
  subject,
  of: 'material',
  property,
  has: true,
});

/** "20 G is pink": a size has a colour, on a device where one is named. */
export const sizeIs = (
  size: Operand,
  colour: string,
  device: Device | undefined,
  focus: Span,
  span: Span,
): ColourClaim => ({
  kind: 'colour',
  construction: 'answer-key',
  span,
  focus,
  size,
  colour,
  same: true,
  ...(device ? { device } : {}),
});

export const singles = (group: Group): Group[] =>
  group.mentions.map((mention) => ({ ...group, mentions: [mention], sizes: mention.sizes }));

/** The sizes of a piece one by one, each as an operand; those of a range are left out. */
export function sizesOf({ read, items }: Piece): Operand[] {
  return groups(items)
    .flatMap(singles)
    .filter((group) => group.sizes.length === 1)
    .map((group) => operand(read, group));
}

/** A size by its scale and value, to tell sizes apart. */
export const sizeKey = ({ sizes }: Operand): string => `${sizes[0]!.system} ${sizes[0]!.value}`;

/** Each size once. */
export const eachOnce = (all: readonly Operand[]): Operand[] => [
  ...new Map(all.map((one) => [sizeKey(one), one])).values(),
];

/** The one comparing word of a question. */
export function askedMagnitude(items: readonly Item[]): (Measured & { readonly axis: Axis }) | undefined {
  const words = measuredWords(items).filter(
    (m) => m.degree !== 'plain' && !m.idiom && m.axis !== 'number' && !named(items, m),
  );
  return words.length === 1 && words[0]!.axis !== 'other' ? words[0] : undefined;
}

/** "A thread marked metric 3 has a least diameter of": the name of a measure, with nothing to set it against. */
const named = (items: readonly Item[], { at, degree }: Measured): boolean =>
  degree === 'superlative' && /^an?$/.test(items[at - 1]?.word ?? '');

/** "the smallest that will do", "the largest you would put in": not the extreme of all, but of those that serve. */
const LIMITED =
  /\b(?:suitable|suited|adequate|acceptable|allowed|permitted|safe|safely|sufficient|enough|recommended|appropriate|tolerable|reasonable|practical|usable|needed|required|necessary|possible|comfortable|sensible|routine|routinely|usual|usually|kept|stocked|available)\b|\b(?:that|which|to|it|they) (?:(?:will|would|can|could|still|just|comfortably|easily) )*(?:fits?|pass(?:es)?|take|takes|accept|accepts|works?|does|do|allows?|lets?|holds?|admits?|goes|go|serves?|runs?|reach|reaches)\b|\b(?:you|we|one|they|i|she|he)(?:'d)? (?:would|can|could|should|may|must|might|will|need|use|put|keep|place|choose|accept|want|have|allow)\b/;

export const limited = (items: readonly Item[]): boolean =>
  measuredWords(items).some((word) =>
    word.degree === 'superlative'
      ? LIMITED.test(textOf(items.slice(word.at + 1)))
      : word.degree === 'comparative' && STEPS.test(textOf(items.slice(Math.max(0, word.at - 4), word.at))),
  );
/** "Something one step thicker": the next, not the extreme. */
const STEPS =
  /\b(?:(?:one|two|a|an|1|2) (?:single )?(?:steps?|sizes?|notch|rungs?|grades?)|next|slightly|(?:a|one) (?:little|touch|shade|bit|trifle)|just|somewhat|marginally)$/;

const UNITS: readonly (readonly [RegExp, System])[] = [
  [/\b(?:mm|millimet(?:re|er)s?)\b/, 'millimetre'],
  [/\binch(?:es)?\b/, 'inch'],
  [/\bgauges?\b/, 'needle-gauge'],
  [/\b(?:french|charri[eè]re)\b/, 'french'],
  [/\bmetric\b/, 'ep-metric'],
];

const NUMBER_WORDS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen'.split(
    ' ',
  );

const BARE =
  /^(?:about |roughly |around )?(\d+(?:\.(\d+))?|[a-z]+)(?: ?(?:mm|mils?|millimet(?:re|er)s?))?\.?$/i;
const UNIT_SAID = /(?:mm|mils?|millimet(?:re|er)s?)\.?$/i;
const WIDTH = /\b(?:how (?:wide|thick|broad|big|large)|diameter|width|across)\b/;

/** An answer that is a bare number takes the one unit that the question asks for. */
export function bareOperand(answer: Piece, question: Piece): Operand | undefined {
  const words = textOf(question.items.filter((item) => item.kind === 'word'));
  const asked = UNITS.filter(([pattern]) => pattern.test(words));
  const said = UNIT_SAID.test(written(answer).trim());
  const unit =
    asked.length === 1
      ? asked[0]![1]
      : asked.length === 0 && said && WIDTH.test(words)
        ? 'millimetre'
        : undefined;
  const mention = unit && numberSize(answer, unit);
  return mention && { sizes: mention.sizes, mentions: [mention], span: mention.source };
}

/** A piece that is a number and nothing more, as a size of the given system. */
export function numberSize(answer: Piece, system: System): Mention | undefined {
  const text = written(answer).trim();
  const number = BARE.exec(text);
  if (!number || answer.items.length === 0) return undefined;
  const value = /\d/.test(number[1]!) ? Number(number[1]) : NUMBER_WORDS.indexOf(number[1]!.toLowerCase());
  if (value <= 0) return undefined;
  const start = answer.span.start + written(answer).search(/\S/);
  const span = { start, end: start + text.length };
  return {
    passage: answer.read.passage.index,
    span,
    source: sourceSpan(answer.read.passage, span),
    text,
    kind: 'size',
    sizes: [{ system, value }],
    readings: [],
    notation: 'answer-option',
    decimals: number[2]?.length ?? 0,
    evidence: [],
  };
}
