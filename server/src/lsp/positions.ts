/** Offsets to positions and back. Everything inside is an offset; the protocol speaks lines and UTF-16 columns. */
import type { Range, TextEdit } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Edit } from '../checks/model.ts';
import type { Span } from '../notes/model.ts';

export const rangeOf = (document: TextDocument, span: Span): Range => ({
  start: document.positionAt(span.start),
  end: document.positionAt(span.end),
});

/** The span of a range, clamped to the document and never backwards. */
export function spanOf(document: TextDocument, range: Range): Span {
  const start = document.offsetAt(range.start);
  return { start, end: Math.max(start, document.offsetAt(range.end)) };
}

export const textEdits = (document: TextDocument, edits: readonly Edit[]): TextEdit[] =>
  edits.map((edit) => ({ range: rangeOf(document, edit.span), newText: edit.text }));
