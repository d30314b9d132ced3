/** A long note while it is being typed: nothing is invented, nothing stays wrong, and in the end it is read whole. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Diagnostic, DocumentDiagnosticReport } from 'vscode-languageserver-protocol';
import type { Finding } from '../../server/src/checks/model.ts';
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

test('a long note answers at once with what is known, then is read whole', async () => {
  const client = await startClient({
    capabilities: { ...PULL, workspace: { ...PULL.workspace, diagnostics: { refreshSupport: true } } },
  });
  const refreshed = new Promise<void>((resolve) => {
    client.connection.onRequest('workspace/diagnostic/refresh', () => {
      resolve();
      return null;
    });
  });
  const pull = async (uri: string): Promise<Diagnostic[]> => {
    const report = await client.request<DocumentDiagnosticReport>('textDocument/diagnostic', {
      textDocument: { uri },
    });
    return report.kind === 'full' ? report.items : [];
  };
  const text = WRONG.repeat(400);
  const uri = client.open(text);
  expect(await pull(uri)).toHaveLength(400);
  const range = { start: { line: 2, character: 18 }, end: { line: 2, character: 25 } };
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
