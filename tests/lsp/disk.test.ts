/** Notes on disk, for editors that do not hand them over. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { disk } from '../../server/src/entry/disk.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'sizewright-disk-'));
  mkdirSync(join(folder, 'week 1'));
  writeFileSync(join(folder, 'week 1', 'ä note.md'), 'An 18 G cannula.\n');
  writeFileSync(join(folder, 'b.md'), Buffer.from([0xff, 0xfe, 0x41]));
  writeFileSync(join(folder, 'c.png'), 'x');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const at = (...path: string[]): string => pathToFileURL(join(folder, ...path)).href;

test('notes are listed by address, other files are not', async () => {
  const listed = await disk.list([pathToFileURL(folder).href]);
  expect([...listed].sort()).toEqual([at('b.md'), at('week 1', 'ä note.md')].sort());
});

test('a note is read as it is; what is no UTF-8 or not there is refused', async () => {
  expect(await disk.read(at('week 1', 'ä note.md'))).toBe('An 18 G cannula.\n');
  await expect(disk.read(at('b.md'))).rejects.toThrow();
  await expect(disk.read(at('none.md'))).rejects.toThrow();
});

test('folders and files that are not on disk are left alone', async () => {
  expect(await disk.list(['untitled:one', 'vscode-vfs://host/folder'])).toEqual([]);
  expect(await disk.list([])).toEqual([]);
  expect(await disk.read('untitled:one')).toBeNull();
});
