/**
 * Literate fixtures: Markdown files that a clinician can read. A section is a heading, a block quote with the words of a
 * note, and a list of what is read there: "- `18 G`: 18 G, needle". Everything read must be listed, in order.
 */

import { findMentions } from '../../server/src/mentions/index.ts';
import type { Mention } from '../../server/src/mentions/model.ts';
import { readNote } from '../../server/src/notes/index.ts';
import { fullLabel } from '../../server/src/sizes/format.ts';

export interface Case {
  readonly title: string;
  readonly note: string;
  readonly expected: readonly string[];
}

/** Sections of a fixture file that hold a quote. */
export function casesOf(markdown: string): readonly Case[] {
  return markdown
    .split(/^## /m)
    .slice(1)
    .map((section) => {
      const lines = section.split('\n');
      return {
        title: lines[0]!.trim(),
        note: lines
          .filter((line) => line.startsWith('>'))
          .map((line) => line.replace(/^> ?/, ''))
          .join('\n'),
        expected: lines.filter((line) => line.startsWith('- `')).map((line) => line.slice(2)),
      };
    });
}

/** One mention as a fixture says it. */
export function told(mention: Mention): string {
  const read =
    mention.kind === 'ambiguous'
      ? `a question: ${mention.readings.map(({ words }) => words).join(', or ')}`
      : mention.sizes.map(fullLabel).join(' to ');
  const facts = [
    mention.device,
    mention.material?.replace(/-/g, ' '),
    mention.length ? 'a length' : undefined,
    mention.bound?.replace('-', ' '),
    mention.approximate ? 'about' : undefined,
  ];
  return [`\`${mention.text.replace(/\s+/g, ' ')}\`: ${read}`, ...facts.filter(Boolean)].join(', ');
}

export const readIn = (note: string): readonly string[] => findMentions(readNote(note)).map(told);
