/** Every word of the demo course's report, note by note: what each check says, what holds, the source and the fixes. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { CHECK_REPORTS } from '../../server/src/cli/report/kinds.ts';
import { placed } from '../../server/src/cli/result.ts';
import { analyse, mergeSettings, readSettings } from '../../server/src/course/index.ts';

const COURSE = join(import.meta.dirname, '../course');
const read = (name: string): string => readFileSync(join(COURSE, name), 'utf8');
const stored = readFileSync(join(import.meta.dirname, '../house/course.golden.txt'), 'utf8');
const notes = readdirSync(COURSE)
  .filter((name) => name.endsWith('.md'))
  .sort();

it.each(notes)('%s is reported in the words that are stored', (name) => {
  const { file } = readSettings(read('sizewright.course.json'));
  const path = `tests/course/${name}`;
  const result = placed(path, analyse(read(name), mergeSettings([file!]), name), 'findings');
  const report = CHECK_REPORTS.text({ colour: false }).note(result ?? { path, findings: [], mentions: [] });
  const lines = stored.split('\n').filter((line) => line.startsWith(`${path}:`));
  expect(report.split('\n').filter((line) => line.startsWith(`${path}:`))).toEqual(lines);
  expect(stored).toContain(report.trimEnd());
});
