/** What one client has open: its documents, its settings, and each note's analysis until it changes. */
import { type ClientCapabilities, type Connection, TextDocuments } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { type Analysis, analyse, DEFAULT_SETTINGS, type Settings } from '../course/index.ts';
import type { Notes } from './notes.ts';
import { DEFAULTS, type EditorSettings, readSettings } from './settings.ts';

interface Memo {
  readonly version: number;
  readonly settings: Settings;
  readonly analysis: Analysis;
}

/** A note with its analysis, open or not. */
export interface Read {
  readonly document: TextDocument;
  readonly analysis: Analysis;
}

export class Session {
  readonly documents = new TextDocuments(TextDocument);
  readonly connection: Connection;
  capabilities: ClientCapabilities = {};
  /** Settings sent by a client that cannot be asked. */
  private sent: EditorSettings = DEFAULTS;
  private readonly asked = new Map<string, Promise<EditorSettings>>();
  private readonly analyses = new Map<string, Memo>();
  private readonly course = new WeakMap<EditorSettings, Settings>();

  /** Notes of the workspace that may not be open. */
  readonly files: Notes;

  constructor(connection: Connection, files: Notes) {
    this.connection = connection;
    this.files = files;
    this.documents.onDidClose(({ document }) => this.forget(document.uri));
  }

  private forget(uri: string): void {
    this.analyses.delete(uri);
    this.asked.delete(uri);
  }

  /** Keeps settings a client sent; the next request asks again where the client can be asked. */
  take(section: unknown): void {
    this.sent = readSettings(section);
    this.asked.clear();
  }

  /** Settings for a note. */
  settings(uri: string): Promise<EditorSettings> {
    if (this.capabilities.workspace?.configuration !== true) return Promise.resolve(this.sent);
    const known = this.asked.get(uri);
    if (known !== undefined) return known;
    const answer = this.connection.workspace
      .getConfiguration({ scopeUri: uri, section: 'sizewright' })
      .then(readSettings, () => this.sent);
    this.asked.set(uri, answer);
    return answer;
  }

  /** The analysis of an open note, computed once a version. */
  async analysis(document: TextDocument): Promise<Analysis> {
    const settings = this.courseSettings(await this.settings(document.uri));
    const known = this.analyses.get(document.uri);
    if (known?.version === document.version && known.settings === settings) return known.analysis;
    const analysis = analyse(document.getText(), settings, document.uri);
    this.analyses.set(document.uri, { version: document.version, settings, analysis });
    return analysis;
  }

  private courseSettings(settings: EditorSettings): Settings {
    const known = this.course.get(settings);
    if (known !== undefined) return known;
    const made: Settings = { ...DEFAULT_SETTINGS, severity: settings.severity };
    this.course.set(settings, made);
    return made;
  }

  /** Addresses of every note known: those of the workspace and those open. */
  async notes(): Promise<string[]> {
    return [...new Set([...(await this.files.list()), ...this.documents.keys()])].sort();
  }

  /** A note with its analysis; the open text counts before the saved one. Undefined when it cannot be read. */
  async read(uri: string): Promise<Read | undefined> {
    const open = this.documents.get(uri);
    if (open !== undefined) return { document: open, analysis: await this.analysis(open) };
    const settings = this.courseSettings(await this.settings(uri));
    return this.files.read(uri, settings);
  }
}
