/** Writes the types of the library beside its bundles. Its entries name only types of their own. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

const ENTRIES = ['index', 'remark'];

function compiler(): string {
  const manifest = createRequire(import.meta.url).resolve('typescript/package.json');
  const { bin } = JSON.parse(readFileSync(manifest, 'utf8')) as { bin: { tsc: string } };
  return join(dirname(manifest), bin.tsc);
}

/** Throws when the compiler writes nothing. */
export function writeTypes(root: string, out: string): void {
  const folder = mkdtempSync(join(tmpdir(), 'types-'));
  const config = join(folder, 'tsconfig.json');
  const options = {
    extends: join(root, 'tsconfig.json'),
    compilerOptions: {
      noEmit: false,
      declaration: true,
      emitDeclarationOnly: true,
      outDir: join(folder, 'out'),
      rootDir: root,
      typeRoots: [join(root, 'node_modules/@types')],
    },
    include: [],
    files: ENTRIES.map((name) => join(root, `server/src/entry/${name}.ts`)),
  };
  try {
    writeFileSync(config, JSON.stringify(options));
    // Mistakes in types are the business of the type check; what can be written is written.
    spawnSync(process.execPath, [compiler(), '-p', config]);
    for (const name of ENTRIES) {
      const text = readFileSync(join(folder, `out/server/src/entry/${name}.d.ts`), 'utf8');
      writeFileSync(join(out, `${name}.d.ts`), text.replaceAll("'./index.ts'", "'./index.js'"));
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
