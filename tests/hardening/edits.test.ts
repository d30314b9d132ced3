/**
 * Random edits over real-looking notes: the analysis after each edit is that of a fresh reading, and every
 * span lies in the text. `SIZEWRIGHT_RUNS` multiplies the number of edits, about 180; `SIZEWRIGHT_SEED` makes others.
 */
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Span } from '../../server/src/notes/model.ts';
import { applyEdit, edit, runs } from '../notes/markdown-pieces.ts';
import { fresh, incremental, type Outcome } from './pipeline.ts';

const BLOCKS = [
  '# Cannulas and needles\n\n', '## Colours\n\n', '## Check yourself\n\n',
  'A 14 G cannula is wider than a 20 G cannula, and *flow* follows the **bore**.\n\n',
  'The larger the gauge number, the thicker the needle.\n\n',
  'Close the skin with 4-0 nylon; 2-0 is thinner than 4-0.\n\n',
  'A 14 Fr catheter is 4.7 mm across, an 18&nbsp;Fr one\nis 5 mm.[^1]\n\n',
  '| Gauge | Colour | mm |\n|---|---|---|\n| 18 G | green | 1.3 |\n| 20 G | pink | 1.1 |\n| 22 G | yellow | 0.9 |\n\n',
  'From thick to thin:\n\n1. 14 G\n2. 18 G\n3. 16 G\n\n',
  '- [ ] 21 G needle (green)\n- [x] 3-0 silk\n  with a taper needle\n\n',
  '> A myth: "a 22 G needle is thicker than an 18 G".\n\n',
  'Which is the thickest?\n\n- a. 18 G\n- b. 16 G\n- c. 20 G\n\nAnswer: b\n\n',
  'True or false: silk is absorbable. **False**\n\n',
  '```\n18 G is thinner than 20 G\n```\n\n', '<!-- 18 G -->\n\n', '[^1]: One French is a third of a millimetre.\n\n',
  'Teacher: eighteen gauge, or two-oh silk?\n\n',
]; // biome-ignore format: a table

const note = fc
  .array(fc.constantFrom(...BLOCKS), { minLength: 1, maxLength: 6 })
  .map((blocks) => blocks.join(''));
const endings = fc.constantFrom('\n', '\r\n', '\r');

const PASTED = fc.oneof(
  edit,
  fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    remove: fc.nat(40),
    insert: fc.constantFrom('', ...BLOCKS),
  }),
);

function expectInside(text: string, { mentions, findings }: Outcome): void {
  const inside = ({ start, end }: Span) => 0 <= start && start <= end && end <= text.length;
  for (const mention of mentions) expect(inside(mention.source)).toBe(true);
  for (const { span, fixes, related } of findings) {
    expect(inside(span)).toBe(true);
    for (const { edits } of fixes) for (const each of edits) expect(inside(each.span)).toBe(true);
    for (const each of related) expect(inside(each.span)).toBe(true);
  }
}

function expectSame(text: string): void {
  const [kept, whole] = [incremental(text), fresh(text)];
  // The assertion is slow; it shows what differs.
  if (!isDeepStrictEqual(kept, whole)) expect(kept).toStrictEqual(whole);
  expectInside(text, kept);
}

it(
  'after any edit the analysis is that of a fresh reading',
  () => {
    const edits = fc.array(PASTED, { minLength: 1, maxLength: 8 });
    const property = fc.property(note, endings, edits, (start, ending, list) => {
      let text = start.replaceAll('\n', ending);
      for (const each of list) {
        text = applyEdit(text, each);
        expectSame(text);
      }
    });
    fc.assert(property, { numRuns: runs(40) });
  },
  runs(60_000),
);
