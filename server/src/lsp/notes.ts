/** Notes of the workspace that are not open: read through the client where it offers that, else from disk. */
import type { Connection } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { analyse, type Settings } from '../course/index.ts';
import type { Read } from './session.ts';

/** Lists and reads notes, by address. */
export interface NoteSource {
  list(folders: readonly string[]): Promise<string[]>;
  /** The text; null when the note is gone or cannot be read. */
  read(uri: string): Promise<string | null>;
}

/** Requests of our own, answered by a client that says `files: true` when it starts the server. */
export const LIST_NOTES = 'sizewright/listNotes';
export const READ_NOTE = 'sizewright/readNote';

export const fromClient = (connection: Connection): NoteSource => ({
  list: () => connection.sendRequest<string[]>(LIST_NOTES),
  read: (uri) => connection.sendRequest<string | null>(READ_NOTE, { uri }),
});

interface Kept extends Read {
  readonly settings: Settings;
}

export class Notes {
  private source: NoteSource | undefined;
  private folders: readonly string[] = [];
  private listed: Promise<string[]> | undefined;
  private readonly kept = new Map<string, Kept>();

  constructor(disk: NoteSource | undefined) {
    this.source = disk;
  }

  begin(folders: readonly string[], source: NoteSource | undefined): void {
    this.folders = folders;
    this.source = source ?? this.source;
  }

  setFolders(folders: readonly string[]): void {
    this.folders = folders;
    this.listed = undefined;
  }

  /** Addresses of the notes in the workspace; none when they cannot be listed. */
  list(): Promise<string[]> {
    this.listed ??= this.source?.list(this.folders).catch(() => []) ?? Promise.resolve([]);
    return this.listed;
  }

  /** A saved note, analysed once until it changes on disk. */
  async read(uri: string, settings: Settings): Promise<Read | undefined> {
    const known = this.kept.get(uri);
    if (known?.settings === settings) return known;
    const text = await this.source?.read(uri).catch(() => null);
    if (text === undefined || text === null) return undefined;
    const document = TextDocument.create(uri, 'markdown', 0, text);
    const kept = { document, settings, analysis: analyse(text, settings, uri) };
    this.kept.set(uri, kept);
    return kept;
  }

  /** Forgets a note that changed on disk; the list too when it came or went. */
  changed(uri: string, cameOrWent: boolean): void {
    this.kept.delete(uri);
    if (cameOrWent) this.listed = undefined;
  }
}
