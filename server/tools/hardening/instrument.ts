/** The house, bundled with counters in every branch, and what the counters say after a run. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { runInThisContext } from 'node:vm';
import { build, type Plugin, transform } from 'esbuild';
import { createInstrumenter } from 'istanbul-lib-instrument';
import type { examine } from './examine.ts';

type Counters = Record<string, number>;

interface FileCounters {
  readonly f: Counters;
  readonly b: Record<string, number[]>;
}

const VARIABLE = '__sizewrightCounters__';

/** Statements say little more than branches, and counting them takes most of the time. */
const STATEMENT = /cov_\w+\(\)\.s\[\d+\]\+\+/g;

const counted: Plugin = {
  name: 'counted',
  setup(builder) {
    const instrumenter = createInstrumenter({ coverageVariable: VARIABLE, esModules: true, compact: true });
    builder.onLoad({ filter: /[\\/](?:server[\\/]src|grammars)[\\/].*\.ts$/ }, async ({ path }) => {
      const { code } = await transform(readFileSync(path, 'utf8'), { loader: 'ts', target: 'es2022' });
      const counting = instrumenter.instrumentSync(code, path);
      return { contents: counting.replace(STATEMENT, '0'), loader: 'js' };
    });
  },
};

export interface Instrumented {
  readonly examine: typeof examine;
  readonly coverage: Coverage;
}

/** Bundles `entry`, which exports `examine`, and loads it into this process. */
export async function instrumented(entry: string): Promise<Instrumented> {
  const { outputFiles } = await build({
    entryPoints: [entry], bundle: true, write: false, platform: 'node', format: 'cjs', target: 'node20',
    mainFields: ['module', 'main'], plugins: [counted], logLevel: 'error',
  }); // biome-ignore format: options
  const module = { exports: {} as { examine: typeof examine } };
  const load = runInThisContext(`(function (module, exports, require) {${outputFiles![0]!.text}\n})`);
  load(module, module.exports, createRequire(import.meta.url));
  return { examine: module.exports.examine, coverage: new Coverage() };
}

/** How often counts as how often: once, twice, a few times, many times, as a bit each. */
const bucket = (count: number): number => (count < 3 ? count : count < 16 ? 4 : count < 128 ? 8 : 16);

/** Which branches and functions were reached so far, and how often at most in order of size. */
export class Coverage {
  readonly #lists: number[][] = [];
  readonly #functions: [Counters, readonly string[]][] = [];
  readonly #seen: Uint8Array;
  reached = 0;

  constructor() {
    const files = Object.values(
      (globalThis as Record<string, unknown>)[VARIABLE] as Record<string, FileCounters>,
    );
    for (const { b, f } of files) {
      this.#lists.push(...Object.values(b));
      this.#functions.push([f, Object.keys(f)]);
    }
    this.#seen = new Uint8Array(this.total);
    this.take();
    this.reached = 0;
    this.#seen.fill(0);
  }

  get total(): number {
    const branches = this.#lists.reduce((sum, list) => sum + list.length, 0);
    return branches + this.#functions.reduce((sum, [, keys]) => sum + keys.length, 0);
  }

  /** Reads the counters and sets them back; true when the run went where none was before. */
  take(): boolean {
    let at = 0;
    let fresh = false;
    for (const list of this.#lists)
      for (let i = 0; i < list.length; i++) {
        fresh = this.#note(at++, list[i]!) || fresh;
        list[i] = 0;
      }
    for (const [counters, keys] of this.#functions)
      for (const key of keys) {
        fresh = this.#note(at++, counters[key]!) || fresh;
        counters[key] = 0;
      }
    return fresh;
  }

  #note(at: number, count: number): boolean {
    if (count === 0) return false;
    const before = this.#seen[at]!;
    const after = before | bucket(count);
    if (after === before) return false;
    if (before === 0) this.reached++;
    this.#seen[at] = after;
    return true;
  }
}
