/** A number that a reader could take two ways. */

import type { Mention, Reading } from '../mentions/model.ts';
import type { CheckDefinition } from './definition.ts';
import type { Finding, Fix } from './model.ts';

const ID = 'unclear-size';

export const unclear: CheckDefinition = {
  id: ID,
  kind: 'ambiguity',
  severity: 'info',
  title: 'This can be read two ways',
  docs: 'A reader could take the number two ways: “pass a 2” may mean size 2 or 2-0, “14F” a woman of 14 or a 14 French catheter, “18g” a weight or a gauge, “the next gauge up” a wider needle or a higher number, “a green one” two sizes when neither needle nor cannula is named. The fixes write each reading out; the author chooses.',
  run: ({ mentions }) => mentions.filter((mention) => mention.kind === 'ambiguous').map(toFinding),
};

function toFinding(mention: Mention): Finding {
  const words = mention.readings.map((reading) => reading.words);
  return {
    check: ID,
    kind: 'ambiguity',
    severity: 'info',
    span: mention.source,
    says: `“${mention.text}” can be read as ${either(words)}.`,
    holds: 'Write out the one you mean.',
    source: 'common practice, no source',
    sources: [],
    fixes: mention.readings.map((reading) => fixOf(mention, reading)),
    related: [],
    derivation: mention.evidence.map((seen) => ({ label: 'read', text: `${seen.rule}: ${seen.saw}` })),
  };
}

const fixOf = ({ source }: Mention, { words, write }: Reading): Fix => ({
  title: `Write “${write}” (${words})`,
  safety: 'choice',
  edits: [{ span: source, text: write }],
});

/** "one, as two, or as three". */
const either = (words: readonly string[]): string =>
  `${words.slice(0, -1).join(', as ')}, or as ${words.slice(-1).join('')}`;
