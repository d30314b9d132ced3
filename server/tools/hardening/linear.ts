/**
 * Time and memory against size on hostile texts, with the fitted exponents. The quick form in the tests has to bear
 * a busy machine and allows time 1.25; here larger texts are read several times, each in a process of its own, and 1.1 holds.
 *
 * Time is what this process took of a core, and the shortest of several runs counts: other work on the machine only ever adds
 * to it. The nursery of the heap is large, so that the collector stays out of it. Memory is the heap after a collection,
 * with the analysis still held, less the heap before.
 *
 * Usage: npm run linear -- [--only words,table] [--largest 256000] [--runs 5] [--most 1.1]
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { analyseWhole } from '../../src/course/index.ts';
import { doubling, exponent, type Point } from './growth.ts';
import { heapNow } from './heap.ts';
import { TEXTS, type Text } from './hostile-texts.ts';

const SELF = fileURLToPath(import.meta.url);
/** Sizes of a series, each twice the one before. */
const STEPS = 5;
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

/** Bytes that an analysis holds, its text among them. */
function memoryOf(make: () => string): number {
  // What is kept of the reading before makes room for this, so that it is not taken off.
  analyseWhole(`Wash your hands ${calls++} times.`);
  const before = heapNow();
  const analysis = analyseWhole(make());
  const held = heapNow() - before;
  // Used after the collection, or nothing of it would be left to measure.
  return analysis.note.text.length > 0 ? held * 1e6 : 0;
}

const least = (count: number, measure: () => number): number =>
  Math.min(...Array.from({ length: count }, measure));

/** Both series of one text, in this process. */
function measured(text: Text, sizes: readonly number[], runs: number): Series {
  // The code is compiled, and what is kept of earlier readings is full, before anything is measured.
  for (let i = 0; i < 3; i++) analyseWhole(fresh(text, sizes.at(-1)!));
  const timed = (size: number) =>
    least(runs, () => {
      heapNow();
      return timeOf(fresh(text, size));
    });
  const time = sizes.map((size) => ({ size, cost: timed(size) }));
  const memory = sizes.map((size) => ({ size, cost: least(2, () => memoryOf(() => fresh(text, size))) }));
  return { time, memory };
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
  const over = () => exponent(series.time) > most || exponent(series.memory) > most;
  for (let i = 1; i < ATTEMPTS && over(); i++) {
    const again = apart(name, asked);
    series = { time: better(series.time, again.time), memory: better(series.memory, again.memory) };
  }
  return series;
}

const row = (name: string, { time, memory }: Series): string =>
  [
    name.padEnd(16),
    exponent(time).toFixed(2).padStart(6),
    `${time.at(-1)!.cost.toFixed(0)} ms`.padStart(10),
    exponent(memory).toFixed(2).padStart(8),
    `${(memory.at(-1)!.cost / 1e6).toFixed(1)} MB`.padStart(10),
  ].join('');

function main(): void {
  const { values } = parseArgs({
    options: {
      only: { type: 'string' }, largest: { type: 'string', default: '256000' }, runs: { type: 'string', default: '5' },
      most: { type: 'string', default: '1.1' }, child: { type: 'string' },
    },
  }); // biome-ignore format: options
  const most = Number(values.most);
  const asked = {
    sizes: doubling(Number(values.largest) / 2 ** (STEPS - 1), STEPS),
    runs: Number(values.runs),
  };
  if (values.child) {
    process.stdout.write(JSON.stringify(measured(TEXTS[values.child]!, asked.sizes, asked.runs)));
    return;
  }
  const names = values.only?.split(',') ?? Object.keys(TEXTS);
  console.log(`${''.padEnd(16)}  time   at ${values.largest}  memory  at ${values.largest}`);
  let worse = 0;
  for (const name of names) {
    const series = settled(name, asked, most);
    const bad = exponent(series.time) > most || exponent(series.memory) > most;
    if (bad) worse++;
    console.log(row(name, series) + (bad ? `  more than ${most}` : ''));
  }
  console.log(`${names.length} texts, ${worse} above ${most}`);
  if (worse > 0) process.exitCode = 1;
}

if (process.argv[1] === SELF) main();
