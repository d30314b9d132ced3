/**
 * Fuzzes the whole way from text to findings, guided by coverage: a text that reaches a branch for the first time, or
 * markedly more often, is kept and varied further. The usual native fuzzers for Node need a newer C library than
 * the machines that run the tests have, so counters come from Istanbul's instrumenter and the loop is here.
 *
 * Usage: tsx server/tools/hardening/fuzz.ts [--minutes N] [--executions N] [--seed N] [--out FOLDER]
 * Prints figures each minute; each find is cut down and written to FOLDER (artifacts/fuzz).
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { hash } from '../../src/course/hash.ts';
import { seeds } from './dictionary.ts';
import type { examine as Examine } from './examine.ts';
import { Coverage, instrumented } from './instrument.ts';
import { mutate } from './mutate.ts';
import { Chance } from './random.ts';
import { reduce } from './reduce.ts';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..');

export interface Find {
  readonly text: string;
  readonly path: string;
  readonly wrong: string;
}

export interface Figures {
  readonly executions: number;
  readonly kept: number;
  readonly reached: number;
  readonly total: number;
  readonly finds: readonly Find[];
}

export interface Fuzzing {
  readonly seed: number;
  /** Called before each execution: whether to go on. */
  readonly goOn: (executions: number) => boolean;
  readonly found?: (find: Find) => void;
  /** Called now and then. */
  readonly tell?: (figures: Figures) => void;
}

/** Most notes are Markdown. */
const PATHS = [...Array<string>(12).fill('a.md'), 'a.vtt', 'a.srt', 'a.txt', 'a.mdx'];

/** One text in so many is examined thoroughly even when it reaches nothing new. */
const THOROUGH = 16;
const TOLD = 250;

/** A short name for what went wrong, so that one fault is kept once. */
const kindOf = (wrong: string): string => wrong.replace(/\d+/g, 'n').split('\n').slice(0, 3).join('\n');

const shorter = (one: string, other: string): string => (one.length <= other.length ? one : other);

export async function fuzz({ seed, goOn, found, tell }: Fuzzing): Promise<Figures> {
  const { exports, counts } = await instrumented<{ examine: typeof Examine }>(
    join(ROOT, 'server/tools/hardening/examine.ts'),
    { statements: false, parser: false },
  );
  const { examine } = exports;
  const coverage = new Coverage(counts);
  const chance = new Chance(seed);
  const waiting = seeds(ROOT);
  const corpus: string[] = [''];
  const finds = new Map<string, Find>();
  let executions = 0;
  const figures = (): Figures => ({
    executions,
    kept: corpus.length,
    reached: coverage.reached,
    total: coverage.total,
    finds: [...finds.values()],
  });

  const keep = (text: string, path: string, wrong: string): void => {
    const kind = kindOf(wrong);
    if (finds.has(kind)) return;
    const same = (shorter: string): boolean => kindOf(examine(shorter, path, true) ?? '') === kind;
    const find = { text: same(text) ? reduce(text, same) : text, path, wrong };
    finds.set(kind, find);
    found?.(find);
  };

  // Short texts are read sooner, and reach as much.
  const parent = (): string => shorter(chance.pick(corpus), chance.pick(corpus));

  while (goOn(executions)) {
    const text = waiting.pop() ?? mutate(parent(), parent(), chance);
    const path = chance.pick(PATHS);
    executions++;
    let wrong = examine(text, path, chance.below(THOROUGH) === 0);
    if (coverage.take()) {
      corpus.push(text);
      wrong ??= examine(text, path, true);
    }
    if (wrong !== undefined) keep(text, path, wrong);
    if (executions % TOLD === 0) tell?.(figures());
  }
  return figures();
}

function written(folder: string, { text, path, wrong }: Find): void {
  mkdirSync(folder, { recursive: true });
  const name = join(folder, `${hash(wrong)}-${path}`);
  writeFileSync(name, text);
  writeFileSync(`${name}.why.txt`, `${wrong}\n`);
  console.log(`FOUND ${name}: ${wrong.slice(0, 600)}`);
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      minutes: { type: 'string', default: '60' },
      executions: { type: 'string', default: 'Infinity' },
      seed: { type: 'string', default: '1' },
      out: { type: 'string', default: join(ROOT, 'artifacts', 'fuzz') },
    },
  });
  const start = performance.now();
  const minutes = (): number => (performance.now() - start) / 60_000;
  let told = 0;
  const say = ({ executions, kept, reached, total, finds }: Figures): void =>
    console.log(
      `${minutes().toFixed(1)} min: ${executions} executions, ${reached} of ${total} branches and functions, ${kept} texts kept, ${finds.length} finds`,
    );
  const result = await fuzz({
    seed: Number(values.seed),
    goOn: (executions) => executions < Number(values.executions) && minutes() < Number(values.minutes),
    found: (find) => written(values.out, find),
    tell: (figures) => {
      if (minutes() < told) return;
      told = minutes() + 1;
      say(figures);
    },
  });
  say(result);
  if (result.finds.length > 0) process.exitCode = 1;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await main();
