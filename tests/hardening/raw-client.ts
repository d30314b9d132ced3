/** A client that may send any bytes to the built server, and hears every answer. */
import { type ChildProcess, spawn } from 'node:child_process';
import { resolve } from 'node:path';

const SERVER = resolve(process.env.SIZEWRIGHT_SERVER ?? 'dist/server-node.cjs');

export interface Heard {
  readonly id?: number | null;
  readonly method?: string;
  readonly result?: unknown;
  readonly error?: { readonly code: number; readonly message: string };
}

/** The messages in a stream of bytes, as they become whole. */
class Messages {
  #bytes: Buffer = Buffer.alloc(0);

  add(chunk: Buffer): Heard[] {
    this.#bytes = Buffer.concat([this.#bytes, chunk]);
    const whole: Heard[] = [];
    for (;;) {
      const head = /^Content-Length: (\d+)\r\n\r\n/.exec(this.#bytes.subarray(0, 60).toString('latin1'));
      if (head === null) return whole;
      const [start, end] = [head[0].length, head[0].length + Number(head[1])];
      if (this.#bytes.length < end) return whole;
      whole.push(JSON.parse(this.#bytes.subarray(start, end).toString()) as Heard);
      this.#bytes = this.#bytes.subarray(end);
    }
  }
}

export class RawClient {
  readonly heard: Heard[] = [];
  readonly exit: Promise<number | null>;
  stderr = '';
  readonly #process: ChildProcess;
  readonly #messages = new Messages();
  #ids = 0;
  #told: () => void = () => undefined;

  constructor() {
    this.#process = spawn(process.execPath, [SERVER, '--stdio'], { stdio: 'pipe' });
    this.#process.stdin!.on('error', () => undefined);
    this.#process.stdout!.on('data', (chunk: Buffer) => {
      this.heard.push(...this.#messages.add(chunk));
      this.#told();
    });
    this.#process.stderr!.on('data', (chunk: Buffer) => {
      this.stderr += chunk.toString();
    });
    this.exit = new Promise((resolve) => {
      this.#process.on('exit', (status) => {
        resolve(status);
        this.#told();
      });
    });
  }

  /** Bytes as they are. */
  raw(bytes: string | Buffer): void {
    this.#process.stdin!.write(bytes);
  }

  /** A body with its right length in front. */
  body(body: string | Buffer): void {
    this.raw(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n`);
    this.raw(body);
  }

  notify(method: string, params?: unknown): void {
    this.body(JSON.stringify({ jsonrpc: '2.0', method, params }));
  }

  /** The answer to a request: its result or its error. */
  request(method: string, params?: unknown): Promise<Heard> {
    const id = ++this.#ids;
    this.body(JSON.stringify({ jsonrpc: '2.0', id, method, params }));
    return this.next((message) => message.id === id && message.method === undefined);
  }

  /** The first message heard, earlier or later, that is as wanted. */
  async next(wanted: (message: Heard) => boolean): Promise<Heard> {
    let over = false;
    void this.exit.then(() => {
      over = true;
    });
    for (;;) {
      const found = this.heard.find(wanted);
      if (found !== undefined) return found;
      if (over) throw new Error(`the server ended: ${this.stderr}`);
      await new Promise<void>((resolve) => {
        this.#told = resolve;
      });
    }
  }

  begin(): Promise<Heard> {
    const capabilities = { textDocument: { diagnostic: {} } };
    return this.request('initialize', { processId: null, rootUri: null, capabilities });
  }

  hangUp(): void {
    this.#process.stdin!.end();
  }

  kill(): void {
    this.#process.kill('SIGKILL');
  }
}
