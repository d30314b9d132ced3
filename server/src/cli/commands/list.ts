/** `list`: every size mention of the notes. */
import { LIST_REPORTS } from '../report/kinds.ts';
import { Outputs } from '../report/outputs.ts';
import { runOver } from '../run.ts';

export function list(paths: readonly string[], options: { readonly report: readonly string[] }): number {
  const outputs = new Outputs(options.report.length > 0 ? options.report : ['text'], LIST_REPORTS);
  try {
    return runOver(paths, outputs).unreadable ? 2 : 0;
  } finally {
    outputs.abandon();
  }
}
