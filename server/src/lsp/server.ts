/** One connection, start to end: what is offered, which handler answers what. */

import {
  type Connection,
  type InitializeParams,
  type InitializeResult,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { localeOf, say } from '../texts/index.ts';
import { type Guard, guardFor } from './guard.ts';
import { FIX_ALL, offerActions } from './handlers/actions.ts';
import { offerCompletion } from './handlers/completion.ts';
import { offerDiagnostics } from './handlers/diagnostics.ts';
import { offerHints } from './handlers/hints.ts';
import { offerHover } from './handlers/hover.ts';
import { offerOwn } from './handlers/own.ts';
import { offerReferences } from './handlers/references.ts';
import { offerRename } from './handlers/rename.ts';
import { offerSelection } from './handlers/selection.ts';
import { offerSymbols } from './handlers/symbols.ts';
import { LEGEND, offerTokens } from './handlers/tokens.ts';
import { offerWatching } from './handlers/watching.ts';
import { offerWorkspaceDiagnostics } from './handlers/workspace-diagnostics.ts';
import { fromClient, type NoteSource, Notes } from './notes.ts';
import { Phase } from './phase.ts';
import { Session } from './session.ts';
import { ANSWER } from './texts.ts';

/** What the surroundings give: reading notes that are not open. */
export interface Host {
  readonly version: string;
  /** Reads notes from disk, for clients that do not hand them over. */
  readonly disk?: NoteSource;
}

/** A feature registers its handlers and says what it offers. */
export type Offer = (session: Session, guard: Guard) => void;

const OFFERS: readonly Offer[] = [
  offerDiagnostics,
  offerHover,
  offerActions,
  offerCompletion,
  offerHints,
  offerTokens,
  offerSymbols,
  offerReferences,
  offerRename,
  offerSelection,
  offerWorkspaceDiagnostics,
  offerWatching,
  offerOwn,
];

/** Serves a client over the connection until it hangs up. The phase tells whether it said goodbye first. */
export function serve(connection: Connection, host: Host): Phase {
  const session = new Session(connection, new Notes(host.disk));
  const phase = new Phase();
  const guard = guardFor(connection, phase);
  connection.onInitialize((params) => {
    phase.begin();
    return begin(session, host, params);
  });
  connection.onShutdown(() => phase.end());
  for (const offer of OFFERS) offer(session, guard);
  session.documents.listen(connection);
  connection.listen();
  return phase;
}

function begin(session: Session, host: Host, params: InitializeParams): InitializeResult {
  session.capabilities = params.capabilities;
  session.locale = localeOf(params.locale);
  session.take(params.initializationOptions?.settings);
  const folders =
    params.workspaceFolders?.map((folder) => folder.uri) ?? (params.rootUri ? [params.rootUri] : []);
  session.files.begin(
    folders,
    params.initializationOptions?.files === true ? fromClient(session.connection) : undefined,
  );
  session.showsPages = params.initializationOptions?.showsPages === true;
  session.showsFindings = params.initializationOptions?.showsFindings === true;
  session.asksReasons = params.initializationOptions?.asksReasons === true;
  session.course.begin(folders, session.locale);
  return {
    serverInfo: { name: 'sizewright', version: host.version },
    capabilities: {
      positionEncoding: 'utf-16',
      textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
      hoverProvider: true,
      completionProvider: {},
      diagnosticProvider: {
        identifier: 'sizewright',
        interFileDependencies: false,
        workspaceDiagnostics: true,
      },
      codeActionProvider: { codeActionKinds: ['quickfix', 'refactor.rewrite', FIX_ALL] },
      inlayHintProvider: true,
      semanticTokensProvider: { legend: LEGEND, full: { delta: true }, range: true },
      documentSymbolProvider: { label: say(session.locale, ANSWER.sizes) },
      workspaceSymbolProvider: true,
      referencesProvider: true,
      documentHighlightProvider: true,
      renameProvider: { prepareProvider: true },
      selectionRangeProvider: true,
      workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
    },
  };
}
