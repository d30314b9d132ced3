/** What can be done with one key: mend a finding, choose a reading, convert a size, mend everything safe. */

import type { Edit, Finding } from '../checks/model.ts';
import type { Analysis } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';
import type { Span } from '../notes/model.ts';
import { convert } from '../sizes/index.ts';
import type { System } from '../sizes/model.ts';
import { type Locale, quote, say } from '../texts/index.ts';
import { markOf } from './deliberate-mark.ts';
import { lensOf } from './lens.ts';
import { findingsIn, meets } from './places.ts';
import { ACTION } from './texts/help.ts';

export type ActionKind = 'quickfix' | 'refactor.rewrite' | 'source.fixAll';

export interface Action {
  readonly title: string;
  readonly kind: ActionKind;
  readonly edits: readonly Edit[];
  /** The finding it mends. */
  readonly finding?: Finding;
  /** A mark with a reason stands here; a client may ask for the reason before it is written. */
  readonly reasonAt?: number;
  /** True for the one obvious fix. */
  readonly preferred?: boolean;
}

/** Everything that can be done about what touches the span. */
export function actionsIn(analysis: Analysis, span: Span, locale?: Locale): Action[] {
  const endOfLine = lineEnds(analysis.note.text);
  return [
    ...findingsIn(analysis, span).flatMap((finding) => [
      ...fixesOf(finding),
      ...leaveIn(finding, endOfLine(finding.span.end), locale),
    ]),
    ...analysis.mentions
      .filter((mention) => meets(mention.source, span))
      .flatMap((mention) => conversionsOf(mention, locale)),
  ];
}

const fixesOf = (finding: Finding): Action[] =>
  finding.fixes.map((fix) => ({
    title: fix.title,
    kind: 'quickfix' as const,
    edits: fix.edits,
    finding,
    ...(fix.safety === 'safe' ? { preferred: true } : {}),
  }));

/** Leaves an error in on purpose: a mark at the end of its line, still without its reason. */
function leaveIn(finding: Finding, at: number, locale?: Locale): Action[] {
  if (finding.kind !== 'contradiction' || finding.deliberate !== undefined) return [];
  return [
    {
      title: say(locale, ACTION.leaveIn),
      kind: 'quickfix',
      edits: [{ span: { start: at, end: at }, text: markOf('') }],
      finding,
      reasonAt: at,
    },
  ];
}

/** As `endOfLine`, for offsets in rising order: a line that holds many is looked through once. */
function lineEnds(text: string): (from: number) => number {
  let known = { from: 0, lineEnd: -1, at: 0 };
  return (from) => {
    if (from < known.from || from > known.lineEnd) known = { from, ...endOfLine(text, from) };
    return Math.max(from, known.at);
  };
}

/** Behind the last letter of the line; in a table row, inside its last cell. */
function endOfLine(text: string, from: number): { at: number; lineEnd: number } {
  let end = from;
  while (end < text.length && text[end] !== '\n' && text[end] !== '\r') end++;
  const line = text.slice(from, end).trimEnd();
  const last = line.endsWith('|') ? line.slice(0, -1).trimEnd() : line;
  return { at: from + last.length, lineEnd: end };
}

/** Systems worth writing beside a size; inches only where they are the trade's unit. */
const TARGETS: readonly System[] = ['millimetre', 'french', 'ep-metric', 'usp', 'inch'];

/** "Write 14 Fr as 4.7 mm" and "Add (4.7 mm) after 14 Fr", for every conversion with one value. */
function conversionsOf(mention: Mention, locale?: Locale): Action[] {
  const size = mention.sizes[0];
  if (mention.kind !== 'size' || size === undefined || mention.bound !== undefined) return [];
  const useful = convert(size, lensOf(mention)).filter(
    (each) => each.value !== undefined && TARGETS.includes(each.to),
  );
  return useful.flatMap((each): Action[] => [
    rewrite(say(locale, ACTION.convert, { text: quote(each.text) }), mention.source, each.text),
    rewrite(
      say(locale, ACTION.add, { text: quote(each.text), size: quote(mention.text) }),
      after(mention.source),
      ` (${each.text})`,
    ),
  ]);
}

const after = (span: Span): Span => ({ start: span.end, end: span.end });

const rewrite = (title: string, span: Span, text: string): Action => ({
  title,
  kind: 'refactor.rewrite',
  edits: [{ span, text }],
});

/** Edits of every safe fix that do not overlap, in text order; each finding gives its first safe fix. */
export function safeEdits(findings: readonly Finding[]): Edit[] {
  const groups = findings
    .filter((finding) => finding.deliberate === undefined)
    .map((finding) => finding.fixes.find((fix) => fix.safety === 'safe')?.edits ?? [])
    .filter((edits) => edits.length > 0)
    .sort((a, b) => a[0]!.span.start - b[0]!.span.start);
  const taken: Edit[] = [];
  for (const edits of groups) if (!edits.some((edit) => overlaps(taken, edit))) taken.push(...edits);
  return taken.sort((a, b) => a.span.start - b.span.start);
}

/** Groups come in text order, so only the last few taken edits can overlap. */
function overlaps(taken: readonly Edit[], edit: Edit): boolean {
  return taken
    .slice(-8)
    .some(
      (other) =>
        (other.span.start < edit.span.end && edit.span.start < other.span.end) ||
        (other.span.start === edit.span.start && other.span.end === edit.span.end),
    );
}
