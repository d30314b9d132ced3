/** Which notes a run reads, and with what settings. Nothing is read yet; a wrong settings file stops the run here. */
import { hash, type Settings } from '../../course/index.ts';
import { Folders } from '../course/folders.ts';
import { findNotes } from '../files/find.ts';
import { complain } from '../terminal.ts';
import { UsageError } from '../usage-error.ts';
import type { Job } from './job.ts';

export interface Plan {
  readonly jobs: readonly Job[];
  readonly settings: readonly Settings[];
  /** By index of the settings: stands for them in the cache. */
  readonly keys: readonly string[];
  /** True when something named could not be read. */
  readonly unreadable: boolean;
}

export interface PlanOptions {
  /** What standard input is taken to be. */
  readonly name?: string;
  readonly shard?: Shard;
  /** Further restriction, such as "changed since". */
  readonly only?: (path: string) => boolean;
}

export interface Shard {
  readonly index: number;
  readonly of: number;
}

/** "2/8" is the second of eight parts. Throws `UsageError`. */
export function parseShard(text: string): Shard {
  const match = /^([1-9][0-9]{0,5})\/([1-9][0-9]{0,5})$/.exec(text);
  const [index, of] = [Number(match?.[1]), Number(match?.[2])];
  if (!match || index > of)
    throw new UsageError(`--shard ${text}: write it as 2/8, the second of eight parts`);
  return { index, of };
}

class SettingsTable {
  readonly #index = new Map<Settings, number>();
  readonly list: Settings[] = [];

  add(settings: Settings): number {
    const known = this.#index.get(settings);
    if (known !== undefined) return known;
    this.#index.set(settings, this.list.length);
    return this.list.push(settings) - 1;
  }
}

/** Throws `UsageError` when settings are wrong; all other mistakes in them are said on standard error first. */
export function makePlan(args: readonly string[], options: PlanOptions = {}): Plan {
  const folders = new Folders();
  const { name, shard, only } = options;
  const course = {
    keep: (path: string, isFolder: boolean) => folders.keep(path, isFolder),
    isNote: (path: string) => folders.isNote(path),
  };
  const found = findNotes(args, course);
  const table = new SettingsTable();
  const paths = found.paths.filter((path) => path === '-' || !only || only(path));
  const mine = shard ? paths.filter((_, i) => i % shard.of === shard.index - 1) : paths;
  const jobs = mine.map((path): Job => {
    const shownAs = path === '-' ? name : undefined;
    return {
      path,
      settings: table.add(folders.settingsFor(shownAs ?? path)),
      ...(shownAs && { name: shownAs }),
    };
  });
  stopOnProblems(folders.problems);
  for (const problem of found.problems) complain(problem.message);
  const keys = table.list.map((settings) => hash(JSON.stringify(settings)));
  return { jobs, settings: table.list, keys, unreadable: found.problems.length > 0 };
}

function stopOnProblems(problems: readonly UsageError[]): void {
  const last = problems.at(-1);
  if (!last) return;
  for (const problem of problems.slice(0, -1)) complain(problem.message);
  throw last;
}
