import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CHECK, folderOf, jsonLines, RIGHT, sizewright, WRONG } from './support.ts';

describe('what check prints', () => {
  test('path, line and column come first, then what the text says, what holds and the source', () => {
    const cwd = folderOf({ 'a.md': `# Needles\n\n${WRONG}\n` });
    const { stdout, status, stderr } = sizewright(['check', 'a.md'], { cwd });
    expect(stderr).toBe('');
    expect(status).toBe(1);
    const lines = stdout.split('\n');
    expect(lines[0]).toMatch(/^a\.md:3:[0-9]+: warning: /);
    expect(lines[1]).toBe(`    ${WRONG}`);
    expect(lines[2]).toMatch(/^ +\^+$/);
    expect(lines[3]).toMatch(/^ {4}holds {3}/);
    expect(lines[4]).toMatch(new RegExp(`^ {4}source {2}.+\\(${CHECK}\\)$`));
    expect(stdout).toContain('1 note read: 1 contradiction.');
    expect(stdout).toContain('A teaching aid, not advice on a patient.');
  });

  test('the marks stand under the words they mean, also after wide letters and tabs', () => {
    const cwd = folderOf({ 'a.md': `針と糸の話：${WRONG}\n\n>\tÉtude: ${WRONG}\n` });
    const [first, second] = sizewright(['check', 'a.md'], { cwd }).stdout.split('\n\n');
    for (const block of [first!, second!]) {
      const [, text, marks] = block.split('\n');
      const width = (part: string) => [...part].reduce((sum, c) => sum + (c > '\u2e80' ? 2 : 1), 0);
      expect(width(text!.slice(0, text!.indexOf('thicker')))).toBe(marks!.indexOf('^'));
      expect(marks!.trim().length).toBe('thicker'.length);
    }
  });

  test('nothing found: status 0 and one line that says so', () => {
    const cwd = folderOf({ 'a.md': `${RIGHT}\n` });
    const { stdout, status } = sizewright(['check', 'a.md'], { cwd });
    expect(status).toBe(0);
    expect(stdout).toMatch(/^1 note read: nothing to report\.\n/);
  });

  test('no colour on a pipe', () => {
    const cwd = folderOf({ 'a.md': WRONG });
    expect(sizewright(['check', 'a.md'], { cwd }).stdout).not.toContain('\u001b');
  });

  test('control characters and direction overrides in a note are written out', () => {
    const cwd = folderOf({ 'a.md': `\u001b[31mred \u202e${WRONG} \u0007` });
    const { stdout } = sizewright(['check', 'a.md'], { cwd });
    expect(stdout).toContain('\\u001b[31mred \\u202e');
    expect(stdout).not.toMatch(/[\u0007\u001b\u202e]/);
  });
});

describe('exit status', () => {
  test.each([
    ['hint', 1],
    ['warning', 1],
    ['error', 0],
    ['never', 0],
  ])('threshold %s gives %i for a warning', (threshold, status) => {
    const cwd = folderOf({ 'a.md': WRONG });
    expect(sizewright(['check', '-t', threshold, 'a.md'], { cwd }).status).toBe(status);
  });

  test.each([
    ['an unknown option', ['check', '--nothing'], /unknown option '--nothing'/],
    ['an unknown command', ['chekc'], /unknown command 'chekc'/],
    ['an unknown report', ['check', '-r', 'pdf'], /no report "pdf"; there are text, jsonl/],
    ['a report whose name every object has', ['check', '-r', 'constructor'], /no report "constructor"/],
    ['two reports on standard output', ['check', '-r', 'text', '-r', 'sarif'], /only one report/],
    ['a threshold that is none', ['check', '-t', 'high'], /threshold/],
    ['a missing file', ['check', 'gone.md'], /gone\.md: no such file or folder/],
    ['a pattern without matches', ['check', 'gone/**/*.md'], /gone/],
    ['a shard out of range', ['check', '--shard', '3/2'], /--shard 3\/2: write it as 2\/8/],
    ['no size to convert', ['convert', 'banana'], /"banana" is no size/],
    ['no such device', ['convert', '18 G', '--device', 'nedle'], /no device "nedle"; there are needle, /],
    ['no such material', ['convert', '3-0', '--material', 'x'], /no material "x"; there are /],
    ['an unknown check', ['explain', 'nothing'], /no check "nothing"; there are /],
    ['a line past the end', ['explain', 'a.md:99'], /there is no line 99; the last is 2/],
  ])('%s: 2, one line on standard error, no stack', (_, args, message) => {
    const cwd = folderOf({ 'a.md': `${RIGHT}\n` });
    const { status, stderr, stdout } = sizewright(args, { cwd });
    expect(status).toBe(2);
    expect(stderr).toMatch(message);
    expect(stderr).toMatch(/^sizewright: /);
    expect(stderr.trim().split('\n').length).toBeLessThanOrEqual(2);
    expect(stderr).not.toMatch(/ {4}at |\.ts:/);
    expect(stdout).toBe('');
  });

  test('help and version: 0, on standard output', () => {
    for (const args of [['--help'], ['check', '--help'], ['--version']]) {
      const { status, stdout, stderr } = sizewright(args);
      expect([args, status, stderr]).toEqual([args, 0, '']);
      expect(stdout.length).toBeGreaterThan(4);
    }
    expect(sizewright(['check', '--help']).stdout).toContain('Examples:');
  });
});

describe('paths', () => {
  test('folders are walked in order; hidden folders and installed packages are left alone', () => {
    const cwd = folderOf({
      'b/note.md': WRONG,
      'a.md': WRONG,
      'c.markdown': WRONG,
      'd.txt': WRONG,
      'node_modules/p/readme.md': WRONG,
      '.hidden/x.md': WRONG,
    });
    const files = jsonLines(sizewright(['check', '-r', 'jsonl', '.'], { cwd }).stdout).map((one) => one.file);
    expect(files).toEqual(['a.md', 'b/note.md', 'c.markdown']);
  });

  test('a file named is read whatever its ending; patterns match below their folder', () => {
    const cwd = folderOf({ 'd.txt': WRONG, 'x/e.md': WRONG, 'x/y/f.md': WRONG, 'x/y/g.mdx': WRONG });
    const files = (...args: string[]) =>
      jsonLines(sizewright(['check', '-r', 'jsonl', ...args], { cwd }).stdout).map((one) => one.file);
    expect(files('d.txt')).toEqual(['d.txt']);
    expect(files('x/**/*.md')).toEqual(['x/e.md', 'x/y/f.md']);
    expect(files('x/e.md', 'x')).toEqual(['x/e.md', 'x/y/f.md']);
  });

  test('standard input, with the name it is taken to have', () => {
    const cwd = folderOf();
    const as = (...args: string[]) =>
      jsonLines(sizewright(['check', '-r', 'jsonl', '-', ...args], { cwd, input: WRONG }).stdout)[0]!;
    expect(as().file).toBe('-');
    expect(as('--name', 'week/draft.md').file).toBe('week/draft.md');
  });

  test('a list of paths, one a line or ended by NUL', () => {
    const odd = 'two\nlines and spaces.md';
    const cwd = folderOf({ 'a.md': WRONG, [odd]: WRONG });
    const files = (input: string) =>
      jsonLines(sizewright(['check', '-r', 'jsonl', '--paths-from', '-'], { cwd, input }).stdout).map(
        (one) => one.file,
      );
    expect(files('a.md\n')).toEqual(['a.md']);
    expect(files(`a.md\0${odd}\0`)).toEqual(['a.md', odd]);
  });
});

describe('list, convert, explain', () => {
  test('a mention a line, with its place in UTF-16 units', () => {
    const cwd = folderOf({ 'a.md': '🩺 Pick an 18 G needle, a 14–16 G cannula.\n' });
    const [first, second] = jsonLines(sizewright(['list', '-r', 'jsonl', 'a.md'], { cwd }).stdout);
    expect(first).toMatchObject({
      file: 'a.md',
      line: 1,
      endLine: 1,
      column: 12,
      endColumn: 16,
      text: '18 G',
      system: 'needle-gauge',
      value: '18',
    });
    expect(second).toMatchObject({ system: 'needle-gauge', value: '14..16' });
  });

  test('convert says what a size is in the other systems', () => {
    // 1 Fr is 1/3 mm by definition (UCUM, unit [Ch]).
    const { stdout, status } = sizewright(['convert', '18 Fr']);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^18 Fr {2}French/);
    expect(stdout).toMatch(/\n {2}6 mm\s/);
    expect(stdout).toContain('Read the device label');
  });

  test('explain reads a line with the settings that check would use, and lists every check', () => {
    const cwd = folderOf({
      'a.md': 'Zipline is braided.\n',
      'sizewright.course.json': '{ "names": { "materials": { "zipline": "polypropylene" } } }',
    });
    const mentions = sizewright(['explain', 'a.md:1'], { cwd });
    expect(mentions.status).toBe(0);
    expect(sizewright(['explain'], { cwd }).stdout).toMatch(new RegExp(`^${CHECK} +These sizes`, 'm'));
  });

  test('explain: a check, and how a line was read', () => {
    const cwd = folderOf({ 'a.md': `# T\n\n${WRONG}\n` });
    expect(sizewright(['explain', CHECK]).stdout).toMatch(new RegExp(`^${CHECK}: `));
    const line = sizewright(['explain', join(cwd, 'a.md:3')]).stdout;
    expect(line).toContain(WRONG);
    expect(line).toContain('contradicted');
    expect(line).toMatch(/ {4}read {4}/);
    expect(line).toMatch(/ {4}holds {3}/);
  });
});
