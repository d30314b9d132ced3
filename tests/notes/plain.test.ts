/** Plain stretches are read without the parser; what comes out is what the parser says. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPlain } from '../../server/src/notes/read-plain.ts';
import { readStretch } from '../../server/src/notes/stretch.ts';
import { makeNote } from '../../server/tools/bench-notes.ts';
import { markdown, runs } from './markdown-pieces.ts';

const PIECES = [
  'an 18 G', '3-0', 'nylon', '1.5 mm', '(', ')', ' ', ' ', ' ', '\n', '\n', '\n\n', '\n- ', '\n\n- ', '\n* ', '\n+ ', '\n  ',
  '\n\n  ', '\n   ', ' \n', ' \n', '\n1. ', '\n2) ', '\n10. ', '\n\n3. ', '1)', '# ', '## ', '\n# ', '\n\n### ', '#', '*', '**', '*a*',
  '**strong**', '**Note:** ', '_so_', '__', '_', '-', '=', ':', '[a](b)', '[a b](https://example.org/x_y)', '[', ']', '](', '!',
  '&', '& ', '"', '’', 'é', '—', '.', ',', '?', 'www.', 'http:', '://', 'x', '😀', '\u2028', '\u00a0', '[x] ', '+', '>', '%', '^', ']:',
]; // biome-ignore format: a table

const nearlyPlain = fc.array(fc.constantFrom(...PIECES), { maxLength: 24 }).map((pieces) => pieces.join(''));

function expectSame(text: string): void {
  const plain = readPlain(text);
  if (plain) expect(plain, JSON.stringify(text)).toEqual(readStretch(text, false, []));
}

describe('a plain stretch', () => {
  it('reads as the parser reads it, whatever stands in it', () => {
    fc.assert(fc.property(nearlyPlain, expectSame), { numRuns: runs(3000), seed: 3 });
    fc.assert(fc.property(markdown(12), expectSame), { numRuns: runs(500), seed: 4 });
  });

  it.each([
    'A paragraph.\nIts second line.\n',
    '# A heading\nand prose\n## Another\n',
    'Lead:\n- one\n- two\n  goes on\nand lazily\n\n- three\n',
    '1. a\n2. b\n\n3) c\n- d\n+ e\n\n* f\n\nafter\n',
    'A **strong** word, *so* and (_so_): [a link](https://example.org/a?b=c#d).',
    '1.5 mm is not a list\n2.5 mm neither\n',
    '# A heading \nand prose \n- an item \n  goes on \nlazily *so* \n\nThe end ',
  ])('is read here: %j', (text) => {
    expect(readPlain(text)).toBeDefined();
    expectSame(text);
  });

  it.each([
    'A break  \nof a line',
    'A blank line\n \nof one blank',
    'See [www.example.org](x) now.',
    'A **https://example.org** word.',
    'An ![alt](x).',
  ])('is left to the parser: %j', (text) => {
    expect(readPlain(text)).toBeUndefined();
  });

  it('is what most of a note is made of', () => {
    const stretches = makeNote(1, 20_000, 0.5).split(/\n\n(?![-\n])/);
    const plain = stretches.filter((text) => readPlain(text) !== undefined);
    expect(plain.length / stretches.length).toBeGreaterThan(0.95);
    for (const text of stretches) expectSame(text);
  });
});
