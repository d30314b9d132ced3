import type { InlayHint, InlayHintParams } from 'vscode-languageserver';
import { hintsIn } from '../../editor/hints.ts';
import { check, notNow } from '../cancel.ts';
import type { Guard } from '../guard.ts';
import { spanOf } from '../positions.ts';
import type { Session } from '../session.ts';

export function offerHints(session: Session, guard: Guard): void {
  session.connection.languages.inlayHint.on(
    guard<InlayHintParams, InlayHint[]>('inlayHint', [], async ({ textDocument, range }, token) => {
      if (session.isTyping(textDocument.uri)) throw notNow();
      const read = await session.open(textDocument.uri);
      check(token);
      if (read === undefined || !read.settings.hints) return [];
      const { document, analysis } = read;
      return hintsIn(analysis, spanOf(document, range), session.locale).map((hint) => ({
        position: document.positionAt(hint.offset),
        label: hint.text,
        tooltip: hint.because,
        paddingLeft: true,
      }));
    }),
  );
}
