/** A client in memory: the server runs in this process, joined by two streams. */
import { PassThrough } from 'node:stream';
import { createConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver/node';
import {
  type ClientCapabilities,
  createMessageConnection,
  type InitializeResult,
  type MessageConnection,
} from 'vscode-languageserver-protocol/node';
import { serve } from '../../server/src/lsp/index.ts';
import type { NoteSource } from '../../server/src/lsp/notes.ts';

export interface Client {
  readonly connection: MessageConnection;
  readonly begun: InitializeResult;
  /** Opens a note and gives its address. */
  open(text: string, name?: string): string;
  request<R>(method: string, params: unknown): Promise<R>;
  /** Everything the server logged as an error. */
  readonly errors: string[];
  close(): void;
}

export const PULL: ClientCapabilities = {
  textDocument: { diagnostic: {} },
  workspace: { workspaceEdit: { documentChanges: true } },
};

export interface Start {
  readonly capabilities?: ClientCapabilities;
  readonly settings?: unknown;
  readonly disk?: NoteSource;
  /** More initialization options. */
  readonly options?: Readonly<Record<string, unknown>>;
  /** Folder of the workspace. */
  readonly root?: string;
  /** Language of the client, as "de-CH". */
  readonly locale?: string;
}

export async function startClient({
  capabilities = PULL,
  settings,
  disk,
  root,
  options,
  locale,
}: Start = {}): Promise<Client> {
  const [up, down] = [new PassThrough(), new PassThrough()];
  serve(createConnection(new StreamMessageReader(up), new StreamMessageWriter(down)), {
    version: '0.0.0',
    ...(disk === undefined ? {} : { disk }),
  });
  const connection = createMessageConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
  const errors: string[] = [];
  connection.onNotification('window/logMessage', ({ type, message }) => {
    if (type === 1) errors.push(message);
  });
  connection.listen();
  const begun = await connection.sendRequest<InitializeResult>('initialize', {
    processId: null,
    rootUri: root ?? null,
    capabilities,
    ...(locale === undefined ? {} : { locale }),
    initializationOptions: { settings, ...options },
  });
  void connection.sendNotification('initialized', {});
  return {
    connection,
    begun,
    errors,
    open(text, name = 'note.md') {
      const uri = `file:///course/${name}`;
      const textDocument = { uri, languageId: 'markdown', version: 1, text };
      void connection.sendNotification('textDocument/didOpen', { textDocument });
      return uri;
    },
    request: (method, params) => connection.sendRequest(method, params),
    close() {
      connection.dispose();
    },
  };
}
