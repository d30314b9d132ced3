/** What a key says after its letter about the choice: "C. It is the narrowest of the three", a comment "the finest of all". */
import type { Note } from '../../notes/model.ts';
import { decidable, measuredWords } from '../text/magnitudes.ts';
import type { Read } from '../text/scenes.ts';
import { NEGATIONS } from '../words/changes.ts';
import { choiceOperand } from './choice.ts';
import { compare, type Desk, type KeyReading, sceneOf, spanOf } from './desk.ts';
import type { Keyed } from './key.ts';
import { because } from './loose/because.ts';
import { type Piece, piece } from './piece.ts';

/** Longest reason that is looked at, in items. */
const LONGEST = 9;
const OPENS = /^(?:it|this|that|is|'s|it's|being|because|as|since|the|by|far|of|being|and|so)$/;
const ENDS =
  /^(?:of|the|all|them|these|those|four|three|five|here|one|size|option|choice|in|list|on|offer|offered|cannulas?|cannulae|needles?|threads?|catheters?|sutures?|drains?|tubes?|\.|,)$/;

/** A superlative in the reason says it of the choice against every other. */
export function readReason(key: Keyed, desk: Desk): KeyReading[] {
  if (key.several) return [];
  const reason = reasonOf(key, desk.note, desk.reads);
  const { question } = key.quiz;
  const own = superlative(key, reason);
  return own.length > 0 ? own : because(question, key.chosen.items, reason, sceneOf(desk, question));
}

function superlative(key: Keyed, reason: Piece | undefined): KeyReading[] {
  if (!reason || reason.items.length === 0 || reason.items.length > LONGEST) return [];
  const words = measuredWords(reason.items);
  const word = words[0];
  if (!word || words.length > 1 || word.degree !== 'superlative' || !decidable(word.axis)) return [];
  const plain = reason.items.every(
    (item, i) =>
      !NEGATIONS.has(item.word) && (i < word.at ? OPENS : i > word.to ? ENDS : /./).test(item.word),
  );
  const chosen = choiceOperand(key.chosen, key.quiz.question);
  if (!plain || !chosen) return [];
  const others = key.quiz.options
    .filter((option) => option !== key.chosen)
    .flatMap((option) => choiceOperand(option, key.quiz.question) ?? []);
  return others.map((other) => ({
    claim: compare(chosen, other, word, spanOf(reason), spanOf(reason)),
    stance: 'asserted',
  }));
}

/** The first sentence after the letter, else the cell beside it. */
function reasonOf({ at }: Keyed, note: Note, reads: readonly Read[]): Piece | undefined {
  const { read, span } = at;
  const { cell, text } = read.passage;
  const beside = cell && reads[note.tables[cell.table]?.rows[cell.row]?.[cell.column + 1] ?? -1];
  if (beside && beside.sentences.length === 1) return piece(beside, 0, beside.passage.text.length);
  if (cell || at.span.end - at.span.start > 8) return undefined;
  const lead = /^[\s.,:;)\]*_–—-]*/.exec(text.slice(span.end, span.end + 12))![0].length;
  const start = span.end + lead;
  const stop = /[.;\n]/.exec(text.slice(start, start + 200));
  return piece(read, start, stop ? start + stop.index : Math.min(text.length, start + 200));
}
