/** A table as it is read: headers, rows and the words around it, upright or with a size at the head of each column. */
import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { Note, Span, Table } from '../../notes/model.ts';
import type { Operand } from '../model.ts';
import { materialsIn } from '../text/materials.ts';
import { remembered } from '../text/remember.ts';
import type { Read } from '../text/scenes.ts';

export type Row = readonly (Read | undefined)[];

export interface Grid {
  readonly note: Note;
  readonly table: Table;
  readonly header: readonly string[];
  /** The header cells as read. */
  readonly heads: Row;
  readonly rows: readonly Row[];
  /** Words of the heading and lead-in above. */
  readonly around: string;
  /** The words above, without the paragraph that only happens to stand before the table. */
  readonly above: string;
}

const MOST_ROWS = 60;
const MOST_COLUMNS = 16;
/** A longer or wider table is data: too much for readers that set its rows and cells against one another. */
export const isData = ({ rows, header }: Grid): boolean =>
  rows.length > MOST_ROWS || header.length > MOST_COLUMNS;

/** A row of units below the header belongs to it. */
const UNIT_CELL =
  /^\W*(?:mm|cm|in|inch(?:es)?|fr(?:ench)?|ch|g|ga|gauge|usp|metric|colou?r|name|type|device|material)\W*$/i;
const MANY = 12;

export function gridOf(note: Note, reads: readonly Read[], table: Table): Grid {
  const [head, ...body] = table.rows as readonly [readonly number[], ...(readonly number[])[]];
  const text = (index: number) => note.passages[index]?.text ?? '';
  const path = note.passages[head[0]!]!.path.map(text).join(' ');
  const lead = table.leadIn === undefined ? '' : text(table.leadIn);
  const units = body[0]?.slice(0, MANY).every((index) => UNIT_CELL.test(text(index)))
    ? body.shift()
    : undefined;
  return {
    note,
    table,
    header: head.map((index, c) => `${text(index)} ${units ? text(units[c]!) : ''}`.trim().toLowerCase()),
    heads: head.map((index) => (index < 0 ? undefined : reads[index])),
    rows: body.map((row) => row.map((index) => (index < 0 ? undefined : reads[index]))),
    around: `${path} ${lead}`.toLowerCase(),
    above: `${path} ${/[:：]\s*$/.test(lead) ? lead : ''}`.toLowerCase(),
  };
}

/** A table with a size or a material at the head of each column, turned so that each column is a row. */
export function upright(grid: Grid): Grid {
  const [corner, ...heads] = grid.heads;
  const subjects = heads.filter((head) => isSubject(head)).length;
  if (heads.length < 2 || subjects < heads.length || isSubject(corner)) return grid;
  if (grid.rows.some((row) => isSubject(row[0]))) return grid;
  const labels = grid.rows.map((row) => row[0]);
  return {
    ...grid,
    header: [corner, ...labels].map((read) => read?.passage.text.toLowerCase() ?? ''),
    heads: [corner, ...labels],
    rows: heads.map((head, c) => [head, ...grid.rows.map((row) => row[c + 1])]),
  };
}

/** One size that is no measure, or one material: what a row or a column may be about. */
export function isSubject(read: Read | undefined): boolean {
  const mention = sole(read);
  if (mention) return !MEASURES.has(systemOf(mention));
  return read !== undefined && read.items.length <= 4 && soleMaterial([read]) !== undefined;
}

/** Rows below a row that names a thing and nothing else, "| **14 G** | |", each as a row of that thing. */
export function sectioned(grid: Grid): Grid[] {
  const found: Grid[] = [];
  let subject: Read | undefined;
  for (const row of grid.rows) {
    const empty = row.slice(1).every((read) => !read || read.passage.text.trim() === '');
    if (empty) subject = isSubject(row[0]) ? row[0] : undefined;
    else if (subject && row[0] && row.length === 2 && !isSubject(row[0]))
      found.push({
        ...grid,
        header: [grid.header[0]!, row[0].passage.text.toLowerCase()],
        heads: [grid.heads[0], row[0]],
        rows: [[subject, row[1]]],
      });
  }
  return found;
}

/** The one mention of a cell that holds nothing else to compare. */
export function sole(read: Read | undefined): Mention | undefined {
  const mentions = read?.items.flatMap((item) => (item.mention ? [item.mention] : [])) ?? [];
  const only = mentions[0];
  return mentions.length === 1 && only && only.kind !== 'ambiguous' && !only.bound ? only : undefined;
}

export const operandOf = (mention: Mention, material?: string): Operand => ({
  sizes: mention.sizes,
  mentions: [mention],
  span: mention.source,
  ...(mention.device ? { device: mention.device } : {}),
  ...(mention.material ? { material: mention.material } : material ? { material } : {}),
});

export const MEASURES = new Set(['millimetre', 'inch', 'wire-inch']);

export const systemOf = (mention: Mention) => mention.sizes[0]?.system ?? '';

/** Asked once a cell, so kept: a row may have thousands of cells. */
export const rowSpan = remembered((row: Row): Span => {
  const cells = row.filter((read): read is Read => read !== undefined && read.passage.text.length > 0);
  const spans = cells.map(({ passage }) => sourceSpan(passage, { start: 0, end: passage.text.length }));
  return spans.reduce((all, span) => ({
    start: Math.min(all.start, span.start),
    end: Math.max(all.end, span.end),
  }));
});

/** The one material that cells name: of a row, or of a column's header ("Diameter, gut"). */
export function soleMaterial(cells: Row): string | undefined {
  const found = new Set(cells.flatMap((read) => (read ? materialsIn(read.items).map((m) => m.id) : [])));
  return found.size === 1 ? [...found][0] : undefined;
}
