/**
 * USP <861>: collagen sutures (plain and chromic gut), one step thicker than the synthetic row of the same size.
 * Average diameter limits, mm.
 */
import type { UspRow } from './rows.ts';

export const USP_COLLAGEN: readonly UspRow[] = [
  { rank: -8, metric: 0.4, min: 0.04, max: 0.049, confidence: 'memory', sources: [] },
  { rank: -7, metric: 0.5, min: 0.05, max: 0.069, confidence: 'memory', sources: [] },
  { rank: -6, metric: 0.7, min: 0.07, max: 0.099, confidence: 'memory', sources: [] },
  { rank: -5, metric: 1, min: 0.1, max: 0.149, confidence: 'confirmed', sources: ['thieme', 'catgutrange'] },
  { rank: -4, metric: 1.5, min: 0.15, max: 0.199, confidence: 'single-source', sources: ['thieme'] },
  { rank: -3, metric: 2, min: 0.2, max: 0.249, confidence: 'confirmed', sources: ['thieme', 'uspchart'] },
  { rank: -2, metric: 3, min: 0.3, max: 0.339, confidence: 'single-source', sources: ['uspchart'] },
  { rank: -1, metric: 3.5, min: 0.35, max: 0.399, confidence: 'single-source', sources: ['uspchart'] },
  { rank: 0, metric: 4, min: 0.4, max: 0.499, confidence: 'confirmed', sources: ['uspchart', 'dewiki'] },
  { rank: 1, metric: 5, min: 0.5, max: 0.599, confidence: 'memory', sources: [] },
  { rank: 2, metric: 6, min: 0.6, max: 0.699, confidence: 'memory', sources: [] },
  { rank: 3, metric: 7, min: 0.7, max: 0.799, confidence: 'single-source', sources: ['catgutrange'] },
  { rank: 4, metric: 8, min: 0.8, max: 0.899, confidence: 'memory', sources: [] },
];
