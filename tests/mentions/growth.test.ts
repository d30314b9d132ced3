/** Time grows with the length of a text, whatever is in it; nothing throws; spans lie inside. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NOTATIONS } from '../../grammars/notations/index.ts';
import { findMentions } from '../../server/src/mentions/index.ts';
import { readNote } from '../../server/src/notes/index.ts';

/** Texts that lead a careless pattern or look-around into the thick of it. */
const HOSTILE = [
  '1, ',
  '2-0 ',
  'a 16 ',
  '3-0 silk ',
  '18 G to ',
  '1 1/2 in ',
  'twenty-two ',
  'oh-one-',
  '14F ',
  '18g ',
  'size 7 tube ',
  'the 22 or ',
  '4.7 mm ',
  '(("“',
  '0.035 ',
  '12',
  '-0',
  'nine tenths of a ',
  'needle silk ',
  'metric 3, ',
  '½',
  'G',
  '- 16\n',
  '\n\n18 G\n\n',
];

/** Best of three, in milliseconds. */
function time(piece: string, length: number): number {
  const note = readNote(piece.repeat(Math.ceil(length / piece.length)));
  const runs = [1, 2, 3].map(() => {
    const start = performance.now();
    findMentions(note);
    return performance.now() - start;
  });
  return Math.min(...runs);
}

describe('eight times the text takes far less than sixty-four times the time', () => {
  test.each(HOSTILE)('%j', { timeout: 60_000, retry: 2 }, (piece) => {
    time(piece, 2000);
    const short = Math.max(time(piece, 4000), 4);
    expect(time(piece, 32_000) / short).toBeLessThan(24);
  });
});

const fragment = fc.oneof(
  fc.constantFrom(...NOTATIONS.flatMap(({ examples, counterExamples }) => [...examples, ...counterExamples])),
  fc.constantFrom(
    'needle',
    'silk',
    'catheter',
    'tube',
    'the',
    'a',
    ', ',
    ' or ',
    '\n',
    '\n\n- ',
    '| ',
    '# ',
    '`',
    '&amp;',
    '(',
    '"',
  ),
  fc.string({ unit: 'binary', maxLength: 6 }),
);

test('never throws, and spans lie inside their passage, in order and apart', () => {
  fc.assert(
    fc.property(fc.array(fragment, { maxLength: 30 }), (parts) => {
      const note = readNote(parts.join(' '));
      let last = { passage: -1, end: 0 };
      for (const { passage, span, text, source, kind, sizes, readings } of findMentions(note)) {
        const whole = note.passages[passage]!.text;
        expect(text).toBe(whole.slice(span.start, span.end));
        expect(span.end).toBeGreaterThan(span.start);
        expect(source.end).toBeLessThanOrEqual(note.text.length);
        if (passage === last.passage) expect(span.start).toBeGreaterThanOrEqual(last.end);
        else expect(passage).toBeGreaterThan(last.passage);
        expect(sizes.length).toBe({ size: 1, range: 2, ambiguous: 0 }[kind]);
        if (kind === 'ambiguous') expect(readings.length).toBeGreaterThan(0);
        last = { passage, end: span.end };
      }
    }),
    { numRuns: 300 },
  );
});
