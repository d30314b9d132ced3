/** A real VS Code workbench: installed once into the cache, started on a copy of the demo course. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const INSTALLED = join(ROOT, '.cache', 'workbench');
const ENTRY = join(INSTALLED, 'node_modules', 'code-server', 'out', 'node', 'entry.js');

export interface Workbench {
  /** Address that opens the copy of the course. */
  readonly url: string;
  /** The copy. */
  readonly folder: string;
  /** Writes the author's settings anew; the workbench follows. */
  settings(settings: Readonly<Record<string, unknown>>): void;
  /** Process ids of the language servers that run in this workbench. */
  servers(): number[];
  stop(): void;
}

export interface Options {
  readonly vsix: string;
  readonly settings?: Readonly<Record<string, unknown>>;
  /** Notes by name, beside those of the demo course. */
  readonly notes?: Readonly<Record<string, string>>;
}

/** The .vsix that `npm run package` made. */
export function vsixPath(): string {
  const { version } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  return join(ROOT, `sizewright-${version}.vsix`);
}

export function installWorkbench(): void {
  if (existsSync(join(INSTALLED, 'installed'))) return;
  rmSync(INSTALLED, { recursive: true, force: true });
  execFileSync('bash', [join(ROOT, 'tests/host/install-workbench.sh'), INSTALLED], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}

/** Quiet surroundings: no welcome, no tips, no telemetry, nothing that moves in a screenshot. */
const SETTINGS = {
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.enableExperiments': false,
  'security.workspace.trust.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'extensions.ignoreRecommendations': true,
  'editor.minimap.enabled': false,
  'editor.wordWrap': 'on',
  'editor.hover.delay': 100,
  'update.mode': 'none',
  'git.enabled': false,
};

export async function startWorkbench({ vsix, settings, notes }: Options): Promise<Workbench> {
  installWorkbench();
  const home = mkdtempSync(join(tmpdir(), 'sizewright-workbench-'));
  const folder = join(home, 'skills-week');
  cpSync(join(ROOT, 'tests', 'course'), folder, { recursive: true });
  for (const [name, text] of Object.entries(notes ?? {})) writeFileSync(join(folder, name), text);
  mkdirSync(join(home, 'data', 'User'), { recursive: true });
  const choose = (chosen: Options['settings']): void =>
    writeFileSync(join(home, 'data', 'User', 'settings.json'), JSON.stringify({ ...SETTINGS, ...chosen }));
  choose(settings);
  const places = ['--user-data-dir', join(home, 'data'), '--extensions-dir', join(home, 'extensions')];
  const config = ['--config', join(home, 'config.yaml')];
  execFileSync(process.execPath, [ENTRY, ...config, ...places, '--install-extension', vsix], {
    stdio: 'pipe',
  });
  const port = await freePort();
  const child = spawn(
    process.execPath,
    [
      ENTRY,
      ...config,
      ...places,
      '--auth',
      'none',
      '--bind-addr',
      `127.0.0.1:${port}`,
      '--disable-telemetry',
      '--disable-update-check',
      folder,
    ],
    { stdio: 'pipe', detached: true },
  );
  await answering(`http://127.0.0.1:${port}/healthz`, child);
  return {
    url: `http://127.0.0.1:${port}/?folder=${encodeURIComponent(folder)}`,
    folder,
    settings: (chosen) => choose({ ...settings, ...chosen }),
    servers: () => processesWith(join(home, 'extensions'), 'server-node.cjs'),
    stop: () => end(child, home),
  };
}

function end(child: ChildProcess, home: string): void {
  if (child.pid !== undefined) process.kill(-child.pid, 'SIGTERM');
  rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
}

/** Ids of the processes whose command line holds both words. */
function processesWith(...words: readonly string[]): number[] {
  return readdirSync('/proc')
    .filter((entry) => /^\d+$/.test(entry))
    .filter((entry) => {
      try {
        const line = readFileSync(`/proc/${entry}/cmdline`, 'utf8');
        return words.every((word) => line.includes(word));
      } catch {
        return false; // It ended meanwhile.
      }
    })
    .map(Number);
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.on('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() =>
        typeof address === 'object' && address ? resolve(address.port) : reject(new Error('no port')),
      );
    });
  });
}

async function answering(url: string, child: ChildProcess): Promise<void> {
  let said = '';
  child.stdout?.on('data', (data) => (said += data));
  child.stderr?.on('data', (data) => (said += data));
  for (let i = 0; i < 150; i++) {
    if (child.exitCode !== null) throw new Error(`the workbench ended: ${said}`);
    const ok = await fetch(url).then(
      (answer) => answer.ok,
      () => false,
    );
    if (ok) return;
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
  throw new Error(`the workbench does not answer: ${said}`);
}
