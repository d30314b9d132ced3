/**
 * Short facts about one size or material: "18 Fr catheter · 6 mm · wider than 16 Fr", or the items of a list below it.
 * Only facts that say nothing else are read: a colour, a measure, a property, a comparison.
 */

import type { Claim, Stance } from './model.ts';
import { readingsIn } from './quiz/desk.ts';
import { stanceOf } from './stance/index.ts';
import type { Item } from './text/items.ts';
import { materialsIn } from './text/materials.ts';
import { type FirstScenes, groups, type Scene } from './text/scene.ts';
import type { Read } from './text/scenes.ts';
import { PROPERTY_WORDS } from './words/properties.ts';

export interface FactReading {
  readonly claim: Claim;
  readonly stance: Stance;
}

const LONGEST = 60;
const MANY = 12;

export function readFacts(reads: readonly Read[], first: FirstScenes): FactReading[] {
  return reads.flatMap((read) => {
    const parent = reads[read.passage.list?.parent ?? headingOf(read)];
    if ((!parent && !mayCut(read)) || !plain(read)) return [];
    const parts = cut(read);
    const own = parts.length > 1 && isSubject(parts[0]!) ? parts.slice(1) : [];
    const about = own.length > 0 ? parts[0]! : parent && isSubject(parent.items) ? parent.items : undefined;
    const facts = own.length > 0 ? own : parts;
    if (!about || facts.length > MANY) return [];
    const scene = first.get(read.passage);
    if (!scene || scene.option || scene.truthItem) return [];
    if (own.length > 0 && own.some((fact) => anotherSubject(parts[0]!, fact))) return [];
    return facts.flatMap((fact) => readFact(scene, about, fact));
  });
}

/** Prose of its own: no heading, no cell, nothing to be ticked. */
const plain = ({ passage, size }: Read): boolean =>
  passage.kind === 'paragraph' && size <= LONGEST && passage.list?.checked === undefined;

const OPENS = new Set(['—', '–', '-', ':']);
const EDGES = new Set([';', '·', '•', '|']);

/** Without one of these signs a passage has one part, which is said of what stands above it or of nothing. */
const mayCut = ({ passage: { text, marks } }: Read): boolean =>
  /[;·•|]/.test(text) || marks.some(({ kind, start }) => kind === 'strong' && start === 0);

/** The heading right above the list. */
const headingOf = ({ passage }: Read): number => {
  const heading = passage.path.at(-1) ?? -1;
  return passage.list && heading === passage.index - passage.list.index - 1 ? heading : -1;
};

/** Parts between semicolons and dots; after a subject in strong type also between commas. */
function cut({ items, passage }: Read): Item[][] {
  const strong = passage.marks.find((mark) => mark.kind === 'strong' && mark.start === 0);
  const parts: Item[][] = [[]];
  for (const item of items) {
    const named = strong && item.start >= strong.end - 1;
    const edge =
      EDGES.has(item.word) || (named && (parts.length === 1 ? OPENS.has(item.word) : item.word === ','));
    if (edge) parts.push([]);
    else parts.at(-1)!.push(item);
  }
  return parts.filter((part) => part.length > 0);
}

/** "18 G cannula", "3-0 nylon", "Polydioxanone": one size or material and a noun or two. */
export function isSubject(items: readonly Item[]): boolean {
  const sizes = items.filter((item) => item.kind === 'size');
  const words = items.filter((item) => item.kind === 'word').length;
  if (words > 4 || sizes.length > 1) return false;
  const named = materialsIn(items);
  return (
    sizes.length + named.length >= 1 &&
    named.length <= 1 &&
    items.every((item) => item.kind !== 'punctuation' || item.word === ':' || item.word === '.') &&
    !items.some((item) => item.colour || item.magnitude || item.word === 'for' || item.word === 'not')
  );
}

/** "14 G | orange", and on the next line "18 G | green": a row for each, not facts about the first. */
const anotherSubject = (subject: readonly Item[], fact: readonly Item[]): boolean => {
  const named = groups(subject)[0]?.sizes[0]?.system;
  return (
    named !== undefined &&
    groups(fact).some((g) => g.sizes[0]!.system === named) &&
    !fact.some((item) => item.word === 'than')
  );
};

/** What one short fact says of the thing named. */
export function readFact(scene: Scene, about: readonly Item[], fact: readonly Item[]): FactReading[] {
  const link = linkOf(fact);
  if (!link) return [];
  const subject = about.filter((item) => item.kind !== 'punctuation');
  const joint: Item = {
    ...subject.at(-1)!,
    word: link,
    kind: link === ':' ? 'punctuation' : 'word',
    start: 0,
    end: 0,
  };
  const { mention: _, ...mark } = joint;
  const bare = { start: mark.start, end: mark.end, word: mark.word, kind: mark.kind, capital: false };
  const { scene: whole, readings } = readingsIn(scene, [...subject, bare, ...fact]);
  const reading = readings.find(({ claim }) => KINDS.has(claim.kind));
  return reading ? [{ claim: reading.claim, stance: stanceOf(whole, reading) }] : [];
}

const KINDS: ReadonlySet<Claim['kind']> = new Set(['comparison', 'equivalence', 'colour', 'property']);

/** How the fact joins its subject; undefined when it says anything else. */
function linkOf(items: readonly Item[]): ':' | 'is' | undefined {
  const words = items.filter((item) => item.kind === 'word' || item.kind === 'size');
  const sizes = groups(items);
  if (words.length === 0 || words.length > 9 || items.some((item) => item.word === '?')) return undefined;
  if (words.some((item) => item.colour))
    return all(words, (item) => item.colour !== undefined || HUB.has(item.word)) ? ':' : undefined;
  if (sizes.length === 0)
    return all(words, (item) => PROPERTY_WORDS.has(item.word) || THREAD.has(item.word)) ? 'is' : undefined;
  if (sizes.length > 1 || sizes[0]!.mentions.length > 1) return undefined;
  const than = words.findIndex((item) => item.word === 'than');
  if (than >= 0) {
    const at = words.findIndex((item) => item.magnitude?.degree === 'comparative');
    const compared =
      at >= 0 && at <= MOST_BEFORE && words.slice(0, at).every((item) => DEGREE.has(item.word));
    return compared && words.length - than <= 4 ? 'is' : undefined;
  }
  return all(words, (item) => item.kind === 'size' || MEASURE.has(item.word)) ? ':' : undefined;
}

/** "one step wider than", "quite a bit thinner than". */
const MOST_BEFORE = 3;
const DEGREE = new Set(
  'a an one two half step size sizes steps bit little slightly much far just quite also rather even is it clearly again noticeably considerably still'.split(
    ' ',
  ),
);

const all = (items: readonly Item[], test: (item: Item) => boolean): boolean => items.every(test);
const HUB = new Set(
  'hub hubs colour color coded code cap valve winged wings wing funnel port the a is cannula needle catheter dark light pale bright medium deep'.split(
    ' ',
  ),
);
const THREAD = new Set('and suture thread material a is an'.split(' '));
const MEASURE = new Set(
  'outside outer diameter od o.d across wide width thick thickness about roughly is measures the in mm inner inside bore lumen id metric'.split(
    ' ',
  ),
);
