import {
  DiagnosticRefreshRequest,
  type DocumentDiagnosticParams,
  type DocumentDiagnosticReport,
} from 'vscode-languageserver';
import { breathe } from '../cancel.ts';
import { fullReport, report } from '../diagnostics.ts';
import type { Guard } from '../guard.ts';
import type { Glimpse, Session } from '../session.ts';
import { moved } from '../typing.ts';

const NOTHING: DocumentDiagnosticReport = { kind: 'full', items: [] };

/** Pull for clients that can; the others get findings pushed a moment after the last edit. Never both. */
export function offerDiagnostics(session: Session, guard: Guard): void {
  const later = new Later(session);
  session.connection.languages.diagnostics.on(
    guard<DocumentDiagnosticParams, DocumentDiagnosticReport>(
      'diagnostic',
      NOTHING,
      async ({ textDocument, previousResultId }, token) => {
        await breathe(token);
        const { uri } = textDocument;
        const soon = (await later.soon(uri)) ?? (await later.first(uri));
        const read = soon === undefined ? await session.open(uri) : undefined;
        if (soon === undefined && read === undefined) return NOTHING;
        const { items, resultId } = read ? fullReport(session, uri, read) : report(soon!, session.pageOf);
        return resultId === previousResultId
          ? { kind: 'unchanged', resultId }
          : { kind: 'full', resultId, items };
      },
    ),
  );
  push(session);
}

/** Shortest and longest pause in typing before a long note is read whole, and what an answer takes to be sent, ms. */
const PAUSE = { least: 150, most: 1500, sent: 10 };

/** Answers for a long note from what is known, and reads it once the typing pauses. */
class Later {
  private readonly waiting = new Map<string, ReturnType<typeof setTimeout>>();
  private readonly session: Session;

  constructor(session: Session) {
    this.session = session;
    session.documents.onDidClose(({ document }) => {
      clearTimeout(this.waiting.get(document.uri));
      this.waiting.delete(document.uri);
      session.typing.delete(document.uri);
    });
  }

  /** Undefined when the note is read at once, or the client cannot be told to ask again. */
  async soon(uri: string): Promise<Glimpse | undefined> {
    const { session } = this;
    if (!session.asksAgain || session.outdated(uri) === undefined) return undefined;
    const settings = await session.settings(uri);
    // While the client was asked, the note may have been read or closed.
    const known = session.outdated(uri);
    const document = session.documents.get(uri);
    if (known === undefined || document === undefined) return undefined;
    this.readIn(Math.min(PAUSE.most, Math.max(PAUSE.least, known.took)), uri);
    const { note, findings } = known.analysis;
    return {
      document,
      settings,
      analysis: { findings: moved({ text: note.text, findings }, document.getText()) },
    };
  }

  /** What is contradicted at the top of a long note just opened; undefined when it is read whole at once. */
  async first(uri: string): Promise<Glimpse | undefined> {
    // Asked again before it was read: there is no more to tell early.
    if (this.waiting.has(uri)) return undefined;
    const glimpse = await this.session.firstLook(uri);
    if (glimpse !== undefined) this.readIn(PAUSE.sent, uri);
    return glimpse;
  }

  /** Reads the note in so many ms, unless it is asked for again before. */
  private readIn(pause: number, uri: string): void {
    clearTimeout(this.waiting.get(uri));
    this.session.typing.add(uri);
    this.waiting.set(
      uri,
      setTimeout(() => void this.read(uri), pause),
    );
  }

  private async read(uri: string): Promise<void> {
    this.waiting.delete(uri);
    this.session.typing.delete(uri);
    await this.session.open(uri).catch((error) => this.session.connection.console.error(`reading: ${error}`));
    refresh(this.session);
  }
}

/** Tells a client that understands it to ask again. */
export function refreshDiagnostics(session: Session): void {
  if (!session.asksAgain) return;
  void session.connection.sendRequest(DiagnosticRefreshRequest.type).catch(() => undefined);
}

export const pulls = (session: Session): boolean =>
  session.capabilities.textDocument?.diagnostic !== undefined;

/** After the last edit, ms. */
const QUIET = 120;

function push(session: Session): void {
  const waiting = new Map<string, ReturnType<typeof setTimeout>>();
  session.documents.onDidChangeContent(({ document: { uri } }) => {
    if (pulls(session)) return;
    clearTimeout(waiting.get(uri));
    waiting.set(
      uri,
      setTimeout(() => void send(session, uri), QUIET),
    );
  });
  session.documents.onDidClose(({ document: { uri } }) => {
    clearTimeout(waiting.get(uri));
    waiting.delete(uri);
    if (!pulls(session)) void session.connection.sendDiagnostics({ uri, diagnostics: [] });
  });
}

async function send(session: Session, uri: string): Promise<void> {
  try {
    const read = await session.open(uri);
    if (read === undefined) return;
    const { version } = read.document;
    await session.connection.sendDiagnostics({
      uri,
      version,
      diagnostics: fullReport(session, uri, read).items,
    });
  } catch (error) {
    session.connection.console.error(`diagnostics: ${error}`);
  }
}

/** Every open note is to be asked about again: its diagnostics, and what is drawn into it. */
export function refresh(session: Session): void {
  const { workspace } = session.capabilities;
  if (!pulls(session)) {
    for (const uri of session.documents.keys()) void send(session, uri);
  } else refreshDiagnostics(session);
  if (workspace?.inlayHint?.refreshSupport === true) {
    void session.connection.languages.inlayHint.refresh().catch(() => undefined);
  }
  if (workspace?.semanticTokens?.refreshSupport === true) {
    void session.connection.languages.semanticTokens.refresh().catch(() => undefined);
  }
}
