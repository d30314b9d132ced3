/** The work on one note, the same in the main thread and in the others: read, decode, analyse, place. */
import { analyse, mentionsOnly, type Settings } from '../../course/index.ts';
import { refuseCrowded } from '../files/crowded.ts';
import { decode, readBytes } from '../files/read.ts';
import { type NoteResult, placed, type Wanted } from '../result.ts';
import { UsageError } from '../usage-error.ts';

export interface Job {
  /** As shown; "-" is standard input. */
  readonly path: string;
  /** Index in the table of settings. */
  readonly settings: number;
  /** Reports and settings take a note from standard input to be this one. */
  readonly name?: string;
  /** Content hash of which the result is known already. */
  readonly known?: string;
}

export interface Answer {
  readonly path: string;
  /** Why the note could not be read. */
  readonly problem?: string;
  /** Absent when the note holds nothing. */
  readonly result?: NoteResult;
  readonly hash?: string;
  /** The content is still the known one. */
  readonly same?: boolean;
}

/** What every job of a run shares. */
export interface Setup {
  readonly settings: readonly Settings[];
  readonly wanted: Wanted;
  /** Whether to hash contents, for the cache. */
  readonly hashed: boolean;
}

type Hash = (bytes: Uint8Array) => string;

let contentHash: Hash | undefined;

/** To be awaited before the first job; loads only what the run needs. */
export async function prepare({ hashed }: Setup): Promise<void> {
  if (!hashed) return;
  const { createHash } = await import('node:crypto');
  contentHash = (bytes) => createHash('sha1').update(bytes).digest('base64');
}

function read(job: Job, setup: Setup): Answer {
  const path = job.name ?? job.path;
  const bytes = readBytes(job.path);
  const hash = setup.hashed ? contentHash?.(bytes) : undefined;
  if (hash !== undefined && hash === job.known) return { path, hash, same: true };
  const text = decode(path === '-' ? 'standard input' : path, bytes);
  refuseCrowded(path, text);
  const settings = setup.settings[job.settings]!;
  const analysis =
    setup.wanted === 'mentions' ? mentionsOnly(text, settings, path) : analyse(text, settings, path);
  const result = placed(path, analysis, setup.wanted);
  return { path, hash, ...(result && { result }) };
}

/** Never throws for a note that cannot be read: the answer says why. */
export function answer(job: Job, setup: Setup): Answer {
  try {
    return read(job, setup);
  } catch (error) {
    if (error instanceof UsageError) return { path: job.name ?? job.path, problem: error.message };
    throw error;
  }
}
