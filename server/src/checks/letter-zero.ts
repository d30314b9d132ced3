/** The letter O written for the figure zero in a USP size. */

import type { Mention } from '../mentions/model.ts';
import { type Locale, quote, say, tell } from '../texts/index.ts';
import type { CheckDefinition } from './definition.ts';
import type { Finding } from './model.ts';
import { STYLE, LETTER as WORDS } from './texts/findings.ts';

const ID = 'letter-for-zero';
const NO_SOURCE = 'common practice, no source';
const LETTER = /^(\d{1,2}\s?[-‐‑‒–—−/]\s?)[oO]$/;

export const letterZero: CheckDefinition = {
  id: ID,
  kind: 'style',
  severity: 'hint',
  title: 'The letter O stands for a zero',
  docs: '“4-O” is written with the letter O. A search for 4-0 will not find it, and a screen reader says a letter.',
  run: ({ mentions, locale }) =>
    mentions.filter((mention) => LETTER.test(mention.text)).map((mention) => toFinding(mention, locale)),
};

function toFinding(mention: Mention, locale?: Locale): Finding {
  const text = mention.text.replace(LETTER, '$10');
  return {
    check: ID,
    kind: 'style',
    severity: 'hint',
    span: mention.source,
    says: say(locale, WORDS.says, { text: quote(mention.text) }),
    holds: say(locale, WORDS.holds, { text: quote(text) }),
    source: tell(NO_SOURCE, locale),
    sources: [],
    fixes:
      mention.text.length === mention.source.end - mention.source.start
        ? [
            {
              title: say(locale, STYLE.write, { text: quote(text) }),
              safety: 'safe',
              edits: [{ span: mention.source, text }],
            },
          ]
        : [],
    related: [],
    derivation: [],
  };
}
