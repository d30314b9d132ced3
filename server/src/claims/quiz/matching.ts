/** Matching exercises: numbered things, lettered things, and a key that joins them: "1-C, 2-A, 3-B". */
import type { Note, Span } from '../../notes/model.ts';
import type { System } from '../../sizes/model.ts';
import type { Claim, Operand } from '../model.ts';
import type { Item } from '../text/items.ts';
import { lineAt } from '../text/lines.ts';
import type { Read } from '../text/scenes.ts';
import type { Answers } from './answers.ts';
import { type Desk, type KeyReading, mark, numberSize, onKey, readAs, sceneOf, spanOf } from './desk.ts';
import { besideIn, keyInRow, labelledIn } from './in-a-row.ts';
import { linesOf } from './lines.ts';
import { LETTERS_FROM, letterNumber, markerNumber, numberIn, type Piece, piece, placeOf } from './piece.ts';

/** Fewest things on each side, and longest of them in items. */
const FEWEST = 3;
const LONGEST = 8;
/** Passages between the last number and the first letter. */
const APART = 2;

interface Thing {
  /** From 1, or from `LETTERS_FROM`. */
  readonly label: number;
  readonly body: Piece;
}

/** What the key says, and the passages of the numbered things: no questions of their own. */
export interface Matched {
  readonly readings: readonly KeyReading[];
  readonly numbers: ReadonlySet<number>;
}

/** `asking`: passages of questions with choices. The letters below the last number look like choices of its own. */
export function matched(desk: Desk, answers: Answers, asking: ReadonlySet<number>): Matched {
  const things = [
    ...runsIn(desk.reads.filter(({ passage }) => !passage.cell).flatMap((read) => listed(desk.note, read))),
    ...desk.note.tables.flatMap(({ rows }) => runsIn(byColumn(rows, desk.reads))),
  ];
  const found = things.flatMap((numbers, i) => {
    const letters = [...things.slice(i + 1, i + 3), ...things.slice(Math.max(0, i - 1), i)].find(
      (run) => run[0]!.label === LETTERS_FROM,
    );
    const free =
      letters?.[0]?.body.read === numbers[0]!.body.read ||
      !numbers.slice(0, -1).some(({ body }) => asking.has(body.read.passage.index));
    return numbers[0]!.label === 1 && letters && free && together(numbers, letters)
      ? [{ numbers, letters }]
      : [];
  });
  return {
    readings: found.flatMap(({ numbers, letters }) =>
      numbers.flatMap((thing) => joinedBy(thing, letters, desk, answers)),
    ),
    numbers: new Set(found.flatMap(({ numbers }) => numbers.map(({ body }) => body.read.passage.index))),
  };
}

/** What stands behind a number or a letter at the head of each line. */
function listed(note: Note, read: Read): Thing[] {
  return linesOf(read).flatMap((line, i) => {
    const row = labelledIn(read, line, i === 0 ? markerNumber(note, read) : undefined);
    if (row.length > 0) return row.flatMap(({ label, span }) => thingAt(read, span, label, 0));
    const head = read.passage.text.slice(line.start, line.start + 14);
    const written = numberIn(head) ?? letterNumber(head);
    const label = written ?? (i === 0 ? markerNumber(note, read) : undefined);
    if (label === undefined) return [];
    const beside = besideIn(read, line);
    const own = thingAt(
      read,
      { ...line, end: beside?.span.start ?? line.end },
      label,
      written === undefined ? 0 : 1,
    );
    return beside ? [...own, ...thingAt(read, beside.span, beside.label, 1)] : own;
  });
}

function thingAt(read: Read, line: Span, label: number, written: number): Thing[] {
  const text = read.passage.text.slice(line.start, line.end);
  const lead = written ? (/^\W*\w+[).:]?\s*/.exec(text)?.[0].length ?? 0) : 0;
  const body = piece(read, line.start + lead, line.end);
  const fits = body.items.length > 0 && body.items.length <= LONGEST && !text.includes('?');
  return fits ? [{ label, body }] : [];
}

/** The cells of a table column by column: "1. 12 Fr", or "1" with the thing in the cell beside it. */
function byColumn(rows: Note['tables'][number]['rows'], reads: readonly Read[]): Thing[] {
  return (rows[0] ?? []).flatMap((_, column) =>
    rows.slice(1).flatMap((row) => {
      const [cell, beside] = [reads[row[column] ?? -1], reads[row[column + 1] ?? -1]];
      const text = cell?.passage.text ?? '';
      const whole = (read: Read): Span => ({ start: 0, end: read.passage.text.length });
      const label = numberIn(text) ?? letterNumber(text);
      if (cell && label !== undefined) return thingAt(cell, whole(cell), label, 1);
      const alone = /^\W*(?:(\d{1,2})|([a-h]))\W*$/i.exec(text);
      if (!alone || !beside) return [];
      return thingAt(
        beside,
        whole(beside),
        alone[1] ? Number(alone[1]) : LETTERS_FROM + placeOf(alone[2]!),
        0,
      );
    }),
  );
}

/** Things counted from the first label on, one by one. */
function runsIn(things: readonly Thing[]): Thing[][] {
  const runs: Thing[][] = [];
  for (const thing of things) {
    // Numbers and letters may stand side by side on one line.
    const open = runs.slice(-2).findLast((run) => run.at(-1)!.label === thing.label - 1);
    if (thing.label === 1 || thing.label === LETTERS_FROM) runs.push([thing]);
    else if (open) open.push(thing);
  }
  return runs.filter((run) => run.length >= FEWEST);
}

const together = (numbers: readonly Thing[], letters: readonly Thing[]): boolean => {
  const from = numbers.at(-1)!.body.read.passage;
  const to = letters[0]!.body.read.passage;
  const apart = to.index - from.index;
  const beside = numbers[0]!.body.read === letters[0]!.body.read;
  const near = from.cell ? from.cell.table === to.cell?.table : (apart >= 0 || beside) && apart <= APART;
  return near && from.path.join() === to.path.join();
};

/** "1 a) 14 b) 16": the parts of a question of another section, no letters for the numbers of this one. */
const parted = ({ read, span }: Piece): boolean =>
  /^\) *(?:\d|[^\n]{1,40}[a-f]\) )/.test(read.passage.text.slice(span.end, span.end + 48));

/** The numbered thing and the one that the key gives it, read as one statement. */
function joinedBy(thing: Thing, letters: readonly Thing[], desk: Desk, answers: Answers): KeyReading[] {
  const entry = entryFor(thing, letters, answers);
  const other = entry && /^[a-h]$/.test(entry.answer) ? letters[placeOf(entry.answer)] : undefined;
  const scene = sceneOf(desk, thing.body);
  if (!entry || !other || !scene || parted(entry.at)) return [];
  if (entry.at.read.passage.index < thing.body.read.passage.index) return [];
  const claims = readAs(scene, [...withUnit(thing.body), mark(':'), ...withUnit(other.body)]).filter(
    ({ kind }) => KINDS.has(kind),
  );
  return claims.slice(0, 1).map((claim) => ({
    claim: onKey(untouched(claim), spanOf(entry.at), spanOf(thing.body)),
    stance: 'asserted',
  }));
}

/** "mm: (A) 0.97 (B) 0.36": bare numbers of a row take the unit that heads it. */
function withUnit(body: Piece): readonly Item[] {
  const { read, span, items } = body;
  const { start } = lineAt(read.passage, span.start);
  const unit = HEADED.exec(
    read.passage.text.slice(start, Math.min(span.start, start + 40)),
  )?.[1]?.toLowerCase();
  const system = unit && UNITS.find(([pattern]) => pattern.test(unit))?.[1];
  const mention = system && numberSize(body, system);
  return mention && items[0] ? [{ ...items[0], kind: 'size', mention }] : items;
}
const HEADED =
  /^\W{0,3}(?:in |the |sizes in |outer |diameters? (?:in )?)*(mm|millimet(?:re|er)s?|inch(?:es)?|french|fr|ch|gauge|metric)\b[^\n(]{0,12}:/i;
const UNITS: readonly (readonly [RegExp, System])[] = [
  [/^mm|^milli/, 'millimetre'],
  [/^metric/, 'ep-metric'],
  [/^in/, 'inch'],
  [/^(?:fr|ch)/, 'french'],
  [/^g/, 'needle-gauge'],
];

/** In the answer section; else in the key that closes the line of the letters. */
function entryFor({ label, body }: Thing, letters: readonly Thing[], answers: Answers) {
  const { read } = letters.at(-1)!.body;
  const own = keyInRow(read).get(label);
  return own
    ? { answer: own.answer, at: piece(read, own.span.start, own.span.end) }
    : answers.find(label, body.read);
}

/** A thing on offer is right for another number: no edit is offered in it. */
function untouched(claim: Claim): Claim {
  if (claim.kind !== 'equivalence') return claim;
  const bare = (side: Operand): Operand => ({
    ...side,
    mentions: side.mentions.map((mention) => ({
      ...mention,
      source: { start: mention.source.start, end: mention.source.start },
    })),
  });
  return { ...claim, left: bare(claim.left), right: bare(claim.right) };
}

const KINDS: ReadonlySet<Claim['kind']> = new Set(['equivalence', 'colour', 'property', 'category']);
