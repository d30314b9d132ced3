/** Every fault that could be put into a file, listed by the tool that puts them in. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import { type Fault, faultKey, type Place } from './draw.ts';

const quiet = (): void => {};
const LOG = {
  isTraceEnabled: () => false, isDebugEnabled: () => false, isInfoEnabled: () => false, isWarnEnabled: () => false,
  isErrorEnabled: () => false, isFatalEnabled: () => false, trace: quiet, debug: quiet, info: quiet, warn: quiet,
  error: quiet, fatal: quiet,
}; // biome-ignore format: a table

/** Listed and not put in, which takes a tenth of the time. */
const KINDS = [
  'ArithmeticOperator', 'ArrayDeclaration', 'ArrowFunction', 'AssignmentOperator', 'BlockStatement', 'BooleanLiteral',
  'ConditionalExpression', 'EqualityOperator', 'LogicalOperator', 'MethodExpression', 'ObjectLiteral', 'OptionalChaining',
  'Regex', 'StringLiteral', 'UnaryOperator', 'UpdateOperator',
]; // biome-ignore format: a table

interface Visited {
  readonly node: { readonly loc?: { readonly start: Place; readonly end: Place } | null };
  getFunctionParent(): unknown;
}

const spot = (start: Place, end: Place): string => `${start.line}:${start.column}-${end.line}:${end.column}`;

interface Mutant {
  readonly fileName: string;
  readonly mutatorName: string;
  readonly replacement: string;
  readonly location: { readonly start: Place; readonly end: Place };
}

const toFault = ({ fileName, location: { start, end }, mutatorName, replacement }: Mutant): Fault => ({
  file: fileName,
  kind: mutatorName,
  start: { line: start.line + 1, column: start.column },
  end: { line: end.line + 1, column: end.column },
  replacement,
});

export interface Put {
  /** Source with the faults in it, each behind a switch, by file. */
  readonly files: ReadonlyMap<string, string>;
  /** The switch of each fault. */
  readonly ids: ReadonlyMap<string, string>;
}

/** Puts faults into their files, and those beside them that stand in the same place. */
export async function putIn(faults: readonly Fault[]): Promise<Put> {
  const names = [...new Set(faults.map(({ file }) => file))];
  const at = ({ line, column }: Place): Place => ({ line: line - 1, column });
  const files = names.map((name) => ({
    name,
    content: readFileSync(name, 'utf8'),
    mutate: faults
      .filter(({ file }) => file === name)
      .map(({ start, end }) => ({ start: at(start), end: at(end) })),
  }));
  const options = { plugins: null, excludedMutations: [], ignorers: [], noHeader: false };
  const put = await new Instrumenter(LOG).instrument(files, options);
  return {
    files: new Map(put.files.map(({ name, content }) => [name, content])),
    ids: new Map(put.mutants.map((mutant) => [faultKey(toFault(mutant)), mutant.id])),
  };
}

/** Faults in what a file does when it is called: a value made at loading would need every test anew. */
export async function faultsIn(file: string, content = readFileSync(file, 'utf8')): Promise<Fault[]> {
  const called = new Set<string>();
  const watch = {
    shouldIgnore(path: unknown): undefined {
      const { node } = path as Visited;
      if (node.loc && (path as Visited).getFunctionParent()) called.add(spot(node.loc.start, node.loc.end));
    },
  };
  const options = { plugins: null, excludedMutations: KINDS, ignorers: [watch], noHeader: true };
  const { mutants } = await new Instrumenter(LOG).instrument(
    [{ name: file, content, mutate: true }],
    options,
  );
  return mutants.map(toFault).filter(({ start, end }) => called.has(spot(start, end)));
}

/** The same of all files below a folder, in order of their names. */
export async function faultsBelow(folder: string): Promise<Fault[]> {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name))
    .sort();
  const faults: Fault[] = [];
  for (const file of files) faults.push(...(await faultsIn(file)));
  return faults;
}
