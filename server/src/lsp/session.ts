/** What one client has open: its documents, its settings, and each note's analysis until it changes. */

import { type ClientCapabilities, type Connection, Emitter, TextDocuments } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { type Analysis, analyse, type Settings } from '../course/index.ts';
import type { Locale } from '../texts/index.ts';
import { Across } from './across.ts';
import { CourseFiles, type Faulty } from './course-files.ts';
import { firstLook } from './first-look.ts';
import type { Notes } from './notes.ts';
import { DEFAULTS, type EditorSettings, readSettings } from './settings.ts';

/** A note with its analysis and the settings behind it, open or not. */
export interface Read {
  readonly document: TextDocument;
  readonly analysis: Analysis;
  readonly settings: EditorSettings;
  /** What the course and the author together decide for the note. */
  readonly decided: Settings;
}

/** What is known of a note before it is read whole. */
export type Glimpse = Pick<Read, 'document' | 'settings'> & {
  readonly analysis: Pick<Analysis, 'findings'>;
};

interface Memo {
  readonly version: number;
  readonly settings: Settings;
  readonly analysis: Analysis;
  /** What the analysis took, ms. */
  readonly took: number;
}

/** A note that is read in less than this, ms, is read on every keystroke. */
const QUICK = 12;

export class Session {
  readonly connection: Connection;
  readonly documents = new TextDocuments(TextDocument);
  /** Notes of the workspace that may not be open. */
  readonly files: Notes;
  /** The notes of the course set against each other. */
  readonly across = new Across();
  /** Settings files of the course. */
  readonly course: CourseFiles;
  capabilities: ClientCapabilities = {};
  /** Language of what the author reads. */
  locale: Locale = 'en';
  /** The client asks the author why an error is left in, by a command of ours. */
  asksReasons = false;
  /** The client shows pages about checks, under an address of ours. */
  showsPages = false;
  /** The client shows a finding beside the hover over it. */
  showsFindings = false;

  readonly pageOf = (check: string): string | undefined =>
    this.showsPages ? `sizewright-check:/${check}.md` : undefined;

  /** Settings sent by a client that cannot be asked. */
  private sent: EditorSettings = DEFAULTS;
  private readonly asked = new Map<string, Promise<EditorSettings>>();
  private readonly analyses = new Map<string, Memo>();
  private readonly changes = new Emitter<void>();
  private readonly faults = new Emitter<Faulty>();
  private merged = new WeakMap<EditorSettings, WeakMap<Settings, Settings>>();

  constructor(connection: Connection, files: Notes) {
    this.connection = connection;
    this.files = files;
    this.course = new CourseFiles(
      (uri) => files.text(uri),
      (file) => this.faults.fire(file),
    );
    this.documents.onDidChangeContent(() => this.changes.fire());
    this.documents.onDidClose(({ document }) => {
      this.analyses.delete(document.uri);
      this.asked.delete(document.uri);
      this.across.forget(document.uri);
      this.changes.fire();
    });
  }

  /** Something changed that findings may depend on. */
  readonly onChange = this.changes.event;

  /** A settings file of the course was read. */
  readonly onCourseFile = this.faults.event;

  /** Keeps settings a client sent; the next request asks again where the client can be asked. */
  take(section: unknown): void {
    if (section !== undefined && section !== null) this.sent = readSettings(section);
    this.asked.clear();
    this.changes.fire();
  }

  /** A file on disk changed, came or went. */
  fileChanged(uri: string, cameOrWent: boolean): void {
    this.files.changed(uri, cameOrWent);
    if (cameOrWent) this.asked.delete(uri);
    this.changes.fire();
  }

  courseChanged(): void {
    this.course.clear();
    this.changes.fire();
  }

  /** Settings of the editor for a note. */
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

  /** Settings of the editor for a note, and what they and the course together decide. */
  private async decide(uri: string): Promise<Pick<Read, 'settings' | 'decided'>> {
    const settings = await this.settings(uri);
    return { settings, decided: this.together(settings, await this.course.settingsFor(uri)) };
  }

  /** The open note, analysed once a version. Undefined when it is not open. */
  async open(uri: string): Promise<Read | undefined> {
    if (this.documents.get(uri) === undefined) return undefined;
    const { settings, decided } = await this.decide(uri);
    // No pause from here on: version, text and analysis belong together.
    const document = this.documents.get(uri);
    return document && { document, settings, decided, analysis: this.analysed(document, decided) };
  }

  private analysed(document: TextDocument, settings: Settings): Analysis {
    const known = this.analyses.get(document.uri);
    if (known?.version === document.version && known.settings === settings) return known.analysis;
    const start = performance.now();
    const analysis = analyse(document.getText(), settings, document.uri);
    const took = performance.now() - start;
    this.analyses.set(document.uri, { version: document.version, settings, analysis, took });
    return analysis;
  }

  /** Long notes that are read when the typing pauses. */
  readonly typing = new Set<string>();

  /** A long note is being typed, or was just opened, and will be read soon; the client will be told to ask again. */
  isTyping(uri: string): boolean {
    return this.typing.has(uri) && (this.outdated(uri) !== undefined || this.isNew(uri));
  }

  /** An open note that was never read. */
  private isNew(uri: string): boolean {
    return !this.analyses.has(uri) && this.documents.get(uri) !== undefined;
  }

  /** What is contradicted at the top of a long note that was never read; undefined when there is nothing to tell early. */
  async firstLook(uri: string): Promise<Glimpse | undefined> {
    if (!this.asksAgain || !this.isNew(uri)) return undefined;
    const { settings, decided } = await this.decide(uri);
    const document = this.documents.get(uri);
    if (document === undefined || !this.isNew(uri)) return undefined;
    const findings = firstLook(document.getText(), decided, uri);
    return findings && { document, settings, analysis: { findings } };
  }

  get asksAgain(): boolean {
    return this.capabilities.workspace?.diagnostics?.refreshSupport === true;
  }

  /** The last analysis of a note that changed since and takes too long to read on every keystroke. */
  outdated(uri: string): { readonly analysis: Analysis; readonly took: number } | undefined {
    const known = this.analyses.get(uri);
    const document = this.documents.get(uri);
    if (known === undefined || document === undefined || known.version === document.version) return undefined;
    return known.took < QUICK ? undefined : known;
  }

  /**
   * The course decides, the author's own levels decide over it, and the client's language is added. One object for one
   * pair, as a key of memos.
   */
  private together(editor: EditorSettings, course: Settings): Settings {
    if (Object.keys(editor.severity).length === 0 && this.locale === 'en') return course;
    const mine = this.merged.get(editor) ?? new WeakMap<Settings, Settings>();
    this.merged.set(editor, mine);
    const known = mine.get(course);
    const made = known ?? {
      ...course,
      severity: { ...course.severity, ...editor.severity },
      context: { ...course.context, locale: this.locale },
    };
    mine.set(course, made);
    return made;
  }

  /** How a note is named in messages: by its path in the workspace. */
  nameOf(uri: string): string {
    return decodeURI(this.files.within(uri));
  }

  /** Addresses of every note of the course: those of the workspace and those open. */
  async notes(): Promise<string[]> {
    const all = [...new Set([...(await this.files.list()), ...this.documents.keys()])].sort();
    const kept = await Promise.all(all.map((uri) => this.course.keeps(uri)));
    return all.filter((_, index) => kept[index]);
  }

  /** A note with its analysis; the open text counts before the saved one. Undefined when it cannot be read. */
  async read(uri: string): Promise<Read | undefined> {
    if (this.documents.get(uri) !== undefined) return this.open(uri);
    const { settings, decided } = await this.decide(uri);
    const saved = await this.files.read(uri, decided);
    return saved && { ...saved, settings, decided };
  }
}
