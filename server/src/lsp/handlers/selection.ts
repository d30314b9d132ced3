import type { SelectionRange, SelectionRangeParams } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { spansAround } from '../../editor/selection.ts';
import type { Span } from '../../notes/model.ts';
import { check } from '../cancel.ts';
import type { Guard } from '../guard.ts';
import { rangeOf } from '../positions.ts';
import type { Session } from '../session.ts';

export function offerSelection(session: Session, guard: Guard): void {
  session.connection.onSelectionRanges(
    guard<SelectionRangeParams, SelectionRange[]>(
      'selectionRange',
      [],
      async ({ textDocument, positions }, token) => {
        const read = await session.open(textDocument.uri);
        check(token);
        if (read === undefined) return [];
        const { document, analysis } = read;
        return positions.map((position) => {
          const offset = document.offsetAt(position);
          return chain(document, [{ start: offset, end: offset }, ...spansAround(analysis, offset)]);
        });
      },
    ),
  );
}

const chain = (document: TextDocument, spans: readonly Span[]): SelectionRange =>
  spans.reduceRight<SelectionRange | undefined>(
    (parent, span) => ({ range: rangeOf(document, span), ...(parent === undefined ? {} : { parent }) }),
    undefined,
  )!;
