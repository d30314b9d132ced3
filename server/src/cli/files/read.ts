/** Bytes to text. A note that is not UTF-8 is refused, never guessed at. */
import { isUtf8 } from 'node:buffer';
import { readFileSync } from 'node:fs';
import { pathError, UsageError } from '../usage-error.ts';

/** No note is this large, and no text can be much larger, bytes. */
const LARGEST = 2 ** 28;

/** A byte-order mark stays in the text, so that offsets stay true to the file. */
export function decode(path: string, bytes: Buffer): string {
  if (bytes.length > LARGEST) throw new UsageError(`${path}: larger than 256 MiB, which no note is`);
  if (isUtf8(bytes)) return bytes.toString('utf8');
  throw new UsageError(`${path}: not UTF-8 text${hint(bytes)}; save it as UTF-8`);
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
