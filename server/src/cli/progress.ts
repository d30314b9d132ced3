/** How far a long run has come, on standard error and only on a terminal. */
import { isatty } from 'node:tty';
import { writeAll } from './terminal.ts';

const AFTER = 1000;
const EVERY = 200;
const CLEAR = '\r\u001b[K';

export class Progress {
  readonly #total: number;
  readonly #on = isatty(2);
  #done = 0;
  #next = Date.now() + AFTER;
  #shown = false;

  constructor(total: number) {
    this.#total = total;
  }

  step(): void {
    this.#done++;
    if (!this.#on || Date.now() < this.#next) return;
    this.#next = Date.now() + EVERY;
    this.#shown = true;
    writeAll(2, `${CLEAR}${this.#done} of ${this.#total} notes`);
  }

  /** Runs something that writes to the terminal, with the progress out of its way. */
  aside(write: () => void): void {
    this.end();
    write();
  }

  end(): void {
    if (this.#shown) writeAll(2, CLEAR);
    this.#shown = false;
  }
}
