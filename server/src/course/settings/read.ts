/** Reads the text of a settings file. Everything wrong in it is named with its place and what is allowed. */
import { getNodeValue, type Node, type ParseError, parseTree, printParseErrorCode } from 'jsonc-parser';
import type { Span } from '../../notes/model.ts';
import { type Locale, type Part, type Phrase, phrase, quote, tell } from '../../texts/index.ts';
import { NAMED, SYNTAX, WRONG } from '../texts/settings.ts';
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

/** A problem not yet in any language. */
interface Found {
  readonly span: Span;
  readonly message: Part;
}

const EMPTY: Found = { span: { start: 0, end: 0 }, message: phrase(WRONG.empty, { braces: quote('{}') }) };

/** Never throws. `locale`: the language of what is wrong. */
export function readSettings(text: string, locale?: Locale): ReadSettings {
  const { root, found } = parsed(text);
  const problems = found.map(({ span, message }) => ({ span, message: tell(message, locale) }));
  return problems.length > 0 || !root ? { problems } : { file: getNodeValue(root) as SettingsFile, problems };
}

function parsed(text: string): { root?: Node; found: readonly Found[] } {
  if (text.trim() === '') return { found: [EMPTY] };
  const errors: ParseError[] = [];
  const root = parseTree(text.replace(/^\ufeff/, ' '), errors, { disallowComments: true });
  const found = errors.map(syntaxProblem);
  if (root === undefined) return { found };
  if (found.length === 0) checkGroup(root, KEYS, phrase(WRONG.settings), found);
  return { root, found };
}

function syntaxProblem({ error, offset, length }: ParseError): Found {
  const name = printParseErrorCode(error);
  const known = Object.hasOwn(SYNTAX, name) ? SYNTAX[name as keyof typeof SYNTAX] : undefined;
  const message = known ? phrase(known) : phrase(WRONG.notJson, { name: quote(name) });
  return { span: { start: offset, end: offset + length }, message };
}

const listed = (allowed: readonly string[]): Phrase =>
  phrase(WRONG.allowed, { allowed: quote(allowed.join(', ')) });

function unknown(what: Part, word: string, allowed: readonly string[]): Phrase {
  const guess = nearest(word, allowed);
  return phrase(WRONG.unknown, {
    what,
    word: quote(word),
    guess: guess ? phrase(WRONG.guess, { guess: quote(guess) }) : '',
    allowed: listed(allowed),
  });
}

/** What an object, a property or a list holds; the parser gives it to each of them. */
const childrenOf = (node: Node): readonly Node[] => node.children!;

/** Key and value nodes of an object; a problem when it is none. */
function entries(node: Node, where: Part, problems: Found[]): [Node, Node][] {
  if (node.type !== 'object') {
    problems.push({ span: spanOf(node), message: phrase(WRONG.object, { where, object: quote('{ … }') }) });
    return [];
  }
  const seen = new Set<string>();
  return childrenOf(node).map((property) => {
    // A key without a value is a syntax error, and then nothing is looked at.
    const [key, value] = childrenOf(property) as [Node, Node];
    if (seen.has(key.value))
      problems.push({ span: spanOf(key), message: phrase(WRONG.twice, { key: quote(key.value) }) });
    seen.add(key.value);
    return [key, value];
  });
}

function checkGroup(node: Node, keys: readonly Key[], where: Part, problems: Found[]): void {
  const names = keys.map(({ name }) => name);
  for (const [key, value] of entries(node, where, problems)) {
    const known = keys.find(({ name }) => name === key.value);
    if (known) checkShape(value, known.shape, quote(`"${known.name}"`), problems);
    else if (keys !== KEYS || key.value !== '$schema')
      problems.push({ span: spanOf(key), message: unknown(phrase(NAMED.key), key.value, names) });
  }
}

function checkMap(node: Node, shape: Shape & { is: 'map' }, where: Part, problems: Found[]): void {
  for (const [key, value] of entries(node, where, problems)) {
    if (shape.keys && !shape.keys.includes(key.value))
      problems.push({
        span: spanOf(key),
        message: unknown(phrase(NAMED[shape.what]), key.value, shape.keys),
      });
    checkShape(value, shape.of, quote(`"${key.value}"`), problems);
  }
}

function checkPatterns(node: Node, where: Part, problems: Found[]): void {
  if (node.type !== 'array') {
    problems.push({ span: spanOf(node), message: phrase(WRONG.list, { where }) });
    return;
  }
  for (const child of childrenOf(node)) {
    const problem = patternProblem(child);
    if (problem !== undefined)
      problems.push({ span: spanOf(child), message: phrase(WRONG.at, { where, problem }) });
  }
}

const patternProblem = ({ type, value }: Node): Phrase | undefined =>
  type !== 'string' || value === '' ? phrase(WRONG.entry) : refusal(value);

function checkChoices(node: Node, allowed: readonly string[], where: Part, problems: Found[]): void {
  const chosen = node.type === 'array' ? childrenOf(node) : [];
  if (chosen.length === 0)
    problems.push({
      span: spanOf(node),
      message: phrase(WRONG.someOf, { where, allowed: listed(allowed) }),
    });
  for (const child of chosen) checkChoice(child, allowed, where, problems);
}

function checkChoice(node: Node, allowed: readonly string[], where: Part, problems: Found[]): void {
  if (node.type === 'string' && allowed.includes(node.value)) return;
  const written = node.type === 'string' ? node.value : JSON.stringify(getNodeValue(node));
  const problem = unknown(phrase(NAMED.value), written, allowed);
  problems.push({ span: spanOf(node), message: phrase(WRONG.at, { where, problem }) });
}

type CheckOf<T extends Shape['is']> = (
  node: Node,
  shape: Shape & { is: T },
  where: Part,
  problems: Found[],
) => void;

const SHAPES: { readonly [T in Shape['is']]: CheckOf<T> } = {
  flag: (node, _shape, where, problems) => {
    if (node.type !== 'boolean')
      problems.push({ span: spanOf(node), message: phrase(WRONG.flag, { where }) });
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
  where: Part,
  problems: Found[],
): void {
  const check = SHAPES[shape.is] as CheckOf<T>;
  check(node, shape, where, problems);
}
