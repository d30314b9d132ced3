/** The colour grammar is fresh, and colours what the recogniser sees. */
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { IGrammar } from 'vscode-textmate';
import { NOTATIONS } from '../../grammars/notations/index.ts';
import { scan } from '../../server/src/mentions/scan.ts';
import {
  coloured,
  GRAMMAR_FILE,
  grammar,
  NOTATIONS_FILE,
  notationsPage,
} from '../../server/tools/grammar.ts';
import { colouredSizes, markdownGrammar } from './tokens.ts';

let markdown: IGrammar;
beforeAll(async () => {
  markdown = await markdownGrammar();
});

test('the files are as generated (npx tsx server/tools/grammar.ts)', () => {
  expect(readFileSync(GRAMMAR_FILE, 'utf8')).toBe(grammar());
  expect(readFileSync(NOTATIONS_FILE, 'utf8')).toBe(notationsPage());
});

/** The first size the recogniser takes in a text: its notation and the whole match. */
function recognised(text: string): { id: string; text: string } | undefined {
  const [first] = scan(text);
  return first && { id: first.notation.id, text: text.slice(first.match.start, first.match.end) };
}

const EXAMPLES = NOTATIONS.filter(coloured).flatMap(({ id, examples }) =>
  examples.map((example) => [id, example] as const),
);

describe('colours as the recogniser reads', () => {
  test.each(EXAMPLES)('%s: %s', (_, example) => {
    const line = `Take ${example}; then wait.`;
    expect(colouredSizes(markdown, line)[0]).toEqual(recognised(line));
  });

  test.each([
    ['heading', '## The 18 G cannula', '18 G'],
    ['list', '- a 14 Fr catheter', '14 Fr'],
    ['quote', '> 3-0 silk', '3-0'],
    ['cell', '| tube | size |\n|---|---|\n| Foley | 16 Fr |', '16 Fr'],
    ['strong', 'a **20 G** needle', '20 G'],
  ])('in a %s', (_, text, size) => {
    expect(colouredSizes(markdown, text).map((one) => one.text)).toEqual([size]);
  });

  test.each([
    ['fence', '```\n18 G\n```'],
    ['code', 'type `18 G` here'],
    ['comment', '<!-- 18 G -->'],
  ])('nothing in a %s', (_, text) => {
    expect(colouredSizes(markdown, text)).toEqual([]);
  });
});
