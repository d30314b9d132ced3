/** Columns that run in an order: "thinnest first" in a header or right above. */

import type { Mention } from '../../mentions/model.ts';
import { orderCue } from '../constructions/order.ts';
import type { OrderClaim } from '../model.ts';
import { sorts } from '../stance/to-sort.ts';
import { readItems } from '../text/items.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Grid, operandOf, type Row, sole } from './grid.ts';

/** An order that sizes of cells are said to run in. */
function ordered(
  mentions: readonly (Mention | undefined)[],
  { axis, runs }: Pick<OrderClaim, 'axis' | 'runs'>,
): OrderClaim[] {
  const known = mentions.filter((mention) => mention !== undefined);
  if (known.length < 3 || known.length < mentions.length) return [];
  const items = known.map((mention) => operandOf(mention));
  const starts = items.map((item) => item.span.start);
  const span = { start: Math.min(...starts), end: Math.max(...items.map((item) => item.span.end)) };
  return [{ kind: 'order', construction: 'table-column', span, focus: span, items, axis, runs }];
}

/** "0, 1, 2, each one thicker than the last." above a table is said of its own sizes, unless a colon leads on. */
const ofItsOwn = (sentence: string): boolean => /\d/.test(sentence) && !/:\W*$/.test(sentence);

/** "thinnest first" in a header or right above: the column must run that way. */
export function columnOrders(grid: Grid): OrderClaim[] {
  const sentence = grid.around.split(/[.!?]\s/).at(-1) ?? '';
  const above = ofItsOwn(sentence) ? [] : readItems(sentence, []);
  const cue = sorts(above) ? undefined : orderCue(above);
  const sized = cue ? firstSized(grid) : -1;
  const beside = besideSizes(grid, firstSized(grid));
  return grid.header.flatMap((header, column) => {
    const own =
      orderCue(readItems(column === beside?.column ? beside.header : header, [])) ??
      arrow(header) ??
      (column === sized ? cue : undefined);
    if (!own) return [];
    return ordered(
      grid.rows.map((row) => sole(row[column])),
      own,
    );
  });
}

/** "| Thin to thick | |" over numbered rows: the words stand over the numbers, the sizes under no word. */
function besideSizes({ header }: Grid, sized: number): { column: number; header: string } | undefined {
  const filled = header.filter((text) => text.trim() !== '');
  return sized > 0 && filled.length === 1 && header[sized]!.trim() === ''
    ? { column: sized, header: filled[0]! }
    : undefined;
}

/** "| Thin | | | Thick |" or "| Narrow → wide | | |": the sizes of each row run that way. */
export function rowOrders(grid: Grid): OrderClaim[] {
  const words = grid.heads.map((read) => (read ? measuredWords(read.items) : []));
  const [first, last] = [words[0]?.[0], words.at(-1)?.[0]];
  const filled = grid.header.filter((text) => text.trim() !== '').length;
  const ends =
    (filled === 2 || middling(grid)) &&
    first &&
    bare(grid.heads[0]) &&
    bare(grid.heads.at(-1)) &&
    last &&
    first.sign !== last.sign &&
    first.degree === last.degree
      ? { axis: first.axis, runs: first.sign === 1 ? ('down' as const) : ('up' as const) }
      : undefined;
  const cue = ends ?? (filled === 1 && grid.heads[0] ? orderCue(grid.heads[0].items) : undefined);
  return cue && decidable(cue.axis) ? grid.rows.flatMap((row) => ordered(row.map(sole), cue)) : [];
}

/** "| Thickest | Middle | Thinnest |": every column between the ends says that it lies between. */
const middling = ({ header }: Grid): boolean =>
  header.length > 2 &&
  header
    .slice(1, -1)
    .every((text) =>
      /^\W*(?:middle|mid|medium|between|in[- ]between|next|second|then|and then)?\W*$/.test(text),
    );

/** The word of an end and nothing it is said of. */
const bare = (read: Row[number]): boolean =>
  read?.items.every(
    (item) => item.kind === 'punctuation' || item.magnitude || /^(?:the|end|side|most)$/.test(item.word),
  ) === true;

const RANK =
  /^\W*(?:\w+ )?(?:rank|place|position|order|no\.?|#)?\s*\(?\s*1\s*(?:=|is|:)|[,;(–—-]\s*1\s*(?:=|is|:|for)\s*(?:the )?\w+est\b|\b(?:rank|position|place)\b/;

/** "Needle (widest = 1)" beside the ranks. */
const RANK_ONE = /(?:\b\w+est (?:is|=|:) ?(?:1|one)|\b1 (?:=|is|:) ?\w+est)\b/i;

/** "| Rank (1 = widest) | Cannula |", "| 1 (thickest) | 2-0 |": the sizes run as the ranks do. */
export function rankings(grid: Grid): OrderClaim[] {
  const column = grid.header.findIndex((text) => RANK.test(text));
  const sized = firstSized(grid);
  if (column < 0 || sized < 0 || sized === column) return [];
  const ranked = grid.rows
    .map((row) => ({
      row,
      rank: Number(/^\W*(\d{1,2})\b/.exec(row[column]?.passage.text ?? '')?.[1] ?? 'none'),
    }))
    .sort((a, b) => a.rank - b.rank);
  const said = grid.heads.findIndex((head, c) => c !== column && RANK_ONE.test(head?.passage.text ?? ''));
  const word =
    extremeOf(grid.heads[column]) ?? extremeOf(ranked[0]?.row[column]) ?? extremeOf(grid.heads[said]);
  const ranks = new Set(ranked.map(({ rank }) => rank));
  if (!word || ranks.size < ranked.length || [...ranks].some(Number.isNaN)) return [];
  return ordered(
    ranked.map(({ row }) => sole(row[sized])),
    { axis: word.axis, runs: word.sign === 1 ? 'down' : 'up' },
  );
}

/** The one superlative of a cell. */
function extremeOf(read: Row[number]): Measured | undefined {
  const words = measuredWords(read?.items ?? []).filter((m) => m.degree === 'superlative');
  return words.length === 1 && decidable(words[0]!.axis) ? words[0] : undefined;
}

/** "↓ wider": down the column. */
function arrow(header: string): Pick<OrderClaim, 'axis' | 'runs'> | undefined {
  const way = /^\W*[↓⬇▼]\s|\s[↓⬇▼]\W*$/.test(header) ? 1 : /^\W*[↑⬆▲]\s|\s[↑⬆▲]\W*$/.test(header) ? -1 : 0;
  const word = measuredWords(readItems(header, [])).find(
    (m) => m.degree === 'comparative' && decidable(m.axis),
  );
  return way !== 0 && word ? { axis: word.axis, runs: word.sign * way === 1 ? 'up' : 'down' } : undefined;
}

const firstSized = (grid: Grid) =>
  grid.header.findIndex(
    (_, column) => grid.rows.length > 0 && grid.rows.every((row) => sole(row[column]) !== undefined),
  );
