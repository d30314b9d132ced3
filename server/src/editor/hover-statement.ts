/** Hover of a statement: the verdict first, then the claim as read, the values and where they come from. */
import type { Step } from '../checks/model.ts';
import type { Statement } from '../claims/model.ts';
import { blocks, escapeMarkdown } from './markdown.ts';
import { CONFIDENCE_WORDS, STANCE_WORDS, VERDICT_WORDS } from './words.ts';

/** `said`: the finding shown beside the hover already gives the claim and what holds; what is left is why. */
export function statementHover(statement: Statement, said = false): string {
  const first = said ? `**${VERDICT_WORDS[statement.verdict]}.**` : headline(statement);
  return blocks([first, values(statement.derivation), source(statement)]);
}

function headline(statement: Statement): string {
  const stance = STANCE_WORDS[statement.stance];
  const says = escapeMarkdown(statement.says);
  if (stance !== '' && statement.stance !== 'denied') return `**${stance}.** ${says}`;
  const holds = statement.verdict === 'agrees' ? '' : `  \n${escapeMarkdown(statement.holds)}`;
  return `**${VERDICT_WORDS[statement.verdict]}.** ${says}${holds}`;
}

/** The rule and the values; what was read and the result are in the headline. */
function values(steps: readonly Step[]): string {
  const shown = steps.filter((step) => step.label === 'value' || step.label === 'rule');
  return shown.map((step) => `- ${escapeMarkdown(step.text)}${doubt(step)}`).join('\n');
}

const doubt = (step: Step): string =>
  step.confidence === undefined || step.confidence === 'confirmed'
    ? ''
    : ` *(${CONFIDENCE_WORDS[step.confidence]})*`;

const source = (statement: Statement): string =>
  statement.source === '' ? '' : `Source: ${escapeMarkdown(statement.source)}`;
