/**
 * Which constructions a sentence can satisfy at all. A sentence is looked over once, into a set of the classes of words
 * and the cues it holds; a construction is tried only when what it needs is there. That saves time and never changes what
 * is read: a test holds the readings with and without it equal.
 */
import type { Item } from '../text/items.ts';
import { mayNameMaterial } from '../text/materials.ts';
import type { Scene } from '../text/scene.ts';
import { speaksOfTrade } from '../text/trade.ts';
import type { Construction, Needs, WordClass } from './model.ts';

const CLASSES: Readonly<Record<WordClass, number>> = {
  measured: 1,
  compared: 2,
  superlative: 4,
  system: 8,
  numbered: 16,
  axis: 32,
  colour: 64,
  material: 128,
  length: 256,
  mixed: 512,
  answers: 1024,
  opposed: 2048,
  tube: 4096,
};

const LENGTHS: ReadonlySet<string> = new Set(['millimetre', 'inch', 'wire-inch']);

/** What a sentence holds. */
interface Holds {
  readonly classes: number;
  readonly cues: Bits;
  /** Values of its sizes; a range has two. */
  readonly sizes: number;
}

/** One way of being satisfied: sizes, all of these classes, one of these cues (or none asked for), and of these. */
interface Gate {
  readonly sizes: number;
  readonly classes: number;
  readonly cues: Bits;
  readonly also: Bits;
}

type Cue = (word: string) => boolean;

/** The cues asked for so far; one that several constructions ask for is asked once. */
interface Cues {
  readonly all: Cue[];
  readonly known: Map<string, number>;
}

/** Cues are bits of five numbers, by name: looked at once a word, where a list would take longer. */
interface Bits {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
}
const BITS = 31;
const MOST_CUES = 5 * BITS;
const NONE: Bits = { a: 0, b: 0, c: 0, d: 0, e: 0 };

function bit(i: number): Bits {
  const part = Math.floor(i / BITS);
  const of = (n: number): number => (part === n ? 1 << (i % BITS) : 0);
  return { a: of(0), b: of(1), c: of(2), d: of(3), e: of(4) };
}
const joined = (x: Bits, y: Bits): Bits => ({
  a: x.a | y.a,
  b: x.b | y.b,
  c: x.c | y.c,
  d: x.d | y.d,
  e: x.e | y.e,
});
const SHORT = 12;
/** Distinct words remembered; a language has more, a course hardly. */
const MOST_WORDS = 20_000;

/** A construction with its gates; without any it is always tried. */
interface Gated {
  readonly construction: Construction;
  readonly leaning: boolean;
  readonly gates: readonly Gate[] | undefined;
}

/** Makes a chooser: the constructions that may read a sentence, in their order. */
export function chooser(all: readonly Construction[]): (scene: Scene) => readonly Construction[] {
  let ready: { readonly gated: readonly Gated[]; readonly look: (scene: Scene) => Holds } | undefined;
  return (scene) => {
    ready ??= prepare(all);
    const holds = ready.look(scene);
    const found: Construction[] = [];
    let trade: boolean | undefined;
    for (const { construction, leaning, gates } of ready.gated) {
      if (gates && !anyOpens(gates, holds)) continue;
      if (!leaning) trade ??= speaksOfTrade(scene.items);
      if (leaning || trade) found.push(construction);
    }
    return found;
  };
}

function prepare(all: readonly Construction[]) {
  const cues: Cues = { all: [mayNameMaterial], known: new Map() };
  const gated = all.map((construction) => ({
    construction,
    leaning: construction.leaning === true,
    gates: construction.needs?.().map((needs) => gateOf(needs, cues)),
  }));
  return { gated, look: lookerFor(cues.all) };
}

function gateOf({ sizes = 0, holds = [], words, like, also }: Needs, cues: Cues): Gate {
  const classes = holds.reduce((bits, name) => bits | CLASSES[name], 0);
  const second = also instanceof RegExp ? cueOf(undefined, also, cues) : cueOf(also, undefined, cues);
  return { sizes, classes, cues: cueOf(words, like, cues), also: second };
}

function cueOf(words: Iterable<string> | undefined, like: RegExp | undefined, cues: Cues): Bits {
  if (!words && !like) return NONE;
  const set = new Set(words ?? []);
  const key = `${[...set].sort().join(' ')} ${like ?? ''}`;
  const known = cues.known.get(key);
  if (known !== undefined) return bit(known);
  if (cues.all.length === MOST_CUES) throw new Error('More cues than bits');
  cues.known.set(key, cues.all.length);
  cues.all.push((word) => set.has(word) || like?.test(word) === true);
  return bit(cues.all.length - 1);
}

function anyOpens(gates: readonly Gate[], holds: Holds): boolean {
  for (const gate of gates) if (opens(gate, holds)) return true;
  return false;
}

const opens = (gate: Gate, holds: Holds): boolean =>
  holds.sizes >= gate.sizes &&
  (holds.classes & gate.classes) === gate.classes &&
  meets(gate.cues, holds.cues) &&
  meets(gate.also, holds.cues);

const meets = (asked: Bits, there: Bits): boolean =>
  asked === NONE ||
  ((there.a & asked.a) |
    (there.b & asked.b) |
    (there.c & asked.c) |
    (there.d & asked.d) |
    (there.e & asked.e)) !==
    0;

function lookerFor(cues: readonly Cue[]): (scene: Scene) => Holds {
  const cuesOf = rememberWords((word) =>
    cues.reduce((bits, cue, i) => (cue(word) ? joined(bits, bit(i)) : bits), NONE),
  );
  return (scene) => {
    let classes = (scene.before.at(-1) ?? scene.context.at(-1))?.close === '?' ? CLASSES.answers : 0;
    let a = 0;
    let b = 0;
    let c = 0;
    let d = 0;
    let e = 0;
    let sizes = 0;
    let magnitudes = 0;
    let system: string | undefined;
    for (const item of scene.items) {
      const cue = cuesOf(item.word);
      a |= cue.a;
      b |= cue.b;
      c |= cue.c;
      d |= cue.d;
      e |= cue.e;
      classes |= classesOf(item);
      if (item.magnitude && ++magnitudes === 2) classes |= CLASSES.opposed;
      if (!item.mention || item.mention.kind === 'ambiguous') continue;
      sizes += item.mention.sizes.length;
      for (const size of item.mention.sizes) {
        if (LENGTHS.has(size.system)) classes |= CLASSES.length;
        if (size.system === 'tube-id') classes |= CLASSES.tube;
        system ??= size.system;
        if (size.system !== system) classes |= CLASSES.mixed;
      }
    }
    if (a & 1) classes |= CLASSES.material;
    return { classes, cues: { a, b, c, d, e }, sizes };
  };
}

function classesOf({ magnitude, system, axisNoun, colour }: Item): number {
  let classes = 0;
  if (magnitude) {
    classes |= CLASSES.measured;
    if (magnitude.degree === 'comparative') classes |= CLASSES.compared;
    if (magnitude.degree === 'superlative') classes |= CLASSES.superlative;
    if (magnitude.axis === 'number') classes |= CLASSES.numbered;
  }
  if (system) classes |= CLASSES.system | CLASSES.numbered;
  if (axisNoun) classes |= axisNoun.axis === 'number' ? CLASSES.axis | CLASSES.numbered : CLASSES.axis;
  if (colour) classes |= CLASSES.colour;
  return classes;
}

/** The answers for words met before, kept up to a bound. */
function rememberWords(ask: (word: string) => Bits): (word: string) => Bits {
  const known = new Map<string, Bits>();
  return (word) => {
    const before = known.get(word);
    if (before !== undefined) return before;
    const answer = ask(word);
    if (known.size >= MOST_WORDS) known.clear();
    // A copy: a word cut from a long text would keep all of it; a short one is no part of it, and found sooner as it is.
    known.set(word.length < SHORT ? word : ` ${word}`.slice(1), answer);
    return answer;
  };
}
