/**
 * Most of a note is plain: headings, paragraphs and flat lists, a little strong type, a few links. Such a stretch is
 * told to the builder here, token by token as the parser would, at a fraction of its cost. Whatever is not certain at
 * sight is declined and goes to the parser; tests hold the two ways equal.
 */

import { ProseBuilder } from './markdown-prose.ts';
import { finds } from './patterns.ts';
import type { Stretch } from './stretch.ts';

/** Signs, line endings and runs that the parser alone understands, or blanks at the end of a line that make a break. */
const UNSURE = /[\\`<~|$@\0\t\r]|&(?! )|^ $| {2}$|[!"')*,.:;?_~]{16,}/m;

/** A bare address. */
const ADDRESS = /https?:|www\./i;

/** What a line of prose does not begin with, unless it is markup within the line. */
const OPENING = /^(?:[\s#>+\-=:!]|[*_](?![0-9A-Za-z*_])|([*_])\1(?![0-9A-Za-z])|\d{1,9}[.)](?: |$))/;

const HEADING = /^(#{1,6}) (?=[^\s#])[^#]+$/;

const MARKER = /^(?:([-+*])|\d{1,9}([.)])) (?=\S)/;

const SIGNS = /[*_[]/g;

const LINK = /\[([^\][*_!^]+)\]\([0-9A-Za-z/:.#?=%+-]+\)/y;

/** As the parser's bound on crowded paragraphs: signs that open something, times the length of the text. */
const WORK_LIMIT = 2_000_000;

/** Reads a stretch when all of it is plain; otherwise nothing, and the parser must. */
export function readPlain(text: string): Stretch | undefined {
  return finds(UNSURE, text) ? undefined : new PlainReader(text).read();
}

class PlainReader {
  private readonly to: ProseBuilder;
  private inParagraph = false;
  /** The sign that all items of the open list share, and how far a line of its last item is indented. */
  private list?: { readonly sign: string; indent: number };
  private signs = 0;

  constructor(private readonly text: string) {
    this.to = new ProseBuilder(text, 0);
  }

  read(): Stretch | undefined {
    const { text, to } = this;
    for (let start = 0; start < text.length; ) {
      const ending = text.indexOf('\n', start);
      const end = ending < 0 ? text.length : ending;
      // One blank before the end of a line is no part of it.
      const blank = end > start && text[end - 1] === ' ' ? 1 : 0;
      if (!this.line(start, end - blank)) return undefined;
      if (blank > 0 && this.inParagraph) to.enter('lineSuffix', end - 1, end);
      start = end + 1;
    }
    this.endList();
    // The rule that the parser would see after the stretch: nothing is left open.
    to.enter('thematicBreak', text.length, text.length);
    return to.stretch();
  }

  private line(start: number, end: number): boolean {
    const line = this.text.slice(start, end);
    if (line === '') {
      this.endParagraph();
      return true;
    }
    const first = line.charCodeAt(0);
    if (first === 35) return this.heading(line, start, end);
    const marker = MARKER.exec(line);
    if (marker) return this.item(marker, start, end);
    if (first === 32) return this.indented(line, start, end);
    return this.prose(line, start, end);
  }

  private heading(line: string, start: number, end: number): boolean {
    const level = HEADING.exec(line)?.[1]?.length;
    if (level === undefined) return false;
    this.endList();
    this.to.enter('atxHeading', start, end);
    this.to.enter('atxHeadingSequence', start, start + level);
    const plain = this.inline(start + level + 1, end);
    this.to.exit('atxHeading', start, end);
    return plain;
  }

  private item(marker: RegExpExecArray, start: number, end: number): boolean {
    const indent = marker[0].length;
    const sign = marker[1] ?? marker[2]!;
    const ordered = marker[1] === undefined;
    if (OPENING.test(this.text.slice(start + indent, end))) return false;
    if (this.list?.sign !== sign) {
      // Whether a number right below prose begins a list depends on the number.
      if (ordered && this.inParagraph) return false;
      this.endList();
      this.to.enter(ordered ? 'listOrdered' : 'listUnordered', start, end);
    }
    this.endParagraph();
    this.list = { sign, indent };
    this.to.enter('listItemPrefix', start, start + indent);
    return this.open(start + indent, end);
  }

  /** A further line of an item, in line with its first. */
  private indented(line: string, start: number, end: number): boolean {
    const indent = line.search(/[^ ]/);
    if (!this.inParagraph || indent !== this.list?.indent || MARKER.test(line.slice(indent))) return false;
    if (OPENING.test(line.slice(indent))) return false;
    this.to.enter('lineEnding', start - 1, start);
    this.to.enter('listItemIndent', start, start + indent);
    return this.inline(start + indent, end);
  }

  private prose(line: string, start: number, end: number): boolean {
    if (OPENING.test(line)) return false;
    if (this.inParagraph) {
      this.to.enter('lineEnding', start - 1, start);
      return this.inline(start, end);
    }
    this.endList();
    return this.open(start, end);
  }

  private open(start: number, end: number): boolean {
    this.to.enter('paragraph', start, end);
    this.inParagraph = true;
    return this.inline(start, end);
  }

  private endParagraph(): void {
    if (this.inParagraph) this.to.exit('paragraph', 0, 0);
    this.inParagraph = false;
  }

  private endList(): void {
    this.endParagraph();
    if (this.list) this.to.exit('listUnordered', 0, 0);
    this.list = undefined;
  }

  private data(start: number, end: number): boolean {
    if (end === start) return true;
    if (ADDRESS.test(this.text.slice(start, end))) return false;
    this.to.enter('data', start, end);
    return true;
  }

  /** One line of text: prose, marks that open and close in it, links. */
  private inline(start: number, end: number): boolean {
    let done = start;
    for (;;) {
      const at = this.signFrom(done, end);
      if (at === end) return this.data(done, end);
      if (!this.data(done, at)) return false;
      const after = this.text[at] === '[' ? this.link(at, end) : this.mark(at, start, end);
      if (after === undefined || ++this.signs * 4 * this.text.length > WORK_LIMIT) return false;
      done = after;
    }
  }

  private signFrom(from: number, end: number): number {
    SIGNS.lastIndex = from;
    const found = SIGNS.exec(this.text)?.index ?? end;
    return Math.min(found, end);
  }

  /** `[words](address)`; the end of it. */
  private link(at: number, end: number): number | undefined {
    LINK.lastIndex = at;
    const match = LINK.exec(this.text);
    const close = at + (match?.[0].length ?? 0);
    if (!match || close > end || this.text[at - 1] === '!') return undefined;
    this.to.enter('link', at, close);
    const plain = this.data(at + 1, at + 1 + match[1]!.length);
    this.to.exit('link', at, close);
    return plain ? close : undefined;
  }

  /** Strong type or emphasis around words, with white space or stops outside it: no other reading is possible. */
  private mark(at: number, lineStart: number, end: number): number | undefined {
    const { text } = this;
    const width = text[at + 1] === text[at] ? 2 : 1;
    const close = this.signFrom(at + width, end);
    const after = close + width;
    const sign = text.slice(at, at + width);
    const before = at === lineStart ? ' ' : text[at - 1]!;
    const opens = (before === ' ' || before === '(') && /[0-9A-Za-z]/.test(text[at + width] ?? '');
    if (!opens || after > end || text.slice(close, after) !== sign) return undefined;
    if (!closes(text[close - 1]!, after === end ? ' ' : text[after]!)) return undefined;
    const type = width === 2 ? 'strong' : 'emphasis';
    this.to.enter(type, at, after);
    const plain = this.data(at + width, close);
    this.to.exit(type, at, after);
    return plain ? after : undefined;
  }
}

/** Whether a mark between these two characters can only close. */
function closes(before: string, after: string): boolean {
  if (/[0-9A-Za-z]/.test(before)) return /[ .,;:!?)]/.test(after);
  return /[.,;:!?)%]/.test(before) && after === ' ';
}
