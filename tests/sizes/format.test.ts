/** Reading and writing the value of a size. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fullLabel, label, parseValue, writeValue } from '../../server/src/sizes/index.ts';
import { anySize, SYSTEMS } from './support.ts';

describe('USP as written', () => {
  // Book of Style for Medical Transcription, 3rd ed., p. 251; the spellings of the trade.
  it.each([
    ['2-0', -1],
    ['2/0', -1],
    ['00', -1],
    ['000', -2],
    ['2–0', -1],
    ['2-O', -1],
    ['0', 0],
    ['1-0', 0],
    ['1/0', 0],
    ['O', 0],
    ['1', 1],
    ['#2', 2],
    ['#3-0', -2],
    ['12-0', -11],
    ['10', 10],
  ])('%s has rank %i', (text, rank) => {
    expect(parseValue('usp', text)).toEqual({ system: 'usp', value: rank });
  });
  it.each(['', '-0', 'x', '2-1', '2 0 0', '123', '0000000000000', '1.5', '--0'])('%j is none', (text) => {
    expect(parseValue('usp', text)).toBeUndefined();
  });
  it('keeps a size that does not exist, so that it can be said not to', () => {
    expect(parseValue('usp', '2.5-0')?.value).toBe(-1.5);
    expect(writeValue({ system: 'usp', value: -1.5 })).toBe('2.5-0');
  });
});

describe('numbers as written', () => {
  it.each([
    ['4.7', 4.7],
    ['4,7', 4.7],
    ['.035', 0.035],
    ['18', 18],
    ['5/8', 0.625],
    ['1 1/2', 1.5],
  ])('%s', (text, value) => {
    expect(parseValue('millimetre', text)?.value).toBe(value);
  });
  it.each(['', '.', '1.', '-1', '1e3', '0x10', '1/0', '1.2.3', 'NaN', 'Infinity', '18 G'])(
    '%j is none',
    (text) => {
      expect(parseValue('french', text)).toBeUndefined();
    },
  );
});

it.each([
  ['usp', '2-0', '2-0', 'USP 2-0'],
  ['usp', '1-0', '0', 'USP 0'],
  ['ep-metric', '3', 'metric 3', 'metric 3'],
  ['needle-gauge', '18', '18 G', '18 G'],
  ['wire-gauge', '20', '20-gauge wire', '20-gauge wire'],
  ['french', '14', '14 Fr', '14 Fr'],
  ['millimetre', '4.70', '4.7 mm', '4.7 mm'],
  ['inch', '0.5', '0.5 in', '0.5 in'],
  ['wire-inch', '.035', '0.035 in', '0.035 in'],
  ['tube-id', '7.5', '7.5 mm ID', '7.5 mm ID'],
  ['hegar', '8', 'Hegar 8', 'Hegar 8'],
] as const)('%s %s is labelled %s', (system, text, short, full) => {
  const size = parseValue(system, text)!;
  expect(label(size)).toBe(short);
  expect(fullLabel(size)).toBe(full);
});

it('reads back what it writes', () => {
  fc.assert(
    fc.property(anySize, (size) => {
      expect(parseValue(size.system, writeValue(size))).toEqual(size);
    }),
    { numRuns: 1000 },
  );
});

it('takes any text without throwing', () => {
  fc.assert(
    fc.property(fc.constantFrom(...SYSTEMS), fc.string({ unit: 'binary' }), (system, text) => {
      const size = parseValue(system, text);
      if (size) expect(Number.isFinite(size.value)).toBe(true);
    }),
  );
});
