/** The house, bundled with a counter in every branch, and what the counters say after a run. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { runInThisContext } from 'node:vm';
import { build, type Plugin, transform } from 'esbuild';
import { createInstrumenter } from 'istanbul-lib-instrument';

/** A counter as Istanbul writes it: of a statement, a function or one way of a branch. */
const COUNTER = /cov_\w+\(\)\.([sfb])\[(\d+)\](?:\[(\d+)\])?\+\+/g;

/** What is counted. Statements say little more than branches, and counting them takes time; loops need them. */
export interface Counting {
  readonly statements: boolean;
  /** The parser we use too, not only what is ours. */
  readonly parser: boolean;
}

const OURS = /[\\/](?:server[\\/]src|grammars)[\\/].*\.ts$/;
const PARSER = /[\\/](?:micromark|mdast-util|decode-named)[^\\/]*[\\/].*\.js$/;

/** One list holds all counters: Istanbul's own, an object a file behind a call, take most of the time of a run. */
class Counters {
  /** Where each counter stands: the file, and the line as it is without types. */
  readonly places: string[] = [];
  readonly #counting: Counting;
  readonly #instrumenter = createInstrumenter({ esModules: true, compact: true });

  constructor(counting: Counting) {
    this.#counting = counting;
  }

  /** The code of one file with its counters. */
  put(code: string, path: string): string {
    const known = new Map<string, number>();
    const lines = code.split('\n');
    const counting = this.#instrumenter.instrumentSync(code, path);
    const { statementMap, fnMap, branchMap } = this.#instrumenter.lastFileCoverage();
    const lineOf = (kind: string, at: string): number =>
      (kind === 's' ? statementMap[at]! : (kind === 'f' ? fnMap : branchMap)[at]!.loc).start.line;
    return counting.replace(COUNTER, (counter, kind: string, at: string) => {
      if (kind === 's' && !this.#counting.statements) return '0';
      const place = known.get(counter) ?? this.places.length;
      known.set(counter, place);
      this.places[place] ??= `${path}: ${lines[lineOf(kind, at) - 1]?.trim()}`;
      return `__sizewrightCounts__[${place}]++`;
    });
  }

  get plugin(): Plugin {
    const load = async (path: string): Promise<{ contents: string; loader: 'js' }> => {
      const loader = path.endsWith('.ts') ? 'ts' : 'js';
      const { code } = await transform(readFileSync(path, 'utf8'), { loader, target: 'es2022' });
      return { contents: this.put(code, path), loader: 'js' };
    };
    return {
      name: 'counted',
      setup: (builder) => {
        builder.onLoad({ filter: OURS }, ({ path }) => load(path));
        if (this.#counting.parser) builder.onLoad({ filter: PARSER }, ({ path }) => load(path));
      },
    };
  }
}

export interface Instrumented<Exports> {
  readonly exports: Exports;
  /** One counter a place; whoever reads them sets them back. */
  readonly counts: Uint32Array;
  /** Where each counter stands, for people. */
  readonly places: readonly string[];
}

/** Bundles `entry` and loads it into this process. */
export async function instrumented<Exports>(
  entry: string,
  counting: Counting,
): Promise<Instrumented<Exports>> {
  const counters = new Counters(counting);
  const { outputFiles } = await build({
    entryPoints: [entry], bundle: true, write: false, platform: 'node', format: 'cjs', target: 'node20',
    mainFields: ['module', 'main'], plugins: [counters.plugin], logLevel: 'error',
  }); // biome-ignore format: options
  const counts = new Uint32Array(counters.places.length);
  const module = { exports: {} as Exports };
  const code = `(function (module, exports, require, __sizewrightCounts__) {${outputFiles![0]!.text}\n})`;
  runInThisContext(code)(module, module.exports, createRequire(import.meta.url), counts);
  return { exports: module.exports, counts, places: counters.places };
}

/** How often counts as how often: once, twice, a few times, many times, as a bit each. */
const bucket = (count: number): number => (count < 3 ? count : count < 16 ? 4 : count < 128 ? 8 : 16);

/** Which branches and functions were reached so far, and how often at most in order of size. */
export class Coverage {
  readonly #counts: Uint32Array;
  readonly #seen: Uint8Array;
  reached = 0;

  /** What ran while the code was loaded does not count. */
  constructor(counts: Uint32Array) {
    this.#counts = counts.fill(0);
    this.#seen = new Uint8Array(counts.length);
  }

  get total(): number {
    return this.#counts.length;
  }

  /** Reads the counters and sets them back; true when the run went where none was before. */
  take(): boolean {
    let fresh = false;
    for (let at = 0; at < this.total; at++)
      if (this.#counts[at] !== 0) fresh = this.#note(at, this.#counts[at]!) || fresh;
    this.#counts.fill(0);
    return fresh;
  }

  #note(at: number, count: number): boolean {
    const before = this.#seen[at]!;
    const after = before | bucket(count);
    if (after === before) return false;
    if (before === 0) this.reached++;
    this.#seen[at] = after;
    return true;
  }
}
