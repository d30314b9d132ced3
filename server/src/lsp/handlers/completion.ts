import { type CompletionItem, CompletionItemKind, type CompletionParams } from 'vscode-languageserver';
import { type Completion, completionsAt } from '../../editor/completion.ts';
import { check } from '../cancel.ts';
import type { Guard } from '../guard.ts';
import { rangeOf } from '../positions.ts';
import type { Session } from '../session.ts';

const KINDS: Readonly<Record<Completion['kind'], CompletionItemKind>> = {
  unit: CompletionItemKind.Unit,
  size: CompletionItemKind.Value,
  mark: CompletionItemKind.Keyword,
};

export function offerCompletion(session: Session, guard: Guard): void {
  session.connection.onCompletion(
    guard<CompletionParams, CompletionItem[]>('completion', [], async ({ textDocument, position }, token) => {
      const read = await session.open(textDocument.uri);
      check(token);
      if (read === undefined) return [];
      const { document, analysis } = read;
      return completionsAt(
        analysis,
        document.offsetAt(position),
        session.files.known(textDocument.uri),
        session.locale,
      ).map((each, index) => ({
        label: each.label,
        kind: KINDS[each.kind],
        detail: each.detail,
        // The order is ours: by what the note uses nearby.
        sortText: String(index).padStart(3, '0'),
        filterText: each.text,
        textEdit: { range: rangeOf(document, each.replace), newText: each.text },
      }));
    }),
  );
}
