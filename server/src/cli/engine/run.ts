/** Carries a plan out: what the cache knows, then threads for the rest; results come in the order of the plan. */
import { type Stats, statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { setFlagsFromString } from 'node:v8';
import type { NoteResult, Wanted } from '../result.ts';
import { UsageError } from '../usage-error.ts';
import { Cache } from './cache.ts';
import { type Answer, answer, type Job, prepare, type Setup } from './job.ts';
import type { Plan } from './plan.ts';

export interface RunOptions {
  readonly wanted: Wanted;
  /** 1 keeps to this thread. Without it: as many as there are cores, when the notes are worth it. */
  readonly threads?: number;
  /** Folder of the cache. */
  readonly cache?: string;
}

export interface Handled {
  readonly path: string;
  readonly result?: NoteResult;
  readonly problem?: string;
}

/** A note with its place on the disk looked up. */
interface Looked {
  readonly job: Job;
  readonly stat?: Stats;
  readonly fresh?: { result?: NoteResult };
}

/** Below this starting threads costs more than it saves, bytes and notes. */
const WORTH_BYTES = 2_000_000;
const WORTH_NOTES = 300;

const BATCH_BYTES = 400_000;
const BATCH_NOTES = 200;

/** Nothing for standard input and for what cannot be looked at; reading it will say why. */
function look(job: Job): Stats | undefined {
  if (job.path === '-') return undefined;
  try {
    return statSync(job.path, { throwIfNoEntry: false });
  } catch {
    return undefined;
  }
}

/** Read in this thread, which may take the memory it needs, bytes. */
const LARGE = 200_000;

const isLarge = ({ stat }: Looked): boolean => (stat?.size ?? 0) > LARGE;

/** Reads a large note. The heap may grow by less before it is collected: left alone it takes several times what is in use. */
function answerLarge(job: Job, setup: Setup): Answer {
  setFlagsFromString('--heap-growing-percent=40');
  return answer(job, setup);
}

/** A run of so little meets most patterns once, bytes. */
const LITTLE = 10_000;

const bytesOf = (looked: readonly Looked[]): number =>
  looked.reduce((sum, { stat }) => sum + (stat?.size ?? 0), 0);

/**
 * For a few lines the engine's careful way of compiling a pattern takes longer than the pattern. Compiled code is kept for
 * the way the engine works in the end, so it has to be the usual one again.
 */
function compileCarefully(careful: boolean): void {
  setFlagsFromString(careful ? '--regexp-optimization' : '--no-regexp-optimization');
}

function* batches(looked: readonly Looked[]): Generator<Job[]> {
  let batch: Job[] = [];
  let bytes = 0;
  for (const { job, stat } of looked) {
    batch.push(job);
    bytes += stat?.size ?? 0;
    if (bytes < BATCH_BYTES && batch.length < BATCH_NOTES) continue;
    yield batch;
    batch = [];
    bytes = 0;
  }
  if (batch.length > 0) yield batch;
}

function threadCount(looked: readonly Looked[], asked: number | undefined): number {
  if (asked !== undefined) return asked;
  const bytes = bytesOf(looked);
  return looked.length >= 2 && (bytes >= WORTH_BYTES || looked.length >= WORTH_NOTES)
    ? availableParallelism()
    : 1;
}

/** The file that was started serves as each thread too: it knows the way to compiled code. */
const script = (): string => require.main?.filename ?? __filename;

async function* answers(
  looked: readonly Looked[],
  setup: Setup,
  threads: number,
): AsyncGenerator<readonly Answer[]> {
  await prepare(setup);
  if (threads > 1)
    yield* (await import('./pool.ts')).pooled(batches(looked), setup, {
      threads,
      script: script(),
      instead: (jobs) => jobs.map((job) => answerLarge(job, setup)),
    });
  else yield* alone(looked, setup);
}

/** Lets signals and timers in this often, ms. */
const BREATH = 50;

async function* alone(looked: readonly Looked[], setup: Setup): AsyncGenerator<readonly Answer[]> {
  let last = Date.now();
  for (const { job } of looked) {
    yield [answer(job, setup)];
    if (Date.now() - last < BREATH) continue;
    await new Promise((done) => setImmediate(done));
    last = Date.now();
  }
}

/** Throws `UsageError` when the cache folder cannot be made. */
export async function* run(plan: Plan, options: RunOptions): AsyncGenerator<Handled> {
  const cache = options.cache === undefined ? undefined : new Cache(options.cache, __filename);
  const salts = plan.keys.map((key) => `${options.wanted} ${key}`);
  const now = Date.now();
  const looked = plan.jobs.map((job) => lookUp(job, cache, salts[job.settings]!));
  const open = looked.filter(({ fresh }) => fresh === undefined);
  const setup: Setup = { settings: plan.settings, wanted: options.wanted, hashed: cache !== undefined };
  compileCarefully(bytesOf(open) >= LITTLE);
  // Standard input belongs to this thread.
  const mustStay = open.some(({ job }) => job.path === '-');
  const threads = mustStay ? 1 : threadCount(open, options.threads);
  const flow = flatten(
    answers(
      open.filter((one) => !isLarge(one)),
      setup,
      threads,
    ),
  );
  for (const one of looked) {
    if (one.fresh) {
      yield { path: one.job.path, ...one.fresh };
      continue;
    }
    const next = isLarge(one) ? answerLarge(one.job, setup) : (await flow.next()).value;
    if (!next) throw new UsageError('a thread ended early');
    yield settle(next, one, cache, { salt: salts[one.job.settings]!, now });
  }
  await flow.return(undefined);
  compileCarefully(true);
  cache?.save();
}

function lookUp(job: Job, cache: Cache | undefined, salt: string): Looked {
  const stat = look(job);
  if (!cache || !stat) return { job, ...(stat && { stat }) };
  const fresh = cache.fresh(job.path, stat, salt);
  if (fresh) return { job, stat, fresh };
  const known = cache.known(job.path, salt);
  return { job: known === undefined ? job : { ...job, known }, stat };
}

function settle(
  { path, problem, result, hash, same }: Answer,
  { stat, job }: Looked,
  cache: Cache | undefined,
  { salt, now }: { salt: string; now: number },
): Handled {
  if (problem !== undefined) return { path, problem };
  const settled = same && hash !== undefined ? cache?.recall(path, hash, salt) : result;
  if (cache && stat && hash !== undefined) cache.put(job.path, stat, hash, salt, settled, now);
  return { path, ...(settled && { result: settled }) };
}

async function* flatten(batchesOf: AsyncGenerator<readonly Answer[]>): AsyncGenerator<Answer> {
  for await (const batch of batchesOf) yield* batch;
}
