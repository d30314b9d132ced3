/** Many notes of one course, by path. */
import { type Analysis, analyse } from './analyse.ts';
import { DEFAULT_SETTINGS, type Settings } from './settings/model.ts';

/** Keeps the analysis of every note; a note is read again only when its text or its settings change. */
export class Course {
  readonly #notes = new Map<string, { text: string; settings: Settings; analysis: Analysis }>();
  readonly #settingsFor: (path: string) => Settings;

  constructor(settingsFor: (path: string) => Settings = () => DEFAULT_SETTINGS) {
    this.#settingsFor = settingsFor;
  }

  /** Adds or replaces a note and returns its analysis. */
  put(path: string, text: string): Analysis {
    const settings = this.#settingsFor(path);
    const known = this.#notes.get(path);
    if (known && known.text === text && known.settings === settings) return known.analysis;
    const analysis = analyse(text, settings, path);
    this.#notes.set(path, { text, settings, analysis });
    return analysis;
  }

  get(path: string): Analysis | undefined {
    return this.#notes.get(path)?.analysis;
  }

  remove(path: string): void {
    this.#notes.delete(path);
  }

  /** Paths in a fixed order, whatever the order of arrival. */
  paths(): string[] {
    return [...this.#notes.keys()].sort();
  }
}
