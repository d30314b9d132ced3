/**
 * Builds and reads the map from a passage's clean text to the note's source.
 * All offsets are UTF-16 code units; spans are half-open.
 */
import type { Passage, SourceMap, Span } from './model.ts';

/** Collects the text of one passage together with where each piece of it came from. */
export class MappedText {
  text = '';
  private readonly texts: number[] = [];
  private readonly lengths: number[] = [];
  private readonly sources: number[] = [];
  private readonly sourceLengths: number[] = [];

  /** Appends text that stands for source [start, end). Equal lengths map character by character. */
  append(text: string, start: number, end: number): void {
    const exact = text.length === end - start;
    if (!(exact && this.grow(text.length, start))) this.push(text.length, start, end - start);
    this.text += text;
  }

  /** The finished map. An empty text keeps one empty piece at `home`, so that it still has a place. */
  map(home: number): SourceMap {
    if (this.texts.length === 0) this.push(0, home, 0);
    // Copies: an array that was pushed to has room for many more, and maps are kept by the thousand.
    return {
      texts: this.texts.slice(),
      lengths: this.lengths.slice(),
      sources: this.sources.slice(),
      sourceLengths: this.sourceLengths.slice(),
    };
  }

  /** Lengthens the last piece when both it and the new text are exact and adjacent in the source. */
  private grow(length: number, start: number): boolean {
    const last = this.texts.length - 1;
    if (last < 0 || this.lengths[last] !== this.sourceLengths[last]) return false;
    if (this.sources[last]! + this.sourceLengths[last]! !== start) return false;
    this.lengths[last]! += length;
    this.sourceLengths[last]! += length;
    return true;
  }

  private push(length: number, source: number, sourceLength: number): void {
    this.texts.push(this.text.length);
    this.lengths.push(length);
    this.sources.push(source);
    this.sourceLengths.push(sourceLength);
  }
}

/** Index of the last piece that begins at or before `offset`. */
function pieceAt(map: SourceMap, offset: number): number {
  let low = 0;
  let high = map.texts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (map.texts[middle]! <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}

function isExact(map: SourceMap, piece: number): boolean {
  return map.lengths[piece] === map.sourceLengths[piece];
}

function sourceStart(map: SourceMap, offset: number): number {
  const piece = pieceAt(map, offset);
  const into = offset - map.texts[piece]!;
  if (isExact(map, piece)) return map.sources[piece]! + Math.min(into, map.lengths[piece]!);
  return map.sources[piece]! + (into < map.lengths[piece]! ? 0 : map.sourceLengths[piece]!);
}

function sourceEnd(map: SourceMap, offset: number): number {
  const piece = pieceAt(map, offset - 1);
  if (isExact(map, piece)) return map.sources[piece]! + offset - map.texts[piece]!;
  return map.sources[piece]! + map.sourceLengths[piece]!;
}

/**
 * Span in the note's source of a span in the passage's text. A span that touches part of an entity, an
 * escape or a wrapped line covers the whole of it; offsets outside the text are clamped.
 */
export function sourceSpan(passage: Pick<Passage, 'text' | 'map'>, span: Span): Span {
  const from = Math.max(0, Math.min(span.start, passage.text.length));
  const to = Math.max(from, Math.min(span.end, passage.text.length));
  const start = sourceStart(passage.map, from);
  return { start, end: to > from ? sourceEnd(passage.map, to) : start };
}

/**
 * Whether a span of the text is one unbroken stretch of the source: no markup lies inside, so that
 * replacing the source span removes nothing but the text itself.
 */
export function isUnbroken(passage: Pick<Passage, 'text' | 'map'>, span: Span): boolean {
  const { map } = passage;
  const last = pieceAt(map, Math.max(span.start, span.end - 1));
  for (let piece = pieceAt(map, span.start); piece < last; piece++) {
    if (map.sources[piece]! + map.sourceLengths[piece]! !== map.sources[piece + 1]) return false;
  }
  return true;
}
