/** On what grounds each size of a text was read: what a hover and a question tell of it, beyond what the fixtures say. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { findMentions } from '../../server/src/mentions/index.ts';
import type { Mention } from '../../server/src/mentions/model.ts';
import { readNote } from '../../server/src/notes/index.ts';
import type { Note } from '../../server/src/notes/model.ts';
import { BARE } from './bare-cases.ts';
import { casesOf } from './fixtures.ts';

const NOTATIONS = join(import.meta.dirname, '../notations');

/** The notes of the fixtures and of the bare numbers. */
export const groundTexts = (): string[] => [
  ...readdirSync(NOTATIONS)
    .filter((name) => name.endsWith('.md'))
    .sort()
    .flatMap((name) => casesOf(readFileSync(join(NOTATIONS, name), 'utf8')).map(({ note }) => note)),
  ...BARE.map(([note]) => note),
];

const onOneLine = (text: string): string => text.replaceAll('\n', '⏎');

/** Notation, rule and what it saw; how the number is written; what each way to take it would be written as. */
function groundsOf({ text, notation, evidence, spoken, decimals, source, readings, sizes }: Mention): string {
  const seen = evidence.map(({ rule, saw }) => `${rule} “${saw}”`);
  const ways = readings.map(
    ({ write, size }) => `→ ${write} (${size ? `${size.system} ${size.value}` : 'no size'})`,
  );
  const read = sizes.map(({ system, value }) => `${system} ${value}`);
  const number = [spoken ? 'in words' : '', decimals > 0 ? `${decimals} decimals` : ''].filter(Boolean);
  return [`${source.start} \`${text}\` ${notation}`, ...read, ...number, ...seen, ...ways].join(', ');
}

export const groundsIn = (note: Note): readonly string[] =>
  findMentions(note).map((mention) => `  ${onOneLine(groundsOf(mention))}`);

/** A text, and the grounds of its sizes below it. */
export const groundBlock = (text: string): string =>
  [`> ${onOneLine(text)}`, ...groundsIn(readNote(text))].join('\n');
