/** Standard output and error, as a run needs them. */
import { writeSync } from 'node:fs';
import { safeLine } from './escape.ts';
import { Stop } from './stop.ts';
import { reason, UsageError } from './usage-error.ts';

/** What a program ended by a closed pipe reports to a shell: 128 + SIGPIPE. */
const CLOSED_PIPE = 141;

const pause = new Int32Array(new SharedArrayBuffer(4));

/** Writes everything, also to a slow reader. Throws `Stop` when the reader has gone, `UsageError` on a full disk. */
export function writeAll(descriptor: number, text: string): void {
  const bytes = Buffer.from(text);
  for (let done = 0; done < bytes.length; ) {
    try {
      done += writeSync(descriptor, bytes, done);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'EPIPE') throw new Stop(CLOSED_PIPE);
      if (code !== 'EAGAIN') throw new UsageError(`standard output: ${reason(error)}`);
      Atomics.wait(pause, 0, 0, 5);
    }
  }
}

export const say = (text: string): void => writeAll(1, text);

/** One line on standard error, whatever names of files are in it. A failure to complain is not complained about. */
export function complain(message: string): void {
  try {
    writeAll(2, `sizewright: ${safeLine(message)}\n`);
  } catch {}
}
