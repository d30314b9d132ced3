/** One connection, start to end: what is offered, which handler answers what. */
import {
  type Connection,
  DidChangeConfigurationNotification,
  type InitializeParams,
  type InitializeResult,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { type Guard, guardFor } from './guard.ts';
import { FIX_ALL, offerActions } from './handlers/actions.ts';
import { offerDiagnostics } from './handlers/diagnostics.ts';
import { offerHover } from './handlers/hover.ts';
import { Session } from './session.ts';

/** What the surroundings give: reading notes that are not open. */
export interface Host {
  readonly version: string;
}

/** A feature registers its handlers and says what it offers. */
export type Offer = (session: Session, guard: Guard) => void;

const OFFERS: readonly Offer[] = [offerDiagnostics, offerHover, offerActions];

/** Serves a client over the connection until it hangs up. */
export function serve(connection: Connection, host: Host): void {
  const session = new Session(connection);
  const guard = guardFor(connection);
  connection.onInitialize((params) => begin(session, host, params));
  connection.onInitialized(() => listenToSettings(session));
  connection.onDidChangeConfiguration(({ settings }) => session.take(settings?.sizewright));
  for (const offer of OFFERS) offer(session, guard);
  session.documents.listen(connection);
  connection.listen();
}

function begin(session: Session, host: Host, params: InitializeParams): InitializeResult {
  session.capabilities = params.capabilities;
  session.take(params.initializationOptions?.settings);
  return {
    serverInfo: { name: 'sizewright', version: host.version },
    capabilities: {
      positionEncoding: 'utf-16',
      textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
      hoverProvider: true,
      diagnosticProvider: {
        identifier: 'sizewright',
        interFileDependencies: false,
        workspaceDiagnostics: false,
      },
      codeActionProvider: { codeActionKinds: ['quickfix', 'refactor.rewrite', FIX_ALL] },
    },
  };
}

async function listenToSettings(session: Session): Promise<void> {
  if (session.capabilities.workspace?.didChangeConfiguration?.dynamicRegistration !== true) return;
  await session.connection.client.register(DidChangeConfigurationNotification.type, {
    section: 'sizewright',
  });
}
