/** What the rows and columns of a table assert: equal sizes in one row, hub colours, materials, order down a column. */

import type { Mention } from '../mentions/model.ts';
import { sourceSpan } from '../notes/index.ts';
import type { Note, Span, Table } from '../notes/model.ts';
import type { Device } from '../sizes/model.ts';
import { orderCue } from './constructions/order.ts';
import type {
  Claim,
  ColourClaim,
  ComparisonClaim,
  EquivalenceClaim,
  Operand,
  OrderClaim,
  PropertyClaim,
} from './model.ts';
import { type Item, readItems } from './text/items.ts';
import { measuredWords } from './text/magnitudes.ts';
import { materialsIn } from './text/materials.ts';
import { remembered } from './text/remember.ts';
import { type Read, STRUCK_HEADER } from './text/scenes.ts';
import { codeOf } from './words/codes.ts';
import { fateIn } from './words/fates.ts';
import { PROPERTY_WORDS } from './words/properties.ts';

interface Grid {
  readonly table: Table;
  readonly header: readonly string[];
  /** The header cells as read. */
  readonly heads: readonly (Read | undefined)[];
  readonly rows: readonly (readonly (Read | undefined)[])[];
  /** Words of the heading and lead-in above. */
  readonly around: string;
}

export function readTables(note: Note, reads: readonly Read[]): Claim[] {
  return note.tables.flatMap((table) => {
    const grid = gridOf(note, reads, table);
    return grid && !matching(grid)
      ? [...grid.rows.flatMap((row) => readRow(grid, row)), ...columnOrders(grid)]
      : [];
  });
}

/** "1. 18 G | a. blue": two columns to be matched, so that nothing in a row belongs together. */
function matching({ rows, header }: Grid): boolean {
  const labelled = (column: number, label: RegExp) =>
    rows.length > 1 && rows.every((row) => label.test(row[column]?.passage.text ?? ''));
  const columns = header.map((_, column) => column);
  return (
    columns.some((column) => labelled(column, /^\W*\d{1,2}[.)]\s/)) &&
    columns.some((column) => labelled(column, /^\W*[a-z][.)]\s/i))
  );
}

function gridOf(note: Note, reads: readonly Read[], table: Table): Grid | undefined {
  const [head, ...body] = table.rows;
  if (!head) return undefined;
  const text = (index: number) => note.passages[index]?.text ?? '';
  const first = note.passages[head.find((index) => index >= 0) ?? -1];
  const path = (first?.path ?? []).map(text).join(' ');
  const lead = table.leadIn === undefined ? '' : text(table.leadIn);
  return {
    table,
    header: head.map((index) => text(index).toLowerCase()),
    heads: head.map((index) => (index < 0 ? undefined : reads[index])),
    rows: body.map((row) => row.map((index) => (index < 0 ? undefined : reads[index]))),
    around: `${path} ${lead}`.toLowerCase(),
  };
}

/** A header that says what is measured settles that it is no length. */
const ACROSS = /\b(?:diameter|o\.?d\.?|width|thickness|across|outer|outside)\b/;

type Role = 'outer' | 'bore' | 'length' | 'colour' | 'none';

const ROLES: readonly (readonly [RegExp, Role])[] = [
  [
    /\b(?:round|circumference|girth|perimeter|radius|wound|depth|insert|distance|height|volume|balloon|dose|mark|tip to)/,
    'none',
  ],
  [/\b(?:inner|inside|internal|bore|lumen|i\.?d\.?)\b/, 'bore'],
  [/\b(?:needle length|length|long)\b/, 'length'],
  [/\b(?:colou?rs?|hub|valve colou?r|funnel|code)\b/, 'colour'],
  [
    /\b(?:outer|outside|external|diameter|o\.?d\.?|ø|mm|millimet(?:re|er)s?|inch(?:es)?|thickness|across|width|metric|usp|french|fr|gauge|ch|size|ep|in)\b|″/,
    'outer',
  ],
];

const roleOf = (header: string): Role =>
  STRUCK_HEADER.test(header) ? 'none' : (ROLES.find(([pattern]) => pattern.test(header))?.[1] ?? 'none');

function readRow(grid: Grid, row: readonly (Read | undefined)[]): Claim[] {
  return [
    ...equivalences(grid, row),
    ...colours(grid, row),
    ...properties(grid, row),
    ...headedMaterials(grid, row),
    ...comparisons(row),
    ...picks(grid, row),
  ];
}

/** The one mention of a cell that holds nothing else to compare. */
function sole(read: Read | undefined): Mention | undefined {
  const mentions = read?.items.flatMap((item) => (item.mention ? [item.mention] : [])) ?? [];
  const only = mentions[0];
  return mentions.length === 1 && only && only.kind !== 'ambiguous' && !only.bound ? only : undefined;
}

const operandOf = (mention: Mention, material?: string): Operand => ({
  sizes: mention.sizes,
  mentions: [mention],
  span: mention.source,
  ...(mention.device ? { device: mention.device } : {}),
  ...(mention.material ? { material: mention.material } : material ? { material } : {}),
});

const MEASURES = new Set(['millimetre', 'inch', 'wire-inch']);

/** The row's own size (its first cell with one) against every measure of the row. */
function equivalences(grid: Grid, row: readonly (Read | undefined)[]): EquivalenceClaim[] {
  const cells = row.map((read, column) => ({
    mention: sole(read),
    role: roleOf(grid.header[column] ?? ''),
    headed: soleMaterial([grid.heads[column]]),
    read,
  }));
  const twice = twiceMeasured(cells);
  const subject =
    twice ??
    cells.find((cell) => cell.mention && !MEASURES.has(systemOf(cell.mention)) && cell.role !== 'length') ??
    cells.find((cell) => cell.mention && cell.role === 'outer');
  if (!subject?.mention) return [];
  const material = soleMaterial(row);
  return cells.flatMap((cell, column) => {
    if (
      !cell.mention ||
      cell === subject ||
      systemOf(cell.mention) === systemOf(subject.mention!) ||
      (cell.mention.length &&
        !ACROSS.test(grid.header[column] ?? '') &&
        !narrow(cell.mention, subject.mention!))
    )
      return [];
    if (cell.role !== 'outer' && cell.role !== 'bore') return [];
    if (!comparable(systemOf(subject.mention!), systemOf(cell.mention))) return [];
    if (twice && !MEASURES.has(systemOf(cell.mention))) return [];
    const left = { ...operandOf(subject.mention!, material), ...(cell.headed && { material: cell.headed }) };
    return [equivalence(left, operandOf(cell.mention, cell.headed ?? material), cell.role, rowSpan(row))];
  });
}

/** "0.035 in | 0.89 mm | 18 G": a row that opens with one thing in two units; the gauge is that of another. */
function twiceMeasured<Cell extends { readonly mention: Mention | undefined; readonly role: Role }>(
  cells: readonly Cell[],
): Cell | undefined {
  const [a, b] = cells.filter((cell) => cell.mention);
  const measured = (cell: Cell | undefined) =>
    cell?.mention !== undefined && cell.role !== 'length' && MEASURES.has(systemOf(cell.mention));
  return measured(a) && measured(b) && systemOf(a!.mention!) !== systemOf(b!.mention!) ? a : undefined;
}

/** A few millimetres beside a French size are its width, whatever else a length may be. */
const narrow = (measure: Mention, of: Mention): boolean => {
  const { system, value } = measure.sizes[0]!;
  return systemOf(of) === 'french' && (system === 'millimetre' ? value : value * 25.4) < 21;
};

const systemOf = (mention: Mention) => mention.sizes[0]?.system ?? '';

/** A measure says any size; USP and metric numbers say each other. A gauge beside a French is two things, not one. */
const comparable = (a: string, b: string) =>
  MEASURES.has(a) ||
  MEASURES.has(b) ||
  (['usp', 'ep-metric'].includes(a) && ['usp', 'ep-metric'].includes(b));

function equivalence(left: Operand, right: Operand, role: 'outer' | 'bore', span: Span): EquivalenceClaim {
  return {
    kind: 'equivalence',
    construction: 'table-row',
    span,
    focus: right.span,
    left,
    right,
    approximate: right.mentions.some((mention) => mention.approximate === true),
    axis: role,
  };
}

/** Asked once a cell, so kept: a row may have thousands of cells. */
const rowSpan = remembered((row: readonly (Read | undefined)[]): Span => {
  const cells = row.filter((read): read is Read => read !== undefined && read.passage.text.length > 0);
  const spans = cells.map(({ passage }) => sourceSpan(passage, { start: 0, end: passage.text.length }));
  return spans.reduce((all, span) => ({
    start: Math.min(all.start, span.start),
    end: Math.max(all.end, span.end),
  }));
});

/** The one material that cells name: of a row, or of a column's header ("Diameter, gut"). */
function soleMaterial(cells: readonly (Read | undefined)[]): string | undefined {
  const found = new Set(cells.flatMap((read) => (read ? materialsIn(read.items).map((m) => m.id) : [])));
  return found.size === 1 ? [...found][0] : undefined;
}

/** A colour cell beside the row's one gauge or French. */
/** The colour of a box or a lid is no code. */
const PACKING = /\b(?:box|boxes|packets?|packs?|trays?|lids?|drawers?|stickers?|labels?|bags?)\b/;

function colours(grid: Grid, row: readonly (Read | undefined)[]): ColourClaim[] {
  const coded = row.flatMap((read, column) => {
    const mention = sole(read);
    return mention && isCoded(mention) ? [{ column, mention }] : [];
  });
  const coloured = row.flatMap((read, column) => {
    const words = read?.items.filter((item) => item.colour) ?? [];
    return words.length >= 1 && read && onlyColour(read.items)
      ? [{ read, column, word: words.at(-1)!, first: words[0]! }]
      : [];
  });
  return coloured.flatMap(({ read, column, word }) => {
    const subject = coded.find((cell) => cell.column !== column);
    const header = grid.header[column] ?? '';
    if (!subject || PACKING.test(header)) return [];
    const device = deviceFor(grid, header, row, subject.mention);
    if (device === 'both') return [];
    return [colourClaim(subject.mention, read, word, device, rowSpan(row))];
  });
}

const isCoded = (mention: Mention) =>
  mention.sizes.length === 1 && ['needle-gauge', 'french'].includes(systemOf(mention));

/** A cell with a colour and shade words, nothing else of weight. */
const onlyColour = (items: readonly Item[]) =>
  items.filter((item) => item.colour).length === 1 &&
  items.filter((item) => item.kind === 'word').length <= 3 &&
  !items.some((item) => item.mention);

/** Which code a colour column follows: its own header, the row, the header of the size, the words above. */
function deviceFor(
  grid: Grid,
  header: string,
  row: readonly (Read | undefined)[],
  mention: Mention,
): Device | 'both' | undefined {
  return (
    codeOf(wordsOf(header)) ?? codeOfRow(row) ?? codeOfHeader(grid) ?? mention.device ?? codeOfWords(grid)
  );
}

const wordsOf = (text: string) => text.split(/[^a-z0-9-]+/).map((word) => ({ word }));
// Asked once a cell, so kept.
const codeOfRow = remembered((row: readonly (Read | undefined)[]) =>
  codeOf(row.flatMap((read) => read?.items ?? [])),
);
const codeOfHeader = remembered((grid: Grid) => codeOf(wordsOf(grid.header.join(' '))));
const codeOfWords = remembered((grid: Grid) => codeOf(wordsOf(grid.around)));

function colourClaim(
  mention: Mention,
  read: Read,
  word: Item,
  device: Device | undefined,
  span: Span,
): ColourClaim {
  return {
    kind: 'colour',
    construction: 'table-row',
    span,
    focus: sourceSpan(read.passage, { start: word.start, end: word.end }),
    size: operandOf(mention),
    colour: word.colour!,
    same: true,
    ...(device ? { device } : {}),
  };
}

const YES = /^(?:yes|y|✓|✔|true)$/;
const NO = /^(?:no|n|✗|✘|false|—|-)$/;
/** A material in the first cell, its properties in the others. */
function properties(grid: Grid, row: readonly (Read | undefined)[]): PropertyClaim[] {
  const subject = soleMaterial(row);
  if (!subject) return [];
  return row.slice(1).flatMap((read, i) => {
    if (!read || read.passage.text.length === 0 || STRUCK_HEADER.test(grid.header[i + 1] ?? '')) return [];
    return propertyCell(grid.header[i + 1] ?? '', read).map((property) => ({
      kind: 'property' as const,
      construction: 'table-row',
      span: rowSpan(row),
      focus: sourceSpan(read.passage, { start: 0, end: read.passage.text.length }),
      subject,
      of: 'material' as const,
      property,
      has: true,
    }));
  });
}

/** A material in a column that is headed by a property and nothing else. */
function headedMaterials(grid: Grid, row: readonly (Read | undefined)[]): PropertyClaim[] {
  return row.flatMap((read, column) => {
    const header = readItems(grid.header[column] ?? '', []);
    const asked = header.flatMap((item) => PROPERTY_WORDS.get(item.word) ?? []);
    const plain = header.every(
      (item) => PROPERTY_WORDS.has(item.word) || /^(?:sutures?|threads?|materials?)$/.test(item.word),
    );
    const named = read ? materialsIn(read.items) : [];
    if (!read || asked.length !== 1 || !plain || named.length !== 1) return [];
    const words = read.items.filter((item) => item.kind === 'word').length;
    if (words > named[0]!.to - named[0]!.at + 1) return [];
    return [
      {
        kind: 'property',
        construction: 'table-row',
        span: rowSpan(row),
        focus: sourceSpan(read.passage, { start: 0, end: read.passage.text.length }),
        subject: named[0]!.id,
        of: 'material',
        property: `${asked[0]!.property}:${asked[0]!.value}`,
        has: true,
      } satisfies PropertyClaim,
    ];
  });
}

/** A cell that opens "thinner than 3-0" speaks of the row's first size. */
function comparisons(row: readonly (Read | undefined)[]): ComparisonClaim[] {
  const subject = sole(row[0]);
  if (!subject) return [];
  return row.slice(1).flatMap((read) => {
    const other = sole(read);
    const word = read
      ? measuredWords(read.items).find((m) => m.at <= 1 && m.degree === 'comparative')
      : undefined;
    const than = read?.items.findIndex((item) => item.word === 'than') ?? -1;
    if (!read || !other || !word || than !== word.to + 1 || systemOf(other) !== systemOf(subject)) return [];
    if (word.axis === 'other' || word.axis === 'number' || word.idiom) return [];
    const { start, end } = read.items[word.at]!;
    const focus = sourceSpan(read.passage, { start, end });
    return [
      {
        kind: 'comparison',
        construction: 'table-row',
        span: rowSpan(row),
        focus,
        left: operandOf(subject),
        right: operandOf(other),
        axis: word.axis,
        relation: word.sign === 1 ? 'more' : 'less',
        word: focus,
      } satisfies ComparisonClaim,
    ];
  });
}

function propertyCell(header: string, read: Read): string[] {
  const fate = fateIn(read.items.map((item) => item.word).join(' ')) ?? shortFate(read);
  if (fate) return [typeof fate === 'string' ? fate : fate.property];
  const text = read.passage.text.trim().toLowerCase();
  const asked = [...readItems(header, [])].flatMap((item) => PROPERTY_WORDS.get(item.word) ?? []);
  if (asked.length === 1 && (YES.test(text) || NO.test(text))) {
    const row = asked[0]!;
    if (row.property !== 'absorbable') return YES.test(text) ? [`${row.property}:${row.value}`] : [];
    return [`absorbable:${YES.test(text) === (row.value === 'yes') ? 'yes' : 'no'}`];
  }
  const words = read.items.filter((item) => item.kind === 'word');
  if (words.length > 3 || words.some((item) => ['not', 'or', 'and'].includes(item.word))) return [];
  return words.flatMap((item) => {
    const row = PROPERTY_WORDS.get(item.word);
    return row ? [`${row.property}:${row.value}`] : [];
  });
}

/** "never, it absorbs": a verb alone is enough in a cell. */
function shortFate(read: Read): string | undefined {
  const words = read.items.filter((item) => item.kind === 'word').map((item) => item.word);
  if (words.length > 4 || words.includes('not')) return undefined;
  return words.some((word) => /^(?:absorbs|dissolves|resorbs)$/.test(word)) ? 'absorbable:yes' : undefined;
}

/** "thinnest first" in a header or right above: the column must run that way. */
function columnOrders(grid: Grid): OrderClaim[] {
  const cue = orderCue(readItems(grid.around.split(/[.!?]\s/).at(-1) ?? '', []));
  const sized = cue ? firstSized(grid) : -1;
  return grid.header.flatMap((header, column) => {
    const own = orderCue(readItems(header, [])) ?? (column === sized ? cue : undefined);
    if (!own) return [];
    const mentions = grid.rows.map((row) => sole(row[column]));
    if (mentions.length < 3 || mentions.some((mention) => mention === undefined)) return [];
    const items = mentions.map((mention) => operandOf(mention!));
    const span = { start: items[0]!.span.start, end: items.at(-1)!.span.end };
    return [
      {
        kind: 'order',
        construction: 'table-column',
        span,
        focus: span,
        items,
        axis: own.axis,
        runs: own.runs,
      } satisfies OrderClaim,
    ];
  });
}

const firstSized = (grid: Grid) =>
  grid.header.findIndex(
    (_, column) => grid.rows.length > 0 && grid.rows.every((row) => sole(row[column]) !== undefined),
  );

/** A column headed "Wider" that picks one of the sizes of another cell: "| 18 G and 22 G | 18 G |". */
function picks(grid: Grid, row: readonly (Read | undefined)[]): ComparisonClaim[] {
  return row.flatMap((read, column) => {
    const header = grid.header[column] ?? '';
    const picked = STRUCK_HEADER.test(header) ? undefined : sole(read);
    const word =
      picked &&
      measuredWords(readItems(header, [])).find(
        (m) => m.degree !== 'plain' && m.axis !== 'other' && m.axis !== 'number' && !m.idiom,
      );
    if (!picked || !word || picked.sizes.length !== 1) return [];
    const size = picked.sizes[0]!;
    const choice = row
      .filter((cell) => cell !== read)
      .map(
        (cell) =>
          cell?.items.flatMap((item) => (item.mention?.sizes.length === 1 ? [item.mention] : [])) ?? [],
      )
      .find(
        (mentions) =>
          mentions.length >= 2 &&
          mentions.some((m) => m.sizes[0]!.system === size.system && m.sizes[0]!.value === size.value),
      );
    const others =
      choice?.filter((m) => m.sizes[0]!.system === size.system && m.sizes[0]!.value !== size.value) ?? [];
    return others.map((other) => ({
      kind: 'comparison',
      construction: 'table-pick',
      span: rowSpan(row),
      focus: picked.source,
      left: operandOf(picked),
      right: operandOf(other),
      axis: word.axis,
      relation: word.sign === 1 ? 'more' : 'less',
    }));
  });
}
