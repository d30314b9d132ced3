/** Clients that are not ours start the server over stdio: diagnostics and a hover arrive. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT } from './workbench.ts';

const NOTE = 'A 16 G cannula is thinner than a 20 G cannula.\n';

interface Seen {
  /** Message of each diagnostic. */
  readonly diagnostics: readonly string[];
  readonly hover: string;
}

const script = (name: string): string => join(ROOT, 'tests/host', name);

const EDITORS: readonly (readonly [string, string, readonly string[]])[] = [
  ['Neovim', 'nvim', ['--headless', '--clean', '-c', `luafile ${script('neovim.lua')}`]],
  ['Emacs', 'emacs', ['--batch', '-q', '-l', script('emacs.el')]],
];

function drive(command: string, options: readonly string[]): Seen {
  const folder = mkdtempSync(join(tmpdir(), 'sizewright-editor-'));
  try {
    const [note, out] = [join(folder, 'note.md'), join(folder, 'seen.json')];
    writeFileSync(note, NOTE);
    execFileSync(command, options, {
      env: { ...process.env, NOTE: note, OUT: out, SERVER: join(ROOT, 'dist/cli.cjs') },
      stdio: 'pipe',
      timeout: 90_000,
    });
    return JSON.parse(readFileSync(out, 'utf8'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

test.each(EDITORS)('%s gets the finding and the hover', (_name, command, options) => {
  const seen = drive(command, options);
  expect(seen.diagnostics).toHaveLength(1);
  expect(seen.diagnostics[0]).toContain('16 G is thinner than 20 G');
  expect(seen.hover).toContain('16 G');
  expect(seen.hover).toContain('mm outside');
});
