/** Small pieces of Markdown for hovers. Text from a note is escaped, so it can never become markup. */

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

const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Base64 of the UTF-8 bytes; written out because this layer knows neither Node nor a browser. */
export function base64(text: string): string {
  const bytes = utf8(text);
  let out = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const group = (bytes[i]! << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    out += DIGITS[group >> 18]! + DIGITS[(group >> 12) & 63]!;
    out += i + 1 < bytes.length ? DIGITS[(group >> 6) & 63]! : '=';
    out += i + 2 < bytes.length ? DIGITS[group & 63]! : '=';
  }
  return out;
}

function utf8(text: string): number[] {
  const bytes: number[] = [];
  for (const character of text) {
    const code = character.codePointAt(0)!;
    if (code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), 0x80 | (code & 63));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63));
    else
      bytes.push(
        0xf0 | (code >> 18),
        0x80 | ((code >> 12) & 63),
        0x80 | ((code >> 6) & 63),
        0x80 | (code & 63),
      );
  }
  return bytes;
}
