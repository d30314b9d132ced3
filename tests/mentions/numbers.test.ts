/** Numbers in digits, fractions and words: what they are worth and with how many decimals they are written. */
import { describe, expect, test } from 'vitest';
import { NOTATIONS } from '../../grammars/notations/index.ts';
import { readNumber, wordValue } from '../../server/src/mentions/words/numbers.ts';

describe('a number', () => {
  test.each([
    ['18', 18, 0, false],
    ['0,85', 0.85, 2, false],
    ['.035', 0.035, 3, false],
    ['1½', 1.5, 1, false],
    ['1 1/2', 1.5, 1, false],
    ['4/2', 2, 0, false],
    [' 18 ', 18, 0, false],
    ['5.', undefined, 0, false],
    ['½', 0.5, 1, false],
    ['12½', 12.5, 1, false],
    ['2 ¾', 2.75, 2, false],
    ['2-¾', 2.75, 2, false],
    ['11/16', 0.6875, 4, false],
    ['3/32', 0.09375, 5, false],
    ['10 1/2', 10.5, 1, false],
    ['1-1/2', 1.5, 1, false],
    ['1 and 1/2', 1.5, 1, false],
    ['5/8', 0.625, 3, false],
    ['twenty-two', 22, 0, true],
    ['Seven', 7, 0, true],
    ['one and a quarter', 1.25, 2, true],
    ['three point five', 3.5, 1, true],
    ['zero point oh five', 0.05, 2, true],
    ['one point two five', 1.25, 2, true],
    ['zero point twenty-five', 0.25, 2, true],
    ['zero point twenty', 0.2, 2, true],
  ])('%s', (text, value, decimals, spoken) => {
    expect(readNumber(text)).toEqual(value === undefined ? undefined : { value, decimals, spoken });
  });

  test.each([
    '',
    ' ',
    'x',
    '1/0',
    '1-0',
    'one point x',
    'x point one',
    'many and a half',
    'twenty twelve',
    'twenty zero',
    'twenty ten',
    'x½',
    '1x½',
    '½x',
    'x 1/2',
    '1/2x',
    '1xand 1/2',
    '1 andx1/2',
    'one and a half x',
    '? one and a half',
    'one point two x',
    '? one point two',
    'one point',
    'one point 5',
  ])('%j is none', (text) => {
    expect(readNumber(text)).toBeUndefined();
  });

  test.each([
    ['sixty-nine', 69],
    ['nineteen', 19],
    ['zero', 0],
    ['two three', undefined],
    ['twenty two three', undefined],
    ['twenty twelve', undefined],
    ['twenty xx', undefined],
  ])('%s in words', (text, value) => {
    expect(wordValue(text)).toBe(value);
  });
});

/** Values, with the decimals that the writing claims, of what a notation matches in a text. */
function read(id: string, text: string) {
  const notation = NOTATIONS.find((one) => one.id === id)!;
  const [match] = new RegExp(notation.pattern, notation.anyCase ? 'i' : '').exec(text) ?? [];
  return match === undefined
    ? undefined
    : notation.read(match).map(({ values, decimals }) => [...values, decimals]);
}

describe('a notation', () => {
  test.each([
    ['millimetres-spoken', 'half a millimetre across', [[0.5, 1]]],
    ['millimetres-spoken', 'a third of a millimetre wide', [[0.333333, 1]]],
    ['millimetres-spoken', 'nine tenths of a millimetre', [[0.9, 1]]],
    ['millimetres-spoken', 'three hundredths of a millimetre', [[0.03, 2]]],
    ['millimetres-spoken', 'a millimetre and a half', [[1.5, 1]]],
    ['millimetres-spoken', 'one millimeter and a quarter', [[1.25, 2]]],
    ['millimetres-spoken', 'two and a half millimetres', [[2.5, 1]]],
    ['millimetres-spoken', 'point nine millimetres', [[0.9, 1]]],
    ['millimetres-spoken', 'point twenty-five millimetres', [[0.25, 2]]],
    ['millimetres-spoken', 'one point oh five millimetres', [[1.05, 2]]],
    ['millimetres-spoken', 'half a millimetre', undefined],
    ['micrometres', '20-29 µm', [[0.02, 0.029, 3]]],
    ['centimetres', '3.8 cm', [[38, 0]]],
    ['wire-short', 'an 18 wire', [[0.018, 3]]],
    ['wire-short', 'a thirty-five guidewire', [[0.035, 3]]],
    ['wire-spoken', 'oh-three-five', [[0.035, 3]]],
    ['wire-spoken', 'point oh thirty five', [[0.035, 3]]],
    ['wire-spoken', 'oh eighteen', [[0.018, 3]]],
    ['wire-spoken', 'oh-one-zero', [[0.01, 3]]],
    ['wire-spoken', 'thirty-five thousandths of an inch', [[0.035, 3]]],
    ['wire-spoken', '35 thou', [[0.035, 3]]],
    ['wire-spoken', 'two thou', []],
    ['inches', '5/8 in', [[0.625, 3]]],
    ['inches', '1/0 in', []],
    ['inches-spoken', 'inch and three quarters', undefined],
    ['inches-spoken', 'inch and a three quarters', [[1.75, 2]]],
    ['inches-spoken', 'half an inch', [[0.5, 1]]],
    ['inches-spoken', 'a quarter inch', [[0.25, 2]]],
    ['inches-spoken', 'five eighths of an inch', [[0.625, 3]]],
    ['inches-spoken', 'two inches', [[2, 0]]],
    ['inches-spoken', 'two and a three quarters inch', []],
    ['usp-dashed', '9/10-0', [[-9, 0]]],
    ['usp-dashed', '2.5-0', [[-1.5, 1]]],
    ['usp-spoken', '3-oh', [[-2, 0]]],
    ['usp-spoken', 'double nought', [[-1, 0]]],
    ['usp-named', 'USP 1, 2', [[1, 0]]],
    ['french-after', '3, 14 Fr', [[14, 0]]],
    [
      'french-after',
      '4-5-7 French',
      [
        [4, 0],
        [5, 0],
        [7, 0],
      ],
    ],
    ['french-after', '8 to 12 Fr', [[8, 12, 0]]],
  ])('%s reads %j', (id, text, expected) => {
    expect(read(id, text)).toEqual(expected);
  });
});
