/**
 * Rows held to what the other rows of their table show: where most rows give the millimetres of a French or a gauge, one that
 * does not is wrong, whatever stands above the column. So with tubes worked out from the age, and catheters from the tube.
 */
import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import { outerDiameter } from '../../sizes/index.ts';
import type { Claim, EquivalenceClaim, FormulaClaim } from '../model.ts';
import { remembered } from '../text/remember.ts';
import { STRUCK_HEADER } from '../text/struck-column.ts';
import { overTube } from '../text/suction.ts';
import { type Grid, isData, MEASURES, operandOf, type Row, rowSpan, systemOf } from './grid.ts';
import { equivalence, equivalences } from './values.ts';

export function learned(grid: Grid): Claim[] {
  if (isData(grid)) return [];
  return [...(grid.rows.length < 2 ? [] : [...widths(grid), ...byAge(grid)]), ...byTube(grid)];
}

interface Placed {
  readonly mention: Mention;
  readonly column: number;
}

const mentionsOf = remembered((row: Row): readonly Placed[] =>
  row.flatMap((read, column) =>
    (read?.items ?? []).flatMap(({ mention }) => (mention ? [{ mention, column }] : [])),
  ),
);

/** A row with one size of a scale and one measure. */
interface Pair {
  readonly row: Row;
  readonly size: Placed;
  readonly measure: Placed;
  /** How the measure stands to the size: at it, clearly off it, or neither. */
  readonly fits: boolean | undefined;
}

const SCALES: ReadonlySet<string> = new Set(['french', 'needle-gauge']);

function pairOf(row: Row): Pair | undefined {
  const all = mentionsOf(row);
  if (all.some(({ mention }) => mention.kind !== 'size' || mention.sizes.length !== 1 || mention.bound))
    return undefined;
  const [size, ...sizes] = all.filter(({ mention }) => !MEASURES.has(systemOf(mention)));
  const [measure, ...measures] = all.filter(({ mention }) => systemOf(mention) === 'millimetre');
  if (!size || !measure || sizes.length + measures.length > 0 || all.length !== 2) return undefined;
  if (!SCALES.has(systemOf(size.mention))) return undefined;
  return { row, size, measure, fits: fits(size.mention, measure.mention.sizes[0]!.value) };
}

/** Off by so much of itself, a width is another; French say their width more closely than gauges. */
const OFF = 0.2;
const OFF_FRENCH = 0.12;
const NEAR = 0.08;

function fits({ sizes, device }: Mention, mm: number): boolean | undefined {
  const width = outerDiameter(sizes[0]!, device ? { device } : {});
  if (!width) return undefined;
  if (mm >= width.min * (1 - NEAR) && mm <= width.max * (1 + NEAR)) return true;
  const off = sizes[0]!.system === 'french' ? OFF_FRENCH : OFF;
  return mm < width.min * (1 - off) || mm > width.max * (1 + off) ? false : undefined;
}

/** A size and its measure in one cell are alone there: a sentence is read as one, and may be called wrong beside it. */
const plain = ({ row, size, measure }: Pair): boolean =>
  !row.some((read) => VERDICT.test(read?.passage.text ?? '')) &&
  (size.column !== measure.column ||
    row[size.column]!.items.every(
      (item) => item.kind !== 'word' || /^(?:about|outside|across|wide|od)$/.test(item.word),
    ));
const VERDICT = /^\W*(?:true|false|t|f|right|wrong|correct|incorrect|nonsense|myth|error|yes|no|x|✓|✗)\W*$/i;

/** "| Suction catheter | 8 Fr | 4 mm |" among rows that give a third of the French. */
function widths(grid: Grid): EquivalenceClaim[] {
  const pairs = grid.rows.flatMap((row) => pairOf(row) ?? []);
  return pairs.flatMap((pair) => {
    if (pair.fits !== false || STRUCK_HEADER.test(grid.header[pair.measure.column] ?? '')) return [];
    const others = pairs.filter(
      (one) =>
        one !== pair && one.size.column === pair.size.column && one.measure.column === pair.measure.column,
    );
    if (!others.concat(pair).every(plain)) return [];
    const right = others.filter((one) => one.fits === true).length;
    const wrong = others.filter((one) => one.fits === false).length;
    const own = pair.size.column === pair.measure.column;
    const alike = others.some(
      (one) => one.fits === true && systemOf(one.size.mention) === systemOf(pair.size.mention),
    );
    if (right < (own || alike ? 1 : 2) || wrong * 2 > right || equivalences(grid, pair.row).length > 0)
      return [];
    const [size, measure] = [operandOf(pair.size.mention), operandOf(pair.measure.mention)];
    return [{ ...equivalence(size, measure, 'outer', rowSpan(pair.row)), construction: 'table-learned' }];
  });
}

const cellText = (row: Row, column: number): string => row[column]?.passage.text.trim() ?? '';
const numberIn = (text: string): number | undefined => {
  const found = /^\W*(\d{1,2}(?:\.\d{1,2})?)(?:\s?(?:y|yr|yrs|years?|mm|fr|ch|french))?\W*$/i.exec(text)?.[1];
  return found === undefined ? undefined : Number(found);
};

const AGE = /^\W*(?:child'?s? )?age\b(?!.*month)/;
const RULE = /\bage\s*(?:\/|÷|over|divided by)\s*(?:4|four)\W*(?:\+|plus)\s*(4|3\.5|3)\b/;

/** A value of a row and what it should be. */
interface Worked {
  readonly row: Row;
  readonly column: number;
  readonly said: number;
  readonly sum: number;
  readonly written: string;
}

/** "| Age | Uncuffed tube (age/4 + 4) |": each row is a sum. */
function byAge(grid: Grid): FormulaClaim[] {
  const ages = grid.header.findIndex((header) => AGE.test(header));
  const tubes = grid.header.findIndex(
    (header, c) => c !== ages && (RULE.test(header) || /\b(?:tubes?|ett)\b/.test(header)),
  );
  const rule = RULE.exec(grid.header[tubes] ?? '') ?? RULE.exec(grid.around);
  if (ages < 0 || tubes < 0 || !rule) return [];
  const more = Number(rule[1]);
  const rows = grid.rows.flatMap((row): Worked[] => {
    const [age, said] = [numberIn(cellText(row, ages)), numberIn(cellText(row, tubes))];
    if (age === undefined || said === undefined || age > 16) return [];
    return [
      { row, column: tubes, said, sum: age / 4 + more, written: `${age} ÷ 4 + ${more} = ${age / 4 + more}` },
    ];
  });
  return odd(
    rows,
    ({ said, sum }) => Math.abs(said - sum) < 0.51,
    ({ said, sum }) => Math.abs(said - sum) > 0.7,
    'tube-worked-out-wrong',
  );
}

/** "| Tube (ID) | Largest suction catheter |": twice the tube, or as the text says the next size below, in every row but one. */
function byTube(grid: Grid): FormulaClaim[] {
  const tubes = grid.header.findIndex(
    (header) => /\b(?:tubes?|ett|id)\b/.test(header) && !/\bsuction\b/.test(header),
  );
  const catheters = grid.header.findIndex((header) => /\bsuction\b/.test(header));
  if (tubes < 0 || catheters < 0) return [];
  const rows = grid.rows.flatMap((row): Worked[] => {
    const [tube, said] = [numberIn(cellText(row, tubes)), numberIn(cellText(row, catheters))];
    if (tube === undefined || said === undefined || tube < 2 || tube > 11) return [];
    return [{ row, column: catheters, said, sum: 2 * tube, written: `2 × ${tube} = ${2 * tube}` }];
  });
  // "Suction catheter at most": the header gives the rule to every row.
  if (LIMIT.test(grid.header[catheters]!))
    return rows
      .filter(({ said, sum }) => overTube(said, sum / 2))
      .map((row) => outOf(row, 'suction-worked-out-wrong'));
  const below = BELOW_TWICE.test(`${grid.around} ${grid.header.join(' ')}`);
  return odd(
    rows,
    ({ said, sum }) => said === sum || (below && said < sum && said > sum - BELOW),
    ({ said, sum }) => said > sum + 1.5,
    'suction-worked-out-wrong',
  );
}

/** The next catheter that is made may lie so far below twice the tube, in French. */
const BELOW = 3;
const BELOW_TWICE =
  /\b(?:below|under|less than|smaller than|down from|at most|no more than|not (?:over|above|more than))\b[^.]{0,30}\b(?:twice|double|two times|2 ?[×x])|\b(?:twice|double|doubled?|two times|2 ?[×x])[^.]{0,60}\b(?:next|one) (?:french )?(?:size|number|step|catheter)?\s?(?:down|below|smaller|under)\b/i;

/** The rows that are out where at least two, and twice as many, come out. */
function odd(
  rows: readonly Worked[],
  right: (one: Worked) => boolean,
  wrong: (one: Worked) => boolean,
  formula: string,
): FormulaClaim[] {
  const out = rows.filter(wrong);
  const good = rows.filter(right).length;
  if (good < 2 || good < out.length * 2) return [];
  return out.map((one) => outOf(one, formula));
}

function outOf({ row, column, written }: Worked, formula: string): FormulaClaim {
  const { passage } = row[column]!;
  return {
    kind: 'formula',
    construction: 'table-learned',
    span: rowSpan(row),
    focus: sourceSpan(passage, { start: 0, end: passage.text.length }),
    system: 'tube-id',
    formula,
    sum: written,
  };
}
const LIMIT =
  /\b(?:at most|max(?:imum)?|largest|biggest|widest|limit|up to|no more than|not (?:above|over))\b/;
