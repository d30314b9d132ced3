import {
  type CodeAction,
  type CodeActionParams,
  CodeActionTriggerKind,
  type Command,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Edit } from '../../checks/model.ts';
import type { Analysis } from '../../course/index.ts';
import { type Action, actionsIn, safeEdits } from '../../editor/actions.ts';
import { ACTION } from '../../editor/texts/help.ts';
import { say } from '../../texts/index.ts';
import { check } from '../cancel.ts';
import { diagnosticOf, shown } from '../diagnostics.ts';
import type { Guard } from '../guard.ts';
import { spanOf, textEdits } from '../positions.ts';
import type { Read, Session } from '../session.ts';
import type { EditorSettings } from '../settings.ts';

/** Mends everything safe; a kind of our own, so that nobody else's edits are computed with ours. */
export const FIX_ALL = 'source.fixAll.sizewright';

export function offerActions(session: Session, guard: Guard): void {
  session.connection.onCodeAction(
    guard<CodeActionParams, CodeAction[]>('codeAction', [], async (params, token) => {
      // The lamp beside the text is asked for at every step of the cursor; it can wait for the pause in typing.
      const isLamp = params.context.triggerKind === CodeActionTriggerKind.Automatic && !params.context.only;
      if (isLamp && session.isTyping(params.textDocument.uri)) return [];
      const read = await session.open(params.textDocument.uri);
      check(token);
      if (read === undefined) return [];
      const { document, analysis, settings } = read;
      const wanted = (kind: string): boolean => isWanted(kind, params.context.only);
      const all = wanted(FIX_ALL) && params.context.only !== undefined ? fixAll(session, read) : [];
      const single = actionsIn(analysis, spanOf(document, params.range), session.locale)
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
    ...(action.finding === undefined
      ? {}
      : { diagnostics: [diagnosticOf(document, action.finding, session.pageOf)] }),
    ...(action.reasonAt === undefined || !session.asksReasons
      ? { edit: workspaceEdit(session, document, action.edits) }
      : { command: reasonCommand(document, action, action.reasonAt) }),
  };
}

/** A client of ours asks the author for the reason and writes the mark itself. */
const reasonCommand = (document: TextDocument, action: Action, at: number): Command => ({
  title: action.title,
  command: 'sizewright.markDeliberate',
  arguments: [document.uri, document.version, document.positionAt(at)],
});

function fixAll(session: Session, { document, analysis, settings }: Read): CodeAction[] {
  const edits = safeEdits(shown(analysis, settings));
  if (edits.length === 0) return [];
  return [
    {
      title: say(session.locale, ACTION.mendAll),
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
