/** Turns Markdown tokens into passages of prose. */
import { decodeString } from 'micromark-util-decode-string';
import { findComments } from './comments.ts';
import { type Container, type Heading, INHERITED, type ListDraft, PassageDraft } from './draft.ts';
import type { TokenSink } from './markdown.ts';
import type { CellPlace, Comment, Passage, PassageKind, Span, Table } from './model.ts';
import type { Stretch } from './stretch.ts';
import { ENTER, EXIT } from './token-handlers.ts';
import { LITERAL, MARKS, PLACEHOLDER, REPLACED, SEPARATING, SILENT } from './tokens.ts';

interface TableDraft {
  readonly index: number;
  readonly span: Span;
  readonly leadIn?: number;
  readonly rows: number[][];
}

/** Whether a `$…$` is prose after all: sums of money, by the rule that Pandoc documents for its math. */
function isMoney(source: string, start: number, end: number): boolean {
  if (source.startsWith('$$', start)) return false;
  const follows = /\d/.test(source.charAt(end));
  return follows || /\s/.test(source.charAt(start + 1)) || /\s/.test(source.charAt(end - 2));
}

/** Reads the tokens of one stretch of Markdown; offsets are relative to the stretch. */
export class ProseBuilder implements TokenSink {
  private readonly passages: Passage[] = [];
  private readonly tables: Table[] = [];
  private readonly comments: Comment[] = [];
  private readonly labels: string[] = [];
  private frontMatter?: Span;
  private closed = false;
  /** Type of the token inside which nothing is prose; none of them is ever inside its like. */
  private skipped?: string;
  private readonly open: PassageDraft[] = [];
  private readonly containers: Container[] = [
    { headings: [], path: [], quote: 0, footnote: false, previous: INHERITED },
  ];
  private readonly lists: ListDraft[] = [];
  private listCount = 0;
  private passageCount = 0;
  private table?: TableDraft;

  /** `before`: how much was parsed ahead of the stretch; `source`: the stretch itself. */
  constructor(
    private readonly source: string,
    private readonly before: number,
  ) {}

  stretch(): Stretch {
    const { passages, tables, comments, labels, frontMatter, closed, listCount } = this;
    const { previous, headings } = this.containers[0]!;
    // A copy has no room to spare: stretches are kept by the thousand.
    const base = { passages: passages.slice(), tables, comments, labels, closed, headings, lists: listCount };
    return { ...base, ...(previous ? { previous } : {}), ...(frontMatter ? { frontMatter } : {}) };
  }

  enter(type: string, parsedStart: number, parsedEnd: number): void {
    const start = parsedStart - this.before;
    const end = parsedEnd - this.before;
    if (!this.isInside(start)) {
      // The rule put after the stretch: seen as one, it shows that nothing was open.
      if (type === 'thematicBreak' && start >= this.source.length) this.closed = true;
      return;
    }
    if (this.skipped !== undefined) return;
    if (SEPARATING.has(type)) this.container.previous = undefined;
    if (SILENT.has(type)) this.skip(type);
    else if (REPLACED.has(type)) this.replace(type, start, end);
    else if (LITERAL.has(type)) this.literal(start, end);
    else if (MARKS[type]) this.passage?.enterMark(MARKS[type]);
    else ENTER[type]?.call(this, start, end);
  }

  exit(type: string, parsedStart: number, parsedEnd: number): void {
    const start = parsedStart - this.before;
    const end = parsedEnd - this.before;
    if (!this.isInside(start)) return;
    if (this.skipped !== undefined) {
      if (type === this.skipped) this.skipped = undefined;
      return;
    }
    if (MARKS[type]) this.passage?.exitMark(MARKS[type]);
    else EXIT[type]?.call(this, start, end);
  }

  /** Whether a token that starts at `start` belongs to the stretch. */
  private isInside(start: number): boolean {
    return start >= 0 && start < this.source.length;
  }

  get container(): Container {
    return this.containers[this.containers.length - 1]!;
  }

  get passage(): PassageDraft | undefined {
    return this.open[this.open.length - 1];
  }

  skip(type: string): void {
    this.skipped = type;
  }

  // Passages

  openPassage(kind: PassageKind, home: number, cell?: CellPlace): PassageDraft {
    const draft = new PassageDraft(this.passageCount++, kind, home, this.container, cell);
    if (this.container.item) this.container.item.first ??= draft.index;
    this.open.push(draft);
    return draft;
  }

  /** Closes what was opened last: tokens come in pairs, so there is one. */
  closePassage(): Passage {
    const passage = this.open.pop()!.finish();
    this.passages[passage.index] = passage;
    return passage;
  }

  closeParagraph(): void {
    this.container.previous = { passage: this.closePassage().index, paragraph: true };
  }

  closeHeading(): void {
    const draft = this.open[this.open.length - 1]!;
    const level = draft.level!;
    const above = this.container.headings.filter((heading) => heading.level < level);
    this.setHeadings(above);
    this.closePassage();
    this.setHeadings([...above, { level, passage: draft.index }]);
    this.container.previous = { passage: draft.index, paragraph: false };
  }

  private setHeadings(headings: readonly Heading[]): void {
    this.container.headings = headings;
    this.container.path = headings.map((heading) => heading.passage);
  }

  literal(start: number, end: number): void {
    this.passage?.append(this.source.slice(start, end), start, end);
  }

  /** Puts a placeholder for code, HTML, math and bare addresses. */
  replace(type: string, start: number, end: number): void {
    if (type === 'mathText' && isMoney(this.source, start, end)) return;
    if (type === 'htmlText') {
      this.addComments(findComments(this.source, start, end));
      this.strikeTag(this.source.slice(start, Math.min(end, start + 10)).toLowerCase());
    }
    this.passage?.append(PLACEHOLDER, start, end);
    this.skip(type);
  }

  /** "<s>", "<del>": struck as "~~" would have it. */
  private strikeTag(tag: string): void {
    if (/^<(?:s|del|strike)[\s>]/.test(tag)) this.passage?.enterMark('strike');
    else if (/^<\/(?:s|del|strike)\s*>/.test(tag)) this.passage?.exitMark('strike');
  }

  // Containers

  openContainer(change: Partial<Container>): void {
    const { headings, path, quote, footnote, item } = this.container;
    this.containers.push({ headings, path, quote, footnote, ...(item ? { item } : {}), ...change });
  }

  closeContainer(): void {
    this.containers.pop();
    this.container.previous = undefined;
  }

  openList(ordered: boolean): void {
    const { previous, item } = this.container;
    this.lists.push({
      list: this.listCount++,
      ordered,
      depth: item ? item.of.depth + 1 : 0,
      items: 0,
      ...(previous?.paragraph ? { leadIn: previous.passage } : {}),
      ...(item?.first === undefined ? {} : { parent: item.first }),
    });
  }

  closeList(): void {
    this.closeItem();
    this.lists.pop();
    this.container.previous = undefined;
  }

  /** Opens an item at its marker, which also ends the item before it. */
  openItem(): void {
    this.closeItem();
    const list = this.lists[this.lists.length - 1]!;
    this.openContainer({ item: { of: list, index: list.items++ } });
  }

  closeItem(): void {
    const list = this.lists[this.lists.length - 1];
    if (list && this.container.item?.of === list) this.closeContainer();
  }

  check(checked: boolean): void {
    // The box of an item that ended before it opens a paragraph: "-\n[x] text".
    if (this.container.item) this.container.item.checked = checked;
    this.passage?.trim();
  }

  // Tables

  openTable(start: number, end: number): void {
    const leadIn = this.container.previous?.passage;
    const span = { start, end };
    this.table = { index: this.tables.length, span, rows: [], ...(leadIn === undefined ? {} : { leadIn }) };
  }

  openRow(): void {
    this.table?.rows.push([]);
  }

  /** Opens a cell; those beyond the header's are never shown and so are not prose. */
  openCell(type: string, start: number): void {
    const table = this.table!;
    const row = table.rows[table.rows.length - 1]!;
    if (table.rows.length > 1 && row.length >= table.rows[0]!.length) {
      this.skip(type);
      return;
    }
    const cell = { table: table.index, row: table.rows.length - 1, column: row.length };
    row.push(this.openPassage('cell', start, cell).index);
  }

  closeTable(): void {
    const { index, span, leadIn, rows } = this.table!;
    const width = rows[0]!.length;
    for (const row of rows) while (row.length < width) row.push(-1);
    this.tables.push({ index, rows, span, ...(leadIn === undefined ? {} : { leadIn }) });
    this.table = undefined;
    this.container.previous = undefined;
  }

  // Leaves

  /** A line of text whose markup is not parsed. */
  plain(start: number, end: number): void {
    const line = this.source.slice(start, end);
    const length = line.replace(/[\r\n]+$/, '').length;
    this.literal(start, start + length);
    if (length < line.length) this.passage?.breakLine(start + length, end);
  }

  decode(start: number, end: number): void {
    this.passage?.append(decodeString(this.source.slice(start, end)), start, end);
    this.skip('characterReference');
  }

  escape(start: number, end: number): void {
    this.passage?.append(this.source.slice(start + 1, end), start, end);
    this.skip('characterEscape');
  }

  headingLevel(start: number, end: number): void {
    const { passage, source } = this;
    if (passage?.kind !== 'heading' || passage.level !== undefined) return;
    passage.level = end - start;
    if (source.charAt(start) !== '#') passage.level = source.charAt(start) === '=' ? 1 : 2;
  }

  html(start: number, end: number): void {
    const found = findComments(this.source, start, end);
    this.addComments(found);
    // A comment alone leaves the blocks around it neighbours, as a reader sees them.
    const covered = found.length === 1 && found[0]!.span.start === start;
    if (!covered) this.container.previous = undefined;
    this.skip('htmlFlow');
  }

  /** A label defined here; that of a footnote begins with its caret. */
  label(start: number, end: number): void {
    this.labels.push(this.source.slice(start, end));
  }

  /** One by one: an argument list has a limit that a long note may exceed. */
  private addComments(found: readonly Comment[]): void {
    for (const comment of found) this.comments.push(comment);
  }

  front(type: string, span: Span): void {
    this.frontMatter = span;
    this.skip(type);
  }

  image(start: number, end: number): void {
    this.passage?.append(PLACEHOLDER, start, end);
    this.openPassage('alt', start);
  }
}
