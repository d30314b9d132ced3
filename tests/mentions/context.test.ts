/** What a course settles beforehand decides only what the note leaves open. */
import { describe, expect, test } from 'vitest';
import { findMentions } from '../../server/src/mentions/index.ts';
import type { Context } from '../../server/src/mentions/model.ts';
import { finder } from '../../server/src/mentions/phrases.ts';
import { readNote } from '../../server/src/notes/index.ts';

const devices = (text: string, context: Context) =>
  findMentions(readNote(text), context).map(({ text: words, device }) => [words, device]);

describe('the device of a course', () => {
  test('is that of a size without one, where the size fits it', () => {
    expect(devices('The 18 G is green.', { device: 'cannula' })).toEqual([['18 G', 'cannula']]);
    expect(devices('A 14 Fr is usual.', { device: 'cannula' })).toEqual([['14 Fr', undefined]]);
    expect(devices('The 18 G is green.', {})).toEqual([['18 G', undefined]]);
  });

  test('gives way to the one the note names', () => {
    expect(devices('The 18 G needle is pink.', { device: 'cannula' })).toEqual([['18 G', 'needle']]);
  });
});

describe('languages', () => {
  test('leave sizes without a word as they are', () => {
    const read = (text: string) => findMentions(readNote(text), { languages: ['de'] }).map((one) => one.text);
    expect(read('Naht mit Seide 3-0.')).toEqual(['3-0']);
    expect(read('A needle of 1½″ and 20 Fr.')).toEqual(['1½″', '20 Fr']);
  });
});

describe('words of a table', () => {
  const find = finder(
    new Map([
      ['drip box', 1],
      ['line', 2],
    ]),
  );
  test.each([
    ['a drip box', [1]],
    ['two drip boxes', [1]],
    ['the Drip-Box', [1]],
    ['lines and a line', [2, 2]],
    ['a drip boxer, an airline, liner', []],
  ])('are found in %j', (text, expected) => {
    expect(find(text).map(({ means }) => means)).toEqual(expected);
  });

  test('an empty table finds nothing', () => {
    expect(finder(new Map())('a line')).toEqual([]);
  });
});
