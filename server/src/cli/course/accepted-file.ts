/** The record of accepted findings on the disk. */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import {
  ACCEPTED_FILE,
  Accepted,
  type AcceptedEntry,
  readAccepted,
  writeAccepted,
} from '../../course/index.ts';
import { alone } from '../files/lock.ts';
import { decode } from '../files/read.ts';
import { replaceFile } from '../files/replace.ts';
import type { NoteResult, PlacedFinding } from '../result.ts';
import { pathError, UsageError } from '../usage-error.ts';

/** The record of the folder or of the nearest folder around it, up to the root of the repository. */
function nearestRecord(folder: string): string | undefined {
  const path = join(folder, ACCEPTED_FILE);
  if (existsSync(path)) return path;
  const outer = dirname(folder);
  return outer === folder || existsSync(join(folder, '.git')) ? undefined : nearestRecord(outer);
}

const shown = (path: string | undefined): string | undefined => path && relative(process.cwd(), path);

export class AcceptedFile {
  readonly path: string;
  readonly #record: Accepted;

  /** Throws `UsageError` when a record is asked for and missing, or when it is not one. */
  constructor(path: string, entries: readonly AcceptedEntry[]) {
    this.path = path;
    this.#record = new Accepted(entries);
  }

  noteKey(path: string): string {
    return relative(dirname(resolve(this.path)), resolve(path))
      .split(sep)
      .join('/');
  }

  /** The same result with the accepted findings marked. */
  mark(result: NoteResult): NoteResult {
    const note = this.noteKey(result.path);
    this.#record.read(note);
    return { ...result, findings: result.findings.map((one) => this.#marked(note, one)) };
  }

  /** A note that was read and holds nothing. */
  empty(path: string): void {
    this.#record.read(this.noteKey(path));
  }

  stale(): AcceptedEntry[] {
    return this.#record.stale();
  }

  entries(): AcceptedEntry[] {
    return this.#record.entries();
  }

  #marked(note: string, one: PlacedFinding): PlacedFinding {
    return this.#record.has(note, one.identity) ? { ...one, accepted: true } : one;
  }
}

/** Reads the record `asked` for, or the nearest one; an empty one when there is none. Throws `UsageError`. */
export function openAccepted(asked?: string, mayBeNew = false): AcceptedFile {
  const path = asked ?? shown(nearestRecord(process.cwd()));
  if (path === undefined || (mayBeNew && !existsSync(path)))
    return new AcceptedFile(path ?? ACCEPTED_FILE, []);
  return new AcceptedFile(path, entriesOf(path));
}

function entriesOf(path: string): readonly AcceptedEntry[] {
  const entries = readAccepted(readRecord(path));
  if (typeof entries === 'string') throw new UsageError(`${path}: ${entries}`);
  return entries;
}

function readRecord(path: string): string {
  let bytes: Buffer;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    throw pathError(path, error);
  }
  return decode(path, bytes);
}

/**
 * Adds and removes entries. Another run may have written the record since this one read it: what that run wrote stays.
 * Throws `UsageError`.
 */
export function changeAccepted(
  path: string,
  added: readonly AcceptedEntry[],
  removed: readonly AcceptedEntry[],
): void {
  const gone = new Set(removed.map(keyOf));
  alone(path, () => {
    const now = existsSync(path) ? entriesOf(path) : [];
    const kept = now.filter((entry) => !gone.has(keyOf(entry)));
    replaceFile(path, writeAccepted(new Accepted([...kept, ...added]).entries()));
  });
}

const keyOf = ({ note, identity }: AcceptedEntry): string => `${note}\0${identity}`;
