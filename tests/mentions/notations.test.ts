/** Every notation reads its own examples whole and leaves its look-alikes alone. */
import { describe, expect, test } from 'vitest';
import { NOTATIONS, type Notation } from '../../grammars/notations/index.ts';

const matches = (notation: Notation, text: string) =>
  [...text.matchAll(new RegExp(notation.pattern, notation.anyCase ? 'gi' : 'g'))].filter(
    (match) => notation.read(match[0]).length > 0,
  );

describe.each(NOTATIONS.map((notation) => [notation.id, notation] as const))('%s', (_, notation) => {
  test.each(notation.examples)('reads "%s" whole', (example) => {
    const [match] = matches(
      notation,
      `a ${example} wire`.replace(/ wire$/, notation.id === 'wire-short' ? ' wire' : ''),
    );
    expect(match?.[0]).toBe(example);
    const items = notation.read(example);
    expect(items.length).toBeGreaterThan(0);
    for (const item of items) {
      expect(item.start).toBeLessThan(item.end);
      expect(item.end).toBeLessThanOrEqual(example.length);
      expect(item.values.every(Number.isFinite)).toBe(true);
    }
  });

  test.each(notation.counterExamples)('leaves "%s" alone', (text) => {
    expect(matches(notation, text).map((match) => match[0])).toEqual([]);
  });

  test('says what it is, and stays in the subset that both engines read alike', () => {
    expect(notation.about.length).toBeGreaterThan(20);
    expect(notation.examples.length).toBeGreaterThan(1);
    const bones = notation.pattern.replace(/\[(?:\\.|[^\]])*\]|\\[^dwbDWB]/g, '');
    expect(bones).not.toMatch(/\\[dwbDWB]|[$^]|\(\?[im]|[*+]/);
  });
});

test('ids are unique', () => {
  expect(new Set(NOTATIONS.map(({ id }) => id)).size).toBe(NOTATIONS.length);
});
