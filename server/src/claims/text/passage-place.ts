/** What the place of a passage settles for its sentences: the scale spoken of, whether they are choices, their keys. */

import { sourceSpan } from '../../notes/index.ts';
import type { Note, Passage } from '../../notes/model.ts';
import { finds } from '../../notes/patterns.ts';
import type { System } from '../../sizes/model.ts';
import { type Part, splitErratum } from '../corrections/amended.ts';
import { ofErrata } from '../corrections/errata.ts';
import type { Answers } from '../quiz/answers.ts';
import { labelNumber, markerNumber, type Piece, rowNumber } from '../quiz/piece.ts';
import { OPTION_LEAD, TEST_HEADING } from '../words/frames.ts';
import { offersAlternatives, settleAlternatives } from './alternatives.ts';
import { answersItself } from './answered-list.ts';
import type { Item } from './items.ts';
import { judgedAgainst } from './judged-columns.ts';
import { lineAt } from './lines.ts';
import { otherListNearer } from './list-order.ts';
import { boxed, pastKey } from './offering.ts';
import { type Keys, placed, type Settles } from './place.ts';
import type { Read } from './reads.ts';
import { keysIn, type Scene, wordsOf } from './scene.ts';
import type { Sentence } from './sentences.ts';
import { inStruckColumn } from './struck-column.ts';
import { repliesInTalk } from './talk.ts';
import { isTruthItem, judgedInRow, lineKeys, truthKey } from './truth-keys.ts';

/** What a passage is read in. */
export interface Around {
  readonly note: Note;
  readonly reads: readonly Read[];
  readonly answers: Answers;
  readonly named: Scene['named'];
}

/**
 * Where the sentences of a passage stand. Most of them claim nothing, and nobody asks of those what takes long to find out:
 * it is found when it is asked for, and once for all of them.
 */
export class PassagePlace {
  readonly read: Read;
  readonly around: Around;
  readonly #headings: readonly string[];
  readonly #near: Surrounding;
  readonly #next: Sentence | undefined;
  readonly #reported: boolean;
  readonly #alternatives: boolean;
  #errata: boolean | undefined;
  #system: { readonly is: System | undefined } | undefined;
  #option: boolean | undefined;
  #keys: ((sentence: Sentence) => Keys) | undefined;

  constructor(read: Read, around: Around) {
    const { note, reads } = around;
    const { passage } = read;
    this.read = read;
    this.around = around;
    this.#near = surroundings(reads, read);
    this.#headings = passage.path.map((index) => note.passages[index]!.text.toLowerCase());
    this.#next = nextSentence(reads, read);
    this.#reported =
      inStruckColumn(note, reads, read) || judgedAgainst(note, reads, read) || remarked(passage.text);
    this.#alternatives = offersAlternatives(passage);
  }

  /** One for most sentences; several for one of an erratum. */
  scenesOf(i: number): Scene[] {
    const { sentences, passage } = this.read;
    const whole = sentences[i]!;
    const { sentence, open } = this.#alternatives
      ? settleAlternatives(whole, passage)
      : { sentence: whole, open: false };
    this.#errata ??= ofErrata(passage.text, this.#headings);
    const parts = splitErratum(sentence, sentences[i - 1], sentences[i + 1], this.#errata);
    return parts.map((part) => this.#sceneOf(part, i, open));
  }

  #sceneOf({ sentence, erratum, built }: Part, i: number, open: boolean): Scene {
    const { read, around } = this;
    const given = {
      note: around.note,
      passage: read.passage,
      sentence,
      items: sentence.items,
      named: around.named,
      before: read.sentences.slice(Math.max(0, i - 3), i),
      after: read.sentences.slice(i + 1, i + 3),
      context: this.#near.context,
      headings: this.#headings,
      quotes: built ? [] : read.quotes,
      erratum,
      reported: this.#reported,
      next: this.#next,
      lead: this.#near.lead,
    };
    return placed(given, new SentencePlace(this, sentence, open));
  }

  system(): System | undefined {
    const { note, reads } = this.around;
    this.#system ??= {
      is: systemOf(reads, this.read, this.#headings) ?? labelSystem(note, reads, this.read),
    };
    return this.#system.is;
  }

  /** Is it a choice of a question? */
  option(): boolean {
    this.#option ??= this.#isOption();
    return this.#option;
  }

  #isOption(): boolean {
    const { read } = this;
    const { note, reads } = this.around;
    const { lead } = this.#near;
    const heading = headingAbove(note, reads, read);
    return (
      !repliesInTalk(note, read.passage) &&
      isOption(read, lead, heading, inTest(note, reads, read)) &&
      !answersItself(note, read.passage, questionOver(lead, heading))
    );
  }

  keys(sentence: Sentence): Keys {
    this.#keys ??= this.#keysOf();
    return this.#keys(sentence);
  }

  #keysOf(): (sentence: Sentence) => Keys {
    const { read, around } = this;
    const headings = this.#headings;
    const truth = isTruthItem(read, this.#near.lead, headings);
    const key = truthKey(around.note, around.reads, read, truth);
    // Below a heading of answers "False: the 18 G is wider" gives the key and then what holds.
    const given =
      headings.some((heading) => GIVES_ANSWERS.test(heading)) && /\b[Ff]alse: [a-z]/.test(read.passage.text);
    const lined = given ? () => ({}) : lineKeys(read);
    const judged = judgedInRow(around.note, around.reads, read);
    return (sentence) => ({
      ...(truth || key ? { truthItem: true } : {}),
      ...(key ? { key } : {}),
      ...lined(sentence.start),
      ...(judged ? {} : keyedElsewhere(around.note, read, sentence, around.answers)),
    });
  }
}

/** Where one sentence of a passage stands. */
class SentencePlace implements Settles {
  readonly #place: PassagePlace;
  readonly #sentence: Sentence;
  /** Two words stand side by side, and nothing says which of them holds. */
  readonly #open: boolean;
  #keys: Keys | undefined;

  constructor(place: PassagePlace, sentence: Sentence, open: boolean) {
    this.#place = place;
    this.#sentence = sentence;
    this.#open = open;
  }

  system(): System | undefined {
    return this.#place.system();
  }

  option(): boolean {
    const { read, around } = this.#place;
    const { text } = read.passage;
    const { start } = this.#sentence;
    return (
      (this.#place.option() && !pastKey(text, start)) ||
      boxed(text, start) ||
      this.#open ||
      leftEmpty(around.reads, read) ||
      unfilled(text, this.#sentence) ||
      offered(text, this.#sentence)
    );
  }

  keys(): Keys {
    this.#keys ??= this.#place.keys(this.#sentence);
    return this.#keys;
  }
}

const GIVES_ANSWERS = /^\W*(?:answers?|solutions|key)\b/;

/** A sentence with a gap says nothing until it is filled; one with several keys, "… (F), … (T)", says a different thing each. */
const unfilled = (text: string, { start, end }: Sentence): boolean =>
  end - start < 600 && /_{3,}|\.{5,}|\((?:T|F)\).+\((?:T|F)\)/.test(text.slice(start, end));

/** "Which would you not ask for? a) 2.5-0 b) metric 2.5 c) 0": choices in a row behind their question. */
const offered = (text: string, { start, end }: Sentence): boolean =>
  end - start < 400 &&
  ((/\?\W*$/.test(text.slice(Math.max(0, start - 6), start)) &&
    /^\W*a\W{1,3}\S.*\sb\W{1,3}\S.*\sc\W{1,3}\S/i.test(text.slice(start, end))) ||
    finds(LETTERED_ROW, text.slice(start, end)));

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
export const speaks = (read: Read): boolean =>
  read.items.some((item) => item.kind === 'word' || item.kind === 'size');

/** Sentences that come before a passage, and the one that leads into its list. */
interface Surrounding {
  readonly context: readonly Sentence[];
  readonly lead?: Sentence;
}

function surroundings(reads: readonly Read[], read: Read): Surrounding {
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

const ANSWERS = /(?:^|\n)\W*(?:correct |right )?(?:answers?|key)\b.{0,12}[:=]/i;

/** Lettered lines are choices where something is asked; elsewhere they are an outline. */
function inTest(note: Note, reads: readonly Read[], read: Read): boolean {
  const { index, path } = read.passage;
  const near = [index, index - 1, index - 2].some((i) => asksFor(reads[i]?.passage.text ?? ''));
  const answered = [index, index + 1, index + 2].some((i) => finds(ANSWERS, reads[i]?.passage.text ?? ''));
  const heads = path.map((heading) => note.passages[heading]!.text);
  return (
    near || answered || heads.some((text) => TEST_HEADING.test(text) || OPTION_LEAD.test(text.toLowerCase()))
  );
}

/** A question, or "Pick the right one." */
const asksFor = (text: string): boolean => text.includes('?') || finds(CHOOSE, text);
const CHOOSE =
  /\b(?:choose|pick|mark|circle|tick|select) (?:one\b|the (?:right|correct|best|true|single best) (?:one|answer|option|statement|choice))/i;

/** A lettered or listed choice under a question that is not ticked. Keyed choices are read by `quiz` instead. */
function isOption(read: Read, lead: Sentence | undefined, heading: string, tested: boolean): boolean {
  const { list, text } = read.passage;
  if (CAPITALS.test(text) || BARE_ROW.test(text) || finds(PUT_FORWARD, text)) return true;
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
