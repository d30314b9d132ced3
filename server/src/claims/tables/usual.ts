/** Sizes as taught for the patient or the use that a row or a column names: "| Adult deltoid | 23 G |". */
import type { CategoryClaim } from '../model.ts';
import { STRUCK_HEADER } from '../text/struck-column.ts';
import { USUAL } from '../words/usual.ts';
import { type Grid, operandOf, type Row, rowSpan, sole, systemOf } from './grid.ts';

/** A label longer than this tells a story. */
const LONGEST = 60;
/** Not what is usual: what is turned down, the least or the most that will do, one patient. */
export const TURNS =
  /\b(?:not|never|no|avoid|too|wrong|except|than|unless|instead|without|old|former|exam|animals?|why|myth|min(?:imum)?|max(?:imum)?|least|most|smallest|largest|last|patient \d+|bed|case|mistakes?|errors?)\b|\?/;

/** A column that counts what lies on the shelf. */
const COUNTS = /^\W*(?:number|no\.?|count|stock|in stock|quantity|qty|pieces|pcs|boxes|packs|how many)\W*$/i;

export function usuals(grid: Grid, row: Row): CategoryClaim[] {
  const label = row[0]?.passage.text.toLowerCase() ?? '';
  if (sole(row[0]) || label.length > LONGEST) return [];
  return row.flatMap((read, column) => {
    const mention = column > 0 ? sole(read) : undefined;
    const header = grid.header[column]!;
    if (!read || !mention || read.items.length > 4 || STRUCK_HEADER.test(header) || COUNTS.test(header))
      return [];
    const text = `${label} | ${header} | ${grid.header[0]}`;
    if (TURNS.test(text)) return [];
    const rows = USUAL.filter(
      ({ system, devices, named, patient, unless }) =>
        system === systemOf(mention) &&
        patient.test(`${label} | ${header}`) &&
        !unless?.test(text) &&
        (named.test(text) ||
          (mention.device !== undefined && devices.includes(mention.device)) ||
          named.test(grid.around)),
    );
    const one = rows.find((found) => !rows.some((other) => other !== found && other.thing === found.thing));
    if (!one) return [];
    return [
      {
        kind: 'category' as const,
        construction: 'table-row',
        span: rowSpan(row),
        focus: mention.source,
        size: operandOf(mention),
        category: one.id,
        member: true,
        ...(mention.kind === 'range' ? { each: true } : {}),
      },
    ];
  });
}
