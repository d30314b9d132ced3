/** Hover of a statement: the verdict first, then the claim as read, the values and where they come from. */
import type { Step } from '../checks/model.ts';
import type { Statement } from '../claims/model.ts';
import { type Locale, quote, say } from '../texts/index.ts';
import { blocks, escapeMarkdown } from './markdown.ts';
import { HOVER } from './texts/hover.ts';
import { CONFIDENCE, STANCE, VERDICT } from './texts/words.ts';

/** `said`: the finding shown beside the hover already gives the claim, what holds and its source; what is left is why. */
export function statementHover(statement: Statement, said = false, locale?: Locale): string {
  const verdict = `**${say(locale, VERDICT[statement.verdict])}.**`;
  const why = values(statement, locale);
  if (said) return why === '' ? '' : blocks([verdict, why]);
  return blocks([headline(statement, verdict, locale), why, source(statement, locale)]);
}

function headline(statement: Statement, verdict: string, locale?: Locale): string {
  const says = escapeMarkdown(statement.says);
  if (!isJudged(statement)) return `**${say(locale, STANCE[statement.stance])}.** ${says}`;
  const holds = told(statement) === '' ? '' : `  \n${escapeMarkdown(statement.holds)}`;
  return `${verdict} ${says}${holds}`;
}

const isJudged = ({ stance }: Statement): boolean => stance === 'asserted' || stance === 'denied';

/** What holds, where it is said: it goes without saying of what holds already, and of what is not judged. */
const told = (statement: Statement): string =>
  isJudged(statement) && statement.verdict !== 'agrees' ? statement.holds : '';

/** The rule and the values, but for what the headline has told. */
function values(statement: Statement, locale?: Locale): string {
  const shown = statement.derivation.filter(
    (step) => (step.label === 'value' || step.label === 'rule') && adds(step, told(statement)),
  );
  return shown.map((step) => `- ${escapeMarkdown(step.text)}${doubt(step, locale)}`).join('\n');
}

/** A step that is not sure is told for its doubt. */
function adds(step: Step, said: string): boolean {
  if (doubt(step) !== '') return true;
  const numbers = step.text.match(NUMBERS) ?? [];
  return !said.includes(step.text) && !(numbers.length > 0 && numbers.every((each) => said.includes(each)));
}

const NUMBERS = /[0-9]+(?:[.,][0-9]+)?/g;

const doubt = (step: Step, locale?: Locale): string =>
  step.confidence === undefined || step.confidence === 'confirmed'
    ? ''
    : ` *(${say(locale, CONFIDENCE[step.confidence])})*`;

const source = (statement: Statement, locale?: Locale): string =>
  statement.source === ''
    ? ''
    : say(locale, HOVER.source, { source: quote(escapeMarkdown(statement.source)) });
