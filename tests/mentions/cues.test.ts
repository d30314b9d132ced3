/** A cue may never keep a notation from a text it would match. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { NOTATIONS } from '../../grammars/notations/index.ts';
import { CUES, hasDigit, needsDigit } from '../../server/src/mentions/cues.ts';

/** What a text is asked before the notation is tried on it. */
const seen = (id: string, text: string): boolean =>
  CUES[id]!.test(text) && (!needsDigit(id) || hasDigit(text));

const known = NOTATIONS.filter(({ id }) => CUES[id] !== undefined);

test('every cue belongs to a notation', () => {
  expect(Object.keys(CUES).filter((id) => !NOTATIONS.some((notation) => notation.id === id))).toEqual([]);
});

test.each(known.map((notation) => [notation.id, notation] as const))(
  '%s: its examples pass the cue',
  (id, notation) => {
    for (const example of notation.examples)
      for (const text of [example, example.toUpperCase(), `x ${example}, y`]) {
        const matches = new RegExp(notation.pattern, notation.anyCase ? 'i' : '').test(text);
        expect([text, !matches || seen(id, text)]).toEqual([text, true]);
      }
  },
);

const pieces = fc.constantFrom(
  ...NOTATIONS.flatMap((notation) => notation.examples),
  ...'0123456789'.split(''),
  ...[
    '-',
    '–',
    '/',
    ' ',
    '.',
    ',',
    '#',
    '½',
    '"',
    '″',
    'G',
    'g',
    'Fr',
    'f',
    'Ch',
    'ga',
    'gauge',
    'French',
    'mm',
    'cm',
    'µm',
    'in',
    'inch',
  ],
  ...[
    'ID',
    'i.d.',
    'metric',
    'EP',
    'm.',
    'suture',
    'No.',
    'number',
    'size',
    'two',
    'three',
    'oh',
    'zero',
    'o',
    'thou',
    'thousandths',
    'twenty',
    'nr.',
    'by',
    'wire',
    '1/8',
    '24/16',
    '2.4',
    'outside',
    'point',
    'USP',
    '00',
    'or',
    'to',
  ],
);

test('whatever a notation matches, its cue has seen', () => {
  fc.assert(
    fc.property(fc.array(pieces, { maxLength: 8 }), fc.constantFrom('', ' '), (parts, glue) => {
      const text = parts.join(glue);
      for (const { id, pattern, anyCase } of known)
        if (new RegExp(pattern, anyCase ? 'i' : '').test(text))
          expect([id, text, seen(id, text)]).toEqual([id, text, true]);
    }),
    { numRuns: 1500 },
  );
});
