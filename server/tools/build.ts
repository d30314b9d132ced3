/**
 * Bundles what ships into dist/. Each bundle is built only when its entry exists, so that a checkout of a
 * part of the house still builds. Prints the size of every bundle.
 *
 * Usage: tsx server/tools/build.ts [--readable] [FOLDER]
 */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, build, type Plugin } from 'esbuild';
import { inAscii } from './ascii.ts';
import { noticesOf, writeNotices } from './licences.ts';
import { patternNeeds } from './pattern-needs.ts';
import { writeTypes } from './types.ts';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const folder = process.argv.slice(2).find((argument) => !argument.startsWith('--'));
const OUT = resolve(ROOT, folder ?? 'dist');

interface Bundle {
  readonly entry: string;
  readonly out: string;
  readonly options: BuildOptions;
  /** A small file of this name starts the bundle from code kept between runs. */
  readonly starter?: string;
}

/** What few runs of the command line ask of Node and what takes long to load, and what is used of it: got at its first use. */
const LATE: Readonly<Record<string, readonly string[]>> = { 'node:child_process': ['spawn', 'spawnSync'] };

const late: Plugin = {
  name: 'late',
  setup: (build) => {
    build.onResolve({ filter: /^node:/ }, ({ path, namespace }) =>
      path in LATE && namespace !== 'late' ? { path, namespace: 'late' } : undefined,
    );
    build.onLoad({ filter: /^/, namespace: 'late' }, ({ path }) => ({
      contents: LATE[path]!.map(
        (name) =>
          `Object.defineProperty(exports, '${name}', { enumerable: true, get: () => require('${path}').${name} });`,
      ).join('\n'),
    }));
  },
};

// `module` before `main`: one of the libraries has a `main` whose parts no bundler can follow.
const node: BuildOptions = {
  platform: 'node',
  format: 'cjs',
  target: 'node20',
  mainFields: ['module', 'main'],
  // Code that is run as a script has no loader for modules of its own.
  supported: { 'dynamic-import': false },
};
const program: BuildOptions = { ...node, plugins: [late] };
const desktop: BuildOptions = { ...node, external: ['vscode'] };
const web: BuildOptions = { platform: 'browser', target: 'es2022' };

/** Packages of the protocol have a part for Node that the browser's conditions hide. */
const PROTOCOL = ['vscode-languageserver', 'vscode-languageserver-protocol', 'vscode-jsonrpc'];
const bothHomes: BuildOptions = {
  ...web,
  format: 'iife',
  // Without the `worker` condition, entity decoding is bundled in its DOM form and fails in a worker.
  conditions: ['worker', 'browser'],
  alias: Object.fromEntries(
    PROTOCOL.map((name) => [`${name}/node`, `./node_modules/${name}/lib/node/main.js`]),
  ),
  external: ['node:*', ...builtinModules],
  supported: { 'dynamic-import': false },
  define: { PROGRAM_EXPORTS: 'exports' },
  // Meant: a starter hands its exports to the script it runs.
  logOverride: { 'commonjs-variable-in-esm': 'silent' },
};

/** The plugin for remark stands beside the library and imports it from there. */
const besideLibrary: Plugin = {
  name: 'beside-library',
  setup: (build) => {
    build.onResolve({ filter: /^\.\/index\.ts$/ }, () => ({ path: './index.js', external: true }));
  },
};

const forUse: BuildOptions = {
  platform: 'neutral',
  format: 'esm',
  target: 'es2022',
  mainFields: ['module', 'main'],
  conditions: ['worker'],
};

const BUNDLES: readonly Bundle[] = [
  { entry: 'server/src/entry/cli.ts', out: 'cli.main.cjs', options: program, starter: 'cli.cjs' },
  {
    entry: 'server/src/entry/server.ts',
    out: 'server.js',
    options: bothHomes,
    starter: 'server-node.cjs',
  },
  { entry: 'client/src/extension.ts', out: 'extension.cjs', options: desktop },
  {
    entry: 'client/src/extension.browser.ts',
    out: 'extension.browser.js',
    options: { ...web, format: 'cjs', external: ['vscode'], conditions: ['worker', 'browser'] },
  },
  {
    entry: 'client/webview/chart.ts',
    out: 'chart.js',
    options: { ...web, format: 'iife' },
  },
  { entry: 'server/src/entry/index.ts', out: 'index.js', options: forUse },
  {
    entry: 'server/src/entry/remark.ts',
    out: 'remark.js',
    options: { ...forUse, plugins: [besideLibrary] },
  },
];

const readable = process.argv.includes('--readable');

/** Files that went into any bundle. */
const inputs = new Set<string>();

/** The file that starts a bundle knows its name and a stamp of its content. */
const starterOf = ({ out, starter = '' }: Bundle): Bundle => ({
  entry: 'server/src/entry/start.ts',
  out: starter,
  options: { ...node, banner: { js: '#!/usr/bin/env node' }, define: stamped(out) },
});

function stamped(name: string): Record<string, string> {
  const stamp = createHash('sha256')
    .update(readFileSync(join(OUT, name)))
    .digest('hex')
    .slice(0, 16);
  return { PROGRAM: JSON.stringify(name), STAMP: JSON.stringify(stamp) };
}

async function bundle(one: Bundle): Promise<string> {
  const outfile = join(OUT, one.out);
  const { metafile } = await build({
    entryPoints: [join(ROOT, one.entry)],
    outfile,
    bundle: true,
    minify: !readable,
    legalComments: 'none',
    logLevel: 'warning',
    absWorkingDir: ROOT,
    metafile: true,
    ...one.options,
    define: { ...needs, ...one.options.define },
  });
  for (const output of Object.values(metafile?.outputs ?? {}))
    for (const [input, { bytesInOutput }] of Object.entries(output.inputs))
      if (bytesInOutput > 0) inputs.add(input);
  writeFileSync(outfile, inAscii(readFileSync(outfile, 'utf8')));
  return `${(statSync(outfile).size / 1024).toFixed(0).padStart(6)} kB  ${relative(ROOT, outfile)}`;
}

mkdirSync(OUT, { recursive: true });
const needs = { PATTERN_NEEDS: JSON.stringify(await patternNeeds(ROOT)) };
const built = BUNDLES.filter((one) => existsSync(join(ROOT, one.entry)));
for (const line of await Promise.all(built.map(bundle))) console.log(line);
const starters = built.filter(({ starter }) => starter !== undefined).map(starterOf);
for (const line of await Promise.all(starters.map(bundle))) console.log(line);
writeNotices(join(OUT, 'licences.txt'), noticesOf(ROOT, inputs));
writeTypes(ROOT, OUT);
// The manual page comes from the program that was just built.
if (existsSync(join(OUT, 'cli.cjs')))
  writeFileSync(join(OUT, 'sizewright.1'), execFileSync(process.execPath, [join(OUT, 'cli.cjs'), 'manual']));
