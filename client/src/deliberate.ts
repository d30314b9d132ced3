/** Leaving an error in on purpose: the author says why, and the mark is written with the reason. */
import { commands, type Disposable, l10n, Position, Uri, WorkspaceEdit, window, workspace } from 'vscode';
import { markOf } from '../../server/src/editor/deliberate-mark.ts';

export const offerReasons = (): Disposable[] => [
  commands.registerCommand('sizewright.markDeliberate', markDeliberate),
];

interface Place {
  readonly line: number;
  readonly character: number;
}

/** Called by the server's quick fix with the note, its version and the place of the mark. */
async function markDeliberate(uri: string, version: number, place: Place): Promise<void> {
  const reason = await window.showInputBox({
    title: l10n.t('Leave this error in on purpose'),
    prompt: l10n.t('Why does it stay? The reason is written into a comment in the note.'),
    placeHolder: l10n.t('for example: find-the-error exercise'),
    validateInput: (text) => (text.trim() === '' ? l10n.t('A mark needs a reason.') : undefined),
  });
  if (reason === undefined) return;
  const document = await workspace.openTextDocument(Uri.parse(uri, true));
  if (document.version !== version) {
    void window.showWarningMessage(l10n.t('The note changed meanwhile; nothing was written. Try again.'));
    return;
  }
  const edit = new WorkspaceEdit();
  edit.insert(document.uri, new Position(place.line, place.character), markOf(reason));
  await workspace.applyEdit(edit);
}
