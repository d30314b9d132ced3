/** A bare number and what may be looked at to settle it; a rung answers with the systems that its evidence speaks of. */
import type { System } from '../../sizes/model.ts';
import type { Mention } from '../model.ts';
import type { Place } from '../sense/place.ts';
import type { Board } from './board.ts';
import type { Frame } from './frame.ts';
import type { Bare } from './tokens.ts';

/** What a rung may look at. */
export interface Question {
  readonly board: Board;
  readonly place: Place;
  readonly bare: Bare;
  readonly frame: Frame;
  /** Mentions of this passage, chains included, in text order. */
  readonly known: readonly Mention[];
  /** Bare numbers of this passage settled so far. */
  readonly settledBare: readonly Mention[];
}

export type Rung = (question: Question) => readonly System[];
