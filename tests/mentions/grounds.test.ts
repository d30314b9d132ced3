/**
 * Every size of the fixtures is read on the grounds that are stored: its notation, the rule, the words the rule saw, and for a
 * question what each answer would be written as. `UPDATE=1` writes them anew; read the difference.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { groundBlock, groundTexts } from './grounds.ts';

const STORED = join(import.meta.dirname, 'grounds.golden.txt');
const texts = groundTexts();

if (process.env.UPDATE) writeFileSync(STORED, `${texts.map(groundBlock).join('\n')}\n`);

const stored = new Set(
  readFileSync(STORED, 'utf8')
    .trimEnd()
    .split(/\n(?=> )/),
);

test.each(texts)('%j', (text) => {
  expect(stored).toContain(groundBlock(text));
});
