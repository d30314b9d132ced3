import {
  DiagnosticRefreshRequest,
  type DocumentDiagnosticParams,
  type DocumentDiagnosticReport,
} from 'vscode-languageserver';
import { breathe } from '../cancel.ts';
import { report } from '../diagnostics.ts';
import type { Guard } from '../guard.ts';
import type { Session } from '../session.ts';

const NOTHING: DocumentDiagnosticReport = { kind: 'full', items: [] };

/** Pull for clients that can; the others get findings pushed a moment after the last edit. Never both. */
export function offerDiagnostics(session: Session, guard: Guard): void {
  session.connection.languages.diagnostics.on(
    guard<DocumentDiagnosticParams, DocumentDiagnosticReport>(
      'diagnostic',
      NOTHING,
      async ({ textDocument, previousResultId }, token) => {
        await breathe(token);
        const read = await session.open(textDocument.uri);
        if (read === undefined) return NOTHING;
        const { items, resultId } = report(read);
        return resultId === previousResultId
          ? { kind: 'unchanged', resultId }
          : { kind: 'full', resultId, items };
      },
    ),
  );
  push(session);
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
    await session.connection.sendDiagnostics({ uri, version, diagnostics: report(read).items });
  } catch (error) {
    session.connection.console.error(`diagnostics: ${error}`);
  }
}

/** Settings changed: every open note is judged again, and what is drawn into it is asked for again. */
export function refresh(session: Session): void {
  const { workspace } = session.capabilities;
  if (!pulls(session)) {
    for (const uri of session.documents.keys()) void send(session, uri);
  } else if (workspace?.diagnostics?.refreshSupport === true) {
    void session.connection.sendRequest(DiagnosticRefreshRequest.type).catch(() => undefined);
  }
  if (workspace?.inlayHint?.refreshSupport === true) {
    void session.connection.languages.inlayHint.refresh().catch(() => undefined);
  }
  if (workspace?.semanticTokens?.refreshSupport === true) {
    void session.connection.languages.semanticTokens.refresh().catch(() => undefined);
  }
}
