/** One side of a question and its answer, without what announces it: "Q:", "3)", "A:", "Key →", "Two points:", a speaker's name. */
import type { Span } from '../../notes/model.ts';
import { readItems } from '../text/items.ts';
import { materialsIn } from '../text/materials.ts';
import { pointsIn } from '../text/points.ts';
import type { Read } from '../text/scenes.ts';
import { ANSWER_LABEL, QUESTION_LABEL } from './labels.ts';
import { type Piece, piece } from './piece.ts';

/** Nobody asks and answers on a longer line. */
export const LONGEST_LINE = 500;

const ARROW = /^\s*(?:→|⇒|➜|►|▸|▶|=>|->|—>|»|>)\s*/;
export const SPEAKER = /^\s*["“]?(\p{Lu}[\p{L}.'’ -]{0,24}?)\s*:\s+/u;
/** "[02:04] Dana: …": when it was said. */
const STAMP = /^\s*[[(]?\d{1,2}:\d{2}(?::\d{2})?[\])]?\s+/;
const OPENERS = /^[\s"“'‘([*—–-]+/;

export interface Reply {
  readonly piece: Piece;
  readonly marked: boolean;
  readonly speaker?: string;
}

/** "Q Wider, 12 G or 18 G? A 12 G.": capitals alone, set off by their type. */
const LETTERED = /(?:^|\n)\W{0,3}Q\s+(?=[\p{Lu}\d])/u;
const LETTER_A = /^\s*A\s+/;

/** A reply without what announces it: "A:", "→", "Tutor:", quotation marks and brackets. */
export function replyIn(read: Read, span: Span): Reply {
  let { start } = span;
  let marked = false;
  let speaker: string | undefined;
  for (const [pattern, kind] of [
    [OPENERS, ''],
    [STAMP, ''],
    [ANSWER_LABEL, 'label'],
    [LETTERED.test(read.passage.text.slice(0, LONGEST_LINE)) ? LETTER_A : ANSWER_LABEL, 'label'],
    [ARROW, 'label'],
    [SPEAKER, 'speaker'],
    [ARROW, 'label'],
    [OPENERS, ''],
  ] as const) {
    const match = pattern.exec(read.passage.text.slice(start, span.end));
    if (!match || (kind === 'speaker' && (marked || denies(match[1]!)))) continue;
    start += match[0].length;
    marked ||= kind === 'label';
    if (kind === 'speaker') speaker = match[1]!;
  }
  return { piece: piece(read, start, span.end), marked, ...(speaker === undefined ? {} : { speaker }) };
}

/** A question without "Q:", "3)", "Tutor:". */
export function questionIn(read: Read, span: Span): Piece {
  let { start } = span;
  for (const pattern of [OPENERS, STAMP, QUESTION_LABEL, SPEAKER, OPENERS]) {
    const match = pattern.exec(read.passage.text.slice(start, span.end));
    if (match && !(pattern === SPEAKER && asks(match[1]!))) start += match[0].length;
  }
  return piece(read, start, span.end);
}

/** "Do not accept: 18 mm": nobody of that name speaks. */
const denies = (name: string): boolean =>
  /\b(?:not|never|no|zero|nil|wrong|reject|refuse)\b|n['’]t\b/i.test(name);

/** "Wider: 6 Fr or 8 Fr?", "Silk: absorbable or not?": nobody of that name speaks. */
function asks(name: string): boolean {
  const items = readItems(name, []);
  return (
    items.some(
      ({ magnitude, system, axisNoun, deviceNoun }) => magnitude || system || axisNoun || deviceNoun,
    ) ||
    materialsIn(items).length > 0 ||
    pointsIn(items).length > 0
  );
}
