/** A finding stays who it is when the note around it changes. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  Accepted,
  analyse,
  Course,
  hash,
  identified,
  identities,
  readAccepted,
  writeAccepted,
} from '../../server/src/course/index.ts';

const COURSE = join(import.meta.dirname, '../course');
const notes = readdirSync(COURSE)
  .filter((name) => name.endsWith('.md'))
  .map((name) => readFileSync(join(COURSE, name), 'utf8'));
const ids = (text: string) => identities(analyse(text));

describe('identity', () => {
  test('each finding of a note has its own', () => {
    for (const text of notes) expect(new Set(ids(text)).size).toBe(ids(text).length);
  });

  test('lines above and below change nothing', () => {
    for (const text of notes) {
      const body = text.replace(/^---\n[\s\S]*?\n---\n/, '');
      expect(ids(`Words.\n\n${body}\n\nMore words.\n`)).toEqual(ids(body));
    }
  });

  test('wrapping and quoting change nothing, other numbers do', () => {
    const one = 'In short, a 22 G needle is thicker than an 18 G needle in this clinic.';
    const [id] = ids(one);
    expect(ids(one.replace(/, /g, ',\n'))).toEqual([id]);
    expect(ids(one.replace('thicker than', 'thicker\nthan'))).toEqual([id]);
    expect(ids(one.replace('22', '20'))).not.toEqual([id]);
  });

  test('of what is unclear lies in its sentence', () => {
    const asked = (before: string, after: string) => ids(`${before}Pass me a 2 silk, please.${after}`);
    const alone = asked('', '');
    expect(alone).toHaveLength(1);
    expect(asked('Gowns on. ', '')).toEqual(alone);
    expect(asked('Is the light on? ', ' Then wait.')).toEqual(alone);
    expect(asked('Gowns on! Masks too. ', ' Then wait. Or talk.')).toEqual(alone);
    expect(ids('Pass me a 2 silk, nurse.')).not.toEqual(alone);
  });

  test('of a mark that covers nothing needs no prose around it', () => {
    const idle = '<!-- wrong on purpose: for the quiz -->';
    expect(ids(`${idle}\n`)).toHaveLength(1);
    expect(ids(`${idle}\n\nWash your hands.`)).toEqual(ids(`${idle}\n`));
  });

  test('lies in a statement of any length, and in none that begins far away', () => {
    const words = 'and so on, '.repeat(190);
    const far = `A 22 G needle is thicker than an 18 G needle. ${words}`;
    const text = `${far}Pass me a 2 silk, please.`;
    const found = identified(analyse(text));
    expect(found).toHaveLength(2);
    expect(found[1]!.home.start).toBeGreaterThan(found[0]!.home.end);
  });

  test('the second of two equal statements has another', () => {
    const wrong = 'A 22 G needle is thicker than an 18 G needle.';
    const [first, second] = ids(`${wrong}\n\n${wrong}\n`);
    expect(first).toBe(ids(wrong)[0]);
    expect(second).not.toBe(first);
  });
});

describe('hash', () => {
  // Reference values of FNV-1a, 64 bits: Fowler, Noll and Vo, test vectors of their published source.
  test.each([
    ['', 'cbf29ce484222325'],
    ['a', 'af63dc4c8601ec8c'],
    ['foobar', '85944171f73967e8'],
  ])('of %j', (text, value) => {
    expect(hash(text)).toBe(value);
  });
});

describe('the record of accepted findings', () => {
  const entry = fc.record({
    note: fc.string(),
    check: fc.string(),
    says: fc.string(),
    identity: fc.string(),
  });

  test('what is written is read again, sorted by note', () => {
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 6 }), (entries) => {
        const read = readAccepted(writeAccepted(entries));
        const sorted = [...entries].sort((a, b) => (a.note < b.note ? -1 : a.note > b.note ? 1 : 0));
        expect(read).toEqual(sorted);
      }),
    );
  });

  test.each(['', '[]', 'null', '{}', '{"accepted":[1]}', '{"accepted":[{"note":"a"}]}'])(
    '%j is none',
    (text) => {
      expect(typeof readAccepted(text)).toBe('string');
    },
  );

  test('entries are stale only when their note was read and nothing met them', () => {
    const entries = ['a', 'b', 'c'].map((note) => ({ note, check: 'x', says: 'y', identity: '1' }));
    const record = new Accepted(entries);
    record.read('a');
    record.read('b');
    expect(record.has('a', '1')).toBe(true);
    expect(record.has('a', '2')).toBe(false);
    expect(record.stale()).toEqual([entries[1]]);
  });
});

describe('a course', () => {
  test('takes the default settings when none are given', () => {
    const text = 'A 22 G needle is thicker than an 18 G needle.';
    expect(new Course().put('a.md', text)).toEqual(analyse(text));
  });

  test('reads a note again only when its text or settings change', () => {
    let settings = { severity: {}, context: {} };
    const course = new Course(() => settings);
    const first = course.put('b.md', 'An 18 G needle.');
    expect(course.put('b.md', 'An 18 G needle.')).toBe(first);
    expect(course.put('b.md', 'A 20 G needle.')).not.toBe(first);
    const second = course.get('b.md');
    settings = { severity: {}, context: {} };
    expect(course.put('b.md', 'A 20 G needle.')).not.toBe(second);
    course.put('a.md', '');
    expect(course.paths()).toEqual(['a.md', 'b.md']);
    course.remove('b.md');
    expect(course.get('b.md')).toBeUndefined();
  });
});
