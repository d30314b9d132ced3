/**
 * The words every other layer speaks: a system of sizes, a size in it, a length interval with its source.
 * Pure data. Nothing here knows about text, Markdown or editors.
 */
import type { Phrase } from '../texts/index.ts';

/** A system in which medical sizes are written. The ids are also the `system` values of reports. */
export type System =
  | 'usp' // USP suture size: 3-0, 0, 2
  | 'ep-metric' // European Pharmacopoeia metric (decimetric) number: metric 3
  | 'needle-gauge' // hypodermic needles and over-needle catheters: 18 G
  | 'wire-gauge' // AWG / SWG / BWG numbers used for steel wire
  | 'french' // French = Charrière: one third of a millimetre
  | 'millimetre' // a length in mm (cm and µm are converted on reading)
  | 'inch' // a length in inches, decimal or fraction
  | 'wire-inch' // guidewires by diameter in inches: 0.035
  | 'tube-id' // tracheal and tracheostomy tubes, nasopharyngeal airways: inner diameter, mm
  | 'hegar'; // Hegar dilator number = mm

/**
 * One size. `value` orders the sizes of one system *as numbers*:
 * for USP it is the rank (n-0 is 1 − n, so 0 = 1-0 is 0, 2-0 is −1, 3-0 is −2; a whole number k is k),
 * for every other system the number itself (mm for millimetre, inches for inch and wire-inch).
 */
export interface Size {
  readonly system: System;
  readonly value: number;
}

export type Confidence = 'confirmed' | 'single-source' | 'memory' | 'common-practice';

/** Key of a published source in `sizes/sources.ts`. */
export type SourceKey = string;

/** A length in millimetres, both ends inclusive, with what gives it. */
export interface Interval {
  readonly min: number;
  readonly max: number;
  /** Designated or nominal value inside the interval, mm. */
  readonly nominal?: number;
  /** Short name a clinician knows: "ISO 9626", "USP <861>", "by definition". */
  readonly standard: string;
  readonly sources: readonly SourceKey[];
  readonly confidence: Confidence;
  /** Said beside the value wherever it is shown. */
  readonly caution?: string;
}

/** A length with one value it is known by. */
export type Designated = Interval & { readonly nominal: number };

/** What kind of thing a size is written on. It decides which table holds. */
export type Device =
  | 'needle' // hypodermic, dental, spinal, epidural, blood-collection, pen needle
  | 'winged-set' // butterfly: follows the needle list
  | 'cannula' // over-needle peripheral IV catheter
  | 'suture'
  | 'suture-needle'
  | 'steel-wire'
  | 'catheter' // any catheter, kind not said
  | 'urinary-catheter'
  | 'suction-catheter'
  | 'feeding-tube'
  | 'chest-tube'
  | 'drain'
  | 'central-line' // CVC, PICC, dialysis
  | 'sheath' // introducer or vascular sheath: French is what it accepts
  | 'guiding-catheter' // texts differ: never checked
  | 'tracheal-tube'
  | 'double-lumen-tube' // French, outside
  | 'guidewire'
  | 'k-wire'
  | 'dilator';

/** Everything besides the number that decides how thick a size is. */
export interface Lens {
  readonly device?: Device;
  /** Generic material id from `sizes/materials.ts`, e.g. `chromic-gut`. */
  readonly material?: string;
}

/** How two sizes relate in thickness (outer diameter). */
export interface Thickness {
  readonly result: 'thicker' | 'thinner' | 'same' | 'cannot-tell';
  /** One plain clause: "0.30–0.349 mm against 0.20–0.249 mm". */
  readonly because: string;
  /** The same, not yet in any language. */
  readonly ground: Phrase;
  readonly sources: readonly SourceKey[];
}

/** A size said in another system. */
export interface Conversion {
  readonly to: System;
  /** As shown: "4.7 mm", "0.050 in", "metric 3". */
  readonly text: string;
  /** The value in the target system, when there is exactly one. */
  readonly value?: number;
  /** The same in mm, when the target is a length. */
  readonly interval?: Interval;
  readonly standard: string;
  readonly sources: readonly SourceKey[];
  readonly confidence: Confidence;
  readonly caution?: string;
}
