/** Answer sections: numbered entries under a heading or a word that says they are the key. */

import { matchesOf, sourceSpan } from '../../notes/index.ts';
import type { Note, Span } from '../../notes/model.ts';
import { finds } from '../../notes/patterns.ts';
import type { Read } from '../text/scenes.ts';
import { toldByNumber } from './by-number.ts';
import { bodiesIn } from './entries.ts';
import { readGrid } from './grids.ts';
import { linesOf } from './lines.ts';
import { labelledKeys } from './papers.ts';
import { LETTERS_FROM, markerNumber, type Piece, piece, placeOf, seriesNumber, written } from './piece.ts';
import { spokenIn, wordedIn } from './spoken.ts';
import { saidIn } from './verdicts.ts';

export interface Entry {
  /** Letter, roman numeral, "true" or "false", else the words of the answer, lower case. */
  readonly answer: string;
  readonly at: Piece;
  /** Everything the key says under this number, where its entries could be told apart. */
  readonly body?: Piece;
}

/** The entries of one answer section. */
interface Group {
  /** "section a", where the key says so. */
  readonly label: string;
  readonly from: number;
  /** Passage of its last line so far. */
  to: number;
  readonly entries: Map<number, Entry>;
}

/** Every answer section of a note. */
export class Answers {
  readonly #groups: readonly Group[];
  readonly #note: Note;

  constructor(note: Note, groups: readonly Group[]) {
    this.#note = note;
    this.#groups = groups.filter(({ entries }) => entries.size > 0);
  }

  get empty(): boolean {
    return this.#groups.length === 0;
  }

  /** The entry for a question: of the section with its label, else of the next key below it, else of one above. */
  find(number: number, { passage }: Read): Entry | undefined {
    const having = this.#groups.filter(({ entries }) => entries.has(number));
    const headings = passage.path.map((index) => this.#note.passages[index]!.text.toLowerCase());
    const own = having.find(
      ({ label }) => label !== '' && headings.some((heading) => labelOf(heading) === label),
    );
    const plain = having.filter(({ label }) => label === '');
    const below = plain.find(({ from }) => from >= passage.index);
    return (own ?? below ?? plain.at(-1))?.entries.get(number);
  }

  /** Where the numbers end that count the entries, in the source. */
  get labels(): ReadonlySet<number> {
    return new Set(
      this.#groups.flatMap(({ entries }) =>
        [...entries.values()].flatMap(({ body }) => labelEnd(body) ?? []),
      ),
    );
  }

  /** Where each entry stands in the source, in order. */
  get bodies(): readonly Span[] {
    const spans = this.#groups.flatMap(({ entries }) =>
      [...entries.values()].flatMap(({ body }) => (body ? [sourceSpan(body.read.passage, body.span)] : [])),
    );
    return spans.sort((a, b) => a.start - b.start);
  }

  /** Does some key call its statements true or false? */
  get judges(): boolean {
    return this.#groups.some(({ entries }) =>
      [...entries.values()].some(
        ({ answer, at }) => (answer === 'true' || answer === 'false') && at.span.end - at.span.start > 6,
      ),
    );
  }
}

/** Where the figure right in front of an entry ends. */
function labelEnd(body: Piece | undefined): number | undefined {
  if (!body) return undefined;
  const { passage } = body.read;
  const before = passage.text.slice(Math.max(0, body.span.start - 8), body.span.start);
  const figure = /\d([\s*_).:=>→–—-]*)$/.exec(before);
  if (!figure) return undefined;
  const end = body.span.start - figure[1]!.length;
  return sourceSpan(passage, { start: end - 1, end }).end;
}

const LABEL =
  /^\W*((?:section|part|set|paper|block|deck|page|round)\s+(?:\d{1,2}|one|two|three|four|five|six|[a-z])|[a-z](?=[.):]\W{0,4}(?:q ?)?\d{1,2}\W{0,4}(?:true|false|[a-ft]|i{1,3})\b))\b/i;
const labelOf = (text: string): string =>
  (LABEL.exec(text)?.[1] ?? '').toLowerCase().replace(/^.* (?=\S+$)/, '');

const KEY_WORDS =
  /\b(?:answers?|key|solutions|mark(?:ing)? (?:guide|scheme|sheet)|(?:marker|tutor|teacher|examiner|trainer|assessor)['’]?s['’]? (?:copy|sheet|side|version|notes))\b/i;
const OPENS_KEY =
  /^\W*(?:answer key|(?:(?:right|correct|model|my|our|all|the)(?: own)? )?answers|key|solutions|(?:gaps|marking)(?=\s*:)|(?:on the )?(?:back|reverse)(?: side)? of (?:the |this )?(?:card|sheet|page|paper|handout|slide|poster)(?=\W*:))|^\W*a\s?1\b(?=[\s\S]{0,300}\ba\s?2\b)/i;
const ENTRY =
  /(?:^|[\s,;|(/·])(?:(?:q(?:uestion)?|item|no\.|#)\s*)?(\d{1,2})\s*[-–—.:)=→>]*\s*(?:is\s+(?=\())?\(?(true|false|[A-FTa-ft]|i{1,3}|iv|vi?)\b(?=[\s,;.|)\-–—:(/·]|$)/gi;
/** "a) false", "b = T". */
const LETTERED_TRUTH = /(?:^|[\n\s,;])\(?([a-h])[).:]?\s*[-–—=:]*\s*(true|false|[TF](?=[\s,;.]|$))/g;

/** "Key to 1: option 3". */
const KEY_TO =
  /\b(?:key|answer) to (?:q(?:uestion)? ?)?(\d{1,2})\s*[:=—–-]\s*(?:option |choice )?([A-Fa-f1-6])\b/gi;
const OPENING =
  /^[\s*(]*(?:(?:option|choice|answer) \(?|is\s+\()?(true|false|[A-FTa-ft]|i{1,3}|iv|vi?)\b(?:[).:,;—–-]|\s|$)/i;

/** "2 is A, the 18": after the number "is" and a letter that is no article. */
const IS_LETTER =
  /^\s*(?:is|was|goes (?:to|with)|wants|gets|should be)\s+(?:option\s+|choice\s+|letter\s+)?\(?([A-F](?=\W|$)|[a-f](?=[).,;:]|\s*$)|true\b|false\b)/;

/** Question number → what the key says, section by section. */
export function answersOf(note: Note, reads: readonly Read[]): Answers {
  const groups: Group[] = [];
  let path = '';
  for (const read of reads) {
    const from = isKey(note, reads, read) ? 0 : keyLine(read);
    if (from === undefined) continue;
    const own = read.passage.path.join();
    for (const line of linesOf(read)) {
      if (line.start < from) continue;
      const label = labelOf(read.passage.text.slice(line.start, line.end));
      const open = groups.at(-1);
      const running = open && own === path && (label === '' || label === open.label) && flows(open, read);
      const group = running
        ? open
        : { label, from: read.passage.index, to: read.passage.index, entries: new Map<number, Entry>() };
      if (!running) groups.push(group);
      path = own;
      group.to = read.passage.index;
      readEntries(note, read, line, group.entries);
    }
  }
  groups.push(...inPassing(reads));
  for (const { rows } of note.tables) {
    const cells = rows.map((row) => row.map((index) => reads[index]));
    const entries = new Map<number, Entry>();
    readGrid(cells, (number, answer, at) => add(entries, number, answer, at));
    const from = cells[0]?.[0]?.passage.index ?? 0;
    groups.push({ label: '', from, to: from, entries });
  }
  const told = new Set(
    groups.flatMap(({ entries }) => [...entries.values()].map(({ at }) => at.read.passage.index)),
  );
  for (const key of labelledKeys(note, reads)) {
    const [first, last] = [key[0]!.body.read.passage.index, key.at(-1)!.body.read.passage.index];
    if (told.has(first) && told.has(last)) continue;
    const entries = new Map<number, Entry>();
    for (const { label, body } of key) readBody(entries, label, body);
    groups.push({ label: '', from: first, to: last, entries });
  }
  return new Answers(
    note,
    groups.sort((a, b) => a.from - b.from),
  );
}

/** Answers told by the number of their question, wherever they stand. */
const inPassing = (reads: readonly Read[]): Group[] =>
  reads.flatMap((read) => {
    const { index, kind, cell } = read.passage;
    const told = kind === 'heading' || cell ? [] : toldByNumber(read.passage);
    const entries = new Map<number, Entry>();
    for (const { number, start, end } of told) readBody(entries, number, piece(read, start, end));
    return entries.size > 0 ? [{ label: '', from: index, to: index, entries }] : [];
  });

/** A key further down under the same heading, after other text, is a key of its own when it counts anew. */
const flows = (open: Group, read: Read): boolean => read.passage.index - open.to <= 1;

function isKey(note: Note, reads: readonly Read[], read: Read): boolean {
  const { passage } = read;
  if (passage.kind === 'heading' || passage.cell) return false;
  const heading = note.passages[passage.path.at(-1) ?? -1]?.text ?? '';
  const lead = passage.list?.leadIn === undefined ? '' : (reads[passage.list.leadIn]?.passage.text ?? '');
  const before = reads[passage.index - 1]?.passage;
  return (
    finds(OPENS_KEY, passage.text) ||
    keyHeading(heading) ||
    keyHeading(above(note, passage)) ||
    finds(OPENS_KEY, lead) ||
    (before !== undefined && before.text.length < LONGEST_LEAD && leadsKey(before.text)) ||
    mostlyEntries(passage.text) ||
    counted(passage.text) ||
    (!passage.list?.ordered && saidIn(passage.text).length > 0) ||
    (!passage.list && (spokenIn(passage).length > 0 || wordedIn(passage).length > 0)) ||
    oneOfEntries(note, passage)
  );
}

/** "Answers: 1 the 18 G, 2 4 mm" right below the last question, on a line of its passage: where that line begins. */
function keyLine({ passage: { text, kind, cell } }: Read): number | undefined {
  if (kind === 'heading' || cell || !text.includes('\n')) return undefined;
  const match = KEY_ON_LINE.exec(text);
  return match ? match.index + 1 : undefined;
}
const KEY_ON_LINE =
  /\n(?=[\s*_(]*(?:(?:the|right|correct|model|all|our|my) )?(?:answer key|answers?|key|solutions?)\b[^\n\d:=–—-]{0,20}[:=–—-]?[\s*_]*(?:q(?:uestion)?\s*)?\(?(?:1|a|i)\b\s*[^\s\n])/i;

/** "i: C" alone in its paragraph, beside "ii: A" in the next. */
const oneOfEntries = ({ passages }: Note, { text, index }: Note['passages'][number]): boolean =>
  finds(ONE_ENTRY, text) &&
  [passages[index - 1], passages[index + 1]].some(
    (near) => near !== undefined && finds(ONE_ENTRY, near.text),
  );
const ONE_ENTRY =
  /^\W{0,3}(?:\d{1,2}|[a-z]\d{1,2}|[ivx]{1,4})\)?(?:\s*[:.=–—-]\s*|\s+)\(?(?:[A-F]|[a-f](?=\W*$)|true|false)\)?\W*$/i;

/** "Answers" alone, or "Marking key. Say nothing until they have finished." */
const KEY_LEAD =
  /^\W*(?:answer key|answers|key|solutions|marking key|key for the (?:marker|examiner)s?)(?:\W*$|[.:]\s)/i;
const LONGEST_LEAD = 100;
const leadsKey = (text: string): boolean =>
  finds(KEY_LEAD, text) || (finds(SAID_LEAD, text) && !OF_OTHERS.test(text));
/** "Answers, from the back page:", "Answers from me.", "My answers, in the same order (a copy is on the wall):". */
const SAID_LEAD =
  /^\W*(?:(?:the|my|our|model|right|correct|all) ){0,2}(?:answers|solutions)\b[^.:?!\d\n]{1,80}(?:[:.]|\):?)\W*$/i;
const OF_OTHERS =
  /\b(?:given|students?|candidates?|learners?|trainees?|patients?|relatives|parents|owners|famil(?:y|ies)|wrong|you|your|they|their|he|she|his|her|people|popular|common|often|typical|first|received|heard|seen|not|old|last year|will|are|were|is|was|can|should|must)\b/i;

/** The heading over the heading, "Marking guide" over "Section B"; the title of the note speaks of all of it. */
function above(note: Note, { path }: Note['passages'][number]): string {
  const index = path.at(-2) ?? -1;
  return index > 0 ? (note.passages[index]?.text ?? '') : '';
}

/** The heading asked about last: passages below one heading ask in a row. */
let known: { readonly heading: string; readonly ofKey: boolean } | undefined;

/** A heading that is about the key, not one that says where the key stands. */
function keyHeading(heading: string): boolean {
  if (known?.heading !== heading) known = { heading, ofKey: speaksOfKey(heading) };
  return known.ofKey;
}

function speaksOfKey(heading: string): boolean {
  const plain = heading.replace(/\([^)]*\)/g, ' ').trim();
  return (
    finds(KEY_WORDS, plain) &&
    plain.split(/\s+/).length <= 6 &&
    !/\b(?:with|and|plus|incl(?:uding|\.)?) (?:(?:the|my|our|all|short|full|model) )?(?:answers?|solutions|key)\b/i.test(
      plain,
    ) &&
    !/\b(?:below|bottom|follows?|at the end|(?:best|short|long|brief|written|free|open) answers?|choose|tick)\b/i.test(
      plain,
    )
  );
}

/** "1 = 22 G; 2 = 6 Fr; 3 = 2-0": nothing but entries, from the first on, each set off alike. */
function counted(text: string): boolean {
  if (!/^\W{0,4}1\s*[=→–—:-]/.test(text)) return false;
  const line = text.slice(0, LONGEST_COUNT);
  return bodiesIn(line, { start: 0, end: line.length }).length >= 3;
}
const LONGEST_COUNT = 400;

const LEAD = /^\W*[A-Z][a-z]+(?: [a-z]+){0,3}:\s+/;

/** "1b, 2a, 3d": two entries or more and little else. */
function mostlyEntries(whole: string): boolean {
  const text = whole.replace(LEAD, '');
  const numbered = /\d/.test(text) ? matchesOf(text, ENTRY) : [];
  if (numbered.length === 0 && !/true|false|[TF](?:[\s,;.]|$)/.test(text)) return false;
  const entries = numbered.length > 0 ? numbered : matchesOf(text, LETTERED_TRUTH);
  const share = entries.length >= 3 ? 0.5 : 0.8;
  return (
    entries.length >= 2 && entries.reduce((sum, match) => sum + match[0].length, 0) >= share * text.length
  );
}

function readEntries(note: Note, read: Read, line: Span, table: Map<number, Entry>): void {
  const text = read.passage.text.slice(0, line.end);
  const bodies = bodiesIn(text, line);
  const body = (number: number) => {
    const hit = bodies.find((one) => one.number === number);
    return hit && piece(read, hit.span.start, hit.span.end);
  };
  const from = (pattern: RegExp, take: (match: RegExpMatchArray) => [number, string]) => {
    for (const match of matchesOf(text.slice(line.start), pattern)) {
      const [number, answer] = take(match);
      const end = line.start + match.index! + match[0].length;
      add(table, number, answer, piece(read, end - answer.length, end), body(number));
    }
  };
  // "A2" is the answer to the second question, or the second of series A.
  const labelled = (number: number, at: number): number[] =>
    number < LETTERS_FROM && /(?:^|[^A-Za-z])A[1-9]\d?\W*$/.test(text.slice(Math.max(0, at - 10), at))
      ? [number, seriesNumber('A', `${number}`)]
      : [number];
  const first = bodies[0]?.span.start ?? line.end;
  for (const { number, span } of bodies)
    for (const label of labelled(number, span.start))
      readBody(table, label, piece(read, span.start, span.end));
  for (const { number, start, end } of wordedIn(read.passage))
    if (start >= line.start && start < line.end) readBody(table, number, piece(read, start, end));
  const said = saidIn(text.slice(line.start));
  for (const { number, answer, at, end } of said)
    add(table, number, answer, piece(read, line.start + at, line.start + end));
  for (const { number, answer, at, end } of spokenIn(read.passage))
    if (at >= line.start && at < line.end) add(table, number, answer, piece(read, at, end));
  if ((bodies.length < 2 || first === line.end) && said.length === 0)
    from(ENTRY, (match) => [Number(match[1]), match[2]!]);
  from(LETTERED_TRUTH, (match) => [LETTERS_FROM + placeOf(match[1]!), match[2]!]);
  from(KEY_TO, (match) => [Number(match[1]), match[2]!]);
  if (line.start > 0) return;
  const number = read.passage.list?.ordered ? markerNumber(note, read) : undefined;
  if (number === undefined) return;
  const opening = OPENING.exec(text);
  const whole = piece(read, 0, line.end);
  add(table, number, opening?.[1] ?? text, opening ? piece(read, 0, opening[0].length) : whole, whole);
}

/** What stands behind a label: a letter or a verdict in front, else all of it. */
function readBody(table: Map<number, Entry>, label: number, body: Piece): void {
  const own = written(body);
  const opening = OPENING.exec(own) ?? IS_LETTER.exec(own);
  const word = opening?.[1] ?? own.trim();
  const start = body.span.start + (opening ? opening[0].lastIndexOf(word) : 0);
  add(table, label, word, opening ? piece(body.read, start, start + word.length) : body, body);
}

function add(table: Map<number, Entry>, number: number, answer: string, at: Piece, body?: Piece): void {
  const lower = answer.toLowerCase();
  if (!table.has(number))
    table.set(number, { answer: lower === 't' ? 'true' : lower, at, ...(body ? { body } : {}) });
}

/** The answer cell of a question's row, under a header that says so. */
export function answerCell(note: Note, reads: readonly Read[], read: Read): Read | undefined {
  const { cell } = read.passage;
  const table = cell && note.tables[cell.table];
  if (!cell || !table || cell.row === 0) return undefined;
  const column = table.rows[0]!.findIndex(
    (index, c) => c !== cell.column && finds(KEY_WORDS, reads[index]!.passage.text),
  );
  return column < 0 ? undefined : reads[table.rows[cell.row]![column]!];
}
