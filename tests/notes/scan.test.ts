/** The fast look at raw text never hides anything. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mayHoldSizes, type Note, readNote } from '../../server/src/notes/index.ts';
import { MATERIALS } from '../../server/src/sizes/materials.ts';
import { markdown, runs } from './markdown-pieces.ts';

describe('mayHoldSizes', () => {
  it.each([
    '18 G', 'two-oh silk', 'eighteen gauge', 'eigh**teen gau**ge', 'nee&shy;dle', 'su\u00ADture', '½ inch', '١٨',
    'The larger the number, the thinner the needle.', 'Silk is absorbable.', 'Charrière', 'one third', 'number\\s',
    ...MATERIALS.flatMap((material) => [material.name, ...material.names]),
  ])('%j may', (text) => expect(mayHoldSizes(text)).toBe(true)); // biome-ignore format: a list

  it.each(['', 'Wash your hands.', 'Ask and say hello.'])('%j may not', (text) =>
    expect(mayHoldSizes(text)).toBe(false),
  );
});

const DULL = [
  'Wash your hands.\n\n',
  'Say hello.\n\n',
  '# Hello\n\n',
  'Ask:\n\n',
  '|a|\n|-|\n|b|\n\n',
  '- hi\n- ho\n\n',
  '<!-- x -->\n\n',
];
const TELLING = [
  'An 18 G needle.\n\n',
  'The 3-0 silk is fine.\n\n',
  '|size|\n|-|\n|14 Fr|\n\n',
  '- 20 G\n\n',
];

/** Passages in which something may be found, with the words around them that may matter. */
function telling(note: Note): unknown[] {
  const textAt = (at: number | undefined) => (at === undefined ? undefined : note.passages[at]?.text);
  return note.passages
    .filter((passage) => mayHoldSizes(passage.text))
    .map(({ text, map, path, list, cell }) => ({
      ...{ text, map, path: path.map(textAt), leadIn: textAt(list?.leadIn) },
      tableLeadIn: cell && textAt(note.tables[cell.table]?.leadIn),
    }));
}

describe('scanning', () => {
  it('keeps everything that may matter, and comments', () => {
    const pieces = fc.array(fc.oneof(fc.constantFrom(...DULL), fc.constantFrom(...TELLING), markdown(6)), {
      maxLength: 14,
    });
    const property = fc.property(pieces, (parts) => {
      const text = parts.join('');
      const [scanned, all] = [readNote(text, { scan: true }), readNote(text)];
      expect(telling(scanned)).toEqual(telling(all));
      expect(scanned.comments).toEqual(all.comments);
    });
    fc.assert(property, { numRuns: runs(400) });
  });

  it('leaves out dull stretches', () => {
    const note = readNote('Say hello.\n\nAn 18 G needle.\n', { scan: true });
    expect(note.passages.map((passage) => passage.text)).toEqual(['An 18 G needle.']);
  });
});
