/** Questions and answers of a talk written down: "Q. …", and in the next paragraph "A. …". */
import type { Note, Passage } from '../../notes/model.ts';

const QUESTION = /^Q(?:uestion)?\s?\d{0,2}[.):]\s/;
const REPLY = /^A(?:nswer)?[.:]\s/;
const CHOICE_B = /(?:^|\n)[ \t]*\(?[Bb][).:]\s/;

/** An answer in talk, not the first of several choices. */
export const repliesInTalk = (note: Note, passage: Passage): boolean =>
  REPLY.test(passage.text) &&
  QUESTION.test(textAt(note, passage.index - 1)) &&
  !CHOICE_B.test(passage.text) &&
  !CHOICE_B.test(textAt(note, passage.index + 1));

/** What the one who asks says: "Q. My last ward said the bigger the number the thinner the tube." */
export function asksInTalk(note: Note, { index, text }: Passage): boolean {
  const next = QUESTION.test(text) ? note.passages[index + 1] : undefined;
  return next !== undefined && repliesInTalk(note, next);
}

const textAt = (note: Note, index: number): string => note.passages[index]?.text ?? '';
