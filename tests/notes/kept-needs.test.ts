/** What is found out of patterns when the program is built is what the patterns need. */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import type { KeptNeeds } from '../../server/src/notes/kept-needs.ts';
import { patternNeeds } from '../../server/tools/pattern-needs.ts';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
let needs: KeptNeeds;

beforeAll(async () => {
  needs = await patternNeeds(ROOT);
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

describe('a program built with what patterns need', () => {
  it('knows patterns of several mixes of flags, with words and without', () => {
    const rows = needs.map((own) => Object.values(own));
    expect(rows.filter((own) => own.length > 10).length).toBeGreaterThan(1);
    expect(rows.flat().filter((pieces) => pieces === null).length).toBeGreaterThan(10);
    expect(rows.flat().filter((pieces) => pieces !== null).length).toBeGreaterThan(150);
  });

  it('keeps what is found out at the first use without a build', async () => {
    vi.resetModules();
    vi.stubGlobal('PATTERN_NEEDS', needs);
    const { keptFor, MIXES } = await import('../../server/src/notes/kept-needs.ts');
    const { neededBy } = await import('../../server/src/notes/needed.ts');
    for (const [mix, flags] of MIXES.entries())
      for (const source of Object.keys(needs[mix]!)) {
        const fresh = (neededBy(source, flags) ?? []).map(({ text, begins, ends }) => ({
          text,
          begins,
          ends,
        }));
        expect(keptFor(new RegExp(source, flags)), source).toMatchObject(fresh);
        expect(keptFor(new RegExp(source, flags)), source).toHaveLength(fresh.length);
      }
    expect(keptFor(/a pattern of nobody/)).toBeUndefined();
  });
});
