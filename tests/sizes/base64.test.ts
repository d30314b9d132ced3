/** Base64 of the UTF-8 of a text, against published vectors and against Node's own. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { base64 } from '../../server/src/sizes/index.ts';

// RFC 4648, section 10.
it.each([
  ['', ''],
  ['f', 'Zg=='],
  ['fo', 'Zm8='],
  ['foo', 'Zm9v'],
  ['foob', 'Zm9vYg=='],
  ['fooba', 'Zm9vYmE='],
  ['foobar', 'Zm9vYmFy'],
])('of %j is %s', (text, expected) => {
  expect(base64(text)).toBe(expected);
});

it('is that of UTF-8, at the limits of its lengths and anywhere', () => {
  const node = (text: string) => Buffer.from(text, 'utf8').toString('base64');
  for (const code of [0, 0x7f, 0x80, 0x7ff, 0x800, 0xd7ff, 0xe000, 0xffff, 0x10000, 0x10ffff]) {
    const text = `a${String.fromCodePoint(code)}`;
    expect([code, base64(text)]).toEqual([code, node(text)]);
  }
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      expect(base64(text)).toBe(node(text));
    }),
  );
});
