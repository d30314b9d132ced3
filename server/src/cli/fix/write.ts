/** Puts a mended note in its place: whole or not at all, and only over the very bytes that were read. */
import { chownSync, lstatSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { replaceFile } from '../files/replace.ts';
import { pathError, UsageError } from '../usage-error.ts';

/** Throws `UsageError`, also when the file changed since `before` was read. Mode, and the owner where allowed, stay. */
export function writeMended(path: string, before: Buffer, text: string): void {
  let target: string;
  let stat: ReturnType<typeof statSync>;
  try {
    // A symbolic link stays one: the file it leads to is written.
    target = lstatSync(path).isSymbolicLink() ? realpathSync(path) : path;
    stat = statSync(target);
    if (!readFileSync(target).equals(before))
      throw new UsageError(`${path}: changed while it was being read; not written`);
  } catch (error) {
    throw error instanceof UsageError ? error : pathError(path, error);
  }
  replaceFile(target, text, stat.mode);
  keepOwner(target, stat.uid, stat.gid);
}

function keepOwner(path: string, uid: number, gid: number): void {
  if (process.getuid?.() !== 0) return;
  try {
    chownSync(path, uid, gid);
  } catch {
    // Not every file system has owners.
  }
}
