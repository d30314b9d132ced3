/** What a reply says before it says why: "the 4-0, because four is more than two" says "the 4-0". */
import { isMark } from '../../../mentions/words/marks.ts';
import { wordValue } from '../../../mentions/words/numbers.ts';
import { sourceSpan } from '../../../notes/index.ts';
import type { System } from '../../../sizes/model.ts';
import type { Operand } from '../../model.ts';
import type { Item } from '../../text/items.ts';
import { textOf } from '../../text/joined.ts';
import { materialsIn } from '../../text/materials.ts';
import { HEDGES, NEGATIONS } from '../../words/changes.ts';
import { sizesOf } from '../desk.ts';
import { type Piece, piece } from '../piece.ts';

/** A reason, a remark or a second thought begins here. */
const REASON = new Set(
  'because since as so for which who whose while but remember due being given not rather though although unless if when where whereas instead than'.split(
    ' ',
  ),
);
const CLOSES = new Set(['.', ';', ':', '!', '?', '—', '–', '(', '[', ',', '|', '→', '…', '"', '”', '=']);
/** "It is yellow": what stands before the answer itself. */
const OPENS =
  /^(?:it|it's|its|they|that|that's|is|are|be|would|should|will|the|a|an|answer|of|course|well|say)$/;

/** Everything up to the first remark; all of it where it is one answer. */
export function headOf(reply: Piece): Piece {
  const { items } = reply;
  let from = 0;
  while (from < items.length && items[from]!.kind === 'punctuation') from++;
  const first = items.findIndex((item, i) => i >= from && !OPENS.test(item.word));
  const end = items.findIndex(
    (item, i) =>
      i > Math.max(from, first) &&
      (CLOSES.has(item.word) ||
        (REASON.has(item.word) && !(item.word === 'not' && OPENS.test(items[i - 1]!.word))) ||
        (item.word === 'and' && !chooses(items[i + 1]))),
  );
  const last = items[(end < 0 ? items.length : end) - 1];
  return from === 0 && end < 0
    ? reply
    : piece(reply.read, items[from]?.start ?? reply.span.start, last?.end ?? reply.span.end);
}

const chooses = (item: Item | undefined): boolean =>
  item !== undefined && (item.kind === 'size' || item.colour !== undefined || /^(?:the|\d)/.test(item.word));

/** Nothing is said for sure, or something is turned down. */
export const wavers = ({ items }: Piece): boolean =>
  items.some(({ word }) => HEDGES.has(word) || NEGATIONS.has(word) || UNSURE.has(word));
const UNSURE = new Set(
  'nothing none neither either both any all depends depending varies same equal equally question else except or wrong'.split(
    ' ',
  ),
);

/** What "the 14" is depends on what was asked, whatever it was taken for. */
const bare = ({ mention }: Item): boolean =>
  mention !== undefined && (mention.kind === 'ambiguous' || /^\d+(?:[.,]\d+)?$/.test(mention.text));

/** The sizes of a reply that say what they are. */
export const sizesSaid = (said: Piece): Operand[] =>
  sizesOf({ ...said, items: said.items.filter((item) => item.kind !== 'size' || !bare(item)) });

export interface Figure {
  readonly item: Item;
  readonly value: number;
}

/** "4-0", "2/0", "000": a thread where threads are asked about. */
function threadsIn({ read, items }: Piece): Figure[] {
  return items.flatMap((item) => {
    if (isMark(read.passage.text, item)) return [];
    const zeros =
      /^(\d{1,2})[-/]0$/.exec(item.word)?.[1] ?? (/^0{2,8}$/.test(item.word) ? item.word.length : undefined);
    if (zeros !== undefined) return [{ item, value: 1 - Number(zeros) }];
    return item.kind !== 'punctuation' && /^\d$/.test(item.word) ? [{ item, value: Number(item.word) }] : [];
  });
}

/** Figures of a scale that say no system of their own. */
export const figuresIn = (said: Piece, system: System): Figure[] =>
  system === 'usp' ? threadsIn(said) : numbersIn(said);

/** Numbers that name no size by themselves: "the 18", "eight". */
export function numbersIn({ read, items }: Piece): Figure[] {
  return items.flatMap((item, i) => {
    if (item.kind === 'punctuation' || (item.kind === 'size' && !bare(item))) return [];
    if (isMark(read.passage.text, item)) return [];
    const value = /^\d{1,3}(?:[.,]\d{1,3})?$/.test(item.word)
      ? Number(item.word.replace(',', '.'))
      : item.word === 'one' && i > 0
        ? undefined
        : wordValue(item.word);
    return value === undefined || value <= 0 ? [] : [{ item, value }];
  });
}

/** A number of the text as a size of the given system. */
export function operandAt({ read }: Piece, item: Item, system: System, value: number): Operand {
  const span = { start: item.start, end: item.end };
  const source = sourceSpan(read.passage, span);
  const mention = {
    passage: read.passage.index,
    span,
    source,
    text: read.passage.text.slice(item.start, item.end),
    kind: 'size' as const,
    sizes: [{ system, value }],
    readings: [],
    notation: 'answer-option',
    decimals: /[.,](\d+)$/.exec(item.word)?.[1]?.length ?? 0,
    evidence: [],
  };
  return { sizes: mention.sizes, mentions: [mention], span: source };
}

/** The one material of a piece. */
export function onlyMaterial({ items }: Piece): string | undefined {
  const named = new Set(materialsIn(items).map(({ id }) => id));
  return named.size === 1 ? [...named][0] : undefined;
}

const PLACES: readonly (readonly [RegExp, number])[] = [
  [/\b(?:first|former)\b/, 0],
  [/\b(?:second|latter)\b/, 1],
  [/\bthird\b/, 2],
  [/\bfourth\b/, 3],
];
const COUNTED = /^(?:(?:option|choice|number|no|box|answer) )(?:\. )?(\d|one|two|three|four)\b/;

/** "the second", "the middle one", "option 3": place among so many choices, −1 when none is named. */
export function placeSaid(said: Piece, count: number): number {
  const text = textOf(said.items.filter((item) => !/^(?:the|it|is|it's|tick|[*_)])$/.test(item.word)));
  const hits = PLACES.filter(([pattern]) => pattern.test(text)).map(([, place]) => place);
  if (/\blast\b/.test(text)) hits.push(count - 1);
  if (/\bmiddle\b/.test(text) && count % 2 === 1) hits.push((count - 1) / 2);
  const counted = COUNTED.exec(text)?.[1];
  if (counted) hits.push((/\d/.test(counted) ? Number(counted) : (wordValue(counted) ?? 0)) - 1);
  return hits.length === 1 && hits[0]! < count ? hits[0]! : -1;
}
