import { afterEach, expect, test } from 'vitest';
import type {
  Diagnostic,
  DocumentDiagnosticReport,
  PublishDiagnosticsParams,
} from 'vscode-languageserver-protocol';
import { type Client, startClient } from './client.ts';

const WRONG = 'A 16 G cannula is thinner than a 20 G cannula.\n';

let client: Client;
afterEach(() => client.close());

const pull = (uri: string, previousResultId?: string) =>
  client.request<DocumentDiagnosticReport>('textDocument/diagnostic', {
    textDocument: { uri },
    previousResultId,
  });

const items = (report: DocumentDiagnosticReport): Diagnostic[] =>
  report.kind === 'full' ? report.items : [];

test('a pull gives the finding with its place, its check and its origin', async () => {
  client = await startClient();
  const [finding] = items(await pull(client.open(`\n${WRONG}`)));
  expect(finding).toMatchObject({
    source: 'sizewright',
    code: 'size-comparison',
    range: { start: { line: 1 } },
  });
  expect(client.errors).toEqual([]);
});

test('a second pull of the same text is unchanged; an edit that mends it clears it', async () => {
  client = await startClient();
  const uri = client.open(WRONG);
  const first = await pull(uri);
  expect((await pull(uri, first.resultId)).kind).toBe('unchanged');
  const range = { start: { line: 0, character: 18 }, end: { line: 0, character: 25 } };
  await client.connection.sendNotification('textDocument/didChange', {
    textDocument: { uri, version: 2 },
    contentChanges: [{ range, text: 'thicker' }],
  });
  expect(items(await pull(uri, first.resultId))).toEqual([]);
});

test('a client without pull gets findings pushed, and none any more when the note is closed', async () => {
  client = await startClient({ capabilities: {} });
  const pushed: PublishDiagnosticsParams[] = [];
  const arrived = (count: number) => expect.poll(() => pushed.length, { timeout: 5000 }).toBe(count);
  client.connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    pushed.push(params);
  });
  const uri = client.open(WRONG);
  await arrived(1);
  expect(pushed[0]).toMatchObject({ uri, version: 1 });
  expect(pushed[0]!.diagnostics).toHaveLength(1);
  await client.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  await arrived(2);
  expect(pushed[1]!.diagnostics).toEqual([]);
});

test('settings turn findings off and change their level', async () => {
  client = await startClient({ settings: { findings: { severity: { 'size-comparison': 'hint' } } } });
  const uri = client.open(WRONG);
  expect(items(await pull(uri))[0]?.severity).toBe(4);
  await client.connection.sendNotification('workspace/didChangeConfiguration', {
    settings: { sizewright: { findings: { enabled: false } } },
  });
  expect(items(await pull(uri))).toEqual([]);
});
