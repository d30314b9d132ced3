/** What may follow: a unit after a number, a size the note already uses, a mark inside a comment. */

import type { Analysis } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';
import type { Passage, Span } from '../notes/model.ts';
import { existence, outerDiameter, parseValue, SYSTEM_NAMES } from '../sizes/index.ts';
import type { Lens, Size, System } from '../sizes/model.ts';
import { type Locale, say, tell } from '../texts/index.ts';
import { lensOf } from './lens.ts';
import { shortMillimetres } from './millimetres.ts';
import { touches } from './places.ts';
import { COMPLETION } from './texts/help.ts';

export interface Completion {
  readonly label: string;
  /** What the size is, and how thick. */
  readonly detail: string;
  readonly replace: Span;
  readonly text: string;
  readonly kind: 'unit' | 'size' | 'mark';
}

/** `others`: mentions of the other notes of the course, for the sizes it uses. */
export function completionsAt(
  analysis: Analysis,
  offset: number,
  others: readonly Mention[] = [],
  locale?: Locale,
): Completion[] {
  const start = lineStart(analysis.note.text, offset);
  const before = analysis.note.text.slice(start, offset);
  if (isInComment(before)) return marks(before, offset, locale);
  const number = /(?:^|[^\w.,/-])([0-9]{1,2}(?:[.,][0-9]{1,3})?)( ?)$/.exec(before);
  if (number !== null)
    return units(analysis, number[1]!, offset - number[1]!.length - number[2]!.length, offset, locale);
  return /(?:^|[\s(])$/.test(before) ? sizesUsed(analysis, offset, others, locale) : [];
}

/** A line is looked at over this many characters at most. */
const REACH = 2000;

function lineStart(text: string, offset: number): number {
  const from = Math.max(0, offset - REACH);
  const breaks = Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1));
  return offset === 0 ? 0 : Math.max(from, breaks + 1);
}

const isInComment = (before: string): boolean => before.lastIndexOf('<!--') > before.lastIndexOf('-->');

const MARKS = [
  { text: 'wrong on purpose: ', about: COMPLETION.wrong },
  { text: 'sizes table: ', about: COMPLETION.table },
  { text: 'sizes chart: ', about: COMPLETION.chart },
] as const;

function marks(before: string, offset: number, locale?: Locale): Completion[] {
  const typed = before.slice(before.lastIndexOf('<!--') + 4).trimStart();
  const replace = { start: offset - typed.length, end: offset };
  return MARKS.filter(({ text }) => text.startsWith(typed)).map(({ text, about }) => ({
    label: text.trim(),
    detail: say(locale, about),
    replace,
    text: before.endsWith('<!--') ? ` ${text}` : text,
    kind: 'mark',
  }));
}

/** How each system is written when the note has no habit of its own. */
const USUAL: readonly (readonly [System, string])[] = [
  ['needle-gauge', ' G'],
  ['french', ' Fr'],
  ['usp', '-0'],
  ['millimetre', ' mm'],
  ['wire-inch', ' in'],
];

function units(
  analysis: Analysis,
  number: string,
  start: number,
  end: number,
  locale?: Locale,
): Completion[] {
  const near = nearness(analysis, end);
  const habits = habitsOf(analysis.mentions);
  return USUAL.flatMap(([system, usual]) => {
    const size = readable(system, number);
    if (size === undefined) return [];
    const text = number + (system === 'usp' ? usual : (habits.get(system) ?? usual));
    const completion: Completion = {
      label: text,
      detail: describe(size, lensAt(analysis, end), locale),
      replace: { start, end },
      text,
      kind: 'unit',
    };
    return [{ completion, rank: near.indexOf(system) < 0 ? near.length : near.indexOf(system) }];
  })
    .sort((a, b) => a.rank - b.rank)
    .map(({ completion }) => completion);
}

function readable(system: System, number: string): Size | undefined {
  const whole = /^[0-9]+$/.test(number);
  if ((system === 'needle-gauge' || system === 'usp') && !whole) return undefined;
  if (system === 'wire-inch' && Number(number.replace(',', '.')) >= 1) return undefined;
  const size = parseValue(system, system === 'usp' ? `${number}-0` : number);
  return size === undefined || existence(size).exists === 'no' ? undefined : size;
}

function lensAt(analysis: Analysis, offset: number): Lens {
  const mention = analysis.mentions.find((each) => touches(each.source, offset));
  return mention === undefined ? {} : lensOf(mention);
}

function describe(size: Size, lens: Lens, locale?: Locale): string {
  const outer = outerDiameter(size, lens);
  const system = SYSTEM_NAMES[size.system];
  if (outer === undefined || size.system === 'millimetre') return tell(system, locale);
  return say(locale, COMPLETION.size, { system, measure: shortMillimetres(outer) });
}

/** Systems by how near to the offset the note last used them. */
function nearness(analysis: Analysis, offset: number): System[] {
  const passage = analysis.note.passages.find((each) => holds(each, offset));
  const distance = (mention: Mention): number =>
    (mention.passage === passage?.index ? 0 : 1e9) + Math.abs(mention.source.start - offset);
  const sorted = analysis.mentions
    .filter((mention) => mention.kind === 'size' && !touches(mention.source, offset))
    .sort((a, b) => distance(a) - distance(b));
  return [...new Set(sorted.flatMap((mention) => mention.sizes[0]?.system ?? []))];
}

const holds = (passage: Passage, offset: number): boolean => {
  const first = passage.map.sources[0] ?? 0;
  const last = (passage.map.sources.at(-1) ?? 0) + (passage.map.sourceLengths.at(-1) ?? 0);
  return first <= offset && offset <= last;
};

/** What the note writes behind the number of each system most often: "G", " G", "-gauge". */
function habitsOf(mentions: readonly Mention[]): Map<System, string> {
  const counts = new Map<System, Map<string, number>>();
  for (const mention of mentions) {
    const system = mention.sizes[0]?.system;
    const unit = /^[0-9.,]+([ -]?[A-Za-z]+)$/.exec(mention.text)?.[1];
    if (system === undefined || unit === undefined || mention.kind !== 'size') continue;
    const seen = counts.get(system) ?? new Map<string, number>();
    counts.set(system, seen.set(unit, (seen.get(unit) ?? 0) + 1));
  }
  return new Map([...counts].map(([system, seen]) => [system, mostUsed(seen)]));
}

const mostUsed = (seen: ReadonlyMap<string, number>): string =>
  [...seen].reduce((most, each) => (each[1] > most[1] ? each : most))[0];

/** A size in the note counts more than many in other notes. */
const OWN = 1000;

/** Sizes that the note, then the course, names most often, as written there. */
function sizesUsed(
  analysis: Analysis,
  offset: number,
  others: readonly Mention[],
  locale?: Locale,
): Completion[] {
  const counts = new Map<string, { count: number; size: Size; lens: Lens }>();
  const all = [
    ...analysis.mentions.map((mention) => ({ mention, weight: OWN })),
    ...others.map((mention) => ({ mention, weight: 1 })),
  ];
  for (const { mention, weight } of all) {
    const size = mention.sizes[0];
    if (mention.kind !== 'size' || size === undefined || mention.spoken === true || mention.length === true)
      continue;
    const seen = counts.get(mention.text);
    counts.set(mention.text, {
      count: (seen?.count ?? 0) + weight,
      size,
      lens: seen?.lens ?? lensOf(mention),
    });
  }
  const replace = { start: offset, end: offset };
  return [...counts]
    .sort((a, b) => b[1].count - a[1].count)
    .slice(0, 20)
    .map(([text, { size, lens }]) => ({
      label: text,
      detail: describe(size, lens, locale),
      replace,
      text,
      kind: 'size',
    }));
}
