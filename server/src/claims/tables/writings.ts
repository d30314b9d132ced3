/** Two writings of a thread in the columns of a table, "| 3/0 | 000 |": where rows agree, one that does not is miscounted. */
import type { Mention } from '../../mentions/model.ts';
import type { ComparisonClaim } from '../model.ts';
import { type Grid, operandOf, type Row, rowSpan, sole, systemOf } from './grid.ts';

const ROW_OF_ZEROS = /^0{1,12}$/;
const COUNTED = /^\d{1,2}\s?[-/–]\s?[0Oo]$/;
/** A header that speaks of writing, or of what was written once. */
const OF_WRITING =
  /\b(?:old|older|former\w*|zeros?|zeroes|noughts?|writ\w+|label\w*|spell\w*|spelt|grandfather\S*|style|modern|today\S*|now|notation|in full|long form|short(?:hand)?|also|symbol|printed|packet|box|says?)\b/;

/** What stands below is wrong; "old" by itself is no such word here. */
const STRUCK = /^\W*(?:wrong|errors?|mistak\w+|slips?|myths?|incorrect|misread\w*|not\b|instead|for\W*$)/;

/** Rows that must agree before another is held to them. */
const ENOUGH = 1;

export function writings(grid: Grid): ComparisonClaim[] {
  const { header, rows } = grid;
  if (!header.some((text) => OF_WRITING.test(text)) || header.some((text) => STRUCK.test(text))) return [];
  const columns = header.map((_, column) => column);
  return columns.flatMap((column) => {
    const pairs = rows.flatMap((row) => pairOf(row, column));
    const right = pairs.filter(({ a, b }) => a.sizes[0]!.value === b.sizes[0]!.value).length;
    const many = pairs.length > ENOUGH && right >= ENOUGH && right * 2 >= pairs.length - 1;
    return many ? pairs.map(({ row, a, b }) => claimOf(row, a, b)) : [];
  });
}

interface Pair {
  readonly row: Row;
  readonly a: Mention;
  readonly b: Mention;
}

/** The writing in a column with zeros all written out, and the one counted cell of its row. */
function pairOf(row: Row, column: number): Pair[] {
  const zeros = sole(row[column]);
  if (!zeros || systemOf(zeros) !== 'usp' || !ROW_OF_ZEROS.test(zeros.text)) return [];
  const counted = row.flatMap((read) => sole(read) ?? []).filter(({ text }) => COUNTED.test(text));
  return counted.length === 1 && zeros.text.length > 1 ? [{ row, a: counted[0]!, b: zeros }] : [];
}

const claimOf = (row: Row, a: Mention, b: Mention): ComparisonClaim => ({
  kind: 'comparison',
  construction: 'table-row',
  span: rowSpan(row),
  focus: b.source,
  left: operandOf(a),
  right: operandOf(b),
  axis: 'outer',
  relation: 'same',
});
