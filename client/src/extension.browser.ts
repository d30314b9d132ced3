/** The extension in a browser: the server runs in a web worker. */
import { type ExtensionContext, Uri, workspace } from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { clientOptions, type Running, start } from './client.ts';

let running: Running | undefined;

export async function activate(context: ExtensionContext): Promise<unknown> {
  const worker = await startWorker(Uri.joinPath(context.extensionUri, 'dist/server.js'));
  const client = new LanguageClient('sizewright', 'Sizewright', worker, clientOptions());
  running = await start(context, client);
  return running.api;
}

/** Some hosts start no worker from where they keep their extensions; there it is started from a copy in memory. */
async function startWorker(script: Uri): Promise<Worker> {
  try {
    return new Worker(script.toString(true), { name: 'Sizewright' });
  } catch {
    const bytes = await workspace.fs.readFile(script);
    const copy = new Blob([new TextDecoder().decode(bytes)], { type: 'text/javascript' });
    return new Worker(URL.createObjectURL(copy), { name: 'Sizewright' });
  }
}

export const deactivate = (): Promise<void> | undefined => running?.stop();
