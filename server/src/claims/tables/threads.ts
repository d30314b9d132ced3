/** Which of the two tables of threads a chart follows, gut's or that of all others, where its rows settle it. */
import { uspRow } from '../../sizes/index.ts';
import { remembered } from '../text/remember.ts';
import { type Grid, type Row, sole, soleMaterial, systemOf } from './grid.ts';

/** Stands for any thread but gut. */
export const NOT_GUT = 'synthetic';
const GUT = /\b(?:gut|catgut|collagen|chromic)\b/;
/** Other threads named with gut: "Gut, nylon and the rest" speaks of no one of them. */
const OTHERS = /\b(?:nylon|silk|steel|poly\w+|synthetics?|non-?absorbables?|the rest)\b/;
const SYNTHETIC = /\bsynthetics?\b/;

const ofGut = (text: string): boolean => GUT.test(text) && !OTHERS.test(text);

/** The header says it: "Synthetic, USP". */
const headedSynthetic = ({ header }: Grid): boolean =>
  header.some((text) => SYNTHETIC.test(text)) && !header.some((text) => GUT.test(text));

/** "Metric" beside "Gut metric": the first is of the other threads. */
export const besideGut = (grid: Grid, column: number, own: number): boolean =>
  hasGutColumn(grid) && [column, own].every((each) => !GUT.test(grid.header[each] ?? ''));
/** Asked once a table: it may have thousands of rows, and of columns. */
const hasGutColumn = remembered(({ header }: Grid): boolean => header.some(ofGut));

/** Rows that must speak for one table before another row is held to it. */
const ENOUGH = 2;

/** The material for rows that name none: several rows hold for other threads and not for gut, and none the other way. */
export const threadOf = remembered((grid: Grid): string | undefined => {
  const rows = grid.rows.map(follows);
  const others = rows.filter((table) => table === 'others').length;
  if (headedSynthetic(grid)) return NOT_GUT;
  return others >= ENOUGH &&
    !GUT.test(`${grid.header.join(' ')} ${grid.around}`) &&
    !grid.rows.some((row) => /\bgut$/.test(soleMaterial(row) ?? '')) &&
    rows.filter((table) => table === 'gut').length < others
    ? NOT_GUT
    : undefined;
});

/** Rows that must speak for other threads before gut, named in the paragraph before, is taken for another matter. */
const MOST = 3;

/** A paragraph on gut stands before the table, yet nearly every row holds for other threads and nothing in it says gut. */
export const strayGut = remembered((grid: Grid): boolean => {
  if (headedSynthetic(grid)) return true;
  const rows = grid.rows.map(follows);
  const others = rows.filter((table) => table === 'others').length;
  const gut = rows.filter((table) => table === 'gut').length;
  return !ofGut(`${grid.header.join(' ')} ${grid.above}`) && others >= MOST && others > gut * MOST;
});

/** The table by which the USP size and the metric number of a row are one thing. */
function follows(row: Row): 'gut' | 'others' | undefined {
  const mentions = row.flatMap((read) => sole(read) ?? []);
  const usp = mentions.find((mention) => systemOf(mention) === 'usp')?.sizes[0];
  const metric = mentions.find((mention) => systemOf(mention) === 'ep-metric')?.sizes[0];
  if (!usp || !metric) return undefined;
  const holds = (gut: boolean) => uspRow(usp.value, gut)?.metric === metric.value;
  if (holds(true) === holds(false)) return undefined;
  return holds(true) ? 'gut' : 'others';
}
