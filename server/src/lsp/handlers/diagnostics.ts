import {
  type Diagnostic,
  DiagnosticRefreshRequest,
  type DocumentDiagnosticParams,
  type DocumentDiagnosticReport,
} from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { breathe } from '../cancel.ts';
import { diagnosticsOf, resultId, shown } from '../diagnostics.ts';
import type { Guard } from '../guard.ts';
import type { Session } from '../session.ts';

const NOTHING: DocumentDiagnosticReport = { kind: 'full', items: [] };

/** Pull for clients that can; the others get findings pushed a moment after the last edit. Never both. */
export function offerDiagnostics(session: Session, guard: Guard): void {
  session.connection.languages.diagnostics.on(
    guard<DocumentDiagnosticParams, DocumentDiagnosticReport>(
      'diagnostic',
      NOTHING,
      async (params, token) => {
        await breathe(token);
        const document = session.documents.get(params.textDocument.uri);
        if (document === undefined) return NOTHING;
        const items = await current(session, document);
        const id = resultId(items);
        return id === params.previousResultId
          ? { kind: 'unchanged', resultId: id }
          : { kind: 'full', resultId: id, items };
      },
    ),
  );
  session.connection.onDidChangeConfiguration(({ settings }) => {
    session.take(settings?.sizewright);
    refresh(session);
  });
  push(session);
}

async function current(session: Session, document: TextDocument): Promise<Diagnostic[]> {
  const analysis = await session.analysis(document);
  return diagnosticsOf(document, shown(analysis, await session.settings(document.uri)));
}

const pulls = (session: Session): boolean => session.capabilities.textDocument?.diagnostic !== undefined;

/** After the last edit, ms. */
const QUIET = 120;

function push(session: Session): void {
  const waiting = new Map<string, ReturnType<typeof setTimeout>>();
  const cancel = (uri: string): void => clearTimeout(waiting.get(uri));
  session.documents.onDidChangeContent(({ document }) => {
    if (pulls(session)) return;
    cancel(document.uri);
    waiting.set(
      document.uri,
      setTimeout(() => void send(session, document.uri), QUIET),
    );
  });
  session.documents.onDidClose(({ document }) => {
    cancel(document.uri);
    waiting.delete(document.uri);
    if (!pulls(session)) void session.connection.sendDiagnostics({ uri: document.uri, diagnostics: [] });
  });
}

async function send(session: Session, uri: string): Promise<void> {
  const document = session.documents.get(uri);
  if (document === undefined) return;
  const version = document.version;
  try {
    const diagnostics = await current(session, document);
    await session.connection.sendDiagnostics({ uri, version, diagnostics });
  } catch (error) {
    session.connection.console.error(`diagnostics: ${error}`);
  }
}

/** Settings changed: every open note is judged again. */
function refresh(session: Session): void {
  if (!pulls(session)) {
    for (const uri of session.documents.keys()) void send(session, uri);
  } else if (session.capabilities.workspace?.diagnostics?.refreshSupport === true) {
    void session.connection.sendRequest(DiagnosticRefreshRequest.type).catch(() => undefined);
  }
}
