/** Claims as the constructions hand them on, made by hand: what is judged is independent of how it was read. */
import { judge } from '../../../server/src/claims/judge/index.ts';
import type { Claim, Operand, Stance, Statement } from '../../../server/src/claims/model.ts';
import type { Context, Mention } from '../../../server/src/mentions/model.ts';
import type { Note, Span } from '../../../server/src/notes/model.ts';
import { type Device, parseValue, type Size, type System } from '../../../server/src/sizes/index.ts';

export const NOWHERE: Span = { start: 0, end: 0 };
const BASE = { span: NOWHERE, focus: NOWHERE, construction: 'by hand' };

export function size(system: System, text: string): Size {
  const read = parseValue(system, text);
  if (!read) throw new Error(`no ${system} size: ${text}`);
  return read;
}

/** How a side was written, beside its sizes. */
export interface Written {
  readonly device?: Device;
  readonly material?: string;
  readonly span?: Span;
  /** The words of its mention; the side has a mention only with them. */
  readonly text?: string;
  readonly decimals?: number;
  readonly bound?: Mention['bound'];
}

const mentionOf = (sizes: readonly Size[], { text, decimals = 0, bound, span = NOWHERE }: Written): Mention[] =>
  text === undefined
    ? []
    : [
        {
          passage: 0, span, source: span, text, kind: 'size', sizes, readings: [], notation: 'by hand', decimals,
          evidence: [], ...(bound && { bound }),
        },
      ]; // biome-ignore format: a value

/** A side of a claim: sizes of one system. */
export function side(system: System, texts: string | readonly string[], written: Written = {}): Operand {
  const sizes = [texts].flat().map((text) => size(system, text));
  const { device, material, span = NOWHERE } = written;
  return {
    sizes,
    mentions: mentionOf(sizes, written),
    span,
    ...(device && { device }),
    ...(material && { material }),
  };
}

export const NOBODY: Operand = { sizes: [], mentions: [], span: NOWHERE };

export const noteOf = (text: string): Note => ({ text, passages: [], tables: [], comments: [] });

/** Where words stand in a text. */
export function at(text: string, words: string): Span {
  const start = text.indexOf(words);
  if (start < 0) throw new Error(`“${words}” is not in “${text}”`);
  return { start, end: start + words.length };
}

type Without<C> = C extends Claim ? Omit<C, keyof typeof BASE> & Partial<typeof BASE> : never;
export type Said = Without<Claim>;

export interface Around {
  readonly text?: string;
  readonly stance?: Stance;
  readonly context?: Context;
}

/** Judges a claim; the words of the note matter only where a test gives them. */
export function judged(claim: Said, { text = '', stance = 'asserted', context }: Around = {}): Statement {
  return judge({ ...BASE, ...claim } as Claim, stance, noteOf(text), context);
}
