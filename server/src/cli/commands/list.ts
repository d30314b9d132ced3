/** `list`: every size mention of the notes. */
import { run } from '../engine/run.ts';
import { Progress } from '../progress.ts';
import { LIST_REPORTS } from '../report/kinds.ts';
import { count, noTotals } from '../report/model.ts';
import { Outputs } from '../report/outputs.ts';
import { complain } from '../terminal.ts';
import { planFor, type ReadingOptions, threadsOf } from './check.ts';

export interface ListOptions extends ReadingOptions {
  readonly report: readonly string[];
}

/** Exit status: 0, or 2 when something could not be read. */
export async function list(paths: readonly string[], options: ListOptions): Promise<number> {
  const plan = planFor(paths, options);
  if (plan.unreadable && plan.jobs.length === 0) return 2;
  const outputs = new Outputs(options.report.length > 0 ? options.report : ['text'], LIST_REPORTS);
  const totals = noTotals();
  const progress = new Progress(plan.jobs.length);
  let unreadable = plan.unreadable;
  try {
    const threads = threadsOf(options.threads);
    for await (const { path, result, problem } of run(plan, { ...options, threads, wanted: 'mentions' })) {
      progress.step();
      if (problem !== undefined) {
        unreadable = true;
        progress.aside(() => complain(problem));
      } else {
        const note = result ?? { path, findings: [], mentions: [] };
        count(totals, note);
        progress.aside(() => outputs.note(note));
      }
    }
    progress.end();
    outputs.end(totals);
    return unreadable ? 2 : 0;
  } finally {
    outputs.abandon();
  }
}
