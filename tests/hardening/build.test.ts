/** What ships is made the same every time, of parts whose licences are listed, and depends on nothing to be installed. */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { analyse } from '../../server/src/course/analyse.ts';
import { folderOf, jsonLines, sizewright } from '../cli/support.ts';

function built(): Map<string, string> {
  const folder = folderOf();
  const { status, stderr } = spawnSync(
    process.execPath,
    ['node_modules/tsx/dist/cli.mjs', 'server/tools/build.ts', folder],
    {
      encoding: 'utf8',
    },
  );
  expect([status, stderr]).toEqual([0, '']);
  return new Map(
    readdirSync(folder).map((name) => [
      name,
      createHash('sha256')
        .update(readFileSync(join(folder, name)))
        .digest('hex'),
    ]),
  );
}

describe('the build', () => {
  it('gives the same bytes every time, wherever it writes', () => {
    const [one, two] = [built(), built()];
    expect(one.size).toBeGreaterThan(8);
    expect([...two]).toEqual([...one]);
  });

  it('is in ASCII, which reads alike in every encoding', () => {
    for (const name of readdirSync('dist').filter((each) => /\.c?js$/.test(each)))
      expect([name, /[^\0-\x7f]/.exec(readFileSync(join('dist', name), 'utf8'))?.[0]]).toEqual([
        name,
        undefined,
      ]);
  });

  it('reads as the source does', () => {
    const folder = 'tests/notations';
    const said = sizewright(['list', '-r', 'jsonl', folder]).stdout;
    const inProgram = jsonLines<{ file: string; text: string }>(said).map(
      ({ file, text }) => `${file}: ${text}`,
    );
    const inSource = readdirSync(folder)
      .sort()
      .flatMap((name) => {
        const text = readFileSync(join(folder, name), 'utf8');
        return analyse(text).mentions.map(
          ({ source }) => `${folder}/${name}: ${text.slice(source.start, source.end)}`,
        );
      });
    expect(inSource.length).toBeGreaterThan(100);
    expect(inProgram).toEqual(inSource);
  });

  it('leaves nothing of the machine in what ships', () => {
    for (const name of readdirSync('dist').filter((each) => /\.(?:c?js|txt)$/.test(each))) {
      const text = readFileSync(join('dist', name), 'utf8');
      expect([name, text.includes(process.cwd())]).toEqual([name, false]);
      expect([name, /\/home\/|\/root\/|[A-Z]:\\Users/.exec(text)?.[0]]).toEqual([name, undefined]);
    }
  });
});

interface Package {
  readonly version?: string;
  readonly resolved?: string;
  readonly integrity?: string;
  readonly hasInstallScript?: boolean;
  readonly optional?: boolean;
  readonly link?: boolean;
}

describe('the lock file', () => {
  const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8')) as {
    packages: Record<string, Package>;
  };
  const installed = Object.entries(packages).filter(([path, one]) => path !== '' && !one.link);

  it('pins each package by version and content', () => {
    expect(installed.length).toBeGreaterThan(100);
    for (const [path, { version, integrity }] of installed)
      expect([path, version !== undefined, integrity?.startsWith('sha')]).toEqual([path, true, true]);
  });

  it('lists what package.json asks for, and asks nobody to install anything with it', () => {
    const [root] = [packages[''] as { devDependencies: object; dependencies?: object }];
    expect(root!.devDependencies).toEqual(manifest.devDependencies);
    expect(root!.dependencies).toBeUndefined();
    expect(manifest).not.toHaveProperty('peerDependencies');
    expect(manifest).not.toHaveProperty('optionalDependencies');
  });

  it('names the few packages with scripts of their own, all of tools', () => {
    const scripted = installed
      .filter(([, one]) => one.hasInstallScript)
      .map(([path]) => path.replace(/^.*node_modules\//, ''));
    expect([...new Set(scripted)].sort()).toEqual(['@vscode/vsce-sign', 'esbuild', 'keytar']);
  });
});

it('the licences that ship name every package that is bundled', () => {
  const listed = readFileSync('dist/licences.txt', 'utf8');
  for (const name of [
    'commander',
    'ignore',
    'jsonc-parser',
    'micromark',
    'picomatch',
    'vscode-languageserver',
    'vscode-languageclient',
    'vscode-jsonrpc',
  ])
    expect([name, listed.includes(name)]).toEqual([name, true]);
});
