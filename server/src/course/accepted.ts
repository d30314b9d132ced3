/**
 * The record of findings accepted when a course took up the checks: reviewable, one entry a finding, known by
 * its identity, so that moved lines and reworded neighbours do not bring it back.
 */

export const ACCEPTED_FILE = 'sizewright.accepted.json';

export interface AcceptedEntry {
  /** Path of the note from the record's folder, with forward slashes. */
  readonly note: string;
  readonly check: string;
  /** What the text says, for reviewers. */
  readonly says: string;
  /** See `identity.ts`. */
  readonly identity: string;
}

const ABOUT = 'Findings accepted earlier. Remove an entry to have its finding reported again.';

function isEntry(value: unknown): value is AcceptedEntry {
  if (typeof value !== 'object' || value === null) return false;
  const entry = value as Record<string, unknown>;
  return ['note', 'check', 'says', 'identity'].every((key) => typeof entry[key] === 'string');
}

/** The entries of a record; a sentence when the text is none. */
export function readAccepted(text: string): readonly AcceptedEntry[] | string {
  let content: unknown;
  try {
    content = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch (error) {
    return `not JSON: ${(error as Error).message}`;
  }
  const list = (content as { accepted?: unknown } | null)?.accepted;
  if (!Array.isArray(list)) return 'the key "accepted" must hold a list';
  const wrong = list.findIndex((entry) => !isEntry(entry));
  if (wrong >= 0) return `entry ${wrong + 1} of "accepted" needs note, check, says and identity, each a text`;
  return list as AcceptedEntry[];
}

/** One entry a line, by note, so that a change shows as few lines. */
export function writeAccepted(entries: readonly AcceptedEntry[]): string {
  const sorted = [...entries].sort((a, b) => compare(a.note, b.note));
  const lines = sorted.map(({ note, check, says, identity }) =>
    JSON.stringify({ note, check, says, identity }),
  );
  const list = lines.length > 0 ? `[\n    ${lines.join(',\n    ')}\n  ]` : '[]';
  return `{\n  "about": ${JSON.stringify(ABOUT)},\n  "accepted": ${list}\n}\n`;
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Answers which findings are accepted, and keeps track of which entries were met. */
export class Accepted {
  readonly #byNote = new Map<string, Map<string, AcceptedEntry>>();
  readonly #met = new Set<AcceptedEntry>();
  readonly #read = new Set<string>();

  constructor(entries: readonly AcceptedEntry[]) {
    for (const entry of entries) {
      const note = this.#byNote.get(entry.note) ?? new Map<string, AcceptedEntry>();
      this.#byNote.set(entry.note, note.set(entry.identity, entry));
    }
  }

  /** To be told of every note read, also of those without findings. */
  read(note: string): void {
    this.#read.add(note);
  }

  has(note: string, identity: string): boolean {
    const entry = this.#byNote.get(note)?.get(identity);
    if (entry) this.#met.add(entry);
    return entry !== undefined;
  }

  /** Entries of the notes read that no finding met. */
  stale(): AcceptedEntry[] {
    return this.entries().filter((entry) => this.#read.has(entry.note) && !this.#met.has(entry));
  }

  entries(): AcceptedEntry[] {
    return [...this.#byNote.values()].flatMap((note) => [...note.values()]);
  }
}
