/** What the rows and columns of a table assert: equal sizes in one row, hub colours, materials, order down a column. */
import type { Note } from '../../notes/model.ts';
import { ofAnimals } from '../constructions/usual.ts';
import type { Claim } from '../model.ts';
import { isJudged } from '../text/judged-columns.ts';
import type { Read } from '../text/scenes.ts';
import { colours } from './colours.ts';
import { comparisons, picks, signed, verdicts } from './compared.ts';
import { directions } from './directions.ts';
import { fits } from './fits.ts';
import { flows } from './flows.ts';
import { type Grid, gridOf, type Row, sectioned, upright } from './grid.ts';
import { learned } from './learned.ts';
import { looseRows } from './loose.ts';
import { headedMaterials, properties } from './materials.ts';
import { columnOrders, rankings, rowOrders } from './orders.ts';
import { rowReferences } from './rows.ts';
import { usuals } from './usual.ts';
import { equivalences } from './values.ts';
import { writings } from './writings.ts';

export function readTables(note: Note, reads: readonly Read[]): Claim[] {
  return note.tables.flatMap((table) => {
    const set = gridOf(note, reads, table);
    if (matching(set) || TO_MEND.test(set.around) || isJudged(table, reads)) return [];
    const grid = upright(set);
    return [
      ...grid.rows.flatMap((row) => readRow(grid, row)),
      ...sectioned(set).flatMap((part) => part.rows.flatMap((row) => readRow(part, row))),
      ...columnOrders(set),
      ...rowOrders(set),
      ...rankings(set),
      ...flows(grid),
      ...writings(grid),
      ...(lettered(set) ? [] : [...learned(grid), ...looseRows(grid)]),
      ...(lettered(set) ? [] : rowReferences(grid)),
      ...directions(set),
    ];
  });
}

/** A table with faults put in for somebody to find. */
const TO_MEND =
  /\b(?:correct|mend|fix|repair|spot|find|hunt)\b.{0,20}\b(?:tables?|charts?|errors?|slips?|mistakes?|rows?)\b|\b(?:wrong|mixed up|faulty) (?:on purpose|table|chart)\b/;

/** "1. 18 G | a. blue", "1 green | A | 18 G": columns to be matched, so that nothing in a row belongs together. */
function matching({ rows, header, around }: Grid): boolean {
  if (SHUFFLED.test(around) || header.some((head) => SHUFFLED.test(head)) || TO_MATCH.test(around))
    return true;
  const columns = header.map((_, column) => column);
  if (columns.slice(1, -1).some((column) => labelled(rows, column, /^\W*([a-z])\W*$/i))) return true;
  if (columns.filter((column) => LABELS.some((label) => labelled(rows, column, label))).length > 1)
    return true;
  const numbered = columns.filter((column) => labelled(rows, column, /^\W*(\d{1,2})(?!\.?\d|-)/, '1'));
  const behind = (label: RegExp) => columns.find((column) => labelled(rows, column, label));
  const number = behind(/\((\d{1,2})\)\W*$/);
  if (number !== undefined && number !== (behind(/\(([a-z])\)\W*$/i) ?? number)) return true;
  return columns.some(
    (column) =>
      numbered.some((other) => other !== column) && labelled(rows, column, /^\W*([a-z])(?!\p{L})/iu),
  );
}
/** "iv. 10 Fr | S. 1.67 mm": a numeral or a letter with a mark behind it, counted on from row to row in two columns. */
const LABELS = [/^[^\w]*([ivx]{1,5})[.):]\s/i, /^[^\w]*([a-z])[.):]\s/i, /^[^\w]*(\d{1,2})[.):]\s/];
const SHUFFLED = /\b(?:shuffled|jumbled|scrambled|mixed[ -]up|face down|in no order)\b/;
const TO_MATCH =
  /(?:^\s*|[.:;!?]\s|\d[.)]\s)(?:please )?(?:match|join|connect|link|pair|draw (?:a )?lines?)\b(?!.*\b(?:key|answers?|solutions?|solved|matched|correctly)\b)/;

/** The cells of a column that hold anything open with labels that count on, from whichever is the first. */
function labelled(rows: Grid['rows'], column: number, label: RegExp, from?: string): boolean {
  const cells = rows.map((row) => row[column]?.passage.text.trim() ?? '').filter((text) => text !== '');
  const found = cells.slice(0, MANY_LABELS).map((text) => label.exec(text)?.[1]?.toLowerCase());
  const [first] = found;
  if (found.length < 2 || first === undefined || (from !== undefined && first !== from)) return false;
  const roman = ROMANS.indexOf(first);
  return (
    found.every((one, i) => one === counted(first, i)) ||
    (roman >= 0 && found.every((one, i) => one === ROMANS[roman + i]))
  );
}
const ROMANS = 'i ii iii iv v vi vii viii ix x xi xii'.split(' ');
const MANY_LABELS = 12;
const counted = (first: string, steps: number): string =>
  /\d/.test(first) ? `${Number(first) + steps}` : String.fromCharCode(first.charCodeAt(0) + steps);

/** Columns headed by letters hold choices, of which one is right, or squares of a game. */
const lettered = ({ header }: Grid): boolean =>
  header.filter((text) => /^(?:\(?[a-f][).]?|(?:option|choice) ?[a-f1-4])$/.test(text.trim())).length > 1 ||
  (header.length > 2 && header.every((text) => /^[a-z]$/.test(text.trim())));

/** What is usual for people says nothing in a note on animals. */
const people = (grid: Grid, row: Row): Claim[] => (ofAnimals(grid.note) ? [] : usuals(grid, row));

/** "| 20 G | green | ✗ |", and a row left empty under "Tick if right" where others are ticked. */
const untrue = ({ header, rows }: Grid, row: Row): boolean =>
  row.some((cell, c) => {
    const text = cell?.passage.text.trim() ?? '';
    if (/^(?:[✗✘❌]|F|[Ff]alse|[Ww]rong|[Uu]ntrue|[Ii]ncorrect|[Mm]yth|[Ff]iction)[.!]?$/u.test(text))
      return true;
    const ticks =
      /^\W*(?:(?:are|is|do|does) (?:they|it|these|this|the two|both) )?(?:really )?(?:the )?(?:tick|right|correct|true|fits?|ok|match(?:es)?|same|equals?|identical|alike)\b/.test(
        header[c] ?? '',
      );
    if (ticks && /^(?:no|not? the same|different|differ|≠)$/i.test(text)) return true;
    return (
      ticks && text === '' && rows.some((other) => /^[✓✔✅☑xX]$/u.test(other[c]?.passage.text.trim() ?? ''))
    );
  });

function readRow(grid: Grid, row: Row): Claim[] {
  return [
    ...(lettered(grid) || untrue(grid, row)
      ? []
      : [...equivalences(grid, row), ...colours(grid, row), ...people(grid, row)]),
    ...properties(grid, row),
    ...headedMaterials(grid, row),
    ...comparisons(row),
    ...picks(grid, row),
    ...signed(row),
    ...verdicts(row),
    ...fits(grid, row),
  ];
}
