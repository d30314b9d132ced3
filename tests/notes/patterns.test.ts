/** What a pattern is said to need stands wherever it matches, and is little enough to keep most patterns from being tried. */
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { check } from '../../server/src/entry/index.ts';
import { neededBy, standsOne } from '../../server/src/notes/needed.ts';
import { finds, firstMatch, lowered, mayMatch } from '../../server/src/notes/patterns.ts';
import { readBank } from '../claims/bank.ts';

const told = (pattern: RegExp): string[] | undefined =>
  neededBy(pattern.source, pattern.flags)?.map(
    ({ text, begins, ends }) => `${begins ? '<' : ''}${text}${ends ? '>' : ''}`,
  );

describe('what a pattern needs', () => {
  it.each([
    [/\b(?:answers?|key)\b/i, ['<answer', '<key>']],
    [/^(?:is|are) (?:the )?wrong$/, ['<wrong>']],
    [/(?:^|[\s("])(?:from|to)\s/, ['<from>', '<to>']],
    [/colou?r|gr[ae]y/, ['colo', 'gr']],
    [/(?:a|b)?tail\d/, ['tail']],
    [/(?=needle)needle(?!s)/, ['needle']],
    [/(?<lead>gauge)\k<lead>/, ['gauge']],
    [/t ?\/ ?f\b/, ['<f>']],
    [/true\/false/, ['true/false']],
    [/(?:ten){0,3}|one/, undefined],
    [/\d+\s?[a-z]/, undefined],
    [/(?:thick|thin)+ness/, ['ness']],
    [/\u2264 ?at most/, ['<at most']],
    [/[☐☑] nine/, [' nine']],
    [/sk|Σ/iu, undefined],
    [/[\s\d]{2}x{2,3}yy(?:zz)?/, ['yy']],
  ])('%s', (pattern, pieces) => {
    expect(told(pattern)).toEqual(pieces);
  });
});

describe('a pattern behind what it needs', () => {
  it('answers as it would by itself, however often it is asked', () => {
    const pattern = /\b(?:quizz?|riddle) of the (day|week)\b/i;
    for (let i = 0; i < 500; i++) {
      expect(finds(pattern, 'Nothing of the sort.')).toBe(false);
      expect(firstMatch(pattern, 'nothing')).toBeNull();
    }
    expect(firstMatch(pattern, 'The RIDDLE OF THE Day')?.[1]).toBe('Day');
    expect(finds(pattern, 'No riddle of the year')).toBe(false);
  });

  it('takes no sign beyond ASCII for a letter', () => {
    expect(mayMatch(/\bsize\b/i, 'size\u212a \u0130')).toBe(true);
    expect(mayMatch(/\bsize\b/i, '\u0130size')).toBe(true);
  });
});

/** Every pattern that the program asks, with what it needs, and where it matched without that. */
const asked = new Map<string, { pattern: RegExp; pieces: ReturnType<typeof neededBy> }>();
const wrong: string[] = [];
const exec = RegExp.prototype.exec;

function watched(this: RegExp, text: string): RegExpExecArray | null {
  const match = exec.call(this, text);
  const name = String(this);
  let known = asked.get(name);
  if (!known) {
    known = { pattern: this, pieces: undefined };
    asked.set(name, known);
    known.pieces = neededBy(this.source, this.flags);
  }
  if (match && known.pieces && !standsOne(known.pieces, this.ignoreCase ? lowered(text) : text))
    wrong.push(`${name}: ${text}`);
  return match;
}

/** One note in so many is read; all of them with SIZEWRIGHT_RUNS. */
const STEP = process.env.SIZEWRIGHT_RUNS ? 1 : 12;

describe('the patterns of the program', () => {
  vi.setConfig({ testTimeout: 480_000 });

  beforeAll(() => {
    const notes = readBank().flatMap(({ right, wrong }) => [right, wrong]);
    RegExp.prototype.exec = watched;
    for (let i = 0; i < notes.length; i += STEP) check(notes[i]!);
    RegExp.prototype.exec = exec;
  }, 480_000);
  afterAll(() => asked.clear());

  it('match only where what they need stands', () => {
    expect(asked.size).toBeGreaterThan(1000);
    expect(wrong).toEqual([]);
  });

  it('match no text that is made for them without it', () => {
    let made = 0;
    for (const { pattern, pieces } of asked.values()) {
      if (!pieces || /\(\?<?[=!]|\\[bBpPk1-9]/.test(pattern.source)) continue;
      made++;
      for (const text of fc.sample(
        fc.stringMatching(new RegExp(pattern.source, 'u'.repeat(Number(pattern.unicode)))),
        5,
      ))
        if (!standsOne(pieces, pattern.ignoreCase ? lowered(text) : text)) wrong.push(`${pattern}: ${text}`);
    }
    expect(made).toBeGreaterThan(100);
    expect(wrong).toEqual([]);
  });
});
