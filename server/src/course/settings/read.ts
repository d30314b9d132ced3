/** Reads the text of a settings file. Everything wrong in it is named with its place and what is allowed. */
import { getNodeValue, type Node, type ParseError, parseTree, printParseErrorCode } from 'jsonc-parser';
import type { Span } from '../../notes/model.ts';
import { KEYS, type Key, type Shape } from './keys.ts';
import type { SettingsFile } from './model.ts';
import { nearest } from './near.ts';
import { refusal } from './patterns.ts';

export interface Problem {
  readonly span: Span;
  readonly message: string;
}

export interface ReadSettings {
  /** Only when there is no problem. */
  readonly file?: SettingsFile;
  readonly problems: readonly Problem[];
}

const spanOf = ({ offset, length }: Node): Span => ({ start: offset, end: offset + length });

const EMPTY: Problem = { span: { start: 0, end: 0 }, message: 'the file is empty; write at least {}' };

/** Never throws. */
export function readSettings(text: string): ReadSettings {
  if (text.trim() === '') return { problems: [EMPTY] };
  const errors: ParseError[] = [];
  const body = text.replace(/^\ufeff/, ' ');
  const root = parseTree(body, errors, { disallowComments: true });
  const problems = errors.map(syntaxProblem);
  if (problems.length === 0 && root) checkGroup(root, KEYS, 'the settings', problems);
  return problems.length > 0 || !root ? { problems } : { file: getNodeValue(root) as SettingsFile, problems };
}

const SYNTAX: Readonly<Record<string, string>> = {
  InvalidSymbol: 'this is no JSON value',
  InvalidNumberFormat: 'this is no JSON number',
  PropertyNameExpected: 'a key in double quotes is expected here',
  ValueExpected: 'a value is expected here',
  ColonExpected: 'a colon is expected here',
  CommaExpected: 'a comma is expected here',
  CloseBraceExpected: 'a closing brace } is missing',
  CloseBracketExpected: 'a closing bracket ] is missing',
  EndOfFileExpected: 'nothing may follow here',
  InvalidCommentToken: 'JSON has no comments',
  UnexpectedEndOfString: 'the closing quote is missing',
};

function syntaxProblem({ error, offset, length }: ParseError): Problem {
  const name = printParseErrorCode(error);
  return { span: { start: offset, end: offset + length }, message: SYNTAX[name] ?? `not JSON (${name})` };
}

const listed = (allowed: readonly string[]): string => `allowed: ${allowed.join(', ')}`;

function unknown(what: string, word: string, allowed: readonly string[]): string {
  const guess = nearest(word, allowed);
  return `no ${what} "${word}"${guess ? `; did you mean "${guess}"?` : ''} (${listed(allowed)})`;
}

/** What an object, a property or a list holds; the parser gives it to each of them. */
const childrenOf = (node: Node): readonly Node[] => node.children!;

/** Key and value nodes of an object; a problem when it is none. */
function entries(node: Node, where: string, problems: Problem[]): [Node, Node][] {
  if (node.type !== 'object') {
    problems.push({ span: spanOf(node), message: `${where} must be an object { … }` });
    return [];
  }
  const seen = new Set<string>();
  return childrenOf(node).map((property) => {
    // A key without a value is a syntax error, and then nothing is looked at.
    const [key, value] = childrenOf(property) as [Node, Node];
    if (seen.has(key.value)) problems.push({ span: spanOf(key), message: `"${key.value}" is set twice` });
    seen.add(key.value);
    return [key, value];
  });
}

function checkGroup(node: Node, keys: readonly Key[], where: string, problems: Problem[]): void {
  const names = keys.map(({ name }) => name);
  for (const [key, value] of entries(node, where, problems)) {
    const known = keys.find(({ name }) => name === key.value);
    if (known) checkShape(value, known.shape, `"${known.name}"`, problems);
    else if (keys !== KEYS || key.value !== '$schema')
      problems.push({ span: spanOf(key), message: unknown('key', key.value, names) });
  }
}

function checkMap(node: Node, shape: Shape & { is: 'map' }, where: string, problems: Problem[]): void {
  for (const [key, value] of entries(node, where, problems)) {
    if (shape.keys && !shape.keys.includes(key.value))
      problems.push({ span: spanOf(key), message: unknown(shape.what, key.value, shape.keys) });
    checkShape(value, shape.of, `"${key.value}"`, problems);
  }
}

function checkPatterns(node: Node, where: string, problems: Problem[]): void {
  if (node.type !== 'array') {
    problems.push({ span: spanOf(node), message: `${where} must be a list of texts [ "…" ]` });
    return;
  }
  for (const child of childrenOf(node)) {
    const problem = patternProblem(child);
    if (problem !== undefined) problems.push({ span: spanOf(child), message: `${where}: ${problem}` });
  }
}

function patternProblem({ type, value }: Node): string | undefined {
  if (type !== 'string' || value === '') return 'each entry must be a text in double quotes';
  const why = refusal(value);
  return why && `the pattern ${why}`;
}

function checkChoices(node: Node, allowed: readonly string[], where: string, problems: Problem[]): void {
  const chosen = node.type === 'array' ? childrenOf(node) : [];
  if (chosen.length === 0)
    problems.push({
      span: spanOf(node),
      message: `${where} must be a list of at least one (${listed(allowed)})`,
    });
  for (const child of chosen) checkChoice(child, allowed, where, problems);
}

function checkChoice(node: Node, allowed: readonly string[], where: string, problems: Problem[]): void {
  if (node.type === 'string' && allowed.includes(node.value)) return;
  const written = node.type === 'string' ? node.value : JSON.stringify(getNodeValue(node));
  problems.push({ span: spanOf(node), message: `${where}: ${unknown('value', written, allowed)}` });
}

type CheckOf<T extends Shape['is']> = (
  node: Node,
  shape: Shape & { is: T },
  where: string,
  problems: Problem[],
) => void;

const SHAPES: { readonly [T in Shape['is']]: CheckOf<T> } = {
  flag: (node, _shape, where, problems) => {
    if (node.type !== 'boolean')
      problems.push({ span: spanOf(node), message: `${where} must be true or false` });
  },
  patterns: (node, _shape, where, problems) => checkPatterns(node, where, problems),
  choice: (node, shape, where, problems) => checkChoice(node, shape.of, where, problems),
  choices: (node, shape, where, problems) => checkChoices(node, shape.of, where, problems),
  map: checkMap,
  group: (node, shape, where, problems) => checkGroup(node, shape.keys, where, problems),
};

function checkShape<T extends Shape['is']>(
  node: Node,
  shape: Shape & { is: T },
  where: string,
  problems: Problem[],
): void {
  const check = SHAPES[shape.is] as CheckOf<T>;
  check(node, shape, where, problems);
}
