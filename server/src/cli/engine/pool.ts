/** Spreads batches over threads and hands the answers back in the order of the batches. */
import { type ResourceLimits, Worker } from 'node:worker_threads';
import type { Answer, Job, Setup } from './job.ts';

/** Batches under way for each thread: enough to keep it busy, few enough to bound what waits in memory. */
const AHEAD = 3;

/**
 * Memory of each thread, MB. Left alone it would take twice as much and be no faster. Notes too large for it are
 * not given to threads.
 */
const ROOM: ResourceLimits = { maxYoungGenerationSizeMb: 16, maxOldGenerationSizeMb: 192 };

interface Waiting {
  readonly done: (answers: readonly Answer[]) => void;
  readonly failed: (error: Error) => void;
}

class Thread {
  readonly #worker: Worker;
  readonly #waiting = new Map<number, Waiting>();

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
    for (const { failed } of this.#waiting.values()) failed(error);
    this.#waiting.clear();
  }
}

/** Yields the answers of each batch, in order. Ends its threads however the loop ends. */
export async function* pooled(
  batches: Iterable<readonly Job[]>,
  setup: Setup,
  { threads, script }: { readonly threads: number; readonly script: string },
): AsyncGenerator<readonly Answer[]> {
  const crew = Array.from({ length: threads }, () => new Thread(script, setup));
  const underWay: Promise<readonly Answer[]>[] = [];
  try {
    let id = 0;
    for (const jobs of batches) {
      if (underWay.length >= threads * AHEAD) yield await underWay.shift()!;
      const free = crew.reduce((a, b) => (b.load < a.load ? b : a));
      const asked = free.ask(id++, jobs);
      // Awaited later, in turn; until then a failure must not count as unhandled.
      asked.catch(() => {});
      underWay.push(asked);
    }
    for (const asked of underWay) yield await asked;
  } finally {
    await Promise.all(crew.map((thread) => thread.end()));
  }
}
