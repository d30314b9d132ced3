/** The house's own source as data: which files there are, what each imports, which globals it touches. */
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseSync } from 'vite';

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

export const read = (path: string): string => readFileSync(join(ROOT, path), 'utf8');

/** TypeScript files under a folder of the repository, as paths with forward slashes, in order. */
export function sourceFiles(folder: string): string[] {
  const from = join(ROOT, folder);
  if (!existsSync(from)) return [];
  return readdirSync(from, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

/** Every file that is, or would be, under version control; empty outside a working copy. */
export function trackedFiles(): string[] {
  if (!existsSync(join(ROOT, '.git'))) return [];
  const listed = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
    cwd: ROOT,
  });
  return listed
    .toString()
    .split('\0')
    .filter((path) => path !== '' && existsSync(join(ROOT, path)));
}

export interface Import {
  /** As written. */
  readonly specifier: string;
  /** Path in the repository for a relative specifier. */
  readonly path?: string;
  readonly typeOnly: boolean;
}

export interface Source {
  readonly path: string;
  readonly lines: number;
  /** Text of the comment that opens the file, if one does. */
  readonly head?: string;
  readonly imports: readonly Import[];
  /** Names used but not declared in the file, with the member where one is taken: `console.log`, `Date.now`. */
  readonly globals: ReadonlySet<string>;
  /** Functions with the number of lines each takes. */
  readonly functions: readonly { readonly line: number; readonly lines: number }[];
  /** Literal text, that between the slots of templates too. */
  readonly strings: readonly string[];
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

function children(node: Node): Node[] {
  return Object.values(node)
    .flatMap((value) => (Array.isArray(value) ? value : [value]))
    .filter(isNode);
}

function* walk(node: Node): Generator<Node> {
  yield node;
  for (const child of children(node)) yield* walk(child);
}

/** The specifier a node imports or re-exports from, in any of the forms TypeScript has. */
function specifierOf(node: Node): string | undefined {
  const holder = node.type === 'TSImportType' ? (node.argument ?? node.source) : node.source;
  const literal = isNode(holder) && isNode(holder.literal) ? holder.literal : holder;
  return isNode(literal) && typeof literal.value === 'string' ? literal.value : undefined;
}

/** `import type`, `export type`, `import('…').T`, or named imports each marked `type`. */
function isTypeOnly(node: Node): boolean {
  if (node.type === 'TSImportType' || node.importKind === 'type' || node.exportKind === 'type') return true;
  const parts = Array.isArray(node.specifiers) ? (node.specifiers as Node[]) : [];
  return parts.length > 0 && parts.every((part) => part.importKind === 'type' || part.exportKind === 'type');
}

const IMPORTING = new Set([
  'ImportDeclaration',
  'ExportNamedDeclaration',
  'ExportAllDeclaration',
  'ImportExpression',
  'TSImportType',
]);

function importOf(node: Node, path: string): Import | undefined {
  const specifier = IMPORTING.has(node.type) ? specifierOf(node) : undefined;
  if (specifier === undefined) return undefined;
  const typeOnly = isTypeOnly(node);
  if (!specifier.startsWith('.')) return { specifier, typeOnly };
  return { specifier, typeOnly, path: posix.join(posix.dirname(path), specifier) };
}

const nameOf = (value: unknown): string | undefined =>
  isNode(value) && value.type === 'Identifier' ? (value.name as string) : undefined;

/** Parts of a node that bind names rather than use them. */
function* bound(node: Node): Generator<unknown> {
  if (node.type === 'VariableDeclarator') yield node.id;
  if (/Function|Method/.test(node.type) && Array.isArray(node.params)) yield* node.params;
  if (/Declaration$|Specifier$/.test(node.type)) yield node.type.endsWith('Specifier') ? node.local : node.id;
}

function declaredNames(nodes: readonly Node[]): Set<string> {
  const names = new Set<string>();
  for (const node of nodes)
    for (const part of bound(node))
      if (isNode(part))
        for (const inner of walk(part)) if (inner.type === 'Identifier') names.add(inner.name as string);
  return names;
}

/** A name read from outside: `name.member`, `name(…)`, `new name(…)`. */
function usedGlobal(node: Node): string | undefined {
  if (node.type === 'MemberExpression') {
    const member = nameOf(node.property);
    const object = nameOf(node.object);
    return object === undefined ? undefined : `${object}.${member ?? '?'}`;
  }
  if (node.type === 'CallExpression') return nameOf(node.callee);
  if (node.type !== 'NewExpression') return undefined;
  const made = nameOf(node.callee);
  const none = Array.isArray(node.arguments) && node.arguments.length === 0;
  return made === undefined ? undefined : `new ${made}${none ? '()' : ''}`;
}

const bare = (used: string): string => used.replace(/^new /, '').replace(/\(\)$/, '').split('.')[0]!;

const countLines = (text: string): number => text.split('\n').length;

function functionsOf(nodes: readonly Node[], text: string): { line: number; lines: number }[] {
  return nodes
    .filter((node) => /^(?:FunctionDeclaration|FunctionExpression|ArrowFunctionExpression)$/.test(node.type))
    .map(({ start, end }) => ({
      line: countLines(text.slice(0, start)),
      lines: countLines(text.slice(start, end)),
    }));
}

function stringOf(node: Node): string | undefined {
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node.type !== 'TemplateElement') return undefined;
  return (node.value as { readonly raw: string }).raw;
}

export function parseSource(path: string, text = read(path)): Source {
  const { program, comments, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]!.message}`);
  const nodes = [...walk(program as unknown as Node)];
  const declared = declaredNames(nodes);
  const first = comments[0];
  const opens = first !== undefined && /^\s*(?:#!.*\n)?\s*$/.test(text.slice(0, first.start));
  return {
    path,
    lines: countLines(text),
    ...(opens ? { head: first.value } : {}),
    imports: nodes.map((node) => importOf(node, path)).filter((each) => each !== undefined),
    globals: new Set(
      nodes.map(usedGlobal).filter((used) => used !== undefined && !declared.has(bare(used))) as string[],
    ),
    functions: functionsOf(nodes, text),
    strings: nodes.map(stringOf).filter((each) => each !== undefined),
  };
}
