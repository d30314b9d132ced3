/** Sizes as coloured: read with certainty, doubtful, or part of a statement that does not hold. */
import type { Analysis } from '../course/index.ts';
import type { Span } from '../notes/model.ts';
import { meets } from './places.ts';

export type TokenKind = 'size' | 'unclearSize';

export interface Token {
  readonly span: Span;
  readonly kind: TokenKind;
  /** A finding stands here. */
  readonly contradicted: boolean;
}

export function tokensOf(analysis: Analysis): Token[] {
  const wrong = analysis.findings.filter(
    (finding) => finding.kind === 'contradiction' && finding.deliberate === undefined,
  );
  const sorted = [...analysis.mentions].sort((a, b) => a.source.start - b.source.start);
  let next = 0;
  const starts = [...wrong].sort((a, b) => a.span.start - b.span.start);
  return sorted.map((mention) => {
    while (next < starts.length && starts[next]!.span.end <= mention.source.start) next++;
    const contradicted = next < starts.length && meets(starts[next]!.span, mention.source);
    return {
      span: mention.source,
      kind: mention.kind === 'ambiguous' ? 'unclearSize' : 'size',
      contradicted,
    };
  });
}
