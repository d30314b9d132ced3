import type {
  CancellationToken,
  WorkspaceDiagnosticParams,
  WorkspaceDiagnosticReport,
  WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver';
import { breathe, check } from '../cancel.ts';
import { fullReport } from '../diagnostics.ts';
import type { Guard } from '../guard.ts';
import type { Read, Session } from '../session.ts';
import { refreshDiagnostics } from './diagnostics.ts';

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
  const reads = await readAll(session, token);
  const found: WorkspaceDocumentDiagnosticReport[] = [];
  for (const [uri, read] of reads) {
    const { items, resultId } = fullReport(session, uri, read);
    if (before.get(uri) === resultId || (items.length === 0 && !before.has(uri))) continue;
    const version = session.documents.get(uri)?.version ?? null;
    found.push({ kind: 'full', uri, version, resultId, items });
  }
  for (const [uri, id] of before)
    if (!reads.has(uri) && id !== '')
      found.push({ kind: 'full', uri, version: null, resultId: '', items: [] });
  return found;
}

/** Every note of the course. When one begins to name a device otherwise, open notes are to be asked about again. */
async function readAll(session: Session, token: CancellationToken): Promise<Map<string, Read>> {
  const reads = new Map<string, Read>();
  let renamed = false;
  for (const uri of await session.notes()) {
    await breathe(token);
    const read = await session.read(uri);
    if (read === undefined) continue;
    reads.set(uri, read);
    renamed = session.across.take(uri, session.nameOf(uri), read) || renamed;
  }
  session.across.keep(new Set(reads.keys()));
  if (renamed) refreshDiagnostics(session);
  return reads;
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
