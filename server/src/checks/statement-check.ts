/** Makes a check out of the contradicted statements of one kind. */
import type { Statement } from '../claims/model.ts';
import type { Span } from '../notes/model.ts';
import type { CheckDefinition } from './definition.ts';
import type { Finding, Fix } from './model.ts';

type Words = Pick<CheckDefinition, 'id' | 'title' | 'docs'>;

export function statementCheck(words: Words, covers: (statement: Statement) => boolean): CheckDefinition {
  return {
    ...words,
    kind: 'contradiction',
    severity: 'warning',
    run: ({ statements }) =>
      onePlace(
        statements
          .filter((s) => s.verdict === 'contradicted' && covers(s))
          .map((s) => toFinding(words.id, s)),
      ),
  };
}

function toFinding(check: string, statement: Statement): Finding {
  const { claim, says, holds, source, sources, derivation } = statement;
  return {
    check,
    kind: 'contradiction',
    severity: 'warning',
    span: claim.focus,
    says,
    holds,
    source,
    sources,
    fixes: fixesOf(statement),
    related: [],
    derivation,
  };
}

function fixesOf({ repair }: Statement): Fix[] {
  return repair ? [{ title: repair.title, safety: 'safe', edits: [repair.edit] }] : [];
}

/** Several statements at one word (a key against each other option) are one finding. */
function onePlace(findings: readonly Finding[]): Finding[] {
  const seen = new Set<string>();
  return findings.filter(({ span }) => {
    const key = place(span);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

const place = (span: Span) => `${span.start}:${span.end}`;
