/** Bare numbers in table cells: the header above or the label of the row names their system. */
import type { System } from '../../sizes/model.ts';
import { mentionOf } from '../build.ts';
import type { Mention } from '../model.ts';
import { headingsOf, type Labels, labelsOf, type Scene, type Surroundings } from '../scene.ts';
import { placeOf } from '../sense/place.ts';
import { systemOf } from '../sense/systems.ts';
import { ofOtherTrade } from '../sense/trade.ts';
import { size } from '../sense/verdict.ts';
import { HEADERS } from '../words/frames.ts';
import { isOther, measured } from './measures.ts';
import { unitAsked } from './replies.ts';
import { setting } from './rungs.ts';
import { suits } from './suits.ts';
import { bareCandidate } from './tokens.ts';

const NUMBER =
  '(?:[0-9]{0,2}[½¼¾⅛⅜⅝⅞]|(?:[0-9]{1,2}\\s)?[1-9][0-9]?/(?:2|4|8|16|32|64)(?![0-9])|[0-9]{1,3}(?:[.,][0-9]{1,5})?)';
const CELL = new RegExp(
  `^\\s*[~≈≥≤<>*_]?\\s?(${NUMBER}(?:(?:\\s?[-–—/,&]\\s?|\\s(?:to|or|and)\\s|,\\s(?:or|and)\\s)${NUMBER}){0,8})(?=\\s*$|\\s*[(;,*_]|\\s(?:for|or|if|in|with|and (?:above|below|up|over|larger|smaller))\\b)`,
  'i',
);

/** "20/16" is two gauges, no fraction. */
const WHOLE = /[0-9]{1,3}(?:[.,][0-9]{1,4})?/g;
const ANY = new RegExp(NUMBER, 'g');

/** "0 braided" under "Suture size". */
const THREAD_CELL = /^\s*([012])(?=\s[A-Za-z]{3})/;

/** Sizes of a cell that begins with bare numbers. */
export function tableNumbers(around: Surroundings, scene: Scene, own: readonly Mention[]): Mention[] {
  const cell = CELL.exec(scene.passage.text) ?? threadCell(around, scene);
  const system = cell && systemOfCell(around, scene);
  if (!cell || !system) return [];
  const offset = cell.index + cell[0].length - cell[1]!.length;
  const fractions = system === 'inch' || system === 'millimetre';
  const numbers = [...cell[1]!.matchAll(fractions ? ANY : WHOLE)];
  return numbers.flatMap((match) => {
    const span = { start: offset + match.index, end: offset + match.index + match[0].length };
    if (own.some((one) => one.span.start < span.end && one.span.end > span.start)) return [];
    const candidate = bareCandidate(scene.passage.text, span)!;
    const place = placeOf(around, scene, candidate);
    if (ofOtherTrade(place)) return [];
    return mentionOf(place, candidate, size(system, 'table-label', cell[0].trim())) ?? [];
  });
}

function threadCell(around: Surroundings, scene: Scene): RegExpExecArray | null {
  const found = THREAD_CELL.exec(scene.passage.text);
  return found && named(labelsOf(around, scene.passage).header) === 'usp' ? found : null;
}

/** Header first, then row label; a plain "Size" asks the devices named in the row. */
function systemOfCell(around: Surroundings, scene: Scene): System | undefined {
  const labels = labelsOf(around, scene.passage);
  const { header, row } = labels;
  if (header && isOther(around, header)) return undefined;
  const unit = unitUnder(around, scene);
  if (unit) return named(unit);
  // "12 Fr" at the head of a column names one size: the label of the row says what is measured.
  if (header && /\d/.test(header.passage.text)) return named(row) ?? named(header) ?? paired(row, scene);
  return (
    named(header) ??
    measured(around, header, scene) ??
    (SIZED_LABEL.test(row?.passage.text ?? '') ? undefined : named(row)) ??
    sized(around, labels, scene) ??
    paired(row, scene) ??
    reach(header, scene)
  );
}

/** "22 G", "7.0 mm", "chromic gut 3-0" at the head of a row is one size, and sets no system for the row. */
const SIZED_LABEL =
  /^\W*[0-9]{1,2}[\s-]?(?:G|gauge|Fr|French|Ch)\W*$|^\W*[0-9]{1,2}(?:\.[0-9]{1,3})?\s?mm\W*$|(?<![0-9])(?:[0-9]|1[0-2])[-/]0(?![0-9])/;

const UNIT_CELL =
  /^\W*(?:(?:tol(?:erance)?s?\b\.?\s?(?:mm|cm|in|inch(?:es)?)?(?:\s\((?:mm|cm|in)\))?)|mm|cm|in|inch(?:es)?|fr(?:ench)?|ch|g|ga|gauge|usp|metric|colou?r|name|type|device|material)?\W*$/i;

/** A first row of units below the header: "| Catheter | Outside |" over "| Fr | mm |". */
function unitUnder(around: Surroundings, scene: Scene): Scene | undefined {
  const { cell } = scene.passage;
  const units = cell && cell.row > 1 ? around.note.tables[cell.table]?.rows[1] : undefined;
  const own = units && around.scenes[units[cell!.column] ?? -1];
  const text = (index: number) => around.scenes[index]?.passage.text ?? '';
  if (!own || own.passage.text.trim() === '' || !UNIT_CELL.test(own.passage.text)) return undefined;
  return units.slice(0, WIDEST).every((index) => UNIT_CELL.test(text(index))) ? own : undefined;
}
const WIDEST = 12;

function named(label: Scene | undefined): System | undefined {
  const text = label?.passage.text ?? '';
  if (
    text.length > 60 ||
    /\b(?:depth|distance|area|days?|mL|kg|age|weight|flow|rate|price|cost|cm at)\b|[²³]/i.test(text)
  )
    return undefined;
  // "Which French is 5 mm?": what is asked for, not what it is asked of.
  return (
    (text.includes('?') ? unitAsked(text) : undefined) ??
    HEADERS.find(([, pattern]) => pattern.test(text))?.[0]
  );
}

/** "Size" under a heading or beside a device that settles the system. */
function sized(around: Surroundings, { header, row, corner }: Labels, scene: Scene): System | undefined {
  if (
    !header ||
    !/\b(?:sizes?|numbers?|no\.|tubes?)(?:$|\b)/i.test(header.passage.text) ||
    header.passage.text.length > 24 ||
    countsRows(around, header, scene)
  )
    return undefined;
  const device = [...header.devices, ...(row?.devices ?? []), ...(corner?.devices ?? [])].find(
    (hit) => hit.means !== 'catheter',
  );
  if (device) return systemOf(device.means);
  const table = scene.passage.cell && around.note.tables[scene.passage.cell.table];
  const over = [around.scenes[table?.leadIn ?? -1], ...headingsOf(around, scene.passage).slice(0, 2)];
  for (const one of over) {
    const systems = one ? setting(one) : [];
    if (systems.length > 0) return systems.length === 1 ? systems[0] : undefined;
  }
  return undefined;
}

/** "22/18" in a row of cannulas: either of two sizes of the thing that the row is about. */
function paired(row: Scene | undefined, scene: Scene): System | undefined {
  const numbers = /^\s*([0-9]{1,2})\s?\/\s?([0-9]{1,2})\s*$/.exec(scene.passage.text)?.slice(1).map(Number);
  const system = numbers && row ? setting(row) : [];
  const [only] = system;
  return system.length === 1 &&
    (only === 'needle-gauge' || only === 'french') &&
    numbers!.every((value) => suits(only, { value, decimals: 0, spoken: false }))
    ? only
    : undefined;
}

/** "No." beside a column that names its system, or with the row's own place below it, counts the rows. */
function countsRows(around: Surroundings, header: Scene, { passage }: Scene): boolean {
  if (!/^\W*(?:(?:s|sr|serial)\W*)?(?:no|number)\W*$/i.test(header.passage.text)) return false;
  const { cell } = passage;
  const heads = cell ? (around.note.tables[cell.table]?.rows[0] ?? []) : [];
  return (
    Number(passage.text) === cell?.row ||
    heads.slice(0, WIDEST).some((index) => GAUGED.has(named(around.scenes[index]) ?? ''))
  );
}
const GAUGED: ReadonlySet<string> = new Set(['needle-gauge', 'french', 'usp', 'ep-metric', 'tube-id']);

/** A fraction under "Length" is in inches. */
const reach = (header: Scene | undefined, scene: Scene): System | undefined =>
  header &&
  /\blength\b/i.test(header.passage.text) &&
  /[½¼¾⅛⅜⅝⅞]|[1357]\/(?:2|4|8|16|32)\b/.test(scene.passage.text)
    ? 'inch'
    : undefined;
