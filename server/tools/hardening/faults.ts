/** Every fault that could be put into a file, listed by the tool that puts them in. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import type { Fault, Place } from './draw.ts';

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
  return mutants
    .map(({ location, mutatorName, replacement }) => ({
      file,
      kind: mutatorName,
      start: { line: location.start.line + 1, column: location.start.column },
      end: { line: location.end.line + 1, column: location.end.column },
      replacement,
    }))
    .filter(({ start, end }) => called.has(spot(start, end)));
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
