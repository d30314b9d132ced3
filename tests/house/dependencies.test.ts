/** Few dependencies, all needed: nothing is installed by whoever uses a bundle, and nothing is listed that nobody uses. */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { noticesOf } from '../../server/tools/licences.ts';
import { parseSource, ROOT, read, sourceFiles } from './source.ts';

const names = Object.keys(manifest.devDependencies);

/** Packages imported or resolved by name anywhere in the source. */
const imported = new Set(
  ['server', 'client', 'grammars', 'tests']
    .flatMap(sourceFiles)
    .flatMap((path) => parseSource(path).imports)
    .map(({ specifier }) => packageOf(specifier)),
);
const text = [
  ...['server/tools', 'client/tools', 'tests'].flatMap(sourceFiles),
  'vitest.config.ts',
  'stryker.config.js',
]
  .filter((path) => !path.startsWith('tests/house/'))
  .map(read)
  .join('\n');

function packageOf(specifier: string): string {
  const parts = specifier.split('/');
  return parts.slice(0, specifier.startsWith('@') ? 2 : 1).join('/');
}

function manifestOf(name: string): { license?: string; bin?: string | Record<string, string> } {
  return JSON.parse(read(`node_modules/${name}/package.json`));
}

/** A tool that a script of package.json runs by name. */
function isRun(name: string): boolean {
  const { bin } = manifestOf(name);
  const commands = typeof bin === 'string' ? [name.split('/').at(-1)!] : Object.keys(bin ?? {});
  const scripts = Object.values(manifest.scripts).join(' && ');
  return commands.some((command) => new RegExp(`(?:^|\\s)${command}(?:\\s|$)`).test(scripts));
}

/** Packages that a tool loads by a setting, without their name. */
const BY_SETTING: Readonly<Record<string, string>> = { '@vitest/coverage-v8': "provider: 'v8'" };

/** Types of Node and of the editor, or of a package that is used. */
const isTypes = (name: string): boolean =>
  name.startsWith('@types/') &&
  (/\/(?:node|vscode)$/.test(name) || imported.has(name.slice('@types/'.length)));

/** Named in a tool or a test: `'@vscode', 'vsce'`, or a file inside the package. */
const isNamed = (name: string): boolean =>
  text.includes(BY_SETTING[name] ?? `${name}/`) ||
  text.includes(`'${name}'`) ||
  text.includes(name.split('/').join("', '"));

describe('dependencies', () => {
  it('are all for development: what ships is bundled', () => {
    expect(manifest).not.toHaveProperty('dependencies');
    expect(names.length).toBeGreaterThan(10);
  });

  it('are all used', () => {
    const unused = names.filter(
      (name) => !imported.has(name) && !isRun(name) && !isTypes(name) && !isNamed(name),
    );
    expect(unused).toEqual([]);
  });

  it('are all listed that the source imports', () => {
    const own = new Set([manifest.name, 'vscode']);
    const foreign = [...imported].filter(
      (name) => !name.startsWith('.') && !name.startsWith('node:') && !own.has(name),
    );
    expect(foreign.filter((name) => !names.includes(name) && !names.includes(`@types/${name}`))).toEqual([]);
  });

  it('that are bundled carry a licence that asks for no more than a notice, and the notice is kept', () => {
    const inputs = [
      'node_modules/picomatch/lib/parse.js',
      'node_modules/@types/node/fs.d.ts',
      'server/src/cli/main.ts',
    ];
    const notices = noticesOf(ROOT, inputs);
    expect(notices.map(({ name, licence }) => [name, licence])).toEqual([
      ['@types/node', 'MIT'],
      ['picomatch', 'MIT'],
    ]);
    expect(notices[1]?.text).toContain('Permission is hereby granted');
    expect(() => noticesOf(ROOT, ['node_modules/commonmark-spec/index.js'])).toThrow('licence not permitted');
  });

  it('run no script of ours on installation', () => {
    const onInstall = ['preinstall', 'install', 'postinstall', 'prepare'];
    expect(Object.keys(manifest.scripts).filter((script) => onInstall.includes(script))).toEqual([]);
    expect(existsSync(join(ROOT, 'package-lock.json'))).toBe(true);
    expect(readdirSync(ROOT)).not.toContain('.npmrc');
  });
});
