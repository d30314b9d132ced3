/**
 * Whole teaching notes in which everything is true, by authors who did not know the reader: lectures, handouts, talk, quizzes
 * with keys, tables, errata. Mistakes are quoted in them, mended, denied, asked about and offered as choices; nothing in them
 * is to be called wrong.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { analyse } from '../../server/src/course/analyse.ts';

const FOLDER = join(import.meta.dirname, 'true');
const notes = readdirSync(FOLDER).map((name) => [name, readFileSync(join(FOLDER, name), 'utf8')] as const);

test('there are notes to read', () => {
  expect(notes.length).toBeGreaterThan(40);
});

test.each(notes)('%s: nothing is called wrong', (_, text) => {
  const { findings, mentions } = analyse(text);
  expect(mentions.length).toBeGreaterThan(5);
  expect(findings.filter(({ kind }) => kind === 'contradiction').map(({ says }) => says)).toEqual([]);
});
