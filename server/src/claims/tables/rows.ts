/** Cells that compare their row with another: "finer than for the cheek", "wider than the chest drain", "narrower than the row above". */

import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { ComparisonClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { decidable, measuredWords } from '../text/magnitudes.ts';
import { remembered } from '../text/remember.ts';
import type { Read } from '../text/scenes.ts';
import { STRUCK_HEADER } from '../text/struck-column.ts';
import { NEGATIONS } from '../words/changes.ts';
import { type Grid, operandOf, type Row, rowSpan, sole, systemOf } from './grid.ts';

/** Items of a cell that is looked at, and words that may name another row. */
const LONGEST = 14;
const FEW = 6;

export function rowReferences(grid: Grid): ComparisonClaim[] {
  const labels = grid.rows.map((row) => nameOf(row[0]?.items ?? []));
  return grid.rows.flatMap((row, r) =>
    row.flatMap((read, column) => (read && column > 0 ? readCell(grid, labels, r, read, column) : [])),
  );
}

function readCell(
  grid: Grid,
  labels: readonly string[],
  r: number,
  read: Read,
  column: number,
): ComparisonClaim[] {
  const row = grid.rows[r]!;
  const { items } = read;
  if (items.length > LONGEST || STRUCK_HEADER.test(grid.header[column]!)) return [];
  const than = items.findIndex((item) => item.word === 'than');
  const [word, ...more] = than < 0 ? [] : measuredWords(items);
  if (!word || more.length > 0 || than !== word.to + 1 || word.degree !== 'comparative') return [];
  if (!decidable(word.axis) || word.idiom || items.some((item) => NEGATIONS.has(item.word))) return [];
  const own = sole(read) ?? onlyIn(row);
  const other = grid.rows[rowNamed(items.slice(than + 1), labels, r)];
  const object = own && other && (onlyOf(other[column], own) ?? onlyIn(other));
  if (!own || !object || systemOf(own) !== systemOf(object)) return [];
  const at = items[word.at]!;
  const focus = sourceSpan(read.passage, { start: at.start, end: at.end });
  return [
    {
      kind: 'comparison',
      construction: 'table-row',
      span: rowSpan(row),
      focus,
      left: operandOf(own),
      right: operandOf(object),
      axis: word.axis,
      relation: word.sign === 1 ? 'more' : 'less',
      word: focus,
    },
  ];
}

const ABOVE = /^(?:row|one|line|size)? ?(?:above|before)$/;

/** The row that the words after "than" name, or -1. */
function rowNamed(items: readonly Item[], labels: readonly string[], r: number): number {
  const stop = items.findIndex((item) => item.kind === 'punctuation');
  const words = stop < 0 ? items : items.slice(0, stop);
  if (words.length === 0 || words.length > FEW || words.some((item) => item.kind === 'size')) return -1;
  const name = nameOf(words);
  if (ABOVE.test(name)) return r - 1;
  const hits = labels.flatMap((label, i) => (label !== '' && label === name && i !== r ? [i] : []));
  return hits.length === 1 ? hits[0]! : -1;
}

const SMALL = /^(?:the|a|an|for|on|in|at|of|our|one|is)$/;
const nameOf = (items: readonly Item[]): string => {
  const words = items.filter((item) => item.kind === 'word').map((item) => item.word);
  const kept = words.filter((word) => !SMALL.test(word) || (word === 'one' && words.length < 4));
  return items.length > FEW ? '' : kept.join(' ');
};

/** The size of a row that holds just one. Asked once a cell, so kept. */
const onlyIn = remembered((row: Row): Mention | undefined => {
  const all = row.flatMap((read) => read?.items.flatMap((item) => item.mention ?? []) ?? []);
  const ours = all.filter((mention) => !/^(?:millimetre|inch)$/.test(systemOf(mention)));
  const only = ours[0];
  return ours.length === 1 && only?.kind === 'size' && !only.bound && only.sizes.length === 1
    ? only
    : undefined;
});

const onlyOf = (read: Read | undefined, like: Mention): Mention | undefined => {
  const mention = sole(read);
  return mention && systemOf(mention) === systemOf(like) ? mention : undefined;
};
