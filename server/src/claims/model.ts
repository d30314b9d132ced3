/**
 * What the prose asserts about sizes: a claim with the spans of its parts, the author's stance, a verdict.
 * Spans are offsets in the note's source, so that a message can point at the wrong word and a fix can replace it.
 */
import type { Edit, Step } from '../checks/model.ts';
import type { Mention } from '../mentions/model.ts';
import type { Span } from '../notes/model.ts';
import type { Device, Size, System } from '../sizes/model.ts';
import type { PartlySeries } from '../sizes/tables/between.ts';
import type { Part } from '../texts/index.ts';

/** What a comparison is about. `outer` is thickness; `other` is none of our business (length, price, pain). */
export type Axis = 'outer' | 'bore' | 'flow' | 'strength' | 'hole' | 'number' | 'other';

export type Relation = 'more' | 'less' | 'same';

/** A side of a comparison: one size or several that all hold. */
export interface Operand {
  readonly sizes: readonly Size[];
  readonly mentions: readonly Mention[];
  readonly device?: Device;
  readonly material?: string;
  readonly span: Span;
}

interface Base {
  /** The whole statement. */
  readonly span: Span;
  /** The word or number a finding points at. */
  readonly focus: Span;
  /** Id of the construction that read it. */
  readonly construction: string;
}

export interface DirectionClaim extends Base {
  readonly kind: 'direction';
  readonly system: System;
  readonly number: 'up' | 'down';
  readonly axis: Axis;
  readonly size: 'up' | 'down';
  /** USP: the number that changes is the count of zeros. */
  readonly zeros?: boolean;
  /** USP: the whole numbers above 0. */
  readonly whole?: boolean;
}

export interface ComparisonClaim extends Base {
  readonly kind: 'comparison';
  readonly left: Operand;
  readonly right: Operand;
  readonly axis: Axis;
  readonly relation: Relation;
  /** The comparing word, for a fix that swaps it. */
  readonly word?: Span;
  /** Said of each size on the right by itself: one that breaks it breaks the claim. */
  readonly each?: boolean;
}

export interface EquivalenceClaim extends Base {
  readonly kind: 'equivalence';
  readonly left: Operand;
  readonly right: Operand;
  readonly approximate: boolean;
  /** What is measured: the outside unless the text says inner; half of it, or the way around it. */
  readonly axis: 'outer' | 'bore' | 'length' | 'radius' | 'around';
  /** What the words of the length leave open, mm: "just under a millimetre". */
  readonly said?: { readonly min: number; readonly max: number };
  /** Written as on a needle's packet, "0.8 × 40 mm": the designated size, to the tenth. */
  readonly packed?: true;
  /** One of several said to be equal: which of them is wrong cannot be told. */
  readonly among?: true;
}

export interface OrderClaim extends Base {
  readonly kind: 'order';
  readonly items: readonly Operand[];
  readonly axis: Axis;
  /** Whether the axis grows along the text. */
  readonly runs: 'up' | 'down';
}

export interface RangeClaim extends Base {
  readonly kind: 'range';
  readonly size: Operand;
  readonly low: Operand;
  readonly high: Operand;
  readonly inside: boolean;
  /** Between the ends, so neither of them: "halfway between 0 and 2-0". */
  readonly strict?: boolean;
}

/** A size said to keep to a limit: "nothing narrower than 16 G, so a 20 G will do". */
export interface LimitClaim extends Base {
  readonly kind: 'limit';
  readonly size: Operand;
  readonly bound: Operand;
  /** Which side is allowed, in thickness. */
  readonly side: 'at-least' | 'at-most';
  /** The bound itself is not allowed. */
  readonly strict: boolean;
}

export interface CategoryClaim extends Base {
  readonly kind: 'category';
  readonly size: Operand;
  /** Id of a row in `claims/words/categories.ts`. */
  readonly category: string;
  readonly member: boolean;
  /** Said of each size of a list by itself: one that is outside breaks the claim. */
  readonly each?: boolean;
}

/** One thing goes through another. */
export interface FitClaim extends Base {
  readonly kind: 'fit';
  readonly thing: Operand;
  /** What it goes through: a needle, a sheath, a channel. */
  readonly container: Operand;
}

export interface FormulaClaim extends Base {
  readonly kind: 'formula';
  readonly system: System;
  /** Id of a row in `claims/words/formulas.ts`. */
  readonly formula: string;
  /** What the rule gives here, worked out: "8 ÷ 4 + 4 = 6". */
  readonly sum?: Part;
}

export interface ColourClaim extends Base {
  readonly kind: 'colour';
  readonly size: Operand;
  readonly colour: string;
  readonly device?: Device;
  /** With no device said: any hub's may be meant, whatever is spoken of around; or no code's. */
  readonly code?: 'any' | 'none';
  readonly same: boolean;
}

export interface PropertyClaim extends Base {
  readonly kind: 'property';
  /** Generic material or needle point id. */
  readonly subject: string;
  readonly of: 'material' | 'point';
  readonly property: string;
  readonly has: boolean;
  /** The kind of a material that comes in several, as named: "nylon monofilament". */
  readonly form?: 'monofilament' | 'multifilament';
  /** Named in passing ("braided silk is …"): who denies the statement does not deny this. */
  readonly presupposed?: true;
}

export interface ExistenceClaim extends Base {
  readonly kind: 'existence';
  readonly size: Operand;
  /** A writing that is no size of any system, and why. */
  readonly odd?: { readonly written: string; readonly because: string; readonly sources?: readonly string[] };
  /**
   * Said not to exist: each of the sizes itself, all that are finer or thicker than it, all between the two, or every
   * number that is odd, or that is no whole one (then `size` names none).
   */
  readonly absent?: 'itself' | 'finer' | 'thicker' | 'between' | 'uneven' | 'half';
  /** Of what that is said, where it is not hypodermic needles. */
  readonly series?: PartlySeries;
}

export interface KeyClaim extends Base {
  readonly kind: 'key';
  /** Why the key does not hold, already in words. */
  readonly problem: string;
}

export type Claim =
  | DirectionClaim
  | ComparisonClaim
  | EquivalenceClaim
  | OrderClaim
  | RangeClaim
  | LimitClaim
  | CategoryClaim
  | FitClaim
  | FormulaClaim
  | ColourClaim
  | PropertyClaim
  | ExistenceClaim
  | KeyClaim;

/** How the author stands to a claim. Only asserted and denied claims are judged. */
export type Stance = 'asserted' | 'denied' | 'asked' | 'quoted' | 'hypothetical' | 'option' | 'hedged';

export type Verdict = 'contradicted' | 'agrees' | 'cannot-tell';

/** A claim read and judged, with everything that led there. */
export interface Statement {
  readonly claim: Claim;
  readonly stance: Stance;
  readonly verdict: Verdict;
  /** What the text says: one short sentence. */
  readonly says: string;
  /** What holds: one short sentence. */
  readonly holds: string;
  /** Name of the standard or source, as shown. */
  readonly source: string;
  readonly sources: readonly string[];
  /** Single edit that makes the statement true, when there is one. */
  readonly repair?: { readonly title: string; readonly edit: Edit };
  readonly derivation: readonly Step[];
}
