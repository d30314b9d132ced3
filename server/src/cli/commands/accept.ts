/** `accept`: records the findings there are now, or drops the entries whose findings are gone. */
import type { AcceptedEntry } from '../../course/index.ts';
import { changeAccepted, openAccepted } from '../course/accepted-file.ts';
import { levelsOf, withDiffering } from '../course/differs.ts';
import { run } from '../engine/run.ts';
import { isOpen } from '../report/model.ts';
import { complain, say } from '../terminal.ts';
import { planFor, type ReadingOptions, threadsOf } from './check.ts';

export interface AcceptOptions extends ReadingOptions {
  readonly accepted?: string;
  readonly prune?: boolean;
}

/** Exit status: 0, or 2 when something could not be read; then nothing is recorded. */
export async function accept(paths: readonly string[], options: AcceptOptions): Promise<number> {
  const plan = planFor(paths, options);
  const record = openAccepted(options.accepted, true);
  const fresh: AcceptedEntry[] = [];
  let unreadable = plan.unreadable;
  const read = run(plan, { ...options, threads: threadsOf(options.threads), wanted: 'findings' });
  for await (const { path, result, problem } of withDiffering(read, levelsOf(plan))) {
    if (problem !== undefined) complain(problem);
    unreadable ||= problem !== undefined;
    const { findings } = record.mark(result ?? { path, findings: [], mentions: [] });
    const note = record.noteKey(path);
    for (const { check, says, identity } of findings.filter(isOpen))
      fresh.push({ note, check, says, identity });
  }
  if (unreadable) {
    complain('nothing was recorded, because not every note could be read');
    return 2;
  }
  const stale = record.stale();
  if (options.prune) changeAccepted(record.path, [], stale);
  else changeAccepted(record.path, fresh, []);
  say(
    options.prune
      ? `${stale.length} entries removed from ${record.path}.\n`
      : `${fresh.length} findings recorded in ${record.path}.\n`,
  );
  return 0;
}
