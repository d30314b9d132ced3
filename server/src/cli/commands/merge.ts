/** `merge`: one report of the parts of a spread run. */
import { Differs } from '../course/differs.ts';
import { readText } from '../files/read.ts';
import { CHECK_REPORTS } from '../report/kinds.ts';
import { count, isOpen, noTotals } from '../report/model.ts';
import { Outputs } from '../report/outputs.ts';
import { readParts } from '../report/parts.ts';
import type { NoteResult } from '../result.ts';
import { UsageError } from '../usage-error.ts';
import { type CheckOptions, SEVERITIES } from './check.ts';

function read(path: string): NoteResult[] {
  const parts = readParts(readText(path));
  if (typeof parts === 'string') throw new UsageError(`${path}: ${parts}`);
  return parts;
}

/** By path, so that the report is the one that an unspread run over the same folder writes. */
const byPath = (a: NoteResult, b: NoteResult): number => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0);

/** Exit status as `check`. */
export function merge(files: readonly string[], options: Pick<CheckOptions, 'report' | 'threshold'>): number {
  const parts = files.flatMap(read).sort(byPath);
  const differs = new Differs();
  for (const part of parts) differs.add(part);
  const notes = [...parts, ...differs.results()];
  const outputs = new Outputs(options.report.length > 0 ? options.report : ['text'], CHECK_REPORTS);
  const bar = options.threshold === 'never' ? SEVERITIES.length : SEVERITIES.indexOf(options.threshold);
  const totals = noTotals();
  try {
    for (const note of notes) {
      count(totals, note);
      outputs.note(note);
    }
    outputs.end(totals);
  } finally {
    outputs.abandon();
  }
  return notes.some(({ findings }) =>
    findings.some((one) => isOpen(one) && SEVERITIES.indexOf(one.severity) >= bar),
  )
    ? 1
    : 0;
}
