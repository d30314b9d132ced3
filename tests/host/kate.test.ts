/** Kate with the settings that the README gives starts the server and is told of the finding. Runs where Kate is. */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT } from './workbench.ts';

/** Draws on no screen. */
const UNSEEN = { QT_QPA_PLATFORM: 'offscreen' };
const KATE =
  spawnSync('kate', ['--version'], { env: { ...process.env, ...UNSEEN }, stdio: 'ignore' }).status === 0;

/** The settings as a reader copies them. */
function documented(): string {
  const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
  const settings = /<summary>Kate<\/summary>[\s\S]*?```json\n([\s\S]*?)```/.exec(readme)?.[1];
  if (settings === undefined) throw new Error('the README has no settings for Kate');
  return settings;
}

function write(folder: string, name: string, text: string, mode = 0o600): string {
  const path = join(folder, name);
  mkdirSync(join(path, '..'), { recursive: true });
  writeFileSync(path, text, { mode });
  return path;
}

/** A home in which Kate finds the command on its path, with what the server says kept in a file. */
function home(folder: string): { note: string; said: string; env: NodeJS.ProcessEnv } {
  const said = join(folder, 'said.log');
  const server = `"${process.execPath}" "${join(ROOT, 'dist/cli.cjs')}" "$@" | tee "${said}"`;
  const command = write(folder, 'bin/sizewright', `#!/bin/sh\n${server}\n`, 0o700);
  write(folder, 'config/kate/lspclient/settings.json', documented());
  // Kate asks before it starts a server for the first time; this is the answer.
  const allowed = `[lspclient]\nAllowedServerCommandLines=${command} serve\n`;
  write(folder, 'config/katerc', `[Kate Plugins]\nlspclientplugin=true\n\n${allowed}`);
  const note = write(folder, 'note.md', 'A 16 G cannula is thinner than a 20 G cannula.\n');
  mkdirSync(join(folder, 'run'), { mode: 0o700 });
  const env = {
    ...process.env,
    HOME: folder,
    PATH: `${join(folder, 'bin')}:${process.env.PATH}`,
    XDG_CONFIG_HOME: join(folder, 'config'),
    XDG_DATA_HOME: join(folder, 'data'),
    XDG_RUNTIME_DIR: join(folder, 'run'),
    ...UNSEEN,
  };
  return { note, said, env };
}

test.skipIf(!KATE)('Kate is told of the finding', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'sizewright-kate-'));
  const { note, said, env } = home(folder);
  const kate = spawn('kate', ['-n', '--startanon', note], { env, stdio: 'ignore' });
  try {
    const heard = (): string => (existsSync(said) ? readFileSync(said, 'utf8') : '');
    await expect.poll(heard, { timeout: 90_000, interval: 500 }).toContain('16 G is thinner than 20 G');
    expect(heard()).toContain('textDocument/publishDiagnostics');
  } finally {
    kate.kill('SIGKILL');
    await new Promise((done) => setTimeout(done, 500));
    rmSync(folder, { recursive: true, force: true });
  }
});
