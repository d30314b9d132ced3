/** Offsets to lines and columns, the way editors and SARIF count: from 1, in UTF-16 units. */
import type { Span } from '../notes/model.ts';

export interface Place extends Span {
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** Line starts of a text. LF, CRLF and CR end a line; nothing else does. */
export class Lines {
  readonly #text: string;
  readonly #starts: number[] = [0];

  constructor(text: string) {
    this.#text = text;
    for (let i = 0; i < text.length; i++) {
      const code = text.charCodeAt(i);
      if (code !== 10 && code !== 13) continue;
      if (code === 13 && text.charCodeAt(i + 1) === 10) i++;
      this.#starts.push(i + 1);
    }
  }

  get count(): number {
    return this.#starts.length;
  }

  place({ start, end }: Span): Place {
    const from = this.#position(start);
    const to = this.#position(end);
    return { start, end, ...from, endLine: to.line, endColumn: to.column };
  }

  /** Span of line `line` without its ending. */
  span(line: number): Span {
    const start = this.#starts[line - 1] ?? this.#text.length;
    let end = this.#starts[line] ?? this.#text.length;
    while (end > start && /[\r\n]/.test(this.#text[end - 1]!)) end--;
    return { start, end };
  }

  /** Line `line` without its ending. */
  line(line: number): string {
    const { start, end } = this.span(line);
    return this.#text.slice(start, end);
  }

  #position(offset: number): { line: number; column: number } {
    const at = Math.min(Math.max(offset, 0), this.#text.length);
    let low = 0;
    let high = this.#starts.length;
    while (high - low > 1) {
      const middle = (low + high) >>> 1;
      if (this.#starts[middle]! <= at) low = middle;
      else high = middle;
    }
    return { line: low + 1, column: at - this.#starts[low]! + 1 };
  }
}
