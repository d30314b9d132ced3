/**
 * Captions: WebVTT (W3C Recommendation track, "WebVTT: The Web Video Text Tracks Format", sections 4 and 6)
 * and SubRip, which has no standard but is common practice. The text of each cue is one passage; time
 * stamps, settings, style sheets and tags are not prose.
 */
import { decodeString } from 'micromark-util-decode-string';
import { type Container, PassageDraft } from './draft.ts';
import { blocksOf, type Line, linesOf } from './lines.ts';
import type { Comment, MarkKind, Note, Passage } from './model.ts';
import { trimmed } from './read-text.ts';

export type CaptionFormat = 'vtt' | 'srt';

const OUTERMOST: Container = { headings: [], path: [], quote: 0, footnote: false };

/** Between two time stamps; nothing else makes a block a cue. */
const ARROW = '-->';

const TAG_MARKS: ReadonlyMap<string, MarkKind> = new Map([
  ['b', 'strong'],
  ['i', 'emphasis'],
]);

/** What a cue's text is made of besides letters: tags, entities, SubRip's position codes. */
const PARTS: Readonly<Record<CaptionFormat, RegExp>> = {
  vtt: /<(\/?)([^<>]*)>|&(?:#\d{1,7}|#x[\da-f]{1,6}|[a-z][a-z\d]{1,30});/gi,
  srt: /<(\/?)(b|i|u|font)(?:\s[^<>]*)?>|\{\\[^{}]*\}/gi,
};

function readTag(draft: PassageDraft, closing: boolean, name: string): void {
  const kind = TAG_MARKS.get(name.toLowerCase().replace(/[.\s].*$/s, ''));
  if (!kind) return;
  if (closing) draft.exitMark(kind);
  else draft.enterMark(kind);
}

function readPart(draft: PassageDraft, match: RegExpExecArray, offset: number): void {
  const [part, slash, name] = match;
  if (part.startsWith('&')) draft.append(decodeString(part), offset, offset + part.length);
  else if (name !== undefined) readTag(draft, slash === '/', name);
}

function appendLine(draft: PassageDraft, format: CaptionFormat, line: string, start: number): void {
  let done = 0;
  for (const match of line.matchAll(PARTS[format])) {
    if (match.index > done) draft.append(line.slice(done, match.index), start + done, start + match.index);
    readPart(draft, match, start + match.index);
    done = match.index + match[0].length;
  }
  if (done < line.length) draft.append(line.slice(done), start + done, start + line.length);
}

function readCue(text: string, format: CaptionFormat, lines: readonly Line[], index: number): Passage {
  const draft = new PassageDraft(index, 'caption', lines[0]!.start, OUTERMOST);
  let written = -1;
  for (const line of lines) {
    const { start, end } = trimmed(text, line);
    if (written >= 0) draft.breakLine(written, start);
    appendLine(draft, format, text.slice(start, end), start);
    written = end;
  }
  return draft.finish();
}

/** Lines of a block after its line of time stamps; none when it is no cue. */
function payload(text: string, block: readonly Line[]): readonly Line[] {
  const timing = block.findIndex((line) => text.slice(line.start, line.end).includes(ARROW));
  return timing < 0 || timing > 1 ? [] : block.slice(timing + 1);
}

/** WebVTT's own comments: a block that begins with NOTE. */
function commentOf(text: string, block: readonly Line[]): Comment | undefined {
  const span = { start: block[0]!.start, end: block[block.length - 1]!.end };
  const source = text.slice(span.start, span.end);
  return /^NOTE(?:\s|$)/.test(source) ? { span, text: source.slice(4) } : undefined;
}

/** Reads captions; a leading byte order mark is passed over but counted. */
export function readCaptions(text: string, format: CaptionFormat): Note {
  const passages: Passage[] = [];
  const comments: Comment[] = [];
  for (const block of blocksOf(text, linesOf(text, text.startsWith('\uFEFF') ? 1 : 0))) {
    const comment = format === 'vtt' ? commentOf(text, block) : undefined;
    if (comment) comments.push(comment);
    const lines = comment ? [] : payload(text, block);
    if (lines.length > 0) passages.push(readCue(text, format, lines, passages.length));
  }
  return { text, passages, tables: [], comments };
}
