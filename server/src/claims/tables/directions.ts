/** Tables of words without a size that say which way a scale runs: "| lower number | wider |", "| Gauge | thinner |". */
import { sourceSpan } from '../../notes/index.ts';
import type { Axis, DirectionClaim } from '../model.ts';
import { type Item, readItems } from '../text/items.ts';
import { decidable, measuredWords } from '../text/magnitudes.ts';
import type { Read } from '../text/scenes.ts';
import { STRUCK_HEADER } from '../text/struck-column.ts';
import { DOWN, NEGATIONS, UP } from '../words/changes.ts';
import { type Grid, type Row, rowSpan } from './grid.ts';

type Sign = 1 | -1;
const LONGEST = 5;

export function directions(grid: Grid): DirectionClaim[] {
  return grid.rows.flatMap((row) => row.slice(1).flatMap((read, i) => readCell(grid, row, read, i + 1)));
}

function readCell(grid: Grid, row: Row, read: Read | undefined, column: number): DirectionClaim[] {
  const [label, head] = [row[0]?.items ?? [], readItems(grid.header[column]!, [])];
  if (!read || STRUCK_HEADER.test(grid.header[column]!) || !short(read.items) || !short(label)) return [];
  const corner = readItems(grid.header[0]!, []);
  const system = systemIn(label) ?? systemIn(corner);
  const number = system && (numberSign(label, corner) ?? numberSign(head, corner));
  const size = sizeOf(read.items, numberSign(head, corner) === undefined ? head : afterNumber(head));
  if (!system || !number || !size) return [];
  const span = rowSpan(row);
  return [
    {
      kind: 'direction',
      construction: 'table-row',
      span,
      focus: sourceSpan(read.passage, { start: 0, end: read.passage.text.length }),
      system: system === 'usp-zeros' ? 'usp' : system,
      number: number === 1 ? 'up' : 'down',
      axis: size.axis,
      size: size.sign === 1 ? 'up' : 'down',
      ...(system === 'usp-zeros' ? { zeros: true } : {}),
    },
  ];
}

const short = (items: readonly Item[]): boolean =>
  items.length > 0 &&
  items.length <= LONGEST &&
  !items.some(
    (item) => item.kind === 'size' || NEGATIONS.has(item.word) || /^(?:or|and|\/|\?)$/.test(item.word),
  );

/** The one scale a label names. "USP" alone runs both ways. */
function systemIn(items: readonly Item[]) {
  const found = new Set(items.flatMap((item) => item.system ?? []));
  const [only] = [...found];
  return found.size === 1 && only !== 'usp' ? only : undefined;
}

/** "lower number", "goes up", "more", "Bigger number means": which way the number goes. */
function numberSign(items: readonly Item[], corner: readonly Item[]): Sign | undefined {
  const counted = items.some((item) => item.axisNoun?.axis === 'number' || item.system !== undefined);
  const word = measuredWords(items).find((m) => m.axis === 'number' && m.degree !== 'superlative');
  if (word && !word.idiom) return word.sign;
  const generic = items.find(
    (item) => item.magnitude && /^(?:bigger|larger|greater|smaller|higher|lower)$/.test(item.word),
  );
  if (generic && (counted || corner.some((item) => item.axisNoun?.axis === 'number' || item.system)))
    return generic.magnitude!.sign;
  const change = items.find((item) => UP.has(item.word) || DOWN.has(item.word));
  if (!change || !(counted || corner.some((item) => item.system))) return undefined;
  if (items.some((item) => item.axisNoun && item.axisNoun.axis !== 'number' && item.start < change.start))
    return undefined;
  return UP.has(change.word) ? 1 : -1;
}

/** "wider", or "falls" under a header that names what falls. */
function sizeOf(items: readonly Item[], head: readonly Item[]): { axis: Axis; sign: Sign } | undefined {
  const words = measuredWords(items).filter((m) => m.degree !== 'superlative');
  const word = words[0];
  const noun = head.find((item) => item.axisNoun && item.axisNoun.axis !== 'number')?.axisNoun;
  if (words.length === 1 && word && !word.idiom && decidable(word.axis))
    return { axis: word.axis, sign: word.sign };
  const change = items.find((item) => UP.has(item.word) || DOWN.has(item.word));
  if (words.length > 0 || !change || !noun) return undefined;
  return { axis: noun.axis, sign: ((UP.has(change.word) ? 1 : -1) * noun.sign) as Sign };
}

/** "As the number rises the diameter": what follows the change of the number. */
function afterNumber(head: readonly Item[]): readonly Item[] {
  const change = head.findIndex((item) => UP.has(item.word) || DOWN.has(item.word) || item.magnitude);
  return head.slice(change + 1);
}
