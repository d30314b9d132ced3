/**
 * Which constructions a sentence can satisfy at all. A sentence is looked over once, into a set of the classes of words
 * and the cues it holds; a construction is tried only when what it needs is there. That saves time and never changes what
 * is read: a test holds the readings with and without it equal.
 */
import { bitsOf, type Cue, cue, holds } from '../text/cues.ts';
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
  french: 8192,
  thread: 16384,
  range: 32768,
  excess: 65536,
};

/** The class of a size by its system. */
const SYSTEMS: ReadonlyMap<string, number> = new Map([
  ['millimetre', CLASSES.length],
  ['inch', CLASSES.length],
  ['wire-inch', CLASSES.length],
  ['tube-id', CLASSES.tube],
  ['french', CLASSES.french],
  ['usp', CLASSES.thread],
]);

/** What a sentence holds. */
interface Holds {
  readonly classes: number;
  readonly bits: readonly number[];
  /** Values of its sizes; a range has two. */
  readonly sizes: number;
}

/** One way of being satisfied: sizes, all of these classes, and each of these cues. */
interface Gate {
  readonly sizes: number;
  readonly classes: number;
  readonly cues: readonly Cue[];
}

/** A construction with its gates; without any it is always tried. */
interface Gated {
  readonly construction: Construction;
  readonly leaning: boolean;
  readonly gates: readonly Gate[] | undefined;
}

/** Makes a chooser: the constructions that may read a sentence, in their order. */
export function chooser(all: readonly Construction[]): (scene: Scene) => readonly Construction[] {
  let ready: readonly Gated[] | undefined;
  return (scene) => {
    ready ??= all.map(gated);
    const there = look(scene);
    const found: Construction[] = [];
    let trade: boolean | undefined;
    for (const { construction, leaning, gates } of ready) {
      if (gates && !anyOpens(gates, there)) continue;
      if (!leaning) trade ??= speaksOfTrade(scene.items);
      if (leaning || trade) found.push(construction);
    }
    return found;
  };
}

const gated = (construction: Construction): Gated => ({
  construction,
  leaning: construction.leaning === true,
  gates: construction.needs?.().map(gateOf),
});

function gateOf({ sizes = 0, holds = [], words, like, also, every = [] }: Needs): Gate {
  const classes = holds.reduce((bits, name) => bits | CLASSES[name], 0);
  const own = words || like ? [cue(...(words ? [words] : []), ...(like ? [like] : []))] : [];
  return { sizes, classes, cues: [...own, ...(also ? [cue(also)] : []), ...every] };
}

function anyOpens(gates: readonly Gate[], there: Holds): boolean {
  for (const gate of gates) if (opens(gate, there)) return true;
  return false;
}

const opens = (gate: Gate, there: Holds): boolean =>
  there.sizes >= gate.sizes &&
  (there.classes & gate.classes) === gate.classes &&
  meets(gate.cues, there.bits);

function meets(cues: readonly Cue[], bits: readonly number[]): boolean {
  for (const { part, bit } of cues) if ((bits[part]! & bit) === 0) return false;
  return true;
}

const MATERIAL = cue(mayNameMaterial);

function look({ items, before, context }: Scene): Holds {
  let classes = (before.at(-1) ?? context.at(-1))?.close === '?' ? CLASSES.answers : 0;
  let sizes = 0;
  let magnitudes = 0;
  let system: string | undefined;
  for (const item of items) {
    classes |= classesOf(item);
    if (item.magnitude && ++magnitudes === 2) classes |= CLASSES.opposed;
    if (!item.mention || item.mention.kind === 'ambiguous') continue;
    sizes += item.mention.sizes.length;
    if (item.mention.kind === 'range') classes |= CLASSES.range;
    for (const size of item.mention.sizes) {
      classes |= SYSTEMS.get(size.system) ?? 0;
      system ??= size.system;
      if (size.system !== system) classes |= CLASSES.mixed;
    }
  }
  if (holds(items, MATERIAL)) classes |= CLASSES.material;
  return { classes, bits: bitsOf(items), sizes };
}

function classesOf({ magnitude, system, axisNoun, colour }: Item): number {
  let classes = 0;
  if (magnitude) {
    classes |= CLASSES.measured;
    if (magnitude.excess) classes |= CLASSES.excess;
    if (magnitude.degree === 'comparative') classes |= CLASSES.compared;
    if (magnitude.degree === 'superlative') classes |= CLASSES.superlative;
    if (magnitude.axis === 'number') classes |= CLASSES.numbered;
  }
  if (system) classes |= CLASSES.system | CLASSES.numbered;
  if (axisNoun) classes |= axisNoun.axis === 'number' ? CLASSES.axis | CLASSES.numbered : CLASSES.axis;
  if (colour) classes |= CLASSES.colour;
  return classes;
}
