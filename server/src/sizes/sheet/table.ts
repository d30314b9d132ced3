/** A table of sizes: one column an idea, one row a size, the sources and the caution below. */
import { colourOf } from '../colours.ts';
import { convert } from '../convert.ts';
import { outerDiameter } from '../diameter.ts';
import { label } from '../format.ts';
import { mmText } from '../interval.ts';
import type { Interval, Lens, Size, System } from '../model.ts';
import { CAUTION } from './caution.ts';
import { lensOfSubject, type Request, type Subject } from './request.ts';

interface Column {
  readonly head: string;
  readonly cell: (size: Size) => string;
}

const NONE = '–';

const size = (head: string): Column => ({ head, cell: label });

const diameter = (head: string, lens: Lens): Column => ({
  head,
  cell: (size) => {
    const outer = outerDiameter(size, lens);
    return outer === undefined ? NONE : mmText(outer);
  },
});

const converted = (head: string, to: System, lens: Lens = {}): Column => ({
  head,
  cell: (size) => {
    const found = convert(size, lens).filter((each) => each.to === to);
    return found.length === 0 ? NONE : found.map((each) => each.text).join('; ');
  },
});

const hub = (head: string, code: 'ISO 6009' | 'ISO 10555-5'): Column => ({
  head,
  cell: (size) => colourOf(code, size.value)?.colour ?? NONE,
});

const NEEDLE = { device: 'needle' } as const;
const CANNULA = { device: 'cannula' } as const;

const COLUMNS: Readonly<Record<Subject, readonly Column[]>> = {
  usp: [
    size('USP'),
    converted('Metric', 'ep-metric'),
    diameter('Diameter', {}),
    diameter('Diameter, gut', { material: 'chromic-gut' }),
  ],
  metric: [size('Metric'), converted('USP', 'usp'), diameter('Diameter', {})],
  gauge: [
    size('Gauge'),
    diameter('Needle, outside', NEEDLE),
    hub('Needle hub (ISO 6009)', 'ISO 6009'),
    diameter('IV catheter, outside', CANNULA),
    hub('IV catheter hub (ISO 10555-5)', 'ISO 10555-5'),
  ],
  needle: [size('Gauge'), diameter('Outside', NEEDLE), hub('Hub (ISO 6009)', 'ISO 6009')],
  cannula: [size('Gauge'), diameter('Outside', CANNULA), hub('Hub (ISO 10555-5)', 'ISO 10555-5')],
  french: [size('French'), converted('Millimetres', 'millimetre'), converted('Inches', 'inch')],
  wire: [size('Guidewire'), converted('Millimetres', 'millimetre'), converted('French', 'french')],
  hegar: [size('Hegar'), converted('Millimetres', 'millimetre'), converted('French', 'french')],
};

const line = (cells: readonly string[]): string =>
  `| ${cells.map((text) => text.replaceAll('|', '\\|')).join(' | ')} |`;

export function sheetTable({ subject, sizes }: Request): string {
  const columns = COLUMNS[subject];
  const head = [line(columns.map((column) => column.head)), `|${columns.map(() => ' --- |').join('')}`];
  const rows = sizes.map((size) => line(columns.map((column) => column.cell(size))));
  return [...head, ...rows, '', footing({ subject, sizes })].join('\n');
}

/** Standards behind the values and the caution, in small print. */
export function footing({ subject, sizes }: Request): string {
  const lenses = subject === 'gauge' ? [NEEDLE, CANNULA] : [lensOfSubject(subject)];
  const known = sizes
    .flatMap((size) => lenses.map((lens) => outerDiameter(size, lens)))
    .filter((interval): interval is Interval => interval !== undefined);
  const standards = [...new Set(known.map((interval) => interval.standard))];
  const doubtful = known.some((interval) => interval.confidence === 'memory');
  const sources = standards.length === 0 ? '' : `Source: ${standards.join('; ')}. `;
  return `*${sources}${doubtful ? 'Some limits are from memory. ' : ''}${CAUTION}*`;
}
