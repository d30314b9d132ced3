/** Reading in stretches is reading whole; an edit re-reads only its stretch. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNote } from '../../server/src/notes/index.ts';
import { readWhole } from '../../server/src/notes/read-markdown.ts';
import { expectSound } from './maps.ts';
import { applyEdit, edit, markdown, runs } from './markdown-pieces.ts';

function expectSame(text: string): void {
  const note = readNote(text);
  expectSound(note);
  expect(note).toEqual(readWhole(text));
}

describe('stretches', () => {
  it('read as the whole does, for any text', () => {
    fc.assert(fc.property(markdown(), expectSame), { numRuns: runs(400) });
  });

  it('read as the whole does, after any edits', () => {
    const edits = fc.array(edit, { minLength: 1, maxLength: 8 });
    const property = fc.property(markdown(80), edits, (start, list) => {
      let text = start;
      for (const each of list) {
        text = applyEdit(text, each);
        expectSame(text);
      }
    });
    fc.assert(property, { numRuns: runs(60) });
  });

  it.each([
    ['a fence over blank lines', '```\n\na\n\nb\n```\n\n18 G\n'],
    ['a fence in a list, then a fence', '- a\n  ```\n  x\n\nP\n\n```\n\ncode\n\n```\n\nQ\n'],
    ['an unclosed fence', 'a\n\n```\n\nb\n\nc\n\nd\n'],
    ['HTML until its mark', '<script>\n\na\n\n</script>\n\nb\n\n<!-- x\n\ny -->\n\nc\n'],
    ['display math', '$$\n\na\n\n$$\n\nb\n'],
    ['definitions after their use', '[A  b], [c][d] and [^n]\n\n[a B]: x\n\n[d]: y\n\n[^n]: z\n'],
    ['a label in a quote', '> [a\n> b]\n\n> [a b]: x\n'],
    [
      'a label of 999 characters and one too long',
      `[${'a'.repeat(999)}] [${'b'.repeat(1001)}]\n\n[${'a'.repeat(999)}]: x\n\n[${'b'.repeat(1001)}]: y\n`,
    ],
    ['a footnote of two paragraphs', 'a[^1]\n\n[^1]: b\n\n    c\n\nd\n'],
    ['front matter with blank lines', '---\na: 1\n\nb: 2\n---\n\n# T\n\n---\nx\n---\n'],
    ['dashes that are no front matter', '---\n\na\n\n---\n'],
    ['a byte order mark', '\uFEFF# T\n\na\n\nb\n'],
    ['a table with its lead-in in front', 'Lead:\n\n<!-- c -->\n\n|a|\n|-|\n|1|\n\nafter\n'],
    ['headings over stretches', '# A\n\n### B\n\na\n\n## C\n\n> # Q\n>\n> b\n\nc\n\n# D\n\nd\n'],
  ])('hold with %s', (_, text) => {
    expectSame(text);
    expectSame(text.replaceAll('\n', '\r\n'));
    expectSame(text.replaceAll('\n', '\r'));
  });
});

const PARAGRAPHS = Array.from(
  { length: 500 },
  (_, index) => `Paragraph ${index}: an 18 G needle and *3-0* silk.\n\n`,
);

describe('an edit', () => {
  it('re-reads its stretch alone', () => {
    const before = readNote(PARAGRAPHS.join(''));
    const after = readNote(PARAGRAPHS.with(250, 'Changed: a 20 G needle.\n\n').join(''));
    const kept = after.passages.filter((passage, index) => passage.marks === before.passages[index]?.marks);
    expect(kept.length).toBe(PARAGRAPHS.length - 1);
  });

  it('that adds a definition re-reads only what refers to it', () => {
    const text = `${PARAGRAPHS.join('')}See [this].\n\n`;
    const before = readNote(text);
    const after = readNote(`${text}[this]: x\n`);
    const changed = after.passages.filter(
      (passage, index) => passage.marks !== before.passages[index]?.marks,
    );
    expect(changed.map((passage) => passage.text)).toEqual(['See this.']);
  });
});
