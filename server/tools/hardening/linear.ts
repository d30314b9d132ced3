/**
 * Time and memory against size on hostile texts, with the fitted exponents. The quick form in the tests has to bear
 * a busy machine and allows time 1.25; here larger texts are read several times, each in a process of its own, and 1.1 holds.
 *
 * Time is what this process took of a core, and the shortest of several runs counts: other work on the machine only ever adds
 * to it. The nursery of the heap is large, so that the collector stays out of it. Memory is the heap after a collection,
 * with the analysis still held, less the heap before.
 *
 * Usage: npm run linear -- [--only words,table] [--largest 64000] [--runs 4] [--most 1.1]
 *        npm run linear -- --full      (a line of 5 MB, a table of 10,000 columns, a note of 50 MB, once each)
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { runChecks } from '../../src/checks/index.ts';
import { readStatements } from '../../src/claims/index.ts';
import { analyseWhole } from '../../src/course/index.ts';
import { findMentions } from '../../src/mentions/index.ts';
import { readWhole } from '../../src/notes/read-markdown.ts';
import { doubling, exponent, lastExponent, median, type Point } from './growth.ts';
import { heapNow } from './heap.ts';
import { FULL_SIZE, TEXTS, type Text } from './hostile-texts.ts';

const SELF = fileURLToPath(import.meta.url);
/** Sizes of a series, each twice the one before. */
const STEPS = 4;
/** Bytes below which the heap says nothing. */
const HEAP_NOISE = 500_000;
/** A series is measured again when its exponent is too high: chance passes, a square stays. */
const ATTEMPTS = 4;

interface Series {
  readonly time: readonly Point[];
  readonly memory: readonly Point[];
}

let calls = 0;
const fresh = (text: Text, size: number): string => text(size, ` ${calls++}`);

/** Milliseconds of a core that one reading takes. */
function timeOf(source: string): number {
  const start = process.cpuUsage();
  analyseWhole(source);
  return process.cpuUsage(start).user / 1000;
}

/** As a note is read for the first time, with nothing kept for the next reading: that is bounded, and comes and goes. */
function analysed(text: string): unknown {
  const note = readWhole(text);
  const mentions = findMentions(note);
  const statements = readStatements(note, mentions);
  return [note, mentions, statements, runChecks({ note, mentions, statements })];
}

/** Bytes that an analysis holds, its text among them. */
function memoryOf(make: () => string): number {
  const before = heapNow();
  const held = [analysed(make())];
  const bytes = (heapNow() - before) * 1e6;
  // Looked at after the collection, or nothing of it would be left to measure.
  return held.length * bytes;
}

/**
 * What each size costs, of several rounds. Sizes take turns: code gets faster while it runs, which would otherwise favour the
 * size that comes last.
 */
function rounds(
  sizes: readonly number[],
  count: number,
  measure: (size: number) => number,
  of: (costs: readonly number[]) => number,
): Point[] {
  const costs = sizes.map((): number[] => []);
  for (let round = 0; round < count; round++)
    for (const [i, size] of sizes.entries()) costs[i]!.push(measure(size));
  return sizes.map((size, i) => ({ size, cost: of(costs[i]!) }));
}

/** Other work only adds to a time; the heap is moved either way by what else is compiled or dropped meanwhile. */
const least = (costs: readonly number[]): number => Math.min(...costs);
const settledHeap = (costs: readonly number[]): number => Math.max(median(costs), HEAP_NOISE);

/** Both series of one text, in this process. */
function measured(text: Text, sizes: readonly number[], runs: number): Series {
  const timed = (size: number): number => {
    const source = fresh(text, size);
    heapNow();
    return timeOf(source);
  };
  const held = (size: number): number => memoryOf(() => fresh(text, size));
  return { time: rounds(sizes, runs, timed, least), memory: rounds(sizes, 3, held, settledHeap) };
}

interface Asked {
  readonly sizes: readonly number[];
  readonly runs: number;
}

/** Both series of one text, in a process of its own. */
function apart(name: string, { sizes, runs }: Asked): Series {
  const flags = ['--min-semi-space-size=128', '--max-semi-space-size=128'];
  const args = [
    ...process.execArgv,
    ...flags,
    SELF,
    '--child',
    name,
    '--largest',
    `${sizes.at(-1)}`,
    '--runs',
    `${runs}`,
  ];
  const child = spawnSync(process.execPath, args, { encoding: 'utf8', maxBuffer: 1e8 });
  if (child.status !== 0) throw new Error(`${name}: ${child.stderr}`);
  return JSON.parse(child.stdout) as Series;
}

/** The better of the two, point by point: noise only adds. */
const better = (a: readonly Point[], b: readonly Point[]): Point[] =>
  a.map(({ size, cost }, i) => ({ size, cost: Math.min(cost, b[i]!.cost) }));

/** Measured again while it looks worse than it may be. */
function settled(name: string, asked: Asked, most: number): Series {
  let series = apart(name, asked);
  const over = () => exponent(series.time) > most || memoryExponent(series) > most;
  for (let i = 1; i < ATTEMPTS && over(); i++) {
    const again = apart(name, asked);
    series = { time: better(series.time, again.time), memory: better(series.memory, again.memory) };
  }
  return series;
}

/** Memory hardly depends on chance, so that its large end counts by itself: a constant at the small end may hide a square. */
const memoryExponent = ({ memory }: Series): number => Math.max(exponent(memory), lastExponent(memory));

const row = (name: string, series: Series): string =>
  [
    name.padEnd(16),
    exponent(series.time).toFixed(2).padStart(6),
    `${series.time.at(-1)!.cost.toFixed(0)} ms`.padStart(10),
    memoryExponent(series).toFixed(2).padStart(8),
    `${(series.memory.at(-1)!.cost / 1e6).toFixed(1)} MB`.padStart(10),
  ].join('');

/** Reads one text of full size and says what it took. */
function readFull(name: keyof typeof FULL_SIZE): string {
  const text = FULL_SIZE[name].text();
  const start = process.cpuUsage();
  const { mentions, findings } = analyseWhole(text);
  const { user, system } = process.cpuUsage(start);
  const peak = process.resourceUsage().maxRSS / 1000;
  return [
    `${name}: ${(text.length / 1e6).toFixed(1)} million characters, ${((user + system) / 1e6).toFixed(1)} s of a core`,
    `${peak.toFixed(0)} MB at most, ${mentions.length} sizes, ${findings.length} findings`,
  ].join(', ');
}

/** Each in a process of its own, so that one's memory is not another's. */
function full(): void {
  for (const name of Object.keys(FULL_SIZE)) {
    const args = [...process.execArgv, SELF, '--full', '--child', name];
    if (spawnSync(process.execPath, args, { stdio: 'inherit' }).status !== 0) process.exitCode = 1;
  }
}

const sizesTo = (largest: string): number[] => doubling(Number(largest) / 2 ** (STEPS - 1), STEPS);

function main(): void {
  const { values } = parseArgs({
    options: {
      only: { type: 'string' }, largest: { type: 'string', default: '64000' }, runs: { type: 'string', default: '4' },
      most: { type: 'string', default: '1.1' }, child: { type: 'string' }, full: { type: 'boolean' },
    },
  }); // biome-ignore format: options
  if (values.full && values.child) console.log(readFull(values.child as keyof typeof FULL_SIZE));
  else if (values.full) full();
  else if (values.child)
    process.stdout.write(
      JSON.stringify(measured(TEXTS[values.child]!, sizesTo(values.largest), Number(values.runs))),
    );
  else all(values);
}

function all(values: { only?: string; largest: string; runs: string; most: string }): void {
  const most = Number(values.most);
  const asked = { sizes: sizesTo(values.largest), runs: Number(values.runs) };
  const names = values.only?.split(',') ?? Object.keys(TEXTS);
  console.log(`${''.padEnd(16)}  time   at ${values.largest}  memory  at ${values.largest}`);
  let worse = 0;
  for (const name of names) {
    const series = settled(name, asked, most);
    const bad = exponent(series.time) > most || memoryExponent(series) > most;
    if (bad) worse++;
    console.log(row(name, series) + (bad ? `  more than ${most}` : ''));
  }
  console.log(`${names.length} texts, ${worse} above ${most}`);
  if (worse > 0) process.exitCode = 1;
}

if (process.argv[1] === SELF) main();
