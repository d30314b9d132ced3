/** A construction reads claims of one shape out of a sentence. It never judges. */
import type { Claim } from '../model.ts';
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
  /** The words themselves deny: "is a different size from". */
  readonly denied?: boolean;
}

export interface Construction {
  readonly id: string;
  /** Also reads sentences that name no size, system, colour, material or point themselves, but lean on their neighbours. */
  readonly leaning?: true;
  readonly read: (scene: Scene) => Reading[];
}
