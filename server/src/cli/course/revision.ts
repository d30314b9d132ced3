/** What changed since a git revision: which notes, and what they said then. */
import { spawnSync } from 'node:child_process';
import { dirname, resolve } from 'node:path';
import { reason, UsageError } from '../usage-error.ts';

const LARGEST_OUTPUT = 1 << 30;

/** A repository's settings may name a program that tells git what changed: a course must not start one. */
const NOTHING_OF_THE_COURSE = ['-c', 'core.fsmonitor=false'];

function git(args: readonly string[], folder: string): Buffer {
  const { status, error, stdout, stderr } = spawnSync(
    'git',
    [...NOTHING_OF_THE_COURSE, '-C', resolve(folder), ...args],
    // Started from elsewhere: some systems look for a program in the folder they stand in before anywhere else.
    { maxBuffer: LARGEST_OUTPUT, cwd: dirname(process.execPath) },
  );
  if (error) throw new UsageError(`git cannot be run: ${reason(error)}`);
  if (status !== 0) throw new UsageError(`git: ${stderr.toString().trim().split('\n')[0]}`);
  return stdout;
}

const names = (output: Buffer): string[] => output.toString().split('\0').filter(Boolean);

export class Revision {
  readonly #top: string;
  readonly #commit: string;
  /** Absolute path now → path then, from the top of the repository; nothing when it is new. */
  readonly #changed = new Map<string, string | undefined>();

  /** Throws `UsageError` outside a repository or when there is no such revision. */
  constructor(name: string) {
    this.#top = git(['rev-parse', '--show-toplevel'], '.').toString().replace(/\n$/, '');
    this.#commit = commitOf(name);
    this.#readChanges(
      names(git(['diff', '--name-status', '-z', '-M', '--diff-filter=d', this.#commit], this.#top)),
    );
    for (const path of names(
      git(['ls-files', '-z', '--others', '--exclude-standard', '--full-name'], this.#top),
    ))
      this.#changed.set(resolve(this.#top, path), undefined);
  }

  has(path: string): boolean {
    return this.#changed.has(resolve(path));
  }

  /** What the note said then; nothing when it is new. */
  before(path: string): Buffer | undefined {
    const then = this.#changed.get(resolve(path));
    return then === undefined
      ? undefined
      : git(['show', '--no-textconv', `${this.#commit}:${then}`], this.#top);
  }

  /** Status, path, and for a rename or copy a second path. */
  #readChanges(fields: readonly string[]): void {
    for (let i = 0; i < fields.length; ) {
      const status = fields[i++]!;
      const then = fields[i++]!;
      const now = /^[RC]/.test(status) ? fields[i++]! : then;
      this.#changed.set(resolve(this.#top, now), status.startsWith('A') ? undefined : then);
    }
  }
}

function commitOf(name: string): string {
  try {
    return git(['rev-parse', '--verify', '--quiet', '--end-of-options', `${name}^{commit}`], '.')
      .toString()
      .trim();
  } catch {
    throw new UsageError(`there is no revision "${name}" in this repository`);
  }
}
