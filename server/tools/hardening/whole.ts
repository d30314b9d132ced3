/**
 * Every fault that a room's functions could have, or those of some of its files, against test files run in this process: the test
 * runner starts anew for each fault, which takes seconds, and here a fault takes a fraction of one. The faults are those of
 * `mutation-sample.ts`, put in by the same tool, and of the tests only those are run that come past a fault.
 *
 * Usage: npm run mutation:whole -- [--room checks] [--only PARTS,OF,PATHS] [--tests checks,texts/german.test.ts]
 *                                  [--mutants 60 --seed 1] [--texts 1000] [--warm]
 *
 * In the room `mentions` every text of the bank, of the look-alikes and of the rounds is a test too: its sizes are read as
 * they are without a fault, which `tests/claims/kept` holds to what is stored. A fault that nobody notices costs a reading of all of them,
 * so `--texts` takes about so many, spread over all, and `--warm` does not load the house anew for it, which takes longer than the tests:
 * what an answer kept from before would hide then counts as left over.
 */
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { runInThisContext, Script } from 'node:vm';
import { build } from 'esbuild';
import { keptTexts } from '../../../tests/claims/kept.ts';
import { draw, type Fault, faultKey } from './draw.ts';
import { faultsBelow, type Put, putIn } from './faults.ts';
import { gather, type Test } from './gather.ts';
import { leftOver, type Status, summary } from './mutation-sample.ts';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));
const require = createRequire(import.meta.url);

/** Of growth and of files that are generated: no fault of a room shows there first. */
const LEFT_OUT = /growth|manifest/;

function testFiles(one: string): string[] {
  const path = join(ROOT, 'tests', one);
  if (statSync(path).isFile()) return [path];
  return readdirSync(path, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.test.ts') && !LEFT_OUT.test(name))
    .sort()
    .map((name) => join(path, name));
}

/** What the faults are switched by, as the tool that puts them in writes it. */
interface Switch {
  activeMutant: string;
  hitCount: number;
  hitLimit: number;
  currentTestId?: string;
  mutantCoverage?: { readonly static: Counts; readonly perTest: Readonly<Record<string, Counts>> };
}
type Counts = Readonly<Record<string, number>>;

/** A fault that never ends: how often a test may pass it, and the milliseconds all tests may take with it. */
const ENDLESS = { passes: 5_000_000, time: 300_000 };

/** A text whose sizes are read: what stands there and what is read without a fault, once that is known. */
interface Kept {
  readonly name: string;
  readonly text: string;
  note?: unknown;
  read?: string;
}

const KEPT_TESTS = `
import { it } from 'vitest';
import { findMentions } from './server/src/mentions/index.ts';
import { readNote } from './server/src/notes/index.ts';
import { told } from './tests/mentions/fixtures.ts';
for (const kept of __kept) it(kept.name, () => {
  kept.note ??= readNote(kept.text);
  const read = findMentions(kept.note).map(told).join('\\n');
  kept.read ??= read;
  if (read !== kept.read) throw new Error(read);
});`;

const SEED = `import fc from 'fast-check'; fc.configureGlobal({ seed: 20260, interruptAfterTimeLimit: 150 });`;

type Load = (active?: string) => { readonly tests: readonly Test[]; readonly state: Switch };

/** The tests with all faults in the house, none or one of them switched on; each call loads both anew. */
async function houseWith(put: Put, files: readonly string[], kept: readonly Kept[]): Promise<Load> {
  const contents = [SEED, ...files.map((file) => `import ${JSON.stringify(file)};`), KEPT_TESTS].join('\n');
  const placed = (path: string): string =>
    (put.files.get(relative(ROOT, path).replaceAll('\\', '/')) ?? readFileSync(path, 'utf8'))
      .replaceAll('import.meta.dirname', JSON.stringify(dirname(path)))
      .replaceAll('import.meta.url', JSON.stringify(`file://${path}`));
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: ROOT, loader: 'ts' },
    bundle: true, write: false, platform: 'node', format: 'cjs', target: 'node20', logLevel: 'error',
    mainFields: ['module', 'main'], external: ['vitest', 'fast-check'],
    plugins: [{
      name: 'faults',
      setup: ({ onLoad }) =>
        onLoad({ filter: /\.ts$/ }, ({ path }) => ({ contents: placed(path), loader: 'ts' as const })),
    }],
  }); // biome-ignore format: options
  const script = new Script(`(function (module, exports, require, __kept) {${outputFiles![0]!.text}\n})`);
  return (active = 'none') => {
    const state: Switch = { activeMutant: active, hitCount: 0, hitLimit: ENDLESS.passes };
    (globalThis as { __stryker__?: Switch }).__stryker__ = state;
    const { tests, vitest } = gather();
    const asked = (name: string): unknown => (name === 'vitest' ? vitest : require(name));
    script.runInThisContext()({ exports: {} }, {}, asked, kept);
    return { tests, state };
  };
}

/** False when the test fails, or when it throws: nothing may. */
function passes(test: Test): boolean {
  try {
    test.run();
    return true;
  } catch {
    return false;
  }
}

interface Tried {
  /** Tests that come past each fault, the quickest first. */
  readonly past: ReadonlyMap<string, readonly number[]>;
  /** Those that may be run here, the quickest first. */
  readonly fit: readonly number[];
  /** Faults that are passed while the house is loaded. */
  readonly loading: ReadonlySet<string>;
}

/** Runs all once without a fault. One that waits for something, or does not hold here, is left out and named. */
function tryOut({ tests, state }: ReturnType<Load>): Tried {
  const loading = new Set(Object.keys(state.mutantCoverage?.static ?? {}));
  const times = new Map<number, number>();
  const unfit: string[] = [];
  for (const [i, test] of tests.entries()) {
    state.currentTestId = String(i);
    state.hitCount = 0;
    const start = performance.now();
    try {
      if (test.run() instanceof Promise) throw new Error('waits for something');
      times.set(i, performance.now() - start);
    } catch {
      unfit.push(test.name);
    }
  }
  if (unfit.length > 0) console.log(`${unfit.length} tests left out, the first: ${unfit[0]}`);
  const fit = [...times.keys()].sort((a, b) => times.get(a)! - times.get(b)!);
  const past = new Map<string, number[]>();
  for (const i of fit)
    for (const id of Object.keys(state.mutantCoverage?.perTest[i] ?? {})) {
      const tests = past.get(id);
      if (tests) tests.push(i);
      else past.set(id, [i]);
    }
  return { past, fit, loading };
}

/** Tests that come past a fault; where only few do, what they found may have been kept for the others: then all. */
const FEW = 3;

/**
 * Tries faults one by one in a house that stays as it is, which is loaded anew where that may matter: for a fault nobody noticed,
 * since answers found without it may have been kept, and after one that left something behind.
 */
function trier(load: Load, { past, fit, loading }: Tried, warm: boolean): (id: string) => Status {
  let house = load();
  const noticedBy = (id: string, tests: readonly number[]): number | undefined => {
    house.state.activeMutant = id;
    const fails = (i: number): boolean => {
      house.state.hitCount = 0;
      return !passes(house.tests[i]!);
    };
    Object.assign(globalThis, { __noticed: () => tests.find(fails) });
    try {
      return runInThisContext('__noticed()', { timeout: ENDLESS.time });
    } catch {
      return -1;
    } finally {
      house.state.activeMutant = 'none';
    }
  };
  return (id) => {
    const own = past.get(id) ?? [];
    if (own.length === 0) return loading.has(id) ? 'Ignored' : 'NoCoverage';
    let by = noticedBy(id, own);
    if (by === undefined && !warm) {
      house = load();
      by = noticedBy(id, own.length > FEW ? own : [...own, ...fit]);
    }
    if (by === undefined) return 'Survived';
    if (by < 0 || !passes(house.tests[by]!)) house = load();
    return by < 0 ? 'Timeout' : 'Killed';
  };
}

function keptIn(room: string, most = Infinity): Kept[] {
  if (room !== 'mentions') return [];
  const all = [...keptTexts()].flatMap(([file, texts]) =>
    texts.map((text, i) => ({ name: `${file} ${i}`, text })),
  );
  const step = Math.max(1, Math.floor(all.length / most));
  return all.filter((_, i) => i % step === 0);
}

/** What became of the faults of each file, and of all. */
function told(faults: readonly Fault[], became: ReadonlyMap<string, Status>): string {
  const files = [...new Set(faults.map(({ file }) => file))];
  const each = files.map(
    (file) =>
      `${file}\n${summary(
        faults.filter((one) => one.file === file),
        became,
      )}`,
  );
  const whole = summary(faults, became).split('\n');
  return [...each, 'All', ...whole.filter((line) => /^\d+ (?:of|more)/.test(line))].join('\n');
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      room: { type: 'string', default: 'checks' }, only: { type: 'string', default: '' }, tests: { type: 'string' },
      mutants: { type: 'string' }, seed: { type: 'string', default: '1' }, left: { type: 'boolean', default: false },
      texts: { type: 'string' }, warm: { type: 'boolean', default: false },
    },
  }); // biome-ignore format: options
  const { room, only, seed } = values;
  const store = join(ROOT, `artifacts/mutation-left-${room}.json`);
  const all = values.left
    ? (JSON.parse(readFileSync(store, 'utf8')) as Fault[])
    : await faultsBelow(`server/src/${room}`);
  const asked = all.filter(({ file }) => only.split(',').some((part) => file.includes(part)));
  const faults = values.mutants ? draw(asked, Number(values.mutants), Number(seed)) : asked;
  const put = await putIn(faults);
  const load = await houseWith(
    put,
    (values.tests ?? room).split(',').flatMap(testFiles),
    keptIn(room, values.texts ? Number(values.texts) : undefined),
  );
  const tried = tryOut(load());
  console.log(`${faults.length} of ${all.length} faults, ${tried.fit.length} tests`);
  const becomes = trier(load, tried, values.warm);
  const became = new Map<string, Status>();
  for (const fault of faults) became.set(faultKey(fault), becomes(put.ids.get(faultKey(fault))!));
  console.log(told(faults, became));
  mkdirSync(join(ROOT, 'artifacts'), { recursive: true });
  writeFileSync(store, JSON.stringify(leftOver(faults, became)));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await main();
