import type { Hover, HoverParams, MarkupContent } from 'vscode-languageserver';
import { hoverAt } from '../../editor/hover.ts';
import { plainOf } from '../../editor/plain.ts';
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
        locale: session.locale,
      });
      if (hover === undefined) return null;
      return { contents: contents(session, hover.markdown), range: rangeOf(document, hover.span) };
    }),
  );
}

/** In the first format the client names that we have; a client that names none is taken to show Markdown. */
function contents({ capabilities }: Session, markdown: string): MarkupContent {
  const formats = capabilities.textDocument?.hover?.contentFormat ?? [];
  const kind = formats.find((each) => each === 'markdown' || each === 'plaintext') ?? 'markdown';
  return { kind, value: kind === 'markdown' ? markdown : plainOf(markdown) };
}
