/**
 * Where compiled code is kept between runs: in the user's own cache folder, never beside the notes. What is kept only
 * saves time, so whatever is wrong with it or with the folder is passed over in silence.
 *
 * The engine trusts such code blindly: a damaged file would end the process. So each file carries a checksum, takes its
 * place only when it is whole, and counts only when it belongs to the user who runs the program.
 */
import {
  closeSync,
  fstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { dirname, isAbsolute, join } from 'node:path';
import zlib from 'node:zlib';

/** Node has it from 20.15 on; earlier ones keep nothing. */
const crc32 = (zlib as { readonly crc32?: (data: Uint8Array | string) => number }).crc32;

/** Length of the checksum at the end of a file, bytes. */
const SUM = 4;

/** Files kept of one program, for as many engines and versions. */
const MOST = 4;

const isOff = (value: string | undefined): boolean => value === 'off' || value === '0';

/** The user's folder for what can be made again, by the custom of the system. */
function cacheHome({ env, platform }: NodeJS.Process): string | undefined {
  if (env.XDG_CACHE_HOME && isAbsolute(env.XDG_CACHE_HOME)) return env.XDG_CACHE_HOME;
  if (platform === 'win32') return env.LOCALAPPDATA;
  if (!env.HOME || !isAbsolute(env.HOME)) return undefined;
  return join(env.HOME, platform === 'darwin' ? 'Library/Caches' : '.cache');
}

/** The file for a program under this engine and its flags; nothing where none is to be kept. */
export function placeFor(program: string, host: NodeJS.Process = process): string | undefined {
  const { env } = host;
  if (!crc32 || isOff(env.SIZEWRIGHT_CODE_CACHE) || env.NODE_DISABLE_COMPILE_CACHE) return undefined;
  const home = cacheHome(host);
  if (!home) return undefined;
  const engine = [host.version, host.versions.v8, host.arch, env.NODE_OPTIONS, ...host.execArgv].join('\n');
  return join(home, 'sizewright', 'code', `${program}-${crc32(engine).toString(16)}`);
}

/** Only what belongs to the user counts: others may have put anything there. */
const isOurs = ({ uid }: { readonly uid: number }): boolean =>
  process.geteuid === undefined || uid === process.geteuid();

/** The code kept in a file. */
export class KeptCode {
  readonly #file: string;
  /** Nothing when there is none that is whole. */
  readonly code: Uint8Array | undefined;

  constructor(file: string) {
    this.#file = file;
    this.code = read(file);
  }

  /** Puts code there for later runs. */
  write(make: () => Uint8Array): void {
    try {
      const folder = dirname(this.#file);
      if (!makeFolder(folder)) return;
      const code = make();
      const sum = Buffer.alloc(SUM);
      sum.writeUInt32LE(crc32!(code));
      const beside = `${this.#file}.${process.pid.toString(36)}${Date.now().toString(36)}.new`;
      writeFileSync(beside, Buffer.concat([code, sum]), { mode: 0o600, flag: 'wx' });
      renameSync(beside, this.#file);
      tidy(folder, this.#file);
    } catch {
      // The next run is as slow as this one.
    }
  }
}

function read(file: string): Uint8Array | undefined {
  let descriptor: number | undefined;
  try {
    descriptor = openSync(file, 'r');
    if (!isOurs(fstatSync(descriptor))) return undefined;
    const bytes = readFileSync(descriptor);
    const code = bytes.subarray(0, Math.max(0, bytes.length - SUM));
    return crc32!(code) === bytes.readUInt32LE(code.length) ? code : undefined;
  } catch {
    return undefined;
  } finally {
    if (descriptor !== undefined) closeSync(descriptor);
  }
}

/** False where the folder, or the one it would be made in, is another user's. */
function makeFolder(folder: string): boolean {
  for (let above = folder; ; above = dirname(above)) {
    const found = statSync(above, { throwIfNoEntry: false });
    if (!found) continue;
    if (!isOurs(found)) return false;
    break;
  }
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  return true;
}

/** Leaves the newest files of the program that `file` belongs to. */
function tidy(folder: string, file: string): void {
  const program = file.slice(folder.length + 1, file.indexOf('-', folder.length + 1) + 1);
  const all = readdirSync(folder)
    .filter((name) => name.startsWith(program))
    .map((name) => join(folder, name))
    .map((path) => ({ path, time: statSync(path).mtimeMs }))
    .sort((a, b) => b.time - a.time);
  for (const { path } of all.slice(MOST)) unlinkSync(path);
}
