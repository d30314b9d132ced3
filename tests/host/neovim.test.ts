/** A client that is not ours: Neovim starts the server over stdio; diagnostics and a hover arrive. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT } from './workbench.ts';

const NOTE = 'A 16 G cannula is thinner than a 20 G cannula.\n';

interface Seen {
  readonly diagnostics: readonly {
    message: string;
    lnum: number;
    col: number;
    source: string;
    code: string;
  }[];
  readonly hover: string;
}

function driveNeovim(note: string): Seen {
  const folder = mkdtempSync(join(tmpdir(), 'sizewright-neovim-'));
  try {
    const out = join(folder, 'seen.json');
    writeFileSync(join(folder, 'note.md'), note);
    execFileSync('nvim', ['--headless', '--clean', '-c', `luafile ${join(ROOT, 'tests/host/neovim.lua')}`], {
      env: {
        ...process.env,
        NOTE: join(folder, 'note.md'),
        OUT: out,
        SERVER: join(ROOT, 'dist/cli.cjs'),
      },
      stdio: 'pipe',
      timeout: 60_000,
    });
    return JSON.parse(readFileSync(out, 'utf8'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

test('Neovim gets the finding and the hover', () => {
  const seen = driveNeovim(NOTE);
  expect(seen.diagnostics).toHaveLength(1);
  expect(seen.diagnostics[0]).toMatchObject({ lnum: 0, source: 'sizewright' });
  expect(seen.hover).toContain('16 G');
  expect(seen.hover).toContain('mm outside');
});
