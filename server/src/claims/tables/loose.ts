/**
 * What a cell says of its row in other ways: a gauge with its colour in one cell beside the name of the thing, a word of
 * comparison under "compared with the last", another way to write a thread.
 */
import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { Claim, ColourClaim, ComparisonClaim } from '../model.ts';
import { decidable, measuredWords } from '../text/magnitudes.ts';
import { remembered } from '../text/remember.ts';
import { type Read, STRUCK_HEADER } from '../text/scenes.ts';
import { NEGATIONS } from '../words/changes.ts';
import { codeOf } from '../words/codes.ts';
import { type Grid, operandOf, type Row, rowSpan, sole, systemOf } from './grid.ts';

const MOST = 60;

export function looseRows(grid: Grid): Claim[] {
  if (grid.rows.length > MOST) return [];
  return grid.rows.flatMap((row, r) => [
    ...beside(grid, row),
    ...sameAs(grid, row),
    ...besideLast(grid, row, grid.rows[r - 1], grid.rows[r + 1]),
  ]);
}

/** Colours of what a thing is kept in, or of what is put on it. */
const ELSEWHERE =
  /^(?:box|boxes|packets?|packs?|trays?|lids?|drawers?|stickers?|labels?|bags?|bins?|tape|taps?|stopcocks?|clamps?|or|not|never|than)$/;
const FEW = 7;

/** "| IV cannula | 18 G, pink |": the row says whose gauge and colour they are. */
function beside(grid: Grid, row: Row): ColourClaim[] {
  return row.flatMap((read, column) => {
    const words = read?.items ?? [];
    const coloured = words.filter((item) => item.colour);
    const mention = sole(read);
    if (!read || !mention || coloured.length !== 1 || words.length > FEW || mention.sizes.length !== 1)
      return [];
    if (systemOf(mention) !== 'needle-gauge' || STRUCK_HEADER.test(grid.header[column]!)) return [];
    if (words.some((item) => ELSEWHERE.test(item.word)) || codeOf(words)) return [];
    const device = codeOf(row.flatMap((cell) => (cell === read ? [] : (cell?.items ?? []))));
    if (!device || device === 'both') return [];
    const { start, end, colour } = coloured[0]!;
    return [
      {
        kind: 'colour',
        construction: 'table-row',
        span: rowSpan(row),
        focus: sourceSpan(read.passage, { start, end }),
        size: operandOf(mention),
        colour: colour!,
        same: true,
        device,
      },
    ];
  });
}

const SAME =
  /^\W*(?:(?:is |the )?same (?:as|size as|thing as|thread as)|equals?|equal to|also (?:written|called|known as)|means|other (?:name|way|writing)|stands for|read (?:it )?as|=)\W*$/;

/** "| 00 | 2-0 |" under "Same as": two ways to write one thread. */
function sameAs(grid: Grid, row: Row): ComparisonClaim[] {
  return row.flatMap((read, column) => {
    const [left, right] = [sole(row[column - 1]), sole(read)];
    if (!read || !left || !right || !SAME.test(grid.header[column]!)) return [];
    if (systemOf(left) !== 'usp' || systemOf(right) !== 'usp' || left.sizes.length + right.sizes.length > 2)
      return [];
    return [claim(row, read, left, right, 'outer', 'same')];
  });
}

const LAST =
  /\b(?:compared|relative|against|next|beside|vs|versus|than)\b.*\b(?:last|previous|above|before|one up)\b|^\W*(?:than|from) (?:the )?(?:last|previous|row above|one above|one before)\W*$/;
const NEXT = /\b(?:compared|relative|against|than)\b.*\b(?:next|below|following|after)\b/;

/** "| 12 Fr | slimmer |" under "Compared with the last". */
function besideLast(
  grid: Grid,
  row: Row,
  before: Row | undefined,
  after: Row | undefined,
): ComparisonClaim[] {
  return row.flatMap((read, column) => {
    const header = grid.header[column]!;
    const other = LAST.test(header) ? before : NEXT.test(header) ? after : undefined;
    const words = measuredWords(read?.items ?? []);
    const [word] = words;
    const [own, mention] = [sizeIn(row), other && sizeIn(other)];
    if (!read || !own || !mention || words.length !== 1 || !word || systemOf(own) !== systemOf(mention))
      return [];
    if (word.degree !== 'comparative' || !decidable(word.axis) || word.idiom || read.items.length > 5)
      return [];
    if (read.items.some((item) => item.kind === 'size' || NEGATIONS.has(item.word))) return [];
    return [claim(row, read, own, mention, word.axis, word.sign === 1 ? 'more' : 'less')];
  });
}

/** The one size of a row. Asked once a cell, so kept. */
const sizeIn = remembered((row: Row): Mention | undefined => {
  const all = row.flatMap((read) => read?.items.flatMap((item) => item.mention ?? []) ?? []);
  const [only] = all;
  return all.length === 1 && only?.kind === 'size' && !only.bound && only.sizes.length === 1
    ? only
    : undefined;
});

function claim(
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
