/**
 * Makes the .vsix. Only what is named here gets in: the files are copied to a clean folder, with a manifest
 * freed of what concerns developers, and packed there. Then the contents are checked.
 *
 * Usage: npm run package [-- --web], where --web makes one that any host must run in the browser, for tests.
 */
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { entriesOf, faults } from './contents.ts';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const WEB = process.argv.includes('--web');
const STAGE = join(ROOT, '.cache', WEB ? 'stage-web' : 'stage');

const FILES = [
  '.vscodeignore',
  'LICENSE',
  'README.md',
  'CHANGELOG.md',
  'package.nls.json',
  'package.nls.de.json',
  'dist/extension.cjs',
  'dist/extension.browser.js',
  'dist/chart.js',
  'dist/server-node.cjs',
  'dist/server.js',
  'dist/licences.txt',
  'client/media',
  'client/l10n',
  'client/schema',
  'grammars/sizewright.tmLanguage.json',
  'server/src/course/sizewright.course.schema.json',
];

/** Fields that only matter to who works on the source. `type` would make a browser host take the bundle as a module. */
const DEVELOPMENT = [
  'private',
  'type',
  'bin',
  'scripts',
  'devDependencies',
  'dependencies',
  'exports',
  'types',
  'files',
];

function stage(): { version: string } {
  rmSync(STAGE, { recursive: true, force: true });
  mkdirSync(STAGE, { recursive: true });
  for (const file of FILES) {
    if (existsSync(join(ROOT, file))) cpSync(join(ROOT, file), join(STAGE, file), { recursive: true });
  }
  const manifest = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  for (const field of [...DEVELOPMENT, ...(WEB ? ['main'] : [])]) delete manifest[field];
  manifest.engines = { vscode: manifest.engines.vscode };
  writeFileSync(join(STAGE, 'package.json'), JSON.stringify(manifest, null, 2));
  return manifest;
}

function pack(out: string): void {
  const vsce = join(ROOT, 'node_modules', '@vscode', 'vsce', 'vsce');
  const options = [
    '--no-dependencies',
    '--allow-missing-repository',
    '--no-rewrite-relative-links',
    '--out',
    out,
  ];
  execFileSync(process.execPath, [vsce, 'package', ...options], {
    cwd: STAGE,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}

const { version } = stage();
const name = WEB ? 'sizewright-web.vsix' : `sizewright-${version}.vsix`;
const out = join(WEB ? join(ROOT, '.cache') : ROOT, name);
pack(out);
const problems = faults(entriesOf(readFileSync(out)), statSync(out).size);
if (problems.length > 0) {
  for (const problem of problems) console.error(problem);
  process.exit(1);
}
console.log(`${(statSync(out).size / 1024).toFixed(0)} kB  ${name}`);
