/** Markdown of hovers: text of a note never becomes markup; base64 equals Node's own. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { escapeMarkdown, table } from '../../server/src/editor/markdown.ts';
import { base64 } from '../../server/src/sizes/index.ts';
import { mdastText } from './mdast-text.ts';

test('escaped text reads as itself', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme-ascii', minLength: 1 }), (text) => {
      const word = `x${text.replace(/\s+/g, ' ').trim()}x`;
      expect(mdastText(escapeMarkdown(word))).toBe(word);
    }),
  );
});

test('a cell cannot leave its table', () => {
  expect(table(['a', 'b'], [['1 | 2', '<b>\n3']])).toBe('| a | b |\n| --- | --- |\n| 1 \\| 2 | &lt;b\\> 3 |');
});

test('base64 is that of RFC 4648', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      expect(base64(text)).toBe(Buffer.from(text, 'utf8').toString('base64'));
    }),
  );
});
