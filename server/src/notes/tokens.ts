/** What each kind of Markdown token means for prose. Names are those of micromark and its extensions. */
import type { MarkKind } from './model.ts';

/** Stands in prose for something that is not prose but has a place in the sentence. */
export const PLACEHOLDER = '\uFFFC';

/** Nothing inside is prose, and nothing stands in its place. */
export const SILENT: ReadonlySet<string> = new Set([
  'codeFenced',
  'codeIndented',
  'mathFlow',
  'resource',
  'reference',
  'gfmFootnoteCall',
  'thematicBreak',
]);

/** Nothing inside is prose; one placeholder stands in its place. */
export const REPLACED: ReadonlySet<string> = new Set([
  'codeText',
  'htmlText',
  'autolink',
  'literalAutolink',
  'mathText',
]);

/** Leaves whose source is prose as it stands. */
export const LITERAL: ReadonlySet<string> = new Set([
  'data',
  'mathTextData',
  'mathTextSequence',
  'mathTextPadding',
  'space',
]);

/** White space and signs that may precede or follow a line ending inside a paragraph. */
export const LINE_BREAK_BEFORE: ReadonlySet<string> = new Set([
  'lineSuffix',
  'hardBreakTrailing',
  'hardBreakEscape',
]);
export const LINE_BREAK_AFTER: ReadonlySet<string> = new Set([
  'linePrefix',
  'blockQuotePrefix',
  'listItemIndent',
  'gfmFootnoteDefinitionIndent',
  'gfmFootnoteDefinitionWhitespace',
]);

export const MARKS: Readonly<Record<string, MarkKind>> = {
  strong: 'strong',
  emphasis: 'emphasis',
  strikethrough: 'strike',
  link: 'link',
};

/** Blocks that stand between a lead-in and what it leads to. */
export const SEPARATING: ReadonlySet<string> = new Set([
  'codeFenced',
  'codeIndented',
  'mathFlow',
  'thematicBreak',
]);
