/** The fast look at raw text never hides anything. */
import { describe, expect, it } from 'vitest';
import { mayHoldSizes } from '../../server/src/notes/index.ts';
import { MATERIALS } from '../../server/src/sizes/materials.ts';

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
