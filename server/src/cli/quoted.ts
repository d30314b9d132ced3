/** The line of a finding, as far as a reader needs it: a note may be one line of megabytes with thousands of findings. */
import type { Lines, Place } from './lines.ts';

/** UTF-16 code units. */
const LONGEST = 1000;
const BEFORE = 300;

export interface Quoted {
  /** The first line as written, or the stretch of it around the place. */
  readonly excerpt: string;
  /** Where on the line the excerpt starts, in UTF-16 code units; at its start when absent. */
  readonly excerptAt?: number;
}

/** One less between the halves of a pair. */
const whole = (text: string, at: number): number => {
  const code = text.charCodeAt(at);
  return code >= 0xdc00 && code <= 0xdfff ? at - 1 : at;
};

export function quote(lines: Lines, { line, column }: Place): Quoted {
  const text = lines.line(line);
  if (text.length <= LONGEST) return { excerpt: text };
  const from = whole(text, Math.max(0, column - 1 - BEFORE));
  // A copy, so that the long line need not be kept.
  const excerpt = ` ${text.slice(from, whole(text, from + LONGEST))}`.slice(1);
  return from === 0 ? { excerpt } : { excerpt, excerptAt: from };
}
