import {
  type Diagnostic,
  DiagnosticSeverity,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  FileChangeType,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { SETTINGS_FILE } from '../../course/index.ts';
import type { Faulty } from '../course-files.ts';
import { ORIGIN } from '../diagnostics.ts';
import { rangeOf } from '../positions.ts';
import type { Session } from '../session.ts';
import { refresh } from './diagnostics.ts';

/** Settings, files and folders that change outside the open notes. */
export function offerWatching(session: Session): void {
  const { connection } = session;
  connection.onInitialized(
    () => void subscribe(session).catch((error) => connection.console.error(`${error}`)),
  );
  connection.onDidChangeConfiguration(({ settings }) => {
    session.take(settings?.sizewright);
    refresh(session);
  });
  connection.onDidChangeWatchedFiles(({ changes }) => {
    for (const { uri, type } of changes) session.fileChanged(uri, type !== FileChangeType.Changed);
    if (!changes.some(({ uri }) => uri.endsWith(`/${SETTINGS_FILE}`))) return;
    session.courseChanged();
    refresh(session);
  });
  session.onCourseFile(
    (file) => void connection.sendDiagnostics({ uri: file.uri, diagnostics: faults(file) }),
  );
}

async function subscribe(session: Session): Promise<void> {
  const { workspace } = session.capabilities;
  const { client } = session.connection;
  if (workspace?.didChangeConfiguration?.dynamicRegistration === true) {
    await client.register(DidChangeConfigurationNotification.type, { section: 'sizewright' });
  }
  if (workspace?.didChangeWatchedFiles?.dynamicRegistration === true) {
    const watchers = [{ globPattern: '**/*.{md,markdown,vtt,srt}' }, { globPattern: `**/${SETTINGS_FILE}` }];
    await client.register(DidChangeWatchedFilesNotification.type, { watchers });
  }
  if (workspace?.workspaceFolders === true) {
    session.connection.workspace.onDidChangeWorkspaceFolders(() => void folders(session));
    await folders(session);
  }
}

async function folders(session: Session): Promise<void> {
  const all = await session.connection.workspace.getWorkspaceFolders();
  const roots = (all ?? []).map((folder) => folder.uri);
  session.files.begin(roots);
  session.course.begin(roots);
  session.courseChanged();
}

/** What is wrong in a settings file, shown in that file. */
function faults({ uri, text, problems }: Faulty): Diagnostic[] {
  const document = TextDocument.create(uri, 'json', 0, text);
  return problems.map(({ span, message }) => ({
    range: rangeOf(document, span),
    severity: DiagnosticSeverity.Error,
    source: ORIGIN,
    message,
  }));
}
