/**
 * One stretch of a Markdown note, read by itself. What it says is relative to its own start, so that it can
 * be kept and used again wherever the same text stands.
 */
import type { Heading, Previous } from './draft.ts';
import { oneLine } from './labels.ts';
import { parseMarkdown } from './markdown.ts';
import { ProseBuilder } from './markdown-prose.ts';
import type { Comment, Passage, Span, Table } from './model.ts';

export interface Stretch {
  /** Passages, lists and tables are numbered from 0; offsets are relative to the stretch. */
  readonly passages: readonly Passage[];
  readonly tables: readonly Table[];
  readonly comments: readonly Comment[];
  readonly frontMatter?: Span;
  readonly lists: number;
  /** Labels defined here, as written. */
  readonly labels: readonly string[];
  /** Block that ends the stretch; the inherited one when nothing here comes between what is before and after. */
  readonly previous?: Previous;
  /** Headings in force at the end, outermost first. */
  readonly headings: readonly Heading[];
  /** False when code, math or HTML is still open at the end. */
  readonly closed: boolean;
}

/** Ends any paragraph and list; if it comes out as itself, nothing was open before it. */
const RULE = '***\n';

/** Definitions that stand elsewhere, so that references to them are read as such. */
function define(labels: readonly string[]): string {
  return labels.map((label) => `[${oneLine(label)}]: x\n\n`).join('');
}

/**
 * Reads one stretch. `first`: it stands at the very start of the note. `labels`: those defined elsewhere
 * that it may refer to (none with `first`).
 */
export function readStretch(text: string, first: boolean, labels: readonly string[]): Stretch {
  const before = first ? '' : `${define(labels)}${RULE}\n`;
  const builder = new ProseBuilder(text, before.length);
  const after = /[\r\n]$/.test(text) ? '\n' : '\n\n';
  parseMarkdown(`${before}${text}${after}${RULE}`, builder);
  return builder.stretch();
}
