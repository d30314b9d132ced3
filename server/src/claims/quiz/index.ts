/** What keys and answers assert: choices marked right, and questions together with their replies. */
import type { Note } from '../../notes/model.ts';
import type { Whole } from '../text/scenes.ts';
import { readChoice } from './choice.ts';
import { quizzes } from './collect.ts';
import { deskOf, type KeyReading } from './desk.ts';
import { keyed } from './key.ts';
import { pairs } from './pairs.ts';
import { readReply } from './reply.ts';
import { sectionPairs, tablePairs } from './sections.ts';

export type { KeyReading } from './desk.ts';

export function readKeys(note: Note, { reads, scenes, answers }: Whole): KeyReading[] {
  const desk = deskOf(note, reads, scenes);
  const offering = quizzes(note, reads);
  const offered = new Set(
    offering.flatMap(({ question, options }) => [question, ...options].map(({ read }) => read.passage.index)),
  );
  const replied = [...pairs(desk, offered), ...tablePairs(desk), ...sectionPairs(desk, answers)];
  return [
    ...keyed(note, reads, offering, answers).flatMap((key) => readChoice(key, desk)),
    ...replied
      .filter(({ question }) => !offered.has(question.read.passage.index))
      .flatMap((pair) => readReply(pair, desk)),
  ];
}
