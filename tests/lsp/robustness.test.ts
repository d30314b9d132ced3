/** A client that does everything wrong gets an answer to everything, and the server goes on. */
import { afterEach, expect, test } from 'vitest';
import { type Client, startClient } from './client.ts';

const WRONG = 'A 16 G cannula is thinner than a 20 G cannula.\n';

let client: Client;
afterEach(() => client.close());

const pull = (uri: string) =>
  client.request<{ items: unknown[] }>('textDocument/diagnostic', { textDocument: { uri } });

const change = (uri: string, version: number | null, contentChanges: unknown[]) =>
  client.connection.sendNotification('textDocument/didChange', {
    textDocument: { uri, version },
    contentChanges,
  });

const alive = async (): Promise<void> => {
  const uri = client.open(WRONG, `alive-${Math.random()}.md`);
  expect((await pull(uri)).items).toHaveLength(1);
};

test('unknown requests are refused, unknown notifications ignored', async () => {
  client = await startClient();
  await expect(client.request('textDocument/nonsense', {})).rejects.toMatchObject({ code: -32601 });
  await client.connection.sendNotification('textDocument/nonsense', { any: 1 });
  await alive();
});

test('edits outside the text, backwards or of a note that is not open', async () => {
  client = await startClient();
  const uri = client.open(WRONG);
  const far = { line: 99, character: 99 };
  await change(uri, 2, [{ range: { start: far, end: { line: 120, character: 0 } }, text: 'More.\n' }]);
  await change(uri, 3, [
    { range: { start: { line: 0, character: 5 }, end: { line: 0, character: 2 } }, text: '' },
  ]);
  await change(uri, 2, [{ text: WRONG }]);
  await change('file:///course/unknown.md', 1, [{ text: 'x' }]);
  await pull(uri);
  await alive();
});

test('requests about notes that are not open', async () => {
  client = await startClient();
  const at = { textDocument: { uri: 'file:///course/none.md' }, position: { line: 0, character: 0 } };
  const range = { start: at.position, end: at.position };
  expect(await client.request('textDocument/hover', at)).toBeNull();
  expect(await client.request('textDocument/completion', at)).toEqual([]);
  expect(
    await client.request('textDocument/codeAction', { ...at, range, context: { diagnostics: [] } }),
  ).toEqual([]);
  expect(await client.request('textDocument/inlayHint', { ...at, range })).toEqual([]);
  expect(await client.request('textDocument/documentSymbol', at)).toEqual([]);
  expect(await client.request('textDocument/documentHighlight', at)).toEqual([]);
  expect(await client.request('textDocument/references', { ...at, context: {} })).toEqual([]);
  expect(await client.request('textDocument/selectionRange', { ...at, positions: [at.position] })).toEqual(
    [],
  );
  expect(await client.request('textDocument/semanticTokens/full', at)).toEqual({ data: [] });
  expect((await pull(at.textDocument.uri)).items).toEqual([]);
  expect(client.errors).toEqual([]);
});

test('positions outside the text', async () => {
  client = await startClient();
  const uri = client.open(WRONG);
  for (const [line, character] of [
    [-1, -1],
    [0, 9999],
    [9999, 0],
    [9999, 9999],
  ] as const) {
    const at = { textDocument: { uri }, position: { line, character } };
    await client.request('textDocument/hover', at);
    await client.request('textDocument/completion', at);
  }
  await alive();
});

test('parameters of the wrong shape end in an answer, not in silence', async () => {
  client = await startClient();
  for (const params of [{}, { textDocument: null }, { textDocument: {} }, [], null]) {
    await client.request('textDocument/hover', params).catch(() => undefined);
    await client.request('textDocument/diagnostic', params).catch(() => undefined);
    await client.request('sizewright/sheet', params).catch(() => undefined);
  }
  await alive();
});

test('settings of the wrong shape are the defaults', async () => {
  const wrong = { findings: { enabled: 'yes', severity: ['x'] }, hover: 7, hints: null };
  client = await startClient({ settings: wrong });
  await alive();
  for (const settings of [null, 7, 'x', { sizewright: [] }, { sizewright: null }]) {
    await client.connection.sendNotification('workspace/didChangeConfiguration', { settings });
  }
  await alive();
});

test('a pull that the client gives up is answered as cancelled or with its result', async () => {
  client = await startClient();
  const { CancellationTokenSource } = await import('vscode-languageserver-protocol');
  const uri = client.open(WRONG.repeat(2000));
  const pulls = Array.from({ length: 20 }, () => {
    const source = new CancellationTokenSource();
    const answer = client.connection.sendRequest(
      'textDocument/diagnostic',
      { textDocument: { uri } },
      source.token,
    );
    source.cancel();
    return answer.then(
      () => 'answered',
      (error: { code: number }) => error.code,
    );
  });
  for (const outcome of await Promise.all(pulls)) expect(['answered', -32800]).toContain(outcome);
  await alive();
});

test('a note closed and opened again starts afresh', async () => {
  client = await startClient();
  const uri = client.open(WRONG);
  await client.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  client.open('Wash your hands.\n');
  expect((await pull(uri)).items).toEqual([]);
});
