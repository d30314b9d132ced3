/** Runs the built command line as a process, on real folders that are removed afterwards. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll } from 'vitest';

export const CLI = resolve(process.env.SIZEWRIGHT_CLI ?? 'dist/cli.cjs');

export interface Ran {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface How {
  readonly cwd?: string;
  readonly input?: string | Buffer;
  readonly env?: NodeJS.ProcessEnv;
}

/** Runs `sizewright` with `args`. */
export function sizewright(args: readonly string[], { cwd, input = '', env }: How = {}): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [CLI, ...args], {
    cwd,
    input,
    env: { ...process.env, NO_COLOR: '', ...env },
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  return { status, stdout, stderr };
}

const made: string[] = [];

afterAll(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A new folder with these files; its path. */
export function folderOf(files: Readonly<Record<string, string | Buffer>> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'sizes-'));
  made.push(folder);
  for (const [name, content] of Object.entries(files)) {
    const path = join(folder, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
  }
  return folder;
}

/** Runs git in a folder, with a name of its own and no settings of the machine. */
export function git(folder: string, ...args: string[]): string {
  const { status, stdout, stderr } = spawnSync('git', args, {
    cwd: folder,
    encoding: 'utf8',
    env: {
      ...process.env,
      GIT_CONFIG_GLOBAL: '/dev/null',
      GIT_CONFIG_SYSTEM: '/dev/null',
      GIT_AUTHOR_NAME: 'Author',
      GIT_AUTHOR_EMAIL: 'author@example.org',
      GIT_COMMITTER_NAME: 'Author',
      GIT_COMMITTER_EMAIL: 'author@example.org',
    },
  });
  if (status !== 0) throw new Error(`git ${args.join(' ')}: ${stderr}`);
  return stdout;
}

/** One wrong statement, and the same in short. */
export const WRONG = 'A 22 G needle is thicker than an 18 G needle.';
export const RIGHT = 'A 22 G needle is thinner than an 18 G needle.';
/** What `check` says of it. */
export const CHECK = 'size-comparison';

/** JSON objects, one a line. */
export const jsonLines = <T = Record<string, unknown>>(text: string): T[] =>
  text
    .split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line) as T);
