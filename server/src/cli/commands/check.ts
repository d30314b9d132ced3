/** `check`: findings of the notes. */
import type { Severity } from '../../checks/model.ts';
import { analyse, identities } from '../../course/index.ts';
import { type AcceptedFile, openAccepted } from '../course/accepted-file.ts';
import { levelsOf, withDiffering, withLevels } from '../course/differs.ts';
import type { Revision } from '../course/revision.ts';
import { makePlan, type Plan, parseShard } from '../engine/plan.ts';
import { run } from '../engine/run.ts';
import { decode } from '../files/read.ts';
import { Progress } from '../progress.ts';
import { CHECK_REPORTS } from '../report/kinds.ts';
import { count, isOpen, noTotals } from '../report/model.ts';
import { Outputs } from '../report/outputs.ts';
import type { NoteResult } from '../result.ts';
import { complain } from '../terminal.ts';
import { UsageError } from '../usage-error.ts';
import { pathsFrom } from './paths-from.ts';

/** From the mildest. */
export const SEVERITIES: readonly Severity[] = ['hint', 'info', 'warning', 'error'];

export interface ReadingOptions {
  readonly pathsFrom?: string;
  readonly name?: string;
  readonly shard?: string;
  readonly threads?: string;
  readonly cache?: string;
}

export interface CheckOptions extends ReadingOptions {
  readonly report: readonly string[];
  readonly threshold: Severity | 'never';
  readonly since?: string;
  /** Path of the record, or `false` to leave it unread. */
  readonly accepted?: string | false;
}

/** Throws `UsageError`. */
export function threadsOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const threads = Number(text);
  if (!/^[0-9]{1,3}$/.test(text) || threads < 1)
    throw new UsageError(`--threads ${text}: write a whole number from 1`);
  return threads;
}

export function planFor(
  paths: readonly string[],
  options: ReadingOptions,
  only?: (path: string) => boolean,
): Plan {
  const args = options.pathsFrom === undefined ? paths : pathsFrom(options.pathsFrom);
  return makePlan(args, {
    ...(options.name !== undefined && { name: options.name }),
    ...(options.shard !== undefined && { shard: parseShard(options.shard) }),
    ...(only && { only }),
  });
}

/** Only the findings that the note did not have at the revision. */
function newSince(result: NoteResult, revision: Revision, plan: Plan): NoteResult {
  const bytes = result.findings.length > 0 ? revision.before(result.path) : undefined;
  if (!bytes) return result;
  const job = plan.jobs.find(({ path }) => path === result.path);
  const before = new Set(
    identities(analyse(decode(result.path, bytes), plan.settings[job?.settings ?? 0], result.path)),
  );
  return { ...result, findings: result.findings.filter(({ identity }) => !before.has(identity)) };
}

/** Only this needs git and its processes. */
async function revisionOf(name: string): Promise<Revision> {
  const { Revision } = await import('../course/revision.ts');
  return new Revision(name);
}

/** Exit status: 0 nothing found, 1 findings at or above the threshold, 2 something could not be read. */
export async function check(paths: readonly string[], options: CheckOptions): Promise<number> {
  const revision = options.since === undefined ? undefined : await revisionOf(options.since);
  const plan = planFor(paths, options, revision && ((path) => revision.has(path)));
  if (plan.unreadable && plan.jobs.length === 0) return 2;
  const accepted = options.accepted === false ? undefined : openAccepted(options.accepted);
  const outputs = new Outputs(options.report.length > 0 ? options.report : ['text'], CHECK_REPORTS);
  try {
    return await checkAll(plan, options, { outputs, revision, accepted });
  } finally {
    outputs.abandon();
  }
}

interface Tools {
  readonly outputs: Outputs;
  readonly revision?: Revision | undefined;
  readonly accepted?: AcceptedFile | undefined;
}

async function checkAll(
  plan: Plan,
  options: CheckOptions,
  { outputs, revision, accepted }: Tools,
): Promise<number> {
  const bar = options.threshold === 'never' ? SEVERITIES.length : SEVERITIES.indexOf(options.threshold);
  const totals = noTotals();
  const progress = new Progress(plan.jobs.length);
  let unreadable = plan.unreadable;
  let over = false;
  const threads = threadsOf(options.threads);
  const read = run(plan, { ...options, threads, wanted: 'findings' });
  // A part of a course is not set against itself: what differs may be all there is elsewhere.
  const all =
    revision || options.shard ? withLevels(read, levelsOf(plan)) : withDiffering(read, levelsOf(plan));
  for await (const { path, result, problem } of all) {
    progress.step();
    if (problem !== undefined) {
      unreadable = true;
      progress.aside(() => complain(problem));
      continue;
    }
    const whole = result ?? { path, findings: [], mentions: [] };
    const since = revision ? newSince(whole, revision, plan) : whole;
    const note = accepted ? accepted.mark(since) : since;
    count(totals, note);
    over ||= note.findings.some((one) => isOpen(one) && SEVERITIES.indexOf(one.severity) >= bar);
    progress.aside(() => outputs.note(note));
  }
  progress.end();
  outputs.end(totals);
  tellStale(accepted);
  return unreadable ? 2 : over ? 1 : 0;
}

function tellStale(accepted: AcceptedFile | undefined): void {
  const stale = accepted?.stale().length ?? 0;
  if (accepted && stale > 0)
    complain(
      `${accepted.path}: ${stale} accepted finding${stale === 1 ? ' is' : 's are'} gone; remove with: sizewright accept --prune`,
    );
}
