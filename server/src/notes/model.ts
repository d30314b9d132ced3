/**
 * A note as prose: passages of clean text, each character of which is known in the source.
 * Spans are half-open UTF-16 offsets.
 */

export interface Span {
  readonly start: number;
  readonly end: number;
}

/**
 * Where a passage's text lies in the note. Piece i says: text [texts[i], texts[i] + length) comes from
 * source [sources[i], sources[i] + sourceLengths[i]). Equal lengths map one to one; a piece whose lengths
 * differ (an entity, an escape, a line ending with its prefix) maps only as a whole.
 */
export interface SourceMap {
  readonly texts: readonly number[];
  readonly lengths: readonly number[];
  readonly sources: readonly number[];
  readonly sourceLengths: readonly number[];
}

export type PassageKind = 'paragraph' | 'heading' | 'cell' | 'alt' | 'footnote' | 'caption';

export type MarkKind = 'strong' | 'emphasis' | 'strike' | 'link';

/** Emphasis and the like, in offsets of the passage's text. */
export interface Mark extends Span {
  readonly kind: MarkKind;
}

export interface ListPlace {
  /** Number of the list in the note (all items of one list share it). */
  readonly list: number;
  /** 0-based place among the items. */
  readonly index: number;
  readonly ordered: boolean;
  /** Nesting depth, 0 for an outermost list. */
  readonly depth: number;
  /** Task list state, when there is one. */
  readonly checked?: boolean;
  /** Index of the passage that stands right before the list (its lead-in), if it is a paragraph. */
  readonly leadIn?: number;
  /** Index in `note.passages` of the first passage of the enclosing item, for nested lists. */
  readonly parent?: number;
}

export interface CellPlace {
  /** Index in `note.tables`. */
  readonly table: number;
  /** 0 is the header row. */
  readonly row: number;
  readonly column: number;
}

export interface Passage {
  readonly index: number;
  readonly kind: PassageKind;
  /** Clean prose. A soft or hard line break is "\n"; inline code, HTML and math are one U+FFFC each. */
  readonly text: string;
  readonly map: SourceMap;
  /** Passage indexes of the headings above, outermost first. */
  readonly path: readonly number[];
  /** 1 to 6 for headings. */
  readonly level?: number;
  /** Depth of enclosing block quotes. */
  readonly quote: number;
  readonly list?: ListPlace;
  readonly cell?: CellPlace;
  readonly marks: readonly Mark[];
}

export interface Table {
  readonly index: number;
  /** rows[0] is the header; entries are passage indexes (−1 for a missing cell). */
  readonly rows: readonly (readonly number[])[];
  /** Passage right before the table, when there is one. */
  readonly leadIn?: number;
  readonly span: Span;
}

export interface Comment {
  readonly span: Span;
  /** Text between <!-- and -->, untrimmed. */
  readonly text: string;
}

export interface Note {
  readonly text: string;
  readonly passages: readonly Passage[];
  readonly tables: readonly Table[];
  readonly comments: readonly Comment[];
  /** Span of the front matter, fences included. */
  readonly frontMatter?: Span;
}
