/** Paths from a file or from standard input: one a line, or ended by NUL so that any name can be given. */
import { readText } from '../files/read.ts';

/** Throws `UsageError` when the list cannot be read. */
export function pathsFrom(source: string): string[] {
  const text = readText(source);
  return text.split(text.includes('\0') ? '\0' : /\r?\n/).filter((path) => path !== '');
}
