/** `check --watch`: checks once, then every note again when it changes, until interrupted. */
import { type FSWatcher, statSync, watch } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { Folders } from '../course/folders.ts';
import { hasNoteEnding } from '../files/find.ts';
import { complain, say } from '../terminal.ts';
import { type CheckOptions, check } from './check.ts';

/** Editors write a file in several steps; wait until they are done, ms. */
const QUIET = 150;

/** Folders that hold what the user named. Watching a file itself would lose it when an editor replaces it. */
function foldersOf(paths: readonly string[]): string[] {
  const folders = paths.map((path) => {
    const base = path.split(/[*?{[]/)[0] || '.';
    const stat = statSync(base, { throwIfNoEntry: false });
    return stat?.isDirectory() ? base : dirname(base);
  });
  return [...new Set(folders)].filter(
    (folder) => !folders.some((other) => other !== folder && inside(other, folder)),
  );
}

function inside(outer: string, path: string): boolean {
  const way = relative(outer, path);
  return way === '' || (!way.startsWith('..') && !way.startsWith('/'));
}

const now = (): string => new Date().toTimeString().slice(0, 8);

/** Collects changes and runs when they pause; never twice at once. */
class Rounds {
  readonly #changed = new Set<string>();
  readonly #run: (paths: readonly string[]) => Promise<unknown>;
  #timer: NodeJS.Timeout | undefined;
  #busy = false;

  constructor(run: (paths: readonly string[]) => Promise<unknown>) {
    this.#run = run;
  }

  changed(path: string): void {
    this.#changed.add(path);
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#round(), QUIET);
  }

  async #round(): Promise<void> {
    if (this.#busy) return;
    this.#busy = true;
    const paths = [...this.#changed].filter((path) => statSync(path, { throwIfNoEntry: false })?.isFile());
    this.#changed.clear();
    if (paths.length > 0) await this.#run(paths);
    this.#busy = false;
    const [left] = this.#changed;
    if (left !== undefined) this.changed(left);
  }
}

/** As a walk over the folders would see it. */
function isNote(path: string): boolean {
  if (
    path
      .split(sep)
      .some((part) => (part.startsWith('.') && part !== '.' && part !== '..') || part === 'node_modules')
  )
    return false;
  const folders = new Folders();
  return folders.keep(path, false) && (folders.isNote(path) ?? hasNoteEnding(path));
}

/** Never ends by itself. Throws `UsageError` as `check` does, in the first round. */
export async function watchNotes(paths: readonly string[], options: CheckOptions): Promise<number> {
  await check(paths, options);
  const rounds = new Rounds(async (changed) => {
    say(`\n${now()}\n`);
    // A mistake in the settings is said and the watch goes on.
    await check(changed, options).catch((error: Error) => complain(error.message));
  });
  const watchers: FSWatcher[] = foldersOf(paths).map((folder) =>
    watch(folder, { recursive: true }, (_event, name) => {
      const path = name === null ? undefined : join(folder, name);
      if (path !== undefined && isNote(path)) rounds.changed(path);
    }),
  );
  await Promise.all(watchers.map((watcher) => new Promise((done) => watcher.on('close', done))));
  return 0;
}
