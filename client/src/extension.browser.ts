/** The extension in a browser: the server runs in a web worker. */
import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { clientOptions, type Running, start } from './client.ts';

let running: Running | undefined;

export async function activate(context: ExtensionContext): Promise<unknown> {
  const address = Uri.joinPath(context.extensionUri, 'dist/server-worker.js').toString(true);
  const worker = new Worker(address, { name: 'Sizewright' });
  const client = new LanguageClient('sizewright', 'Sizewright', worker, clientOptions());
  running = await start(context, client);
  return running.api;
}

export const deactivate = (): Promise<void> | undefined => running?.stop();
