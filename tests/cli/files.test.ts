/** The real command on folders as they come: links in circles, unreadable files, odd bytes and names, full disks. */
import { spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CLI, folderOf, jsonLines, RIGHT, sizewright, WRONG } from './support.ts';

const files = (stdout: string) => jsonLines(stdout).map((one) => one.file);
const root = process.getuid?.() === 0;
const linux = process.platform === 'linux';

/** Runs the command as somebody whom permissions hold, also when the tests run as root. */
function unprivileged(args: readonly string[], cwd: string) {
  const copy = join(folderOf(), 'cli.cjs');
  copyFileSync(CLI, copy);
  // The program lies beside the file that starts it.
  const program = CLI.replace(/cjs$/, 'main.cjs');
  if (existsSync(program)) copyFileSync(program, copy.replace(/cjs$/, 'main.cjs'));
  for (const folder of [join(copy, '..'), cwd]) chmodSync(folder, 0o755);
  const nobody = root ? { uid: 65534, gid: 65534 } : {};
  return spawnSync(process.execPath, [copy, ...args], { cwd, encoding: 'utf8', ...nobody });
}

describe('folders as they come', () => {
  test('symbolic links that lead in circles or nowhere; each folder once', () => {
    const cwd = folderOf({ 'a/x.md': WRONG });
    symlinkSync('..', join(cwd, 'a', 'up'));
    symlinkSync('loop', join(cwd, 'loop'));
    symlinkSync('gone.md', join(cwd, 'dangling.md'));
    symlinkSync(join('a', 'x.md'), join(cwd, 'linked.md'));
    const { stdout, status, stderr } = sizewright(['check', '-r', 'jsonl', '.'], { cwd });
    expect(stderr).toBe('');
    expect(status).toBe(1);
    expect(files(stdout)).toEqual(['a/x.md', 'linked.md']);
  });

  test('names with spaces, newlines, quotes, letters of any script and a leading dash', () => {
    const names = [' a.md', '-b.md', 'c\'"d.md', 'e\nf.md', 'ñ 針.md', '100% #1?.md'];
    const cwd = folderOf(Object.fromEntries(names.map((name) => [name, WRONG])));
    const { stdout } = sizewright(['check', '-r', 'jsonl', '.'], { cwd });
    expect(new Set(files(stdout))).toEqual(new Set(names));
    const text = sizewright(['check', '.'], { cwd }).stdout;
    expect(text).toContain('e\\nf.md:1:18: warning:');
    expect(sizewright(['check', '-r', 'jsonl', '--', '-b.md'], { cwd }).status).toBe(1);
  });

  test('a note that is not UTF-8 is refused and the others are read', () => {
    const cwd = folderOf({
      'a.md': WRONG,
      'b.md': Buffer.from([0xc3, 0x28, 0x31]),
      'c.md': Buffer.from('\ufeffx', 'utf16le'),
    });
    const { stdout, status, stderr } = sizewright(['check', '-r', 'jsonl', '.'], { cwd });
    expect(files(stdout)).toEqual(['a.md']);
    expect(status).toBe(2);
    expect(stderr).toContain('b.md: not UTF-8 text; save it as UTF-8');
    expect(stderr).toContain('c.md: not UTF-8 text (it looks like UTF-16); save it as UTF-8');
  });

  test('byte-order mark and line endings of any kind: places stay true', () => {
    const cwd = folderOf({
      'crlf.md': `\ufeff# T\r\n\r\n${WRONG}\r\n`,
      'cr.md': `# T\r\r${WRONG}\r`,
      'bom.md': `\ufeff${WRONG}`,
    });
    const places = jsonLines(sizewright(['check', '-r', 'jsonl', '.'], { cwd }).stdout).map((o) => [
      o.file,
      o.line,
      o.column,
    ]);
    expect(places).toEqual([
      ['bom.md', 1, 19],
      ['cr.md', 3, 18],
      ['crlf.md', 3, 18],
    ]);
  });

  test.runIf(linux)('what may not be read is said in one line', () => {
    const cwd = folderOf({ 'a.md': WRONG, 'b.md': WRONG, 'closed/c.md': WRONG });
    chmodSync(join(cwd, 'b.md'), 0);
    chmodSync(join(cwd, 'closed'), 0);
    const { stdout, status, stderr } = unprivileged(['check', '-r', 'jsonl', '.'], cwd);
    chmodSync(join(cwd, 'closed'), 0o755);
    expect(status).toBe(2);
    expect(files(stdout)).toEqual(['a.md']);
    expect(stderr).toContain('b.md: permission denied');
    expect(stderr).toContain('closed: permission denied');
  });

  test('a folder named like a note, an empty note, a note of one long line', () => {
    const long = `${'Words and more words. '.repeat(20_000)}${WRONG}`;
    const cwd = folderOf({ 'a.md/b.md': WRONG, 'empty.md': '', 'long.md': long });
    const { stdout } = sizewright(['check', '-r', 'jsonl', '.'], { cwd });
    expect(files(stdout)).toEqual(['a.md/b.md', 'long.md']);
  });

  test('a note of 50 MB without sizes, and one that starts with a size, are read', () => {
    const filler = Buffer.alloc(50_000_000, 'Listen, then ask again. \n\n');
    const cwd = folderOf({ 'big.md': filler });
    expect(sizewright(['check', '.'], { cwd }).status).toBe(0);
  });
});

describe('pipes and disks', () => {
  test('a reader that goes away ends the run quietly', async () => {
    const cwd = folderOf(
      Object.fromEntries(Array.from({ length: 40 }, (_, i) => [`${i}.md`, `${WRONG}\n\n`.repeat(40)])),
    );
    const child = spawn(process.execPath, [CLI, 'check', '.'], { cwd, stdio: ['ignore', 'pipe', 'pipe'] });
    let errors = '';
    child.stderr.on('data', (data) => {
      errors += data;
    });
    child.stdout.once('data', () => child.stdout.destroy());
    const status = await new Promise((done) => child.on('close', done));
    expect(errors).toBe('');
    expect(status).toBe(141);
  });

  test.runIf(linux && existsSync('/dev/full'))('a full disk under standard output: 2 and why', () => {
    const cwd = folderOf({ 'a.md': WRONG });
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', `"$0" "$1" check . > /dev/full`, process.execPath, CLI],
      { cwd, encoding: 'utf8' },
    );
    expect(stderr).toBe('sizewright: standard output: no space left on the device\n');
    expect(status).toBe(2);
  });

  test('a report that cannot be written: 2, why, and the former report untouched', () => {
    const cwd = folderOf({ 'a.md': WRONG, 'old.sarif': 'former' });
    expect(sizewright(['check', '-r', 'sarif=gone/out.sarif'], { cwd })).toMatchObject({
      status: 2,
      stderr: 'sizewright: gone/out.sarif: no such file or folder\n',
    });
    mkdirSync(join(cwd, 'taken'));
    expect(sizewright(['check', '-r', 'sarif=taken'], { cwd }).status).toBe(2);
    expect(sizewright(['check', '-r', 'sarif=old.sarif', '-r', 'nothing'], { cwd }).status).toBe(2);
    expect(readFileSync(join(cwd, 'old.sarif'), 'utf8')).toBe('former');
    expect(readdirSync(cwd).sort()).toEqual(['a.md', 'old.sarif', 'taken']);
  });

  test.each(['SIGINT', 'SIGTERM'] as const)(
    '%s in the middle of a run leaves no half-written report',
    async (signal) => {
      const cwd = folderOf({ 'out.sarif': 'former' });
      for (let i = 0; i < 2000; i++) writeFileSync(join(cwd, `${i}.md`), `${WRONG}\n\n`.repeat(20));
      const child = spawn(
        process.execPath,
        [CLI, 'check', '-r', 'sarif=out.sarif', '-r', 'jsonl', '--threads', '1'],
        { cwd, stdio: ['ignore', 'pipe', 'inherit'] },
      );
      const ended = new Promise((done) => child.on('close', (status, by) => done(by ?? status)));
      await new Promise((done) => child.stdout.once('data', done));
      child.kill(signal);
      child.stdout.resume();
      expect(await ended).toBe(signal === 'SIGINT' ? 130 : 143);
      expect(readFileSync(join(cwd, 'out.sarif'), 'utf8')).toBe('former');
      expect(readdirSync(cwd).filter((name) => name.endsWith('.new'))).toEqual([]);
    },
  );

  test.runIf(linux && root)('fixing on a full disk leaves the note as it was', () => {
    const disk = folderOf();
    if (spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', disk]).status !== 0) return;
    try {
      const note = join(disk, 'a.md');
      writeFileSync(note, `${WRONG}\n\n${'x'.repeat(40_000)}\n`);
      const before = readFileSync(note);
      const { status, stderr } = sizewright(['fix', 'a.md'], { cwd: disk });
      expect(stderr).toBe('sizewright: a.md: no space left on the device\n');
      expect(status).toBe(2);
      expect(readFileSync(note)).toEqual(before);
      expect(readdirSync(disk)).toEqual(['a.md']);
    } finally {
      spawnSync('umount', [disk]);
    }
  });
});

describe('fix', () => {
  test('changes the wrong words and nothing else: bytes, line endings, mark, mode', () => {
    const before = `\ufeff# T\r\n\r\n${WRONG}\r\nTrailing  \r\n\tTab\u00a0é`;
    const cwd = folderOf({ 'a.md': before, 'b.md': RIGHT });
    chmodSync(join(cwd, 'a.md'), 0o640);
    const stamp = statSync(join(cwd, 'b.md')).mtimeMs;
    const { stdout, status } = sizewright(['fix', '.'], { cwd });
    expect(stdout).toBe('1 fixes made in 1 of 2 notes.\n');
    expect(status).toBe(0);
    expect(readFileSync(join(cwd, 'a.md'), 'utf8')).toBe(before.replace('thicker', 'thinner'));
    expect(statSync(join(cwd, 'a.md')).mode & 0o777).toBe(0o640);
    expect(statSync(join(cwd, 'b.md')).mtimeMs).toBe(stamp);
    expect(sizewright(['check', '.'], { cwd }).status).toBe(0);
    expect(readdirSync(cwd)).toEqual(['a.md', 'b.md']);
  });

  test('a link stays a link; what it leads to is fixed', () => {
    const cwd = folderOf({ 'real/a.md': WRONG });
    symlinkSync(join('real', 'a.md'), join(cwd, 'link.md'));
    sizewright(['fix', 'link.md'], { cwd });
    expect(readFileSync(join(cwd, 'real', 'a.md'), 'utf8')).toBe(RIGHT);
    expect(
      readdirSync(cwd, { withFileTypes: true })
        .find(({ name }) => name === 'link.md')!
        .isSymbolicLink(),
    ).toBe(true);
  });

  test('the preview is a patch that makes the same change and writes nothing', () => {
    const text = `# T\n\n${WRONG}\n\n${'Filler.\n\n'.repeat(9)}${WRONG}\n\n> ${WRONG}\n`;
    const cwd = folderOf({ 'a.md': text });
    const { stdout, status } = sizewright(['fix', '--preview', '.'], { cwd });
    expect(status).toBe(1);
    expect(readFileSync(join(cwd, 'a.md'), 'utf8')).toBe(text);
    const twin = folderOf({ 'a.md': text });
    const applied = spawnSync('git', ['apply', '-p0', '-'], { cwd: twin, input: stdout, encoding: 'utf8' });
    expect(applied.stderr).toBe('');
    sizewright(['fix', '.'], { cwd });
    expect(readFileSync(join(twin, 'a.md'), 'utf8')).toBe(readFileSync(join(cwd, 'a.md'), 'utf8'));
  });

  test('a deliberate error is not fixed', () => {
    const text = `${WRONG} <!-- wrong on purpose: learners correct it -->\n`;
    const cwd = folderOf({ 'a.md': text });
    sizewright(['fix', '.'], { cwd });
    expect(readFileSync(join(cwd, 'a.md'), 'utf8')).toBe(text);
  });
});
