/**
 * A run that is killed at any of its file calls, or whose calls fail, leaves each file whole: as it was or as it should
 * become. Runs at the same time on one cache or one record lose nothing.
 */
import { spawn, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readAccepted } from '../../server/src/course/index.ts';
import { CLI, folderOf, sizewright } from '../cli/support.ts';

const WRONG = 'A 4-0 suture is thicker than a 2-0 suture.\n';
const RIGHT = 'A 4-0 suture is thinner than a 2-0 suture.\n';
const FAULTS = resolve('tests/hardening/faults.cjs');

/** More calls than any of these runs makes. */
const MOST = 60;
/** The exit status by which a run says that it made fewer calls. */
const NONE_LEFT = 99;

function withFault(args: readonly string[], cwd: string, way: string, at: number) {
  const env = { ...process.env, NO_COLOR: '', SIZES_FAULT: way, SIZES_FAULT_AT: String(at) };
  return spawnSync(process.execPath, ['--require', FAULTS, CLI, ...args], { cwd, env, encoding: 'utf8' });
}

/** Runs with the first, second, … call failing, until none is left; how many failed. */
function atEveryCall(check: (at: number) => number | null): number {
  for (let at = 1; at < MOST; at++) if (check(at) === NONE_LEFT) return at - 1;
  throw new Error('no end of calls');
}

const visible = (cwd: string): string[] => readdirSync(cwd).filter((name) => !name.startsWith('.'));

describe('fixing in place', () => {
  it('killed in every call: the note is whole, and the next run ends the work', () => {
    const calls = atEveryCall((at) => {
      const cwd = folderOf({ 'a.md': WRONG });
      const { status } = withFault(['fix', '.'], cwd, 'half', at);
      const text = readFileSync(join(cwd, 'a.md'), 'utf8');
      expect([WRONG, RIGHT]).toContain(text);
      expect(visible(cwd)).toEqual(['a.md']);
      if (text === WRONG) expect(sizewright(['fix', '.'], { cwd }).status).toBe(0);
      expect(readFileSync(join(cwd, 'a.md'), 'utf8')).toBe(RIGHT);
      return status;
    });
    expect(calls).toBeGreaterThanOrEqual(6);
  });

  it('failing at every call: said, status 2, nothing left behind', () => {
    let said = 0;
    atEveryCall((at) => {
      const cwd = folderOf({ 'a.md': WRONG });
      const { status, stderr } = withFault(['fix', 'a.md'], cwd, 'ENOSPC', at);
      const text = readFileSync(join(cwd, 'a.md'), 'utf8');
      expect([WRONG, RIGHT]).toContain(text);
      if (status === 2) {
        expect(stderr).toMatch(/^sizewright: a\.md: .+\n$/);
        said++;
      }
      if (text === WRONG) expect(status).toBe(2);
      if (at < 5) expect(readdirSync(cwd)).toEqual(['a.md']);
      return status;
    });
    expect(said).toBeGreaterThanOrEqual(4);
  });
});

describe('reports, records and caches', () => {
  const RUNS: readonly (readonly [string, readonly string[], string])[] = [
    ['a report', ['check', '-r', 'jsonl=out', '.'], 'out'],
    ['the record', ['accept', '--accepted', 'out', '.'], 'out'],
  ];
  it.each(RUNS)('%s: killed at every call, the former one or the new one is there', (_, args, name) => {
    const expected = folderOf({ 'a.md': WRONG });
    sizewright(args, { cwd: expected });
    const whole = readFileSync(join(expected, name), 'utf8');
    const former = '{"accepted":[]}\n';
    atEveryCall((at) => {
      const cwd = folderOf({ 'a.md': WRONG, [name]: former });
      const { status } = withFault(args, cwd, 'half', at);
      expect([former, whole]).toContain(readFileSync(join(cwd, name), 'utf8'));
      return status;
    });
  });

  it('a cache that a killed run left is of use or none, and never in the way', () => {
    atEveryCall((at) => {
      const cwd = folderOf({ 'a.md': WRONG, 'b.md': RIGHT });
      const { status } = withFault(['check', '--cache', 'kept', '.'], cwd, 'half', at);
      // A lock that was left is old for whoever comes later.
      for (const file of readdirSync(join(cwd, 'kept')).filter((each) => each.endsWith('.lock')))
        utimesSync(join(cwd, 'kept', file), 1, 1);
      const after = sizewright(['check', '--cache', 'kept', '-r', 'jsonl', '.'], { cwd });
      expect([after.status, after.stderr, after.stdout.split('\n').length]).toEqual([1, '', 2]);
      return status;
    });
  });
});

/** Starts them all, then waits for all. */
const together = (all: readonly (readonly string[])[], cwd: string): Promise<(number | null)[]> =>
  Promise.all(
    all.map(
      (args) =>
        new Promise<number | null>((done) => {
          spawn(process.execPath, [CLI, ...args], { cwd, stdio: 'ignore' }).on('exit', done);
        }),
    ),
  );

function acceptedIn(cwd: string): string[] {
  const entries = readAccepted(readFileSync(join(cwd, 'record.json'), 'utf8'));
  return typeof entries === 'string' ? [] : entries.map(({ note }) => note);
}

describe('at the same time', () => {
  const PARTS = ['a', 'b', 'c', 'd', 'e'];
  const course = () => folderOf(Object.fromEntries(PARTS.map((part) => [`${part}/note.md`, WRONG])));

  it('runs that accept into one record keep what the others accept', async () => {
    const cwd = course();
    const statuses = await together(
      PARTS.map((part) => ['accept', '--accepted', 'record.json', part]),
      cwd,
    );
    expect(statuses).toEqual(PARTS.map(() => 0));
    expect(acceptedIn(cwd)).toEqual(PARTS.map((part) => `${part}/note.md`));
    expect(readdirSync(cwd).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  it('a record written between reading and writing keeps both', async () => {
    const cwd = course();
    await together([['accept', '--accepted', 'record.json', 'a', 'b']], cwd);
    await together(
      [
        ['accept', '--accepted', 'record.json', 'c'],
        ['accept', '--accepted', 'record.json', '--prune', 'd'],
        ['accept', '--accepted', 'record.json', 'e'],
      ],
      cwd,
    );
    expect(acceptedIn(cwd)).toEqual(['a', 'b', 'c', 'e'].map((part) => `${part}/note.md`));
  });

  it('runs on one cache keep what the others found, and all see the same', async () => {
    const cwd = course();
    const statuses = await together(
      PARTS.map((part) => ['check', '--cache', 'kept', part]),
      cwd,
    );
    expect(statuses).toEqual(PARTS.map(() => 1));
    const [file, ...more] = readdirSync(join(cwd, 'kept'));
    expect(more).toEqual([]);
    const { entries } = JSON.parse(readFileSync(join(cwd, 'kept', file!), 'utf8')) as { entries: object };
    expect(Object.keys(entries)).toHaveLength(PARTS.length);
  });

  it('runs that fix the same notes leave them fixed', async () => {
    const cwd = course();
    await together(
      Array.from({ length: 3 }, () => ['fix', '.']),
      cwd,
    );
    for (const part of PARTS) expect(readFileSync(join(cwd, part, 'note.md'), 'utf8')).toBe(RIGHT);
    expect(PARTS.flatMap((part) => readdirSync(join(cwd, part)))).toEqual(PARTS.map(() => 'note.md'));
  });

  it('a lock that a killed run left is taken over', () => {
    const cwd = course();
    writeFileSync(join(cwd, '.record.json.lock'), '');
    utimesSync(join(cwd, '.record.json.lock'), 1, 1);
    expect(sizewright(['accept', '--accepted', 'record.json', 'a'], { cwd }).status).toBe(0);
    expect(statSync(join(cwd, '.record.json.lock'), { throwIfNoEntry: false })).toBeUndefined();
  });
});
