/**
 * Faults of a sample against whole sentences and notes, in one process: the fixtures of mentions, the sentence bank, its look-alikes and
 * the labelled rounds. The faults are those of `mutation-sample.ts`, put in by the same tool; what is left out is the test runner, which takes
 * most of the time, and with it the other tests, so that a score may only be better than this one.
 *
 * Usage: npm run mutation:sentences -- [--room claims] [--mutants 60] [--seed 1]
 *        npm run mutation:sentences -- --room claims --left      (what `mutation-sample.ts` or this left over)
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { Script } from 'node:vm';
import { build } from 'esbuild';
import { readBank, type Twin } from '../../../tests/claims/bank.ts';
import { keptTexts, storedIn } from '../../../tests/claims/kept.ts';
import type { blockOf } from '../../../tests/claims/readings.ts';
import { BARE } from '../../../tests/mentions/bare-cases.ts';
import { casesOf } from '../../../tests/mentions/fixtures.ts';
import type { analyse } from '../../src/course/analyse.ts';
import { openLines, type scoreFolder, sizeLines } from '../score.ts';
import { draw, type Fault, faultKey } from './draw.ts';
import { faultsBelow, type Put, putIn } from './faults.ts';
import { leftOver, type Status, summary } from './mutation-sample.ts';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));
const CLAIMS = join(ROOT, 'tests/claims');

interface House {
  readonly readIn: (note: string) => readonly string[];
  readonly analyse: typeof analyse;
  readonly blockOf: typeof blockOf;
  readonly scoreFolder: typeof scoreFolder;
}

/** Something that holds of the house while no fault is in it. */
interface Trial {
  readonly name: string;
  readonly holds: (house: House) => boolean;
}

const lines = (path: string): string[] =>
  readFileSync(path, 'utf8')
    .split('\n')
    .filter((line) => line !== '');

const contradictions = ({ analyse }: House, text: string) =>
  analyse(text).findings.filter(({ kind, deliberate }) => kind === 'contradiction' && !deliberate);

/** As the test of the bank: the true one is silent, the false one is reported, and its fix makes it true. */
function twinHolds(house: House, { right, wrong }: Twin): boolean {
  if (contradictions(house, right).length > 0) return false;
  const [found] = contradictions(house, wrong);
  if (!found) return false;
  const fix = found.fixes.find(({ safety }) => safety === 'safe');
  if (!fix) return true;
  const [edit] = fix.edits;
  if (!edit) return false;
  return (
    contradictions(house, wrong.slice(0, edit.span.start) + edit.text + wrong.slice(edit.span.end)).length ===
    0
  );
}

/** As the test of the rounds: nothing is missed, wrong, unseen or seen that was not before. */
function roundTrial(round: string): Trial {
  const folder = join(CLAIMS, 'rounds', round);
  const told = ({ scoreFolder }: House): string[] => {
    const score = scoreFolder(folder);
    return [...openLines(score), ...sizeLines(score)];
  };
  const known = new Set([...lines(join(folder, 'open.txt')), ...lines(join(folder, 'sizes.txt'))]);
  return { name: round, holds: (house) => told(house).every((line) => known.has(line)) };
}

/** As the tests of mentions: what is read in a note, with device, material and bounds. */
const readTrial = (name: string, note: string, read: readonly string[]): Trial => ({
  name,
  holds: (house) => house.readIn(note).join('\n') === read.join('\n'),
});

/** Every size of the demo course, note by note. */
function courseTrials(): Trial[] {
  const stored = readFileSync(join(ROOT, 'tests/mentions/course.golden.txt'), 'utf8').trimEnd().split('\n\n');
  return stored.map((block) => {
    const [head, ...read] = block.split('\n');
    return readTrial(head!, readFileSync(join(ROOT, 'tests/course', head!.slice(2)), 'utf8'), read);
  });
}

const NOTATIONS = join(ROOT, 'tests/notations');

const mentionTrials = (): Trial[] => [
  ...readdirSync(NOTATIONS)
    .filter((name) => name.endsWith('.md'))
    .flatMap((file) =>
      casesOf(readFileSync(join(NOTATIONS, file), 'utf8')).map(({ title, note, expected }) =>
        readTrial(`${file} ${title}`, note, expected),
      ),
    ),
  ...BARE.map(([note, read], i) => readTrial(`bare ${i}`, note, read)),
  ...courseTrials(),
];

/** As the test of what is kept: every text is read as it was. */
const keptTrials = (): Trial[] =>
  [...keptTexts()].flatMap(([file, texts]) => {
    const stored = storedIn(file);
    return texts.map((text, i) => ({
      name: `kept ${file} ${i}`,
      holds: ({ analyse, blockOf }: House) => stored.has(blockOf(text, analyse(text))),
    }));
  });

const trials = (): Trial[] => [
  ...mentionTrials(),
  ...keptTrials(),
  ...readBank().map((twin) => ({
    name: `${twin.file}:${twin.line}`,
    holds: (house: House) => twinHolds(house, twin),
  })),
  ...readdirSync(join(CLAIMS, 'rounds')).map(roundTrial),
];

/** What the faults are switched by, as the tool that puts them in writes it. */
interface Switch {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  hitCount?: number | undefined;
  hitLimit?: number | undefined;
  mutantCoverage?: { readonly static: Counts; readonly perTest: Readonly<Record<string, Counts>> };
}
type Counts = Readonly<Record<string, number>>;

/** How often a fault may be passed before the run is taken never to end. */
const ENDLESS = 20_000_000;

/** The house with all faults in it, none of them switched on; each call loads it anew. */
async function houseWith(put: ReadonlyMap<string, string>): Promise<(active?: string) => [House, Switch]> {
  const { outputFiles } = await build({
    stdin: {
      contents: `export { analyse } from './server/src/course/analyse.ts'; export { scoreFolder } from './server/tools/score.ts'; export { readIn } from './tests/mentions/fixtures.ts'; export { blockOf } from './tests/claims/readings.ts';`,
      resolveDir: ROOT,
      loader: 'ts',
    },
    bundle: true, write: false, platform: 'node', format: 'cjs', target: 'node20', logLevel: 'error',
    mainFields: ['module', 'main'], define: { 'import.meta.url': '"file:///none.js"' },
    plugins: [{
      name: 'faults',
      setup: ({ onLoad }) =>
        onLoad({ filter: /\.ts$/ }, ({ path }) => {
          const contents = put.get(relative(ROOT, path).replaceAll('\\', '/'));
          return contents === undefined ? undefined : { contents, loader: 'ts' };
        }),
    }],
  }); // biome-ignore format: options
  const script = new Script(`(function (module, exports, require) {${outputFiles![0]!.text}\n})`);
  const globals = globalThis as { __stryker__?: Switch | undefined };
  return (active) => {
    const state: Switch = { activeMutant: active ?? 'none', hitCount: 0, hitLimit: ENDLESS };
    globals.__stryker__ = state;
    const module = { exports: {} as House };
    script.runInThisContext()(module, module.exports, createRequire(import.meta.url));
    return [module.exports, state];
  };
}

/** False when the trial fails, or when it throws: nothing may. */
function passes(trial: Trial, house: House): boolean {
  try {
    return trial.holds(house);
  } catch {
    return false;
  }
}

/** Which trials come past each fault, and which faults run while the house is loaded. */
function coverage(all: readonly Trial[], [house, state]: [House, Switch]): Map<string, Trial[]> {
  const past = new Map<string, Trial[]>();
  for (const trial of all) {
    state.currentTestId = trial.name;
    if (!passes(trial, house)) throw new Error(`${trial.name} does not hold without a fault`);
    for (const id of Object.keys(state.mutantCoverage?.perTest[trial.name] ?? {}))
      past.set(id, [...(past.get(id) ?? []), trial]);
  }
  return past;
}

/** Trials that come past a fault; where only few do, what they found may have been kept for the others: then all. */
const FEW = 3;

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      room: { type: 'string', default: 'claims' }, mutants: { type: 'string', default: '60' },
      seed: { type: 'string', default: '1' }, left: { type: 'boolean', default: false },
    },
  }); // biome-ignore format: options
  const kept = join(ROOT, `artifacts/mutation-left-${values.room}.json`);
  const faults = values.left
    ? (JSON.parse(readFileSync(kept, 'utf8')) as Fault[])
    : draw(await faultsBelow(`server/src/${values.room}`), Number(values.mutants), Number(values.seed));
  const put: Put = await putIn(faults);
  const load = await houseWith(put.files);
  const all = trials();
  const past = coverage(all, load());
  const became = new Map<string, Status>();
  for (const fault of faults) {
    const id = put.ids.get(faultKey(fault))!;
    const own = past.get(id) ?? [];
    const [house] = load(id);
    const noticed =
      own.some((trial) => !passes(trial, house)) ||
      (own.length > 0 && own.length <= FEW && all.some((trial) => !passes(trial, house)));
    became.set(faultKey(fault), noticed ? 'Killed' : own.length > 0 ? 'Survived' : 'NoCoverage');
    console.log(`${became.get(faultKey(fault))} ${fault.file}:${fault.start.line} (${own.length})`);
  }
  mkdirSync(join(ROOT, 'artifacts'), { recursive: true });
  writeFileSync(kept, JSON.stringify(leftOver(faults, became)));
  console.log(`${all.length} sentences and notes, seed ${values.seed}\n${summary(faults, became)}`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await main();
