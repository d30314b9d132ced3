/**
 * Finds out, for the build, what the patterns need that common texts meet (`notes/kept-needs.ts`): the analysis is bundled as
 * it will ship, so that its patterns are written as they will be, and reads its practice texts.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import type { KeptNeeds } from '../src/notes/kept-needs.ts';
import { inAscii } from './ascii.ts';

const PRACTISED = `
import { practice } from './server/src/entry/practice.ts';
import { learned } from './server/src/notes/patterns.ts';
for (const _ of practice());
export const needs = learned();
`;

/** What the patterns need that the practice texts meet. */
export async function patternNeeds(root: string): Promise<KeptNeeds> {
  const folder = mkdtempSync(join(tmpdir(), 'pattern-needs-'));
  try {
    const file = join(folder, 'practised.mjs');
    await build({
      stdin: { contents: PRACTISED, resolveDir: root, loader: 'ts' },
      outfile: file,
      bundle: true,
      minify: true,
      format: 'esm',
      platform: 'node',
      mainFields: ['module', 'main'],
      logLevel: 'warning',
    });
    writeFileSync(file, inAscii(readFileSync(file, 'utf8')));
    return (await import(pathToFileURL(file).href)).needs;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
