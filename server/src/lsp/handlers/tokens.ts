import {
  type SemanticTokens,
  SemanticTokensBuilder,
  type SemanticTokensLegend,
  type SemanticTokensParams,
} from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { type Token, type TokenKind, tokensOf } from '../../editor/tokens.ts';
import { check, notNow } from '../cancel.ts';
import type { Guard } from '../guard.ts';
import type { Session } from '../session.ts';

const KINDS: readonly TokenKind[] = ['size', 'unclearSize'];

export const LEGEND: SemanticTokensLegend = { tokenTypes: [...KINDS], tokenModifiers: ['contradicted'] };

export function offerTokens(session: Session, guard: Guard): void {
  session.connection.languages.semanticTokens.on(
    guard<SemanticTokensParams, SemanticTokens>(
      'semanticTokens',
      { data: [] },
      async ({ textDocument }, token) => {
        if (session.isTyping(textDocument.uri)) throw notNow();
        const read = await session.open(textDocument.uri);
        check(token);
        if (read === undefined || !read.settings.colouring) return { data: [] };
        const { document, analysis } = read;
        return encode(document, tokensOf(analysis));
      },
    ),
  );
}

/** A token that runs over a line's end is left out: clients take them on one line only. */
function encode(document: TextDocument, tokens: readonly Token[]): SemanticTokens {
  const builder = new SemanticTokensBuilder();
  let last = -1;
  for (const { span, kind, contradicted } of tokens) {
    const [start, end] = [document.positionAt(span.start), document.positionAt(span.end)];
    if (start.line !== end.line || span.start < last) continue;
    builder.push(
      start.line,
      start.character,
      end.character - start.character,
      KINDS.indexOf(kind),
      contradicted ? 1 : 0,
    );
    last = span.end;
  }
  return builder.build();
}
