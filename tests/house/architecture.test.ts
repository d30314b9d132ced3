/**
 * The house has one way through it. These tests read the imports of every source file and hold the order of the
 * folders, the purity of everything an editor and a worker must be able to run, and a few habits of housekeeping.
 */
import { builtinModules } from 'node:module';
import { describe, expect, it } from 'vitest';
import { type Import, parseSource, read, type Source, sourceFiles, trackedFiles } from './source.ts';

/** Left may be imported by right, never the other way round. `lsp` and `cli` are neighbours and do not meet. */
const ORDER = [
  ['texts'],
  ['sizes'],
  ['notes'],
  ['mentions'],
  ['claims'],
  ['checks'],
  ['course'],
  ['editor'],
  ['lsp', 'cli'],
  ['entry'],
] as const;

/** Everything that runs in a browser's worker as it does in Node: values in, values out. */
const PURE = ['texts', 'sizes', 'notes', 'mentions', 'claims', 'checks', 'course', 'editor'];

/** The one step against the order, for types alone: what a check reports is plain data that verdicts carry. */
const PLAIN_DATA = 'server/src/checks/model.ts';

const rank = (folder: string): number =>
  ORDER.findIndex((step) => (step as readonly string[]).includes(folder));
const folderOf = (path: string): string => /^server\/src\/([^/]+)\//.exec(path)?.[1] ?? '';

const server = sourceFiles('server/src').map((path) => parseSource(path));
const notations = sourceFiles('grammars').map((path) => parseSource(path));
const client = sourceFiles('client/src').map((path) => parseSource(path));
const pure = server.filter((source) => PURE.includes(folderOf(source.path)));

const isBuiltin = (specifier: string): boolean =>
  specifier.startsWith('node:') || builtinModules.includes(specifier.split('/')[0]!);

function runsBackwards(source: Source, { path, typeOnly }: Import): boolean {
  const from = folderOf(source.path);
  const to = path === undefined ? '' : folderOf(path);
  if (to === '' || from === to) return false;
  if (typeOnly && from === 'claims' && path === PLAIN_DATA) return false;
  return rank(to) >= rank(from);
}

/** `file > import` for every import that a rule refuses. */
const refused = (sources: readonly Source[], rule: (source: Source, each: Import) => boolean): string[] =>
  sources.flatMap((source) =>
    source.imports
      .filter((each) => rule(source, each))
      .map((each) => `${source.path} > ${each.path ?? each.specifier}`),
  );

describe('the reader of imports', () => {
  const text = [
    '/** Head. */',
    "import type { A } from '../checks/run.ts';",
    "import { type B } from './b.ts';",
    "export * from 'node:fs';",
    "type T = import('./t.ts').T;",
    "const late = () => import('./late.ts');",
    'const document = { at: Date.now() };',
    'document.at; console.log(new Date());',
  ].join('\n');
  const source = parseSource('server/src/claims/made-up.ts', text);

  it('sees every form of import', () => {
    expect(source.imports.map((each) => each.path ?? each.specifier)).toEqual([
      'server/src/checks/run.ts',
      'server/src/claims/b.ts',
      'node:fs',
      'server/src/claims/t.ts',
      'server/src/claims/late.ts',
    ]);
    expect(source.imports.map((each) => each.typeOnly)).toEqual([true, true, false, true, false]);
  });

  it('sees globals, and leaves names of the file itself alone', () => {
    expect([...source.globals]).toEqual(['Date.now', 'console.log', 'new Date()']);
    expect(source.head?.trim()).toBe('* Head.');
  });

  it('refuses an import against the order', () => {
    expect(refused([source], runsBackwards)).toEqual([
      'server/src/claims/made-up.ts > server/src/checks/run.ts',
    ]);
  });
});

describe('the order of the folders', () => {
  it('holds every folder of the server', () => {
    const unknown = new Set(
      server.map((source) => folderOf(source.path)).filter((folder) => rank(folder) < 0),
    );
    expect([...unknown]).toEqual([]);
  });

  it('is never run backwards', () => {
    expect(refused(server, runsBackwards)).toEqual([]);
  });

  it('lets notations know sizes and models, and nothing behind the mentions', () => {
    const outside = (_: Source, { path, specifier }: Import) =>
      path === undefined
        ? true
        : !path.startsWith('grammars/') &&
          !/^server\/src\/(?:texts|sizes|notes|mentions)\//.test(path) &&
          specifier !== '';
    expect(refused(notations, outside)).toEqual([]);
  });

  it('lets the client share what is pure, and the protocol, but nothing of the server itself', () => {
    const inside = (_: Source, { path }: Import) =>
      path?.startsWith('server/') === true &&
      !PURE.includes(folderOf(path)) &&
      !/^server\/src\/lsp\/[^/]*protocol[^/]*\.ts$/.test(path);
    expect(refused(client, inside)).toEqual([]);
  });

  it('copies a scene only with what its place settles, which a spread would leave behind', () => {
    const spread = server.filter(
      ({ path }) =>
        path.startsWith('server/src/claims/') &&
        path !== 'server/src/claims/text/place.ts' &&
        /\.\.\.scene\s*[,}]|\.\.\.rest \} = scene\b/.test(read(path)),
    );
    expect(spread.map(({ path }) => path)).toEqual([]);
  });

  it('has no circle of files that need each other to run', () => {
    expect(circle(server)).toBeUndefined();
  });
});

describe('up to the editor nothing knows where it runs', () => {
  it('imports no editor, no protocol, no Node', () => {
    const host = (_: Source, { specifier }: Import) => isBuiltin(specifier) || specifier.startsWith('vscode');
    expect(refused([...pure, ...notations], host)).toEqual([]);
  });

  it('keeps the Markdown parser in `notes`', () => {
    const parser = (source: Source, { specifier }: Import) =>
      folderOf(source.path) !== 'notes' && /^(?:mdast|micromark|remark|unified|vfile)/.test(specifier);
    expect(refused(pure, parser)).toEqual([]);
  });

  it('touches no clock, chance, console, page or process', () => {
    const hostGlobal =
      /^(?:console|document|window|process|globalThis|navigator|fetch|setTimeout|setInterval|require)(?:\.|$)|^Date\.now$|^new Date\(\)$|^Math\.random$/;
    const found = pure.flatMap((source) =>
      [...source.globals].filter((name) => hostGlobal.test(name)).map((name) => `${source.path}: ${name}`),
    );
    expect(found).toEqual([]);
  });

  it('speaks the protocol only in `lsp`, and to the editor only in the client', () => {
    const speaks = (source: Source, { specifier }: Import) =>
      (specifier.startsWith('vscode-languageserver') && !['lsp', 'entry'].includes(folderOf(source.path))) ||
      specifier === 'vscode';
    expect(refused(server, speaks)).toEqual([]);
  });
});

describe('rooms and files', () => {
  const folders = ORDER.flat().filter((folder) => server.some((source) => folderOf(source.path) === folder));

  it('tells of every entry what it starts', () => {
    const entries = server.filter((source) => folderOf(source.path) === 'entry');
    expect(entries.filter((source) => (source.head?.length ?? 0) < 40).map((source) => source.path)).toEqual(
      [],
    );
  });

  it.each(folders.filter((folder) => folder !== 'entry'))(
    '%s says at its door what lives there',
    (folder) => {
      const door = server.find((source) => source.path === `server/src/${folder}/index.ts`);
      expect(door?.head?.length ?? 0, `server/src/${folder}/index.ts opens with a comment`).toBeGreaterThan(
        60,
      );
    },
  );

  it('keeps one idea a file and a function on one screen', () => {
    const isTable = (path: string) => /\/(?:tables|words|l10n)\/|sources\.ts$|materials\.ts$/.test(path);
    const long = [...server, ...notations, ...client]
      .filter((source) => source.lines > 450 && !isTable(source.path))
      .map((source) => `${source.path}: ${source.lines} lines`);
    const tall = [...server, ...notations, ...client].flatMap((source) =>
      source.functions
        .filter(({ lines }) => lines > 60)
        .map(({ line, lines }) => `${source.path}:${line}: ${lines} lines`),
    );
    expect([...long, ...tall]).toEqual([]);
  });

  const tracked = trackedFiles();

  it.skipIf(tracked.length === 0)('has the agreed rooms at the top and no others', () => {
    const rooms = new Set(tracked.filter((path) => path.includes('/')).map((path) => path.split('/')[0]!));
    expect([...rooms].filter((room) => !room.startsWith('.')).sort()).toEqual([
      'client',
      'grammars',
      'server',
      'tests',
    ]);
  });

  it.skipIf(tracked.length === 0)('names no folder of a machine and no host of a package registry', () => {
    const machine =
      /(?:^|[\s"'`(=])\/(?:home|root|Users|work|tmp\/[a-z_]+jobs)\/|"resolved":|registry\.npm[a-z]*\./m;
    const text =
      /\.(?:ts|js|mjs|cjs|json|jsonc|md|ya?ml|sh|lua|svg|html|css|vtt|txt|1)$|(?:^|\/)(?:run|Containerfile|\.[a-z]+)$/;
    const found = tracked.filter((path) => text.test(path) && path !== 'tests/house/architecture.test.ts');
    expect(found.filter((path) => machine.test(read(path)))).toEqual([]);
  });
});

/** First circle of value imports, as a chain of files; none is the normal case. */
function circle(sources: readonly Source[]): string[] | undefined {
  const next = new Map(
    sources.map((source) => [
      source.path,
      source.imports.filter((each) => !each.typeOnly && each.path !== undefined).map((each) => each.path!),
    ]),
  );
  const done = new Set<string>();
  const visit = (path: string, trail: readonly string[]): string[] | undefined => {
    if (trail.includes(path)) return [...trail.slice(trail.indexOf(path)), path];
    if (done.has(path)) return undefined;
    for (const to of next.get(path) ?? []) {
      const found = visit(to, [...trail, path]);
      if (found) return found;
    }
    done.add(path);
    return undefined;
  };
  for (const path of next.keys()) {
    const found = visit(path, []);
    if (found) return found;
  }
  return undefined;
}
