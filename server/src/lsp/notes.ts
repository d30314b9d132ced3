/** Notes of the workspace that are not open: read through the client where it offers that, else from disk. */
import type { Connection } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { type Analysis, analyse, type Settings } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';

/** Lists and reads notes, by address. */
export interface NoteSource {
  list(folders: readonly string[]): Promise<string[]>;
  /** The text; null when the file is gone or cannot be read. */
  read(uri: string): Promise<string | null>;
}

/** Requests of our own, answered by a client that says `files: true` when it starts the server. */
export const LIST_NOTES = 'sizewright/listNotes';
export const READ_NOTE = 'sizewright/readNote';

export const fromClient = (connection: Connection): NoteSource => ({
  list: () => connection.sendRequest<string[]>(LIST_NOTES),
  read: (uri) => connection.sendRequest<string | null>(READ_NOTE, { uri }),
});

interface Saved {
  readonly document: TextDocument;
  readonly analysis: Analysis;
  readonly by: Settings;
}

export class Notes {
  private source: NoteSource | undefined;
  private folders: readonly string[] = [];
  private listed: Promise<string[]> | undefined;
  private readonly kept = new Map<string, Saved>();

  constructor(disk: NoteSource | undefined) {
    this.source = disk;
  }

  begin(folders: readonly string[], source?: NoteSource): void {
    this.folders = folders;
    this.source = source ?? this.source;
    this.listed = undefined;
  }

  /** The address without that of the workspace folder it lies in. */
  within(uri: string): string {
    const folder = this.folders.find((each) => uri.startsWith(`${each.replace(/\/$/, '')}/`));
    return folder === undefined
      ? uri.slice(uri.lastIndexOf('/') + 1)
      : uri.slice(folder.replace(/\/$/, '').length + 1);
  }

  /** Addresses of the notes in the workspace; none when they cannot be listed. */
  list(): Promise<string[]> {
    this.listed ??= this.source?.list(this.folders).catch(() => []) ?? Promise.resolve([]);
    return this.listed;
  }

  /** The text of any file; null when it cannot be read. */
  async text(uri: string): Promise<string | null> {
    return (await this.source?.read(uri).catch(() => null)) ?? null;
  }

  /** A saved note, analysed once until it changes on disk. */
  async read(uri: string, settings: Settings): Promise<Saved | undefined> {
    const known = this.kept.get(uri);
    if (known?.by === settings) return known;
    const text = known?.document.getText() ?? (await this.text(uri));
    if (text === null) return undefined;
    const document = TextDocument.create(uri, 'markdown', 0, text);
    const saved = { document, by: settings, analysis: analyse(text, settings, uri) };
    this.kept.set(uri, saved);
    return saved;
  }

  /** Mentions of the notes read so far, without one; nothing is read for them. */
  known(without: string): Mention[] {
    return [...this.kept].flatMap(([uri, { analysis }]) => (uri === without ? [] : analysis.mentions));
  }

  /** Forgets a note that changed on disk; the list too when it came or went. */
  changed(uri: string, cameOrWent: boolean): void {
    this.kept.delete(uri);
    if (cameOrWent) this.listed = undefined;
  }
}
