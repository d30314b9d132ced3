/** What goes through the thing of a row: "| Sheath | Largest catheter it takes |". */
import type { FitClaim } from '../model.ts';
import { STRUCK_HEADER } from '../text/struck-column.ts';
import { type Grid, operandOf, type Row, rowSpan, sole, systemOf } from './grid.ts';

const TAKES =
  /\b(?:it|that|which)?\s*(?:takes?|accepts?|admits?|fits|lets through|passes|swallows|goes? through|will (?:take|pass|go through|fit)|can pass)\b/;
const THINGS = /\b(?:catheters?|guidewires?|wires?|stents?|dilators?|devices?|tubes?)\b/;
const HOLLOW = /\b(?:sheaths?|introducers?|needles?)\b/;

export function fits(grid: Grid, row: Row): FitClaim[] {
  const container = sole(row[0]);
  const head = grid.header[0] ?? '';
  if (!container || !HOLLOW.test(`${head} ${row[0]?.passage.text.toLowerCase() ?? ''}`)) return [];
  const sheath = /\b(?:sheath|introducer)/.test(`${head} ${row[0]?.passage.text.toLowerCase() ?? ''}`);
  if (!sheath && systemOf(container) !== 'needle-gauge') return [];
  return row.flatMap((read, column) => {
    const header = grid.header[column]!;
    const thing = column > 0 ? sole(read) : undefined;
    if (!read || !thing || !TAKES.test(header) || !THINGS.test(header) || STRUCK_HEADER.test(header))
      return [];
    if (/\b(?:not|no|never|too)\b/.test(header) || read.items.length > 3) return [];
    const { device: _, ...plain } = operandOf(thing);
    return [
      {
        kind: 'fit',
        construction: 'table-row',
        span: rowSpan(row),
        focus: plain.span,
        thing: plain,
        container: { ...operandOf(container), ...(sheath ? { device: 'sheath' as const } : {}) },
      },
    ];
  });
}
