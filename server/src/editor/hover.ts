/** What a hover shows: the mention under the cursor, then the statements that hold there. */

import type { Analysis } from '../course/index.ts';
import type { Span } from '../notes/model.ts';
import type { Locale } from '../texts/index.ts';
import { mentionHover } from './hover-mention.ts';
import { statementHover } from './hover-statement.ts';
import { mentionAt, statementsAt, touches } from './places.ts';

export interface Hover {
  readonly span: Span;
  readonly markdown: string;
}

export interface HoverOptions {
  /** Draw the size between its neighbours. */
  readonly picture: boolean;
  /** The editor shows the finding under the cursor beside the hover: its sentences are not said twice. */
  readonly besideFindings?: boolean;
  readonly locale?: Locale;
}

/** Statements shown at most; the shortest around the cursor come first. */
const STATEMENTS = 2;

/** The hover at an offset, undefined where the note says nothing about a size. */
export function hoverAt(analysis: Analysis, offset: number, options: HoverOptions): Hover | undefined {
  const mention = mentionAt(analysis, offset);
  const judged = statementsAt(analysis, offset)
    .filter(
      (statement) =>
        mention !== undefined ||
        touches(statement.claim.focus, offset) ||
        statement.verdict !== 'cannot-tell',
    )
    .slice(0, STATEMENTS);
  const span = mention?.source ?? judged[0]?.claim.focus;
  if (span === undefined) return undefined;
  const shown = options.besideFindings === true ? saidAt(analysis, offset) : NOTHING;
  const parts = [
    mention && mentionHover(mention, options),
    ...judged.map((statement) => statementHover(statement, shown.has(statement.says), options.locale)),
  ];
  const markdown = parts.filter(Boolean).join('\n\n---\n\n');
  // Where the finding says it all, nothing is left to say.
  return markdown === '' ? undefined : { span, markdown };
}

const NOTHING: ReadonlySet<string> = new Set();

/** What the findings under the cursor say the text says. */
function saidAt(analysis: Analysis, offset: number): ReadonlySet<string> {
  const under = analysis.findings.filter(({ span, deliberate }) => !deliberate && touches(span, offset));
  return new Set(under.map(({ says }) => says));
}
