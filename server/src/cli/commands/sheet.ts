/** `table` and `chart`: sizes as Markdown, with the comments by which a note keeps them up to date. */
import { sheetStretch } from '../../editor/sheets.ts';
import type { SheetForm } from '../../sizes/index.ts';
import { safeLine } from '../escape.ts';
import { say } from '../terminal.ts';
import { UsageError } from '../usage-error.ts';

/** Throws `UsageError` when the words name no sheet. */
export function sheet(form: SheetForm, wanted: readonly string[]): number {
  const stretch = sheetStretch(form, wanted.join(' '), '\n');
  if ('problem' in stretch) throw new UsageError(safeLine(stretch.problem));
  say(stretch.text);
  return 0;
}
