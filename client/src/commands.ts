/** Commands that need nothing but the client. */
import { commands, type Disposable, l10n, window } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

export const offerCommands = (client: BaseLanguageClient): Disposable[] => [
  commands.registerCommand('sizewright.showLog', () => client.outputChannel.show()),
  commands.registerCommand('sizewright.restart', () => restart(client)),
  commands.registerCommand('sizewright.mendAll', mendAll),
];

async function restart(client: BaseLanguageClient): Promise<void> {
  await client.stop();
  await client.start();
}

async function mendAll(): Promise<void> {
  if (window.activeTextEditor === undefined) {
    void window.showInformationMessage(l10n.t('Open a note first.'));
    return;
  }
  const action = { kind: 'source.fixAll.sizewright', apply: 'first' };
  await commands.executeCommand('editor.action.sourceAction', action);
}
