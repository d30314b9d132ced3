import type { Hover, HoverParams } from 'vscode-languageserver';
import { hoverAt } from '../../editor/hover.ts';
import { check } from '../cancel.ts';
import type { Guard } from '../guard.ts';
import { rangeOf } from '../positions.ts';
import type { Session } from '../session.ts';

export function offerHover(session: Session, guard: Guard): void {
  session.connection.onHover(
    guard<HoverParams, Hover | null>('hover', null, async ({ textDocument, position }, token) => {
      const read = await session.open(textDocument.uri);
      check(token);
      if (read === undefined) return null;
      const { document, analysis, settings } = read;
      const hover = hoverAt(analysis, document.offsetAt(position), {
        picture: settings.picture,
        besideFindings: session.showsFindings,
      });
      if (hover === undefined) return null;
      return { contents: { kind: 'markdown', value: hover.markdown }, range: rangeOf(document, hover.span) };
    }),
  );
}
