/** What both builds of the extension share: the client's options and everything that is offered beside the protocol. */
import { type ExtensionContext, type LogOutputChannel, window, workspace } from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';
import { offerChart } from './chart.ts';
import { offerCommands } from './commands.ts';
import { offerReasons } from './deliberate.ts';
import { answerFiles } from './files.ts';
import { offerPages } from './pages.ts';
import { previewExtender } from './preview.ts';
import { offerSheets } from './sheets.ts';
import { offerStatus } from './status.ts';
import { offerTools } from './tools.ts';

export interface Running {
  /** What `activate` hands to the editor. */
  readonly api: unknown;
  stop(): Promise<void>;
}

let log: LogOutputChannel | undefined;

/** Notes of any scheme: on disk, in a browser, on a remote host, in a virtual workspace, untitled. */
export function clientOptions(): LanguageClientOptions {
  log ??= window.createOutputChannel('Sizewright', { log: true });
  return {
    documentSelector: [{ language: 'markdown' }, { pattern: '**/*.{vtt,srt}' }],
    outputChannel: log,
    initializationOptions: {
      // Plain data only: a configuration has functions, which no message to a worker can carry.
      settings: JSON.parse(JSON.stringify(workspace.getConfiguration('sizewright'))),
      files: true,
      asksReasons: true,
      showsPages: true,
      showsFindings: true,
    },
    diagnosticPullOptions: { onChange: true, onSave: false, onTabs: false },
    markdown: { isTrusted: false, supportHtml: false },
  };
}

export async function start(context: ExtensionContext, client: BaseLanguageClient): Promise<Running> {
  context.subscriptions.push(
    ...answerFiles(client),
    ...offerCommands(client),
    ...offerReasons(),
    ...offerPages(client),
    ...offerSheets(client),
    ...offerChart(client, context.extensionUri),
    ...offerTools(client),
  );
  await client.start();
  context.subscriptions.push(...offerStatus(client));
  return { api: { extendMarkdownIt: previewExtender(client) }, stop: () => client.dispose() };
}
