/**
 * Which words a sentence holds, at a glance. A cue is a question about single words, asked once a word and kept as a bit; the
 * bits of a sentence are joined once, and whoever needs one of some words asks for a bit instead of looking at every word.
 */
import type { Item } from './items.ts';
import { remembered } from './remember.ts';

/** A question about words: which number of a sentence's bits it is in, and the bit. */
export interface Cue {
  readonly part: number;
  readonly bit: number;
}

/** One of these words, or one that looks like this. A pattern must say what it says of one word by itself. */
type Asked = Iterable<string> | RegExp | ((word: string) => boolean);

const BITS = 31;
const asks: ((word: string) => boolean)[] = [];
/** What several ask is asked once. */
const named = new Map<string, Cue>();

/** The cue for a word of any of these. Made once, when the program is read: it is an answer about every sentence. */
export function cue(...asked: readonly Asked[]): Cue {
  const parts = asked.map((one) => (typeof one === 'function' || one instanceof RegExp ? one : new Set(one)));
  const name = parts.some((one) => typeof one === 'function') ? undefined : parts.map(nameOf).join('\n');
  const before = name === undefined ? undefined : named.get(name);
  if (before) return before;
  const made = { part: Math.floor(asks.length / BITS), bit: 1 << (asks.length % BITS) };
  asks.push((word) => parts.some((one) => means(one, word)));
  if (name !== undefined) named.set(name, made);
  known.clear();
  return made;
}

const nameOf = (one: RegExp | ReadonlySet<string> | ((word: string) => boolean)): string =>
  one instanceof Set ? [...one].sort().join(' ') : String(one);

const means = (one: RegExp | ReadonlySet<string> | ((word: string) => boolean), word: string): boolean =>
  one instanceof RegExp ? one.test(word) : typeof one === 'function' ? one(word) : one.has(word);

/** Bits of a word or of a sentence. */
type Bits = readonly number[];
const NONE: Bits = [];

const SHORT = 12;
/** Distinct words remembered; a language has more, a course hardly. */
const MOST_WORDS = 20_000;
const known = new Map<string, Bits>();

function learn(word: string): Bits {
  const bits: number[] = [];
  for (let i = 0; i < asks.length; i++) {
    if (!asks[i]!(word)) continue;
    while (bits.length * BITS < asks.length) bits.push(0);
    bits[Math.floor(i / BITS)]! |= 1 << (i % BITS);
  }
  const answer = bits.length === 0 ? NONE : bits;
  if (known.size >= MOST_WORDS) known.clear();
  // A copy: a word cut from a long text would keep all of it; a short one is no part of it, and found sooner as it is.
  known.set(word.length < SHORT ? word : ` ${word}`.slice(1), answer);
  return answer;
}

/** What was found out of a sentence, and how many cues there were then: one made later is found out anew. */
interface Found {
  cues: number;
  bits: number[];
}
const found = remembered((_: readonly Item[]): Found => ({ cues: 0, bits: [] }));

function joinedBits(items: readonly Item[]): number[] {
  const bits: number[] = [];
  while (bits.length * BITS < asks.length) bits.push(0);
  for (const { word } of items) {
    const own = known.get(word) ?? learn(word);
    for (let part = 0; part < own.length; part++) bits[part]! |= own[part]!;
  }
  return bits;
}

/** The bits of a sentence, for who asks for several cues. */
export function bitsOf(items: readonly Item[]): Bits {
  const about = found(items);
  if (about.cues !== asks.length) {
    about.bits = joinedBits(items);
    about.cues = asks.length;
  }
  return about.bits;
}

/** Does a sentence hold a word that the cue asks for? */
export const holds = (items: readonly Item[], { part, bit }: Cue): boolean =>
  (bitsOf(items)[part]! & bit) !== 0;
