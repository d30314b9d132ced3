/** Devices of one name with different sizes in different notes. Invented notes: the rule is about agreement, not about any value. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { namedSizes } from '../../server/src/claims/index.ts';
import { differing, type NamedIn } from '../../server/src/course/index.ts';
import { findMentions } from '../../server/src/mentions/index.ts';
import { readNote } from '../../server/src/notes/index.ts';

const names = (text: string) => {
  const note = readNote(text);
  return namedSizes(note, findMentions(note));
};
const course = (notes: Record<string, string>): NamedIn<number>[] =>
  Object.entries(notes).flatMap(([note, text]) =>
    names(text).map((named, where) => ({ note, named, where })),
  );

describe('names of devices', () => {
  test.each([
    ['The triple-lumen line is 7 Fr.', 'triple-lumen line'],
    ['Every dialysis catheter is a 12 Fr.', 'dialysis catheter'],
    ['| Line | Size |\n|--|--|\n| Triple-lumen line | 9 Fr |', 'triple-lumen line'],
  ])('%s', (text, name) => {
    expect(names(text).map((one) => one.name)).toEqual([name]);
  });

  test.each([
    'A catheter is 14 Fr.',
    'The triple-lumen line is 7 Fr or 9 Fr.',
    'If the triple-lumen line is 7 Fr, open the other box.',
    'Is the triple-lumen line 7 Fr?',
    'The triple-lumen line is 5 Fr for children.',
    'Students say the triple-lumen line is 4 Fr.',
    'The triple-lumen line is at least 7 Fr.',
  ])('leaves open: %s', (text) => {
    expect(names(text)).toEqual([]);
  });
});

describe('notes set against each other', () => {
  test('both places are told, and the other note is named', () => {
    const found = differing(
      course({ 'a.md': 'The triple-lumen line is 7 Fr.', 'b.md': 'The triple-lumen line is 9 Fr.' }),
    );
    expect(found.map(({ at, says }) => `${at.note}: ${says}`)).toEqual([
      'a.md: Gives “triple-lumen line” as 7 Fr; elsewhere it is 9 Fr in b.md.',
      'b.md: Gives “triple-lumen line” as 9 Fr; elsewhere it is 7 Fr in a.md.',
    ]);
  });

  test('a size that both notes know is no difference', () => {
    expect(
      differing(
        course({
          'a.md': 'The triple-lumen line is 7 Fr.',
          'b.md': 'The triple-lumen line is 7 Fr.\n\nThe triple-lumen line is 9 Fr.',
        }),
      ),
    ).toEqual([]);
  });

  test('the order of the notes does not matter', () => {
    const size = fc.record({ system: fc.constant('french' as const), value: fc.integer({ min: 5, max: 8 }) });
    const named = fc.record({
      note: fc.constantFrom('a', 'b', 'c'),
      where: fc.constant(0),
      named: fc.record({ name: fc.constantFrom('x line', 'y line'), size }),
    });
    const said = (all: readonly NamedIn<number>[]) =>
      differing(all)
        .map(({ at }) => `${at.note} ${at.named.name} ${at.named.size.value}`)
        .sort();
    fc.assert(
      fc.property(fc.array(named, { maxLength: 12 }), (all) => {
        expect(said([...all].reverse())).toEqual(said(all));
      }),
    );
  });
});
