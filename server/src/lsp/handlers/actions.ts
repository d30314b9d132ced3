import type { CodeAction, CodeActionParams, WorkspaceEdit } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Edit } from '../../checks/model.ts';
import type { Analysis } from '../../course/index.ts';
import { type Action, actionsIn, safeEdits } from '../../editor/actions.ts';
import { check } from '../cancel.ts';
import { diagnosticOf, shown } from '../diagnostics.ts';
import type { Guard } from '../guard.ts';
import { spanOf, textEdits } from '../positions.ts';
import type { Session } from '../session.ts';
import type { EditorSettings } from '../settings.ts';

/** Mends everything safe; a kind of our own, so that nobody else's edits are computed with ours. */
export const FIX_ALL = 'source.fixAll.sizewright';

export function offerActions(session: Session, guard: Guard): void {
  session.connection.onCodeAction(
    guard<CodeActionParams, CodeAction[]>('codeAction', [], async (params, token) => {
      const document = session.documents.get(params.textDocument.uri);
      if (document === undefined) return [];
      const [analysis, settings] = [await session.analysis(document), await session.settings(document.uri)];
      check(token);
      const wanted = (kind: string): boolean => isWanted(kind, params.context.only);
      const all =
        wanted(FIX_ALL) && params.context.only !== undefined
          ? fixAll(session, document, analysis, settings)
          : [];
      const single = actionsIn(analysis, spanOf(document, params.range))
        .filter((action) => wanted(action.kind) && isShown(action, analysis, settings))
        .map((action) => codeAction(session, document, action));
      return [...single, ...all];
    }),
  );
}

/** A kind is wanted when the client names it or a kind above it, or names none. */
const isWanted = (kind: string, only: readonly string[] | undefined): boolean =>
  only === undefined || only.some((each) => kind === each || kind.startsWith(`${each}.`));

const isShown = (action: Action, analysis: Analysis, settings: EditorSettings): boolean =>
  action.finding === undefined || shown(analysis, settings).includes(action.finding);

function codeAction(session: Session, document: TextDocument, action: Action): CodeAction {
  return {
    title: action.title,
    kind: action.kind,
    ...(action.preferred === true ? { isPreferred: true } : {}),
    ...(action.finding === undefined ? {} : { diagnostics: [diagnosticOf(document, action.finding)] }),
    edit: workspaceEdit(session, document, action.edits),
  };
}

function fixAll(
  session: Session,
  document: TextDocument,
  analysis: Analysis,
  settings: EditorSettings,
): CodeAction[] {
  const edits = safeEdits(shown(analysis, settings));
  if (edits.length === 0) return [];
  return [
    {
      title: 'Mend every size finding that has one safe fix',
      kind: FIX_ALL,
      edit: workspaceEdit(session, document, edits),
    },
  ];
}

/** Names the version where the client can check it, so that a late edit never lands in a changed text. */
export function workspaceEdit(
  session: Session,
  document: TextDocument,
  edits: readonly Edit[],
): WorkspaceEdit {
  const changes = textEdits(document, edits);
  return session.capabilities.workspace?.workspaceEdit?.documentChanges === true
    ? {
        documentChanges: [{ textDocument: { uri: document.uri, version: document.version }, edits: changes }],
      }
    : { changes: { [document.uri]: changes } };
}
