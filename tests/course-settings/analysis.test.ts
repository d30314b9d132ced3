/** One note all the way, and what settings change about it. */
import { describe, expect, test } from 'vitest';
import { analyse, DEFAULT_SETTINGS, mentionsOnly, type Settings } from '../../server/src/course/index.ts';

const WRONG = 'A 22 G needle is thicker than an 18 G needle. Use 4-O nylon.';
const told = (settings: Settings) =>
  analyse(WRONG, settings).findings.map(({ check, severity }) => [check, severity]);

describe('the severity of a check', () => {
  test('is its own when the course does not settle it', () => {
    expect(told(DEFAULT_SETTINGS)).toEqual([
      ['size-comparison', 'warning'],
      ['letter-for-zero', 'hint'],
    ]);
  });

  test('is what the course settles, and off silences it alone', () => {
    expect(told({ ...DEFAULT_SETTINGS, severity: { 'size-comparison': 'info' } })).toEqual([
      ['size-comparison', 'info'],
      ['letter-for-zero', 'hint'],
    ]);
    expect(told({ ...DEFAULT_SETTINGS, severity: { 'size-comparison': 'off' } })).toEqual([
      ['letter-for-zero', 'hint'],
    ]);
  });
});

describe('mentions alone', () => {
  test('are those of the whole analysis', () => {
    const only = mentionsOnly(WRONG);
    expect(only.mentions.length).toBe(3);
    expect(only.mentions).toEqual(analyse(WRONG).mentions);
    expect([only.statements, only.findings]).toEqual([[], []]);
  });

  test('follow the format that the path tells', () => {
    const captions = 'WEBVTT\n\n00:01.000 --> 00:02.000\nUse an <b>18</b> G needle\n';
    expect(mentionsOnly(captions, DEFAULT_SETTINGS, 'a.vtt').mentions).toEqual(
      analyse(captions, DEFAULT_SETTINGS, 'a.vtt').mentions,
    );
  });

  test('of a text about other things need no parser', () => {
    expect(mentionsOnly('# Listen\n\nThen ask.')).toEqual(analyse('# Listen\n\nThen ask.'));
    expect(mentionsOnly('# Listen\n\nThen ask.').note.passages).toEqual([]);
  });
});
