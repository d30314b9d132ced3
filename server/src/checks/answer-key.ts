/** A quiz key that marks a wrong answer as right. */
import { statementCheck } from './statement-check.ts';

export const answerKey = statementCheck(
  {
    id: 'quiz-key',
    title: 'The key marks a wrong answer',
    docs: 'The choice marked as right (by a key line, bold type, a tick or an answer list) contradicts the tables, or a right one is keyed false. Choices that are not keyed are never reported.',
  },
  ({ claim }) => claim.construction === 'answer-key' || claim.kind === 'key',
);
