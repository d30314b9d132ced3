/** Which thread a size is written on. */
import { expect, test } from 'vitest';
import { findMentions } from '../../server/src/mentions/index.ts';
import { readNote } from '../../server/src/notes/index.ts';

const materials = (text: string) =>
  findMentions(readNote(text)).map(({ text, material }) => [text, material]);

test('a material holds for the sizes around it', () => {
  expect(materials('A 3-0 chromic gut is metric 3.')).toEqual([
    ['3-0', 'chromic-gut'],
    ['metric 3', 'chromic-gut'],
  ]);
});

test('a synthetic thread is not of the material named before', () => {
  expect(
    materials('A 3-0 chromic gut is metric 3, while a 3-0 synthetic thread is metric 2.').slice(2),
  ).toEqual([
    ['3-0', undefined],
    ['metric 2', undefined],
  ]);
});
