/** A course in continuous integration: settings, accepted findings, revisions, cache, threads. */
import { readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CHECK, folderOf, git, jsonLines, RIGHT, sizewright, WRONG } from './support.ts';

const SETTINGS = 'sizewright.course.json';
const RECORD = 'sizewright.accepted.json';
const settings = (value: unknown): string => JSON.stringify(value, null, 2);
const found = (cwd: string, ...args: string[]) =>
  jsonLines<{ file: string; line: number; severity: string }>(
    sizewright(['check', '-r', 'jsonl', ...args], { cwd }).stdout,
  );

describe('settings', () => {
  test('severity by check; the nearest file decides, key by key', () => {
    const cwd = folderOf({
      [SETTINGS]: settings({ checks: { [CHECK]: 'error' } }),
      'a.md': WRONG,
      'quiet/a.md': WRONG,
      [`quiet/${SETTINGS}`]: settings({ checks: { [CHECK]: 'off' } }),
      'quiet/loud/a.md': WRONG,
      [`quiet/loud/${SETTINGS}`]: settings({ outermost: true }),
    });
    expect(found(cwd).map(({ file, severity }) => [file, severity])).toEqual([
      ['a.md', 'error'],
      ['quiet/loud/a.md', 'warning'],
    ]);
  });

  test('which files are notes, what is left out, ignore files', () => {
    const cwd = folderOf({
      [SETTINGS]: settings({ notes: ['**/*.md', '**/*.text'], leaveOut: ['drafts/**', '*.old.md'] }),
      '.gitignore': 'build/\n*.tmp.md\n!keep.tmp.md\n',
      ...Object.fromEntries(
        [
          'a.md',
          'b.text',
          'c.markdown',
          'drafts/d.md',
          'e.old.md',
          'build/f.md',
          'g.tmp.md',
          'keep.tmp.md',
        ].map((name) => [name, WRONG]),
      ),
    });
    expect(found(cwd).map(({ file }) => file)).toEqual(['a.md', 'b.text', 'keep.tmp.md']);
    expect(found(cwd, 'drafts/d.md')).toEqual([]);
  });

  test('a wrong key or value: file, line, what is allowed; nothing runs', () => {
    const cwd = folderOf({
      'a.md': WRONG,
      [SETTINGS]:
        '{\n  "checks": { "size-comparisons": "warning" },\n  "assume": { "device": 7 },\n  "leavOut": []\n}\n',
    });
    const { status, stdout, stderr } = sizewright(['check', '.'], { cwd });
    expect(status).toBe(2);
    expect(stdout).toBe('');
    const [first, second, third] = stderr.trim().split('\n');
    expect(first).toMatch(
      /^sizewright: sizewright\.course\.json:2:15: no check "size-comparisons"; did you mean "size-comparison"\? \(allowed: size-direction, /,
    );
    expect(second).toMatch(
      /^sizewright: sizewright\.course\.json:3:25: "device": no value "7" \(allowed: needle, /,
    );
    expect(third).toMatch(
      /^sizewright: sizewright\.course\.json:4:3: no key "leavOut"; did you mean "leaveOut"\?/,
    );
  });

  test('what a course takes for granted is used: local names', () => {
    const note = 'Zipline is a monofilament.\n';
    const cwd = folderOf({ 'a.md': note });
    expect(found(cwd)).toEqual([]);
    writeFileSync(join(cwd, SETTINGS), settings({ style: { gauge: '18 G' } }));
    writeFileSync(join(cwd, 'a.md'), 'Use an 18-gauge needle.\n');
    expect(found(cwd).map(({ severity }) => severity)).toEqual(['hint']);
  });
});

describe('accepted findings', () => {
  test('are not reported again, also when lines move and neighbours change; new ones are', () => {
    const cwd = folderOf({ 'a.md': `# T\n\n${WRONG} The end.\n`, 'b/c.md': `${WRONG}\n` });
    expect(sizewright(['accept'], { cwd }).stdout).toBe(`2 findings recorded in ${RECORD}.\n`);
    expect(sizewright(['check'], { cwd })).toMatchObject({ status: 0, stderr: '' });
    writeFileSync(
      join(cwd, 'a.md'),
      `# T\n\nNew words above.\n\nAnd before. ${WRONG.replace('thicker than', 'thicker\nthan')} Another end.\n\nAn 18 G is wider than a 14 G.\n`,
    );
    expect(
      found(cwd)
        .filter((one) => !('accepted' in one))
        .map(({ file, line }) => [file, line]),
    ).toEqual([['a.md', 8]]);
    expect(sizewright(['check'], { cwd }).stdout).toContain('2 accepted earlier');
    expect(sizewright(['check', '--no-accepted'], { cwd }).stdout).toContain('3 contradictions');
  });

  test('the second of two equal statements is a finding of its own', () => {
    const cwd = folderOf({ 'a.md': `${WRONG}\n` });
    sizewright(['accept'], { cwd });
    writeFileSync(join(cwd, 'a.md'), `${WRONG}\n\n${WRONG}\n`);
    expect(sizewright(['check'], { cwd }).stdout).toContain('1 contradiction (1 accepted earlier)');
  });

  test('entries whose findings are gone are told and removed on request', () => {
    const cwd = folderOf({ 'a.md': WRONG, 'b.md': WRONG });
    sizewright(['accept'], { cwd });
    writeFileSync(join(cwd, 'a.md'), RIGHT);
    const { status, stderr } = sizewright(['check'], { cwd });
    expect(status).toBe(0);
    expect(stderr).toContain('1 accepted finding is gone; remove with: sizewright accept --prune');
    expect(sizewright(['check', 'b.md'], { cwd }).stderr).toBe('');
    expect(sizewright(['accept', '--prune'], { cwd }).stdout).toBe(`1 entries removed from ${RECORD}.\n`);
    const { accepted } = JSON.parse(readFileSync(join(cwd, RECORD), 'utf8'));
    expect(accepted).toMatchObject([{ note: 'b.md', check: CHECK }]);
  });

  test('what differs between notes is accepted as well', () => {
    const cwd = folderOf({
      'a.md': 'The triple-lumen line is 7 Fr.\n',
      'b.md': 'The triple-lumen line is 9 Fr.\n',
    });
    expect(found(cwd)).toHaveLength(2);
    sizewright(['accept'], { cwd });
    expect(sizewright(['check', '-t', 'hint'], { cwd })).toMatchObject({ status: 0, stderr: '' });
    // The findings of a part of the course are not all there: entries are not told to be stale.
    expect(sizewright(['check', 'a.md'], { cwd }).status).toBe(0);
  });

  test('a record that is none is refused', () => {
    const cwd = folderOf({ 'a.md': WRONG, [RECORD]: '{ "accepted": [ { "note": "a.md" } ] }' });
    expect(sizewright(['check'], { cwd })).toMatchObject({ status: 2, stdout: '' });
  });
});

describe('since a revision', () => {
  function repository(): string {
    const cwd = folderOf({
      'old.md': `${WRONG}\n`,
      'sub/moved.md': `${WRONG}\n\n${'Long text stays. '.repeat(9)}\n`,
      'same.md': WRONG,
    });
    git(cwd, 'init', '-q', '-b', 'main');
    git(cwd, 'add', '.');
    git(cwd, 'commit', '-qm', 'Start');
    return cwd;
  }

  test('only findings that were not there: in changed, new and untracked notes, not in moved ones', () => {
    const cwd = repository();
    git(cwd, 'mv', 'sub/moved.md', 'moved here.md');
    writeFileSync(join(cwd, 'old.md'), `New line.\n\n${WRONG}\n\nAn 18 G is wider than a 14 G.\n`);
    writeFileSync(join(cwd, 'ünew.md'), WRONG);
    expect(found(cwd, '--since', 'main').map(({ file, line }) => [file, line])).toEqual([
      ['old.md', 5],
      ['ünew.md', 1],
    ]);
    expect(
      sizewright(['check', '--since', 'HEAD', `../${cwd.split('/').at(-1)}`], {
        cwd: join(cwd, 'sub').replace(/\/sub$/, ''),
      }).status,
    ).toBe(1);
  });

  test('nothing changed: nothing to report', () => {
    const cwd = repository();
    expect(sizewright(['check', '--since', 'HEAD'], { cwd })).toMatchObject({ status: 0 });
  });

  test('a program that the settings of the repository name is not started', () => {
    const cwd = repository();
    const hook = join(cwd, '.git', 'watch.sh');
    writeFileSync(hook, `#!/bin/sh\ntouch '${join(cwd, 'started')}'\n`, { mode: 0o755 });
    git(cwd, 'config', 'core.fsmonitor', hook);
    writeFileSync(join(cwd, 'old.md'), `${WRONG}\n\nAn 18 G is wider than a 14 G.\n`);
    expect(found(cwd, '--since', 'main')).toHaveLength(1);
    expect(readdirSync(cwd)).not.toContain('started');
    git(cwd, 'status');
    expect(readdirSync(cwd)).toContain('started');
  });

  test.each(['gone', '--output=x', 'HEAD:old.md', ''])('no such revision: %j', (name) => {
    const cwd = repository();
    const { status, stderr } = sizewright(['check', `--since=${name}`], { cwd });
    expect(status).toBe(2);
    expect(stderr).toBe(`sizewright: there is no revision "${name}" in this repository\n`);
    expect(readdirSync(cwd)).not.toContain('x');
  });

  test('outside a repository', () => {
    const { status, stderr } = sizewright(['check', '--since', 'HEAD'], {
      cwd: folderOf(),
      env: { GIT_CEILING_DIRECTORIES: '/' },
    });
    expect(status).toBe(2);
    expect(stderr).toMatch(/^sizewright: git: .*not a git repository/);
  });
});

describe('cache and threads never change a result', () => {
  const many = Object.fromEntries(
    Array.from({ length: 60 }, (_, i) => [
      `week-${i % 7}/n${i}.md`,
      i % 3 ? `Words.\n\n${WRONG} ${i}\n` : 'Nothing.\n',
    ]),
  );

  test('one thread, three threads: the same report in the same order', () => {
    const large = `${'Listen, then ask again. '.repeat(25_000)}\n\n${WRONG}\n`;
    const cwd = folderOf({ ...many, 'bad.md': Buffer.from([0xff, 0xff, 0xff]), 'week-3/large.md': large });
    const one = sizewright(['check', '-r', 'jsonl', '--threads', '1'], { cwd });
    const three = sizewright(['check', '-r', 'jsonl', '--threads', '3'], { cwd });
    expect(three).toEqual(one);
    expect(one.status).toBe(2);
  });

  test('cold, warm, after a change, with other settings, with a broken cache: as without a cache', () => {
    const cwd = folderOf(many);
    const cache = join(folderOf(), 'deep', 'cache');
    const same = () => {
      const without = sizewright(['check', '-r', 'jsonl'], { cwd });
      for (let i = 0; i < 2; i++)
        expect(sizewright(['check', '-r', 'jsonl', '--cache', cache], { cwd })).toEqual(without);
      return without.stdout.split('\n').length;
    };
    const first = same();
    writeFileSync(join(cwd, 'week-1', 'n1.md'), RIGHT);
    rmSync(join(cwd, 'week-2', 'n2.md'));
    expect(same()).toBe(first - 2);
    writeFileSync(join(cwd, SETTINGS), settings({ checks: { [CHECK]: 'off' } }));
    expect(same()).toBe(1);
    rmSync(join(cwd, SETTINGS));
    const [name] = readdirSync(cache);
    writeFileSync(join(cache, name!), '{"entries":');
    expect(same()).toBe(first - 2);
    expect(sizewright(['list', '-r', 'jsonl', '--cache', cache], { cwd }).stdout).toBe(
      sizewright(['list', '-r', 'jsonl'], { cwd }).stdout,
    );
  });

  test('a change that keeps size and date is seen while the file is young', () => {
    const cwd = folderOf({ 'a.md': WRONG });
    const when = new Date();
    utimesSync(join(cwd, 'a.md'), when, when);
    sizewright(['check', '--cache', 'c'], { cwd });
    writeFileSync(join(cwd, 'a.md'), RIGHT);
    utimesSync(join(cwd, 'a.md'), when, when);
    expect(sizewright(['check', '--cache', 'c'], { cwd }).status).toBe(0);
  });
});
