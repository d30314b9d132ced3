/** Reads the sentence bank: tables of twins, or pairs of fenced notes, below headings that say what they are about. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface Twin {
  readonly file: string;
  readonly line: number;
  readonly right: string;
  readonly wrong: string;
}

const FOLDER = join(import.meta.dirname, 'bank');

export function readBank(): Twin[] {
  return readdirSync(FOLDER)
    .filter((name) => name.endsWith('.md'))
    .sort()
    .flatMap((file) => readFile(file, readFileSync(join(FOLDER, file), 'utf8')));
}

function readFile(file: string, text: string): Twin[] {
  const lines = text.split('\n');
  const twins: Twin[] = [];
  let right: { line: number; text: string } | undefined;
  for (let i = 0; i < lines.length; i++) {
    const row = /^\| (.+?) +\| (.+?) +\|$/.exec(lines[i]!);
    if (row && row[1] !== 'True' && !row[1]!.startsWith('--'))
      twins.push({ file, line: i + 1, right: row[1]!, wrong: row[2]! });
    const fence = /^```(true|false)$/.exec(lines[i]!);
    if (!fence) continue;
    const end = lines.indexOf('```', i + 1);
    const note = lines.slice(i + 1, end).join('\n');
    if (fence[1] === 'true') right = { line: i + 1, text: note };
    else if (right) twins.push({ file, line: right.line, right: right.text, wrong: note });
    i = end;
  }
  return twins;
}
