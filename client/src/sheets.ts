/** Inserting tables and charts of sizes that keep themselves up to date. */
import {
  commands,
  type Disposable,
  EndOfLine,
  l10n,
  type QuickPickItem,
  type TextEditor,
  window,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { SUBJECT_WORDS, SUBJECTS, type Subject } from '../../server/src/sizes/sheet/request.ts';

type Form = 'table' | 'chart';
type Answer = { readonly text: string } | { readonly problem: string };

export const offerSheets = (client: BaseLanguageClient): Disposable[] => [
  commands.registerCommand('sizewright.insertTable', (wanted?: string) => insert(client, 'table', wanted)),
  commands.registerCommand('sizewright.insertChart', (wanted?: string) => insert(client, 'chart', wanted)),
];

async function insert(client: BaseLanguageClient, form: Form, given?: string): Promise<void> {
  const editor = window.activeTextEditor;
  if (editor === undefined) {
    void window.showInformationMessage(l10n.t('Open a note first.'));
    return;
  }
  const wanted = given ?? (await ask(form));
  if (wanted === undefined) return;
  const newline = editor.document.eol === EndOfLine.CRLF ? '\r\n' : '\n';
  const answer = await client.sendRequest<Answer>('sizewright/sheet', { form, wanted, newline });
  if ('problem' in answer) void window.showWarningMessage(answer.problem);
  else await place(editor, answer.text, newline);
}

/** Asked for when shown, once the editor's language is known. */
const TITLES: Readonly<Record<Subject, () => string>> = {
  usp: () => l10n.t('USP suture sizes'),
  metric: () => l10n.t('Metric suture sizes'),
  gauge: () => l10n.t('Needle and IV catheter gauges'),
  needle: () => l10n.t('Needle gauges'),
  cannula: () => l10n.t('IV catheter gauges'),
  french: () => l10n.t('French sizes'),
  wire: () => l10n.t('Guidewire diameters'),
  hegar: () => l10n.t('Hegar dilators'),
};

interface SubjectItem extends QuickPickItem {
  readonly subject: Subject;
}

/** "gauge" or "gauge 14 16 18"; undefined when the author thinks better of it. */
async function ask(form: Form): Promise<string | undefined> {
  const items = SUBJECT_WORDS.map(
    (subject): SubjectItem => ({
      subject,
      label: TITLES[subject](),
      description: subject,
    }),
  );
  const title =
    form === 'table' ? l10n.t('Insert a table of sizes') : l10n.t('Insert a chart of sizes to scale');
  const picked = await window.showQuickPick(items, {
    title,
    placeHolder: l10n.t('Which sizes?'),
    matchOnDescription: true,
  });
  if (picked === undefined) return undefined;
  const chosen = await window.showInputBox({
    title,
    prompt: l10n.t('Sizes to show, separated by spaces; leave empty for the usual series.'),
    placeHolder: `${SUBJECTS[picked.subject].from} ${SUBJECTS[picked.subject].to}`,
  });
  return chosen === undefined ? undefined : `${picked.subject} ${chosen}`.trim();
}

/** On a line of its own, whatever stands at the cursor. */
async function place(editor: TextEditor, text: string, newline: string): Promise<void> {
  const { active } = editor.selection;
  const line = editor.document.lineAt(active.line);
  const before = line.isEmptyOrWhitespace ? '' : newline + newline;
  const at = line.isEmptyOrWhitespace ? line.range.start : line.range.end;
  await editor.edit((edit) => edit.insert(at, before + text));
}
