/** The Markdown of our own hovers as plain text, for clients that show no markup. */

/** Pictures go, tables become lines of "first: second, third", emphasis and escapes are undone. */
export const plainOf = (markdown: string): string =>
  markdown
    .split('\n')
    .flatMap((line, index, all) => plainLine(line, all[index + 1]))
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim();

function plainLine(line: string, next: string | undefined): string[] {
  // The line above the rule of a table is its head.
  if (line.startsWith('![') || isRule(line) || isRule(next ?? '')) return [];
  if (line === '---') return [''];
  return [unmarked(line.startsWith('| ') ? row(line) : line).trimEnd()];
}

const isRule = (line: string): boolean => /^\|(?: --- \|)+$/.test(line);

/** A sign of the table inside a cell has a backslash before it. */
function row(line: string): string {
  const [first = '', ...rest] = line.slice(2, -2).split(' | ');
  return `${first}: ${rest.join(', ')}`;
}

const unmarked = (line: string): string =>
  line.replace(/\\([^\w\s])|\*+|&lt;/g, (mark, escaped?: string) => escaped ?? (mark === '&lt;' ? '<' : ''));
