/** Notes on disk, for editors that do not hand them to the server. */
import { readFile } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Folders } from '../cli/course/folders.ts';
import { findNotes } from '../cli/files/find.ts';
import type { NoteSource } from '../lsp/index.ts';

const UTF8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

export const disk: NoteSource = {
  async list(folders) {
    const paths = folders
      .filter((folder) => folder.startsWith('file:'))
      .map((folder) => fileURLToPath(folder));
    if (paths.length === 0) return [];
    return findNotes(paths, new Folders()).paths.map((path) => pathToFileURL(path).href);
  },
  async read(uri) {
    if (!uri.startsWith('file:')) return null;
    return UTF8.decode(await readFile(fileURLToPath(uri)));
  },
};
