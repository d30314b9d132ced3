/** Finds which choice a note marks as right: a marked option, a line "Answer: B", or an answer key further down. */
import type { Note } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';
import { answerTable, type Entry } from './answers.ts';
import { type Piece, piece, placeOf, type Quiz } from './collect.ts';

export interface Keyed {
  readonly quiz: Quiz;
  readonly chosen: Piece;
  /** What a finding points at: the option marked, or the letter in the key. */
  readonly at: Piece;
}

const TICK = /[✓✔☑✅]|\((?:correct|right|answer|key)\)|←\s*(?:correct|answer|key)|\bcorrect answer\b|\*\s*$/i;
const KEY_LINE =
  /(?:^|[\n(*—–-]\s*|[.?)]\s+|\s\*{0,2})(?:answer|ans|key|correct answer|solution|correct)\s*(?:is|:|=|—|–|-)?\s*\(?([A-Fa-f]|i{1,3}|iv|vi?)\b(?=[).,;:]|\s*$|\s*\n|\s*[(—–-])/i;

export function keyed(note: Note, reads: readonly Read[], found: readonly Quiz[]): Keyed[] {
  const table = answerTable(note, reads);
  return found.flatMap((quiz, i) => {
    const limit = found[i + 1]?.question.read.passage.index ?? reads.length;
    const hit = marked(quiz) ?? keyLine(reads, quiz, limit) ?? tabled(table, quiz);
    return hit ? [hit] : [];
  });
}

/** Exactly one option in bold, ticked or checked. */
function marked(quiz: Quiz): Keyed | undefined {
  for (const test of [ticked, checked, bold]) {
    const hits = quiz.options.filter(test);
    if (hits.length === 1) return { quiz, chosen: hits[0]!, at: hits[0]! };
  }
  return undefined;
}

const ticked = ({ read, span }: Piece) => TICK.test(read.passage.text.slice(span.start, span.end));
const checked = ({ read }: Piece) => read.passage.list?.checked === true;

/** Most of the option is set in strong type. */
function bold({ read, span }: Piece): boolean {
  const length = span.end - span.start;
  return read.passage.marks.some(
    (mark) =>
      mark.kind === 'strong' &&
      Math.min(mark.end, span.end) - Math.max(mark.start, span.start) >= 0.6 * length,
  );
}

/** "Answer: B" in the passage of the options or in the next few. */
function keyLine(reads: readonly Read[], quiz: Quiz, limit: number): Keyed | undefined {
  for (let i = quiz.question.read.passage.index; i < Math.min(limit, quiz.last + 4); i++) {
    const read = reads[i]!;
    if (read.passage.kind === 'heading') break;
    const match = KEY_LINE.exec(read.passage.text);
    if (!match) continue;
    const chosen = quiz.options[placeOf(match[1]!)];
    if (!chosen) continue;
    const end = match.index + match[0].length;
    return { quiz, chosen, at: piece(read, end - match[1]!.length, end) };
  }
  return undefined;
}

function tabled(table: ReadonlyMap<number, Entry>, quiz: Quiz): Keyed | undefined {
  const entry = table.get(quiz.number);
  const chosen = entry && quiz.options[placeOf(entry.answer)];
  return entry && chosen ? { quiz, chosen, at: entry.at } : undefined;
}
