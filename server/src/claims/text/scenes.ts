/** Builds the scenes of a note: every sentence of every passage with what stands around it. Linear in the note. */
import type { Mention } from '../../mentions/model.ts';
import type { Note, Passage } from '../../notes/model.ts';
import type { System } from '../../sizes/model.ts';
import { quotationSpans } from '../stance.ts';
import { OPTION_LEAD } from '../words/frames.ts';
import { type Item, readItems } from './items.ts';
import { type Scene, wordsOf } from './scene.ts';
import { type Sentence, splitSentences } from './sentences.ts';

/** A passage read once: items, sentences, quotation spans. */
export interface Read {
  readonly passage: Passage;
  readonly items: readonly Item[];
  readonly sentences: readonly Sentence[];
  readonly quotes: readonly (readonly [number, number])[];
}

export function readPassages(note: Note, mentions: readonly Mention[]): Read[] {
  const byPassage = new Map<number, Mention[]>();
  for (const mention of mentions) {
    const list = byPassage.get(mention.passage);
    if (list) list.push(mention);
    else byPassage.set(mention.passage, [mention]);
  }
  return note.passages.map((passage) => {
    const own = (byPassage.get(passage.index) ?? []).toSorted((a, b) => a.span.start - b.span.start);
    const items = readItems(passage.text, own);
    return { passage, items, sentences: splitSentences(items, passage.text), quotes: quotationSpans(items) };
  });
}

export function scenesOf(note: Note, reads: readonly Read[]): Scene[] {
  return reads.flatMap((read) => scenesOfPassage(note, reads, read));
}

function scenesOfPassage(note: Note, reads: readonly Read[], read: Read): Scene[] {
  const { passage, sentences } = read;
  if (!speaks(read)) return [];
  const around = surroundings(reads, read);
  const headings = passage.path.map((index) => (note.passages[index]?.text ?? '').toLowerCase());
  const system = systemOf(reads, read, headings);
  const option = isOption(read, around.lead);
  const truth = isTruthItem(read, around.lead, headings);
  const next = nextSentence(reads, read);
  return sentences.map((sentence, i) => ({
    note,
    passage,
    sentence,
    items: sentence.items,
    before: sentences.slice(Math.max(0, i - 3), i),
    after: sentences.slice(i + 1, i + 3),
    context: around.context,
    headings,
    quotes: read.quotes,
    ...(system ? { system } : {}),
    ...(next ? { next } : {}),
    ...(around.lead ? { lead: around.lead } : {}),
    ...(option ? { option } : {}),
    ...(truth ? { truthItem: true } : {}),
  }));
}

/** A passage without sizes, systems, colours, points or materials claims nothing of ours. */
const speaks = (read: Read): boolean =>
  read.items.some((item) => item.kind === 'word' || item.kind === 'size');

function surroundings(reads: readonly Read[], read: Read): { context: Sentence[]; lead?: Sentence } {
  const { passage } = read;
  const context: Sentence[] = [];
  const leadIndex = passage.list?.leadIn ?? (passage.cell ? undefined : passage.list?.parent);
  const lead = leadIndex === undefined ? undefined : reads[leadIndex]?.sentences.at(-1);
  if (lead) context.push(lead);
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
  const own = systemsOf(read.items);
  if (own.size > 0) return own.size === 1 ? [...own][0] : undefined;
  for (const heading of [...headings].reverse()) {
    const named = HEADING_SYSTEMS.filter(([pattern]) => pattern.test(heading));
    if (named.length > 0) return named.length === 1 ? named[0]![1] : undefined;
  }
  const near = new Set<System>();
  for (let i = read.passage.index - 1; i >= 0 && i >= read.passage.index - 3; i--)
    for (const system of systemsOf(reads[i]!.items)) near.add(system);
  return near.size === 1 ? [...near][0] : undefined;
}

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

/** A lettered or listed choice under a question. Keyed choices are read by `keys.ts` instead. */
function isOption(read: Read, lead: Sentence | undefined): boolean {
  if (LETTERED.test(read.passage.text) && read.passage.list === undefined)
    return multiLettered(read.passage.text);
  if (!read.passage.list || !lead) return false;
  return lead.close === '?' || OPTION_LEAD.test(wordsOf(lead));
}

const LETTERED = /^\(?[A-Ea-e][).]\s/;
const multiLettered = (text: string) =>
  /(?:^|\n)\s*\(?[B-Eb-e][).]\s/.test(text.slice(1)) || LETTERED.test(text);

const TRUTH = /\b(?:true (?:or|\/) false|t\/f|t or f|true\/false)\b/;

function isTruthItem(read: Read, lead: Sentence | undefined, headings: readonly string[]): boolean {
  return (
    TRUTH.test(read.passage.text.toLowerCase()) ||
    (lead !== undefined && TRUTH.test(wordsOf(lead).replace(/ \/ /g, '/'))) ||
    headings.some((heading) => TRUTH.test(heading))
  );
}
