/** A notation: one way of writing a size. Recogniser, colour grammar and documentation all come from it. */
import type { System } from '../../server/src/sizes/model.ts';

/** One size written inside a match, or the two ends of a range. Offsets count from the match's start. */
export interface Item {
  readonly start: number;
  readonly end: number;
  /** One value, or two for a range, in the system's own numbers (for USP the rank). */
  readonly values: readonly number[];
  readonly decimals: number;
  readonly spoken?: boolean;
}

export interface Notation {
  readonly id: string;
  readonly title: string;
  /** One sentence for the documentation. */
  readonly about: string;
  /** System that the writing itself names; left out where only context can tell. */
  readonly system?: System;
  /**
   * Regular expression in the subset that JavaScript and Oniguruma read alike: explicit classes, no \d \w \b ^ $,
   * no inline flags. Every repetition is bounded, so that matching stays linear.
   */
  readonly pattern: string;
  /** Too short or too common to be coloured before the words around it are known. */
  readonly contextual?: boolean;
  /** Letters match in either case. */
  readonly anyCase: boolean;
  /** Reads a match; none when it turns out to be something else. */
  readonly read: (text: string) => readonly Item[];
  readonly examples: readonly string[];
  /** Look-alikes the pattern must leave alone. */
  readonly counterExamples: readonly string[];
}
