/**
 * What the command line knows about one note once it is read: plain data with lines and columns, ready to be
 * sent between threads, kept in a cache and written in any report.
 */
import type { FindingKind, Severity, Step } from '../checks/model.ts';
import { namedSizes } from '../claims/index.ts';
import type { Analysis, Level } from '../course/index.ts';
import { identified, taughtIn } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';
import type { Span } from '../notes/model.ts';
import { writeValue } from '../sizes/index.ts';
import type { Lens, Size, SourceKey } from '../sizes/model.ts';
import { Lines, type Place } from './lines.ts';
import { type Quoted, quote } from './quoted.ts';

export interface PlacedFix {
  readonly title: string;
  readonly safety: 'safe' | 'choice';
  readonly edits: readonly { readonly place: Place; readonly text: string }[];
}

export interface PlacedFinding extends Quoted {
  readonly check: string;
  readonly kind: FindingKind;
  readonly severity: Severity;
  readonly place: Place;
  readonly says: string;
  readonly holds: string;
  readonly source: string;
  readonly sources: readonly SourceKey[];
  readonly fixes: readonly PlacedFix[];
  /** Places in this note; a place in another note has only its path. */
  readonly related: readonly { readonly note?: string; readonly place?: Place; readonly message: string }[];
  readonly derivation: readonly Step[];
  readonly deliberate?: string;
  /** Recorded as accepted when the course took up the tool. */
  readonly accepted?: boolean;
  /** See `course/identity.ts`. */
  readonly identity: string;
  /** Sizes of the statement, for a picture; a few at most. */
  readonly sizes: readonly { readonly size: Size; readonly lens: Lens }[];
}

export interface PlacedMention {
  readonly place: Place;
  readonly text: string;
  readonly system: string;
  readonly value: string;
  readonly device?: string;
  readonly material?: string;
}

export interface PlacedTopic {
  readonly topic: string;
  readonly part: number;
  readonly place: Place;
}

/** A device by its own name, with the size the note gives it. */
export interface PlacedName extends Quoted {
  readonly name: string;
  readonly size: Size;
  readonly place: Place;
  /** How severe it is where the note lies that another note differs, when settings say. */
  readonly level?: Level | undefined;
}

export interface NoteResult {
  readonly path: string;
  readonly findings: readonly PlacedFinding[];
  readonly mentions: readonly PlacedMention[];
  readonly topics?: readonly PlacedTopic[];
  readonly named?: readonly PlacedName[];
  /** Found when the whole course was known: the note itself was told of before. */
  readonly late?: boolean;
}

/** What a run is after. */
export type Wanted = 'findings' | 'mentions' | 'topics';

/** Places what is wanted of an analysis; nothing when the note holds none of it. */
export function placed(path: string, analysis: Analysis, wanted: Wanted): NoteResult | undefined {
  const result: NoteResult = { path, findings: [], mentions: [] };
  if (wanted === 'topics') {
    const taught = taughtIn(analysis);
    const lines = new Lines(taught.length > 0 ? analysis.note.text : '');
    const topics = taught.map(({ topic, part, span }) => ({ topic, part, place: lines.place(span) }));
    return topics.length > 0 ? { ...result, topics } : undefined;
  }
  const names = wanted === 'findings' ? namedSizes(analysis.note, analysis.mentions) : [];
  if (analysis[wanted].length === 0 && names.length === 0) return undefined;
  const lines = new Lines(analysis.note.text);
  if (wanted === 'mentions') return { ...result, mentions: placedMentions(analysis, lines) };
  const named = names.map(({ name, size, source }) => {
    const place = lines.place(source);
    return { name, size, place, ...quote(lines, place) };
  });
  return { ...result, findings: placedFindings(analysis, lines), ...(named.length > 0 && { named }) };
}

function placedFindings(analysis: Analysis, lines: Lines): PlacedFinding[] {
  const ids = identified(analysis);
  return analysis.findings.map((finding, i) => {
    const { span, fixes, related, unnecessary: _, ...rest } = finding;
    const place = lines.place(span);
    return {
      ...rest,
      place,
      identity: ids[i]!.identity,
      sizes: sizesIn(analysis.mentions, ids[i]!.home),
      ...quote(lines, place),
      fixes: fixes.map((fix) => ({
        ...fix,
        edits: fix.edits.map((edit) => ({ place: lines.place(edit.span), text: edit.text })),
      })),
      related: related.map((one) =>
        one.note === undefined
          ? { place: lines.place(one.span), message: one.message }
          : { note: one.note, message: one.message },
      ),
    };
  });
}

/** As many sizes as a picture can hold side by side. */
const DRAWN = 5;

function sizesIn(mentions: readonly Mention[], home: Span): PlacedFinding['sizes'] {
  const found: { size: Size; lens: Lens }[] = [];
  for (let i = firstFrom(mentions, home.start); i < mentions.length && found.length < DRAWN; i++) {
    const { source, sizes, device, material } = mentions[i]!;
    if (source.start >= home.end) break;
    for (const size of sizes)
      found.push({ size, lens: { ...(device && { device }), ...(material && { material }) } });
  }
  return found.slice(0, DRAWN);
}

/** Index of the first mention that starts at `offset` or later; mentions stand in source order. */
function firstFrom(mentions: readonly Mention[], offset: number): number {
  let low = 0;
  let high = mentions.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (mentions[middle]!.source.start < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

function placedMentions(analysis: Analysis, lines: Lines): PlacedMention[] {
  return analysis.mentions.map((mention) => ({
    place: lines.place(mention.source),
    text: mention.text,
    system: mention.sizes[0]?.system ?? 'ambiguous',
    value: writtenValue(mention),
    ...(mention.device && { device: mention.device }),
    ...(mention.material && { material: mention.material }),
  }));
}

/** "18"; "14..16" for a range; the number as written when the size is not known. */
function writtenValue(mention: Mention): string {
  if (mention.sizes.length > 0) return mention.sizes.map(writeValue).join('..');
  return /\d[\d.,/-]*\d|\d/.exec(mention.text)?.[0] ?? mention.text;
}
