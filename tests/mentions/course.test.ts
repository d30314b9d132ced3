/**
 * Every size of the demo course as it is read, with its device, material and bounds, in the order of the text. `UPDATE=1`
 * writes the list anew; read the difference.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readIn } from './fixtures.ts';

const COURSE = join(import.meta.dirname, '../course');
const STORED = join(import.meta.dirname, 'course.golden.txt');
const notes = readdirSync(COURSE)
  .filter((name) => name.endsWith('.md'))
  .sort();

const listed = (name: string): string =>
  [`# ${name}`, ...readIn(readFileSync(join(COURSE, name), 'utf8'))].join('\n');

if (process.env.UPDATE) writeFileSync(STORED, `${notes.map(listed).join('\n\n')}\n`);

it.each(notes)('%s is read as it was', (name) => {
  expect(readFileSync(STORED, 'utf8').trimEnd().split('\n\n')).toContain(listed(name));
});
