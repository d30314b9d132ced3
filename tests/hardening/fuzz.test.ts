/** A short run of the fuzzer, and every text it ever found. The long run: `npm run fuzz`. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { examine } from '../../server/tools/hardening/examine.ts';
import { fuzz } from '../../server/tools/hardening/fuzz.ts';
import { mutate } from '../../server/tools/hardening/mutate.ts';
import { Chance } from '../../server/tools/hardening/random.ts';
import { reduce } from '../../server/tools/hardening/reduce.ts';
import { runs } from '../notes/markdown-pieces.ts';

const FOUND = new URL('fuzz/', import.meta.url);

describe('the fuzzer', () => {
  it('finds nothing wrong, and reaches most branches', async () => {
    const executions = runs(800);
    const { finds, reached, total } = await fuzz({ seed: 20, goOn: (done) => done < executions });
    expect(finds).toEqual([]);
    expect(reached / total).toBeGreaterThan(0.5);
  }, 600_000);

  it('repeats itself for a seed, and not for another', () => {
    const texts = (seed: number): string[] => {
      const chance = new Chance(seed);
      return Array.from({ length: 50 }, () => mutate('A 14 G cannula.\n', '3-0 silk', chance));
    };
    expect(texts(1)).toEqual(texts(1));
    expect(texts(1)).not.toEqual(texts(2));
    expect(new Set(texts(1)).size).toBeGreaterThan(40);
  });

  it('cuts a find down to what matters', () => {
    const holds = (text: string): boolean => text.includes('18') && text.includes('<');
    expect(reduce('The 18 G needle\n\n<div> is green', holds)).toBe('18<');
  });

  it('says what is wrong', () => {
    expect(examine('A 14 G cannula.', 'a.md', true)).toBeUndefined();
    expect(examine(undefined as unknown as string, 'a.md', false)).toContain('TypeError');
  });
});

describe('texts found earlier', () => {
  const names = readdirSync(FOUND).filter((name) => !name.endsWith('.txt') || name.endsWith('.note.txt'));
  it.each(names)('%s', (name) => {
    expect(examine(readFileSync(new URL(name, FOUND), 'utf8'), name, true)).toBeUndefined();
  });
});
