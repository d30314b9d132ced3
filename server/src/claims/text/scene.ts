/** What a construction sees: one sentence, the sentences before it, and what the place in the note settles. */
import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { Note, Passage, Span } from '../../notes/model.ts';
import type { Device, Size, System } from '../../sizes/model.ts';
import type { Operand } from '../model.ts';
import type { Item } from './items.ts';
import { remembered } from './remember.ts';
import type { Sentence } from './sentences.ts';

export interface Scene {
  readonly note: Note;
  readonly passage: Passage;
  readonly sentence: Sentence;
  readonly items: readonly Item[];
  /** Sentences of the same passage before this one, nearest last. */
  readonly before: readonly Sentence[];
  readonly after: readonly Sentence[];
  /** Sentences that come before this passage (lead-in, the item before, the paragraph before), nearest last. */
  readonly context: readonly Sentence[];
  /** Headings above, outermost first, in lower case. */
  readonly headings: readonly string[];
  /** The distinct sizes that the whole note names in a system for such a device; for no device, those of every device. */
  readonly named: (system: System, device?: Device) => readonly Size[];
  /** The one system spoken of around here, if there is one. */
  readonly system?: System | undefined;
  /** Opening sentence of the next passage: it may reject this one. */
  readonly next?: Sentence | undefined;
  /** Last sentence of the paragraph that leads into this list. */
  readonly lead?: Sentence | undefined;
  /** Quotation spans of the passage, in its text offsets. */
  readonly quotes: readonly (readonly [number, number])[];
  /** An unkeyed choice of a question. */
  readonly option?: boolean | undefined;
  /** Stands where statements are marked true or false. */
  readonly truthItem?: boolean | undefined;
  /** The key beside such a statement, when it stands apart from its text. */
  readonly key?: 'true' | 'false' | undefined;
  /** Where that key stands in the source, when in another passage. */
  readonly keyAt?: Span | undefined;
  /** In an erratum: the words struck, or the words that hold instead. */
  readonly erratum?: 'struck' | 'holds' | undefined;
  /** Stands in a column of printed mistakes. */
  readonly reported?: boolean | undefined;
}

/** The first scene of each passage that has one. */
export interface FirstScenes {
  get(passage: Passage): Scene | undefined;
}

/** A group of neighbouring sizes: "14, 16 or 18 Fr" is one. */
export interface Group {
  readonly from: number;
  readonly to: number;
  readonly mentions: readonly Mention[];
  readonly sizes: readonly Size[];
}

const LINKS = new Set([',', 'or', 'and', '/', '&', 'to', '-', '–']);

/** Groups of sizes in reading order. A change of system opens a new group. */
export const groups = remembered((items: readonly Item[]): readonly Group[] => {
  const found: Group[] = [];
  for (let i = 0; i < items.length; i++) {
    const first = items[i]!.mention;
    if (!first || first.kind === 'ambiguous') continue;
    const mentions = [first];
    let to = i;
    for (let next = nextInGroup(items, to); next > 0; next = nextInGroup(items, to)) {
      const mention = items[next]!.mention!;
      if (mention.kind === 'ambiguous' || mention.sizes[0]?.system !== first.sizes[0]?.system) break;
      mentions.push(mention);
      to = next;
    }
    const sizes = mentions.length === 1 ? first.sizes : mentions.flatMap((mention) => mention.sizes);
    found.push({ from: i, to, mentions, sizes });
    i = to;
  }
  return found;
});

function nextInGroup(items: readonly Item[], at: number): number {
  for (let i = at + 1; i <= at + 3 && i < items.length; i++) {
    const item = items[i]!;
    if (item.kind === 'size') return i > at + 1 ? i : -1;
    if (!LINKS.has(item.word) && !(item.word === 'a' || item.word === 'an' || item.word === 'the')) return -1;
    if (item.word === 'a' || item.word === 'an' || item.word === 'the') return -1;
  }
  return -1;
}

export function operand(scene: Pick<Scene, 'passage'>, group: Group): Operand {
  const first = group.mentions[0]!;
  const device = group.mentions.find((mention) => mention.device)?.device;
  const material = group.mentions.find((mention) => mention.material)?.material;
  const span = { start: first.source.start, end: group.mentions.at(-1)!.source.end };
  return {
    sizes: group.sizes,
    mentions: group.mentions,
    span: span.end > span.start ? span : sourceSpan(scene.passage, first.span),
    ...(device ? { device: device as Device } : {}),
    ...(material ? { material } : {}),
  };
}

export const spanOf = (scene: Scene, from: Item, to: Item = from): Span =>
  sourceSpan(scene.passage, { start: from.start, end: to.end });

export const sentenceSpan = (scene: Scene): Span =>
  sourceSpan(scene.passage, { start: scene.sentence.start, end: scene.sentence.end });

/** Distinct sizes of one system among groups, by value. */
export function distinct(found: readonly Group[]): Group[] {
  if (found.length < 2) return [...found];
  const seen = new Set<string>();
  return found.filter((group) => {
    const key = group.sizes.map((size) => `${size.system}:${size.value}`).join('|');
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

const SEVERAL = /^(?:two|three|four|several|multiple|2|3|4|twin|double|paired)$/;

/** "two 20 G cannulas": what is said of several together is not said of the size. */
export const together = (items: readonly Item[], group: Group): boolean =>
  SEVERAL.test(items[group.from - 1]?.word ?? '') ||
  (group.mentions.length === 1 &&
    items.slice(Math.max(0, group.from - 3), group.from).some((item) => item.word === 'both') &&
    items[group.to + 1]?.word !== 'and');

/** Scale and value of each size, to tell sizes apart. */
export const sizeKeys = (sizes: readonly Size[]): string[] =>
  sizes.map(({ system, value }) => `${system} ${value}`);
/** The same of all sizes that a stretch names. */
export const keysIn = (items: readonly Item[]): string[] =>
  items.flatMap(({ mention }) => sizeKeys(mention?.sizes ?? []));

export const sameSystem = (a: Group, b: Group): boolean => a.sizes[0]?.system === b.sizes[0]?.system;
export const sameSizes = (a: Pick<Group, 'sizes'>, b: Pick<Group, 'sizes'>): boolean =>
  a.sizes.length === b.sizes.length &&
  a.sizes.every((size, i) => size.system === b.sizes[i]!.system && size.value === b.sizes[i]!.value);

/** One size each, of one system, and not the same. */
export const twoSizes = (a: Group, b: Group): boolean =>
  sameSystem(a, b) && !sameSizes(a, b) && a.sizes.length + b.sizes.length <= 2;

/** Words of a sentence as one lower-case string, sizes as "#". For frame words only, never for reading claims. */
export const wordsOf = ({ items }: Pick<Sentence, 'items'>): string =>
  items.map((item) => (item.kind === 'size' ? '#' : item.word)).join(' ');

/** Which item holds the first mention of these; −1 where none does. */
export const placeOf = (
  items: readonly Item[],
  { mentions }: { readonly mentions: readonly Mention[] },
): number => items.findIndex(({ mention }) => mention !== undefined && mention === mentions[0]);
