/** Finds what is JavaScript in MDX: import and export blocks, JSX tags, expressions in braces. */
import { linesOf } from './lines.ts';
import type { Span } from './model.ts';

export interface MdxPart extends Span {
  readonly kind: 'module' | 'tag' | 'expression';
}

const FENCE = /^ {0,3}(`{3,}|~{3,})/;
const MODULE = /^(?:import|export)(?=[\s{*])/;

/** Walks a text once; what was looked for in vain up to the end is not looked for again. */
class MdxScanner {
  readonly parts: MdxPart[] = [];
  private readonly missing = new Set<string>();

  constructor(private readonly text: string) {}

  scan(): readonly MdxPart[] {
    const { text } = this;
    let fence: string | undefined;
    let inModule = false;
    let afterBlank = true;
    let done = 0;
    for (const { start, end, next } of linesOf(text, 0)) {
      if (start < done) continue;
      const line = text.slice(start, end);
      const sign = FENCE.exec(line)?.[1];
      inModule = line.trim() !== '' && !fence && (inModule || (afterBlank && MODULE.test(line)));
      if (fence) {
        if (sign?.startsWith(fence) && line.trim() === sign) fence = undefined;
      } else if (inModule) this.parts.push({ kind: 'module', start, end });
      else if (sign) fence = sign;
      else done = this.scanLine(start, next);
      afterBlank = line.trim() === '';
    }
    return this.parts;
  }

  /** Scans from `start`; answers where scanning stopped, at or after `next`. */
  private scanLine(start: number, next: number): number {
    let at = start;
    while (at < next) at = this.step(at);
    return at;
  }

  private step(at: number): number {
    const sign = this.text.charAt(at);
    if (sign === '\\') return at + 2;
    if (sign === '`') return this.code(at);
    if (sign === '{') return this.part('expression', at, this.closing(at));
    if (sign === '<' && /[A-Za-z/>]/.test(this.text.charAt(at + 1)))
      return this.part('tag', at, this.tagEnd(at));
    return at + 1;
  }

  private part(kind: MdxPart['kind'], start: number, end: number): number {
    if (end < 0) return start + 1;
    this.parts.push({ kind, start, end });
    return end;
  }

  /** Passes over inline code, or over its opening when it is not closed. */
  private code(at: number): number {
    let inside = at;
    while (this.text.charAt(inside) === '`') inside++;
    const run = this.text.slice(at, inside);
    if (this.missing.has(run)) return inside;
    let close = this.text.indexOf(run, inside);
    while (close >= 0 && this.text.charAt(close + run.length) === '`') {
      while (this.text.charAt(close) === '`') close++;
      close = this.text.indexOf(run, close);
    }
    if (close < 0) this.missing.add(run);
    return close < 0 ? inside : close + run.length;
  }

  /** Offset after the brace that closes the one at `at`; −1 when none does. */
  private closing(at: number): number {
    if (this.missing.has('{')) return -1;
    let depth = 0;
    for (let end = at; end < this.text.length; end++) {
      const sign = this.text.charAt(end);
      if (sign === '{') depth++;
      else if (sign === '}' && --depth === 0) return end + 1;
    }
    this.missing.add('{');
    return -1;
  }

  /** Offset after the tag that opens at `at`; −1 when it never ends. Strings and braces may hold `>`. */
  private tagEnd(at: number): number {
    if (this.missing.has('<')) return -1;
    for (let end = at + 1; end < this.text.length; ) {
      const sign = this.text.charAt(end);
      if (sign === '>') return end + 1;
      if (sign === '<') return -1;
      end = this.valueEnd(sign, end);
    }
    this.missing.add('<');
    return -1;
  }

  private valueEnd(sign: string, at: number): number {
    if (sign === '{') return Math.max(at + 1, this.closing(at));
    if ((sign !== '"' && sign !== "'") || this.missing.has(sign)) return at + 1;
    const close = this.text.indexOf(sign, at + 1);
    if (close < 0) this.missing.add(sign);
    return close < 0 ? at + 1 : close + 1;
  }
}

/** The parts of an MDX text that are JavaScript, in order. */
export function mdxParts(text: string): readonly MdxPart[] {
  return new MdxScanner(text).scan();
}
