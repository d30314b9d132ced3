/** Which step of the prose builder each token leads to. Names are those of micromark and its extensions. */
import type { ProseBuilder } from './markdown-prose.ts';
import { LINE_BREAK_AFTER, LINE_BREAK_BEFORE } from './tokens.ts';

type Handler = (this: ProseBuilder, start: number, end: number) => void;

const endLine: Handler = function (start, end) {
  this.passage?.endLine(start, end);
};

const continueLine: Handler = function (start, end) {
  this.passage?.continueLine(start, end);
};

const each = (types: ReadonlySet<string>, handler: Handler): Record<string, Handler> =>
  Object.fromEntries([...types].map((type) => [type, handler]));

/** What the builder does when a token begins. */
export const ENTER: Readonly<Record<string, Handler>> = {
  ...each(LINE_BREAK_BEFORE, endLine),
  ...each(LINE_BREAK_AFTER, continueLine),
  paragraph(start) {
    this.openPassage(this.container.footnote ? 'footnote' : 'paragraph', start);
  },
  atxHeading(start) {
    this.openPassage('heading', start);
  },
  setextHeading(start) {
    this.openPassage('heading', start);
  },
  atxHeadingSequence(start, end) {
    this.headingLevel(start, end);
  },
  setextHeadingLineSequence(start, end) {
    this.headingLevel(start, end);
  },
  image(start, end) {
    this.image(start, end);
  },
  blockQuote() {
    this.openContainer({ quote: this.container.quote + 1 });
  },
  gfmFootnoteDefinition() {
    this.openContainer({ footnote: true });
  },
  listOrdered() {
    this.openList(true);
  },
  listUnordered() {
    this.openList(false);
  },
  listItemPrefix() {
    this.openItem();
  },
  taskListCheckValueChecked() {
    this.check(true);
  },
  taskListCheckValueUnchecked() {
    this.check(false);
  },
  table(start, end) {
    this.openTable(start, end);
  },
  tableRow() {
    this.openRow();
  },
  tableHeader(start) {
    this.openCell('tableHeader', start);
  },
  tableData(start) {
    this.openCell('tableData', start);
  },
  chunkText(start, end) {
    this.plain(start, end);
  },
  characterReference(start, end) {
    this.decode(start, end);
  },
  characterEscape(start, end) {
    this.escape(start, end);
  },
  htmlFlow(start, end) {
    this.html(start, end);
  },
  yaml(start, end) {
    this.front('yaml', { start, end });
  },
  toml(start, end) {
    this.front('toml', { start, end });
  },
  definitionLabelString(start, end) {
    this.label(start, end);
  },
  gfmFootnoteDefinitionLabelString(start, end) {
    this.label(start - 1, end);
  },
  lineEnding(start, end) {
    this.passage?.breakLine(start, end);
  },
};

/** What the builder does when a token ends. */
export const EXIT: Readonly<Record<string, Handler>> = {
  paragraph() {
    this.closeParagraph();
  },
  atxHeading() {
    this.closeHeading();
  },
  setextHeading() {
    this.closeHeading();
  },
  image() {
    this.closePassage();
  },
  blockQuote() {
    this.closeContainer();
  },
  gfmFootnoteDefinition() {
    this.closeContainer();
  },
  listOrdered() {
    this.closeList();
  },
  listUnordered() {
    this.closeList();
  },
  tableHeader() {
    this.closePassage();
  },
  tableData() {
    this.closePassage();
  },
  table() {
    this.closeTable();
  },
};
