/**
 * A language server under a long day's work: edits and requests without end over a few notes. Memory after warm-up
 * must stay where it is; requests are answered without a logged error.
 *
 * Usage: tsx server/tools/hardening/soak.ts [--steps N] [--seed N]
 */
import { PassThrough } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import {
  createConnection,
  createProtocolConnection,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { serve } from '../../src/lsp/index.ts';
import { heapNow } from './heap.ts';
import { Chance } from './random.ts';

export interface Soaked {
  readonly steps: number;
  /** Heap in use, MB, after a collection: at ten points of the run. */
  readonly heap: readonly number[];
  /** What the server logged as an error. */
  readonly errors: readonly string[];
}

const BLOCKS = [
  'A 16 G cannula is thinner than a 20 G cannula.\n\n',
  'Close with 4-0 nylon; 2-0 is thicker than 4-0.\n\n',
  '| Gauge | Colour |\n|---|---|\n| 18 G | green |\n| 20 G | pink |\n\n',
  '- [ ] 21 G needle (green)\n- [x] 3-0 silk\n\n',
  '## Catheters\n\nA 14 Fr catheter is 4.7 mm across.\n\n',
  'Wash your hands, and 😀 smile.\n\n',
];

const METHODS = [
  'diagnostic', 'diagnostic', 'diagnostic', 'hover', 'completion', 'codeAction', 'inlayHint', 'semanticTokens/full',
  'documentSymbol', 'references', 'documentHighlight', 'selectionRange',
]; // biome-ignore format: a table

/** Notes open at a time, and addresses that come and go. */
const OPEN = 5;

function connect(errors: string[]): ProtocolConnection {
  const [up, down] = [new PassThrough(), new PassThrough()];
  serve(createConnection(new StreamMessageReader(up), new StreamMessageWriter(down)), { version: '0' });
  const client = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
  client.onNotification('window/logMessage', ({ type, message }) => {
    if (type === 1) errors.push(message);
  });
  // A client that can be asked for settings, so that their memory is tried too.
  client.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) => items.map(() => ({})));
  client.onRequest('client/registerCapability', () => null);
  client.listen();
  return client;
}

/** One author at work. */
class Author {
  readonly #client: ProtocolConnection;
  readonly #chance: Chance;
  readonly #open: { uri: string; version: number; lines: number }[] = [];
  #made = 0;

  constructor(client: ProtocolConnection, chance: Chance) {
    this.#client = client;
    this.#chance = chance;
  }

  async begin(): Promise<void> {
    const capabilities = { textDocument: { diagnostic: {} }, workspace: { configuration: true } };
    await this.#client.sendRequest('initialize', { processId: null, rootUri: null, capabilities });
    void this.#client.sendNotification('initialized', {});
  }

  async step(): Promise<void> {
    if (this.#open.length < OPEN) return this.#start();
    if (this.#chance.below(200) === 0) return this.#close();
    return this.#chance.next() < 0.5 ? this.#edit() : this.#ask();
  }

  #tell(method: string, params: object): Promise<void> {
    return this.#client.sendNotification(`textDocument/${method}`, params);
  }

  #start(): Promise<void> {
    const text = Array.from({ length: 6 }, () => this.#chance.pick(BLOCKS)).join('');
    const uri = `file:///course/part-${this.#made % 7}/note-${this.#made++}.md`;
    this.#open.push({ uri, version: 1, lines: 12 });
    return this.#tell('didOpen', { textDocument: { uri, languageId: 'markdown', version: 1, text } });
  }

  #close(): Promise<void> {
    const at = this.#chance.below(OPEN);
    const { uri } = this.#open[at]!;
    this.#open.splice(at, 1);
    return this.#tell('didClose', { textDocument: { uri } });
  }

  #edit(): Promise<void> {
    const note = this.#chance.pick(this.#open);
    const line = this.#chance.below(note.lines);
    // Taken and put in turn, so that notes stay as long as they are.
    const put = note.version % 2 === 0;
    const start = { line, character: 0 };
    const end = put ? start : { line: line + 2, character: 0 };
    const text = put ? this.#chance.pick(BLOCKS) : '';
    note.version++;
    const textDocument = { uri: note.uri, version: note.version };
    return this.#tell('didChange', { textDocument, contentChanges: [{ range: { start, end }, text }] });
  }

  async #ask(): Promise<void> {
    const { uri } = this.#chance.pick(this.#open);
    const position = { line: this.#chance.below(14), character: this.#chance.below(40) };
    const range = { start: { line: 0, character: 0 }, end: position };
    const context = { diagnostics: [], includeDeclaration: true };
    const params = { textDocument: { uri }, position, positions: [position], range, context };
    await this.#client.sendRequest(`textDocument/${this.#chance.pick(METHODS)}`, params);
  }
}

/** `tell` hears of each of the ten measurements. */
export async function soak(steps: number, seed: number, tell?: (heap: number) => void): Promise<Soaked> {
  const errors: string[] = [];
  const client = connect(errors);
  const author = new Author(client, new Chance(seed));
  await author.begin();
  const heap: number[] = [];
  for (let step = 1; step <= steps; step++) {
    await author.step();
    if (step % Math.ceil(steps / 10) !== 0) continue;
    heap.push(heapNow());
    tell?.(heap.at(-1)!);
  }
  client.dispose();
  return { steps, heap, errors };
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: { steps: { type: 'string', default: '100000' }, seed: { type: 'string', default: '1' } },
  });
  const start = performance.now();
  const seconds = (): string => ((performance.now() - start) / 1000).toFixed(0);
  const { heap, errors } = await soak(Number(values.steps), Number(values.seed), (used) =>
    console.log(`${seconds()} s: ${used.toFixed(1)} MB in use`),
  );
  console.log(`${values.steps} edits and requests in ${seconds()} s, ${errors.length} errors`);
  const grown = heap.at(-1)! - heap[2]!;
  console.log(`${grown.toFixed(1)} MB more than after the third part`);
  if (errors.length > 0 || grown > 8) process.exitCode = 1;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await main();
