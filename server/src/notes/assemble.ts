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
  return by === 0 ? map : { ...map, sources: map.sources.map((source) => source + by) };
}

/** Headings of the note above a passage whose headings within its stretch are `own`. */
function pathAbove(running: Running, stretch: Stretch, passage: Passage, by: number): number[] {
  const top = passage.path[0];
  const limit = Math.min(passage.level ?? 7, top === undefined ? 7 : (stretch.passages[top]?.level ?? 7));
  const path: number[] = [];
  for (const heading of running.headings) if (heading.level < limit) path.push(heading.passage);
  for (const own of passage.path) path.push(own + by);
  return path;
}

function shiftList(place: ListPlace, shift: Shift, before: Previous | undefined): ListPlace {
  const { leadIn, parent, ...rest } = place;
  const inherited = leadIn === INHERITED.passage;
  const lead = inherited ? (before?.paragraph ? before.passage : undefined) : leadIn;
  return {
    ...rest,
    list: place.list + shift.lists,
    ...(lead === undefined ? {} : { leadIn: inherited ? lead : lead + shift.passages }),
    ...(parent === undefined ? {} : { parent: parent + shift.passages }),
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
  const { list, cell } = passage;
  return {
    ...passage,
    index: passage.index + shift.passages,
    map: shiftMap(passage.map, shift.offset),
    path: pathAbove(running, stretch, passage, shift.passages),
    ...(list ? { list: shiftList(list, shift, running.previous) } : {}),
    ...(cell ? { cell: { ...cell, table: cell.table + shift.tables } } : {}),
  };
}

/** Headings in force after a stretch. */
function headingsAfter(running: Running, stretch: Stretch, by: number): readonly Heading[] {
  const top = stretch.headings[0];
  if (!top) return running.headings;
  const above = running.headings.filter((heading) => heading.level < top.level);
  const own = stretch.headings.map(({ level, passage }) => ({ level, passage: passage + by }));
  return [...above, ...own];
}

function previousAfter(running: Running, stretch: Stretch, by: number): Previous | undefined {
  if (stretch.previous === INHERITED) return running.previous;
  return stretch.previous && { ...stretch.previous, passage: stretch.previous.passage + by };
}

function append(running: Running, { start, stretch }: PlacedStretch): void {
  const { passages, tables, comments, lists } = running;
  const shift = { offset: start, passages: passages.length, tables: tables.length, lists };
  const placed = stretch.passages.map((passage) => shiftPassage(passage, shift, running, stretch));
  for (const passage of placed) passages.push(passage);
  for (const table of stretch.tables) tables.push(shiftTable(table, shift, running.previous));
  for (const { span, text } of stretch.comments) comments.push({ span: shiftSpan(span, start), text });
  running.headings = headingsAfter(running, stretch, shift.passages);
  running.previous = previousAfter(running, stretch, shift.passages);
  running.lists += stretch.lists;
}

/** Joins stretches that follow each other in `text`. */
export function joinStretches(text: string, placed: readonly PlacedStretch[]): Note {
  const running: Running = { passages: [], tables: [], comments: [], lists: 0, headings: [] };
  for (const stretch of placed) append(running, stretch);
  const { passages, tables, comments } = running;
  const front = placed.find(({ stretch }) => stretch.frontMatter);
  const frontMatter = front?.stretch.frontMatter && shiftSpan(front.stretch.frontMatter, front.start);
  return { text, passages, tables, comments, ...(frontMatter ? { frontMatter } : {}) };
}
