/** Every fixture under tests/notations reads as it says. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { NOTATIONS } from '../../grammars/notations/index.ts';
import { casesOf, readIn } from './fixtures.ts';

const FOLDER = new URL('../notations/', import.meta.url);
const files = readdirSync(FOLDER).filter((name) => name.endsWith('.md'));

test('every notation has a fixture', () => {
  expect(NOTATIONS.map(({ id }) => `${id}.md`).filter((name) => !files.includes(name))).toEqual([]);
});

describe.each(files)('%s', (name) => {
  const cases = casesOf(readFileSync(new URL(name, FOLDER), 'utf8'));
  test('holds cases', () => expect(cases.length).toBeGreaterThan(0));
  test.each(cases.map((one) => [one.title, one] as const))('%s', (_, { note, expected }) => {
    expect(note).not.toBe('');
    expect(readIn(note)).toEqual(expected);
  });
});
