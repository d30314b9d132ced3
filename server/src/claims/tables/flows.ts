/** A column of flows beside a column of gauges: the one row in which a narrower cannula runs faster than a wider one. */
import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { ComparisonClaim } from '../model.ts';
import type { Read } from '../text/scenes.ts';
import { type Grid, operandOf, sole, systemOf } from './grid.ts';

const FLOW =
  /\b(?:m ?l|millilit\w+|lit(?:re|er)s?|l)\s?(?:\/|per |an? )\s?(?:min(?:ute)?|h(?:our)?)\b|^\W*flow(?: rate)?s?\b/;
/** What else changes the flow from row to row. */
const OTHER = /\b(?:length|long|mm|cm|pressure|height|fluid|type|model|kind|site|line)\b/;

/** A size with the flow that its row gives it. */
interface Run {
  readonly size: Mention;
  readonly flow: number;
  readonly cell: Read;
}

const FEWEST = 4;
const MOST = 40;

export function flows(grid: Grid): ComparisonClaim[] {
  const { header, rows } = grid;
  const rated = header.findIndex((text) => FLOW.test(text));
  const column = rated >= 0 ? rated : header.findIndex((text) => FILLS.test(text));
  if (column < 0 || rows.length < FEWEST || rows.length > MOST) return [];
  if (header.some((text, c) => c !== column && (OTHER.test(text) || FLOW.test(text)))) return [];
  const runs = rows.flatMap((row) => runOf(row, column, rated < 0));
  const sizes = new Set(runs.map(({ size }) => size.sizes[0]!.value));
  if (runs.length < rows.length || sizes.size < runs.length) return [];
  const sorted = runs.sort((a, b) => a.size.sizes[0]!.value - b.size.sizes[0]!.value);
  const odd = oddOne(sorted);
  return odd === undefined ? [] : claimsOf(sorted, odd);
}

/** The time that a volume takes, where no flow is given. */
const FILLS =
  /\b(?:litre|liter|bag|500 ?ml|1000 ?ml|unit)s?\b.{0,14}\b(?:in|time|takes|min(?:utes)?|over|empty)\b|\b(?:time|minutes|min) (?:for|to|per) .{0,14}\b(?:litre|liter|bag|ml|empty)\b/;

function runOf(row: Grid['rows'][number], column: number, timed: boolean): Run[] {
  const [own, cell] = [row.find((read) => sole(read)), row[column]];
  const size = sole(own);
  const flow = (timed ? TIME : RATE).exec(cell?.passage.text ?? '')?.[1];
  const plain = size && systemOf(size) === 'needle-gauge' && size.sizes.length === 1;
  return plain && own!.passage.text.length < 16 && cell && flow !== undefined
    ? [{ size, flow: timed ? -Number(flow) : Number(flow), cell }]
    : [];
}

const RATE = /^\W{0,3}(?:about |~)?(\d{1,4}(?:\.\d)?)(?:\s?m?l\S*)?\W*$/i;
const TIME = /^\W{0,3}(?:about |~)?(\d{1,3}(?:\.\d)?)(?:\s?(?:min(?:ute)?s?|mins))?\W*$/i;

const falls = (runs: readonly Run[]): boolean =>
  runs.every(({ flow }, i) => i === 0 || flow <= runs[i - 1]!.flow);

/** The only row without which the flow falls from each gauge to the next. */
function oddOne(runs: readonly Run[]): number | undefined {
  if (falls(runs)) return undefined;
  const odd = runs.flatMap((_, i) => (falls(runs.toSpliced(i, 1)) ? [i] : []));
  return odd.length === 1 ? odd[0] : undefined;
}

/** Against the wider one it outruns, else against the narrower one that outruns it. */
function claimsOf(runs: readonly Run[], odd: number): ComparisonClaim[] {
  const own = runs[odd]!;
  const wider = runs.slice(0, odd).findLast(({ flow }) => flow < own.flow);
  const other = wider ?? runs.slice(odd + 1).find(({ flow }) => flow > own.flow);
  if (!other) return [];
  const { passage } = own.cell;
  const span = sourceSpan(passage, { start: 0, end: passage.text.length });
  return [
    {
      kind: 'comparison',
      construction: 'table-flow',
      span,
      focus: span,
      left: operandOf(own.size),
      right: operandOf(other.size),
      axis: 'flow',
      relation: wider ? 'more' : 'less',
    },
  ];
}
