/** The server for a web worker: the editor in the browser posts messages to it. */
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from 'vscode-languageserver/browser';
import { VERSION } from '../cli/version.ts';
import { serve } from '../lsp/index.ts';

declare const self: DedicatedWorkerGlobalScope;
type DedicatedWorkerGlobalScope = ConstructorParameters<typeof BrowserMessageReader>[0] & Worker;

serve(
  createConnection(ProposedFeatures.all, new BrowserMessageReader(self), new BrowserMessageWriter(self)),
  {
    version: VERSION,
  },
);
