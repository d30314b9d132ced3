/** Sizes of a row compared: a cell "thinner than 3-0", a column headed "Wider" that picks one. */

import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { ComparisonClaim } from '../model.ts';
import { readItems } from '../text/items.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import type { Read } from '../text/scenes.ts';
import { STRUCK_HEADER } from '../text/struck-column.ts';
import { type Grid, operandOf, type Row, rowSpan, sole, systemOf } from './grid.ts';

/** A cell that opens "thinner than 3-0" speaks of the row's first size, which may stand behind what it is for. */
export function comparisons(row: Row): ComparisonClaim[] {
  const first = row.findIndex((read) => read?.items.some((item) => item.kind === 'size'));
  const subject = first < 0 || first > 1 ? undefined : sole(row[first]);
  if (!subject) return [];
  return row.slice(first + 1).flatMap((read) => {
    const other = sole(read);
    const word = read
      ? measuredWords(read.items).find((m) => m.at <= 1 && m.degree === 'comparative')
      : undefined;
    const than = read?.items.findIndex((item) => item.word === 'than') ?? -1;
    if (!read || !other || !word || than !== word.to + 1 || systemOf(other) !== systemOf(subject)) return [];
    if (word.axis === 'other' || word.axis === 'number' || word.idiom) return [];
    return [worded(row, read, word, subject, other)];
  });
}

/** A comparison whose word stands in a cell of the row: a fix may swap it there. */
function worded(row: Row, read: Read, word: Measured, left: Mention, right: Mention): ComparisonClaim {
  const { start, end } = read.items[word.at]!;
  const focus = sourceSpan(read.passage, { start, end });
  return { ...claim(row, read, left, right, word.axis, relationOf(word)), focus, word: focus };
}

/** Two sizes of a row or of neighbouring rows compared by what a cell says, which is where a finding points. */
export function claim(
  row: Row,
  read: Read,
  left: Mention,
  right: Mention,
  axis: ComparisonClaim['axis'],
  relation: ComparisonClaim['relation'],
): ComparisonClaim {
  return {
    kind: 'comparison',
    construction: 'table-row',
    span: rowSpan(row),
    focus: sourceSpan(read.passage, { start: 0, end: read.passage.text.length }),
    left: operandOf(left),
    right: operandOf(right),
    axis,
    relation,
  };
}

/** Which side of the other size a word puts the first. */
export const relationOf = ({ sign }: Pick<Measured, 'sign'>): 'more' | 'less' =>
  sign === 1 ? 'more' : 'less';

/** The size that a cell picks, against another of those there were. */
const picked = (row: Row, read: Read, left: Mention, right: Mention, word: Measured): ComparisonClaim => ({
  ...claim(row, read, left, right, word.axis, relationOf(word)),
  construction: 'table-pick',
});

/** A column headed "Wider" that picks one of the sizes of another cell: "| 18 G and 22 G | 18 G |". */
export function picks(grid: Grid, row: Row): ComparisonClaim[] {
  return row.flatMap((read, column) => {
    const header = grid.header[column]!;
    const word = STRUCK_HEADER.test(header)
      ? undefined
      : measuredWords(readItems(header, [])).find(
          (m) => m.degree !== 'plain' && decidable(m.axis) && !m.idiom,
        );
    const choice = word && (sole(read) ?? named(grid, row, read));
    if (!read || !choice || !word || choice.sizes.length !== 1) return [];
    const size = choice.sizes[0]!;
    const same = (m: Mention) => m.sizes[0]!.system === size.system && m.sizes[0]!.value === size.value;
    const others = choiceOf(grid, row, column, same).filter(
      (m) => m.sizes[0]!.system === size.system && !same(m),
    );
    return others.map((other) => picked(row, read, choice, other, word));
  });
}

/** The sizes to choose from: of one other cell, or of several cells with a size each. */
function choiceOf(grid: Grid, row: Row, column: number, same: (m: Mention) => boolean): Mention[] {
  const cells = row.flatMap((cell, c) =>
    c === column || measuredWords(readItems(grid.header[c]!, [])).length > 0
      ? []
      : [cell?.items.flatMap((item) => (item.mention?.sizes.length === 1 ? [item.mention] : [])) ?? []],
  );
  const one = cells.find((mentions) => mentions.length >= 2 && mentions.some(same));
  if (one) return one;
  const several = cells.filter((mentions) => mentions.length === 1).flat();
  return several.some(same) ? several : [];
}

/** "B": the cell under that header. */
function named(grid: Grid, row: Row, read: Row[number]): Mention | undefined {
  const text = read?.passage.text.trim().toLowerCase() ?? '';
  if (!/^(?:[a-d]|left|right|first|second)$/.test(text)) return undefined;
  return sole(row[grid.header.findIndex((header) => header.trim() === text)]);
}

/** "| 2-0 | thicker than | 4-0 |": a cell of words between two sizes. */
export function signed(row: Row): ComparisonClaim[] {
  return row.flatMap((read, c) => {
    const [left, right] = [sole(row[c - 1]), sole(row[c + 1])];
    const words = read ? measuredWords(read.items) : [];
    const word = words[0];
    if (!read || !left || !right || words.length !== 1 || !word || read.items.length > word.to - word.at + 2)
      return [];
    if (word.degree !== 'comparative' || !decidable(word.axis) || systemOf(left) !== systemOf(right))
      return [];
    return [worded(row, read, word, left, right)];
  });
}

/** "| 14 G vs 18 G | 14 G wider |": of the pair, the size that the cell repeats. */
export function verdicts(row: Row): ComparisonClaim[] {
  const pair =
    row[0]?.items.flatMap((item) => (item.mention?.sizes.length === 1 ? [item.mention] : [])) ?? [];
  if (pair.length !== 2 || row[0]!.items.some((item) => item.magnitude)) return [];
  return row.slice(1).flatMap((read) => {
    const chosen = sole(read);
    const words = measuredWords(read?.items ?? []);
    const word = words[0];
    if (!read || !chosen || words.length !== 1 || !word || word.degree !== 'comparative') return [];
    if (!decidable(word.axis) || read.items.length > 5 || read.items.some((item) => item.word === 'not'))
      return [];
    const size = chosen.sizes[0]!;
    const others = pair.filter((m) => m.sizes[0]!.system === size.system && m.sizes[0]!.value !== size.value);
    return others.length === 1 ? [picked(row, read, chosen, others[0]!, word)] : [];
  });
}
