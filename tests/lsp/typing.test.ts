/** A long note while it is being typed: nothing is invented, nothing stays wrong, and in the end it is read whole. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Diagnostic, DocumentDiagnosticReport } from 'vscode-languageserver-protocol';
import type { Finding } from '../../server/src/checks/model.ts';
import { topOf } from '../../server/src/lsp/first-look.ts';
import { moved } from '../../server/src/lsp/typing.ts';
import { PULL, startClient } from './client.ts';

const finding = (start: number, end: number): Finding => ({
  check: 'size-comparison',
  kind: 'contradiction',
  severity: 'warning',
  span: { start, end },
  says: '',
  holds: '',
  source: '',
  sources: [],
  fixes: [],
  related: [],
  derivation: [],
});

test('a finding that moves keeps its words; one that is touched is gone', () => {
  const edit = fc.record({ at: fc.nat(40), remove: fc.nat(10), insert: fc.string({ maxLength: 6 }) });
  fc.assert(
    fc.property(
      fc.string({ minLength: 1, maxLength: 40 }),
      fc.nat(39),
      fc.nat(8),
      edit,
      (text, from, length, { at, remove, insert }) => {
        const start = Math.min(from, text.length);
        const end = Math.min(text.length, start + length);
        const newer = text.slice(0, at) + insert + text.slice(at + remove);
        for (const { span } of moved({ text, findings: [finding(start, end)] }, newer)) {
          expect(newer.slice(span.start, span.end)).toBe(text.slice(start, end));
        }
      },
    ),
  );
});

test('typing far away leaves a finding where its words are', () => {
  const text = 'One. A is wrong. Three.';
  const [kept] = moved({ text, findings: [finding(5, 9)] }, `Zero. ${text}`);
  expect(kept?.span).toEqual({ start: 11, end: 15 });
});

const WRONG = 'A 16 G cannula is thinner than a 20 G cannula.\n\n';

/** A client that can be told to ask again, and when it was. */
async function startAsking() {
  const client = await startClient({
    capabilities: { ...PULL, workspace: { ...PULL.workspace, diagnostics: { refreshSupport: true } } },
  });
  let told = (): void => {};
  client.connection.onRequest('workspace/diagnostic/refresh', () => {
    told();
    return null;
  });
  const pull = async (uri: string): Promise<Diagnostic[]> => {
    const report = await client.request<DocumentDiagnosticReport>('textDocument/diagnostic', {
      textDocument: { uri },
    });
    return report.kind === 'full' ? report.items : [];
  };
  const toldAgain = () =>
    new Promise<void>((done) => {
      told = done;
    });
  return { client, pull, toldAgain };
}

test('a long note answers at once with what is known, then is read whole', async () => {
  const { client, pull, toldAgain } = await startAsking();
  const opened = toldAgain();
  const uri = client.open(WRONG.repeat(400));
  await pull(uri);
  await opened;
  expect(await pull(uri)).toHaveLength(400);
  const range = { start: { line: 2, character: 18 }, end: { line: 2, character: 25 } };
  const refreshed = toldAgain();
  await client.connection.sendNotification('textDocument/didChange', {
    textDocument: { uri, version: 2 },
    contentChanges: [
      { range, text: 'thicker' },
      { range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, text: `${WRONG}` },
    ],
  });
  const soon = await pull(uri);
  await expect(
    client.request('textDocument/semanticTokens/full', { textDocument: { uri } }),
  ).rejects.toMatchObject({
    code: -32801,
  });
  expect(soon.length).toBeLessThan(400);
  await refreshed;
  expect(await pull(uri)).toHaveLength(400);
  expect(client.errors).toEqual([]);
  client.close();
});

const CALM = 'Ask the learner to summarise what the relatives said.\n\n';

test('a long note just opened tells what is wrong at its top first, then all of it', async () => {
  const { client, pull, toldAgain } = await startAsking();
  const again = toldAgain();
  const uri = client.open(`Take a 2 silk.\n\n${WRONG}${CALM.repeat(400)}${WRONG}`);
  const first = await pull(uri);
  expect(first.map(({ range }) => range.start.line)).toEqual([2]);
  await again;
  expect((await pull(uri)).map(({ range }) => range.start.line)).toEqual([0, 2, 804]);
  expect(client.errors).toEqual([]);
  client.close();
});

test('a long note that begins well is looked at a little further', async () => {
  const { client, pull, toldAgain } = await startAsking();
  const again = toldAgain();
  const uri = client.open(CALM.repeat(20) + WRONG + CALM.repeat(400) + WRONG);
  expect(await pull(uri)).toHaveLength(1);
  await again;
  expect(await pull(uri)).toHaveLength(2);
  client.close();
});

test.each([
  ['with nothing wrong at its top', CALM.repeat(400) + WRONG, 1],
  ['that is asked for twice', WRONG + CALM.repeat(400) + WRONG, 2],
])('a long note %s is read at once', async (_, text, all) => {
  const { client, pull } = await startAsking();
  const uri = client.open(text);
  const answers = await Promise.all(Array.from({ length: all }, () => pull(uri)));
  expect(answers.at(-1)).toHaveLength(all);
  client.close();
});

test('a client that cannot be told to ask again gets all findings at once', async () => {
  const client = await startClient();
  const uri = client.open(WRONG + CALM.repeat(400) + WRONG);
  const report = await client.request<DocumentDiagnosticReport>('textDocument/diagnostic', {
    textDocument: { uri },
  });
  expect(report).toMatchObject({ items: [{}, {}] });
  client.close();
});

test.each([
  ['\n\n', '\n'],
  ['\r\n\r\n', '\r\n'],
])('the top ends where a section begins, or between paragraphs (%j)', (gap, end) => {
  const line = 'A line of forty characters in a paragraph';
  const paragraphs = Array.from({ length: 400 }, () => line).join(gap);
  const top = topOf(paragraphs, 2000)!;
  expect(paragraphs.startsWith(top)).toBe(true);
  expect(top.endsWith(`${line}${end}`)).toBe(true);
  const headed = `${Array.from({ length: 35 }, () => line).join(gap)}${gap}## Next${gap}${paragraphs}`;
  expect(topOf(headed, 2000)!.endsWith(`${line}${gap}`)).toBe(true);
  expect(headed.slice(topOf(headed, 2000)!.length).startsWith('## Next')).toBe(true);
});

test('a short note, and one line without end, have no top', () => {
  expect(topOf(WRONG, 2000)).toBeUndefined();
  expect(topOf('x'.repeat(50_000), 2000)).toBeUndefined();
});
