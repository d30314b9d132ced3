/** Files replaced as a whole: written beside their place, flushed, then renamed over it. */
import { closeSync, fchmodSync, fsyncSync, openSync, renameSync, unlinkSync, writeSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { pathError } from '../usage-error.ts';

export interface Replacing {
  readonly write: (text: string | Uint8Array) => void;
  readonly commit: () => void;
  readonly abandon: () => void;
}

/**
 * A hidden name in the same folder, so that the rename stays inside one file system. By the clock as well, since in a
 * container every run may have the same number, and a run that was killed leaves its file.
 */
function besideOf(path: string): string {
  return join(
    dirname(path),
    `.${basename(path).slice(0, 200)}.${process.pid.toString(36)}${process.hrtime.bigint().toString(36)}.new`,
  );
}

/** Files being written, so that an interrupted run can take them back. */
const underWay = new Set<() => void>();

/** Removes what is half written. */
export function abandonAll(): void {
  for (const abandon of underWay) abandon();
}

function guarded<T>(path: string, act: () => T): T {
  try {
    return act();
  } catch (error) {
    throw pathError(path, error);
  }
}

function writeWhole(descriptor: number, bytes: Uint8Array): void {
  for (let done = 0; done < bytes.length; ) done += writeSync(descriptor, bytes, done);
}

/** Throws `UsageError` when the file cannot be written; then nothing is left behind. */
export function openForReplacing(path: string, mode?: number): Replacing {
  const beside = besideOf(path);
  const descriptor = guarded(path, () => openSync(beside, 'wx', mode ?? 0o666));
  let open = true;
  let done = false;
  // A failing close may mean that data is lost, so that nothing may take the file's place after it.
  const close = (): void => {
    if (!open) return;
    open = false;
    closeSync(descriptor);
  };
  const finish = (): void => {
    done = true;
    underWay.delete(abandon);
  };
  const abandon = (): void => {
    if (done) return;
    finish();
    quietly(close);
    quietly(() => unlinkSync(beside));
  };
  underWay.add(abandon);
  const step = (act: () => void): void => {
    try {
      act();
    } catch (error) {
      abandon();
      throw pathError(path, error);
    }
  };
  return {
    write: (text) => step(() => writeWhole(descriptor, typeof text === 'string' ? Buffer.from(text) : text)),
    commit: () => {
      step(() => {
        // The umask may have cut the mode asked for.
        if (mode !== undefined) fchmodSync(descriptor, mode & 0o7777);
        fsyncSync(descriptor);
        close();
        renameSync(beside, path);
      });
      finish();
    },
    abandon,
  };
}

/** For taking back: what is gone already is what was wanted. */
function quietly(act: () => void): void {
  try {
    act();
  } catch {}
}

/** Replaces a whole file at once. */
export function replaceFile(path: string, content: string | Uint8Array, mode?: number): void {
  const file = openForReplacing(path, mode);
  file.write(content);
  file.commit();
}
