/** Settings files of the course around a note, read as notes are read; the nearest file decides. */
import picomatch from 'picomatch';
import {
  DEFAULT_SETTINGS,
  inForce,
  literalSigns,
  mergeSettings,
  type Problem,
  readSettings,
  SETTINGS_FILE,
  type Settings,
  type SettingsFile,
} from '../course/index.ts';
import type { Locale } from '../texts/index.ts';

interface Layer {
  readonly folder: string;
  readonly file: SettingsFile;
}

interface Folder {
  readonly layers: readonly Layer[];
  readonly settings: Settings;
}

/** A settings file that is not used, with what is wrong in it. */
export interface Faulty {
  readonly uri: string;
  readonly text: string;
  readonly problems: readonly Problem[];
}

const NONE: Folder = { layers: [], settings: DEFAULT_SETTINGS };

export class CourseFiles {
  private readonly read: (uri: string) => Promise<string | null>;
  private readonly onFile: (file: Faulty) => void;
  private roots: readonly string[] = [];
  /** Of what is wrong in a settings file. */
  private locale: Locale = 'en';
  private readonly folders = new Map<string, Promise<Folder>>();

  /** `onFile` hears of every settings file read, with its problems, if any. */
  constructor(read: (uri: string) => Promise<string | null>, onFile: (file: Faulty) => void) {
    this.read = read;
    this.onFile = onFile;
  }

  /** Folders of the workspace: nothing above them counts. */
  begin(roots: readonly string[], locale = this.locale): void {
    this.locale = locale;
    this.roots = roots.map((root) => root.replace(/\/$/, ''));
    this.clear();
  }

  clear(): void {
    this.folders.clear();
  }

  async settingsFor(uri: string): Promise<Settings> {
    return (await this.folder(parent(uri))).settings;
  }

  /** False for a note that the course leaves out. */
  async keeps(uri: string): Promise<boolean> {
    const { layers } = await this.folder(parent(uri));
    return layers.every(({ folder, file }) => !matches(file.leaveOut, pathOf(uri.slice(folder.length + 1))));
  }

  private folder(uri: string): Promise<Folder> {
    const known = this.folders.get(uri);
    if (known !== undefined) return known;
    const made = this.make(uri);
    this.folders.set(uri, made);
    return made;
  }

  private async make(uri: string): Promise<Folder> {
    const outer = this.hasOuter(uri) ? await this.folder(parent(uri)) : NONE;
    const file = await this.settingsFile(uri);
    if (file === undefined) return outer;
    const layers = inForce([...outer.layers, { folder: uri, file }]);
    return { layers, settings: mergeSettings(layers.map((layer) => layer.file)) };
  }

  private hasOuter(uri: string): boolean {
    return this.roots.some((root) => uri.startsWith(`${root}/`));
  }

  private async settingsFile(folder: string): Promise<SettingsFile | undefined> {
    const uri = `${folder}/${SETTINGS_FILE}`;
    const text = await this.read(uri);
    if (text === null) return undefined;
    const { file, problems } = readSettings(text, this.locale);
    this.onFile({ uri, text, problems });
    return file;
  }
}

/** An address that is not well formed is taken as it is. */
function pathOf(part: string): string {
  try {
    return decodeURI(part);
  } catch {
    return part;
  }
}

const parent = (uri: string): string => uri.slice(0, Math.max(0, uri.lastIndexOf('/')));

const matches = (patterns: readonly string[] | undefined, path: string): boolean =>
  patterns !== undefined &&
  patterns.length > 0 &&
  picomatch(patterns.map(literalSigns), { dot: true, noextglob: true })(path);
