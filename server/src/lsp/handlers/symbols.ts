import {
  type DocumentSymbol,
  type DocumentSymbolParams,
  SymbolKind,
  type WorkspaceSymbol,
  type WorkspaceSymbolParams,
} from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { type HeadingSymbol, outline, type SizeSymbol, sizeSymbol } from '../../editor/symbols.ts';
import { breathe, check } from '../cancel.ts';
import type { Guard } from '../guard.ts';
import { rangeOf } from '../positions.ts';
import type { Session } from '../session.ts';

/** Most symbols handed over for one search. */
const MOST = 500;

export function offerSymbols(session: Session, guard: Guard): void {
  session.connection.onDocumentSymbol(
    guard<DocumentSymbolParams, DocumentSymbol[]>('documentSymbol', [], async ({ textDocument }, token) => {
      const read = await session.open(textDocument.uri);
      check(token);
      if (read === undefined || !read.settings.outline) return [];
      const { document, analysis } = read;
      return outline(analysis, session.locale).flatMap((heading) => headingSymbols(document, heading));
    }),
  );
  session.connection.onWorkspaceSymbol(
    guard<WorkspaceSymbolParams, WorkspaceSymbol[]>('workspaceSymbol', [], async ({ query }, token) => {
      const found: WorkspaceSymbol[] = [];
      const wanted = plain(query);
      for (const note of await session.notes()) {
        await breathe(token);
        const read = await session.read(note);
        for (const mention of read?.analysis.mentions ?? []) {
          const symbol = sizeSymbol(mention, session.locale);
          if (wanted !== '' && !plain(`${symbol.name} ${mention.text}`).includes(wanted)) continue;
          found.push(workspaceSymbol(read!.document, symbol));
          if (found.length >= MOST) return found;
        }
      }
      return found;
    }),
  );
}

/** "18 G" is asked for as "18g", "18 G" or "#18 G". */
const plain = (text: string): string => text.toLowerCase().replace(/[\s#]+/g, '');

function headingSymbols(document: TextDocument, heading: HeadingSymbol): DocumentSymbol[] {
  const children = heading.sizes.map((size) => documentSymbol(document, size));
  if (heading.name === '') return children;
  const range = rangeOf(document, heading.span);
  return [{ name: heading.name, kind: SymbolKind.Namespace, range, selectionRange: range, children }];
}

function documentSymbol(document: TextDocument, { name, detail, span }: SizeSymbol): DocumentSymbol {
  const range = rangeOf(document, span);
  return { name, detail, kind: SymbolKind.Number, range, selectionRange: range };
}

const workspaceSymbol = (document: TextDocument, symbol: SizeSymbol): WorkspaceSymbol => ({
  name: symbol.name,
  kind: SymbolKind.Number,
  containerName: symbol.detail,
  location: { uri: document.uri, range: rangeOf(document, symbol.span) },
});
