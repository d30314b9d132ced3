/**
 * What the command line knows about one note once it is read: plain data with lines and columns, ready to be
 * sent between threads, kept in a cache and written in any report.
 */
import type { FindingKind, Severity, Step } from '../checks/model.ts';
import type { Analysis } from '../course/index.ts';
import { identities } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';
import { writeValue } from '../sizes/index.ts';
import type { SourceKey } from '../sizes/model.ts';
import { Lines, type Place } from './lines.ts';

export interface PlacedFix {
  readonly title: string;
  readonly safety: 'safe' | 'choice';
  readonly edits: readonly { readonly place: Place; readonly text: string }[];
}

export interface PlacedFinding {
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
  /** First line of the finding as written. */
  readonly excerpt: string;
}

export interface PlacedMention {
  readonly place: Place;
  readonly text: string;
  readonly system: string;
  readonly value: string;
  readonly device?: string;
  readonly material?: string;
}

export interface NoteResult {
  readonly path: string;
  readonly findings: readonly PlacedFinding[];
  readonly mentions: readonly PlacedMention[];
}

/** Places everything an analysis holds. */
export function placed(path: string, analysis: Analysis): NoteResult {
  if (analysis.findings.length === 0 && analysis.mentions.length === 0)
    return { path, findings: [], mentions: [] };
  const lines = new Lines(analysis.note.text);
  return { path, findings: placedFindings(analysis, lines), mentions: placedMentions(analysis, lines) };
}

function placedFindings(analysis: Analysis, lines: Lines): PlacedFinding[] {
  const ids = identities(analysis);
  return analysis.findings.map((finding, i) => {
    const { span, fixes, related, unnecessary: _, ...rest } = finding;
    const place = lines.place(span);
    return {
      ...rest,
      place,
      identity: ids[i]!,
      excerpt: lines.line(place.line),
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

function placedMentions(analysis: Analysis, lines: Lines): PlacedMention[] {
  return analysis.mentions.map((mention) => ({
    place: lines.place(mention.source),
    text: mention.text,
    system: mention.sizes[0]?.system ?? 'ambiguous',
    value: writtenValue(mention),
    device: mention.device,
    material: mention.material,
  }));
}

/** "18"; "14..16" for a range; the number as written when the size is not known. */
function writtenValue(mention: Mention): string {
  if (mention.sizes.length > 0) return mention.sizes.map(writeValue).join('..');
  return /\d[\d.,/-]*\d|\d/.exec(mention.text)?.[0] ?? mention.text;
}
