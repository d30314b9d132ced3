import type {
  CancellationToken,
  WorkspaceDiagnosticParams,
  WorkspaceDiagnosticReport,
  WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver';
import { breathe, check } from '../cancel.ts';
import { report } from '../diagnostics.ts';
import type { Guard } from '../guard.ts';
import type { Session } from '../session.ts';

/** After a change, ms: one more keystroke should not make the course be read twice. */
const QUIET = 300;

/**
 * The whole course. A client asks again as soon as it has an answer, so an answer that would say "nothing new" waits
 * until something changes.
 */
export function offerWorkspaceDiagnostics(session: Session, guard: Guard): void {
  session.connection.languages.diagnostics.onWorkspace(
    guard<WorkspaceDiagnosticParams, WorkspaceDiagnosticReport>(
      'workspaceDiagnostic',
      { items: [] },
      async ({ previousResultIds }, token) => {
        const before = new Map(previousResultIds.map(({ uri, value }) => [uri, value]));
        for (;;) {
          const changed = nextChange(session, token);
          const items = await reports(session, before, token);
          if (items.length > 0) return { items };
          await changed;
          check(token);
        }
      },
    ),
  );
}

/** Reports that say something new, and the end of those whose note is gone. */
async function reports(
  session: Session,
  before: ReadonlyMap<string, string>,
  token: CancellationToken,
): Promise<WorkspaceDocumentDiagnosticReport[]> {
  const found: WorkspaceDocumentDiagnosticReport[] = [];
  const gone = new Set(before.keys());
  for (const uri of await session.notes()) {
    await breathe(token);
    const read = await session.read(uri);
    if (read === undefined) continue;
    gone.delete(uri);
    const { items, resultId } = report(read, session.pageOf);
    if (before.get(uri) === resultId || (items.length === 0 && !before.has(uri))) continue;
    const version = session.documents.get(uri)?.version ?? null;
    found.push({ kind: 'full', uri, version, resultId, items });
  }
  for (const uri of gone)
    if (before.get(uri) !== '') found.push({ kind: 'full', uri, version: null, resultId: '', items: [] });
  return found;
}

/** Settles a moment after the next change, or at once when the client gives up. */
function nextChange(session: Session, token: CancellationToken): Promise<void> {
  return new Promise((resolve) => {
    const ends = [session.onChange(() => finish(QUIET)), token.onCancellationRequested(() => finish(0))];
    function finish(after: number): void {
      for (const end of ends) end.dispose();
      setTimeout(resolve, after);
    }
  });
}
