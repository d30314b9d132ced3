/** Guidewire diameters, inches, as taught. */
import type { Confidence, SourceKey } from '../model.ts';

export interface GuidewireRow {
  readonly inch: number;
  readonly confidence: Confidence;
  readonly sources: readonly SourceKey[];
}

export const GUIDEWIRES: readonly GuidewireRow[] = [
  { inch: 0.014, confidence: 'confirmed', sources: ['artline', 'learnir'] },
  { inch: 0.018, confidence: 'confirmed', sources: ['northcutt', 'irblog', 'artline'] },
  { inch: 0.021, confidence: 'confirmed', sources: ['artline', 'learnir'] },
  { inch: 0.025, confidence: 'single-source', sources: ['artline'] },
  { inch: 0.035, confidence: 'confirmed', sources: ['northcutt', 'learnir', 'artline'] },
  { inch: 0.038, confidence: 'single-source', sources: ['radkey'] },
];
