/** The other side of `pool.ts`: answers batches until there are no more. */
import { parentPort, workerData } from 'node:worker_threads';
import { answer, type Job, prepare, type Setup } from './job.ts';

export interface Batch {
  readonly id: number;
  readonly jobs: readonly Job[];
}

const setup = workerData as Setup;

const ready = prepare(setup);

parentPort?.on('message', async ({ id, jobs }: Batch) => {
  await ready;
  parentPort?.postMessage({ id, answers: jobs.map((job) => answer(job, setup)) });
});
