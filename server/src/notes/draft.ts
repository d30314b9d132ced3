/** Passages while they are being read: places in lists, headings above, text not yet complete. */
import type { CellPlace, ListPlace, Mark, MarkKind, Passage, PassageKind } from './model.ts';
import { MappedText } from './source-map.ts';

/** A list whose items are being read. */
export interface ListDraft {
  readonly list: number;
  readonly ordered: boolean;
  readonly depth: number;
  readonly leadIn?: number;
  readonly parent?: number;
  items: number;
}

/** A list item being read. */
export interface ItemDraft {
  readonly of: ListDraft;
  readonly index: number;
  checked?: boolean;
  /** Index of its first passage. */
  first?: number;
}

export interface Heading {
  readonly level: number;
  readonly passage: number;
}

/** The block that ended last, when it was a paragraph or a heading. */
export interface Previous {
  readonly passage: number;
  readonly paragraph: boolean;
}

/** Stands for whatever comes before a stretch. */
export const INHERITED: Previous = { passage: -1, paragraph: true };

/** What encloses a block: document, quote, list item or footnote. */
export interface Container {
  /** Headings above, outermost first; a container's own headings end with it. */
  headings: readonly Heading[];
  /** Passages of those headings. */
  path: readonly number[];
  readonly quote: number;
  readonly footnote: boolean;
  readonly item?: ItemDraft;
  /** The block that ended last in this container. */
  previous?: Previous;
}

export function placeOf(item: ItemDraft): ListPlace {
  const { list, ordered, depth, leadIn, parent } = item.of;
  return {
    list,
    index: item.index,
    ordered,
    depth,
    ...(item.checked === undefined ? {} : { checked: item.checked }),
    ...(leadIn === undefined ? {} : { leadIn }),
    ...(parent === undefined ? {} : { parent }),
  };
}

/** A passage being read. */
export class PassageDraft {
  readonly body = new MappedText();
  level?: number;
  private readonly marks: Mark[] = [];
  private readonly open: { kind: MarkKind; start: number }[] = [];
  /** Source span of a line break seen but not yet followed by prose. */
  private lineBreak?: { start: number; end: number };
  private trimming = false;

  constructor(
    readonly index: number,
    readonly kind: PassageKind,
    readonly home: number,
    private readonly container: Container,
    private readonly cell?: CellPlace,
  ) {}

  /** Appends prose; a line break seen before it becomes one "\n". NUL is shown as CommonMark shows it. */
  append(source: string, start: number, end: number): void {
    const text = source.replaceAll('\0', '\uFFFD');
    this.flush();
    if (this.trimming) {
      const blank = text.length - text.trimStart().length;
      if (blank < text.length) this.trimming = false;
      if (blank === text.length) return;
      this.body.append(text.slice(blank), start + blank, end);
    } else this.body.append(text, start, end);
  }

  /** Leaves out white space until prose follows: after the box of a task. */
  trim(): void {
    this.trimming = true;
  }

  /** Notes white space or a sign that stands before a line ending. */
  endLine(start: number, end: number): void {
    this.flush();
    this.lineBreak = { start, end };
  }

  /** Notes a line ending. */
  breakLine(start: number, end: number): void {
    if (this.lineBreak?.end === start) this.lineBreak.end = end;
    else this.lineBreak ??= { start, end };
  }

  /** Adds the indentation or quote sign that follows a line ending. */
  continueLine(start: number, end: number): void {
    if (this.lineBreak?.end === start) this.lineBreak.end = end;
  }

  enterMark(kind: MarkKind): void {
    this.flush();
    this.open.push({ kind, start: this.body.text.length });
  }

  /** Ends the mark of this kind that was opened last: tags may stand crosswise, or never be closed. */
  exitMark(kind: MarkKind): void {
    this.flush();
    const at = this.open.findLastIndex((one) => one.kind === kind);
    const [mark] = at < 0 ? [] : this.open.splice(at, 1);
    if (mark) this.marks.push({ kind: mark.kind, start: mark.start, end: this.body.text.length });
  }

  finish(): Passage {
    const { index, kind, container, cell, level } = this;
    const marks = this.marks.toSorted((a, b) => a.start - b.start || b.end - a.end);
    return {
      index,
      kind,
      text: this.body.text,
      map: this.body.map(this.home),
      path: container.path,
      quote: container.quote,
      marks,
      ...(level === undefined ? {} : { level }),
      ...(container.item === undefined ? {} : { list: placeOf(container.item) }),
      ...(cell === undefined ? {} : { cell }),
    };
  }

  private flush(): void {
    const { lineBreak } = this;
    if (!lineBreak) return;
    this.lineBreak = undefined;
    if (!this.trimming) this.body.append('\n', lineBreak.start, lineBreak.end);
  }
}
