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
import { join, resolve } from 'node:path';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { makeNote } from './bench-notes.ts';

const CLI = resolve(process.env.SIZEWRIGHT_CLI ?? 'dist/cli.cjs');
const NOTES = Number(process.argv[process.argv.indexOf('--notes') + 1]) || 20_000;
const NOTE_BYTES = 5000;
const FOLDERS = 200;
/** Every 33rd note mentions sizes: 3 %. */
const SIZED_EVERY = 33;
/** Parsing everything takes minutes; every 10th note is parsed and the time multiplied. */
const PARSED_EVERY = 10;

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

async function best(times: number, command: string, args: readonly string[]): Promise<number> {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < times; i++) least = Math.min(least, (await timed(command, args)).ms);
  return least;
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

/** Milliseconds to parse `paths`, files read beforehand. */
function parse(paths: readonly string[]): number {
  const parser = unified().use(remarkParse).use(remarkGfm);
  const texts = paths.map((path) => readFileSync(path, 'utf8'));
  for (const text of texts.slice(0, 20)) parser.parse(text);
  const start = performance.now();
  for (const text of texts) parser.parse(text);
  return ms(start);
}

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
  const paths = course(whole, NOTES, (i) => (i % SIZED_EVERY === 0 ? 0.3 : 0));
  const cache = join(root, 'cache');
  const args = ['check', whole, '-t', 'never', '--no-accepted', '-r', 'summary'];
  await timed('node', [CLI, ...args]);

  const cold = await timed('node', [CLI, ...args, '--cache', cache]);
  // Notes written a moment ago are not trusted by their dates; the second run settles that.
  await timed('node', [CLI, ...args, '--cache', cache]);
  const warm = await timed('node', [CLI, ...args, '--cache', cache]);
  const plain = await timed('node', [CLI, ...args]);
  const parsed = parse(paths.filter((_, i) => i % PARSED_EVERY === 0)) * PARSED_EVERY;
  note('parsing alone against a cold run', parsed / plain.ms, 'times', (v) => v >= 25, 'at least 25');
  note('cold run against a warm one', cold.ms / warm.ms, 'times', (v) => v >= 10, 'at least 10');
  note('peak memory', Math.max(cold.rss, plain.rss), 'MB', (v) => v < 300, 'under 300');

  const grep = await timed('rg', ['-c', '-i', 'gauge|french|suture|needle|cannula|catheter|wire', whole]);
  if (grep.status === 0 || grep.status === 1)
    note('cold run against ripgrep', plain.ms / grep.ms, 'times', () => true, 'told only');

  const dense = join(root, 'dense');
  const densePaths = course(dense, 400, () => 0.5);
  const denseRun = await timed('node', [
    CLI,
    'check',
    dense,
    '-t',
    'never',
    '-r',
    'summary',
    '--threads',
    '1',
  ]);
  const empty = await timed('node', [CLI, 'check', densePaths[0]!, '-t', 'never', '-r', 'summary']);
  note(
    'dense notes against parsing alone',
    (denseRun.ms - empty.ms) / parse(densePaths),
    'times',
    (v) => v <= 1.3,
    'at most 1.3',
  );

  const bare = await best(9, 'node', ['-e', '0']);
  const one = await best(9, 'node', [CLI, 'check', densePaths[0]!, '-t', 'never']);
  note('start-up and one note against node -e 0', one / bare, 'times', (v) => v <= 3, 'at most 3');

  console.log(
    `${NOTES} notes: cold ${plain.ms.toFixed(0)} ms, filling the cache ${cold.ms.toFixed(0)} ms, warm ${warm.ms.toFixed(0)} ms, parsing alone ${parsed.toFixed(0)} ms`,
  );
  for (const { what, value, bound, kept } of results)
    console.log(`${kept ? 'kept  ' : 'MISSED'}  ${what}: ${value} (${bound})`);
} finally {
  rmSync(root, { recursive: true, force: true });
}
process.exitCode = results.every(({ kept }) => kept) ? 0 : 1;
