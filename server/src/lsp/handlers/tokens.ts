/** Colours of sizes: for a whole note, for what is in sight of it, and for what changed since the last answer. */
import {
  type Range,
  type SemanticTokens,
  SemanticTokensBuilder,
  type SemanticTokensDelta,
  type SemanticTokensDeltaParams,
  type SemanticTokensEdit,
  type SemanticTokensLegend,
  type SemanticTokensParams,
  type SemanticTokensRangeParams,
} from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { type Token, type TokenKind, tokensOf } from '../../editor/tokens.ts';
import { check, notNow } from '../cancel.ts';
import type { Guard } from '../guard.ts';
import type { Session } from '../session.ts';

const KINDS: readonly TokenKind[] = ['size', 'unclearSize'];

export const LEGEND: SemanticTokensLegend = { tokenTypes: [...KINDS], tokenModifiers: ['contradicted'] };

type Asked = Parameters<typeof check>[0];

/** An answer kept so that the next one can name what changed. Its id is counted: two answers may fall in one millisecond. */
interface Told {
  readonly resultId: string;
  readonly data: number[];
}

let answers = 0;

export function offerTokens(session: Session, guard: Guard): void {
  const { semanticTokens } = session.connection.languages;
  const told = new Map<string, Told>();
  session.documents.onDidClose(({ document }) => told.delete(document.uri));

  /** All tokens of a note, and what the client was told before; undefined when nothing is coloured. */
  async function next(uri: string, asked: Asked): Promise<{ now: Told; before?: Told } | undefined> {
    const read = await tokensIn(session, uri, asked);
    if (read === undefined) return undefined;
    const before = told.get(uri);
    const now = { resultId: String(++answers), data: encode(read.document, read.tokens) };
    told.set(uri, now);
    return before === undefined ? { now } : { now, before };
  }

  semanticTokens.on(
    guard<SemanticTokensParams, SemanticTokens>(
      'semanticTokens',
      NONE,
      async ({ textDocument }, asked) => (await next(textDocument.uri, asked))?.now ?? NONE,
    ),
  );
  semanticTokens.onDelta(
    guard<SemanticTokensDeltaParams, SemanticTokens | SemanticTokensDelta>(
      'semanticTokensDelta',
      NONE,
      async ({ textDocument, previousResultId }, asked) => {
        const read = await next(textDocument.uri, asked);
        if (read?.before?.resultId !== previousResultId) return read?.now ?? NONE;
        return { resultId: read.now.resultId, edits: edits(read.before.data, read.now.data) };
      },
    ),
  );
  semanticTokens.onRange(
    guard<SemanticTokensRangeParams, SemanticTokens>(
      'semanticTokensRange',
      NONE,
      async ({ textDocument, range }, asked) => {
        const read = await tokensIn(session, textDocument.uri, asked);
        if (read === undefined) return NONE;
        return { data: encode(read.document, within(read.document, range, read.tokens)) };
      },
    ),
  );
}

const NONE: SemanticTokens = { data: [] };

async function tokensIn(
  session: Session,
  uri: string,
  asked: Asked,
): Promise<{ document: TextDocument; tokens: Token[] } | undefined> {
  if (session.isTyping(uri)) throw notNow();
  const read = await session.open(uri);
  check(asked);
  if (read === undefined || !read.settings.colouring) return undefined;
  return { document: read.document, tokens: tokensOf(read.analysis) };
}

function within(document: TextDocument, range: Range, tokens: readonly Token[]): Token[] {
  const [start, end] = [document.offsetAt(range.start), document.offsetAt(range.end)];
  return tokens.filter(({ span }) => span.start < end && span.end > start);
}

/** A token that runs over a line's end is left out: clients take them on one line only. */
function encode(document: TextDocument, tokens: readonly Token[]): number[] {
  const builder = new SemanticTokensBuilder();
  let last = -1;
  for (const { span, kind, contradicted } of tokens) {
    const [start, end] = [document.positionAt(span.start), document.positionAt(span.end)];
    if (start.line !== end.line || span.start < last) continue;
    const length = end.character - start.character;
    builder.push(start.line, start.character, length, KINDS.indexOf(kind), contradicted ? 1 : 0);
    last = span.end;
  }
  return builder.build().data;
}

/** The one stretch of numbers that differs; typing changes tokens in one place. */
function edits(before: readonly number[], now: readonly number[]): SemanticTokensEdit[] {
  const shorter = Math.min(before.length, now.length);
  let start = 0;
  while (start < shorter && before[start] === now[start]) start++;
  let same = 0;
  while (same < shorter - start && before.at(-1 - same) === now.at(-1 - same)) same++;
  const [deleteCount, data] = [before.length - same - start, now.slice(start, now.length - same)];
  return deleteCount === 0 && data.length === 0 ? [] : [{ start, deleteCount, data }];
}
