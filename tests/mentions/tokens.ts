/** Tokenises Markdown as an editor does: the Markdown grammar with the sizes injected. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createOnigScanner, createOnigString, loadWASM } from 'vscode-oniguruma';
import { type IGrammar, INITIAL, parseRawGrammar, Registry } from 'vscode-textmate';

const require = createRequire(import.meta.url);
const read = (path: string): string => readFileSync(path, 'utf8');
const SIZES = new URL('../../grammars/sizewright.tmLanguage.json', import.meta.url).pathname;
const MARKDOWN = require.resolve('tm-grammars/grammars/markdown.json');

const onigLib = loadWASM(
  readFileSync(require.resolve('vscode-oniguruma/release/onig.wasm')).buffer as ArrayBuffer,
).then(() => ({ createOnigScanner, createOnigString }));

/** The Markdown grammar, sizes injected. */
export async function markdownGrammar(): Promise<IGrammar> {
  const registry = new Registry({
    onigLib,
    loadGrammar: async (scope) => {
      if (scope === 'sizewright.injection') return parseRawGrammar(read(SIZES), 'sizes.json');
      return scope === 'text.html.markdown' ? parseRawGrammar(read(MARKDOWN), 'markdown.json') : null;
    },
    getInjections: (scope) => (scope === 'text.html.markdown' ? ['sizewright.injection'] : []),
  });
  const grammar = await registry.loadGrammar('text.html.markdown');
  if (!grammar) throw new Error('no Markdown grammar');
  return grammar;
}

/** What is coloured as a size in a text, line by line: the notation's id and the text. */
export function colouredSizes(grammar: IGrammar, text: string): { id: string; text: string }[] {
  let stack = INITIAL;
  return text.split('\n').flatMap((line) => {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, stack);
    stack = ruleStack;
    return tokens.flatMap(({ scopes, startIndex, endIndex }) => {
      const scope = scopes.find((one) => one.startsWith('constant.numeric.size.'));
      return scope ? [{ id: scope.split('.')[3]!, text: line.slice(startIndex, endIndex) }] : [];
    });
  });
}
