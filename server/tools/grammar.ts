/**
 * Writes grammars/sizewright.tmLanguage.json, which colours sizes in Markdown as one types, and grammars/NOTATIONS.md,
 * which documents every notation. Both come from grammars/notations.
 *
 * Usage: tsx server/tools/grammar.ts
 */
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { NOTATIONS, type Notation } from '../../grammars/notations/index.ts';
import { SYSTEM_NAMES } from '../src/sizes/format.ts';

const GRAMMARS = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'grammars');
export const GRAMMAR_FILE = join(GRAMMARS, 'sizewright.tmLanguage.json');
export const NOTATIONS_FILE = join(GRAMMARS, 'NOTATIONS.md');

/** Paragraphs, headings, lists, quotes, cells and link texts; never code, HTML comments or front matter. */
const SELECTOR =
  'L:text.html.markdown - (markup.fenced_code, markup.raw, markup.inline.raw, comment, meta.embedded)';

/** The pattern as Oniguruma takes it. */
const pattern = (notation: Notation): string =>
  notation.anyCase ? `(?i)${notation.pattern}` : notation.pattern;

/** Notations that only the context can tell are left to the language server, which sees it. */
export const coloured = (notation: Notation): boolean => notation.contextual !== true;

export function grammar(): string {
  const rules = NOTATIONS.filter(coloured).map((notation) => ({
    name: `constant.numeric.size.${notation.id}.sizewright`,
    match: pattern(notation),
  }));
  const written = {
    name: 'Sizes in clinical notes',
    scopeName: 'sizewright.injection',
    injectionSelector: SELECTOR,
    patterns: rules,
  };
  return `${JSON.stringify(written, null, 2)}\n`;
}

const code = (text: string): string => `\`${text.replace(/`/g, "'")}\``;
const list = (texts: readonly string[]): string => texts.map(code).join(' · ');

function section(notation: Notation): string {
  const system = notation.system ? SYSTEM_NAMES[notation.system] : 'told by the context';
  return [
    `## ${notation.title}`,
    '',
    notation.about,
    '',
    `- System: ${system}`,
    `- Written: ${list(notation.examples)}`,
    `- Left alone: ${list(notation.counterExamples)}`,
    coloured(notation)
      ? '- Coloured as one types.'
      : '- Coloured once the language server has seen the context.',
    '',
  ].join('\n');
}

export function notationsPage(): string {
  const head = [
    '# How a size may be written',
    '',
    'Generated from `grammars/notations` by `npx tsx server/tools/grammar.ts`; do not edit.',
    '',
    'A notation says how a size can look. Whether it is one, the words around it decide: threads, needles, catheters and',
    'tubes, the table, the list and the heading. Where a reader would have to ask, so does the check.',
    '',
    '',
  ].join('\n');
  return head + NOTATIONS.map(section).join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(GRAMMAR_FILE, grammar());
  writeFileSync(NOTATIONS_FILE, notationsPage());
}
