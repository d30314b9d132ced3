/** Notes that are not open are read through the editor, so that remote and virtual workspaces work the same. */
import { type Disposable, Uri, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** Most notes looked at in a workspace. */
const MOST = 5000;

/** A larger file is no note; it is left alone. */
const LARGEST = 4_000_000;

export function answerFiles(client: BaseLanguageClient): Disposable[] {
  return [
    client.onRequest('sizewright/listNotes', listNotes),
    client.onRequest('sizewright/readNote', ({ uri }: { uri: string }) => readNote(Uri.parse(uri, true))),
  ];
}

async function listNotes(): Promise<string[]> {
  const found = await workspace.findFiles('**/*.{md,markdown}', '**/node_modules/**', MOST);
  return found.map((uri) => uri.toString()).sort();
}

/** The text of a note, null when it cannot be read as UTF-8. */
async function readNote(uri: Uri): Promise<string | null> {
  try {
    const stat = await workspace.fs.stat(uri);
    if (stat.size > LARGEST) return null;
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(
      await workspace.fs.readFile(uri),
    );
  } catch {
    return null;
  }
}
