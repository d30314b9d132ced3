/**
 * How many faults the tests of a room notice, estimated from a sample drawn by chance: a whole run takes a day.
 *
 * Usage: npm run mutation:sample -- --room claims [--mutants 60] [--seed 1] [--only PART-OF-A-PATH] [--tests a,b]
 *        npm run mutation:sample -- --room claims --left [--every]
 *
 * What is left over is kept in `artifacts`; `--left` tries it again, once there are tests for it. `--every` does so with
 * every test of the room: of an answer that one test asked for and a second one found kept, only the first counts otherwise.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { draw, type Fault, faultKey, rangeOf, wilson } from './draw.ts';
import { faultsBelow } from './faults.ts';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));

/** Tests that hold each room: its own, and those that read whole sentences and notes. */
const TESTS: Readonly<Record<string, string>> = {
  sizes: 'sizes,editor/sheets.test.ts,claims/judge',
  mentions: 'mentions,checks/unclear.test.ts,claims/silent.test.ts,claims/bank.test.ts,claims/rounds.test.ts',
  // Without the test of the gate, which reads the bank twice over for every fault, and whose subject only saves time.
  claims:
    'claims/bank.test.ts,claims/silent.test.ts,claims/rounds.test.ts,claims/published.test.ts,claims/judge,course-settings/differing.test.ts',
  checks: 'checks,editor,course-settings,texts/german.test.ts,claims/bank.test.ts',
};

export type Status =
  | 'Killed'
  | 'Timeout'
  | 'Survived'
  | 'NoCoverage'
  | 'Ignored'
  | 'RuntimeError'
  | 'CompileError'
  | 'Pending';

interface Report {
  readonly files: Readonly<Record<string, { readonly mutants: readonly Reported[] }>>;
}

/** A fault as the report has it: columns from 1. */
interface Reported {
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly status: Status;
  readonly location: Readonly<Record<'start' | 'end', { readonly line: number; readonly column: number }>>;
}

/** What became of each fault of a report. */
export function statuses({ files }: Report): Map<string, Status> {
  const entries = Object.entries(files).flatMap(([file, { mutants }]) =>
    mutants.map(({ mutatorName, replacement = '', status, location: { start, end } }): [string, Status] => [
      faultKey({
        file,
        kind: mutatorName,
        start: { line: start.line, column: start.column - 1 },
        end: { line: end.line, column: end.column - 1 },
        replacement,
      }),
      status,
    ]),
  );
  return new Map(entries);
}

const NOTICED: ReadonlySet<Status | undefined> = new Set<Status>(['Killed', 'Timeout']);
const MISSED: ReadonlySet<Status | undefined> = new Set<Status>(['Survived', 'NoCoverage']);

interface Settings {
  readonly plugins: readonly string[];
}

/** The settings of a whole run, of which a sample differs in little. */
async function usual(): Promise<Settings> {
  const loaded: { default: Settings } = await import(pathToFileURL(join(ROOT, 'stryker.config.js')).href);
  return loaded.default;
}

/** Puts the faults in one by one. `perTest`: only the tests that come past a fault are run; `off`: all of them. */
async function tried(
  faults: readonly Fault[],
  tests: string,
  coverageAnalysis: 'perTest' | 'off',
): Promise<Map<string, Status>> {
  const base = await usual();
  // Of its own, so that two samples may run side by side.
  const folder = join(ROOT, `.cache/mutation-sample-${process.pid}`);
  mkdirSync(folder, { recursive: true });
  const [asked, config, report] = ['drawn.json', 'config.json', 'report.json'].map((name) =>
    join(folder, name),
  );
  writeFileSync(asked!, JSON.stringify(faults.map((fault) => JSON.parse(faultKey(fault)))));
  const settings = {
    ...base,
    mutate: [...new Set(faults.map(rangeOf))],
    plugins: [...base.plugins, join(ROOT, 'server/tools/hardening/drawn.js')],
    checkers: ['drawn'],
    coverageAnalysis,
    ignoreStatic: coverageAnalysis === 'perTest',
    // What never ends is known by how often a fault is passed; a busy machine is no reason to call one noticed.
    timeoutMS: 900_000,
    dryRunTimeoutMinutes: 60,
    reporters: ['json', 'drawn'],
    jsonReporter: { fileName: relative(ROOT, report!) },
  };
  writeFileSync(config!, JSON.stringify(settings));
  const run = spawnSync(
    process.execPath,
    ['node_modules/@stryker-mutator/core/bin/stryker.js', 'run', config!],
    {
      cwd: ROOT,
      env: { ...process.env, MUTATION_TESTS: tests, MUTATION_DRAWN: asked!, SIZEWRIGHT_PIECES: '10' },
      stdio: ['ignore', 'inherit', 'inherit'],
    },
  );
  if (run.status !== 0) throw new Error(`the run ended with ${run.status}`);
  return statuses(JSON.parse(readFileSync(report!, 'utf8')) as Report);
}

/** Faults that no test noticed. */
export const leftOver = (faults: readonly Fault[], became: ReadonlyMap<string, Status>): Fault[] =>
  faults.filter((fault) => MISSED.has(became.get(faultKey(fault))));

/** The line a fault stands on, and what it makes of the place. */
function shown({ file, kind, start, end, replacement }: Fault): string {
  const lines = readFileSync(join(ROOT, file), 'utf8').split('\n');
  const last = start.line === end.line ? end.column : undefined;
  const here = lines[start.line - 1]!.slice(start.column, last);
  const short = (text: string): string => text.replace(/\s+/g, ' ').slice(0, 160);
  return `${file}:${start.line}:${start.column + 1} ${kind}\n    ${short(here)}\n  → ${short(replacement)}`;
}

const percent = (share: number): string => (100 * share).toFixed(1);

/** The score in words, and what is left over. */
export function summary(faults: readonly Fault[], became: ReadonlyMap<string, Status>): string {
  const of = (set: ReadonlySet<Status | undefined>) =>
    faults.filter((fault) => set.has(became.get(faultKey(fault))));
  const [noticed, missed] = [of(NOTICED), of(MISSED)];
  const all = noticed.length + missed.length;
  const { low, high } = wilson(noticed.length, all);
  const apart = faults.length - all;
  return [
    ...missed.map((fault) => `${became.get(faultKey(fault))} ${shown(fault)}`),
    `${noticed.length} of ${all} noticed: ${percent(noticed.length / all)} % (95 %: ${percent(low)} to ${percent(high)} %)`,
    ...(apart > 0 ? [`${apart} more ran while loading, or did not run at all, and do not count`] : []),
  ].join('\n');
}

/** A sample of a room's faults, and what it is a sample of. */
async function drawn(
  room: string,
  only: string,
  count: number,
  seed: number,
): Promise<{ faults: Fault[]; of: string }> {
  const all = (await faultsBelow(`server/src/${room}`)).filter(({ file }) => file.includes(only));
  return { faults: draw(all, count, seed), of: `${all.length} faults of ${room}, seed ${seed}` };
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      room: { type: 'string', default: 'claims' }, mutants: { type: 'string', default: '60' },
      seed: { type: 'string', default: '1' }, only: { type: 'string', default: '' },
      tests: { type: 'string' }, left: { type: 'boolean', default: false },
      every: { type: 'boolean', default: false },
    },
  }); // biome-ignore format: options
  const tests = values.tests ?? TESTS[values.room];
  if (!tests) throw new Error(`rooms: ${Object.keys(TESTS).join(', ')}`);
  const kept = join(ROOT, `artifacts/mutation-left-${values.room}.json`);
  const { faults, of } = values.left
    ? { faults: JSON.parse(readFileSync(kept, 'utf8')) as Fault[], of: 'those left over' }
    : await drawn(values.room, values.only, Number(values.mutants), Number(values.seed));
  console.log(`${faults.length} of ${of}; tests: ${tests}`);
  const became = await tried(faults, tests, values.every ? 'off' : 'perTest');
  console.log(summary(faults, became));
  mkdirSync(join(ROOT, 'artifacts'), { recursive: true });
  writeFileSync(kept, JSON.stringify(leftOver(faults, became)));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await main();
