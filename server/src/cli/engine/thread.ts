/** The other side of `pool.ts`: answers batches until there are no more. */
import { parentPort, workerData } from 'node:worker_threads';
import { answer, type Job, type Setup } from './job.ts';

export interface Batch {
  readonly id: number;
  readonly jobs: readonly Job[];
}

const setup = workerData as Setup;

parentPort?.on('message', ({ id, jobs }: Batch) => {
  parentPort?.postMessage({ id, answers: jobs.map((job) => answer(job, setup)) });
});
