/** Compiled code is kept between runs in the user's cache folder; whatever happens to it, a run says the same. */
import { spawn, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import zlib from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { placeFor } from '../../server/src/entry/kept-code.ts';
import { CHECK, CLI, folderOf, sizewright, WRONG } from './support.ts';

const SERVER = join(dirname(CLI), 'server-node.cjs');
/** Older ones lack the checksum, and keep nothing. */
const keeps = 'crc32' in zlib && existsSync(CLI.replace('cli.cjs', 'cli.main.cjs'));

const cwd = folderOf({ 'a.md': WRONG });

function checked(home: string, more: NodeJS.ProcessEnv = {}, args: readonly string[] = ['a.md']) {
  const env = { SIZEWRIGHT_CODE_CACHE: '', XDG_CACHE_HOME: home, ...more };
  const ran = sizewright(['check', '-r', 'jsonl', ...args], { cwd, env });
  expect(ran.stderr).toBe('');
  return ran;
}

const folderIn = (home: string) => join(home, 'sizewright', 'code');
const filesIn = (home: string): string[] =>
  existsSync(folderIn(home)) ? readdirSync(folderIn(home)).map((name) => join(folderIn(home), name)) : [];

/** A cache folder with the code of one run in it, and its file. */
function kept(): { home: string; file: string } {
  const home = folderOf();
  checked(home);
  const [file = '', ...others] = filesIn(home);
  expect(others).toEqual([]);
  return { home, file };
}

describe.skipIf(!keeps)('kept code', () => {
  test('is written once, for the user alone, and gives the same answer', () => {
    const home = folderOf();
    const first = checked(home);
    const [file = '', ...others] = filesIn(home);
    expect(others).toEqual([]);
    const { mtimeMs, mode } = statSync(file);
    expect(mode & 0o077).toBe(0);
    const second = checked(home);
    expect(first.status).toBe(1);
    expect(first.stdout).toContain(CHECK);
    expect(second).toEqual(first);
    expect(statSync(file).mtimeMs).toBe(mtimeMs);
  });

  const DAMAGE: Readonly<Record<string, (file: string) => void>> = {
    'a changed byte': (file) => {
      const bytes = readFileSync(file);
      bytes[5000]! ^= 0x55;
      writeFileSync(file, bytes);
    },
    'cut short': (file) => truncateSync(file, 100_000),
    'three bytes': (file) => truncateSync(file, 3),
    empty: (file) => truncateSync(file, 0),
    'something else': (file) => writeFileSync(file, 'not code at all'),
  };
  test.each(Object.entries(DAMAGE))('%s: passed over, and made anew', (_, damage) => {
    const { home, file } = kept();
    const whole = statSync(file).size;
    damage(file);
    expect(checked(home).stdout).toContain(CHECK);
    expect(statSync(file).size).toBeGreaterThan(whole * 0.8);
  });

  test('code of another engine, rightly summed: passed over', () => {
    const { home, file } = kept();
    const code = readFileSync(file).subarray(0, -4);
    code.writeUInt32LE(0x12345678, 4);
    const sum = Buffer.alloc(4);
    sum.writeUInt32LE((zlib as unknown as { crc32: (data: Uint8Array) => number }).crc32(code));
    writeFileSync(file, Buffer.concat([code, sum]));
    expect(checked(home).stdout).toContain(CHECK);
  });

  test('is not kept when switched off, nor where there is no place for it', () => {
    const home = folderOf();
    checked(home, { SIZEWRIGHT_CODE_CACHE: 'off' });
    checked(home, { NODE_DISABLE_COMPILE_CACHE: '1' });
    expect(readdirSync(home)).toEqual([]);
    writeFileSync(join(home, 'sizewright'), 'in the way');
    checked(home);
    expect(readdirSync(home)).toEqual(['sizewright']);
  });

  test('many old files give way to a few', () => {
    const { home, file } = kept();
    for (let i = 0; i < 9; i++) writeFileSync(`${file.slice(0, -1)}${i}old`, 'x');
    mkdirSync(join(folderIn(home), 'other-program'));
    writeFileSync(file, '');
    checked(home);
    expect(filesIn(home).filter((path) => path.includes('cli.main.cjs'))).toHaveLength(4);
    expect(filesIn(home)).toContain(join(folderIn(home), 'other-program'));
    expect(statSync(file).size).toBeGreaterThan(100_000);
  });

  test('threads start from it too', () => {
    const { home } = kept();
    const notes = folderOf(Object.fromEntries(Array.from({ length: 40 }, (_, i) => [`${i}.md`, WRONG])));
    const ran = checked(home, {}, ['--threads', '2', notes]);
    expect(ran.stdout.split(CHECK)).toHaveLength(41);
  });

  test('the server keeps its own once it is settled', async () => {
    const home = folderOf();
    const env = { ...process.env, SIZEWRIGHT_CODE_CACHE: '', XDG_CACHE_HOME: home };
    const server = spawn(process.execPath, [SERVER, '--stdio'], {
      env,
      stdio: ['pipe', 'ignore', 'inherit'],
    });
    for (let i = 0; i < 300 && filesIn(home).length === 0; i++)
      await new Promise((done) => setTimeout(done, 100));
    server.kill();
    expect(filesIn(home).some((path) => path.includes('server.js'))).toBe(true);
    const { status } = spawnSync(process.execPath, [SERVER, '--stdio'], { env, input: '' });
    expect(status).toBe(1);
  });
});

describe('where code is kept', () => {
  const on = (platform: NodeJS.Platform, env: NodeJS.ProcessEnv) =>
    placeFor('p', { ...process, platform, env, execArgv: [] } as unknown as NodeJS.Process);

  test.skipIf(!keeps)('in the folder for such things, and nowhere when none is known', () => {
    expect(on('linux', { HOME: '/h' })).toMatch(/^\/h\/\.cache\/sizewright\/code\/p-/);
    expect(on('darwin', { HOME: '/h' })).toMatch(/^\/h\/Library\/Caches\/sizewright\/code\/p-/);
    expect(on('win32', { LOCALAPPDATA: 'C:' })).toMatch(/^C:.sizewright.code.p-/);
    expect(on('linux', { HOME: '/h', XDG_CACHE_HOME: '/x' })).toMatch(/^\/x\/sizewright/);
    for (const env of [{}, { HOME: '' }, { HOME: 'here' }, { XDG_CACHE_HOME: 'here' }])
      expect(on('linux', env)).toBeUndefined();
  });

  test.skipIf(!keeps)('other flags, another place', () => {
    expect(on('linux', { HOME: '/h', NODE_OPTIONS: '--no-opt' })).not.toBe(on('linux', { HOME: '/h' }));
  });
});
