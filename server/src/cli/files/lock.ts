/** One run at a time at a file that several runs read, change and write. */
import { closeSync, openSync, statSync, unlinkSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { pathError } from '../usage-error.ts';

/** A lock this old, ms, was left by a run that was killed: each is held for as long as one file is written. */
const LEFT = 10_000;
const PAUSE = 15;

const sleep = new Int32Array(new SharedArrayBuffer(4));

/** Runs `act` while no other run is between reading and writing `path`. Throws `UsageError` where nothing can be written. */
export function alone<T>(path: string, act: () => T): T {
  const lock = join(dirname(path), `.${basename(path)}.lock`);
  while (!taken(lock, path)) Atomics.wait(sleep, 0, 0, PAUSE);
  try {
    return act();
  } finally {
    remove(lock);
  }
}

function taken(lock: string, path: string): boolean {
  try {
    closeSync(openSync(lock, 'wx'));
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw pathError(path, error);
    const since = statSync(lock, { throwIfNoEntry: false })?.mtimeMs;
    if (since !== undefined && Date.now() - since > LEFT) remove(lock);
    return false;
  }
}

function remove(lock: string): void {
  try {
    unlinkSync(lock);
  } catch {
    // Gone already: that is what was wanted.
  }
}
