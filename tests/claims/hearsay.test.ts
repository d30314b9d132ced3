/**
 * The table of hearsay: the claim of every example is contradicted when it stands by itself, and nothing is said of it in the words
 * of the example. Without the table it would be.
 */
import { describe, expect, it, vi } from 'vitest';
import { HEARSAY } from '../../server/src/claims/words/hearsay.ts';
import { analyse } from '../../server/src/course/index.ts';

type Analyse = typeof analyse;
const wrong = (text: string, read: Analyse = analyse): boolean =>
  read(`${text}\n`).findings.some(({ kind }) => kind === 'contradiction');
const example = (text: string): string => text.replace(/[«»]/g, '');
const claim = (text: string): string | undefined => /«(.+)»/.exec(text)?.[1];

async function withoutTable(): Promise<Analyse> {
  vi.resetModules();
  vi.doMock('../../server/src/claims/words/hearsay.ts', () => ({ HEARSAY: [] }));
  return (await import('../../server/src/course/index.ts')).analyse;
}

describe('hearsay', async () => {
  const bare = await withoutTable();
  it.each(HEARSAY.map((row) => row.example))('%s', (text) => {
    expect(wrong(example(text))).toBe(false);
    expect(wrong(example(text), bare)).toBe(true);
    const alone = claim(text);
    if (alone) expect(wrong(`${alone[0]!.toUpperCase()}${alone.slice(1)}.`)).toBe(true);
  });
});
