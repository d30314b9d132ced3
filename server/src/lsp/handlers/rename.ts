import {
  LSPErrorCodes,
  type PrepareRenameParams,
  type Range,
  type RenameParams,
  ResponseError,
  type TextDocumentEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { newSize, type Refusal, renameIn, renameTarget } from '../../editor/rename.ts';
import { RENAME } from '../../editor/texts/help.ts';
import type { Size } from '../../sizes/model.ts';
import { say, tell } from '../../texts/index.ts';
import { breathe } from '../cancel.ts';
import type { Guard } from '../guard.ts';
import { rangeOf, textEdits } from '../positions.ts';
import type { Session } from '../session.ts';

export function offerRename(session: Session, guard: Guard): void {
  session.connection.onPrepareRename(
    guard<PrepareRenameParams, { range: Range; placeholder: string } | null>(
      'prepareRename',
      null,
      async (params) => {
        const read = await session.open(params.textDocument.uri);
        if (read === undefined) return null;
        const { document, analysis } = read;
        const target = orRefuse(session, renameTarget(analysis, document.offsetAt(params.position)));
        return { range: rangeOf(document, target.span), placeholder: target.name };
      },
    ),
  );
  session.connection.onRenameRequest(
    guard<RenameParams, WorkspaceEdit | null>('rename', null, async (params, token) => {
      const read = await session.open(params.textDocument.uri);
      if (read === undefined) return null;
      const { document, analysis } = read;
      const target = orRefuse(session, renameTarget(analysis, document.offsetAt(params.position)));
      const size = orRefuse(session, newSize(target.size, params.newName));
      const edits: Place[] = [];
      for (const uri of await session.notes()) {
        await breathe(token);
        const place = await placesIn(session, uri, target.size, size);
        if (place !== undefined) edits.push(place);
      }
      return assembled(session, document.uri, edits);
    }),
  );
}

interface Place {
  readonly document: TextDocument;
  readonly edits: TextDocumentEdit['edits'];
}

function orRefuse<T extends object>({ locale }: Session, answer: T | Refusal): T {
  if ('refused' in answer) throw new ResponseError(LSPErrorCodes.RequestFailed, tell(answer.refused, locale));
  return answer;
}

async function placesIn(session: Session, uri: string, from: Size, to: Size): Promise<Place | undefined> {
  const read = await session.read(uri);
  if (read === undefined) return undefined;
  const { edits } = orRefuse(session, renameIn(read.analysis, from, to));
  return edits.length === 0 ? undefined : { document: read.document, edits: textEdits(read.document, edits) };
}

/** Marks edits outside the note at hand: the author looks at them before they are made. */
const ELSEWHERE = 'elsewhere';

/** A version only for open notes: the client knows none for the others. */
function assembled(session: Session, here: string, places: readonly Place[]): WorkspaceEdit {
  if (session.capabilities.workspace?.workspaceEdit?.documentChanges !== true) {
    return {
      changes: Object.fromEntries(places.map(({ document, edits }) => [document.uri, edits as never])),
    };
  }
  const asks = session.capabilities.workspace.workspaceEdit.changeAnnotationSupport !== undefined;
  return {
    documentChanges: places.map(({ document, edits }) => ({
      textDocument: { uri: document.uri, version: session.documents.get(document.uri)?.version ?? null },
      edits:
        asks && document.uri !== here ? edits.map((edit) => ({ ...edit, annotationId: ELSEWHERE })) : edits,
    })),
    ...(asks && places.some(({ document }) => document.uri !== here)
      ? {
          changeAnnotations: {
            [ELSEWHERE]: { label: say(session.locale, RENAME.elsewhere), needsConfirmation: true },
          },
        }
      : {}),
  };
}
