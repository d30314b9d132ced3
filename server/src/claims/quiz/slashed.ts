/** Choices in a row, without letters: "Thickest: 2-0 / 3-0 / 5-0", "Which is finest? 3-0, 4-0 or 6-0". */
import { matchesOf } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';
import { orderCue } from '../constructions/order.ts';
import { materialsIn } from '../text/materials.ts';
import type { Read } from '../text/scenes.ts';
import { PROPERTY_WORDS } from '../words/properties.ts';
import { askedMagnitude } from './desk.ts';
import { type Piece, piece } from './piece.ts';

const BETWEEN = /\s*(?:\/|\||,|;|·)\s*(?:or\s+)?|\s+or\s+/g;
const TAIL = /\s*(?:[—–(-]+\s*\(?(?:answer|ans|key|right|correct)\b|→|⇒|=>|►|\n)/i;
const STEM_WORDS = 12;

/** The choices after the question mark, or after the colon of a stem that asks for an extreme or a quality. */
export function slashed(read: Read, bounds: Span, asked: number | undefined): Piece[] | undefined {
  const { text } = read.passage;
  const colon = text.slice(bounds.start, bounds.end).indexOf(':');
  const from = asked ?? (colon > 0 ? bounds.start + colon + 1 : undefined);
  if (from === undefined || (asked === undefined && !stem(piece(read, bounds.start, from)))) return undefined;
  const row = text.slice(from, bounds.end);
  const end = from + (TAIL.exec(row)?.index ?? row.length);
  const pieces = cut(text.slice(from, end)).map(({ start, end: to }) => piece(read, from + start, from + to));
  return pieces.length >= 2 && pieces.length <= 6 && alike(pieces) ? pieces : undefined;
}

const LETTERS = 'abcdefgh';
const LETTERED = /^\(?([A-Ha-h])[).:]?\s+(?=\S)/;

/** "a green / b pink / c blue" on a line of its own: letters in their order, with a stroke between them. */
export function letteredRow(read: Read, { start, end }: Span): Piece[] | undefined {
  const text = read.passage.text.slice(start, end);
  const line = text.lastIndexOf('\n') + 1;
  const parts = line > 0 && /\s[/|]\s/.test(text.slice(line)) ? cut(text.slice(line)) : [];
  const labels = parts.map((part) => LETTERED.exec(text.slice(line + part.start, line + part.end)));
  const counted = labels.every((label, i) => label?.[1]?.toLowerCase() === LETTERS[i]);
  if (parts.length < 2 || !counted) return undefined;
  const from = start + line;
  return parts.map((part, i) => piece(read, from + part.start + labels[i]![0].length, from + part.end));
}

/** "Thickest thread", "Absorbable": short, and about one quality. "Widest cannulas" heads a list and asks nothing. */
function stem({ items }: Piece): boolean {
  if (items.length > STEM_WORDS) return false;
  if (/^(?:is|are|measures)$/.test(items.at(-2)?.word ?? '')) return true;
  if (items.some((item) => item.kind === 'size') || orderCue(items)) return false;
  if (items.length <= 3 && PROPERTY_WORDS.has(items[0]?.word ?? '')) return true;
  const word = askedMagnitude(items);
  return word !== undefined && word.at <= 2 && !/s$/.test(items[word.to + 1]?.word ?? '');
}

function cut(row: string): Span[] {
  const spans: Span[] = [];
  let at = 0;
  const push = (to: number) => {
    const part = row.slice(at, to);
    const lead = part.length - part.trimStart().length;
    const end = at + part.replace(/[\s.]+$/, '').length;
    if (end > at + lead) spans.push({ start: at + lead, end });
  };
  for (const match of matchesOf(row, BETWEEN)) {
    push(match.index);
    at = match.index + match[0].length;
  }
  push(row.length);
  return spans;
}

/** Choices are short and of one kind: all sizes of a system, all colours, all materials, all numbers. */
function alike(pieces: readonly Piece[]): boolean {
  const kinds = pieces.map(kindOf);
  return kinds[0] !== undefined && kinds.every((kind) => kind === kinds[0]);
}

function kindOf({ read, span, items }: Piece): string | undefined {
  const words = items.filter((item) => item.kind !== 'punctuation');
  if (words.length === 0 || words.length > 4) return undefined;
  const sizes = items.filter((item) => item.mention);
  if (sizes.length === 1) return sizes[0]!.mention!.sizes[0]?.system;
  if (sizes.length > 1) return undefined;
  if (materialsIn(items).length === 1) return 'material';
  if (words.length <= 2 && items.some((item) => item.colour)) return 'colour';
  return /^\d+(?:\.\d+)?$/.test(read.passage.text.slice(span.start, span.end)) ? 'number' : undefined;
}
