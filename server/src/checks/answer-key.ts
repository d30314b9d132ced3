/** A quiz key that marks a wrong answer as right. */
import { FRAME } from '../claims/texts/frame.ts';
import { type Locale, say } from '../texts/index.ts';
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

function byKey(says: string, locale?: Locale): string {
  const opening = say(locale, FRAME.opening);
  return says.startsWith(opening) ? say(locale, FRAME.key) + says.slice(opening.length) : says;
}

/** The same findings, said of the key. */
export const answerKey: CheckDefinition = {
  ...keys,
  run: (input) => keys.run(input).map((finding) => ({ ...finding, says: byKey(finding.says, input.locale) })),
};
