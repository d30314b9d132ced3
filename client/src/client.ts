/** What both builds of the extension share: options, requests the server makes, commands, shutdown. */
import { commands, type ExtensionContext, type LogOutputChannel, window, workspace } from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';
import { answerFiles } from './files.ts';

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
    documentSelector: [{ language: 'markdown' }],
    outputChannel: log,
    initializationOptions: { settings: workspace.getConfiguration('sizewright'), files: true },
    diagnosticPullOptions: { onChange: true, onSave: false, onTabs: false },
    markdown: { isTrusted: false, supportHtml: false },
  };
}

export async function start(context: ExtensionContext, client: BaseLanguageClient): Promise<Running> {
  context.subscriptions.push(...answerFiles(client), ...offerCommands(client));
  await client.start();
  return { api: undefined, stop: () => client.dispose() };
}

const offerCommands = (client: BaseLanguageClient) => [
  commands.registerCommand('sizewright.showLog', () => client.outputChannel.show()),
  commands.registerCommand('sizewright.restart', () => restart(client)),
  commands.registerCommand('sizewright.mendAll', () =>
    commands.executeCommand('editor.action.sourceAction', {
      kind: 'source.fixAll.sizewright',
      apply: 'first',
    }),
  ),
];

async function restart(client: BaseLanguageClient): Promise<void> {
  await client.stop();
  await client.start();
}
