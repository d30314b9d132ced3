/** From what the user wrote (files, folders, globs) to the notes to read, in a fixed order, each once. */
import { type Dirent, readdirSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import picomatch from 'picomatch';
import { pathError, UsageError } from '../usage-error.ts';
import { repositoryOf } from './repository.ts';

/** Endings of notes taken from folders. A file named on the command line is read whatever its ending. */
export const NOTE_ENDINGS = ['.md', '.markdown', '.vtt', '.srt'] as const;

/** Folders nobody keeps notes in. */
const SKIPPED = new Set(['node_modules']);

/** What the course says of paths. */
export interface Course {
  readonly keep: (path: string, isFolder: boolean) => boolean;
  /** Undefined where the course does not say. */
  readonly isNote: (path: string) => boolean | undefined;
}

const NO_COURSE: Course = { keep: () => true, isNote: () => undefined };

export const hasNoteEnding = (name: string): boolean =>
  NOTE_ENDINGS.some((ending) => name.toLowerCase().endsWith(ending));

const byName = (a: Dirent, b: Dirent): number => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);

/** Forward slashes, no leading "./": how paths are shown everywhere. */
function shown(path: string): string {
  const plain = process.platform === 'win32' ? path.replaceAll('\\', '/') : path;
  return plain.startsWith('./') && plain.length > 2 ? plain.slice(2) : plain;
}

/**
 * Walks folders once each, also when symbolic links lead back. Links that lead out of the repository (or, outside of
 * one, out of the folder) are passed over: a change proposed by a stranger must not have other files read or fixed.
 */
class Walk {
  readonly #seen = new Set<string>();
  readonly found: string[] = [];
  readonly unreadable: UsageError[] = [];
  readonly #wanted: (path: string) => boolean;
  readonly #course: Course;
  #outermost: string | undefined;

  constructor(wanted: (path: string) => boolean, course: Course) {
    this.#wanted = wanted;
    this.#course = course;
  }

  folder(path: string): void {
    let entries: Dirent[];
    try {
      const real = realpathSync(path);
      this.#outermost ??= repositoryOf(real) ?? real;
      if (this.#seen.has(real)) return;
      this.#seen.add(real);
      entries = readdirSync(path, { withFileTypes: true }).sort(byName);
    } catch (error) {
      this.unreadable.push(pathError(path, error));
      return;
    }
    for (const entry of entries) this.#entry(path, entry);
  }

  #leadsOut(path: string): boolean {
    try {
      return !`${realpathSync(path)}${sep}`.startsWith(withEnd(this.#outermost!));
    } catch {
      return true;
    }
  }

  #entry(folder: string, entry: Dirent): void {
    if (entry.name.startsWith('.') || SKIPPED.has(entry.name)) return;
    const path = shown(folder === '.' ? entry.name : join(folder, entry.name));
    if (entry.isSymbolicLink() && this.#leadsOut(path)) return;
    const kind = kindOf(path, entry);
    if (kind === 'folder') {
      if (this.#course.keep(path, true)) this.folder(path);
    } else if (kind === 'file' && this.#wanted(path) && this.#course.keep(path, false)) this.found.push(path);
  }
}

const withEnd = (folder: string): string => (folder.endsWith(sep) ? folder : `${folder}${sep}`);

function kindOf(path: string, entry: Dirent): 'file' | 'folder' | 'other' {
  if (entry.isDirectory()) return 'folder';
  if (entry.isFile()) return 'file';
  if (!entry.isSymbolicLink()) return 'other';
  return linkTarget(path);
}

/** A link that leads nowhere or in circles is passed over. */
function linkTarget(path: string): 'file' | 'folder' | 'other' {
  try {
    const target = statSync(path);
    if (target.isDirectory()) return 'folder';
    return target.isFile() ? 'file' : 'other';
  } catch {
    return 'other';
  }
}

function expand(argument: string, course: Course): Walk {
  const walk = new Walk((path) => course.isNote(path) ?? hasNoteEnding(path), course);
  try {
    const stat = statSync(argument);
    if (stat.isDirectory()) walk.folder(argument);
    else if (course.keep(argument, false)) walk.found.push(shown(argument));
  } catch (error) {
    return globWalk(argument, course) ?? fail(walk, argument, error);
  }
  return walk;
}

function fail(walk: Walk, argument: string, error: unknown): Walk {
  walk.unreadable.push(pathError(argument, error));
  return walk;
}

/** Nothing when the argument is not a glob. */
function globWalk(argument: string, course: Course): Walk | undefined {
  const { base, isGlob } = picomatch.scan(argument);
  if (!isGlob) return undefined;
  const matches = picomatch(shown(argument));
  const walk = new Walk((path) => matches(path), course);
  walk.folder(base === '' ? '.' : base);
  if (walk.found.length === 0) walk.unreadable.push(new UsageError(`${argument}: no file matches`));
  return walk;
}

export interface Found {
  /** "-" stands for standard input. */
  readonly paths: readonly string[];
  /** Arguments and folders that could not be read. */
  readonly problems: readonly UsageError[];
}

/** Every note `args` name, each once, in the order of the arguments and by name inside folders. */
export function findNotes(args: readonly string[], course: Course = NO_COURSE): Found {
  const paths = new Set<string>();
  const problems: UsageError[] = [];
  for (const argument of args) {
    if (argument === '-') paths.add('-');
    else {
      const walk = expand(argument, course);
      for (const path of walk.found) paths.add(path);
      problems.push(...walk.unreadable);
    }
  }
  return { paths: [...paths], problems };
}
