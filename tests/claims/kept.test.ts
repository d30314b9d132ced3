/**
 * Every text of the bank, of the look-alikes and of the rounds is read as it was: sizes, statements, stances, verdicts, and
 * what is shown of a contradiction. That a text is silent may have two reasons, that it is read and holds and that it is not
 * read; here they differ. After a gain `UPDATE=1` writes the files anew; read the difference before you commit it.
 */
import { expect, test, vi } from 'vitest';
import { analyse } from '../../server/src/course/analyse.ts';
import { pieces } from '../support/pieces.ts';
import { keptTexts, store, storedIn } from './kept.ts';
import { blockOf } from './readings.ts';

vi.setConfig({ testTimeout: 240_000 });

const read = (texts: readonly string[]): string[] => texts.map((text) => blockOf(text, analyse(text)));

if (process.env.UPDATE) for (const [name, texts] of keptTexts()) store(name, read(texts));

const parts = [...keptTexts()].flatMap(([name, texts]) =>
  pieces(texts).map(({ part, items }) => [name + part, name, items] as const),
);

test.each(parts)('%s is read as it was', (_, name, texts) => {
  const stored = storedIn(name);
  expect(read(texts).filter((block) => !stored.has(block))).toEqual([]);
});
