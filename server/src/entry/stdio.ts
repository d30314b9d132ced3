/** The server over standard input and output. Bytes that are no message are answered as JSON-RPC asks. */
import {
  createConnection,
  ErrorCodes,
  ProposedFeatures,
  type ResponseMessage,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { type Host, serve } from '../lsp/server.ts';

/** Ends the process when the client hangs up: status 0 only when it shut the server down before. */
export function serveStdio(host: Host): void {
  const reader = new StreamMessageReader(process.stdin);
  const writer = new StreamMessageWriter(process.stdout);
  reader.onError(({ message }) => void writer.write(unreadable(message)).catch(() => undefined));
  const phase = serve(createConnection(ProposedFeatures.all, reader, writer), host);
  for (const end of ['end', 'close']) process.stdin.once(end, () => process.exit(phase.over ? 0 : 1));
}

const unreadable = (message: string): ResponseMessage => ({
  jsonrpc: '2.0',
  id: null,
  error: { code: ErrorCodes.ParseError, message },
});
