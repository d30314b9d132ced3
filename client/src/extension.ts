/** The extension on the desktop and on a remote host: the server runs as a process of its own. */
import type { ExtensionContext } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { clientOptions, type Running, start } from './client.ts';

let running: Running | undefined;

export async function activate(context: ExtensionContext): Promise<unknown> {
  const module = context.asAbsolutePath('dist/server-node.cjs');
  const run = { module, transport: TransportKind.ipc };
  const client = new LanguageClient('sizewright', 'Sizewright', { run, debug: run }, clientOptions());
  running = await start(context, client);
  return running.api;
}

export const deactivate = (): Promise<void> | undefined => running?.stop();
