/** What the editor shows for a block of a fixture, as text. */
import type {
  CodeAction,
  CompletionItem,
  Diagnostic,
  DocumentHighlight,
  DocumentSymbol,
  Hover,
  InlayHint,
  Location,
  Position,
  SelectionRange,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Client } from '../lsp/client.ts';

export interface Open {
  readonly client: Client;
  readonly uri: string;
  readonly text: string;
  readonly position: Position;
}

const documentOf = ({ uri, text }: Open): TextDocument => TextDocument.create(uri, 'markdown', 1, text);
const at = ({ uri, position }: Open) => ({ textDocument: { uri }, position });
const lines = (all: readonly string[]): string => all.map((line) => `${line}\n`).join('');

type Answer = (open: Open, argument: string) => Promise<string>;

const ANSWERS: Readonly<Record<string, Answer>> = {
  findings: async (open) => {
    const items = await findings(open);
    return lines(
      items.map(
        (each) => `${textAt(open, each.range)}: ${String(each.message).replaceAll('\n', ' ')} [${each.code}]`,
      ),
    );
  },
  hover: async (open) => {
    const hover = await open.client.request<Hover | null>('textDocument/hover', at(open));
    const value = hover === null ? 'nothing' : (hover.contents as { value: string }).value;
    // The picture is tested by itself; here its words are enough.
    return `${value.replace(/\(data:image\/svg\+xml;base64,[A-Za-z0-9+/=]+\)/g, '(picture)').trim()}\n`;
  },
  fixes: async (open) =>
    lines((await actions(open)).map((each) => `${each.title}${each.isPreferred ? ' (preferred)' : ''}`)),
  fix: async (open, title) => {
    const action = (await actions(open)).find((each) => each.title === title);
    return action === undefined ? `no such fix: ${title}\n` : applied(open, action.edit);
  },
  'fix all': async (open) => {
    const [action] = await actions(open, ['source.fixAll']);
    return action === undefined ? 'nothing\n' : applied(open, action.edit);
  },
  hints: async (open) => {
    const hints = await open.client.request<InlayHint[]>('textDocument/inlayHint', {
      textDocument: { uri: open.uri },
      range: whole(open),
    });
    const edits = hints.map((hint) => ({
      range: { start: hint.position, end: hint.position },
      newText: ` ⟨${hint.label}⟩`,
    }));
    return TextDocument.applyEdits(documentOf(open), edits);
  },
  completion: async (open) => {
    const items = await open.client.request<CompletionItem[]>('textDocument/completion', at(open));
    return items.length === 0 ? 'nothing\n' : lines(items.map((item) => `${item.label} — ${item.detail}`));
  },
  complete: async (open, label) => {
    const items = await open.client.request<CompletionItem[]>('textDocument/completion', at(open));
    const edit = items.find((item) => item.label === label)?.textEdit as TextEdit | undefined;
    return edit === undefined
      ? `no such completion: ${label}\n`
      : TextDocument.applyEdits(documentOf(open), [edit]);
  },
  outline: async (open) => {
    const symbols = await open.client.request<DocumentSymbol[]>('textDocument/documentSymbol', {
      textDocument: { uri: open.uri },
    });
    return lines(
      symbols.flatMap((each) => [named(each), ...(each.children ?? []).map((child) => `  ${named(child)}`)]),
    );
  },
  highlights: async (open) => {
    const all = await open.client.request<DocumentHighlight[]>('textDocument/documentHighlight', at(open));
    return around(open, all);
  },
  references: async (open) => {
    const all = await open.client.request<Location[]>('textDocument/references', {
      ...at(open),
      context: { includeDeclaration: true },
    });
    return around(open, all);
  },
  rename: async (open, newName) => {
    try {
      await open.client.request('textDocument/prepareRename', at(open));
      return applied(
        open,
        await open.client.request<WorkspaceEdit>('textDocument/rename', { ...at(open), newName }),
      );
    } catch (error) {
      return `refused: ${(error as Error).message}\n`;
    }
  },
  selection: async (open) => {
    const [first] = await open.client.request<SelectionRange[]>('textDocument/selectionRange', {
      textDocument: { uri: open.uri },
      positions: [open.position],
    });
    const grown: string[] = [];
    for (let each = first?.parent; each !== undefined; each = each.parent)
      grown.push(textAt(open, each.range).replaceAll('\n', ' '));
    return lines(grown);
  },
};

export async function answer(open: Open, asks: string): Promise<string> {
  const [name = '', ...argument] = asks.split(': ');
  const run = ANSWERS[name];
  if (run === undefined) throw new Error(`a fixture asks for something unknown: ${asks}`);
  return run(open, argument.join(': '));
}

const named = ({ name, detail }: DocumentSymbol): string => [name, detail].filter(Boolean).join(' — ');

async function findings({ client, uri }: Open): Promise<Diagnostic[]> {
  const report = await client.request<{ items: Diagnostic[] }>('textDocument/diagnostic', {
    textDocument: { uri },
  });
  return report.items;
}

async function actions(open: Open, only?: string[]): Promise<CodeAction[]> {
  const range = { start: open.position, end: open.position };
  const context = { diagnostics: [], ...(only === undefined ? {} : { only }) };
  return open.client.request('textDocument/codeAction', { textDocument: { uri: open.uri }, range, context });
}

const whole = (open: Open) => {
  const document = documentOf(open);
  return { start: document.positionAt(0), end: document.positionAt(open.text.length) };
};

const textAt = (open: Open, range: { start: Position; end: Position }): string =>
  documentOf(open).getText(range);

/** The note with «» around every place. */
function around(open: Open, places: readonly { range: { start: Position; end: Position } }[]): string {
  const edits = places.map(({ range }) => ({ range, newText: `«${textAt(open, range)}»` }));
  return TextDocument.applyEdits(documentOf(open), edits);
}

function applied(open: Open, edit: WorkspaceEdit | undefined): string {
  const edits =
    edit?.documentChanges?.flatMap((change) => ('edits' in change ? (change.edits as TextEdit[]) : [])) ?? [];
  return TextDocument.applyEdits(documentOf(open), edits);
}
