/** A mistake of the user: shown as one line, exit status 2, never a stack trace. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}

const SYSTEM_WORDS: Readonly<Record<string, string>> = {
  ENOENT: 'no such file or folder',
  EACCES: 'permission denied',
  EPERM: 'not permitted',
  EISDIR: 'is a folder',
  ENOTDIR: 'a part of the path is not a folder',
  ELOOP: 'too many symbolic links',
  ENAMETOOLONG: 'the name is too long',
  ENOSPC: 'no space left on the device',
  EROFS: 'the file system is read-only',
  EMFILE: 'too many open files',
  EDQUOT: 'the disk quota is used up',
};

/** Plain words for a failed system call. */
export function reason(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return (code !== undefined && SYSTEM_WORDS[code]) || message || String(error);
}

/** A `UsageError` about a path. */
export function pathError(path: string, error: unknown): UsageError {
  return new UsageError(`${path}: ${reason(error)}`);
}
