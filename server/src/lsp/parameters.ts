/** Which parameters a request must bring. Everything else in them is looked at where it is used. */

type Check = (params: Readonly<Record<string, unknown>>) => boolean;

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const isPosition = (value: unknown): boolean =>
  isObject(value) && Number.isInteger(value.line) && Number.isInteger(value.character);

const note: Check = ({ textDocument }) => isObject(textDocument) && typeof textDocument.uri === 'string';
const uri: Check = (params) => typeof params.uri === 'string';
const position: Check = (params) => isPosition(params.position);
const positions: Check = (params) => Array.isArray(params.positions) && params.positions.every(isPosition);
const range: Check = (params) =>
  isObject(params.range) && isPosition(params.range.start) && isPosition(params.range.end);
const name: Check = (params) => typeof params.newName === 'string';

/** By the name a handler has in the log. */
const NEEDS: Readonly<Record<string, readonly Check[]>> = {
  diagnostic: [note],
  documentSymbol: [note],
  semanticTokens: [note],
  semanticTokensDelta: [note],
  semanticTokensRange: [note, range],
  hover: [note, position],
  completion: [note, position],
  references: [note, position],
  documentHighlight: [note, position],
  prepareRename: [note, position],
  rename: [note, position, name],
  selectionRange: [note, positions],
  codeAction: [note, range],
  inlayHint: [note, range],
  summary: [uri],
  tips: [uri],
};

/** False when the handler `of` cannot do anything with `params`. */
export function wellFormed(of: string, params: unknown): boolean {
  const needs = NEEDS[of];
  return needs === undefined || (isObject(params) && needs.every((check) => check(params)));
}
