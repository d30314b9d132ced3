/** A construction reads claims of one shape out of a sentence. It never judges. */
import type { Claim } from '../model.ts';
import type { Cue } from '../text/cues.ts';
import type { Scene } from '../text/scene.ts';

export interface Reading {
  readonly claim: Claim;
  /** Item that carries the claim (its comparing word or number): stance is decided around it. */
  readonly at: number;
  /** First and last item that belong to the claim. */
  readonly from: number;
  readonly to: number;
  /** The words read carry their own negation. */
  readonly own?: boolean;
  /** A question that the next sentence answers: the answer is what is asserted. */
  readonly answered?: boolean;
  /** A condition before it ("if that fails") says when to act, not whether it holds. */
  readonly unconditional?: boolean;
  /** The words themselves deny: "is a different size from". */
  readonly denied?: boolean;
}

/** A class of words, as `text/items.ts` and its neighbours know them. */
export type WordClass =
  /** A word of magnitude, in any degree; then one in each of the higher degrees. */
  | 'measured'
  | 'compared'
  | 'superlative'
  /** A word of magnitude of which there is too much. */
  | 'excess'
  /** The name of a system; then that, or any word that may speak of a system's numbers. */
  | 'system'
  | 'numbered'
  /** A noun that says what is measured. */
  | 'axis'
  | 'colour'
  /** A word with which the name of a material begins. */
  | 'material'
  /** Two words of magnitude. */
  | 'opposed'
  /** A size in mm or inches; sizes of more than one system; a tracheal tube's. */
  | 'length'
  | 'mixed'
  | 'tube'
  /** A size in French; a thread's. */
  | 'french'
  | 'thread'
  /** Two sizes written as a range. */
  | 'range'
  /** No word: the sentence before, or the last before the passage, asks. */
  | 'answers';

/** What a sentence must hold before a construction is tried. */
export interface Needs {
  /** At least so many values of sizes, unclear ones not counted. */
  readonly sizes?: number;
  /** A word of each of these classes. */
  readonly holds?: readonly WordClass[];
  /** One of these words, or one that looks like this. */
  readonly words?: Iterable<string>;
  readonly like?: RegExp;
  /** And one of these, or one that looks like this. */
  readonly also?: Iterable<string> | RegExp;
  /** And a word for each of these. */
  readonly every?: readonly Cue[];
}

export interface Construction {
  readonly id: string;
  /** It reads nothing in a sentence that satisfies none of these; asked once. Without them it is always tried. */
  readonly needs?: () => readonly Needs[];
  /** Also reads sentences that name no size, system, colour, material or point themselves, but lean on their neighbours. */
  readonly leaning?: true;
  readonly read: (scene: Scene) => Reading[];
}
