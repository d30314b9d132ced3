/** What only touches writing: the style a course settles on, and the letter O for a zero. */
import { describe, expect, it } from 'vitest';
import type { HouseStyle } from '../../server/src/checks/index.ts';
import { analyseWhole, DEFAULT_SETTINGS } from '../../server/src/course/index.ts';

const findings = (text: string, style?: HouseStyle) =>
  analyseWhole(text, { ...DEFAULT_SETTINGS, ...(style && { style }) }).findings;

/** The text after the fixes of one check, and what was said about each place. */
function mended(check: string, text: string, style?: HouseStyle): string {
  let shift = 0;
  let result = text;
  for (const finding of findings(text, style).filter((one) => one.check === check)) {
    for (const { span, text: put } of finding.fixes.flatMap(({ edits }) => edits)) {
      result = result.slice(0, span.start + shift) + put + result.slice(span.end + shift);
      shift += put.length - (span.end - span.start);
    }
  }
  return result;
}

describe('the style of a course', () => {
  const CASES: readonly (readonly [HouseStyle, string, string])[] = [
    [{ usp: '2-0' }, 'Take 3/0 silk or 4-0 silk.', 'Take 3-0 silk or 4-0 silk.'],
    [{ usp: '2/0' }, 'Take 3-0 silk or 4/0 silk.', 'Take 3/0 silk or 4/0 silk.'],
    [{ gauge: '18 G' }, 'An 18G needle and a 20-gauge needle.', 'An 18 G needle and a 20 G needle.'],
    [{ gauge: '18G' }, 'An 18 G needle and a 20 gauge needle.', 'An 18G needle and a 20G needle.'],
    [{ gauge: '18-gauge' }, 'An 18 G needle.', 'An 18-gauge needle.'],
    [
      { french: '14 Fr' },
      'A 14F Foley catheter and a 16Ch Foley catheter.',
      'A 14 Fr Foley catheter and a 16 Fr Foley catheter.',
    ],
    [{ french: '14 Ch' }, 'A 14 Fr Foley catheter.', 'A 14 Ch Foley catheter.'],
    [{ french: '14-French' }, 'A 14 Fr Foley catheter.', 'A 14-French Foley catheter.'],
    [{ millimetre: '0.9 mm' }, 'The needle is 0.9mm thick.', 'The needle is 0.9 mm thick.'],
    [{ millimetre: '0.9mm' }, 'The needle is 0.9 mm thick.', 'The needle is 0.9mm thick.'],
  ];
  it.each(CASES)('%j: %s', (style, text, expected) => {
    expect(mended('house-style', text, style)).toBe(expected);
    // What is written as settled stays.
    expect(mended('house-style', expected, style)).toBe(expected);
  });

  it('is not looked for until a course settles on it', () => {
    for (const [, text] of CASES)
      expect(findings(text).filter(({ check }) => check === 'house-style')).toEqual([]);
  });

  it('leaves words, ranges, bounds, whole suture sizes and other kinds of size as they are', () => {
    const all: HouseStyle = { usp: '2/0', gauge: '18G', french: '14Fr', millimetre: '0.9mm' };
    for (const text of [
      'An eighteen gauge needle.',
      'Needles of 18 to 22 gauge.',
      'At least 18 G.',
      'A size 1 nylon suture.',
      'A 0.035 in guidewire.',
      'A Hegar 8 dilator.',
      'A metric 3 thread.',
      'A size 0 silk.',
      'A 1-0 silk.',
      'A 18 G to 20 G needle.',
      'A 20-gauge steel wire.',
      'A 7.5 mm tracheal tube.',
    ])
      expect([text, mended('house-style', text, all)]).toEqual([text, text]);
    expect(mended('house-style', 'An 18 G needle.', { french: '14Fr' })).toBe('An 18 G needle.');
  });

  it.each([{ usp: '2/0' }, { gauge: '18G' }, { french: '14Fr' }, { millimetre: '0.9mm' }] as const)(
    'is for the kind of size it names alone: %j',
    (style) => {
      const others: readonly (readonly [keyof HouseStyle, string])[] = [
        ['usp', 'Take 3-0 silk.'],
        ['gauge', 'An 18 G needle.'],
        ['french', 'A 14 Fr Foley catheter.'],
        ['millimetre', 'The needle is 0.9 mm thick.'],
      ];
      for (const [kind, text] of others)
        expect(mended('house-style', text, style) === text).toBe(!(kind in style));
    },
  );

  it('says how it is written and how it should be', () => {
    const span = { start: 5, end: 8 };
    expect(findings('Take 3/0 silk.', { usp: '2-0' })).toEqual([
      {
        check: 'house-style',
        kind: 'style',
        severity: 'hint',
        span,
        says: '“3/0” is not how this course writes the size.',
        holds: 'Here it is written 3-0.',
        source: 'course settings',
        sources: [],
        fixes: [{ title: 'Write 3-0', safety: 'safe', edits: [{ span, text: '3-0' }] }],
        related: [],
        derivation: [],
      },
    ]);
  });
});

describe('the letter O for a zero', () => {
  it.each([
    ['Use 4-O nylon.', 'Use 4-0 nylon.'],
    ['Use 2/o silk suture.', 'Use 2/0 silk suture.'],
    ['Use 3-0 silk.', 'Use 3-0 silk.'],
  ])('%s', (text, expected) => {
    expect(mended('letter-for-zero', text)).toBe(expected);
  });

  it.each(['Use 4-**O** nylon.', 'Use 4\\-O nylon.', 'Use 4-&#79; nylon.'])(
    'is named and left to the author where markup lies inside: %s',
    (text) => {
      const [one] = findings(text);
      expect(one).toMatchObject({ check: 'letter-for-zero', fixes: [] });
    },
  );

  it('is named', () => {
    const span = { start: 4, end: 7 };
    expect(findings('Use 4-O nylon.')).toEqual([
      {
        check: 'letter-for-zero',
        kind: 'style',
        severity: 'hint',
        span,
        says: '“4-O” is written with the letter O.',
        holds: 'Write 4-0 with the figure zero.',
        source: 'common practice, no source',
        sources: [],
        fixes: [{ title: 'Write 4-0', safety: 'safe', edits: [{ span, text: '4-0' }] }],
        related: [],
        derivation: [],
      },
    ]);
  });
});
