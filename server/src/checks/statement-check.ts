/** Makes a check out of the contradicted statements of one kind. */

import type { Statement } from '../claims/model.ts';
import type { Note, Span } from '../notes/model.ts';
import { finds } from '../notes/patterns.ts';
import type { CheckDefinition } from './definition.ts';
import type { Finding, Fix } from './model.ts';

type Words = Pick<CheckDefinition, 'id' | 'title' | 'docs'>;

export function statementCheck(words: Words, covers: (statement: Statement) => boolean): CheckDefinition {
  return {
    ...words,
    kind: 'contradiction',
    severity: 'warning',
    run: ({ note, statements }) =>
      onePlace(
        statements
          .filter((s) => s.verdict === 'contradicted' && covers(s))
          .map((s) => toFinding(words.id, s, note)),
      ),
  };
}

function toFinding(check: string, statement: Statement, note: Note): Finding {
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
    fixes: fixesOf(statement, note),
    related: [],
    derivation,
  };
}

function fixesOf({ claim, repair }: Statement, note: Note): Fix[] {
  if (!repair) return [];
  const safety = claim.kind === 'comparison' && acts(sentence(note, claim.span)) ? 'choice' : 'safe';
  return [{ title: repair.title, safety, edits: [repair.edit] }];
}

const sentence = (note: Note, { start, end }: Span): string => note.text.slice(start, end);

/**
 * Somebody is told what to do, or why: then a word turned round would leave the advice standing on its opposite, and
 * only the author knows whether the word, the sizes or the advice was meant.
 */
const ACTS =
  /\b(?:so|therefore|thus|hence|because|since|why|if|when|unless|needs?|wants?|use|choose|chooses|take|takes|pick|picks|prefer|try|swaps?|changes?|moves?|switch|go|goes|steps?|upsize|downsize|rather|instead)\b/i;
const acts = (text: string): boolean => finds(ACTS, text);

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
