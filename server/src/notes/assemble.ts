/** Joins stretches into one note: numbers, offsets, headings above and lead-ins are made those of the note. */
import { type Heading, INHERITED, type Previous } from './draft.ts';
import type { Comment, ListPlace, Note, Passage, SourceMap, Span, Table } from './model.ts';
import type { Stretch } from './stretch.ts';

/** A stretch and where it starts in the note. */
export interface PlacedStretch {
  readonly start: number;
  readonly stretch: Stretch;
}

/** What the stretches before pass on to the next one. */
interface Running {
  readonly passages: Passage[];
  readonly tables: Table[];
  readonly comments: Comment[];
  lists: number;
  headings: readonly Heading[];
  /** Passages of those headings. */
  path: readonly number[];
  previous?: Previous;
}

/** How the numbers of one stretch change. */
interface Shift {
  readonly offset: number;
  readonly passages: number;
  readonly tables: number;
  readonly lists: number;
}

const shiftSpan = (span: Span, by: number): Span => ({ start: span.start + by, end: span.end + by });

function shiftMap(map: SourceMap, by: number): SourceMap {
  const { texts, lengths, sources, sourceLengths } = map;
  return by === 0 ? map : { texts, lengths, sources: sources.map((source) => source + by), sourceLengths };
}

/** Headings of the note above a passage whose headings within its stretch are `own`. */
function pathAbove(running: Running, stretch: Stretch, passage: Passage, by: number): readonly number[] {
  const top = passage.path[0];
  const limit = Math.min(passage.level ?? 7, top === undefined ? 7 : stretch.passages[top]!.level!);
  if (top === undefined && limit === 7) return running.path;
  const path: number[] = [];
  for (const heading of running.headings) if (heading.level < limit) path.push(heading.passage);
  for (const own of passage.path) path.push(own + by);
  return path;
}

// Objects below are written out, not spread: a note has thousands, and each keystroke makes them anew.

function shiftList(place: ListPlace, shift: Shift, before: Previous | undefined): ListPlace {
  const { list, index, ordered, depth, checked, leadIn, parent } = place;
  const own = leadIn === undefined ? undefined : leadIn + shift.passages;
  const inherited = before?.paragraph ? before.passage : undefined;
  return {
    list: list + shift.lists,
    index,
    ordered,
    depth,
    checked,
    leadIn: leadIn === INHERITED.passage ? inherited : own,
    parent: parent === undefined ? undefined : parent + shift.passages,
  };
}

function shiftTable(table: Table, shift: Shift, before: Previous | undefined): Table {
  const { leadIn, ...rest } = table;
  const inherited = leadIn === INHERITED.passage;
  const lead = inherited ? before?.passage : leadIn;
  return {
    ...rest,
    index: table.index + shift.tables,
    rows: table.rows.map((row) => row.map((cell) => (cell < 0 ? cell : cell + shift.passages))),
    span: shiftSpan(table.span, shift.offset),
    ...(lead === undefined ? {} : { leadIn: inherited ? lead : lead + shift.passages }),
  };
}

function shiftPassage(passage: Passage, shift: Shift, running: Running, stretch: Stretch): Passage {
  const { index, kind, text, map, level, quote, list, cell, marks } = passage;
  return {
    index: index + shift.passages,
    kind,
    text,
    map: shiftMap(map, shift.offset),
    path: pathAbove(running, stretch, passage, shift.passages),
    level,
    quote,
    list: list && shiftList(list, shift, running.previous),
    cell: cell && { table: cell.table + shift.tables, row: cell.row, column: cell.column },
    marks,
  };
}

type Headings = readonly [Heading, ...Heading[]];
const isSet = (headings: readonly Heading[]): headings is Headings => headings.length > 0;

/** Headings in force after a stretch that has some. */
function headingsAfter(running: Running, headings: Headings, by: number): readonly Heading[] {
  const [top] = headings;
  const above = running.headings.filter((heading) => heading.level < top.level);
  const own = headings.map(({ level, passage }) => ({ level, passage: passage + by }));
  return [...above, ...own];
}

function previousAfter(running: Running, stretch: Stretch, by: number): Previous | undefined {
  if (stretch.previous === INHERITED) return running.previous;
  return stretch.previous && { ...stretch.previous, passage: stretch.previous.passage + by };
}

/** A stretch as it stood in the note last read, to be used again when it stands there still. */
interface Placement {
  readonly key: string;
  readonly passages: readonly Passage[];
  readonly tables: readonly Table[];
}

const placements = new WeakMap<Stretch, Placement>();

/** Everything that placing a stretch depends on. */
function placeKey({ offset, passages, tables, lists }: Shift, { headings, previous }: Running): string {
  const above = headings.map(({ level, passage }) => `${level}:${passage}`).join();
  return `${offset} ${passages} ${tables} ${lists} ${above} ${previous?.passage} ${previous?.paragraph}`;
}

function place(stretch: Stretch, shift: Shift, running: Running): Placement {
  const key = placeKey(shift, running);
  const kept = placements.get(stretch);
  if (kept?.key === key) return kept;
  const placement = {
    key,
    passages: stretch.passages.map((passage) => shiftPassage(passage, shift, running, stretch)),
    tables: stretch.tables.map((table) => shiftTable(table, shift, running.previous)),
  };
  placements.set(stretch, placement);
  return placement;
}

function append(running: Running, { start, stretch }: PlacedStretch): void {
  const { passages, tables, comments, lists } = running;
  const shift = { offset: start, passages: passages.length, tables: tables.length, lists };
  const placement = place(stretch, shift, running);
  for (const passage of placement.passages) passages.push(passage);
  for (const table of placement.tables) tables.push(table);
  for (const { span, text } of stretch.comments) comments.push({ span: shiftSpan(span, start), text });
  running.previous = previousAfter(running, stretch, shift.passages);
  running.lists += stretch.lists;
  if (!isSet(stretch.headings)) return;
  running.headings = headingsAfter(running, stretch.headings, shift.passages);
  running.path = running.headings.map((heading) => heading.passage);
}

/** Joins stretches that follow each other in `text`. */
export function joinStretches(text: string, placed: readonly PlacedStretch[]): Note {
  const running: Running = { passages: [], tables: [], comments: [], lists: 0, headings: [], path: [] };
  for (const stretch of placed) append(running, stretch);
  const { passages, tables, comments } = running;
  const front = placed.find(({ stretch }) => stretch.frontMatter);
  const frontMatter = front?.stretch.frontMatter && shiftSpan(front.stretch.frontMatter, front.start);
  return { text, passages, tables, comments, ...(frontMatter ? { frontMatter } : {}) };
}
