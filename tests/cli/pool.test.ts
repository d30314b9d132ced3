/** Threads that run out of memory: nothing of their work is lost. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import type { Answer, Job, Setup } from '../../server/src/cli/engine/job.ts';
import { pooled } from '../../server/src/cli/engine/pool.ts';

const folder = mkdtempSync(join(tmpdir(), 'sizes-pool-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A thread that answers with the paths it was asked, and takes all memory there is for one of them. */
const script = join(folder, 'thread.cjs');
writeFileSync(
  script,
  `const { parentPort } = require('node:worker_threads');
parentPort.on('message', ({ id, jobs }) => {
  const held = [];
  while (jobs.some(({ path }) => path === 'huge')) held.push(new Array(1e5).fill(id));
  if (jobs.some(({ path }) => path === 'broken')) throw new Error('broken');
  parentPort.postMessage({ id, answers: jobs.map(({ path }) => ({ path })) });
});`,
);

const setup: Setup = { settings: [], wanted: 'findings', hashed: false };

async function read(paths: readonly string[]): Promise<{ paths: string[]; here: string[] }> {
  const here: string[] = [];
  const instead = (jobs: readonly Job[]): readonly Answer[] => {
    here.push(...jobs.map(({ path }) => path));
    return jobs.map(({ path }) => ({ path }));
  };
  const all: string[] = [];
  const batches = paths.map((path) => [{ path, settings: 0 } as Job]);
  for await (const answers of pooled(batches, setup, { threads: 2, script, instead }))
    all.push(...answers.map(({ path }) => path));
  return { paths: all, here };
}

it('reads here what was too much for a thread, in order, and goes on with a new one', async () => {
  const paths = ['a', 'huge', ...Array.from({ length: 12 }, (_, i) => `note-${i}`)];
  const found = await read(paths);
  expect(found.paths).toEqual(paths);
  expect(found.here).toContain('huge');
  expect(found.here).not.toContain('note-11');
});

it('tells of a thread that ends for another reason', async () => {
  await expect(read(['a', 'broken', 'b'])).rejects.toThrow('broken');
});
