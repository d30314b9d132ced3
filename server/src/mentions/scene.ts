/** Where a number stands: its sentence, the things named around it, its table, its headings. */

import { matchesOf } from '../notes/index.ts';
import type { Note, Passage, Span } from '../notes/model.ts';
import { finds } from '../notes/patterns.ts';
import type { Device } from '../sizes/model.ts';
import type { Context } from './model.ts';
import { finder, finders, type Hit } from './phrases.ts';
import { DEVICE_WORDS } from './words/devices.ts';
import { GUT_OWNERS, MATERIAL_WORDS } from './words/materials.ts';

export type { Hit } from './phrases.ts';

/** What one passage says, found once. */
export interface Scene {
  readonly passage: Passage;
  /** Beginning and end of its text: what other passages look at. */
  readonly brief: string;
  readonly sentences: readonly Span[];
  readonly devices: readonly Hit<Device>[];
  readonly materials: readonly Hit<string>[];
  /** Kinds of device named anywhere in it. */
  readonly kinds: ReadonlySet<Device>;
}

/** Everything the sense rules may look at. */
export interface Surroundings {
  readonly note: Note;
  readonly scenes: readonly Scene[];
  readonly context: Context;
}

const DEVICES = new Map(
  DEVICE_WORDS.flatMap(([device, words]) => words.map((word) => [word, device] as const)),
);

const findOurs = finders<[Device, string]>([DEVICES, MATERIAL_WORDS]);

/** "will drain", "to suction": the verb names no thing. */
const VERBS: ReadonlySet<string> = new Set(['drain', 'stick', 'suction', 'sound', 'port']);
const VERB_BEFORE = /\b(?:will|to|can|cannot|could|may|might|must|should|would|does|don't|doesn't|and)\s$/i;

/** A port of a catheter, not of a ship or a server. */
const PORT_NEAR =
  /\b(?:cath\w*|veins?|venous|implant\w*|chest|lumens?|central|lines?|trocars?|needles?|huber|Fr|French|cannula\w*|gauge|[0-9]+ ?G|skin|flush\w*|inject\w*|infus\w*|access\w*)\b/i;

function isThing(text: string, { word, start }: Hit<Device>): boolean {
  const before = text.slice(Math.max(0, start - 24), start);
  // A peg holds a coat; the tube is written in capitals.
  if (/^pegs?$/.test(word)) return text.startsWith('PEG', start);
  if (/^[no]gs?$/.test(word)) return /^[NO]G/.test(text.slice(start, start + 2)) && !/[0-9]\s?$/.test(before);
  // A mask or a Guedel has numbers of its own.
  if (word.startsWith('airway'))
    return !/\b(?:masks?|oro-?pharyngeal|oral|guedel|supraglottic|laryngeal)\s$/i.test(before);
  if (word.startsWith('stent'))
    return !/\bmm\s(?:[\w-]+\s){0,2}$|\b(?:coronary|eluting|vascular|metal)\s$/i.test(before);
  if (/^ports?$/.test(word) && !PORT_NEAR.test(text.slice(Math.max(0, start - 120), start + 120)))
    return false;
  return !VERBS.has(word) || !VERB_BEFORE.test(before.slice(-8));
}

const BRIEF = 400;
const briefly = (text: string): string =>
  text.length <= 2 * BRIEF ? text : `${text.slice(0, BRIEF)}\n${text.slice(-BRIEF)}`;

const inOrder = <T>(own: readonly Hit<T>[], local: readonly Hit<T>[]): readonly Hit<T>[] =>
  local.length === 0 ? own : [...own, ...local].sort((a, b) => a.start - b.start);

/** Its sentences are told apart when a number in it is asked about; most passages hold none. */
class Surveyed implements Scene {
  readonly passage: Passage;
  readonly brief: string;
  readonly devices: readonly Hit<Device>[];
  readonly materials: readonly Hit<string>[];
  readonly kinds: ReadonlySet<Device>;
  #sentences: readonly Span[] | undefined;

  constructor(passage: Passage, devices: readonly Hit<Device>[], materials: readonly Hit<string>[]) {
    this.passage = passage;
    this.brief = briefly(passage.text);
    this.devices = devices;
    this.materials = materials;
    this.kinds = devices.length === 0 ? NO_KINDS : new Set(devices.map((hit) => hit.means));
  }

  get sentences(): readonly Span[] {
    this.#sentences ??= sentences(this.passage.text);
    return this.#sentences;
  }
}
const NO_KINDS: ReadonlySet<Device> = new Set();

/** Looks at every passage once. */
export function survey(note: Note, context: Context): Surroundings {
  const localDevices = finder(new Map(Object.entries(context.devices ?? {})));
  const localMaterials = finder(new Map(Object.entries(context.materials ?? {})));
  const scenes = note.passages.map((passage) => {
    const { text } = passage;
    const [named, materials] = findOurs(text);
    const devices = inOrder(
      named.filter((hit) => isThing(text, hit)),
      localDevices(text),
    );
    const threads = materials.filter((hit) => !isBowel(text, hit));
    return new Surveyed(passage, devices, inOrder(threads, localMaterials(text)));
  });
  return { note, scenes, context };
}

/** "foal gut, under the skin": what is sewn, not what it is sewn with. */
const isBowel = (text: string, { start, word }: Hit<string>): boolean =>
  word.toLowerCase() === 'gut' &&
  GUT_OWNERS.has(
    /([A-Za-z'’]+)\s$/.exec(text.slice(Math.max(0, start - 16), start))?.[1]?.toLowerCase() ?? '',
  );

const ABBREVIATION =
  /(?:\b(?:fr|no|nos|nr|vs|approx|ca|e\.g|i\.e|[a-e]|p|pp|dr|fig|min|max|dia|diam|ext))\.$/i;

const SENTENCE_END = /(?<![.!?])[.!?]+["'”’)\]*_]*\s+|(?<!\n)\n\s*(?=\S)/g;

/** Sentence spans: cut at ". ", "! ", "? ", never after an abbreviation or inside a decimal. */
export function sentences(text: string): readonly Span[] {
  const spans: Span[] = [];
  let start = 0;
  for (const match of matchesOf(text, SENTENCE_END)) {
    const stop = match.index + match[0].length;
    const newline = match[0].startsWith('\n');
    if (newline || finds(ABBREVIATION, text.slice(Math.max(0, match.index - 8), match.index + 1))) continue;
    spans.push({ start, end: stop });
    start = stop;
  }
  if (start < text.length || spans.length === 0) spans.push({ start, end: text.length });
  return spans;
}

/** Index of the sentence that holds an offset (binary search). */
export function sentenceIndex(scene: Scene, at: number): number {
  let low = 0;
  let high = scene.sentences.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (scene.sentences[middle]!.end <= at) low = middle + 1;
    else high = middle;
  }
  return low;
}

const REACH = 240;

/** The sentence around a span, cut to a reach so that endless sentences stay cheap. */
export function sentenceAround(scene: Scene, span: Span): Span {
  const sentence = scene.sentences[sentenceIndex(scene, span.start)]!;
  return {
    start: Math.max(sentence.start, span.start - REACH),
    end: Math.min(Math.max(sentence.end, span.end), span.end + REACH),
  };
}

/** Hits inside a span (binary search to the first). */
export function within<T>(hits: readonly Hit<T>[], span: Span): readonly Hit<T>[] {
  let low = 0;
  let high = hits.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (hits[middle]!.start < span.start) low = middle + 1;
    else high = middle;
  }
  let end = low;
  while (end < hits.length && hits[end]!.start < span.end) end++;
  return hits.slice(low, end);
}

/** Headings over a passage, innermost first. */
export function headingsOf(around: Surroundings, passage: Passage): readonly Scene[] {
  return [...passage.path].reverse().map((index) => around.scenes[index]!);
}

/** Header cell above, first cell of the row, and the corner over the first column, for a table cell. */
export function labelsOf(around: Surroundings, passage: Passage): Labels {
  if (!passage.cell) return {};
  const { table, row, column } = passage.cell;
  const { rows } = around.note.tables[table]!;
  const at = (r: number, c: number): Scene | undefined => around.scenes[rows[r]![c]!];
  return {
    header: row > 0 ? at(0, column) : undefined,
    row: column > 0 ? at(row, 0) : undefined,
    corner: row > 0 && column > 0 ? at(0, 0) : undefined,
  };
}

export interface Labels {
  readonly header?: Scene | undefined;
  readonly row?: Scene | undefined;
  readonly corner?: Scene | undefined;
}
