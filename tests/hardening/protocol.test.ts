/**
 * A client that breaks every rule of JSON-RPC and of the Language Server Protocol: the server answers with the code
 * that the specifications name (JSON-RPC 2.0, section 5.1; LSP 3.17, "Base Protocol") and goes on.
 */
import { afterEach, describe, expect, it } from 'vitest';
import { runs } from '../notes/markdown-pieces.ts';
import { RawClient } from './raw-client.ts';

const PARSE_ERROR = -32700;
const INVALID_REQUEST = -32600;
const NO_SUCH_METHOD = -32601;
const INVALID_PARAMETERS = -32602;
const NOT_INITIALIZED = -32002;

const WRONG = 'A 16 G cannula is thinner than a 20 G cannula.\n';
const URI = 'file:///course/a.md';
const at = { textDocument: { uri: URI }, position: { line: 0, character: 3 } };
const here = { textDocument: { uri: URI } };

let client: RawClient;
afterEach(() => client.kill());

async function begun(): Promise<RawClient> {
  client = new RawClient();
  await client.begin();
  client.notify('initialized', {});
  return client;
}

function open(text: string, uri = URI): void {
  client.notify('textDocument/didOpen', {
    textDocument: { uri, languageId: 'markdown', version: 1, text },
  });
}

async function expectAlive(): Promise<void> {
  const uri = `file:///course/alive-${client.heard.length}.md`;
  open(WRONG, uri);
  const { result } = await client.request('textDocument/diagnostic', { textDocument: { uri } });
  expect((result as { items: unknown[] }).items).toHaveLength(1);
}

const codeOf = async (method: string, params?: unknown): Promise<number | undefined> =>
  (await client.request(method, params)).error?.code;

describe('bytes that are no message', () => {
  const BODIES: Record<string, string | Buffer> = {
    'half an object': '{"jsonrpc":"2.0",',
    'no JSON': 'hover, please',
    nothing: '',
    'no UTF-8': Buffer.from([0x7b, 0xff, 0xfe, 0x7d]),
  };
  it.each(Object.entries(BODIES))('%s', async (_, body) => {
    await begun();
    client.body(body);
    expect((await client.next(({ id }) => id === null)).error?.code).toBe(PARSE_ERROR);
    await expectAlive();
  });

  it.each(['X: 1\r\n\r\n', 'nonsense\r\n\r\n', 'Content-Length: many\r\n\r\n'])(
    'the header %j',
    async (bytes) => {
      await begun();
      client.raw(bytes);
      expect((await client.next(({ id }) => id === null)).error?.code).toBe(PARSE_ERROR);
      await expectAlive();
    },
  );

  it.each(['7', 'null', '[]', '"x"', '{}', '{"jsonrpc":"2.0","id":77}', '{"id":77,"method":7}'])(
    'JSON that is neither request nor answer: %s',
    async (body) => {
      await begun();
      client.body(body);
      await client.next(({ method }) => method === 'window/logMessage');
      await expectAlive();
    },
  );

  it('a message in single bytes, and two in one piece', async () => {
    await begun();
    const body = JSON.stringify({ jsonrpc: '2.0', id: 900, method: 'sizewright/chart', params: {} });
    for (const byte of `Content-Length: ${body.length}\r\n\r\n${body}`) client.raw(byte);
    expect((await client.next(({ id }) => id === 900)).result).toEqual([]);
    const two = [901, 902].map((id) => {
      const text = JSON.stringify({ jsonrpc: '2.0', id, method: 'sizewright/chart', params: {} });
      return `Content-Length: ${text.length}\r\n\r\n${text}`;
    });
    client.raw(two.join(''));
    expect((await client.next(({ id }) => id === 902)).result).toEqual([]);
  });

  it('a length that cannot be: no answer can be trusted from there on, but the end is heard', async () => {
    await begun();
    client.raw('Content-Length: -5\r\n\r\n');
    client.hangUp();
    expect(await client.exit).toBe(1);
    expect(client.stderr).toBe('');
  });
});

describe('out of turn', () => {
  it('before the client introduced itself', async () => {
    client = new RawClient();
    for (const method of ['textDocument/hover', 'textDocument/diagnostic', 'sizewright/chart', 'shutdown'])
      expect(await codeOf(method, at)).toBe(NOT_INITIALIZED);
    open(WRONG);
    expect((await client.begin()).result).toHaveProperty('capabilities');
    await expectAlive();
  });

  it('introduced twice', async () => {
    await begun();
    expect((await client.begin()).error?.code).toBe(INVALID_REQUEST);
    await expectAlive();
  });

  it('after goodbye; then the end, status 0', async () => {
    await begun();
    open(WRONG);
    expect(await client.request('shutdown')).toMatchObject({ result: null });
    expect(await codeOf('textDocument/hover', at)).toBe(INVALID_REQUEST);
    expect(await codeOf('textDocument/diagnostic', here)).toBe(INVALID_REQUEST);
    expect(await codeOf('shutdown')).toBe(INVALID_REQUEST);
    client.notify('exit');
    expect(await client.exit).toBe(0);
  });

  it.each(['exit', 'hanging up'])('%s without goodbye: status 1', async (way) => {
    await begun();
    if (way === 'exit') client.notify('exit');
    else client.hangUp();
    expect(await client.exit).toBe(1);
  });

  it('goodbye and hanging up: status 0', async () => {
    await begun();
    await client.request('shutdown');
    client.hangUp();
    expect(await client.exit).toBe(0);
  });
});

describe('wrong parameters', () => {
  const NOTE = ['diagnostic', 'documentSymbol', 'semanticTokens/full'];
  const POSITION = ['hover', 'completion', 'references', 'documentHighlight', 'prepareRename', 'rename'];
  const RANGE = ['codeAction', 'inlayHint'];
  const PLACED = [...POSITION, ...RANGE, 'selectionRange'];
  it('are refused', async () => {
    await begun();
    open(WRONG);
    for (const name of [...NOTE, ...PLACED])
      for (const params of [{}, [], { textDocument: null }, { textDocument: { uri: 7 } }, undefined])
        expect([name, params, await codeOf(`textDocument/${name}`, params)]).toEqual([
          name,
          params,
          INVALID_PARAMETERS,
        ]);
    const half = { start: { line: 0 } };
    for (const name of PLACED)
      for (const position of [undefined, null, {}, { line: 0 }, { line: '0', character: 1.5 }]) {
        const params = { ...here, position, positions: [position], range: position ? half : undefined };
        expect([name, await codeOf(`textDocument/${name}`, params)]).toEqual([name, INVALID_PARAMETERS]);
      }
    expect(await codeOf('textDocument/rename', at)).toBe(INVALID_PARAMETERS);
    expect(await codeOf('sizewright/tips', {})).toBe(INVALID_PARAMETERS);
    expect(await codeOf('textDocument/nonsense', at)).toBe(NO_SUCH_METHOD);
    await expectAlive();
  });

  it('in notifications are passed over', async () => {
    await begun();
    open(WRONG);
    const bad: [string, unknown][] = [
      ['textDocument/didOpen', {}],
      ['textDocument/didOpen', { textDocument: { uri: 'file:///b.md', languageId: 'markdown', version: 1, text: 7 } }],
      ['textDocument/didChange', { ...here, contentChanges: 7 }],
      ['textDocument/didChange', { textDocument: { uri: URI, version: 2 }, contentChanges: [null, 7, {}] }],
      ['textDocument/didChange', { textDocument: { uri: 'file:///none.md', version: 2 }, contentChanges: [{ text: 'x' }] }],
      ['textDocument/didClose', { textDocument: { uri: 'file:///none.md' } }],
      ['workspace/didChangeConfiguration', null],
      ['workspace/didChangeWatchedFiles', { changes: [{}] }],
      ['workspace/didChangeWorkspaceFolders', {}],
      ['$/cancelRequest', { id: 'none' }],
      ['$/setTrace', { value: 'loud' }],
      ['textDocument/didSave', {}],
    ]; // biome-ignore format: a table
    for (const [method, params] of bad) client.notify(method, params);
    await expectAlive();
  });
});

it('answers to requests never made, and one id for two requests', async () => {
  await begun();
  client.body('{"jsonrpc":"2.0","id":4711,"result":{}}');
  client.body('{"jsonrpc":"2.0","id":4712,"error":{"code":1,"message":"x"}}');
  const body = JSON.stringify({ jsonrpc: '2.0', id: 800, method: 'textDocument/hover', params: at });
  client.body(body);
  client.body(body);
  await client.next(({ id }) => id === 800);
  await expectAlive();
});

// 1 MB; 5 MB in a longer run.
it('a very long note, changed and asked for', async () => {
  await begun();
  open(WRONG.repeat(10) + 'Wash your hands and say so. '.repeat(runs(1) > 1 ? 180_000 : 36_000));
  const start = { line: 0, character: 0 };
  client.notify('textDocument/didChange', {
    textDocument: { uri: URI, version: 2 },
    contentChanges: [{ range: { start, end: start }, text: 'x' }],
  });
  const { result } = await client.request('textDocument/diagnostic', here);
  expect((result as { items: unknown[] }).items).toHaveLength(10);
}, 300_000);
