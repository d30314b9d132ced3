/**
 * Fixtures in Markdown: a heading names a scenario, a sentence says what happens, a block `note` holds the note with the
 * cursor as ‸, and every other block says what the editor shows. `UPDATE=1` writes what it shows now.
 */
import { readFileSync, writeFileSync } from 'node:fs';

export interface Block {
  /** "hover", "fix: Write 2-0". */
  readonly asks: string;
  readonly expected: string;
}

export interface Scenario {
  readonly title: string;
  readonly note: string;
  readonly blocks: readonly Block[];
}

const FENCE = /^```(.+)\n([\s\S]*?)^```$/gm;

interface Section {
  readonly title: string;
  readonly start: number;
  readonly end: number;
}

/** Headings of the second level that do not stand in a block. */
function sections(text: string): Section[] {
  const outside = text.replace(FENCE, (whole) => whole.replace(/[^\n]/g, ' '));
  const heads = [...outside.matchAll(/^## (.+)$/gm)];
  return heads.map((head, index) => ({
    title: head[1]!.trim(),
    start: head.index,
    end: heads[index + 1]?.index ?? text.length,
  }));
}

export function readScenarios(path: string): Scenario[] {
  const text = readFileSync(path, 'utf8');
  return sections(text).map(({ title, start, end }) => {
    const found = [...text.slice(start, end).matchAll(FENCE)];
    const blocks = found.map((match) => ({ asks: match[1]!.trim(), expected: match[2]! }));
    const note = blocks.find((block) => block.asks === 'note')?.expected ?? '';
    return { title, note, blocks: blocks.filter((block) => block.asks !== 'note') };
  });
}

/** Writes an answer into the fixture in place of what was expected. */
export function rewrite(path: string, title: string, asks: string, answer: string): void {
  const text = readFileSync(path, 'utf8');
  const { start, end } = sections(text).find((section) => section.title === title)!;
  const written = text
    .slice(start, end)
    .replace(FENCE, (whole, name: string) =>
      name.trim() === asks ? `\`\`\`${name}\n${answer}\`\`\`` : whole,
    );
  writeFileSync(path, text.slice(0, start) + written + text.slice(end));
}

export const CURSOR = '‸';

/** The note without its cursor, and where the cursor was. */
export function takeCursor(note: string): { text: string; line: number; character: number } {
  const at = note.indexOf(CURSOR);
  const before = (at < 0 ? '' : note.slice(0, at)).split('\n');
  return { text: note.replace(CURSOR, ''), line: before.length - 1, character: before.at(-1)!.length };
}
