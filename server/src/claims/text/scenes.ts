/** Builds the scenes of a note: every sentence of every passage with what stands around it. Linear in the note. */
import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { Note, Passage } from '../../notes/model.ts';
import type { System } from '../../sizes/model.ts';
import { splitErratum } from '../corrections/amended.ts';
import { ofErrata } from '../corrections/errata.ts';
import { type Answers, answersOf } from '../quiz/answers.ts';
import { labelNumber, markerNumber, type Piece, rowNumber } from '../quiz/piece.ts';
import { OPTION_LEAD } from '../words/frames.ts';
import { settleAlternatives } from './alternatives.ts';
import { answersItself } from './answered-list.ts';
import type { Item } from './items.ts';
import { lineAt } from './lines.ts';
import { otherListNearer } from './list-order.ts';
import { boxed, pastKey } from './offering.ts';
import { placed } from './place.ts';
import { PassageRead, type Read, ROOM, Shelf } from './reads.ts';
import { forget } from './remember.ts';
import { keysIn, type Scene, wordsOf } from './scene.ts';
import type { Sentence } from './sentences.ts';
import { sizesNamed } from './sizes-named.ts';
import { inStruckColumn } from './struck-column.ts';
import { repliesInTalk } from './talk.ts';
import { isTruthItem, lineKeys, truthKey } from './truth-keys.ts';

export type { Read } from './reads.ts';

function readPassages(note: Note, mentions: readonly Mention[]): PassageRead[] {
  const byPassage = new Map<number, Mention[]>();
  for (const mention of mentions) {
    // Words that name no size stay words: the grammar reads them.
    if (mention.kind === 'ambiguous' && mention.notation === 'unsized') continue;
    const list = byPassage.get(mention.passage);
    if (list) list.push(mention);
    else byPassage.set(mention.passage, [mention]);
  }
  const shelf = new Shelf(note.text.length);
  return note.passages.map((passage) => {
    const own = (byPassage.get(passage.index) ?? []).sort((a, b) => a.span.start - b.span.start);
    return new PassageRead(passage, own, shelf);
  });
}

export interface Whole {
  readonly reads: readonly Read[];
  readonly scenes: Scenes;
  readonly answers: Answers;
}

/** The note read last: its statements and its named sizes are asked for one after the other. */
let last: { readonly note: Note; readonly mentions: readonly Mention[]; readonly whole: Whole } | undefined;

/** Passages and scenes of a note, read once for all who ask in a row. */
export function readWhole(note: Note, mentions: readonly Mention[]): Whole {
  if (last?.note !== note || last.mentions !== mentions) {
    const reads = readPassages(note, mentions);
    const answers = answersOf(note, reads);
    const scenes = new Scenes(reads, { note, reads, answers, named: sizesNamed(mentions) });
    last = { note, mentions, whole: { reads, scenes, answers } };
  }
  return last.whole;
}

/** The scenes of a note in order, and the first of each passage. Made when asked for, and kept as long as their passage is. */
export class Scenes implements Iterable<Scene> {
  readonly #reads: readonly PassageRead[];
  readonly #around: Around;

  constructor(reads: readonly PassageRead[], around: Around) {
    this.#reads = reads;
    this.#around = around;
  }

  *[Symbol.iterator](): Generator<Scene> {
    for (const read of this.#reads) yield* this.#of(read);
  }

  /** Those of one passage. */
  in(passage: number): Iterable<Scene> {
    return this.#of(this.#reads[passage]!);
  }

  /** The first scene of a passage. */
  get({ index }: Passage): Scene | undefined {
    const read = this.#reads[index]!;
    const { made } = read;
    made.first ??= { scene: made.scenes?.[0] ?? scenesOfPassage(read, this.#around).next().value };
    return made.first.scene;
  }

  #of(read: PassageRead): Iterable<Scene> {
    if (read.sentences.length > ROOM.sentences) return passing(read, this.#around);
    const { made } = read;
    made.scenes ??= [...scenesOfPassage(read, this.#around)];
    return made.scenes;
  }
}

/** Sentences behind the one that is read which may still be asked about. */
const BEHIND = 8;

/** The scenes of a long passage, one at a time. What was found out about a sentence is let go of when it lies behind. */
function* passing(read: Read, around: Around): Generator<Scene> {
  const { sentences } = read;
  let done = 0;
  for (const scene of scenesOfPassage(read, around)) {
    yield scene;
    const past = (at: number): boolean => (sentences[at]?.end ?? Infinity) <= scene.sentence.start;
    for (; past(done + BEHIND); done++) {
      forget(sentences[done]!);
      forget(sentences[done]!.items);
    }
  }
}

/** What a passage is read in. */
interface Around {
  readonly note: Note;
  readonly reads: readonly Read[];
  readonly answers: Answers;
  readonly named: Scene['named'];
}

function* scenesOfPassage(read: Read, { note, reads, answers, named }: Around): Generator<Scene, undefined> {
  const { passage, sentences } = read;
  if (!speaks(read)) return;
  const around = surroundings(reads, read);
  const headings = passage.path.map((index) => note.passages[index]!.text.toLowerCase());
  const next = nextSentence(reads, read);
  const reported = inStruckColumn(note, reads, read) || remarked(passage.text);
  // Most sentences claim nothing, and nobody asks of them what takes long to find out.
  const system = lazy(() => systemOf(reads, read, headings) ?? labelSystem(note, reads, read));
  const option = lazy(
    () =>
      !repliesInTalk(note, passage) &&
      isOption(read, around.lead, headingAbove(note, reads, read), inTest(note, reads, read)) &&
      !answersItself(note, passage, questionOver(around.lead, headingAbove(note, reads, read))),
  );
  const truth = lazy(() => isTruthItem(read, around.lead, headings));
  const key = lazy(() => truthKey(note, reads, read, truth()));
  // Below a heading of answers "False: the 18 G is wider" gives the key and then what holds.
  const lined = lazy(() =>
    headings.some((heading) => GIVES_ANSWERS.test(heading)) && /\b[Ff]alse: [a-z]/.test(passage.text)
      ? () => ({})
      : lineKeys(read),
  );
  const errata = lazy(() => ofErrata(passage.text, headings));
  for (const [i, whole] of sentences.entries()) {
    const { sentence: settled, open } = settleAlternatives(whole, passage);
    const parts = splitErratum(settled, sentences[i - 1], sentences[i + 1], errata());
    for (const { sentence, erratum, built } of parts) {
      const keys = lazy(() => ({
        ...(truth() || key() ? { truthItem: true } : {}),
        ...(key() ? { key: key() } : {}),
        ...lined()(sentence.start),
        ...keyedElsewhere(note, read, sentence, answers),
      }));
      const given = {
        note,
        passage,
        sentence,
        items: sentence.items,
        named,
        before: sentences.slice(Math.max(0, i - 3), i),
        after: sentences.slice(i + 1, i + 3),
        context: around.context,
        headings,
        quotes: built ? [] : read.quotes,
        erratum,
        reported,
        next,
        lead: around.lead,
      };
      const chosen = () =>
        (option() && !pastKey(passage.text, sentence.start)) ||
        boxed(passage.text, sentence.start) ||
        open ||
        leftEmpty(reads, read) ||
        unfilled(passage.text, sentence) ||
        offered(passage.text, sentence);
      yield placed(given, { system, option: chosen, keys });
    }
  }
}

const GIVES_ANSWERS = /^\W*(?:answers?|solutions|key)\b/;

/** A value worked out when it is first asked for. */
function lazy<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** A sentence with a gap says nothing until it is filled; one with several keys, "… (F), … (T)", says a different thing each. */
const unfilled = (text: string, { start, end }: Sentence): boolean =>
  end - start < 600 && /_{3,}|\.{5,}|\((?:T|F)\).+\((?:T|F)\)/.test(text.slice(start, end));

/** "Which would you not ask for? a) 2.5-0 b) metric 2.5 c) 0": choices in a row behind their question. */
const offered = (text: string, { start, end }: Sentence): boolean =>
  end - start < 400 &&
  ((/\?\W*$/.test(text.slice(Math.max(0, start - 6), start)) &&
    /^\W*a\W{1,3}\S.*\sb\W{1,3}\S.*\sc\W{1,3}\S/i.test(text.slice(start, end))) ||
    LETTERED_ROW.test(text.slice(start, end)));

/** "The hub is\na green / b pink / c blue": choices below what they complete, with strokes between them. */
const LETTERED_ROW = /\n\(?a[).:]? \S[^\n/|]{0,60} [/|] \(?b[).:]? \S/i;

/** "3. True. A 14 G …" carries its key; "3. True or false? …" asks for one. */
const KEYED_AT_HEAD = /^\W*(?:\d{1,2}[.)]\s*)?(?:true|false)\b(?!\s*(?:or|\/|,)\s*false\b|\?)/i;

/** A numbered statement that an answer section keys true or false. */
function keyedElsewhere(
  note: Note,
  read: Read,
  sentence: Sentence,
  answers: Answers,
): Pick<Scene, 'truthItem' | 'key' | 'keyAt'> {
  if (answers.empty) return {};
  const text = read.passage.text;
  const line = lineAt(read.passage, sentence.start).start;
  const head = text.slice(line, line + 14);
  const number =
    labelNumber(head) ?? (line === 0 ? (markerNumber(note, read) ?? rowNumber(note, read)) : undefined);
  const entry = number === undefined ? undefined : answers.find(number, read);
  // Beside a statement that offers no choices an F is not the sixth of them.
  if (KEYED_AT_HEAD.test(text.slice(line, line + 30))) return {};
  if (entry && otherListNearer(note, read.passage, number ?? 0, entry.at.read.passage.index)) return {};
  if (entry && ofOtherSizes(entry.body, sentence)) return { truthItem: true };
  const key = entry && verdictOf(entry.answer, text);
  const listed = number !== undefined && answers.judges;
  if (!entry) return listed && read.passage.list?.ordered ? { truthItem: true } : {};
  if ((key !== 'true' && key !== 'false') || entry.at.read === read) return {};
  // A list further down counts anew from 1, unless a key right before it announces it.
  const ahead = read.passage.index - entry.at.read.passage.index;
  const announced =
    /^\W*(?:answer )?key\b/i.test(entry.at.read.passage.text) &&
    ahead - (read.passage.list?.index ?? 0) === 1;
  if (ahead > 0 && !announced) return {};
  return { truthItem: true, key, keyAt: sourceSpan(entry.at.read.passage, entry.at.span) };
}

/** The letter or word of a key; "Right." where the statement is to be called right or wrong. */
function verdictOf(answer: string, text: string): string {
  if (answer === 'f') return 'false';
  if (!TO_JUDGE.test(text)) return answer;
  return /^(?:right|correct|yes|agreed?)(?![a-z])/.test(answer)
    ? 'true'
    : /^(?:wrong|incorrect|not (?:right|correct)|no|disagreed?)(?![a-z])/.test(answer)
      ? 'false'
      : answer;
}
const TO_JUDGE =
  /\b(?:right|correct)\s?(?:\/|or)\s?(?:wrong|incorrect|not)\b|\b(?:whether|if) (?:this|it|that) is (?:right|true|correct)\b|\bagree\s?(?:\/|or)\s?(?:disagree|not)\b/i;

/** A key whose reason names two sizes, neither of them the statement's, is the key of another list. */
function ofOtherSizes(body: Piece | undefined, { items }: Sentence): boolean {
  const given = body && body.items.length < 60 ? keysIn(body.items) : [];
  const own = new Set(given.length > 1 ? keysIn(items) : []);
  return own.size > 0 && !given.some((size) => own.has(size));
}

/** "The 14 is orange [yes] and the 24 is pink [no: yellow].": somebody's text with the remarks of who read it. */
const remarked = (text: string): boolean =>
  text.includes('[') &&
  /\w \[(?:yes|no|right|wrong|correct|true|false|not so)\b[^\]]{0,100}\](?!\()/i.test(text);

/** A passage without sizes, systems, colours, points or materials claims nothing of ours. */
const speaks = (read: Read): boolean =>
  read.items.some((item) => item.kind === 'word' || item.kind === 'size');

function surroundings(reads: readonly Read[], read: Read): { context: Sentence[]; lead?: Sentence } {
  const { passage } = read;
  const context: Sentence[] = [];
  const leadIndex = passage.list?.leadIn ?? (passage.cell ? undefined : passage.list?.parent);
  const lead = leadIndex === undefined ? undefined : reads[leadIndex]?.sentences.at(-1);
  if (lead && leadIndex !== undefined) context.push(...reads[leadIndex]!.sentences.slice(-3));
  const previous = reads[passage.index - 1];
  if (previous && flows(previous.passage, passage)) context.push(...previous.sentences.slice(-2));
  return { context, ...(lead ? { lead } : {}) };
}

/** Prose flows on from one paragraph or list item to the next; not out of headings, tables or pictures. */
function flows(from: Passage, to: Passage): boolean {
  const prose = (passage: Passage) => passage.kind === 'paragraph' || passage.kind === 'caption';
  if (!prose(from) || !prose(to)) return false;
  return from.list?.list === to.list?.list || to.list === undefined || from.list === undefined;
}

function nextSentence(reads: readonly Read[], read: Read): Sentence | undefined {
  const next = reads[read.passage.index + 1];
  return next && flows(read.passage, next.passage) ? next.sentences[0] : undefined;
}

/** The one system that the sizes of this passage, else its headings, else its lead-in speak of. */
function systemOf(reads: readonly Read[], read: Read, headings: readonly string[]): System | undefined {
  if (apart(read)) return undefined;
  const own = systemsOf(read.items);
  if (own.size > 0) return own.size === 1 ? [...own][0] : undefined;
  for (const heading of [...headings].reverse()) {
    const named = HEADING_SYSTEMS.filter(([pattern]) => pattern.test(heading));
    if (named.length > 0) return named.length === 1 && !SEVERAL.test(heading) ? named[0]![1] : undefined;
  }
  const near = new Set<System>();
  for (let i = read.passage.index - 1; i >= 0 && i >= read.passage.index - 3; i--)
    for (const system of systemsOf(reads[i]!.items)) near.add(system);
  return near.size === 1 ? [...near][0] : undefined;
}

/** "URINE. 12 white …": a paragraph with a title of its own leaves what was spoken of above. */
const apart = ({ passage, items }: Read): boolean =>
  LABELLED.test(passage.text.slice(0, 24)) &&
  !items.slice(0, 3).some((item) => item.deviceNoun || item.system) &&
  !items.some((item) => (item.system && item.word.length > 2) || (item.mention && /[a-z]/i.test(item.word)));
const LABELLED = /^\W{0,3}[A-Z]{3,}(?: [A-Z]+)?[.:]/;

/** In a cell, the scale that the label of its row names. */
function labelSystem(note: Note, reads: readonly Read[], { passage }: Read): System | undefined {
  const { cell } = passage;
  if (!cell || cell.column === 0) return undefined;
  const label = reads[note.tables[cell.table]?.rows[cell.row]?.[0] ?? -1];
  const found = label ? systemsOf(label.items) : new Set<System>();
  return found.size === 1 ? [...found][0] : undefined;
}

/** "Needles, catheters and threads": more than one scale. */
const SEVERAL =
  /\bneedles?\b.*\b(?:catheters?|sutures?|threads?|drains?|tubes?)\b|\b(?:catheters?|sutures?|threads?|drains?|tubes?)\b.*\bneedles?\b/;
const HEADING_SYSTEMS: readonly (readonly [RegExp, System])[] = [
  [/\b(?:french|charri[eè]re|catheter sizes)\b/, 'french'],
  [/\b(?:gauges?|needles?|cannula[es]?|iv access)\b/, 'needle-gauge'],
];

function systemsOf(items: readonly Item[]): Set<System> {
  const found = new Set<System>();
  for (const item of items)
    for (const size of item.mention?.sizes ?? [])
      if (size.system !== 'millimetre' && size.system !== 'inch') found.add(size.system);
  for (const item of items)
    if (item.system && item.system !== 'usp-zeros' && item.word.length > 2) found.add(item.system);
  return found;
}

/** Text of the heading when this passage's list stands right below it. */
function headingAbove(note: Note, reads: readonly Read[], read: Read): string {
  const { passage } = read;
  if (!passage.list) return '';
  const first = reads[passage.index - passage.list.index - 1]?.passage;
  return first?.kind === 'heading' && first.index === passage.path.at(-1)
    ? (note.passages[first.index]?.text ?? '')
    : '';
}

const TEST_HEADING =
  /\b(?:quiz|questions?|tests?|exam|mcqs?|answers?|key|check yourself|revision|assessment|self-check|practice)\b/i;

const ANSWERS = /(?:^|\n)\W*(?:correct |right )?(?:answers?|key)\b.{0,12}[:=]/i;

/** Lettered lines are choices where something is asked; elsewhere they are an outline. */
function inTest(note: Note, reads: readonly Read[], read: Read): boolean {
  const { index, path } = read.passage;
  const near = [index, index - 1, index - 2].some((i) => asksFor(reads[i]?.passage.text ?? ''));
  const answered = [index, index + 1, index + 2].some((i) => ANSWERS.test(reads[i]?.passage.text ?? ''));
  const heads = path.map((heading) => note.passages[heading]!.text);
  return (
    near || answered || heads.some((text) => TEST_HEADING.test(text) || OPTION_LEAD.test(text.toLowerCase()))
  );
}

/** A question, or "Pick the right one." */
const asksFor = (text: string): boolean => text.includes('?') || CHOOSE.test(text);
const CHOOSE =
  /\b(?:choose|pick|mark|circle|tick|select) (?:one\b|the (?:right|correct|best|true|single best) (?:one|answer|option|statement|choice))/i;

/** A lettered or listed choice under a question that is not ticked. Keyed choices are read by `quiz` instead. */
function isOption(read: Read, lead: Sentence | undefined, heading: string, tested: boolean): boolean {
  const { list, text } = read.passage;
  if (CAPITALS.test(text) || BARE_ROW.test(text) || PUT_FORWARD.test(text)) return true;
  if (LINE_A.test(text) && LINE_B.test(text)) return tested;
  if (!list) return tested && (LETTERED.test(text) || /(?:^|[\n:?])[ \t]*A \S[^\n]*\sB \S/.test(text));
  if (list.checked === true) return false;
  if (list.checked === false && (SORTS_TRUTH.test(heading) || (lead && SORTS_TRUTH.test(wordsOf(lead)))))
    return true;
  if (LETTERED.test(text) && list.checked === undefined) return tested || asks(lead);
  if (list.checked === false && /\?\s*$/.test(heading)) return true;
  if (OPTION_LEAD.test(heading.toLowerCase()) || /\?\s*$/.test(heading)) return true;
  return asks(lead);
}

/** "Statement 2: …", "Assertion: … Reason: …": there to be judged. */
const PUT_FORWARD = /(?:^|\n)\W{0,3}(?:statement (?:\d|[a-d]|i{1,3})|assertion(?: \(a\))?)\W{0,3}:/i;

/** A statement whose box is empty where the box of one beside it is ticked: not the one that holds. */
function leftEmpty(reads: readonly Read[], { passage }: Read): boolean {
  if (passage.list?.checked !== false || !STATES.test(passage.text)) return false;
  const around = reads.slice(Math.max(0, passage.index - NEAR), passage.index + NEAR + 1);
  return around.some(
    ({ passage: { list, text } }) =>
      list?.list === passage.list?.list && list?.checked === true && STATES.test(text),
  );
}
/** What a statement in a box has. */
const STATES = /[=<>]|\b(?:is|are|equals|means|measures|than|runs?|flows?|goes)\b/;
const NEAR = 6;

/** "Mark the true ones": a box left empty asserts nothing. */
const SORTS_TRUTH = /\b(?:true|correct|right|hold|apply)\b/i;

const asks = (lead: Sentence | undefined): boolean =>
  lead !== undefined && (lead.close === '?' || OPTION_LEAD.test(wordsOf(lead)));

/** The question that a list stands under, if it is one. */
function questionOver(lead: Sentence | undefined, heading: string): string | undefined {
  if (/\?\s*$/.test(heading)) return heading;
  return lead?.close === '?' ? wordsOf(lead) : undefined;
}

/** "24 Fr measures: A 6 mm  B 8 mm  C 12 mm", or with a comma after each letter. */
const CAPITALS = /[:?][ \t]*A,? \S[^\n]*\sB,? \S[^\n]*\sC,? \S/;

/** "a 12 Ch  b 14 Ch  c 16 Ch": a line of choices, with bare letters. */
const BARE_ROW = /(?:^|\n)[ \t]*a \d\S*[^\n]{0,40}?[ \t]b \d[^\n]{0,40}?[ \t]c \d/;

const LETTERED = /^\(?[A-Ea-e][).]\s/;
/** Choices on lines of their own below their question, in one passage. */
const LINE_A = /\n[ \t]*\(?[Aa][).][ \t]/;
const LINE_B = /\n[ \t]*\(?[Bb][).][ \t]/;
