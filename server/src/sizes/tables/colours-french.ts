/** Funnel colours of urinary catheters (trade convention) and connector colours of suction catheters, by French. */
import type { Confidence } from '../model.ts';

export interface FrenchColourRow {
  readonly french: number;
  /** Accepted colour words; several where sources differ. */
  readonly colours: readonly string[];
  readonly confidence: Confidence;
}

/** Source: foley. 22 Fr is left out on purpose: brown and violet are both in use. */
export const URINARY_COLOURS: readonly FrenchColourRow[] = [
  { french: 6, colours: ['green', 'yellow-green'], confidence: 'confirmed' },
  { french: 8, colours: ['blue'], confidence: 'confirmed' },
  { french: 10, colours: ['black'], confidence: 'confirmed' },
  { french: 12, colours: ['white'], confidence: 'confirmed' },
  { french: 14, colours: ['green'], confidence: 'confirmed' },
  { french: 16, colours: ['orange'], confidence: 'confirmed' },
  { french: 18, colours: ['red'], confidence: 'confirmed' },
  { french: 20, colours: ['yellow'], confidence: 'single-source' },
  { french: 24, colours: ['blue'], confidence: 'single-source' },
];

/** Source: JPneedle, single. */
export const SUCTION_COLOURS: readonly FrenchColourRow[] = [
  { french: 5, colours: ['grey'], confidence: 'single-source' },
  { french: 6, colours: ['light green'], confidence: 'single-source' },
  { french: 7.5, colours: ['pink'], confidence: 'single-source' },
  { french: 8, colours: ['light blue'], confidence: 'single-source' },
  { french: 9, colours: ['blue-green'], confidence: 'single-source' },
  { french: 10, colours: ['black'], confidence: 'single-source' },
  { french: 12, colours: ['white'], confidence: 'single-source' },
  { french: 14, colours: ['green'], confidence: 'single-source' },
  { french: 15, colours: ['brown'], confidence: 'single-source' },
  { french: 16, colours: ['orange'], confidence: 'single-source' },
  { french: 18, colours: ['red'], confidence: 'single-source' },
  { french: 20, colours: ['yellow'], confidence: 'single-source' },
];
