/** Cancellations by the thousand, notes closed and changed under running requests, ranges that split characters. */
import { afterEach, expect, it } from 'vitest';
import { CancellationTokenSource } from 'vscode-languageserver-protocol';
import { heapNow } from '../../server/tools/hardening/heap.ts';
import { soak } from '../../server/tools/hardening/soak.ts';
import { type Client, startClient } from '../lsp/client.ts';
import { runs } from '../notes/markdown-pieces.ts';

const WRONG = 'A 16 G cannula is thinner than a 20 G cannula.\n\n';
const CANCELLED = -32800;

let client: Client;
afterEach(() => client?.close());

const tell = (method: string, params: unknown): Promise<void> =>
  client.connection.sendNotification(`textDocument/${method}`, params);

const outcome = (answer: Promise<unknown>): Promise<'answered' | number> =>
  answer.then(
    () => 'answered' as const,
    (error: { code: number }) => error.code,
  );

const METHODS = [
  'diagnostic',
  'hover',
  'documentSymbol',
  'semanticTokens/full',
  'codeAction',
  'references',
  'completion',
];

function ask(uri: string, index: number): { answer: Promise<'answered' | number>; cancel: () => void } {
  const source = new CancellationTokenSource();
  const position = { line: index % 3, character: index % 7 };
  const params = {
    textDocument: { uri },
    position,
    range: { start: position, end: { line: 9, character: 0 } },
    context: { diagnostics: [], includeDeclaration: true },
  };
  const method = `textDocument/${METHODS[index % METHODS.length]}`;
  return {
    answer: outcome(client.connection.sendRequest(method, params, source.token)),
    cancel: () => source.cancel(),
  };
}

it('thousands of requests given up at once or later', async () => {
  client = await startClient();
  const uri = client.open(WRONG.repeat(40));
  const asked = Array.from({ length: runs(3000) }, (_, i) => ask(uri, i));
  asked.forEach(({ cancel }, i) => {
    if (i % 5 !== 0) cancel();
  });
  const outcomes = await Promise.all(asked.map(({ answer }) => answer));
  for (const each of outcomes) expect(['answered', CANCELLED]).toContain(each);
  outcomes.forEach((each, i) => {
    if (i % 5 === 0) expect(each).toBe('answered');
  });
  expect(client.errors).toEqual([]);
});

it('notes closed, opened and changed while they are read', async () => {
  client = await startClient();
  const answers: Promise<'answered' | number>[] = [];
  for (let i = 0; i < runs(150); i++) {
    const uri = client.open(WRONG.repeat(1 + (i % 9)), `note-${i % 4}.md`);
    for (let n = 0; n < METHODS.length; n++) answers.push(ask(uri, n).answer);
    if (i % 3 === 0)
      void tell('didChange', {
        textDocument: { uri, version: 2 },
        contentChanges: [{ text: `${WRONG}\n${i}` }],
      });
    answers.push(ask(uri, 0).answer);
    if (i % 2 === 0) void tell('didClose', { textDocument: { uri } });
    if (i % 10 === 0) await answers.at(-1);
  }
  for (const each of await Promise.all(answers)) expect(each).toBe('answered');
  expect(client.errors).toEqual([]);
});

it('edits and positions in the middle of a character, before the start and past every end', async () => {
  client = await startClient();
  const uri = client.open('😀 18 G 𝟏𝟖 G\r\nA 16 G cannula is thinner than a 20 G cannula.\n');
  const places = [-1, 0, 1, 2, 9, 10, 11, 99, 2 ** 31, Number.MAX_SAFE_INTEGER];
  let version = 1;
  for (const line of [-1, 0, 1, 2, 3, 2 ** 31])
    for (const character of places) {
      const start = { line, character };
      const end = { line: line + 1, character: character - 1 };
      void tell('didChange', {
        textDocument: { uri, version: ++version },
        contentChanges: [
          { range: { start, end: start }, text: version % 2 ? '\ud83d' : '\n' },
          { range: { start: end, end: start }, text: '' },
        ],
      });
      for (let n = 0; n < METHODS.length; n++) {
        const params = {
          textDocument: { uri },
          position: start,
          range: { start, end },
          context: { diagnostics: [] },
        };
        expect(await outcome(client.request(`textDocument/${METHODS[n]}`, params))).toBe('answered');
      }
    }
  expect(client.errors).toEqual([]);
});

it('notes that were closed are let go, with all that was read in them', async () => {
  client = await startClient();
  const day = async (first: number): Promise<number> => {
    for (let i = first; i < first + 30; i++) {
      const uri = client.open(WRONG.repeat(150), `note-${i}.md`);
      await Promise.all(METHODS.map((_, n) => ask(uri, n).answer));
      await tell('didClose', { textDocument: { uri } });
    }
    return heapNow();
  };
  const first = await day(0);
  expect((await day(30)) - first).toBeLessThan(8);
});

it('a day of edits and requests, in short (npm run soak): memory stays, nothing is logged', async () => {
  const { heap, errors } = await soak(runs(1000), 3);
  expect(errors).toEqual([]);
  expect(heap).toHaveLength(10);
  // What is kept of notes read earlier is bounded, but fills up first.
  expect(heap.at(-1)! - heap[2]!).toBeLessThan(20);
}, 600_000);
