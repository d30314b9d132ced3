/** What stands at an offset of a note: the mention, the statements and the findings there. */

import type { Finding } from '../checks/model.ts';
import type { Statement } from '../claims/model.ts';
import type { Analysis } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';
import type { Span } from '../notes/model.ts';

/** True when the offset touches the span; a cursor right behind the last character still does. */
export const touches = (span: Span, offset: number): boolean => span.start <= offset && offset <= span.end;

/** True when the spans share a character, or one of them is a cursor that touches the other. */
export function meets(a: Span, b: Span): boolean {
  if (a.start === a.end || b.start === b.end) return a.start <= b.end && b.start <= a.end;
  return a.start < b.end && b.start < a.end;
}

const length = (span: Span): number => span.end - span.start;

/** The mention under the cursor; of two that touch it, the one that begins there. */
export function mentionAt(analysis: Analysis, offset: number): Mention | undefined {
  const near = analysis.mentions.filter((mention) => touches(mention.source, offset));
  return near.find((mention) => mention.source.start <= offset && offset < mention.source.end) ?? near[0];
}

/** Statements around the offset, the shortest first. */
export function statementsAt(analysis: Analysis, offset: number): Statement[] {
  return analysis.statements
    .filter((statement) => touches(statement.claim.span, offset))
    .sort((a, b) => length(a.claim.span) - length(b.claim.span));
}

/** Findings that share something with the span. */
export const findingsIn = (analysis: Analysis, span: Span): Finding[] =>
  analysis.findings.filter((finding) => meets(finding.span, span));
