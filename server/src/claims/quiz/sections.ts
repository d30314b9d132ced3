/** Replies that stand apart from their questions: in a column of the same table, or by number in an answer section. */
import type { Note } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';
import { answerPassages } from './answers.ts';
import { markerNumber, numberIn } from './collect.ts';
import { type Desk, wholePiece } from './desk.ts';
import { gapIn } from './gap.ts';
import { linesOf, type Pair, questionIn, replyIn } from './pairs.ts';

const PROMPT_HEAD = /\b(?:questions?|prompts?|front|cards?|stem|items?|asks?|asked|viva|q)\b|\?\s*$/i;
const REPLY_HEAD =
  /\b(?:answers?|back|response|reply|replies|solutions?|expected|model answer|a)\b|^\W*(?:key|correct|right)\W*$/i;

/** Rows of a table with a column of questions or prompts and one of answers. */
export function tablePairs({ note, reads }: Desk): Pair[] {
  return note.tables.flatMap(({ rows }) => {
    const heads = (rows[0] ?? []).map((index) => reads[index]?.passage.text ?? '');
    const prompt = heads.findIndex((head) => PROMPT_HEAD.test(head));
    const reply = heads.findIndex((head, c) => c !== prompt && REPLY_HEAD.test(head));
    if (reply < 0) return [];
    return rows.slice(1).flatMap((row) => {
      const asked = reads[row[prompt < 0 ? asking(row, reads) : prompt] ?? -1];
      const given = reads[row[reply] ?? -1];
      if (!asked || !given || asked === given) return [];
      const { text } = asked.passage;
      return [
        {
          question: questionIn(asked, { start: 0, end: text.length }),
          reply: wholePiece(given),
          marked: true,
        },
      ];
    });
  });
}

/** Without a header for it, the questions are known by their marks. */
const asking = (row: readonly number[], reads: readonly Read[]): number =>
  row.findIndex((index) => /\?\s*$/.test(reads[index]?.passage.text ?? ''));

/** Numbered questions and gaps with the entry of the same number in an answer section. */
export function sectionPairs({ note, reads }: Desk): Pair[] {
  const answers = answerPassages(note, reads);
  if (answers.size === 0) return [];
  return reads.flatMap((read) => (read.passage.cell ? [] : numbered(note, read, answers)));
}

function numbered(note: Note, read: Read, answers: ReadonlyMap<number, Read>): Pair[] {
  const lines = linesOf(read);
  return lines.flatMap((line, i) => {
    const text = read.passage.text.slice(line.start, line.end);
    const number = numberIn(text.slice(0, 14)) ?? (i === 0 ? markerNumber(note, read) : undefined);
    const given = number === undefined ? undefined : answers.get(number);
    if (!given || given === read || given.passage.index < read.passage.index) return [];
    if (!text.includes('?') && !gapIn(read, line)) return [];
    const body = questionIn(given, { start: 0, end: given.sentences[0]?.end ?? 0 });
    return [{ question: questionIn(read, line), reply: replyIn(given, body.span).piece, marked: true }];
  });
}
