/** Finds the phrases of a table in a text: whole words, any case, plural. */
import type { Span } from '../notes/model.ts';

/** A word of the trade found in a passage. */
export interface Hit<T> extends Span {
  readonly means: T;
  readonly word: string;
}

const escaped = (word: string): string => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Signs of which a word is made; with `i`, the class of the pattern below also holds Ÿ. */
const WORDLY = new Uint8Array(0x180);
for (let code = 0; code < WORDLY.length; code++)
  if (/[0-9A-Za-zÀ-ÿ_]/i.test(String.fromCharCode(code))) WORDLY[code] = 1;
const wordly = (text: string, at: number): boolean => WORDLY[text.charCodeAt(at)] === 1;

const FIRST = /^[0-9a-zà-ÿ_]+/;

/** One pattern for many phrases. */
function matcher(words: Iterable<string>, flags: string): RegExp {
  const sorted = [...words]
    .sort((a, b) => b.length - a.length)
    .map((word) => escaped(word).replace(/[ -]/g, '[\\s-]'));
  return new RegExp(`(?<![0-9A-Za-zÀ-ÿ_])(?:${sorted.join('|')})(?:s|es)?(?![0-9A-Za-zÀ-ÿ_])`, flags);
}

/** The first word of a phrase as it may stand in a text; undefined when it begins with another sign. */
function firstWords(phrase: string): readonly string[] | undefined {
  const lower = phrase.toLowerCase();
  const first = FIRST.exec(lower)?.[0];
  return first === lower ? [first, `${first}s`, `${first}es`] : first === undefined ? undefined : [first];
}

const BUCKETS = 1 << 12;
const hashed = (hash: number, code: number): number => (Math.imul(hash, 31) + (code | 0x20)) | 0;
const bucket = (hash: number): number => (hash ^ (hash >>> 12)) & (BUCKETS - 1);

function bucketOf(word: string): number {
  let hash = 0;
  for (let i = 0; i < word.length; i++) hash = hashed(hash, word.charCodeAt(i));
  return bucket(hash);
}

/** The phrases by the hash of their first word; undefined when one begins with another sign. */
function bucketsOf(words: readonly string[]): readonly (readonly string[] | undefined)[] | undefined {
  const buckets = new Array<string[] | undefined>(BUCKETS).fill(undefined);
  for (const word of words) {
    const firsts = firstWords(word);
    if (!firsts) return undefined;
    for (const at of new Set(firsts.map(bucketOf))) {
      buckets[at] ??= [];
      buckets[at].push(word);
    }
  }
  return buckets;
}

/** What makes an answer when it is first asked for; a pattern of many words takes long to make. */
function late<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/** Tries the phrases that begin with the word at a place: its match, if one stands there. */
type Try = (text: string, at: number, bucket: number, ascii: boolean) => RegExpExecArray | null;

function tryingOf(words: readonly string[], buckets: readonly (readonly string[] | undefined)[]): Try {
  const any = late(() => matcher(words, 'iy'));
  const own = buckets.map((some) => some && late(() => matcher(some, 'iy')));
  return (text, at, bucket, ascii) => {
    const of = ascii ? own[bucket] : any;
    if (!of) return null;
    const here = of();
    here.lastIndex = at;
    return here.exec(text);
  };
}

/** Finds the phrases of one table; a table of which one begins with another sign is looked for everywhere. */
interface Table {
  readonly trying?: Try;
  readonly anywhere?: RegExp;
}

function tableOf(words: readonly string[]): Table {
  if (words.length === 0) return {};
  const buckets = bucketsOf(words);
  return buckets ? { trying: tryingOf(words, buckets) } : { anywhere: matcher(words, 'gi') };
}

/** Matches of each table in order: a text is taken apart into words once for all of them. */
function matchesOf(text: string, tables: readonly Table[]): readonly (readonly RegExpExecArray[])[] {
  const found = tables.map(({ anywhere }) => (anywhere ? [...text.matchAll(anywhere)] : []));
  /** Where the last match of each table ended. */
  const past = tables.map(() => 0);
  for (let at = 0; at < text.length; ) {
    if (!wordly(text, at)) {
      at++;
      continue;
    }
    const start = at;
    let highest = 0;
    let hash = 0;
    for (; at < text.length && wordly(text, at); at++) {
      highest |= text.charCodeAt(at);
      hash = hashed(hash, text.charCodeAt(at));
    }
    const own = bucket(hash);
    const ascii = highest < 0x80;
    for (let i = 0; i < tables.length; i++) {
      if (start < past[i]!) continue;
      const match = tables[i]!.trying?.(text, start, own, ascii);
      if (!match) continue;
      found[i]!.push(match);
      past[i] = start + match[0].length;
    }
  }
  return found;
}

/** Reads the matches of a table. */
function reader<T>(table: ReadonlyMap<string, T>): (match: RegExpExecArray) => Hit<T> {
  const normal = (word: string): string => word.toLowerCase().replace(/[\s-]/g, ' ');
  const byWord = new Map([...table].map(([word, means]) => [normal(word), means]));
  return (match) => {
    const word = normal(match[0]);
    const means = (byWord.get(word) ??
      byWord.get(word.replace(/s$/, '')) ??
      byWord.get(word.replace(/es$/, '')))!;
    return { start: match.index, end: match.index + match[0].length, means, word };
  };
}

/** Finds words of several tables in a text; what each holds is found as if it were alone. */
export function finders<T extends readonly unknown[]>(
  tables: {
    readonly [K in keyof T]: ReadonlyMap<string, T[K]>;
  },
): (text: string) => { readonly [K in keyof T]: readonly Hit<T[K]>[] } {
  const all = tables as readonly ReadonlyMap<string, unknown>[];
  const looked = all.map((table) => tableOf([...table.keys()]));
  const readers = all.map(reader);
  return (text) =>
    matchesOf(text, looked).map((matches, i) => matches.map(readers[i]!)) as {
      readonly [K in keyof T]: readonly Hit<T[K]>[];
    };
}

/** Finds words of a table in a text. */
export function finder<T>(table: ReadonlyMap<string, T>): (text: string) => readonly Hit<T>[] {
  if (table.size === 0) return () => [];
  const find = finders<[T]>([table]);
  return (text) => find(text)[0];
}
