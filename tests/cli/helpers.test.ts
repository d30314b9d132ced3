/** Completions, manual, watch, action and hook: what stands around the command. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CHECK, CLI, folderOf, jsonLines, RIGHT, sizewright, WRONG } from './support.ts';

const ROOT = join(import.meta.dirname, '../..');
const has = (program: string): boolean => spawnSync('sh', ['-c', `command -v ${program}`]).status === 0;

describe('completions', () => {
  /** What bash offers for the words typed so far. */
  function offered(...words: string[]): string[] {
    const script = sizewright(['completions', 'bash']).stdout;
    const ask = `COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _sizewright; printf '%s\\n' "\${COMPREPLY[@]}"`;
    const { stdout, stderr } = spawnSync(
      'bash',
      ['-c', `${script}\n${ask}`, 'bash', 'sizewright', ...words],
      { encoding: 'utf8' },
    );
    expect(stderr).toBe('');
    return stdout.trim().split('\n');
  }

  test('commands, options of a command, files', () => {
    expect(offered('co')).toEqual(['coverage', 'convert', 'completions']);
    expect(offered('check', '--th')).toEqual(['--threads', '--threshold']);
    expect(offered('fix', '--pre')).toEqual(['--preview']);
    expect(offered('check', '/et')).toContain('/etc');
  });

  test.each(['zsh', 'fish'])('%s: every command is there and the shell accepts it', (shell) => {
    const script = sizewright(['completions', shell]).stdout;
    for (const command of ['check', 'list', 'fix', 'accept', 'coverage', 'merge', 'convert', 'explain'])
      expect(script).toContain(command);
    if (has(shell)) expect(spawnSync(shell, ['-n', '-c', script], { encoding: 'utf8' }).stderr).toBe('');
  });

  test('no such shell', () => {
    expect(sizewright(['completions', 'cmd'])).toMatchObject({ status: 2, stdout: '' });
  });
});

describe('manual page', () => {
  test('names every option of every command', () => {
    const page = sizewright(['manual']).stdout;
    expect(page).toMatch(/^\.TH SIZEWRIGHT 1 /);
    for (const option of ['\\-\\-since', '\\-\\-shard', '\\-\\-preview', '\\-\\-prune', '\\-\\-threshold'])
      expect(page).toContain(option);
    expect(page).toContain('Read the device label');
  });

  test.runIf(has('groff'))('is set without a warning', () => {
    const { stderr, stdout } = spawnSync('groff', ['-man', '-ww', '-Tutf8'], {
      input: sizewright(['manual']).stdout,
      encoding: 'utf8',
    });
    expect(stderr).toBe('');
    // Bold letters are struck twice.
    expect(stdout.replace(/.\u0008/gu, '')).toContain('sizewright check');
  });
});

describe('watch', () => {
  test('checks once, and a note again when it changes; ends when interrupted', async () => {
    const cwd = folderOf({ 'a.md': RIGHT, 'sub/b.md': RIGHT });
    const child = spawn(process.execPath, [CLI, 'check', '--watch'], {
      cwd,
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let seen = '';
    child.stdout.setEncoding('utf8').on('data', (text) => {
      seen += text;
    });
    const until = async (pattern: RegExp): Promise<void> => {
      for (let i = 0; i < 800 && !pattern.test(seen); i++) await new Promise((done) => setTimeout(done, 50));
      expect(seen).toMatch(pattern);
    };
    try {
      await until(/2 notes read: nothing to report/);
      await new Promise((done) => setTimeout(done, 300));
      writeFileSync(join(cwd, 'sub/b.md'), WRONG);
      await until(/sub\/b\.md:1:18: warning: [\s\S]*1 note read: 1 contradiction/);
      writeFileSync(join(cwd, 'sub/b.md'), RIGHT);
      await until(/1 contradiction[\s\S]*1 note read: nothing to report/);
    } finally {
      child.kill('SIGINT');
    }
    expect(await new Promise((done) => child.on('close', done))).toBe(130);
  });
});

describe('in continuous integration', () => {
  /** The script of the last step of the action. */
  function actionScript(): string {
    const text = readFileSync(join(ROOT, 'action.yml'), 'utf8');
    const script = text.slice(text.lastIndexOf('run: |') + 'run: |'.length);
    return script.replace(/^ {8}/gm, '');
  }

  function runAction(cwd: string, given: Readonly<Record<string, string>>) {
    const home = folderOf();
    mkdirSync(join(home, 'dist'));
    symlinkSync(CLI, join(home, 'dist', 'cli.cjs'));
    const env = {
      SIZES_HOME: home,
      SIZES_PATHS: '.',
      SIZES_THRESHOLD: 'warning',
      SIZES_SINCE: '',
      SIZES_SARIF: '',
      GITHUB_STEP_SUMMARY: join(cwd, 'summary.md'),
    };
    return spawnSync('bash', ['-eo', 'pipefail', '-c', actionScript()], {
      cwd,
      encoding: 'utf8',
      env: { ...process.env, ...env, ...given },
    });
  }

  test('the action annotates, writes its summary and a SARIF report, and fails on findings', () => {
    const cwd = folderOf({ 'a.md': WRONG, 'b c.md': RIGHT });
    const { stdout, stderr, status } = runAction(cwd, {
      SIZES_SARIF: 'out.sarif',
      SIZES_PATHS: 'a.md\nb c.md',
    });
    expect(stderr).toBe('');
    expect(status).toBe(1);
    expect(stdout).toMatch(/^::warning file=a\.md,line=1/);
    expect(readFileSync(join(cwd, 'summary.md'), 'utf8')).toContain(CHECK);
    expect(JSON.parse(readFileSync(join(cwd, 'out.sarif'), 'utf8')).version).toBe('2.1.0');
    expect(runAction(cwd, { SIZES_PATHS: 'b c.md' }).status).toBe(0);
  });

  test('inputs of the action are never run', () => {
    const cwd = folderOf({ 'a.md': RIGHT });
    runAction(cwd, {
      SIZES_PATHS: '$(touch ran)\n`touch ran`',
      SIZES_SINCE: '"; touch ran; "',
      SIZES_THRESHOLD: 'x; touch ran',
    });
    expect(() => readFileSync(join(cwd, 'ran'))).toThrow();
    expect(readFileSync(join(ROOT, 'action.yml'), 'utf8').split('run: |').slice(1).join('')).not.toContain(
      'inputs.paths }}"',
    );
  });

  test('the hook definition calls a command that exists', () => {
    const hook = readFileSync(join(ROOT, '.pre-commit-hooks.yaml'), 'utf8');
    const [, command = ''] = /entry: sizewright (\w+)/.exec(hook) ?? [];
    expect(sizewright([command, '--help']).status).toBe(0);
    const { bin } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
    expect(bin).toEqual({ sizewright: 'dist/cli.cjs' });
  });

  test('a package holds the command, the library, their types, the manual and the notices, and nothing else', () => {
    if (dirname(CLI) !== join(ROOT, 'dist')) return;
    const { stdout } = spawnSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
      cwd: ROOT,
      encoding: 'utf8',
    });
    const [{ files }] = JSON.parse(stdout) as [{ files: { path: string }[] }];
    expect(files.map(({ path }) => path).sort()).toEqual(
      [
        'CHANGELOG.md',
        'LICENSE',
        'README.md',
        ...[
          'cli.cjs',
          'cli.main.cjs',
          'index.d.ts',
          'index.js',
          'licences.txt',
          'remark.d.ts',
          'remark.js',
          'sizewright.1',
        ].map((name) => `dist/${name}`),
        'package.json',
      ].sort(),
    );
  });
});

describe('coverage and index', () => {
  const cwd = folderOf({
    'a.md': 'The higher the gauge, the thinner the needle.\n',
    'b.md': 'An 18-gauge needle, an 18 G needle, an 18 G needle.\n\nSilk is braided.\n',
    'c.md': 'The higher the French, the thinner the catheter.\n',
  });

  test('what is taught rightly, with its place; what is said wrongly or never is missing', () => {
    const topics = jsonLines<{ topic: string; extent: string; places: string[] }>(
      sizewright(['coverage', '-r', 'jsonl'], { cwd }).stdout,
    );
    const of = (id: string) => topics.find(({ topic }) => topic === id);
    expect(of('gauge-direction')).toMatchObject({
      extent: 'taught',
      places: [expect.stringMatching(/^a\.md:1:/)],
    });
    expect(of('structure')).toMatchObject({ extent: 'taught' });
    expect(of('french-direction')).toMatchObject({ extent: 'missing', places: [] });
    expect(of('gauge-against-french')).toMatchObject({ extent: 'partly' });
  });

  test('as text: rules and paradoxes, no verdict on the course', () => {
    const { stdout, status } = sizewright(['coverage'], { cwd });
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Rules\n/);
    expect(stdout).toContain('What a course leaves out is its own choice.');
  });

  test.each([
    ['by-note', /^b\.md\n(?: {2}\S.*\n)* {2}needle-gauge 18 {2}line 1\n/m],
    ['by-size', /^needle-gauge 18 {2}3 times\n {2}b\.md {2}line 1\n/m],
    ['by-system', /^needle gauge\n(?: {2}\S.*\n)* {2}18 {2}3 times, 1 note\n/m],
  ])('list groups %s', (report, expected) => {
    const { stdout, status } = sizewright(['list', '-r', report], { cwd });
    expect(status).toBe(0);
    expect(stdout).toMatch(expected);
    expect(stdout).toMatch(/\d+ size mentions in \d+ notes\.\n$/);
  });

  test('the index tells how often, how and where each size is written', () => {
    const { stdout } = sizewright(['list', '-r', 'index'], { cwd });
    expect(stdout).toContain('| 18 | 3 | 18 G ×2, 18-gauge ×1 | needle | b.md:1, b.md:1, b.md:1 |');
  });
});
