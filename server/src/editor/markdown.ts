/** Small pieces of Markdown for hovers. Text from a note is escaped, so it can never become markup. */
import { base64 } from '../sizes/index.ts';

/** The text with everything that Markdown or HTML could take as markup escaped. */
export const escapeMarkdown = (text: string): string =>
  text.replace(/[\\`*_{}[\]()#+!|<>~&$-]/g, (character) =>
    character === '<' ? '&lt;' : character === '&' ? '&amp;' : `\\${character}`,
  );

/** Text for one cell of a table. */
export const cell = (text: string): string => escapeMarkdown(text).replace(/\s+/g, ' ').trim();

/** A table with a header row; nothing when it has no rows. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  if (rows.length === 0) return '';
  const line = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;
  return [line(head), `|${head.map(() => ' --- |').join('')}`, ...rows.map(line)].join('\n');
}

/** A picture as a data address; the alternative text carries its content. */
export const picture = (alternative: string, svg: string): string =>
  `![${escapeMarkdown(alternative)}](data:image/svg+xml;base64,${base64(svg)})`;

/** Blocks, without the empty ones, with a blank line between. */
export const blocks = (parts: readonly (string | undefined)[]): string =>
  parts.filter((part) => part !== undefined && part !== '').join('\n\n');
