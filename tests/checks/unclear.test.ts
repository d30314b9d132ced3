/** What can be read two ways is said in words, and each fix leaves one way. */
import { describe, expect, it } from 'vitest';
import { analyseWhole } from '../../server/src/course/index.ts';

const NOTES = {
  'a girl or a catheter': 'A 16 Fr Foley drains.\n\nOn the board: "14F, draining well".\n',
  'grams or gauge': 'A 20 G cannula each.\n\nNext time every group collects 18g and a stopcock.\n',
  'a thick thread or zeros': 'Pass me a 2 silk, please.\n',
  'one is size 0 or size 1': 'Pass me a 1 silk, please.\n',
  'a tube by its inside or outside': 'The trolley holds a size 7 tube.\n',
  'no system at all': 'The 18 G needle is blunt, the 14 Fr is short.\n\nSomebody please fetch a 16.\n',
  'three systems': 'The 18 G needle is blunt, the 14 Fr is short.\n\nSomebody please fetch a 4.\n',
} as const;

const unclearIn = (text: string) =>
  analyseWhole(text).findings.filter((finding) => finding.check === 'unclear-size');

describe.each(Object.entries(NOTES))('%s', (_, note) => {
  const readingsIn = () =>
    analyseWhole(note).mentions.find((mention) => mention.kind === 'ambiguous')!.readings;

  it('is one question with a fix for each reading', () => {
    const [[found, ...more], readings] = [unclearIn(note), readingsIn()];
    expect(more).toEqual([]);
    expect(readings.length).toBeGreaterThan(1);
    expect(found!.fixes.map(({ title, safety }) => [title, safety])).toEqual(
      readings.map(({ words, write }) => [`Write “${write}” (${words})`, 'choice']),
    );
  });

  it('names every reading', () => {
    for (const { words } of readingsIn()) expect(unclearIn(note)[0]!.says).toContain(words);
  });

  it('is read as the reading says after each fix', () => {
    for (const [i, { size }] of readingsIn().entries()) {
      const [edit] = unclearIn(note)[0]!.fixes[i]!.edits;
      const { start, end } = edit!.span;
      const mended = note.slice(0, start) + edit!.text + note.slice(end);
      const { mentions } = analyseWhole(mended);
      expect(unclearIn(mended)).toEqual([]);
      const here = mentions.find(({ source }) => source.start === start);
      expect([mended, here?.sizes[0]]).toEqual([mended, size]);
    }
  });
});

it('says two ways and three ways alike', () => {
  const says = (name: keyof typeof NOTES) => unclearIn(NOTES[name])[0]?.says;
  expect(says('a thick thread or zeros')).toBe(
    '“2” can be read as size 2, a thick thread, or as 2 zeros, a thin thread.',
  );
  expect(says('three systems')).toBe(
    '“4” can be read as 4 French, as 4 mm inner diameter, or as 4 USP thread size.',
  );
});

it.each([
  ['~~Pass me a 2 silk, please.~~', 0],
  ['Pass me a ~~2~~ silk, please.', 0],
  ['**Pass me a 2 silk, please.**', 1],
  ['~~Hands first.~~ Pass me a 2 silk, please.', 1],
  ['Pass me a 2 silk, please. ~~Or not.~~', 1],
])('asks nothing about what is struck out, and of it alone: %s', (note, questions) => {
  expect(unclearIn(`${note}\n`)).toHaveLength(questions);
});

it('asks nothing where a number can be one kind of size alone', () => {
  expect(unclearIn('The 18 G needle is blunt, the 14 Fr is short.\n\nSomebody please fetch a 36.\n')).toEqual(
    [],
  );
});

it('is a question for information, which nobody is told to settle in one way', () => {
  const note = NOTES['a thick thread or zeros'];
  expect(unclearIn(note)).toEqual([
    {
      check: 'unclear-size',
      kind: 'ambiguity',
      severity: 'info',
      span: { start: 10, end: 11 },
      says: '“2” can be read as size 2, a thick thread, or as 2 zeros, a thin thread.',
      holds: 'Write out the one you mean.',
      source: 'common practice, no source',
      sources: [],
      fixes: [
        {
          title: 'Write “#2” (size 2, a thick thread)',
          safety: 'choice',
          edits: [{ span: { start: 10, end: 11 }, text: '#2' }],
        },
        {
          title: 'Write “2-0” (2 zeros, a thin thread)',
          safety: 'choice',
          edits: [{ span: { start: 10, end: 11 }, text: '2-0' }],
        },
      ],
      related: [],
      derivation: [{ label: 'read', text: 'bare-thread-number: Pass me a 2 silk, please.' }],
    },
  ]);
});

describe('a number that is only spoken of', () => {
  it.each([
    'Never say "2 silk".',
    'Please do not write “2 silk” on a card.',
    'With a "one silk" make clear whether you mean size 1 or 1-0.',
    'Two threads lie here, 5 and 5-0.\n\nSay the dash: "five-oh" is not "five".',
  ])('is not asked about: %j', (text) => {
    expect(unclearIn(text)).toEqual([]);
  });

  it.each(['Close with "a 2 silk", please.', 'Never pass me a 2 silk.', 'He said "a 2 silk" and left.'])(
    'while one that is used is: %j',
    (text) => {
      expect(unclearIn(text)).toHaveLength(1);
    },
  );
});
