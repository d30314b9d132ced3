/** What holds in a folder: its settings file and ignore files, and those of the folders around it. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import ignore, { type Ignore } from 'ignore';
import picomatch from 'picomatch';
import {
  DEFAULT_SETTINGS,
  inForce,
  isTame,
  literalSigns,
  mergeSettings,
  readSettings,
  SETTINGS_FILE,
  type Settings,
  type SettingsFile,
} from '../../course/index.ts';
import { decode } from '../files/read.ts';
import { Lines } from '../lines.ts';
import { pathError, UsageError } from '../usage-error.ts';

const DEFAULT_IGNORE_FILES = ['.gitignore'] as const;

type Matches = (path: string) => boolean;

/** A settings file with its patterns ready to match paths relative to its folder. */
interface Layer {
  readonly folder: string;
  readonly file: SettingsFile;
  readonly isNote?: Matches;
  readonly leftOut?: Matches;
}

interface IgnoreLayer {
  readonly folder: string;
  readonly rules: Ignore;
}

export interface Folder {
  readonly settings: Settings;
  /** Outermost first, those in force only. */
  readonly layers: readonly Layer[];
  readonly ignores: readonly IgnoreLayer[];
}

const NOTHING: Folder = { settings: DEFAULT_SETTINGS, layers: [], ignores: [] };

/** A path below `folder`, with forward slashes. */
function below(folder: string, path: string): string {
  return relative(folder, path).split(sep).join('/');
}

export class Folders {
  readonly #known = new Map<string, Folder>();
  /** Everything wrong in the settings files met so far; with any, nothing may run. */
  readonly problems: UsageError[] = [];

  /** What holds for the notes in `folder` (any spelling of its path). */
  of(folder: string): Folder {
    const path = resolve(folder);
    const known = this.#known.get(path);
    if (known) return known;
    const made = this.#make(path);
    this.#known.set(path, made);
    return made;
  }

  settingsFor(note: string): Settings {
    return this.of(note === '-' ? '.' : dirname(resolve(note))).settings;
  }

  /** False for a file or folder that settings or ignore files leave out. */
  keep(path: string, isFolder: boolean): boolean {
    const full = resolve(path);
    const { layers, ignores } = this.of(dirname(full));
    const slash = isFolder ? '/' : '';
    if (layers.some(({ folder, leftOut }) => leftOut?.(below(folder, full)))) return false;
    let ignored = false;
    for (const { folder, rules } of ignores) {
      const verdict = rules.test(below(folder, full) + slash);
      if (verdict.ignored) ignored = true;
      else if (verdict.unignored) ignored = false;
    }
    return !ignored;
  }

  /** Whether the settings say which files are notes, and then whether this is one. */
  isNote(path: string): boolean | undefined {
    const full = resolve(path);
    const layer = this.of(dirname(full)).layers.findLast(({ isNote }) => isNote);
    return layer?.isNote?.(below(layer.folder, full));
  }

  #make(path: string): Folder {
    const outer = dirname(path) === path || isRoot(path) ? NOTHING : this.of(dirname(path));
    const file = this.#settingsFile(path);
    const layers = file ? inForce([...outer.layers, file]) : outer.layers;
    const names = layers.findLast((one) => one.file.ignoreFiles)?.file.ignoreFiles ?? DEFAULT_IGNORE_FILES;
    const ignores = names.flatMap((name) => ignoreLayer(path, name));
    if (!file && ignores.length === 0) return outer;
    return {
      settings: file ? mergeSettings(layers.map((one) => one.file)) : outer.settings,
      layers,
      ignores: [...outer.ignores, ...ignores],
    };
  }

  #settingsFile(folder: string): Layer | undefined {
    const path = join(folder, SETTINGS_FILE);
    if (!existsSync(path)) return undefined;
    const shown = below(process.cwd(), path).startsWith('..') ? path : below(process.cwd(), path);
    const file = this.#parse(path, shown);
    return file && { folder, file, isNote: matcher(file.notes), leftOut: matcher(file.leaveOut) };
  }

  #parse(path: string, shown: string): SettingsFile | undefined {
    let text: string;
    try {
      text = decode(shown, readFileSync(path));
    } catch (error) {
      this.problems.push(error instanceof UsageError ? error : pathError(shown, error));
      return undefined;
    }
    const { file, problems } = readSettings(text);
    const lines = new Lines(text);
    for (const { span, message } of problems) {
      const { line, column } = lines.place(span);
      this.problems.push(new UsageError(`${shown}:${line}:${column}: ${message}`));
    }
    return file;
  }
}

/** A repository ends where its `.git` is: nothing above it counts. */
function isRoot(folder: string): boolean {
  return existsSync(join(folder, '.git'));
}

function matcher(patterns: readonly string[] | undefined): Matches | undefined {
  if (!patterns || patterns.length === 0) return undefined;
  const match = picomatch(patterns.map(literalSigns), { dot: true, noextglob: true });
  // A folder pattern such as "drafts/**" leaves out the folder itself, so that it is not even opened.
  return (path) => match(path) || match(`${path}/`);
}

function ignoreLayer(folder: string, name: string): IgnoreLayer[] {
  if (basename(name) !== name) return [];
  const path = join(folder, name);
  if (!statSync(path, { throwIfNoEntry: false })?.isFile()) return [];
  try {
    const lines = readFileSync(path, 'utf8').split(/\r?\n/);
    return [{ folder, rules: ignore().add(lines.filter(isTame)) }];
  } catch {
    return [];
  }
}
