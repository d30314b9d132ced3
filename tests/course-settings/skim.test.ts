/** Skimming may only skip notes in which nothing would be found. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NOTATIONS } from '../../grammars/notations/index.ts';
import { analyse, analyseWhole, DEFAULT_SETTINGS, maySpeakOfSizes } from '../../server/src/course/index.ts';
import { makeNote } from '../../server/tools/bench-notes.ts';

function expectSame(text: string): void {
  if (maySpeakOfSizes(text)) return;
  const { mentions, statements, findings } = analyseWhole(text);
  expect([
    text,
    mentions.map((one) => one.text),
    statements.map((one) => one.says),
    findings.map((one) => one.says),
  ]).toEqual([text, [], [], []]);
}

const COURSE = join(import.meta.dirname, '../course');
const notes = readdirSync(COURSE).filter((name) => /\.(md|vtt)$/.test(name));
const sentences = notes.flatMap((name) => readFileSync(join(COURSE, name), 'utf8').split(/\n+|(?<=[.!?]) /));

describe('skimming', () => {
  test('every sentence, line and cell of the demo course', () => {
    for (const text of sentences) for (const part of [text, ...text.split('|')]) expectSame(part);
  });

  test('every sentence of the sentence bank', () => {
    const bank = join(import.meta.dirname, '../claims/bank');
    for (const name of readdirSync(bank))
      for (const line of readFileSync(join(bank, name), 'utf8').split('\n'))
        for (const text of [line, ...line.split('|')]) expectSame(text);
  });

  test('every example of every notation is seen', () => {
    for (const { examples } of NOTATIONS)
      for (const example of examples)
        for (const text of [example, `a ${example}.`, `| ${example} |`]) expectSame(text);
  });

  test('Markdown inside sizes and words', () => {
    for (const text of [
      '**18** G needle',
      '18&nbsp;G',
      '18&#160;G',
      '&#49;8 G',
      '[18](x) G',
      '[18][a] G\n\n[a]: x',
      '18\n> G',
      '> 18\n> G',
      '18 *G*',
      '1\\8 G',
      'ne**ed**le gauge',
      '14\u200bFr',
      '18<!-- x --> G',
      '*2*-0',
      '0*0*0',
      '½ in',
      '|Length (in)|\n|-|\n|1.5|',
      '| F |\n|-|\n| 16 |',
    ])
      expectSame(text);
  });

  test('words of the trade in any order, with signs and breaks between them', () => {
    const words = fc.constantFrom(
      ...sentences.flatMap((text) => text.split(/\s+/)).filter((word, i, all) => all.indexOf(word) === i),
      ...[
        '2-0',
        '18',
        'G',
        'Fr',
        'F',
        'in',
        '00',
        '#2',
        'size',
        '7',
        'two',
        'oh',
        'zero',
        '½',
        '"',
        'stay',
        'tie',
        'port',
        'IV',
        'vein',
        'e.g.',
      ],
    );
    const glue = fc.constantFrom(' ', ' ', ' ', '\n', '\n> ', ' **', '** ', '&nbsp;', '-', ' | ', '\n\n');
    fc.assert(
      fc.property(fc.array(fc.tuple(words, glue), { minLength: 1, maxLength: 9 }), (parts) => {
        expectSame(parts.flat().join(''));
      }),
      { numRuns: 3000 },
    );
  });

  test('local names of a course are words of the trade', () => {
    const context = { materials: { zipline: 'polypropylene' } };
    expect(maySpeakOfSizes('Zipline is braided.')).toBe(false);
    expect(maySpeakOfSizes('Zipline is braided.', context)).toBe(true);
    expect(analyse('Zipline is braided.', { ...DEFAULT_SETTINGS, context }).statements.length).toBe(
      analyseWhole('Zipline is braided.', { ...DEFAULT_SETTINGS, context }).statements.length,
    );
  });

  test.each(['№ 5', '5-way', '留置針', 'игла'])(
    'a local name that is no Latin word, %s, is never passed over',
    (name) => {
      const context = { devices: { [name]: 'cannula' } } as const;
      const settings = { ...DEFAULT_SETTINGS, context };
      const text = `We reach for 使${name} first, the 18 or the 20.`;
      expect(analyse(text, settings)).toEqual(analyseWhole(text, settings));
      expect(maySpeakOfSizes('Listen first, then ask.', context)).toBe(true);
    },
  );

  test('with a device taken for granted any number counts', () => {
    expect(maySpeakOfSizes('The 18 is green.')).toBe(false);
    expect(maySpeakOfSizes('The 18 is green.', { device: 'cannula' })).toBe(true);
    expect(maySpeakOfSizes('Wash your hands.', { device: 'cannula' })).toBe(false);
  });

  test('an o is a zero after a number in words, and no cry', () => {
    expect(maySpeakOfSizes('Tie it with three o.')).toBe(true);
    expect(maySpeakOfSizes('O dear, that hurts.')).toBe(false);
    expect(maySpeakOfSizes('See e.g. the second card.')).toBe(false);
  });

  test('notes about other things are skipped', () => {
    for (let i = 0; i < 50; i++) expect(maySpeakOfSizes(makeNote(i, 3000, 0))).toBe(false);
    for (let i = 0; i < 50; i++) expect(maySpeakOfSizes(makeNote(i, 3000, 0.4))).toBe(true);
  });
});
