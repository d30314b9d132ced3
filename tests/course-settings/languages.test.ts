/** The languages a course says it is written in: which unit words are read, and what is judged. */
import { expect, test } from 'vitest';
import { analyse, mergeSettings, type SettingsFile } from '../../server/src/course/index.ts';

const read = (text: string, ...files: SettingsFile[]) => {
  const { mentions, findings } = analyse(text, mergeSettings(files));
  return { sizes: mentions.map((mention) => mention.text), checks: findings.map(({ check }) => check) };
};

test.each([
  ['Die Nadel ist 1 Zoll lang, 21 G.', ['1 Zoll', '21 G'], ['21 G']],
  ['Aiguille de 21 G, 1 pouce de long.', ['21 G', '1 pouce'], ['21 G']],
  ['La aguja mide 1 pulgada, calibre 21.', ['1 pulgada', 'calibre 21'], ['calibre 21']],
  ['A 1 inch needle of 21 gauge.', ['1 inch', '21 gauge'], ['1 inch', '21 gauge']],
])('%s', (text, all, english) => {
  expect(read(text).sizes).toEqual(all);
  expect(read(text, { languages: ['en'] }).sizes).toEqual(english);
});

test('the nearest file decides the languages', () => {
  const text = 'Die Nadel ist 1 Zoll lang, 21 G.';
  expect(read(text, { languages: ['en'] }, {}).sizes).toEqual(['21 G']);
  expect(read(text, { languages: ['en'] }, { languages: ['de', 'en'] }).sizes).toEqual(['1 Zoll', '21 G']);
});

test('without English, only sizes set beside one another are judged', () => {
  const text = 'A 14 G is thinner than an 18 G.\n\nEin Katheter 18 Fr (9 mm).\n';
  expect(read(text).checks).toEqual(['size-comparison', 'size-conversion']);
  expect(read(text, { languages: ['de'] }).checks).toEqual(['size-conversion']);
  expect(read(text, { languages: ['de', 'en'] }).checks).toEqual(['size-comparison', 'size-conversion']);
});
