/** Spreads batches over threads and hands the answers back in the order of the batches. */
import { type ResourceLimits, Worker } from 'node:worker_threads';
import type { Answer, Job, Setup } from './job.ts';

/** Batches under way for each thread: enough to keep it busy, few enough to bound what waits in memory. */
const AHEAD = 3;

/**
 * Memory of each thread, MB: an engine that may take more collects later, takes twice as much and is no faster. Notes too
 * large for it are not given to threads; a thread that runs out of it all the same is replaced.
 */
const ROOM: ResourceLimits = { maxYoungGenerationSizeMb: 16, maxOldGenerationSizeMb: 64 };

interface Waiting {
  readonly done: (answers: readonly Answer[]) => void;
  readonly failed: (error: Error) => void;
}

class Thread {
  readonly #worker: Worker;
  readonly #waiting = new Map<number, Waiting>();
  #ended = false;

  constructor(script: string, setup: Setup) {
    this.#worker = new Worker(script, {
      workerData: setup,
      resourceLimits: ROOM,
    });
    this.#worker.on('message', ({ id, answers }: { id: number; answers: readonly Answer[] }) => {
      this.#waiting.get(id)?.done(answers);
      this.#waiting.delete(id);
    });
    this.#worker.on('error', (error: Error) => this.#fail(error));
    this.#worker.on('exit', () => this.#fail(new Error('a thread ended early')));
  }

  /** True for one that takes no more. */
  get ended(): boolean {
    return this.#ended;
  }

  get load(): number {
    return this.#waiting.size;
  }

  ask(id: number, jobs: readonly Job[]): Promise<readonly Answer[]> {
    return new Promise((done, failed) => {
      this.#waiting.set(id, { done, failed });
      this.#worker.postMessage({ id, jobs });
    });
  }

  end(): Promise<number> {
    return this.#worker.terminate();
  }

  #fail(error: Error): void {
    this.#ended = true;
    for (const { failed } of this.#waiting.values()) failed(error);
    this.#waiting.clear();
  }
}

interface Crew {
  readonly threads: number;
  /** The file that each thread runs. */
  readonly script: string;
  /** Answers in this thread, which may take the memory it needs, what was too much for another. */
  readonly instead: (jobs: readonly Job[]) => readonly Answer[];
}

const outOfMemory = (error: unknown): boolean =>
  (error as NodeJS.ErrnoException).code === 'ERR_WORKER_OUT_OF_MEMORY';

/** The one with least to do, in place of which a new one comes when it has ended. */
function free(crew: Thread[], fresh: () => Thread): Thread {
  const at = crew.reduce((least, thread, i) => (thread.load < crew[least]!.load ? i : least), 0);
  if (crew[at]!.ended) crew[at] = fresh();
  return crew[at]!;
}

/** Yields the answers of each batch, in order. Ends its threads however the loop ends. */
export async function* pooled(
  batches: Iterable<readonly Job[]>,
  setup: Setup,
  { threads, script, instead }: Crew,
): AsyncGenerator<readonly Answer[]> {
  const fresh = (): Thread => new Thread(script, setup);
  const crew = Array.from({ length: threads }, fresh);
  const underWay: Promise<readonly Answer[]>[] = [];
  try {
    let id = 0;
    for (const jobs of batches) {
      if (underWay.length >= threads * AHEAD) yield await underWay.shift()!;
      const asked = free(crew, fresh)
        .ask(id++, jobs)
        .catch((error: unknown) => {
          if (!outOfMemory(error)) throw error;
          return instead(jobs);
        });
      // Awaited later, in turn; until then a failure must not count as unhandled.
      asked.catch(() => {});
      underWay.push(asked);
    }
    for (const asked of underWay) yield await asked;
  } finally {
    await Promise.all(crew.map((thread) => thread.end()));
  }
}
