/**
 * USP <861>: synthetic absorbable and all nonabsorbable sutures. Average diameter limits, mm. The tables of
 * the pharmacopoeia itself were not read: "confirmed" means that two independent reproductions agree.
 */
import type { UspRow } from './rows.ts';

// biome-ignore format: one size a line
export const USP_SYNTHETIC: readonly UspRow[] = [
  { rank: -11, metric: 0.01, min: 0.001, max: 0.009, confidence: 'single-source', sources: ['JP2015', 'JP1999'] },
  { rank: -10, metric: 0.1, min: 0.01, max: 0.019, confidence: 'confirmed', sources: ['JP2015', 'JP1999', 'dewiki'] },
  { rank: -9, metric: 0.2, min: 0.02, max: 0.029, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'dewiki'] },
  { rank: -8, metric: 0.3, min: 0.03, max: 0.039, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'dewiki'] },
  { rank: -7, metric: 0.4, min: 0.04, max: 0.049, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'dewiki'] },
  { rank: -6, metric: 0.5, min: 0.05, max: 0.069, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'JP1999'] },
  { rank: -5, metric: 0.7, min: 0.07, max: 0.099, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'JP1999'] },
  { rank: -4, metric: 1, min: 0.1, max: 0.149, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'dewiki', 'thieme'] },
  { rank: -3, metric: 1.5, min: 0.15, max: 0.199, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'dewiki', 'thieme', 'jpblog'] },
  { rank: -2, metric: 2, min: 0.2, max: 0.249, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'USP29-861'] },
  { rank: -1, metric: 3, min: 0.3, max: 0.349, confidence: 'confirmed', sources: ['jpblog', 'uspchart', 'PhEur-table'], note: 'upper limit 0.339 mm in USP, 0.349 mm in the European Pharmacopoeia' },
  { rank: 0, metric: 3.5, min: 0.35, max: 0.399, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'dewiki', 'jpblog'] },
  { rank: 1, metric: 4, min: 0.4, max: 0.499, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'dewiki'] },
  { rank: 2, metric: 5, min: 0.5, max: 0.599, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'dewiki'] },
  { rank: 3, metric: 6, min: 0.6, max: 0.699, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'dewiki'], note: 'sizes 3 and 4 share one row, metric 6' },
  { rank: 4, metric: 6, min: 0.6, max: 0.699, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'dewiki'], note: 'sizes 3 and 4 share one row, metric 6' },
  { rank: 5, metric: 7, min: 0.7, max: 0.799, confidence: 'confirmed', sources: ['PhEur-table', 'JP2015', 'dewiki'] },
  { rank: 6, metric: 8, min: 0.8, max: 0.899, confidence: 'confirmed', sources: ['PhEur-table', 'JP1999', 'dewiki'] },
  { rank: 7, metric: 9, min: 0.9, max: 0.999, confidence: 'confirmed', sources: ['JP1999', 'dewiki'] },
  { rank: 8, metric: 10, min: 1.0, max: 1.099, confidence: 'confirmed', sources: ['JP1999', 'dewiki'] },
  { rank: 9, metric: 11, min: 1.1, max: 1.199, confidence: 'memory', sources: [] },
  { rank: 10, metric: 12, min: 1.2, max: 1.299, confidence: 'memory', sources: [] },
];
