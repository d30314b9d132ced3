/**
 * The demo course: every planted mistake of `planted.json` is found where it stands, nothing else is called wrong or
 * unclear, and the report a newcomer reads is kept as `course.golden.txt` (`UPDATE=1` writes it anew).
 */
import { spawnSync } from 'node:child_process';
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../server/src/checks/model.ts';
import { Lines } from '../../server/src/cli/lines.ts';
import { analyse, mergeSettings, readSettings, SETTINGS_FILE } from '../../server/src/course/index.ts';
import planted from './planted.json' with { type: 'json' };
import { ROOT, read } from './source.ts';

const FOLDER = 'tests/course';
const GOLDEN = 'tests/house/course.golden.txt';
const notes = readdirSync(join(ROOT, FOLDER))
  .filter((name) => name !== SETTINGS_FILE)
  .sort();
const { file: ours, problems } = readSettings(read(`${FOLDER}/${SETTINGS_FILE}`));
const settings = mergeSettings(ours ? [ours] : []);

interface Found {
  readonly note: string;
  /** The line as written on which the finding starts. */
  readonly line: string;
  readonly finding: Finding;
}

function findingsOf(note: string): Found[] {
  const text = read(`${FOLDER}/${note}`);
  const lines = new Lines(text);
  return analyse(text, settings, note).findings.map((finding) => ({
    note,
    line: lines.line(lines.place(finding.span).line),
    finding,
  }));
}

const expectation = ({ kind, deliberate }: Finding): string =>
  deliberate === undefined ? kind : 'deliberate';

let all: Found[] | undefined;
/** Read by the first test that asks, not while the tests are collected. */
function found(): readonly Found[] {
  all ??= notes.flatMap(findingsOf);
  return all;
}

describe('the demo course', () => {
  it('has settings that hold, ten notes or more, and each planted line once', () => {
    expect(problems).toEqual([]);
    expect(notes.length).toBeGreaterThanOrEqual(10);
    for (const { note, line } of planted)
      expect(
        read(`${FOLDER}/${note}`)
          .split('\n')
          .filter((each) => each === line),
        line,
      ).toHaveLength(1);
  });

  it.each(planted)('$note: $mistake', ({ note, line, expect: wanted }) => {
    const here = found().filter((each) => each.note === note && each.line === line);
    expect(here.map(({ finding }) => expectation(finding))).toContain(wanted);
  });

  it('is called wrong or unclear nowhere else', () => {
    const expected = new Set(planted.map(({ note, line }) => `${note}: ${line}`));
    const others = found()
      .filter(({ finding }) => finding.kind !== 'style')
      .filter(({ note, line }) => !expected.has(`${note}: ${line}`))
      .map(({ note, line, finding }) => `${note}: ${line} — ${finding.says}`);
    expect(others).toEqual([]);
  });

  it('names a source or says that there is none, in two short sentences', () => {
    for (const { finding } of found()) {
      expect(finding.source).not.toBe('');
      expect(`${finding.says} ${finding.holds}`.length, finding.says).toBeLessThan(320);
    }
  });

  it('is reported as the stored report says', () => {
    const run = spawnSync(process.execPath, ['--import', 'tsx', 'server/src/entry/cli.ts', 'check', FOLDER], {
      cwd: ROOT,
      encoding: 'utf8',
      env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined },
    });
    expect(run.stderr).toBe('');
    expect(run.status).toBe(1);
    if (process.env.UPDATE) writeFileSync(join(ROOT, GOLDEN), run.stdout);
    expect(run.stdout).toBe(read(GOLDEN));
  });
});
