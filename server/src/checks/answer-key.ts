/** A quiz key that marks a wrong answer as right. */
import type { CheckDefinition } from './definition.ts';
import { statementCheck } from './statement-check.ts';

const keys = statementCheck(
  {
    id: 'quiz-key',
    title: 'The key marks a wrong answer',
    docs: 'The choice marked as right (by a key line, bold type, a tick or an answer list) contradicts the tables, or a right one is keyed false. Choices that are not keyed are never reported.',
  },
  ({ claim }) => claim.construction === 'answer-key' || claim.kind === 'key',
);

/** The same findings, said of the key. */
export const answerKey: CheckDefinition = {
  ...keys,
  run: (input) =>
    keys.run(input).map((finding) => ({ ...finding, says: finding.says.replace(/^Says /, 'The key says ') })),
};
