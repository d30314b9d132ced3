/**
 * How fast a whole course is checked, as ratios taken in one run on one machine: against remark-parse with
 * remark-gfm only parsing the same files, and against ripgrep counting trigger words in them.
 *
 * Usage: npm run bench [-- --notes N] (20,000 notes of 5 kB without it). Needs dist/cli.cjs. Exit status 1 when a
 * bound is missed.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type * as Library from '../src/entry/index.ts';
import { makeNote } from './bench-notes.ts';

const CLI = resolve(process.env.SIZEWRIGHT_CLI ?? 'dist/cli.cjs');
const NOTES = Number(process.argv[process.argv.indexOf('--notes') + 1]) || 20_000;
const NOTE_BYTES = 5000;
const FOLDERS = 200;
/** Every 33rd note mentions sizes: 3 %. */
const SIZED_EVERY = 33;
/** Parsing everything takes minutes; every 10th note is parsed and the time multiplied. */
const PARSED_EVERY = 10;

const ROUNDS = 3;

const ms = (start: number): number => performance.now() - start;

interface Timed {
  readonly ms: number;
  /** Largest resident memory seen, MB. */
  readonly rss: number;
  readonly status: number | null;
}

/** Peak resident memory of a running process, MB; 0 where the system does not tell. */
function peak(pid: number | undefined): number {
  try {
    return Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024;
  } catch {
    return 0;
  }
}

function timed(command: string, args: readonly string[]): Promise<Timed> {
  const start = performance.now();
  const child = spawn(command, args, { stdio: ['ignore', 'ignore', 'inherit'] });
  let rss = 0;
  const watch = setInterval(() => {
    rss = Math.max(rss, peak(child.pid));
  }, 20);
  return new Promise((done) => {
    const end = (status: number | null) => {
      clearInterval(watch);
      done({ ms: ms(start), rss, status });
    };
    child.on('error', () => end(null));
    child.on('close', end);
  });
}

/** Writes a course and returns its paths. */
function course(folder: string, count: number, share: (i: number) => number): string[] {
  for (let i = 0; i < FOLDERS; i++) mkdirSync(join(folder, `week-${i}`), { recursive: true });
  return Array.from({ length: count }, (_, i) => {
    const path = join(folder, `week-${i % FOLDERS}`, `note-${i}.md`);
    writeFileSync(path, makeNote(i, NOTE_BYTES, share(i)));
    return path;
  });
}

const parser = unified().use(remarkParse).use(remarkGfm);

const textsOf = (paths: readonly string[]): string[] => paths.map((path) => readFileSync(path, 'utf8'));

/** Wall-clock milliseconds to parse texts. */
function parse(texts: readonly string[]): number {
  const start = performance.now();
  for (const text of texts) parser.parse(text);
  return ms(start);
}

/** Processor milliseconds of some work in this thread: unlike the clock, deaf to what else the machine does. */
function processor(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

const least = (times: readonly number[]): number => Math.min(...times);

const results: { what: string; value: string; bound: string; kept: boolean }[] = [];

function note(
  what: string,
  value: number,
  unit: string,
  bound: (value: number) => boolean,
  words: string,
): void {
  results.push({
    what,
    value: `${value.toFixed(value < 10 ? 2 : 0)} ${unit}`,
    bound: words,
    kept: bound(value),
  });
}

const root = mkdtempSync(join(tmpdir(), 'sizes-bench-'));
try {
  const whole = join(root, 'course');
  const paths = course(whole, NOTES, (i) => (i % SIZED_EVERY === 0 ? 0.1 : 0));
  const args = ['check', whole, '-t', 'never', '--no-accepted', '-r', 'summary'];
  await timed('node', [CLI, ...args]);

  // The three take turns, so that a busy machine is busy for each of them.
  const parsedTexts = textsOf(paths.filter((_, i) => i % PARSED_EVERY === 0));
  parse(parsedTexts.slice(0, 50));
  const parses: number[] = [];
  const plains: Timed[] = [];
  const colds: Timed[] = [];
  const warms: Timed[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    parses.push(parse(parsedTexts) * PARSED_EVERY);
    plains.push(await timed('node', [CLI, ...args]));
    const cache = join(root, `cache-${round}`);
    colds.push(await timed('node', [CLI, ...args, '--cache', cache]));
    warms.push(await timed('node', [CLI, ...args, '--cache', cache]));
  }
  const [parsed, plain, cold, warm] = [
    parses,
    ...[plains, colds, warms].map((runs) => runs.map((run) => run.ms)),
  ].map(least) as [number, number, number, number];
  note('parsing alone against a cold run', parsed / plain, 'times', (v) => v >= 25, 'at least 25');
  note('cold run against a warm one', cold / warm, 'times', (v) => v >= 10, 'at least 10');
  note(
    'peak memory',
    Math.max(...[...plains, ...colds].map((run) => run.rss)),
    'MB',
    (v) => v < 300,
    'under 300',
  );

  const grep = await timed('rg', ['-c', '-i', 'gauge|french|suture|needle|cannula|catheter|wire', whole]);
  if (grep.status === 0 || grep.status === 1)
    note('cold run against ripgrep', plain / grep.ms, 'times', () => true, 'told only');

  const { check } = (await import(pathToFileURL(join(dirname(CLI), 'index.js')).href)) as typeof Library;
  // Other notes each time: a text that was read before is partly known.
  const turns = Array.from({ length: ROUNDS }, (_, round) => {
    const texts = Array.from({ length: 200 }, (__, i) => makeNote(200 * round + i, NOTE_BYTES, 0.5));
    const parsing = processor(() => {
      for (const text of texts) parser.parse(text);
    });
    const checking = processor(() => {
      for (const text of texts) check(text);
    });
    return [parsing, checking] as const;
  });
  const ratio = least(turns.map(([, checked]) => checked)) / least(turns.map(([parsing]) => parsing));
  note('dense notes against parsing alone', ratio, 'times', (v) => v <= 1.3, 'at most 1.3');

  const short = join(root, 'short.md');
  writeFileSync(short, makeNote(1, 300, 0.5));
  const starts: number[] = [];
  const ones: number[] = [];
  for (let i = 0; i < 12; i++) {
    starts.push((await timed('node', ['-e', '0'])).ms);
    ones.push((await timed('node', [CLI, 'check', short, '-t', 'never'])).ms);
  }
  note(
    'start-up and one small note against node -e 0',
    least(ones) / least(starts),
    'times',
    (v) => v <= 3,
    'at most 3',
  );

  console.log(
    `${NOTES} notes: cold ${plain.toFixed(0)} ms, filling the cache ${cold.toFixed(0)} ms, warm ${warm.toFixed(0)} ms, parsing alone ${parsed.toFixed(0)} ms`,
  );
  for (const { what, value, bound, kept } of results)
    console.log(`${kept ? 'kept  ' : 'MISSED'}  ${what}: ${value} (${bound})`);
} finally {
  rmSync(root, { recursive: true, force: true });
}
process.exitCode = results.every(({ kept }) => kept) ? 0 : 1;
