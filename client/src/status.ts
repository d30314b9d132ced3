/** One item in the status bar: how many sizes the note names, how many findings it has. */
import {
  type Disposable,
  l10n,
  languages,
  StatusBarAlignment,
  type StatusBarItem,
  type TextEditor,
  window,
  workspace,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** After the last change, ms. */
const QUIET = 400;

export function offerStatus(client: BaseLanguageClient): Disposable[] {
  const item = window.createStatusBarItem('sizewright.sizes', StatusBarAlignment.Right, 50);
  item.name = l10n.t('Sizes in this note');
  item.command = 'sizewright.openChart';
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const update = (): void => void show(client, item, window.activeTextEditor);
  const updateSoon = (): void => {
    clearTimeout(waiting);
    waiting = setTimeout(update, QUIET);
  };
  update();
  return [
    item,
    window.onDidChangeActiveTextEditor(update),
    languages.onDidChangeDiagnostics(updateSoon),
    workspace.onDidChangeTextDocument(updateSoon),
  ];
}

async function show(
  client: BaseLanguageClient,
  item: StatusBarItem,
  editor: TextEditor | undefined,
): Promise<void> {
  if (editor?.document.languageId !== 'markdown') {
    item.hide();
    return;
  }
  const uri = client.code2ProtocolConverter.asUri(editor.document.uri);
  const counts = await client
    .sendRequest<{ sizes: number; findings: number } | null>('sizewright/summary', { uri })
    .catch(() => null);
  if (counts === null || editor !== window.activeTextEditor) return;
  item.text = `$(symbol-ruler) ${counts.sizes}${counts.findings > 0 ? ` $(warning) ${counts.findings}` : ''}`;
  item.tooltip = l10n.t(
    '{0} sizes, {1} findings in this note. Open the size chart.',
    counts.sizes,
    counts.findings,
  );
  item.accessibilityInformation = { label: item.tooltip, role: 'button' };
  item.show();
}
