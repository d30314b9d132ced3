import type { CancellationToken } from 'vscode-languageserver';
import { type ChartRow, chartRows, type Named } from '../../editor/chart.ts';
import { checkPage } from '../../editor/check-page.ts';
import { sheetStretch } from '../../editor/sheets.ts';
import { runTool } from '../../editor/tools.ts';
import { tooltip } from '../../editor/tooltip.ts';
import type { Locale } from '../../texts/index.ts';
import { breathe } from '../cancel.ts';
import { shown } from '../diagnostics.ts';
import type { Guard } from '../guard.ts';
import { rangeOf } from '../positions.ts';
import type { Read, Session } from '../session.ts';

/** Requests of our own, for what the protocol has no word for. Any client may send them. */
export function offerOwn(session: Session, guard: Guard): void {
  const { connection } = session;
  connection.onRequest(
    'sizewright/sheet',
    guard<{ form: string; wanted: string; newline?: string }, unknown>(
      'sheet',
      null,
      ({ form, wanted, newline }) =>
        sheetStretch(
          form === 'chart' ? 'chart' : 'table',
          String(wanted),
          newline === '\r\n' ? '\r\n' : '\n',
          session.locale,
        ),
    ),
  );
  connection.onRequest(
    'sizewright/check',
    guard<{ id: string }, unknown>('check', null, ({ id }) => checkPage(String(id), session.locale) ?? null),
  );
  connection.onRequest(
    'sizewright/summary',
    guard<{ uri: string }, unknown>('summary', null, async ({ uri }) => summary(await session.open(uri))),
  );
  connection.onRequest(
    'sizewright/tips',
    guard<{ uri: string }, unknown>('tips', null, async ({ uri }) =>
      tips(await session.read(uri), session.locale),
    ),
  );
  connection.onRequest(
    'sizewright/chart',
    guard<{ uri?: string }, unknown>('chart', [], ({ uri }, token) => chart(session, uri, token)),
  );
  connection.onRequest(
    'sizewright/tool',
    guard<{ name: string; text: string }, unknown>(
      'tool',
      null,
      ({ name, text }) => runTool(name, String(text)) ?? null,
    ),
  );
}

function summary(read: Read | undefined): { sizes: number; findings: number } | null {
  if (read === undefined) return null;
  return { sizes: read.analysis.mentions.length, findings: shown(read.analysis, read.settings).length };
}

/** Every size with its line and a tooltip, in text order. */
function tips(read: Read | undefined, locale: Locale): { line: number; text: string; tip: string }[] | null {
  if (read === undefined) return null;
  const { document, analysis } = read;
  return [...analysis.mentions]
    .sort((a, b) => a.source.start - b.source.start)
    .map((each) => ({
      line: document.positionAt(each.source.start).line,
      text: each.text,
      tip: tooltip(each, locale),
    }));
}

/** One note, or every note of the course when none is named. */
async function chart(session: Session, uri: string | undefined, token: CancellationToken): Promise<unknown> {
  const reads = new Map<string, Read>();
  for (const note of uri === undefined ? await session.notes() : [uri]) {
    await breathe(token);
    const read = await session.read(note);
    if (read !== undefined) reads.set(note, read);
  }
  const named: Named[] = [...reads].map(([note, { analysis }]) => ({ note, analysis }));
  return chartRows(named, session.locale).map((row) => placed(row, reads));
}

const placed = ({ places, ...row }: ChartRow, reads: ReadonlyMap<string, Read>) => ({
  ...row,
  places: places.map(({ note, span }) => ({ uri: note, range: rangeOf(reads.get(note)!.document, span) })),
});
