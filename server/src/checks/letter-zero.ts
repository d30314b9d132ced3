/** The letter O written for the figure zero in a USP size. */
import type { Mention } from '../mentions/model.ts';
import type { CheckDefinition } from './definition.ts';
import type { Finding } from './model.ts';

const ID = 'letter-for-zero';
const LETTER = /^(\d{1,2}\s?[-‐‑‒–—−/]\s?)[oO]$/;

export const letterZero: CheckDefinition = {
  id: ID,
  kind: 'style',
  severity: 'hint',
  title: 'The letter O stands for a zero',
  docs: '“4-O” is written with the letter O. A search for 4-0 will not find it, and a screen reader says a letter.',
  run: ({ mentions }) =>
    mentions
      .filter((mention) => mention.sizes[0]?.system === 'usp' && LETTER.test(mention.text))
      .map(toFinding),
};

function toFinding(mention: Mention): Finding {
  const text = mention.text.replace(LETTER, '$10');
  return {
    check: ID,
    kind: 'style',
    severity: 'hint',
    span: mention.source,
    says: `“${mention.text}” is written with the letter O.`,
    holds: `Write ${text} with the figure zero.`,
    source: 'common practice, no source',
    sources: [],
    fixes:
      mention.text.length === mention.source.end - mention.source.start
        ? [{ title: `Write ${text}`, safety: 'safe', edits: [{ span: mention.source, text }] }]
        : [],
    related: [],
    derivation: [],
  };
}
