/**
 * Results of earlier runs by content. One file a build of the program in a folder of the user's choice; safe to
 * delete, and safe under two runs at once because it is only ever replaced as a whole.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, type Stats, statSync, unlinkSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { hash } from '../../course/index.ts';
import { alone } from '../files/lock.ts';
import { replaceFile } from '../files/replace.ts';
import type { NoteResult } from '../result.ts';
import { pathError } from '../usage-error.ts';
import { VERSION } from '../version.ts';

/** A file changed this shortly before it was read may have changed again unseen, ms. */
const RACY = 2000;

/** Modification time, change time (ms), size (bytes), content hash, when read (ms). */
type Entry = readonly [mtime: number, ctime: number, size: number, hash: string, at: number];

/** `0`: the note holds nothing. */
type Kept = NoteResult | 0;

interface Content {
  entries: Record<string, Entry>;
  results: Record<string, Kept>;
}

/** Changes with every build, so that no build believes another's results. */
function buildStamp(script: string): string {
  const { mtimeMs, size } = statSync(script);
  return hash(`${VERSION} ${mtimeMs} ${size} ${process.version}`);
}

export class Cache {
  readonly #folder: string;
  readonly #file: string;
  readonly #content: Content;
  readonly #seen = new Set<string>();
  #changed = false;

  /** Throws `UsageError` when the folder cannot be made. An unreadable or foreign cache file counts as empty. */
  constructor(folder: string, script: string) {
    this.#folder = folder;
    this.#file = join(folder, `notes-${buildStamp(script)}.json`);
    try {
      mkdirSync(folder, { recursive: true });
    } catch (error) {
      throw pathError(folder, error);
    }
    this.#content = load(this.#file);
  }

  /** The result for an unchanged file; `undefined` when it must be read. `salt` stands for settings and purpose. */
  fresh(path: string, stat: Stats, salt: string): { result?: NoteResult } | undefined {
    const entry = this.#entry(path);
    if (!entry) return undefined;
    const [mtime, ctime, size, content, at] = entry;
    const same = mtime === stat.mtimeMs && ctime === stat.ctimeMs && size === stat.size;
    if (!same || Math.max(mtime, ctime) + RACY > at) return undefined;
    return this.#result(path, content, salt);
  }

  /** Hash of the content last seen there, when its result is known. */
  known(path: string, salt: string): string | undefined {
    const content = this.#entry(path)?.[3];
    return content !== undefined && this.#result(path, content, salt) ? content : undefined;
  }

  /** The result that belongs to the known content. */
  recall(path: string, content: string, salt: string): NoteResult | undefined {
    return this.#result(path, content, salt)?.result;
  }

  put(
    path: string,
    stat: Stats,
    content: string,
    salt: string,
    result: NoteResult | undefined,
    now: number,
  ): void {
    const key = resolve(path);
    this.#seen.add(key);
    this.#content.entries[key] = [stat.mtimeMs, stat.ctimeMs, stat.size, content, now];
    this.#content.results[content + salt] = result ?? 0;
    this.#changed = true;
  }

  /** Writes what changed. A cache that cannot be written is no failure of the run: `false`. */
  save(): boolean {
    if (!this.#changed) return true;
    try {
      alone(this.#file, () => replaceFile(this.#file, JSON.stringify(this.#merged(load(this.#file)))));
      for (const name of readdirSync(this.#folder)) this.#drop(name);
      return true;
    } catch {
      return false;
    }
  }

  #entry(path: string): Entry | undefined {
    const key = resolve(path);
    this.#seen.add(key);
    return this.#content.entries[key];
  }

  #result(path: string, content: string, salt: string): { result?: NoteResult } | undefined {
    const kept = this.#content.results[content + salt];
    if (kept === undefined) return undefined;
    return kept === 0 ? {} : { result: { ...kept, path } };
  }

  /** Another run may have written meanwhile: its notes are kept, those gone from the disk are not. */
  #merged(other: Content): Content {
    const entries: Record<string, Entry> = {};
    for (const [path, entry] of Object.entries({ ...other.entries, ...this.#content.entries }))
      if (this.#seen.has(path) || existsSync(path)) entries[path] = entry;
    const alive = new Set(Object.values(entries).map((entry) => entry[3]));
    const results = Object.entries({ ...other.results, ...this.#content.results });
    return {
      entries,
      results: Object.fromEntries(results.filter(([key]) => alive.has(key.slice(0, HASH_LENGTH)))),
    };
  }

  /** Removes what other builds left. */
  #drop(name: string): void {
    if (/^notes-[0-9a-f]{16}\.json$/.test(name) && join(this.#folder, name) !== this.#file)
      unlinkSync(join(this.#folder, name));
  }
}

/** Characters of a content hash: SHA-1 in base 64. */
const HASH_LENGTH = 28;

function load(file: string): Content {
  try {
    const { entries, results } = JSON.parse(readFileSync(file, 'utf8')) as Content;
    if (entries && results) return { entries, results };
  } catch {
    // Missing or cut off: start anew.
  }
  return { entries: {}, results: {} };
}
