import {
  type DocumentHighlight,
  DocumentHighlightKind,
  type DocumentHighlightParams,
  type Location,
  type ReferenceParams,
} from 'vscode-languageserver';
import { mentionsOf, sizeAt } from '../../editor/references.ts';
import { breathe, check } from '../cancel.ts';
import type { Guard } from '../guard.ts';
import { rangeOf } from '../positions.ts';
import type { Session } from '../session.ts';

export function offerReferences(session: Session, guard: Guard): void {
  session.connection.onDocumentHighlight(
    guard<DocumentHighlightParams, DocumentHighlight[]>('documentHighlight', [], async (params, token) => {
      if (session.isTyping(params.textDocument.uri)) return [];
      const read = await session.open(params.textDocument.uri);
      check(token);
      if (read === undefined) return [];
      const { document, analysis } = read;
      const size = sizeAt(analysis, document.offsetAt(params.position));
      const same = size === undefined ? [] : mentionsOf(analysis, size);
      return same.map(({ source }) => ({
        range: rangeOf(document, source),
        kind: DocumentHighlightKind.Text,
      }));
    }),
  );
  session.connection.onReferences(
    guard<ReferenceParams, Location[]>('references', [], async (params, token) => {
      const here = await session.open(params.textDocument.uri);
      const size = here && sizeAt(here.analysis, here.document.offsetAt(params.position));
      if (size === undefined) return [];
      const found: Location[] = [];
      for (const uri of await session.notes()) {
        await breathe(token);
        const read = await session.read(uri);
        if (read === undefined) continue;
        for (const { source } of mentionsOf(read.analysis, size))
          found.push({ uri, range: rangeOf(read.document, source) });
      }
      return found;
    }),
  );
}
