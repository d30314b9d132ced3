/**
 * How soon a keystroke is answered: the server as an editor runs it, over stdio. For each length of note, one character
 * is typed at places all over it and the findings are asked for; beside it, remark parses the same text in full. The notes
 * hold a wrong statement every few paragraphs. A long note answers first for its top (`lsp/first-look.ts`): what that took is
 * told, and what it took until the whole note was told.
 *
 * The server is started twice: the first time after an update it has no code from an earlier run (`entry/start.ts`), and
 * what it takes then is told; the bounds are for every other start.
 *
 * Usage: npm run bench:typing. Needs dist/server-node.cjs. Exit status 1 when a bound is missed.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import {
  createMessageConnection,
  type MessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { makeNote } from './bench-notes.ts';

const SERVER = resolve(process.env.SIZEWRIGHT_SERVER ?? 'dist/server-node.cjs');
const KEYSTROKES = 40;
/** Share of sentences that mention sizes. */
const SHARE = 0.1;

/** Length of the note, and the longest 95th percentile of a keystroke, ms. */
const LENGTHS = [{ bytes: 50_000 }, { bytes: 100_000, most: 16 }, { bytes: 1_000_000, most: 50 }] as const;

/** From the server being up to the first findings of a 50 kB note, ms. */
const FIRST = 150;

/** The folder for code kept between runs, this bench's own: empty at the first start. */
const HOME = mkdtempSync(join(tmpdir(), 'sizes-typing-'));

interface Server {
  readonly connection: MessageConnection;
  readonly child: ChildProcess;
  /** From the start of the process to the answer of `initialize`, ms. */
  readonly up: number;
  /** Settles when the client is next told to ask again. */
  readonly refreshed: () => Promise<void>;
}

/** Paragraphs from one wrong statement to the next. */
const APART = 8;
const WRONG = 'A 16 G cannula is thinner than a 20 G cannula.';

/** The invented note with a wrong statement every few paragraphs. */
function noteWithMistakes(bytes: number): string {
  const paragraphs = makeNote(1, bytes, SHARE).split('\n\n');
  return paragraphs.map((one, index) => (index % APART === 2 ? `${one}\n\n${WRONG}` : one)).join('\n\n');
}

async function startServer(): Promise<Server> {
  const start = performance.now();
  const child = spawn(process.execPath, [SERVER, '--stdio'], {
    stdio: ['pipe', 'pipe', 'inherit'],
    env: { ...process.env, XDG_CACHE_HOME: HOME, SIZEWRIGHT_CODE_CACHE: '' },
  });
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  connection.listen();
  const capabilities = {
    textDocument: { diagnostic: {} },
    workspace: { diagnostics: { refreshSupport: true } },
  };
  let told = (): void => {};
  connection.onRequest('workspace/diagnostic/refresh', () => {
    told();
    return null;
  });
  const refreshed = () =>
    new Promise<void>((done) => {
      told = done;
    });
  await connection.sendRequest('initialize', { processId: process.pid, rootUri: null, capabilities });
  void connection.sendNotification('initialized', {});
  return { connection, child, up: performance.now() - start, refreshed };
}

const percentile = (times: readonly number[], part: number): number =>
  [...times].sort((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * part))] ?? 0;

interface Answer {
  readonly items: readonly unknown[];
}

const pull = (connection: MessageConnection, uri: string) =>
  connection.sendRequest<Answer>('textDocument/diagnostic', { textDocument: { uri } });

/** From opening a note to its first findings and to all of them, ms. Throws when no finding came first. */
async function open({ connection, refreshed }: Server, uri: string, text: string) {
  const start = performance.now();
  const textDocument = { uri, languageId: 'markdown', version: 1, text };
  const again = refreshed();
  void connection.sendNotification('textDocument/didOpen', { textDocument });
  const few = (await pull(connection, uri)).items.length;
  if (few === 0) throw new Error('the first answer holds no finding');
  const first = performance.now() - start;
  if (few >= text.split(WRONG).length - 1) return { first, all: first };
  await again;
  await pull(connection, uri);
  return { first, all: performance.now() - start };
}

/** One letter typed behind a letter, then taken away again, at places spread over the note. */
async function type(connection: MessageConnection, uri: string, text: string): Promise<number[]> {
  const lines = text.split('\n');
  const places = lines.flatMap((line, index) => (/^[A-Z].*[a-z]/.test(line) ? [index] : []));
  const times: number[] = [];
  let version = 1;
  for (let i = 0; i < KEYSTROKES; i++) {
    const line = places[Math.floor((i * 7919) % places.length)]!;
    for (const edit of [
      { text: 'x', end: 1 },
      { text: '', end: 2 },
    ]) {
      const range = { start: { line, character: 1 }, end: { line, character: edit.end } };
      const start = performance.now();
      version++;
      void connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [{ range, text: edit.text }],
      });
      await pull(connection, uri);
      times.push(performance.now() - start);
    }
  }
  return times;
}

function parseInFull(text: string): number {
  const parser = unified().use(remarkParse).use(remarkGfm);
  const times = Array.from({ length: 3 }, () => {
    const start = performance.now();
    parser.parse(text);
    return performance.now() - start;
  });
  return Math.min(...times);
}

/** The first start after an update, until the server has kept its code: settled, it does so within seconds. */
async function firstStart(): Promise<void> {
  const server = await startServer();
  const { connection, child, up } = server;
  const { first } = await open(server, 'file:///bench/first.md', noteWithMistakes(LENGTHS[0].bytes));
  console.log(`first start ever: server up after ${up.toFixed(0)} ms, first findings ${first.toFixed(0)} ms`);
  for (let waited = 0; waited < 300 && readdirSync(HOME).length === 0; waited++)
    await new Promise((done) => setTimeout(done, 100));
  await new Promise((done) => setTimeout(done, 500));
  connection.dispose();
  child.kill();
}

await firstStart();
const server = await startServer();
const { connection, child, up } = server;
console.log(`server up after ${up.toFixed(0)} ms`);
let missed = 0;
const judge = (value: number, most: number | undefined): string => {
  if (most === undefined) return '';
  if (value > most) missed++;
  return value > most ? ` (MISSED: at most ${most})` : ` (at most ${most})`;
};
for (const { bytes, ...bound } of LENGTHS) {
  const text = noteWithMistakes(bytes);
  const uri = `file:///bench/${bytes}.md`;
  const { first, all } = await open(server, uri, text);
  const times = await type(connection, uri, text);
  // What is left to read of it would keep the next note waiting.
  void connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  const p95 = percentile(times, 0.95);
  const parse = parseInFull(text);
  console.log(
    `${String(bytes / 1000).padStart(5)} kB: first findings ${first.toFixed(0)} ms${judge(first, bytes === 50_000 ? FIRST : undefined)}, all ${all.toFixed(0)} ms, ` +
      `keystroke median ${percentile(times, 0.5).toFixed(1)} ms, p95 ${p95.toFixed(1)} ms${judge(p95, 'most' in bound ? bound.most : undefined)}, ` +
      `full parse ${parse.toFixed(0)} ms`,
  );
}
connection.dispose();
child.kill();
rmSync(HOME, { recursive: true, force: true });
process.exitCode = missed > 0 ? 1 : 0;
