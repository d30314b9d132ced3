/** Bytes to text. A note that is not UTF-8 is refused, never guessed at. */
import { readFileSync } from 'node:fs';
import { pathError, UsageError } from '../usage-error.ts';

/** A byte-order mark stays in the text, so that offsets stay true to the file. */
const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

export function decode(path: string, bytes: Uint8Array): string {
  try {
    return decoder.decode(bytes);
  } catch {
    throw new UsageError(`${path}: not UTF-8 text${hint(bytes)}; save it as UTF-8`);
  }
}

function hint(bytes: Uint8Array): string {
  const [a, b] = bytes;
  return (a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff) ? ' (it looks like UTF-16)' : '';
}

/** The bytes of a file, or of standard input for "-". Throws `UsageError`. */
export function readBytes(path: string): Buffer {
  try {
    return readFileSync(path === '-' ? 0 : path);
  } catch (error) {
    throw pathError(path === '-' ? 'standard input' : path, error);
  }
}

export function readText(path: string): string {
  return decode(path === '-' ? 'standard input' : path, readBytes(path));
}
